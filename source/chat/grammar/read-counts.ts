/** Needles of the edges and counts, as they are said: each part says how many words it took. */
import {
  after,
  type CountFact,
  countWords,
  isSide,
  leaveOut,
  type SeenSoFar,
  type Token,
} from './seen-words.ts';

/** `R10 R55`, `left R10`, `R55 on the right`. */
export function readNeedle(reading: SeenSoFar, clause: readonly Token[], i: number): number {
  const needle = clause[i]?.text ?? '';
  const joined = clause[i + 1]?.text === 'on' || clause[i + 1]?.text === 'in';
  const side = joined ? clause[i + 2]?.text : undefined;
  if (isSide(side)) {
    reading.seen[side] = needle;
    return 3;
  }
  const isAlone = clause.filter(({ kind }) => kind === 'needle').length === 1;
  const after = clause[i + 1]?.text;
  if (isAlone && isSide(after) && i + 2 === clause.length) {
    reading.seen[after] = needle;
    return 2;
  }
  reading.needles.push(needle);
  return 1;
}

export function readSide(
  reading: SeenSoFar,
  side: 'left' | 'right',
  clause: readonly Token[],
  i: number,
): number {
  const first = after(clause, i, 1);
  const next = first?.text === 'stitch' ? after(clause, i, 2) : first;
  if (next?.kind === 'needle') {
    reading.seen[side] = next.text;
    return clause.indexOf(next) - i + 1;
  }
  if (next?.text === 'carriage') {
    reading.seen.carriage = side;
    return clause.indexOf(next) - i + 1;
  }
  reading.fault ??= { code: 'chat/left-of-what', word: side };
  return 1;
}

/** Two edges tell by themselves which is which; one alone does not. */
export function placeNeedles(reading: SeenSoFar): void {
  const { needles, seen } = reading;
  const [one, other] = needles.toSorted((a, b) => across(a) - across(b));
  if (one === undefined) return;
  if (needles.length > 2) reading.fault ??= { code: 'chat/too-many-needles', needles };
  else if (other !== undefined) {
    seen.left = one;
    seen.right = other;
  } else if (seen.left !== undefined && seen.right === undefined) seen.right = one;
  else if (seen.right !== undefined && seen.left === undefined) seen.left = one;
  else reading.fault ??= { code: 'chat/which-edge', needle: one };
}

/** Counted to the right from the middle of the bed. */
const across = (needle: string): number => (needle.startsWith('L') ? -1 : 1) * Number(needle.slice(1));

export function readNumber(reading: SeenSoFar, clause: readonly Token[], i: number): number {
  const value = Number(clause[i]?.text);
  const unit = clause[i + 1];
  const third = clause[i + 2];
  if (unit?.kind === 'yarn' && /^rows?$/.test(third?.text ?? '')) return rowsOf(reading, unit.text, value, 3);
  if (unit?.text === 'in' && /^stripes?$/.test(third?.text ?? ''))
    return setCount(reading, 'rowsOfColour', value, 3);
  if (/^rows?$/.test(unit?.text ?? '')) {
    if (third?.kind === 'yarn' || third?.text === 'waste') return rowsOf(reading, third.text, value, 3);
    if (third?.text === 'down') {
      reading.moment = { by: 'rows-down', number: value };
      return 3;
    }
    const where = after(clause, i, 2);
    if (where && /^stripes?$/.test(where.text))
      return setCount(reading, 'rowsOfColour', value, clause.indexOf(where) - i + 1);
    return setCount(reading, 'rowCounter', value, 2);
  }
  if (/^(cords?|sections?)$/.test(unit?.text ?? '') && third?.text === 'finished')
    return setCount(reading, 'piecesDone', value, 3);
  const onCounter = after(clause, i, 1);
  if (onCounter?.text === 'counter')
    return setCount(reading, 'rowCounter', value, clause.indexOf(onCounter) - i + 1);
  const fact = unit?.kind === 'word' ? countWords[unit.text] : undefined;
  if (fact)
    return setCount(reading, fact, value, fact === 'wasteRows' && /^rows?$/.test(third?.text ?? '') ? 3 : 2);
  const isWaste = unit?.kind === 'yarn' && unit.text === 'waste';
  if (isWaste) return setCount(reading, 'wasteRows', value, 2);
  if (clause[i - 1]?.kind === 'number' || clause.length > 1) reading.leftOut.push(clause[i]?.typed ?? '');
  else reading.fault ??= { code: 'chat/count-of-what', word: clause[i]?.typed ?? '' };
  return 1;
}

