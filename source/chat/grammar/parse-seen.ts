/**
 * Reads what can be seen at the bench: in any order, as little as is known, in half sentences and in the program's own words.
 * Small words are passed over; words that mean nothing here are left out and named.
 */
import type { SlipMoment } from '../../session/diagnose/question.ts';
import type { Look } from '../../session/locate/seen.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import type { Words } from '../../wording/words.ts';
import { type ChatFault, type Intent, type Known, nothingKnown, nothingTold, type Told } from './intent.ts';
import { type CountFact, clausesOf, countWords, fillers, type Token } from './seen-words.ts';

const fallenWords = /^(dropped|fell|fallen|fallen|floor|down)$/;
type Seeing = { -readonly [F in keyof Look]: Look[F] };

const isNothing = (word: string | undefined): boolean => /^(empty|nothing|none)$/.test(word ?? '');
const isSide = (word: string | undefined): word is 'left' | 'right' => word === 'left' || word === 'right';

/** `find L24 R21 mint carriage right`; after `and` it adds to what was said last, and `unsure` passes by a question. */
export function parseFind(
  rest: string,
  language: Words,
  known: Known = nothingKnown,
): Result<Intent, ChatFault> {
  const clauses = clausesOf(rest, known, language);
  const first = clauses[0]?.[0];
  const more = first?.kind === 'word' && first.text === 'and';
  const words = clauses.flat();
  const unsure = words.length === (more ? 2 : 1) && words.at(-1)?.text === 'unsure';
  if (unsure) return succeed({ kind: 'find', more: true, told: { ...nothingTold }, unsure });
  const read = new Reader(known).readAll(clauses);
  return read.ok ? succeed({ kind: 'find', more, told: read.value, unsure: false }) : read;
}

class Reader {
  readonly seen: Seeing = {};
  readonly needles: string[] = [];
  readonly leftOut: string[] = [];
  moment: SlipMoment | null = null;
  askRow: number | null = null;
  ladder = false;
  fault: ChatFault | null = null;
  constructor(readonly known: Known) {}

  readAll(clauses: readonly (readonly Token[])[]): Result<Told, ChatFault> {
    for (const clause of clauses) {
      if (clause[0]?.text === 'parked') this.leftOut.push(clause.map(({ typed }) => typed).join(' '));
      else
        this.readClause(
          clause.filter(
            ({ kind, text }) => kind !== 'word' || !fillers.has(text) || text === 'in' || text === 'on',
          ),
        );
    }
    this.placeNeedles();
    if (this.fault) return fail(this.fault);
    const { seen, moment, askRow, ladder, leftOut } = this;
    return succeed({ seen, moment, askRow, ladder, leftOut: [...new Set(leftOut)] });
  }

  readClause(clause: readonly Token[]): void {
    for (let i = 0; i < clause.length; ) i += Math.max(1, this.readFact(clause, i));
  }

  /** How many tokens the fact at `i` takes. */
  readFact(clause: readonly Token[], i: number): number {
    const token = clause[i] as Token;
    const next = this.after(clause, i, 1);
    switch (token.kind) {
      case 'needle':
        return this.readNeedle(clause, i);
      case 'number':
        return this.readNumber(clause, i);
      case 'yarn':
        return this.readYarn(clause, i);
      default:
        return this.readWord(token, next, clause, i);
    }
  }

  /** The `n`th token from `i` that is not `in` or `on`. */
  after(clause: readonly Token[], i: number, n: number): Token | undefined {
    return clause
      .slice(i + 1)
      .filter(({ text, kind }) => kind !== 'word' || (text !== 'in' && text !== 'on'))[n - 1];
  }

  readNeedle(clause: readonly Token[], i: number): number {
    const needle = clause[i]?.text ?? '';
    const joined = clause[i + 1]?.text === 'on' || clause[i + 1]?.text === 'in';
    const side = joined ? clause[i + 2]?.text : undefined;
    if (isSide(side)) {
      this.seen[side] = needle;
      return 3;
    }
    const isAlone = clause.filter(({ kind }) => kind === 'needle').length === 1;
    const after = clause[i + 1]?.text;
    if (isAlone && isSide(after) && i + 2 === clause.length) {
      this.seen[after] = needle;
      return 2;
    }
    this.needles.push(needle);
    return 1;
  }

