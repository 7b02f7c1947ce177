/** What a way back does not undo move by move: waste rows that are gone, and the cord, which waits aside. */
import { type Bed, edgesOf } from '../../bed/bed.ts';
import type { Move } from '../../bed/move.ts';
import { formatNeedles } from '../../bed/needles.ts';
import { reverseOf } from '../../bed/reverse-of.ts';
import type { Job } from '../../steps/job.ts';
import { type HandStep, handStep, irreversibleOf, type MendMove } from '../mend/mend.ts';
import { afterwards, type Done, takingBack } from './history.ts';
export const hangs = (bed: Bed): boolean => edgesOf(bed).stitchCount > 0;

const has = ({ moves }: Pick<Done, 'moves'>, kind: Move['move']): boolean =>
  moves.some(({ move }) => move === kind);

export const releases = ({ moves }: Pick<Done, 'moves'>): boolean =>
  moves.some((move) => move.move === 'release' && move.what === 'waste');

/** Hung from the waste rows, and not only moved on a strand; or the waste out after that. */
const isRehanging = (one: Done): boolean =>
  (has(one, 'rehang') && !has(one, 'take-off')) || (releases(one) && hangs(one.before));

const isWasteOut = (one: Done): boolean => releases(one) && !hangs(one.before);

/**
 * Where the waste that held the loops began, once they hang on needles again or the waste is out: there is nothing of it to pull
 * out, and the loops go straight back to where the last row of the bag left them.
 */
export function wasteBegins(job: Job, history: readonly Done[], at: number): number | null {
  const now = history[at];
  if (!now || !(isRehanging(now) || (now.step?.act.kind === 'take-off' && history.some(isWasteOut))))
    return null;
  const { yarn } = job.plan.brief.waste;
  const isFed = ({ moves }: Done): boolean =>
    moves.some((move) => move.move === 'feed' && move.yarn === yarn);
  const begins = history.slice(0, at + 1).findLastIndex(isFed);
  return begins < 0 ? null : begins;
}

const sewn: ReadonlySet<string> = new Set(['thread-eyelets', 'tie', 'set-cord-needles']);

/** Where the cord began, on the way back to before it. */
export function cordBegins(history: readonly Done[], at: number): number | null {
  const step = history[at]?.step;
  if (step?.phase !== 'cord' || history[0]?.step?.phase === 'cord' || sewn.has(step.act.kind)) return null;
  return history.findIndex((one) => one.step?.phase === 'cord');
}

/** What stands for all that lies between two frames of the history. */
export function passedOver(history: readonly Done[], begins: number, at: number): readonly HandStep[] {
  const [first, last] = [history[begins] as Done, history[at] as Done];
  const after = afterwards(last.before, last.moves);
  return last.step?.phase === 'cord' ? cordAside(first, after) : hungBack(first, last, after);
}

function hungBack(first: Done, last: Done, after: Bed): readonly HandStep[] {
  const { before, moves, doneBefore: done } = first;
  const row = before.counter ?? first.rowBefore;
  const setsCounter = before.counter !== after.counter;
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
function cordAside({ before, rowBefore, doneBefore }: Done, after: Bed): readonly HandStep[] {
  const { stitchCount } = edgesOf(after);
  const cut: readonly MendMove[] = after.feeder === null ? [] : [{ move: 'cut', yarn: after.feeder }];
  const off: readonly MendMove[] = stitchCount > 0 ? [{ move: 'take-off' }] : [];
  return [
    handStep({
      moves: [...cut, ...off, ...stoodOn(before, after)],
      row: before.counter ?? rowBefore,
      setsCounter: before.counter !== after.counter,
      care: { is: 'cord-aside', finished: stitchCount === 0 },
      done: doneBefore,
    }),
  ];
}
