/**
 * Reads what can be seen at the bench: in any order, as little as is known, in half sentences and in the program's own words.
 * Small words are passed over; words that mean nothing here are left out and named.
 */
import { fail, type Result, succeed } from '../../shared/result.ts';
import type { Words } from '../../wording/words.ts';
import {
  type ChatFault,
  type Intent,
  type Known,
  nothingKnown,
  nothingTold,
  saysSomething,
  type Told,
  yarnAskedIn,
} from './intent.ts';
import { placeNeedles, readCountWord, readNeedle, readNumber, readSide, rowsOf } from './read-counts.ts';
import {
  after,
  clausesOf,
  fillers,
  isNothing,
  isSide,
  leaveOut,
  nothingSeenYet,
  type SeenSoFar,
  setEmpty,
  type Token,
} from './seen-words.ts';

const fallenWords = /^(dropped|fell|fallen|floor|down|came|slid)$/;

const handWords: ReadonlySet<string> = new Set(
  'i,am,at,in,on,the,bite,loop,stitch,bar,bars,round,rounds,hole,finished,knitted'.split(','),
);
const atHandWork = /^(?:i am |i'm )?(?:at |in |on )?(?:the )?(bite|loop|stitch|bar|round|hole|[ab]) ?(\d+)$/;
const handWorkDone = /^(\d+) (bar|round|hole)s?(?: (?:done|finished|knitted|sewn|threaded))?$/;

/** A loop of the graft, a bar or a round is a place to go to: the line that goes there; null where it is none. */
export function goToHandWork(text: string, { understand }: Words): string | null {
  const said = text
    .split(/\s+/)
    .map((word) => understand(word.replace(/[.,;!?]+$/, ''), handWords).toLowerCase())
    .join(' ');
  const at = atHandWork.exec(said);
  if (at) return `go ${/^(?:bar|round|hole)$/.test(at[1] ?? '') ? at[1] : 'stitch'} ${at[2]}`;
  const done = handWorkDone.exec(said);
  return done && `go ${done[2]} ${done[1]}`;
}

/** Words with which a yarn is said to hang in the newest row. */
const whereWords: ReadonlySet<string> = new Set(
  'newest,last,colour,color,row,rows,stripe,stripes,hangs,hanging,needle,needles,loops,knitted'.split(','),
);

/** The row of `in the newest row`, which is no count. */
const isNewestRow = (clause: readonly Token[], i: number): boolean =>
  clause[i]?.text === 'row' &&
  ['newest', 'last'].includes(clause[i - 1]?.text ?? '') &&
  clause[i + 1]?.kind !== 'number';

/** `newest row`, `in the last row`: what hangs there was said before. */
const isNewestAlone = (clause: readonly Token[]): boolean =>
  clause.some(({ text }) => text === 'newest' || text === 'last') &&
  clause.every(({ kind, text }) => kind === 'word' && (fillers.has(text) || text === 'row'));

/** `find L24 R21 mint carriage right`; after `and` it adds to what was said last, and `unsure` passes by a question. */
export function parseFind(
  rest: string,
  language: Words,
  known: Known = nothingKnown,
): Result<Intent, ChatFault> {
  if (rest === '') return fail({ code: 'chat/needs-more', usage: 'find L24 R21 mint carriage right' });
  const line = goToHandWork(rest, language);
  if (line !== null) return fail({ code: 'chat/meant', line });
  const clauses = clausesOf(rest, known, language);
  const first = clauses[0]?.[0];
  const more = first?.kind === 'word' && first.text === 'and';
  const words = clauses.flat();
  const unsure = words.length === (more ? 2 : 1) && words.at(-1)?.text === 'unsure';
  if (unsure) return succeed({ kind: 'find', more: true, told: { ...nothingTold }, unsure });
  const read = readAll(nothingSeenYet(known), clauses);
  if (read.ok && !saysSomething(read.value) && read.value.leftOut.length === 0)
    return fail({ code: 'chat/nothing-seen', words: words.map(({ typed }) => typed), yarns: known.yarns });
  return read.ok ? succeed({ kind: 'find', more, told: read.value, unsure: false }) : read;
}

function readAll(reading: SeenSoFar, clauses: readonly (readonly Token[])[]): Result<Told, ChatFault> {
  const yarnAsked = yarnAskedIn(reading.known);
  for (const clause of clauses) {
    const saysWhere = clause.some(({ text }) => whereWords.has(text));
    const before = reading.seen.lastColour;
    if (yarnAsked && isNewestAlone(clause)) reading.seen.lastColour = yarnAsked;
    else if (clause[0]?.text === 'parked') reading.leftOut.push(clause.map(({ typed }) => typed).join(' '));
    else
      readClause(
        reading,
        clause.filter(
          ({ kind, text }, i) =>
            !isNewestRow(clause, i) &&
            (kind !== 'word' || !fillers.has(text) || text === 'in' || text === 'on'),
        ),
      );
    if (reading.seen.lastColour !== before && !saysWhere) reading.bareYarn = true;
  }
  placeNeedles(reading);
  if (reading.fault) return fail(reading.fault);
  const { seen, moment, askRow, ladder, bareYarn, leftOut } = reading;
  return succeed({ seen, moment, askRow, ladder, bareYarn, leftOut: [...new Set(leftOut)] });
}

function readClause(reading: SeenSoFar, clause: readonly Token[]): void {
  for (let i = 0; i < clause.length; ) i += Math.max(1, readFact(reading, clause, i));
}

/** How many tokens the fact at `i` takes. */
function readFact(reading: SeenSoFar, clause: readonly Token[], i: number): number {
  const token = clause[i] as Token;
  const next = after(clause, i, 1);
  switch (token.kind) {
    case 'needle':
      return readNeedle(reading, clause, i);
    case 'number':
      return readNumber(reading, clause, i);
    case 'yarn':
      return readYarn(reading, clause, i);
    default:
      return readWord(reading, token, next, clause, i);
  }
}

function readYarn(reading: SeenSoFar, clause: readonly Token[], i: number): number {
  const yarn = clause[i]?.text ?? '';
  const second = after(clause, i, 1);
  const third = after(clause, i, 2);
  const isIn = clause[i + 1]?.text === 'in';
  if (second?.text === 'feeder' && (isIn || (third?.kind !== 'yarn' && !isNothing(third?.text)))) {
    reading.seen.feeder = yarn;
    return isIn ? 3 : 2;
  }
  if (second?.text === 'threaded' && third?.kind !== 'yarn') {
    reading.seen.feeder = yarn;
    return clause.indexOf(second) - i + 1;
  }
  if (second?.text === 'rows' && third?.kind === 'number') {
    rowsOf(reading, yarn, Number(third.text), 3);
    return 3;
  }
  reading.seen.lastColour = yarn;
  return 1;
}

function readWord(
  reading: SeenSoFar,
  token: Token,
  next: Token | undefined,
  clause: readonly Token[],
  i: number,
): number {
  const word = token.text;
  if (word === 'and') return 1;
  if (word === 'carriage') return readCarriage(reading, clause, i);
  if (word === 'feeder' || word === 'thread' || word === 'threaded') return readFeeder(reading, clause, i);
  if (word === 'loose' || word === 'firm') {
    reading.seen.looseEdgeLoop = word === 'loose';
    return 1;
  }
  if (word === 'leading' || word === 'trailing') {
    reading.seen.edgeStep = word;
    return 1;
  }
  if (word === 'before' || word === 'after') {
    if (next?.text !== 'move') return leaveOut(reading, token);
    reading.seen.beforeMove = word === 'before';
    return clause.indexOf(next) - i + 1;
  }
  if (word === 'rehung') {
    reading.seen.rehung = !clause.some(({ text }) => text === 'not');
    return 1;
  }
  if (word === 'not' && clause.some(({ text }) => text === 'rehung')) return 1;
  if (isSide(word)) return readSide(reading, word, clause, i);
  if (word === 'move' || word === 'since' || word === 'in') return readMoment(reading, clause, i);
  if (word === 'on') return 1;
  if (isNothing(word)) {
    if (next?.text === 'else') return clause.indexOf(next) - i + 1;
    if (next?.text === 'feeder') {
      reading.seen.feeder = null;
      return clause.indexOf(next) - i + 1;
    }
    return setEmpty(reading, 1);
  }
  if (word === 'no' && /^(stitch|stitches|loops|work)$/.test(next?.text ?? '')) return setEmpty(reading, 2);
  if (word === 'no' && next?.text === 'feeder') {
    reading.seen.feeder = null;
    return clause.indexOf(next) - i + 1;
  }
  if (/^(off|everything|all|work|knitting)$/.test(word)) {
    const falls = clause.some(({ text }) => fallenWords.test(text));
    return falls ? setEmpty(reading, clause.length - i) : leaveOut(reading, token);
  }
  if (fallenWords.test(word)) {
    const one = clause.some(({ text }) => text === 'stitch' || text === 'one');
    if (!one) return setEmpty(reading, clause.length - i);
    reading.ladder = true;
    return clause.length - i;
  }
  if ((word === 'stitch' || word === 'one') && clause.some(({ text }) => fallenWords.test(text))) return 1;
  return readCountWord(reading, token, clause, i);
}

function readCarriage(reading: SeenSoFar, clause: readonly Token[], i: number): number {
  const next = clause
    .slice(i + 1)
    .find(({ text }) => text === 'left' || text === 'right' || /^[lr]$/.test(text));
  const far = next && clause.slice(i + 1, clause.indexOf(next)).some(({ kind }) => kind !== 'word');
  if (!next || far) {
    const word = after(clause, i, 1)?.typed ?? null;
    reading.fault ??= { code: 'chat/not-a-side', word };
    return 1;
  }
  reading.seen.carriage = next.text.startsWith('l') ? 'left' : 'right';
  return clause.indexOf(next) - i + 1;
}

function readFeeder(reading: SeenSoFar, clause: readonly Token[], i: number): number {
  const next = after(clause, i, 1);
  if (!next) {
    const yarnAsked = yarnAskedIn(reading.known);
    if (yarnAsked) reading.seen.feeder = yarnAsked;
    else if (reading.seen.feeder === undefined)
      reading.fault ??= { code: 'chat/needs-more', usage: 'find feeder mint' };
    return 1;
  }
  const isKnown = next.kind === 'yarn' || isNothing(next.text);
  if (!isKnown && reading.seen.feeder !== undefined) return 1;
  reading.seen.feeder = isNothing(next.text) ? null : next.kind === 'yarn' ? next.text : next.typed;
  return clause.indexOf(next) - i + 1;
}

/** `move 4`, `since row 12`, `in stripe 3`. */
function readMoment(reading: SeenSoFar, clause: readonly Token[], i: number): number {
  const word = clause[i]?.text;
  const at = word === 'move' ? i : i + 1;
  const what = clause[at]?.text.replace(/s$/, '');
  const number = clause[at + 1];
  if (
    number?.kind !== 'number' ||
    !(what === 'move' || what === 'stripe' || (what === 'row' && word === 'since'))
  )
    return 1;
  reading.moment = { by: what, number: Number(number.text) };
  return at + 2 - i;
}
