/**
 * The way back: what the hands really did, undone newest first, slips that were kept and made up for among it. Rows come out one
 * at a time and every loop is caught; the carriage crosses without knitting and the row counter is turned back. Weights come
 * off first and go on last, and what the hands cannot take back is marked, with what to do instead (common practice).
 */
import { type Bed, edgesOf } from '../../bed/bed.ts';
import type { Move } from '../../bed/move.ts';
import { formatNeedles } from '../../bed/needles.ts';
import { reverseOf } from '../../bed/reverse-of.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import { acts } from '../../steps/acts.ts';
import { type Job, rowAt, stepAt } from '../../steps/job.ts';
import type { Act, Step } from '../../steps/step.ts';
import {
  applyMends,
  type Detour,
  type HandStep,
  handStep,
  irreversibleOf,
  type MendMove,
  type Whereabouts,
} from '../mend/mend.ts';
import { bedAtPlace } from './bed-at-place.ts';

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

/** Kept slips that lie behind, in working order. */
export const detoursBy = ({ mends }: Pick<Whereabouts, 'mends'>, done: number): readonly Detour[] =>
  mends
    .flatMap(({ detour }) => (detour && detour.through <= done ? [detour] : []))
    .toSorted((a, b) => a.from - b.from);

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

/**
 * The bed at a place, slips that were kept counted in: until the next row is knitted over them, needles may hold more loops or
 * fewer than the plan has there.
 */
export function bedReally(job: Job, detours: readonly Detour[], done: number): Bed {
  const last = detours.findLast(({ through }) => through <= done);
  const since = last ? stepsBetween(job, last.through, done) : [];
  if (!last || since.some(({ act }) => acts[act.kind].pass)) return bedAtPlace(job, done);
  const before = detours.slice(0, detours.indexOf(last));
  const made = last.parts.reduce(
    (bed, { moves }) => afterwards(bed, moves),
    bedReally(job, before, last.from),
  );
  const { counter } = bedAtPlace(job, last.through);
  return since.reduce((bed, { moves }) => afterwards(bed, moves), { ...made, counter });
}

/** The steps after `from`, through the first that is a row. */
function stepsBetween(job: Job, from: number, through: number): readonly Step[] {
  const steps: Step[] = [];
  for (let number = from + 1; number <= through; number++) {
    const step = stepAt(job, number);
    steps.push(step);
    if (acts[step.act.kind].pass) break;
  }
  return steps;
}

/** One thing that the hands did, on the bed as it was then. */
interface Done {
  readonly before: Bed;
  readonly moves: readonly Move[];
  readonly step: Step | null;
  readonly rowBefore: number;
  readonly row: number;
  /** Steps confirmed before it; null in the middle of a detour. */
  readonly doneBefore: number | null;
}

function historyOf(job: Job, detours: readonly Detour[], from: number, through: number): readonly Done[] {
  const history: Done[] = [];
  let bed = bedReally(job, detours, from);
  let row = rowAt(job, from);
  const add = (
    moves: readonly Move[],
    rowAfter: number,
    step: Step | null,
    doneBefore: number | null,
  ): void => {
    history.push({ before: bed, moves, step, rowBefore: row, row: rowAfter, doneBefore });
    bed = afterwards(bed, moves);
    row = rowAfter;
  };
  for (let done = from; done < through; ) {
    const detour = detours.find(
      (one) => one.from === done && !(one.from === one.through && one.from === from),
    );
    for (const [i, part] of (detour?.parts ?? []).entries())
      add(part.moves, part.row, null, i === 0 ? done : null);
    if (detour) bed = { ...bed, counter: bedAtPlace(job, detour.through).counter };
    if (detour && detour.through > done) {
      done = detour.through;
      continue;
    }
    const step = stepAt(job, done + 1);
    add(step.moves, step.row, step, done);
    done++;
  }
  for (const detour of detours.filter((one) => one.from === through && one.through === through))
    for (const [i, part] of detour.parts.entries()) add(part.moves, part.row, null, i === 0 ? through : null);
  return history;
}

/** Carries out moves that are known to be possible; a fault is our own bug. */
function afterwards(bed: Bed, moves: readonly MendMove[]): Bed {
  const after = applyMends(bed, moves);
  if (!after.ok) throw new Error(`${JSON.stringify(after.fault)} at ${JSON.stringify(moves)}`);
  return after.value;
}

