/**
 * The fabric that passes leave, row by row, as far as it shows: colour, edges, holes, and needles that held too much. Two
 * fabrics are told apart by it, so what will be seen of a slip that is kept is found out and not looked up.
 */
import { type Bed, edgesOf, type Needle, type Side } from '../../bed/bed.ts';
import type { Trace } from '../mend/mend.ts';

/** One row as it was knitted on the bed. Needles are places. */
export interface FabricRow {
  readonly yarn: string;
  readonly left: number;
  readonly right: number;
  /** Empty working needles between the edges: eyelets, and holes. */
  readonly holes: readonly number[];
  /** Needles between the edges that were out of work. */
  readonly gaps: number;
  /** Needles that held three loops or more. */
  readonly thick: number;
  /** Loops begun on nothing, beyond the edges. */
  readonly strays: number;
}

/** The row that a pass with `yarn` knits on `bed`. */
export function fabricRow(bed: Bed, yarn: string): FabricRow {
  const { left, right } = edgesOf(bed);
  const [first, last] = [left ?? 0, right ?? -1];
  const holes: number[] = [];
  let gaps = 0;
  let thick = 0;
  let strays = 0;
  for (let place = 0; place < bed.needles.length; place++) {
    const { working, loopCount } = bed.needles[place] as Needle;
    if (loopCount === 1) continue;
    if (loopCount > 2) thick++;
    if (loopCount > 0) continue;
    const inside = place > first && place < last;
    if (!working) gaps += inside ? 1 : 0;
    else if (inside) holes.push(place);
    else strays++;
  }
  return { yarn, left: first, right: last, holes, gaps, thick, strays };
}

const sameRow = (one: FabricRow, other: FabricRow | undefined): boolean =>
  one.yarn === other?.yarn &&
  one.left === other.left &&
  one.right === other.right &&
  one.gaps === other.gaps &&
  one.thick === other.thick &&
  one.strays === other.strays &&
  one.holes.join() === other.holes.join();

export const sameFabric = (one: readonly FabricRow[], other: readonly FabricRow[]): boolean =>
  one.length === other.length && one.every((row, i) => sameRow(row, other[i]));

/** What will be seen of `made` beside `planned`, both begun on the same bed and ending on the same. */
export function tracesIn(
  made: readonly FabricRow[],
  planned: readonly FabricRow[],
  crawl: Side,
): readonly Trace[] {
  if (sameFabric(made, planned)) return [];
  const shows = new Set<Trace>(colourTraces(made, planned));
  for (const [i, row] of made.entries()) {
    const due = made.length === planned.length ? planned[i] : undefined;
    const trailing = crawl === 'left' ? 'right' : 'left';
    if (due && due[crawl] !== row[crawl]) shows.add('step-in-leading-edge');
    if (due && due[trailing] !== row[trailing]) shows.add('step-in-trailing-edge');
    if (row.thick > 0) shows.add('three-in-one');
    if (row.strays > 0) shows.add('loop-at-edge');
    if (row.gaps > 0) shows.add('ladder');
    if (row.holes.some((place) => row.holes.includes(place + 1))) shows.add('wide-hole');
    if (row.holes.some((place) => isNear(row, place, trailing))) shows.add('hole-at-trailing-edge');
  }
  for (const trace of eyeletTraces(made, planned)) shows.add(trace);
  return [...shows];
}

const isNear = ({ left, right }: FabricRow, place: number, side: Side): boolean =>
  side === 'left' ? place - left < right - place : right - place < place - left;

function eyeletTraces(made: readonly FabricRow[], planned: readonly FabricRow[]): readonly Trace[] {
  const count = (rows: readonly FabricRow[]): number =>
    rows.reduce((sum, { holes }) => sum + holes.length, 0);
  const more = count(made) - count(planned);
  if (more > 0) return ['extra-eyelet'];
  if (more < 0) return ['eyelet-missing'];
  const where = (rows: readonly FabricRow[]): string => rows.map(({ holes }) => holes.join()).join(';');
  return made.length === planned.length && where(made) !== where(planned) ? ['eyelet-out-of-line'] : [];
}

function colourTraces(made: readonly FabricRow[], planned: readonly FabricRow[]): readonly Trace[] {
  const more = made.length - planned.length;
  if (more > 0) return ['stripe-too-high'];
  if (more < 0) return ['stripe-too-low'];
  return made.some(({ yarn }, i) => yarn !== planned[i]?.yarn) ? ['wrong-colour'] : [];
}
