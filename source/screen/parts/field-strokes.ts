import type { Line } from '../keys/edit-line.ts';

const left = '\x1b[D';
const right = '\x1b[C';
const backspace = '\x7f';

const steps = (from: number, to: number): string[] =>
  Array(Math.abs(to - from)).fill(to < from ? left : right);

function commonStart(one: string, other: string): number {
  let length = 0;
  while (length < one.length && one[length] === other[length]) length++;
  return length;
}

function commonEnd(one: string, other: string, from: number): number {
  const longest = Math.min(one.length, other.length) - from;
  let length = 0;
  while (length < longest && one.at(-1 - length) === other.at(-1 - length)) length++;
  return length;
}

/**
 * What to type into a field that shows `from` so that it shows `to`, in the few keys that ink-text-input
 * knows: Left and Right by one UTF-16 unit, Backspace, text. Never a Left at the start or a Right at the
 * end, where its cursor would leave the line.
 */
export function fieldStrokes(from: Line, to: Line): readonly string[] {
  if (from.text === to.text) return steps(from.cursor, to.cursor);
  const kept = commonStart(from.text, to.text);
  const tail = commonEnd(from.text, to.text, kept);
  const cutEnd = from.text.length - tail;
  const added = to.text.slice(kept, to.text.length - tail);
  return [
    ...steps(from.cursor, cutEnd),
    ...Array(cutEnd - kept).fill(backspace),
    ...(added === '' ? [] : [added]),
    ...steps(kept + added.length, to.cursor),
  ];
}
