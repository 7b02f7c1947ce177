/**
 * The way back: what the hands really did, undone newest first, slips that were kept and made up for among it. Rows come out one
 * at a time and every loop is caught; the carriage crosses without knitting and the row counter is turned back. Weights come
 * off first and go on last, and what the hands cannot take back is marked, with what to do instead (common practice).
 */
import { fail, type Result, succeed } from '../../shared/result.ts';
import type { Act } from '../../steps/act.ts';
import { type Job, rowAt, stepAt } from '../../steps/job.ts';
import {
  type Care,
  type Detour,
  type HandStep,
  handStep,
  irreversibleOf,
  type Whereabouts,
} from '../mend/mend.ts';
import { afterwards, type Done, detoursBy, historyOf, takingBack } from './history.ts';
import { cordBegins, hangs, passedOver, releases, wasteBegins } from './passed-over.ts';
import { weightsAt } from './weights.ts';

export interface RipBack {
  readonly fromDone: number;
  /** Where it leads: before the place that was asked for where a kept mistake lies across that, or waste that is gone. */
  readonly toDone: number;
  readonly askedDone: number;
  /** Why it does not end there; null where it does. */
  readonly goesOn: 'kept' | 'waste' | null;
  readonly steps: readonly HandStep[];
  /** Main-yarn rows left on the work. */
  readonly row: number;
  readonly irreversible: readonly HandStep[];
}

export type RipBackFault =
  | { readonly code: 'rip-back/no-such-place'; readonly done: number; readonly stepCount: number }
  | { readonly code: 'rip-back/not-behind'; readonly fromDone: number; readonly toDone: number };

/** The way from where the work stands back to `askedDone`; steps that leave nothing to undo are passed over. */
export function ripBack(standing: Whereabouts, askedDone: number): Result<RipBack, RipBackFault> {
  const { job, done: fromDone } = standing;
  const { stepCount } = job;
  const isPlace = Number.isInteger(askedDone) && askedDone >= 0 && askedDone <= stepCount;
  if (!isPlace) return fail({ code: 'rip-back/no-such-place', done: askedDone, stepCount });
  if (askedDone >= fromDone) return fail({ code: 'rip-back/not-behind', fromDone, toDone: askedDone });
  const detours = detoursBy(standing, fromDone);
  const toDone = startBefore(job, detours, askedDone, fromDone);
  const steps = wayBack(job, historyOf(job, detours, toDone, fromDone), toDone, fromDone);
  return succeed({
    fromDone,
    toDone,
    askedDone,
    goesOn: toDone === askedDone ? null : acrossKept(detours, askedDone) ? 'kept' : 'waste',
    steps,
    row: rowAt(job, toDone),
    irreversible: steps.filter((step) => step.irreversible !== null),
  });
}

const acrossKept = (detours: readonly Detour[], asked: number): Detour | undefined =>
  detours.findLast(({ from, through }) => from < asked && asked < through);

/** In the middle of a kept slip no bed is the plan's, nor in waste that is gone: the way goes on to before it. */
function startBefore(job: Job, detours: readonly Detour[], asked: number, from: number): number {
  const to = acrossKept(detours, asked)?.from ?? beforeGoneWaste(job, asked, from);
  return to === asked ? asked : startBefore(job, detours, to, from);
}

const wasteActs: ReadonlySet<Act['kind']> = new Set(['thread-waste', 'waste-rows', 'weights-off']);

/** Waste rows that have been unpicked, or folded away under the loops that hang again, cannot be caught any more. */
function beforeGoneWaste(job: Job, asked: number, from: number): number {
  const actAt = (number: number) => stepAt(job, number).act.kind;
  let first = asked;
  while (first > 0 && wasteActs.has(actAt(first))) first--;
  if (first === asked || stepAt(job, asked).phase === 'cast-on') return asked;
  for (let number = asked + 1; number <= from; number++) {
    const act = actAt(number);
    if (act === 'rehang' || act === 'release-waste') return first;
  }
  return asked;
}

function wayBack(job: Job, history: readonly Done[], toDone: number, fromDone: number): readonly HandStep[] {
  const steps: HandStep[] = [];
  for (let i = history.length - 1; i >= 0; i--) {
    const begins = wasteBegins(job, history, i) ?? cordBegins(history, i);
    if (begins === null) steps.push(...undone(history[i] as Done));
    else {
      steps.push(...passedOver(history, begins, i));
      i = begins;
    }
  }
  const last = steps.at(-1);
  if (last) steps[steps.length - 1] = { ...last, done: toDone };
  return withWeights(job, steps, toDone, fromDone);
}

function undone({ before, moves, step, rowBefore, doneBefore }: Done): readonly HandStep[] {
  // Waste unpicked from under loops that hang again held nothing: that it stays out is no harm.
  const heldNothing = releases({ moves }) && hangs(before);
  const back = heldNothing
    ? []
    : takingBack(before, moves).filter((move) => !('undo' in move && move.undo === 'counter'));
  const irreversible = step && !heldNothing ? irreversibleOf(step) : null;
  const counts = before.counter !== null && afterwards(before, moves).counter !== before.counter;
  if (back.length === 0 && !counts) return [];
  const row = before.counter ?? rowBefore;
  return [handStep({ moves: back, row, setsCounter: counts, irreversible, done: doneBefore })];
}

/** Weights come off before rows do, a hand under each, and are hung on again last. */
export function withWeights(
  job: Job,
  steps: readonly HandStep[],
  toDone: number,
  fromDone: number,
): readonly HandStep[] {
  const pulls = steps.some(({ moves }) => moves.some((move) => 'undo' in move && move.undo === 'knit'));
  const isHeld = steps.some(({ care }) => care?.is === 'hold-on-strand');
  const [from, to] = [weightsAt(job, fromDone), weightsAt(job, toDone)];
  const off =
    from !== null && pulls ? [caring(job, fromDone, { is: 'weights-off', comb: from === 'comb' })] : [];
  if (to === null || !(pulls || isHeld)) return [...off, ...steps];
  const { left, right } = stepAt(job, toDone).after;
  const on = { is: 'weights-on', comb: to === 'comb', left: left ?? '', right: right ?? '' } as const;
  return [...off, ...steps, caring(job, toDone, on)];
}

const caring = (job: Job, done: number, care: Care): HandStep =>
  handStep({ moves: [], row: rowAt(job, done), care, done });
