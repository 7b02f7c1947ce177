/** Slips that could be behind what is seen once `done` steps are confirmed, the newest and the commonest first. */
import { parseNeedle } from '../../bed/needles.ts';
import { type Job, stepAt } from '../../steps/job.ts';
import { rehangsAfter } from '../../steps/outline.ts';
import type { Phase } from '../../steps/step.ts';
import type { Look } from '../locate/seen.ts';
import { type ShapingSlip, type Slip, shapingSlips } from '../mend/slip.ts';
import { bedAtPlace } from '../rip-back/bed-at-place.ts';
import { farMoves, farRows } from './could-show.ts';
import { isPass } from './slip-moment.ts';

/** How far back slips are looked for: shaping moves, rows, stripes. */
export interface Reach {
  readonly moves: number;
  readonly rows: number;
  readonly stripes: number;
}

/** Moves of the last ten, and rows that those take where a move comes every second row. */
export const farReach: Reach = { moves: farMoves, rows: farRows, stripes: farMoves };
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
    ...otherYarns(job, look, past),
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
  for (let number = done; number > 0; number--) {
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

function otherYarns(job: Job, look: Look, { stripes, passes }: Past): readonly Slip[] {
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
  return [...whole, ...row];
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
