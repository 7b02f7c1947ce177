/** What was found out about the work: where it is, what may have happened, and how to go on. Facts, nobody's fault. */

import type { Place } from '../../session/locate/locate.ts';
import type { Fact, SeenFault } from '../../session/locate/seen.ts';
import type { HandStep } from '../../session/mend.ts';
import type { Irreversible } from '../../session/rip-back/irreversible.ts';
import type { RipBack, RipBackFault } from '../../session/rip-back/rip-back.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import type { Words } from '../../wording/words.ts';
import { formatMoves } from './finding-moves.ts';
import { sayYarn } from './yarns.ts';

/** `step 48 comes next, row 12 knitted, edges L25 and R10, carriage on the right, plum in the feeder`. */
export function formatLook({ done, looks }: Place, words: Words): string {
  const { left, right, feeder, wasteRows } = looks;
  return [
    words.say`step ${done + 1} comes next`,
    words.say`${words.count(looks.rowCounter, 'row')} knitted`,
    ...(wasteRows === 0 ? [] : [words.say`${words.count(wasteRows, 'waste row')} below`]),
    left === null || right === null ? words.say`no loops on the bed` : words.say`edges ${left} and ${right}`,
    words.say`carriage on the ${looks.carriage}`,
    feeder === null ? words.say`nothing in the feeder` : words.say`${sayYarn(feeder, words)} in the feeder`,
  ].join(', ');
}

const questions: Readonly<Record<Fact, (words: Words) => string>> = {
  carriage: (words: Words) => words.say`Which side does the carriage stand on?`,
  lastColour: (words: Words) => words.say`Which yarn are the loops on the needles made of?`,
  feeder: (words: Words) => words.say`Which yarn is in the feeder, if any?`,
  left: (words: Words) => words.say`Which needle is the outermost on the left that holds a loop?`,
  right: (words: Words) => words.say`Which needle is the outermost on the right that holds a loop?`,
  stitches: (words: Words) => words.say`How many needles hold a loop?`,
  wasteRows: (words: Words) => words.say`How many waste rows hang below the needles?`,
  stripesCounted: (words: Words) =>
    words.say`How many stripes can be counted on the work, the one on the needles too?`,
  rowCounter: (words: Words) => words.say`What does the row counter show?`,
  rowsOfColour: (words: Words) =>
    words.say`How many rows of the newest colour hang there, the one on the needles too?`,
};

export const formatQuestion = (fact: Fact, words: Words): string => questions[fact](words);

export function formatSeenFault(fault: SeenFault, words: Words): string {
  switch (fault.code) {
    case 'seen/needle-off-bed':
      return words.say`There is no needle ${fault.needle} on a bed of ${fault.needleCount}: read its name again.`;
    case 'seen/unknown-yarn':
      return words.say`${fault.yarn} is not a yarn of this bag: it has ${words.amounts.list(fault.known.map((yarn) => sayYarn(yarn, words)))}.`;
    case 'seen/not-a-count':
      return words.say`${fault.value} cannot be counted: give a whole number, 0 or more.`;
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
  const back = words.say`${words.count(steps.length, 'step')} back, to ${words.count(row, 'row')} on the counter.`;
  return marked === 0
    ? back
    : `${back} ${words.say`${marked} of them cannot be undone just as they were done.`}`;
}

/** Why the hands cannot take a step back, and what to do instead. */
export function formatIrreversible(irreversible: Irreversible, words: Words): string {
  switch (irreversible.why) {
    case 'cut':
      return words.say`A cut stays a cut: join ${sayYarn(irreversible.yarn, words)} at the edge and hide both ends later.`;
    case 'off-the-needles':
      return words.say`The work is off the needles: hang each loop again from its waste rows, weights off until all hang.`;
    case 'released':
      return words.say`The ${irreversible.what} is out: catch every open loop on a spare strand before anything else.`;
    case 'drawn-through':
      return words.say`The cord is closed off: it cannot go back on the needles; knit it anew with ${sayYarn(irreversible.yarn, words)} if it is too short.`;
    default:
      return exhaustive(irreversible);
  }
}

export function formatRipBackFault(fault: RipBackFault, words: Words): string {
  switch (fault.code) {
    case 'rip-back/no-such-place':
      return words.say`There is no place after ${fault.done} steps: the bag has ${fault.stepCount}.`;
    case 'rip-back/not-behind':
      return words.say`Ripping back goes backwards: choose a place before step ${fault.fromDone + 1}.`;
    default:
      return exhaustive(fault);
  }
}