  readNumber(clause: readonly Token[], i: number): number {
    const value = Number(clause[i]?.text);
    const unit = clause[i + 1];
    const third = clause[i + 2];
    if (unit?.kind === 'yarn' && /^rows?$/.test(third?.text ?? '')) return this.rowsOf(unit.text, value, 3);
    if (unit?.text === 'in' && /^stripes?$/.test(third?.text ?? ''))
      return this.setCount('rowsOfColour', value, 3);
    if (/^rows?$/.test(unit?.text ?? '')) {
      if (third?.kind === 'yarn' || third?.text === 'waste') return this.rowsOf(third.text, value, 3);
      if (third?.text === 'down') {
        this.moment = { by: 'rows-down', number: value };
        return 3;
      }
      const where = this.after(clause, i, 2);
      if (/^stripes?$/.test(where?.text ?? ''))
        return this.setCount('rowsOfColour', value, clause.length - i);
      return this.setCount('rowCounter', value, 2);
    }
    const fact = unit?.kind === 'word' ? countWords[unit.text] : undefined;
    if (fact)
      return this.setCount(fact, value, fact === 'wasteRows' && /^rows?$/.test(third?.text ?? '') ? 3 : 2);
    const isWaste = unit?.kind === 'yarn' && unit.text === 'waste';
    if (isWaste) return this.setCount('wasteRows', value, 2);
    if (clause[i - 1]?.kind === 'number' || clause.length > 1) this.leftOut.push(clause[i]?.typed ?? '');
    else this.fault ??= { code: 'chat/count-of-what', word: clause[i]?.typed ?? '' };
    return 1;
  }

  rowsOf(yarn: string, value: number, taken: number): number {
    if (yarn === 'waste') return this.setCount('wasteRows', value, taken);
    this.seen.lastColour = yarn;
    return this.setCount('rowsOfColour', value, taken);
  }

  setCount(fact: CountFact, value: number, taken: number): number {
    this.seen[fact] = value;
    return taken;
  }

  readYarn(clause: readonly Token[], i: number): number {
    const yarn = clause[i]?.text ?? '';
    const second = this.after(clause, i, 1);
    const third = this.after(clause, i, 2);
    const isIn = clause[i + 1]?.text === 'in';
    if (second?.text === 'feeder' && (isIn || (third?.kind !== 'yarn' && !isNothing(third?.text)))) {
      this.seen.feeder = yarn;
      return isIn ? 3 : 2;
    }
    if (second?.text === 'rows' && third?.kind === 'number') {
      this.rowsOf(yarn, Number(third.text), 3);
      return 3;
    }
    this.seen.lastColour = yarn;
    return 1;
  }

  readWord(token: Token, next: Token | undefined, clause: readonly Token[], i: number): number {
    const word = token.text;
    if (word === 'and') return 1;
    if (word === 'carriage') return this.readCarriage(clause, i);
    if (word === 'feeder' || word === 'thread' || word === 'threaded') return this.readFeeder(clause, i);
    if (word === 'loose' || word === 'firm') {
      this.seen.looseEdgeLoop = word === 'loose';
      return 1;
    }
    if (isSide(word)) return this.readSide(word, clause, i);
    if (word === 'move' || word === 'since' || word === 'in') return this.readMoment(clause, i);
    if (word === 'on') return 1;
    if (isNothing(word)) {
      if (next?.text === 'feeder') {
        this.seen.feeder = null;
        return clause.indexOf(next) - i + 1;
      }
      return this.setEmpty(1);
    }
    if (word === 'no' && /^(stitch|stitches|loops|work)$/.test(next?.text ?? '')) return this.setEmpty(2);
    if (word === 'off' || word === 'everything' || word === 'all' || word === 'work') {
      const falls = clause.some(({ text }) => fallenWords.test(text));
      return falls ? this.setEmpty(clause.length - i) : this.leaveOut(token);
    }
    if (fallenWords.test(word)) {
      const one = clause.some(({ text }) => text === 'stitch' || text === 'one');
      if (!one) return this.setEmpty(clause.length - i);
      this.ladder = true;
      return clause.length - i;
    }
    if ((word === 'stitch' || word === 'one') && clause.some(({ text }) => fallenWords.test(text))) return 1;
    return this.readCountWord(token, clause, i);
  }

  leaveOut(token: Token): number {
    this.leftOut.push(token.typed);
    return 1;
  }

  setEmpty(taken: number): number {
    this.seen.left = null;
    this.seen.right = null;
    return taken;
  }

  readSide(side: 'left' | 'right', clause: readonly Token[], i: number): number {
    const next = this.after(clause, i, 1);
    if (next?.kind === 'needle') {
      this.seen[side] = next.text;
      return clause.indexOf(next) - i + 1;
    }
    if (next?.text === 'carriage') {
      this.seen.carriage = side;
      return clause.indexOf(next) - i + 1;
    }
    this.fault ??= { code: 'chat/left-of-what', word: side };
    return 1;
  }

