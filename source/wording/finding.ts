/**
 * What was found out about the work: where it is, what may have happened, and how to go on. Facts, nobody's fault. A way
 * back or a mend is put into words whenever it is shown, so that it follows language and units.
 */

import type { Place } from '../session/locate/locate.ts';
import type { SeenFault } from '../session/locate/seen.ts';
import { type HandStep, type Irreversible, irreversibleOf } from '../session/mend/mend.ts';
import type { RipBack, RipBackFault } from '../session/rip-back/rip-back.ts';
import type { Session } from '../session/session.ts';
import { goesBack, type Way } from '../session/way.ts';
import { exhaustive } from '../shared/result.ts';
import { stepAt } from '../steps/job.ts';
import type { SayingsBy } from './by-kind.ts';
import { formatMoves } from './finding-moves.ts';
import { sayStep } from './steps.ts';
import type { Words } from './words.ts';

/** `step 48 comes next, row 12 knitted, edges L25 and R10, carriage on the right, plum in the feeder`. */
export function formatLook({ done, looks }: Place, words: Words): string {
  const { left, right, feeder, wasteRows } = looks;
  return [
    words.finding.stepComesNext(done + 1),
    words.finding.knitted(looks.rowCounter),
    ...(wasteRows === 0 ? [] : [words.finding.below(wasteRows)]),
    left === null || right === null ? words.finding.noLoops : words.finding.edgesSeen(left, right),
    words.finding.carriageSeen(looks.carriage),
    feeder === null ? words.finding.feederEmpty : words.finding.feederHolds(feeder),
  ].join(', ');
}

export const seenFaults: SayingsBy<'code', SeenFault, [words: Words]> = {
  'seen/needle-off-bed': ({ needle, needleCount }, words) => words.finding.needleOffBed(needle, needleCount),
  'seen/unknown-yarn': ({ yarn, known }, words) => words.finding.unknownYarn(yarn, known),
  'seen/not-a-count': ({ value }, words) => words.finding.notACount(value),
};

/** One thing to do with the hands: what must be held first, the moves, the counter, and what cannot be undone. */
export function formatHandStep(step: HandStep, words: Words): string {
  const { care, moves, irreversible } = step;
  return [
    ...(care === null ? [] : [words.slips.care(care)]),
    ...formatMoves(moves, words),
    ...(step.setsCounter ? [words.slips.counter(step.row)] : []),
    ...(irreversible === null || isTold(irreversible, moves)
      ? []
      : [formatIrreversible(irreversible, words)]),
  ].join(' ');
}

/** What stays out is told where it would be put back. */
const isTold = ({ why }: Irreversible, moves: HandStep['moves']): boolean =>
  why === 'released' &&
  moves.some((move) => 'undo' in move && move.undo === 'hand' && move.what.move === 'release');

/** The way back in one line, before its steps. */
export function formatRipBack({ steps, row, irreversible }: RipBack, words: Words): string {
  const marked = irreversible.length;
  const back = words.finding.rowsBack(steps.length, row);
  return marked === 0 ? back : `${back} ${words.finding.notAsDone(marked)}`;
}

/** Why the hands cannot take a step back, and what to do instead. */
export function formatIrreversible(irreversible: Irreversible, words: Words): string {
  switch (irreversible.why) {
    case 'cut':
      return words.finding.cut(irreversible.yarn);
    case 'off-the-needles':
      return words.finding.offTheNeedles;
    case 'released':
      return words.finding.released(irreversible.what);
    case 'drawn-through':
      return words.finding.drawnThrough(irreversible.yarn);
    default:
      return exhaustive(irreversible);
  }
}

export const ripBackFaults: SayingsBy<'code', RipBackFault, [words: Words]> = {
  'rip-back/no-such-place': ({ done, stepCount }, { finding }) => finding.noSuchPlace(done, stepCount),
  'rip-back/not-behind': ({ fromDone }, { finding }) => finding.notBehind(fromDone + 1),
};

/** `Back, 3 of 12: Pull out the row of mint …` */
export const sayWayStep = (way: Way, words: Words, offset = 0): string | null => {
  const { steps, at } = way;
  const step = steps[at + offset];
  if (!step) return null;
  const number = at + offset + 1;
  const text = step.planned ? sayStep(step.planned, words) : formatHandStep(step, words);
  return goesBack(way)
    ? words.prompt.wayBack(number, steps.length, text)
    : words.prompt.wayMend(number, steps.length, text);
};

/** `64 rows round, 13.2 cm wide and 17.9 cm deep` */
export const sayPlanned = ({ job: { plan } }: Session, words: Words): string =>
  words.finding.planSize(plan.rows, plan.size.widthCm, plan.size.depthCm);

/** Which steps count otherwise than the way of the hands would have it: done again by taking back, undone by doing again. */
export function sayCounted(
  before: Session,
  after: Session,
  command: 'back' | 'redo',
  words: Words,
): readonly string[] {
  const rises = after.done > before.done;
  if (after.done === before.done || rises !== (command === 'back')) return [];
  const [first, last] = rises ? [before.done + 1, after.done] : [after.done + 1, before.done];
  if (first === last)
    return [rises ? words.finding.oneDoneAgain(first) : words.finding.oneUndoneAgain(first)];
  return [rises ? words.finding.manyDoneAgain(first, last) : words.finding.manyUndoneAgain(first, last)];
}

/** The plan, or the slips set right, where taking back or doing again has changed them. */
export function sayChanged(before: Session, after: Session, words: Words): readonly string[] {
  const plan = before.job === after.job ? [] : [words.finding.planNow(sayPlanned(after, words))];
  const mends = after.mends.length - before.mends.length;
  if (mends === 0) return plan;
  return [...plan, mends < 0 ? words.finding.mendTakenBack : words.finding.mendRedone];
}

const listed = 2;

/** Taking back moves the place, not the work: what was cut or let go of stays so. */
export function sayCannotUndo(before: Session, after: Session, words: Words): readonly string[] {
  if (before.job !== after.job) return [];
  const found: string[] = [];
  let more = 0;
  for (let number = before.done; number > after.done; number--) {
    const why = irreversibleOf(stepAt(before.job, number));
    if (why && found.length < listed)
      found.push(words.finding.irreversibleStep(number, formatIrreversible(why, words)));
    else if (why) more++;
  }
  return more === 0 ? found : [...found, words.finding.irreversibleBefore(more)];
}
