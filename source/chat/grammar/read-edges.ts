/** Edge needles as they are said: `R10 R55`, `left R10`, `R55 on the right`. Each part says how many words it took. */
import { after, isSide, type Reading } from './reading.ts';
import type { Token } from './seen-words.ts';

export function readNeedle(reading: Reading, clause: readonly Token[], i: number): number {
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
  reading: Reading,
  side: 'left' | 'right',
  clause: readonly Token[],
  i: number,
): number {
  const next = after(clause, i, 1);
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
export function placeNeedles(reading: Reading): void {
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