  readCarriage(clause: readonly Token[], i: number): number {
    const next = clause
      .slice(i + 1)
      .find(({ text }) => text === 'left' || text === 'right' || /^[lr]$/.test(text));
    const far = next && clause.slice(i + 1, clause.indexOf(next)).some(({ kind }) => kind !== 'word');
    if (!next || far) {
      const word = this.after(clause, i, 1)?.typed ?? null;
      this.fault ??= { code: 'chat/not-a-side', word };
      return 1;
    }
    this.seen.carriage = next.text.startsWith('l') ? 'left' : 'right';
    return clause.indexOf(next) - i + 1;
  }

  readFeeder(clause: readonly Token[], i: number): number {
    const next = this.after(clause, i, 1);
    if (!next) {
      if (this.seen.feeder === undefined)
        this.fault ??= { code: 'chat/needs-more', usage: 'find feeder mint' };
      return 1;
    }
    const isKnown = next.kind === 'yarn' || isNothing(next.text);
    if (!isKnown && this.seen.feeder !== undefined) return 1;
    this.seen.feeder = isNothing(next.text) ? null : next.kind === 'yarn' ? next.text : next.typed;
    return clause.indexOf(next) - i + 1;
  }

  /** `move 4`, `since row 12`, `in stripe 3`. */
  readMoment(clause: readonly Token[], i: number): number {
    const word = clause[i]?.text;
    const at = word === 'move' ? i : i + 1;
    const what = clause[at]?.text.replace(/s$/, '');
    const number = clause[at + 1];
    if (
      number?.kind !== 'number' ||
      !(what === 'move' || what === 'stripe' || (what === 'row' && word === 'since'))
    )
      return 1;
    this.moment = { by: what, number: Number(number.text) };
    return at + 2 - i;
  }

  /** `row 34`, `row counter 34`, `counter shows 38`, `row 2 of 2 in this stripe`. */
  readCountWord(token: Token, clause: readonly Token[], i: number): number {
    const fact = countWords[token.text];
    if (!fact) return this.leaveOut(token);
    let at = i + 1;
    while (/^(rows?|counter|count|on)$/.test(clause[at]?.text ?? '')) at++;
    const number = clause[at];
    if (number?.kind !== 'number') return this.missingCount(token, number, fact);
    const value = Number(number.text);
    const rest = clause.slice(at + 1).filter(({ text }) => text !== 'in' && text !== 'on');
    const [of, where] = rest;
    if (fact === 'rowCounter' && of?.kind === 'number') {
      const isOfStripe =
        /^stripes?$/.test(where?.text ?? '') ||
        (Number(of.text) !== this.known.knittedRows && Number(of.text) <= this.known.stripeRows);
      this.seen[isOfStripe ? 'rowsOfColour' : 'rowCounter'] = value;
      return clause.length - i;
    }
    if (fact === 'rowCounter' && of?.kind === 'yarn' && /^rows?$/.test(token.text))
      return this.rowsOf(of.text, value, at + 2 - i);
    if (fact === 'rowCounter' && /^stripes?$/.test(of?.text ?? '') && where?.kind !== 'number')
      return this.setCount('rowsOfColour', value, clause.length - i);
    const isOpen =
      fact === 'rowCounter' && token.text === 'row' && at === i + 1 && value <= this.known.stripeRows;
    if (isOpen) this.askRow = value;
    else this.seen[fact] = value;
    return at + 1 - i;
  }

  missingCount(token: Token, number: Token | undefined, fact: CountFact): number {
    if (fact === 'wasteRows') {
      this.seen.lastColour = 'waste';
      return 1;
    }
    if (number?.kind === 'yarn' || (number === undefined && this.seen[fact] !== undefined)) return 1;
    if (fact === 'stitches' && token.text === 'stitch') return this.leaveOut(token);
    this.fault ??= {
      code: 'chat/not-a-count',
      word: number?.typed ?? null,
      usage: `${token.text} 8`,
    };
    return 1;
  }

  /** Two edges tell by themselves which is which; one alone does not. */
  placeNeedles(): void {
    const { needles, seen } = this;
    const [one, other] = needles.toSorted((a, b) => across(a) - across(b));
    if (one === undefined) return;
    if (needles.length > 2) this.fault ??= { code: 'chat/too-many-needles', needles };
    else if (other !== undefined) {
      seen.left = one;
      seen.right = other;
    } else if (seen.left !== undefined && seen.right === undefined) seen.right = one;
    else if (seen.right !== undefined && seen.left === undefined) seen.left = one;
    else this.fault ??= { code: 'chat/which-edge', needle: one };
  }
}

/** Counted to the right from the middle of the bed. */
const across = (needle: string): number => (needle.startsWith('L') ? -1 : 1) * Number(needle.slice(1));