export function rowsOf(reading: SeenSoFar, yarn: string, value: number, taken: number): number {
  if (yarn === 'waste') return setCount(reading, 'wasteRows', value, taken);
  reading.seen.lastColour = yarn;
  return setCount(reading, 'rowsOfColour', value, taken);
}

function setCount(reading: SeenSoFar, fact: CountFact, value: number, taken: number): number {
  reading.seen[fact] = value;
  return taken;
}

/** `row 34`, `row counter 34`, `counter shows 38`, `row 2 of 2 in this stripe`. */
export function readCountWord(reading: SeenSoFar, token: Token, clause: readonly Token[], i: number): number {
  // Of a row that is finished the row is told.
  if (token.text === 'finished' && /^rows?$/.test(clause[i + 1]?.text ?? '')) return 1;
  const fact = countWords[token.text];
  if (!fact) return leaveOut(reading, token);
  let at = i + 1;
  while (/^(rows?|counter|count|on)$/.test(clause[at]?.text ?? '')) at++;
  const number = clause[at];
  if (number?.kind !== 'number') return missingCount(reading, token, number, fact);
  const value = Number(number.text);
  const rest = clause.slice(at + 1).filter(({ text }) => text !== 'in' && text !== 'on');
  const [of, where, what] = rest;
  if (fact === 'rowCounter' && of?.kind === 'number' && !beginsCount(reading, of, where, what)) {
    const saysStripe = /^stripes?$/.test(where?.text ?? '');
    const isOfStripe =
      saysStripe ||
      (Number(of.text) !== reading.known.knittedRows && Number(of.text) <= reading.known.stripeRows);
    reading.seen[isOfStripe ? 'rowsOfColour' : 'rowCounter'] = value;
    return clause.indexOf(saysStripe && where ? where : of) - i + 1;
  }
  if (fact === 'rowCounter' && of?.kind === 'yarn' && /^rows?$/.test(token.text))
    return rowsOf(reading, of.text, value, at + 2 - i);
  if (fact === 'rowCounter' && of && /^stripes?$/.test(of.text) && where?.kind !== 'number')
    return setCount(reading, 'rowsOfColour', value, clause.indexOf(of) - i + 1);
  const isOpen =
    fact === 'rowCounter' && token.text === 'row' && at === i + 1 && value <= reading.known.stripeRows;
  if (isOpen) reading.askRow = value;
  else reading.seen[fact] = value;
  return at + 1 - i;
}

/** In `row 13 3 rows of mint` the second number counts something else: it is not `row 13 of 3`. */
function beginsCount({ known }: SeenSoFar, of: Token, where?: Token, what?: Token): boolean {
  const counted = where?.kind === 'yarn' ? what : where;
  return (
    Number(of.text) !== known.knittedRows && /^(rows|sts|stitches|loops|waste)$/.test(counted?.text ?? '')
  );
}

function missingCount(reading: SeenSoFar, token: Token, number: Token | undefined, fact: CountFact): number {
  if (fact === 'wasteRows') {
    reading.seen.lastColour = 'waste';
    return 1;
  }
  if (
    number?.kind === 'yarn' ||
    number?.kind === 'needle' ||
    (number === undefined && reading.seen[fact] !== undefined)
  )
    return 1;
  if (fact === 'stitches' && token.text === 'stitch') return leaveOut(reading, token);
  reading.fault ??= {
    code: 'chat/not-a-count',
    word: number?.typed ?? null,
    usage: `${token.text} 8`,
  };
  return 1;
}