function wayBack(job: Job, history: readonly Done[], toDone: number, fromDone: number): readonly HandStep[] {
  const steps: HandStep[] = [];
  for (let i = history.length - 1; i >= 0; i--) {
    const begins = wasteBegins(job, history, i) ?? cordBegins(history, i);
    if (begins === null) steps.push(...undone(history[i] as Done));
    else {
      steps.push(...passedOver(job, history, begins, i));
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

/** What takes back all of these moves, when they were made on `bed`. */
function takingBack(bed: Bed, moves: readonly Move[]): readonly MendMove[] {
  const back: MendMove[] = [];
  let now = bed;
  for (const move of moves) {
    const reverse = reverseOf(now, move);
    if (reverse) back.push(reverse);
    now = afterwards(now, [move]);
  }
  return back.toReversed();
}

const hangs = (bed: Bed): boolean => edgesOf(bed).stitchCount > 0;
const has = ({ moves }: Pick<Done, 'moves'>, kind: Move['move']): boolean =>
  moves.some(({ move }) => move === kind);
const releases = ({ moves }: Pick<Done, 'moves'>): boolean =>
  moves.some((move) => move.move === 'release' && move.what === 'waste');

/** Hung from the waste rows, and not only moved on a strand; or the waste out after that. */
const isRehanging = (one: Done): boolean =>
  (has(one, 'rehang') && !has(one, 'take-off')) || (releases(one) && hangs(one.before));
const isWasteOut = (one: Done): boolean => releases(one) && !hangs(one.before);

/**
 * Where the waste that held the loops began, once they hang on needles again or the waste is out: there is nothing of it to pull
 * out, and the loops go straight back to where the last row of the bag left them.
 */
function wasteBegins(job: Job, history: readonly Done[], at: number): number | null {
  const now = history[at];
  if (!now || !(isRehanging(now) || (now.step?.act.kind === 'take-off' && history.some(isWasteOut))))
    return null;
  const { yarn } = job.plan.brief.waste;
  const isFed = ({ moves }: Done): boolean =>
    moves.some((move) => move.move === 'feed' && move.yarn === yarn);
  const begins = history.slice(0, at + 1).findLastIndex(isFed);
  return begins < 0 || history[begins]?.step?.phase === 'cast-on' ? null : begins;
}

const sewn: ReadonlySet<string> = new Set(['thread-eyelets', 'tie', 'set-cord-needles']);

/** Where the cord began, on the way back to before it. */
function cordBegins(history: readonly Done[], at: number): number | null {
  const step = history[at]?.step;
  if (step?.phase !== 'cord' || history[0]?.step?.phase === 'cord' || sewn.has(step.act.kind)) return null;
  return history.findIndex((one) => one.step?.phase === 'cord');
}

/** What stands for all that lies between two frames of the history. */
function passedOver(job: Job, history: readonly Done[], begins: number, at: number): readonly HandStep[] {
  const [first, last] = [history[begins] as Done, history[at] as Done];
  const after = afterwards(last.before, last.moves);
  return last.step?.phase === 'cord' ? cordAside(job, first, after) : hungBack(first, last, after);
}

function hungBack(first: Done, last: Done, after: Bed): readonly HandStep[] {
  const { before, moves, doneBefore: done } = first;
  const row = before.counter ?? first.rowBefore;
  const setsCounter = before.counter !== null && after.counter !== before.counter;
  const release: readonly HandStep[] = has(last, 'rehang')
    ? [handStep({ moves: [{ move: 'release', what: 'waste' }], row })]
    : [];
  const on = reverseOf(before, { move: 'take-off' });
  const loops = before.needles.reduce((sum, { loopCount }) => sum + loopCount, 0);
  const hang = handStep({
    moves: [...takenOff(after), ...(on ? [on] : []), ...stoodOn(before, after)],
    row,
    setsCounter,
    care: { is: 'hold-on-strand', loops },
  });
  const aside = takingBack(
    before,
    moves.filter(({ move }) => move !== 'feed'),
  );
  if (aside.length === 0) return [...release, { ...hang, done }];
  const irreversible = first.step && irreversibleOf(first.step);
  return [...release, hang, handStep({ moves: aside, row, done, irreversible })];
}

/** Loops that hang again come off, and their needles go out of work. */
function takenOff(bed: Bed): readonly MendMove[] {
  const { left, right } = edgesOf(bed);
  if (left === null || right === null) return [];
  const names = formatNeedles(bed.needles.length, left, right);
  return [
    { undo: 'rehang', left: names[0] ?? '', right: names.at(-1) ?? '' },
    { undo: 'work', needles: names },
  ];
}

const stoodOn = (before: Bed, after: Bed): readonly MendMove[] =>
  before.carriage === after.carriage ? [] : [{ undo: 'stand', back: before.carriage }];

/** The cord is drawn off and waits; then the bed is as it was before it was begun. */
function cordAside(job: Job, { before, rowBefore, doneBefore }: Done, after: Bed): readonly HandStep[] {
  const { stitchCount } = edgesOf(after);
  const finished = stitchCount === 0 && after.loopsOff === job.plan.cord.stitches;
  const cut: readonly MendMove[] = after.feeder === null ? [] : [{ move: 'cut', yarn: after.feeder }];
  const off: readonly MendMove[] = stitchCount > 0 ? [{ move: 'take-off' }] : [];
  return [
    handStep({
      moves: [...cut, ...off, ...stoodOn(before, after)],
      row: before.counter ?? rowBefore,
      setsCounter: before.counter !== null && before.counter !== after.counter,
      care: { is: 'cord-aside', finished },
      done: doneBefore,
    }),
  ];
}

/** Weights hang in the rows that come out: off first, a hand under each, and on again last. */
function withWeights(
  job: Job,
  steps: readonly HandStep[],
  toDone: number,
  fromDone: number,
): readonly HandStep[] {
  const pulls = steps.some(({ moves }) => moves.some((move) => 'undo' in move && move.undo === 'knit'));
  const from = fromDone === 0 ? null : stepAt(job, fromDone);
  const to = toDone === 0 ? null : stepAt(job, toDone);
  if (!pulls || !to || (to.phase !== 'stripes' && to.phase !== 'closing-row')) return steps;
  const { left, right } = to.after;
  const hang = (from?.phase === 'stripes' || from?.phase === 'closing-row') && from.after.left !== null;
  const withComb = rowAt(job, toDone) < combRows;
  const first = handStep({
    moves: [],
    row: rowAt(job, fromDone),
    care: { is: 'weights-off', withComb: rowAt(job, fromDone) < combRows },
    done: fromDone,
  });
  const last = handStep({
    moves: [],
    row: rowAt(job, toDone),
    care: { is: 'weights-on', left: left ?? '', right: right ?? '', withComb },
    done: toDone,
  });
  return [
    ...(hang && from?.act.kind !== 'weights-off' ? [first] : []),
    ...steps,
    ...(left === null ? [] : [last]),
  ];
}

/** The comb comes off when so many rows hang (common practice). */
const combRows = 20;
