/**
 * Needles are numbered outward from the middle of the bed: L1, L2 … to the left and R1, R2 … to the right.
 * There is no needle 0, and a bed with an odd count has its extra needle on the right (common practice).
 * Inside the program a needle is its place: 0 at the far left, counting up to the right.
 */

const leftHalf = (needleCount: number): number => Math.floor(needleCount / 2);

/** The name of the needle at `place` (0 … needleCount − 1). */
export function formatNeedle(needleCount: number, place: number): string {
  const left = leftHalf(needleCount);
  return place < left ? `L${left - place}` : `R${place - left + 1}`;
}

const needleName = /^([lr])([1-9]\d{0,3})$/i;

/** Whether a word names a needle, on this bed or a longer one. */
export const isNeedleName = (word: string): boolean => needleName.test(word);

/** The place of a needle named `L7` or `r12`; null when the name is malformed or the bed has no such needle. */
export function parseNeedle(needleCount: number, name: string): number | null {
  const match = needleName.exec(name);
  if (!match) return null;
  const left = leftHalf(needleCount);
  const number = Number(match[2]);
  const place = match[1]?.toLowerCase() === 'l' ? left - number : left + number - 1;
  return place >= 0 && place < needleCount ? place : null;
}

/** Names of all needles of a bed, by how many it has. */
const namesOfBed = new Map<number, readonly string[]>();

/** Names of all needles from `first` to `last`, both included, left to right. */
export function formatNeedles(needleCount: number, first: number, last: number): readonly string[] {
  const all =
    namesOfBed.get(needleCount) ??
    Array.from({ length: needleCount }, (_, place) => formatNeedle(needleCount, place));
  namesOfBed.set(needleCount, all);
  return all.slice(first, last + 1);
}
