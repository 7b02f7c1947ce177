/** Slips that could be behind what is seen once `done` steps are confirmed, the newest and the commonest first. */
import { parseNeedle } from '../../bed/needles.ts';
import { type Job, rowAt, stepAt } from '../../steps/job.ts';
import { rehangsAfter } from '../../steps/outline.ts';
import type { Phase } from '../../steps/step.ts';
import { looksAt } from '../locate/looks-of.ts';
import { placeIndex } from '../locate/place-index.ts';
import type { Fact, Look } from '../locate/seen.ts';
import { isShapingSlip, type ShapingSlip, type Slip, shapingSlips } from '../mend/slip.ts';
import { bedAtPlace } from '../rip-back/bed-at-place.ts';
import { isPass, passesUpTo, passOfRow } from './slip-moment.ts';

/** Needles that each edge is too far along the crawl, the leading one first; null where that depends on more. */
const shifts: Readonly<Record<ShapingSlip, readonly (readonly [leading: number, trailing: number])[]>> = {
  'increase-missing': [[-1, 0]],
  'decrease-missing': [[0, -1]],
  'increase-doubled': [[1, 0]],
  'decrease-doubled': [[0, 1]],
  'move-missing': [[-1, -1]],
  'move-doubled': [[1, 1]],
  'move-mirrored': [[-2, -2]],
  'needle-left-working': [
    [0, 0],
    [0, -1],
  ],
  'needle-left-out-of-work': [[0, 0]],
};

/**
 * Whether the edges that are seen can come of these slips, once the moves are made and none is half done: told before any
 * of it is carried out, since most are not.
 */
export function couldShow(job: Job, look: Look, done: number, slips: readonly Slip[]): boolean {
  const step = stepAt(job, Math.max(1, done));
  if (slips.some(({ is }) => is.startsWith('rehang') || is === 'work-dropped')) return true;
  if (!rowsCouldShow(job, look, done, slips)) return false;
  if (step.act.kind === 'increase' || !look.left || !look.right) return true;
  const { crawl, bed } = job.plan.brief;
  const along = crawl === 'left' ? -1 : 1;
  const off = (side: 'left' | 'right'): number =>
    ((parseNeedle(bed.needles, look[side] ?? '') ?? 0) -
      (parseNeedle(bed.needles, step.after[side] ?? '') ?? 0)) *
    along;
  const seen = [off(crawl), off(crawl === 'left' ? 'right' : 'left')] as const;
  let sums: readonly (readonly [number, number])[] = [[0, 0]];
  for (const slip of slips) {
    const own = isShapingSlip(slip) ? shifts[slip.is] : [[0, 0] as const];
    sums = sums.flatMap(([a, b]) => own.map(([c, d]) => [a + c, b + d] as const));
  }
  return sums.some(([leading, trailing]) => leading === seen[0] && trailing === seen[1]);
}

const ofRows: readonly Fact[] = [
  'rowCounter',
  'carriage',
  'lastColour',
  'feeder',
  'rowsOfColour',
  'stripesCounted',
];
const ofYarns: ReadonlySet<Fact> = new Set(['lastColour', 'feeder', 'rowsOfColour', 'stripesCounted']);

/** Whether counter, carriage and colours can come of these slips. */
function rowsCouldShow(job: Job, look: Look, done: number, slips: readonly Slip[]): boolean {
  const due = looksAt(job, done, placeIndex(job).bands);
  const hung = lastHung(job, done);
  const more = slips.reduce((sum, slip) => {
    if (slip.is === 'rows-too-many') return slip.step > hung ? sum + slip.rows : sum;
    if (slip.is !== 'rows-too-few') return sum;
    return sum - passesUpTo(job, slip.step, slip.rows).filter((step) => step > hung).length;
  }, 0);
  const hasRows = slips.some(({ is }) => is.startsWith('rows'));
  const hasYarns = slips.some((slip) => 'used' in slip);
  return ofRows.every((fact) => {
    const seen = look[fact];
    if (seen === undefined) return true;
    if (fact === 'rowCounter') return seen === due.rowCounter + more;
    if (fact === 'carriage') {
      const crosses = (more % 2 !== 0) !== slips.some(({ is }) => is === 'carriage-wrong-side');
      return (seen !== due.carriage) === crosses;
    }
    if (fact === 'feeder' && slips.some(({ is }) => is === 'wrong-yarn-in-feeder')) return true;
    return (ofYarns.has(fact) && (hasRows || hasYarns)) || seen === due[fact];
  });
}

/** The step that hung the work last, and set carriage and counter again; what was knitted before does not show in them. */
function lastHung(job: Job, done: number): number {
  const now = rowAt(job, done);
  for (let row = now; row > 0 && row > now - farReach.rows; row--) {
    if (!rehangsAfter(job.outline, row)) continue;
    let step = passOfRow(job, row) + 1;
    while (step < job.stepCount && stepAt(job, step).act.kind !== 'release-waste') step++;
    if (step <= done) return step;
  }
  return 0;
}

/** How far back slips are looked for: shaping moves, rows, stripes. */
export interface Reach {
  readonly moves: number;
  readonly rows: number;
  readonly stripes: number;
}

/** Moves of the last ten, and rows that those take where a move comes every second row. */
export const farReach: Reach = { moves: 11, rows: 24, stripes: 11 };
export const nearReach: Reach = { moves: 2, rows: 4, stripes: 2 };

