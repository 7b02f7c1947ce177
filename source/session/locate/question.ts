/** Which question `find` asks about places: the fact that is expected to leave fewest of those that look alike. */
import type { PlaceIndex } from './place-index.ts';
import type { Fact } from './seen.ts';

/** More places than this are judged by an even sample of them. */
const sampleSize = 256;

/** The facts that tell `places` apart, by how many are expected to be left once each is known. */
export function questions(
  index: PlaceIndex,
  places: readonly number[],
  askable: readonly Fact[],
): readonly Fact[] {
  const size = Math.min(places.length, sampleSize);
  const sample = Array.from({ length: size }, (_, i) => places[Math.floor((i * places.length) / size)] ?? 0);
  return askable
    .map((fact) => ({ fact, left: expectedLeft(sample.map((place) => index.columns[fact][place])) }))
    .filter(({ left }) => left < sample.length)
    .toSorted((a, b) => a.left - b.left)
    .map(({ fact }) => fact);
}

/** Each value is as likely as the share that shows it, and leaves just those: Σ n² / Σ n. */
export function expectedLeft(values: readonly unknown[]): number {
  const counts = new Map<unknown, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts.values()].reduce((sum, count) => sum + count * count, 0) / values.length;
}
