/**
 * What finished bags tell of the next one of the same swatch: the factor between the size that was foretold and the size
 * that came out, and how far bags lie apart. Three bags at least (rule of thumb). A bag that lies further from the middle one
 * than 5 % and than three times the usual distance does not count: it was measured wrong, or something else was other
 * with it (rule of thumb; the distance is the median one, times 1.4826 as for a normal distribution).
 */
import { medianOf } from '../shared/numbers.ts';
import type { Brief, Learned } from './brief.ts';

/** What came out over what was foretold, of one bag. */
export interface CameOut {
  readonly width: number;
  readonly depth: number;
}

const leastBags = 3;
const leastFarOff = 0.05;
const deviationsFarOff = 3;
const normalDeviation = 1.4826;

/** Null where too few bags agree. */
export function learn(outcomes: readonly CameOut[]): Learned | null {
  const [width, depth] = [farFromMiddle(outcomes, 'width'), farFromMiddle(outcomes, 'depth')];
  const counting = outcomes.filter((outcome) => !width(outcome) && !depth(outcome));
  if (counting.length < leastBags) return null;
  const factor = (side: keyof CameOut): number => mean(counting.map((outcome) => outcome[side]));
  const [widthFactor, depthFactor] = [factor('width'), factor('depth')];
  const squares = counting.map(
    (outcome) => (outcome.width / widthFactor - 1) ** 2 + (outcome.depth / depthFactor - 1) ** 2,
  );
  return {
    bags: counting.length,
    setAside: outcomes.length - counting.length,
    widthFactor,
    depthFactor,
    // Width and depth together: two means were taken from the 2n sizes.
    spread: Math.sqrt((mean(squares) * counting.length) / (2 * (counting.length - 1))),
  };
}

function farFromMiddle(outcomes: readonly CameOut[], side: keyof CameOut): (outcome: CameOut) => boolean {
  const middle = medianOf(outcomes.map((outcome) => outcome[side])) ?? 1;
  const usual =
    normalDeviation * (medianOf(outcomes.map((outcome) => Math.abs(outcome[side] - middle))) ?? 0);
  const far = Math.max(leastFarOff * middle, deviationsFarOff * usual);
  return (outcome) => Math.abs(outcome[side] - middle) > far;
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/**
 * Two-sided factors of Student's distribution for 95.45 %, by degrees of freedom (JCGM 100:2008, table G.2): few bags tell
 * the spread badly.
 */
const student: readonly (readonly [freedom: number, factor: number])[] = [
  [4, 2.87],
  [6, 2.52],
  [8, 2.37],
  [10, 2.28],
  [12, 2.23],
  [16, 2.17],
  [20, 2.13],
  [30, 2.09],
  [50, 2.05],
];

/** Standard uncertainty of the next bag's size, as a share of it: its own spread, and what the mean of so many leaves open. */
export function nextBagDoubt({ bags, spread }: Pick<Learned, 'bags' | 'spread'>): number {
  const freedom = 2 * (bags - 1);
  const factor = student.findLast(([least]) => least <= freedom)?.[1] ?? 2;
  return (factor / 2) * spread * Math.sqrt(1 + 1 / bags);
}

/** Bags whose keys are equal are of one swatch: knitted with the same yarns on the same bed at the same stitch size. */
export function swatchKey(brief: Brief): string {
  const { bed, swatch, finishState, crawl, shapeEveryRows, stripes, yarns } = brief;
  const used = [...new Set(brief.scraps ? yarns.keys() : stripes.map(({ yarn }) => yarn))].sort();
  const thickness = used.map((name) => [name, yarns.get(name)?.metresPer100g ?? null]);
  return JSON.stringify([bed.needles, bed.pitchMm, swatch, finishState, crawl, shapeEveryRows, thickness]);
}