interface Past {
  readonly moves: readonly number[];
  /** Pass steps, and the decreases that follow some of them: where a row too many can come. */
  readonly passes: readonly number[];
  readonly rowEnds: readonly number[];
  readonly stripes: readonly number[];
  /** Rows after which the work was hung again. */
  readonly rehangs: readonly number[];
}

export function supposed(job: Job, look: Look, done: number, reach: Reach): readonly Slip[] {
  // Once the strip is off, what hangs on the bed, a hem or a cord, tells nothing of its rows.
  if (afterStrip.has(stepAt(job, done).phase)) return [];
  const past = pastOf(job, done, reach);
  if (look.left === null && look.right === null) return dropped(job, done);
  return [
    ...past.passes
      .slice(0, 1)
      .flatMap(() => [1, 2, 3].map((rows) => ({ is: 'rows-too-many', rows, step: done }) as const)),
    ...past.moves.flatMap((move) => shapingSlips.map((is: ShapingSlip) => ({ is, move }))),
    ...past.rowEnds.flatMap((step) =>
      [1, 2, 3].map((rows) => ({ is: 'rows-too-many', rows, step }) as const),
    ),
    ...past.passes.flatMap((step) => [1, 2, 3].map((rows) => ({ is: 'rows-too-few', rows, step }) as const)),
    ...otherYarns(job, look, past, done),
    ...rehangs(job, look, done, past),
    ...(look.carriage === undefined ? [] : [{ is: 'carriage-wrong-side' } as const]),
    ...feeders(job, look, done),
    ...(look.stitches === undefined ? [] : [{ is: 'stitch-dropped' } as const]),
  ];
}

const afterStrip: ReadonlySet<string> = new Set<Phase>(['hem', 'graft', 'seam', 'cord']);

function pastOf(job: Job, done: number, reach: Reach): Past {
  const moves: number[] = [];
  const passes: number[] = [];
  const rowEnds: number[] = [];
  const rehangs: number[] = [];
  const stripes = new Set<number>();
  for (let number = done; number > 0 && passes.length < reach.moves * 8; number--) {
    const step = stepAt(job, number);
    if (step.phase === 'cast-on') break;
    if (stripes.size >= reach.stripes && moves.length >= reach.moves) break;
    if (step.stripe !== null && stripes.size < reach.stripes) stripes.add(step.stripe);
    const { act } = step;
    if ((act.kind === 'increase' || act.kind === 'decrease') && moves.at(-1) !== act.number) {
      if (moves.length < reach.moves) moves.push(act.number);
    }
    if (act.kind === 'rehang') rehangs.push(step.row);
    if (isPass(step) && passes.length < reach.rows) {
      passes.push(number);
      rowEnds.push(number);
    }
    if (act.kind === 'decrease' && rowEnds.length < 2 * reach.rows) rowEnds.push(number);
  }
  return { moves, passes, rowEnds, rehangs, stripes: [...stripes] };
}

/** An empty bed in the middle of the stripes: the pass confirmed last, or the one to come, had nothing to knit with. */
function dropped(job: Job, done: number): readonly Slip[] {
  const steps = [done, done + 1, done + 2, done + 3].filter((step) => step > 0 && step <= job.stepCount);
  const isNext = steps.find((step) => step > done && isPass(stepAt(job, step)));
  const isLast = isPass(stepAt(job, Math.max(1, done))) ? done : undefined;
  return [isNext, isLast].flatMap((step) =>
    step === undefined ? [] : [{ is: 'work-dropped', step } as const],
  );
}

function otherYarns(job: Job, look: Look, { stripes, passes }: Past, done: number): readonly Slip[] {
  const known = [...job.plan.brief.yarns.keys()];
  const due = (stripe: number): string => job.plan.stripes[stripe - 1]?.yarn ?? '';
  const whole = stripes.flatMap((stripe) =>
    known
      .filter((used) => used !== due(stripe))
      .flatMap((used) => [
        { is: 'stripe-in-other-yarn', stripe, used } as const,
        { is: 'yarns-swapped', stripe, used } as const,
      ]),
  );
  const [last] = passes;
  const yarn = last === undefined ? '' : due(stepAt(job, last).stripe ?? 0);
  const row =
    last !== undefined && look.lastColour && look.lastColour !== yarn && known.includes(look.lastColour)
      ? [{ is: 'row-in-other-yarn', step: last, used: look.lastColour } as const]
      : [];
  return done === 0 ? [] : [...whole, ...row];
}

function rehangs(job: Job, look: Look, done: number, past: Past): readonly Slip[] {
  const needleCount = job.plan.brief.bed.needles;
  const { after } = stepAt(job, Math.max(1, done));
  const side = look.left ? 'left' : 'right';
  const [seen, due] = [look[side], after[side]];
  const by = seen && due ? (parseNeedle(needleCount, seen) ?? 0) - (parseNeedle(needleCount, due) ?? 0) : 0;
  return past.rehangs
    .slice(0, 2)
    .flatMap((row): readonly Slip[] => [
      ...(rehangsAfter(job.outline, row) ? [{ is: 'rehang-missing', row } as const] : []),
      ...(by === 0 ? [] : [{ is: 'rehang-shifted', row, by } as const]),
    ]);
}

function feeders(job: Job, look: Look, done: number): readonly Slip[] {
  const held = look.feeder;
  if (held === undefined || held === bedAtPlace(job, done).feeder) return [];
  return [{ is: 'wrong-yarn-in-feeder', held }];
}
