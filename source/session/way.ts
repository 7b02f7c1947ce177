/** A way that the hands are on, back or through a mend: its steps come before the plan's, and each is kept as it is done. */
import type { Bed } from '../bed/bed.ts';
import type { Move } from '../bed/move.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { type Job, stepAt } from '../steps/job.ts';
import { baseOf, isUnhung } from './diagnose/slip-moment.ts';
import { type Story, storyOf } from './diagnose/story.ts';
import { waysOut } from './diagnose/ways-out.ts';
import { withoutStray } from './diagnose/without-stray.ts';
import {
  afterHandStep,
  type Detour,
  type HandStep,
  type How,
  type Mend,
  type MendMove,
  type SetRight,
  type Whereabouts,
} from './mend/mend.ts';
import type { Slip } from './mend/slip.ts';
import { bedReally, detoursBy } from './rip-back/history.ts';
import { type RipBackFault, ripBack } from './rip-back/rip-back.ts';

export interface Way {
  readonly kind: 'rip' | 'mend';
  readonly steps: readonly HandStep[];
  /** What the bed held before the first of them, and the planned steps whose work hung there then. */
  readonly from: Bed;
  readonly stood: number;
  /** Steps of the way that are done. */
  readonly at: number;
  /** What the bed holds now. */
  readonly bed: Bed;
  /** Steps confirmed once the way is gone to its end. */
  readonly thenDone: number;
  /** What is then kept of a mend; null for a way back. */
  readonly mend: SetRight | null;
}

/** A way without what follows from the rest of it, and takes the most room: what the bed holds. */
export type WayWithoutBed = Omit<Way, 'bed'>;

export type WayFault =
  | { readonly code: 'way/on-the-way'; readonly back: boolean; readonly at: number; readonly of: number }
  | { readonly code: 'way/not-on-one' }
  | { readonly code: 'way/no-such-mend' }
  /** A way was left where the bed is not what any step expects. */
  | { readonly code: 'way/between-places' };

export function ripWay(standing: Whereabouts, toDone: number): Result<Way, RipBackFault> {
  const back = ripBack(standing, toDone);
  if (!back.ok) return back;
  const { job, done } = standing;
  const bed = bedReally(job, detoursBy(standing, done), done);
  return succeed({
    kind: 'rip',
    steps: back.value.steps,
    from: bed,
    stood: done,
    at: 0,
    bed,
    thenDone: back.value.toDone,
    mend: null,
  });
}

/** Which mend of which mistakes: all else follows from it. */
export interface MendName {
  readonly mistakes: readonly Slip[];
  /** Steps that count as confirmed, with the mistakes in them. */
  readonly place: number;
  readonly how: How;
  readonly thenDone: number;
}

export function mendWay(job: Job, { mistakes, place, how, thenDone }: MendName): Result<Way, WayFault> {
  const story = place >= 0 && place <= job.stepCount ? storyOf(job, mistakes, place) : null;
  const mend = story && waysOut(job, story).find((one) => one.how === how && one.thenDone === thenDone);
  if (!story || !mend) return fail({ code: 'way/no-such-mend' });
  const set: SetRight = {
    slips: mistakes,
    how,
    done: thenDone,
    detour: mend.shows.length === 0 ? null : detourOf(job, story, mend),
  };
  const { bed } = story;
  return succeed({
    kind: 'mend',
    steps: mend.steps,
    from: bed,
    stood: place,
    at: 0,
    bed,
    thenDone,
    mend: set,
  });
}

/** All that was done from before the slips until they were made up for. */
function detourOf(job: Job, story: Story, mend: Mend): Detour {
  const from = baseOf(job, story.slips, story.done);
  const before = from === 0 ? 0 : stepAt(job, from).row;
  const parts: { moves: Move[]; row: number; step: number }[] = [];
  let row = before;
  for (const { move, step, before: bed } of keptOf(story, mend)) {
    const isMain = move.move === 'knit' && job.plan.brief.yarns.has(bed.feeder ?? '');
    if (isMain) row++;
    const last = parts.at(-1);
    if (last && last.step === step && move.move !== 'knit' && last.row === row) last.moves.push(move);
    else parts.push({ moves: [move], row, step });
  }
  for (let step = from + 1; step <= story.done; step++) {
    const planned = stepAt(job, step);
    const released = planned.moves.filter(({ move }) => move === 'release');
    if (released.length > 0 && !isUnhung(story.slips, planned))
      parts.push({ moves: released, row: planned.row, step });
  }
  parts.sort((a, b) => a.step - b.step);
  const kept = mend.steps.map(({ moves, row: shown }) => ({ moves: moves.filter(isForward), row: shown }));
  return {
    from,
    through: mend.thenDone,
    parts: [...parts.map(({ moves, row: shown }) => ({ moves, row: shown })), ...kept],
  };
}

/** What was made as it hangs there after the mend: of a column that is dropped nothing is left to be taken back. */
const keptOf = (story: Story, { steps }: Mend): Story['made'] =>
  (steps.some(({ moves }) => moves.some(isDrop)) ? withoutStray(story)?.story : null)?.made ?? story.made;

const isDrop = (move: MendMove): boolean => 'undo' in move && move.undo === 'stray';

/** Rows come out: on a way back, and on a mend that begins with one. */
export const goesBack = ({ kind, mend }: Pick<Way, 'kind' | 'mend'>): boolean =>
  kind === 'rip' || mend?.how === 'rip';

const isForward = (move: MendMove): move is Move => 'move' in move;

/** Its next step done: the way, and how many planned steps are confirmed by then. */
export function onWay(
  way: Way,
  stitches: number,
): { readonly way: Way | null; readonly done: number | null } {
  const step = way.steps[way.at];
  const at = way.at + 1;
  if (!step || at >= way.steps.length) return { way: null, done: way.thenDone };
  return {
    way: { ...way, at, bed: bedAfter(way.bed, step, stitches) },
    done: way.kind === 'rip' ? step.done : null,
  };
}

function bedAfter(bed: Bed, step: HandStep, stitches: number): Bed {
  const after = afterHandStep(bed, step, stitches);
  return after.ok ? after.value : bed;
}

export const withoutBed = ({ kind, steps, from, stood, at, thenDone, mend }: Way): WayWithoutBed => ({
  kind,
  steps,
  from,
  stood,
  at,
  thenDone,
  mend,
});

/** A way that was left, as it was then. */
export const withBed = (way: WayWithoutBed, stitches: number): Way => ({
  ...way,
  bed: way.steps.slice(0, way.at).reduce((bed, step) => bedAfter(bed, step, stitches), way.from),
});
