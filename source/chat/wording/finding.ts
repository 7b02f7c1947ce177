/** What was found out about the work: where it is, what may have happened, and how to go on. Facts, nobody's fault. */

import type { Place } from '../../session/locate/locate.ts';
import type { Fact, SeenFault } from '../../session/locate/seen.ts';
import type { HandStep } from '../../session/mend.ts';
import type { Irreversible } from '../../session/rip-back/irreversible.ts';
import type { RipBack, RipBackFault } from '../../session/rip-back/rip-back.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import type { Words } from '../../wording/words.ts';
import { formatMoves } from './finding-moves.ts';

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

const questions: Readonly<Record<Fact, (words: Words) => string>> = {
  carriage: (words: Words) => words.finding.askCarriage,
  lastColour: (words: Words) => words.finding.askYarn,
  feeder: (words: Words) => words.finding.askFeeder,
  left: (words: Words) => words.finding.askLeftEdge,
  right: (words: Words) => words.finding.askRightEdge,
  stitches: (words: Words) => words.finding.askStitches,
  wasteRows: (words: Words) => words.finding.askWasteRows,
  stripesCounted: (words: Words) => words.finding.askStripes,
  rowCounter: (words: Words) => words.finding.askCounter,
  rowsOfColour: (words: Words) => words.finding.askRowsOfColour,
};

export const formatQuestion = (fact: Fact, words: Words): string => questions[fact](words);

export function formatSeenFault(fault: SeenFault, words: Words): string {
  switch (fault.code) {
    case 'seen/needle-off-bed':
      return words.finding.needleOffBed(fault.needle, fault.needleCount);
    case 'seen/unknown-yarn':
      return words.finding.unknownYarn(fault.yarn, fault.known);
    case 'seen/not-a-count':
      return words.finding.notACount(fault.value);
    default:
      return exhaustive(fault);
  }
}

/** One thing to do with the hands: what must be held first, the moves, the counter, and what cannot be undone. */
export function formatHandStep(step: HandStep, words: Words): string {
  const { care, moves, irreversible } = step;
  return [
    ...(care === null ? [] : [words.slips.care(care)]),
    ...formatMoves(moves, words),
    ...(step.setsCounter ? [words.slips.counter(step.row)] : []),
    ...(irreversible === null ? [] : [formatIrreversible(irreversible, words)]),
  ].join(' ');
}

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

export function formatRipBackFault(fault: RipBackFault, words: Words): string {
  switch (fault.code) {
    case 'rip-back/no-such-place':
      return words.finding.noSuchPlace(fault.done, fault.stepCount);
    case 'rip-back/not-behind':
      return words.finding.notBehind(fault.fromDone + 1);
    default:
      return exhaustive(fault);
  }
}
