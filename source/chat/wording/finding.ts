/** What was found out about the work: where it is, what may have happened, and how to go on. Facts, nobody's fault. */

import type { Diagnosis } from '../../session/diagnose/slip.ts';
import type { Place } from '../../session/locate/locate.ts';
import type { Fact, SeenFault } from '../../session/locate/seen.ts';
import type { Mend, MendStep, Trace } from '../../session/mend.ts';
import type { Irreversible } from '../../session/rip-back/irreversible.ts';
import type { RipBack, RipBackFault, RipStep } from '../../session/rip-back/rip-back.ts';
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

/** What may have happened, in one sentence. */
export function formatDiagnosis(diagnosis: Diagnosis, words: Words): string {
  const { slip, row, rowsSince, place } = diagnosis;
  const move = words.say`move ${diagnosis.number ?? 0}, after row ${row}`;
  const needle = diagnosis.needle ?? '';
  const yarn = sayYarn(diagnosis.yarn ?? '', words);
  const usedYarn = diagnosis.usedYarn === null ? words.say`nothing` : sayYarn(diagnosis.usedYarn, words);
  switch (slip) {
    case 'increase-missing':
      return words.say`The increase of ${move}, is not on the bed: the leading edge is one needle short.`;
    case 'decrease-missing':
      return words.say`The decrease of ${move}, is not on the bed: the trailing edge is one needle too far out.`;
    case 'increase-doubled':
      return words.say`The increase of ${move}, is there twice: the leading edge is one needle too far out.`;
    case 'decrease-doubled':
      return words.say`The decrease of ${move}, is there twice: the trailing edge is one needle too far in.`;
    case 'move-missing':
      return words.say`Shaping ${move}, is not on the bed: both edges are where they were before it.`;
    case 'move-doubled':
      return words.say`Shaping ${move}, is there twice: both edges are one needle too far along.`;
    case 'move-mirrored':
      return words.say`Shaping ${move}, went the other way: left and right changed places, and the work moved back by one needle.`;
    case 'needle-left-working':
      return words.say`${needle} has taken a loop of its own since ${move}: it should be out of work.`;
    case 'needle-left-resting':
      return words.say`${needle} holds no loop since ${move}: it should be in work, for the eyelet.`;
    case 'stitch-dropped':
      return words.say`One needle between the edges has lost its loop: look along the row for a ladder, and catch it with a latch tool before the next pass.`;
    case 'carriage-wrong-side':
      return words.say`The carriage should stand on the ${place.looks.carriage} after row ${row}.`;
    case 'wrong-yarn-in-feeder':
      return words.say`The feeder should hold ${yarn}; it holds ${usedYarn}.`;
    case 'stripe-not-changed':
      return words.say`${usedYarn} went on where ${yarn} was due after row ${row}: two stripes of one colour, ${words.count(rowsSince, 'row')} so far.`;
    case 'parked-yarn-used':
      return words.say`Row ${row + 1} is in ${usedYarn}, which should be waiting; ${yarn} was due.`;
    case 'sides-swapped':
      return words.say`It fits when left and right change places: ${formatLook(place, words)}. Read the needle names again.`;
    default:
      return exhaustive(slip);
  }
}

const traces: Readonly<Record<Trace, (words: Words) => string>> = {
  'eyelet-out-of-line': (words: Words) => words.say`an eyelet out of line`,
  'wide-hole': (words: Words) => words.say`a hole two needles wide`,
  'extra-eyelet': (words: Words) => words.say`one eyelet too many close to the next`,
  'step-in-leading-edge': (words: Words) => words.say`a small step in the mouth edge`,
  'step-in-trailing-edge': (words: Words) => words.say`a small step in the bottom edge, inside the seam`,
  'hole-at-trailing-edge': (words: Words) => words.say`a hole near the bottom edge`,
  'wrong-colour': (words: Words) => words.say`the row or stripe in the other colour`,
};

/** The way to set it right: a heading, then one line a step. */
export function formatMend(mend: Mend, words: Words): readonly string[] {
  return [
    heading(mend, words),
    ...mend.steps.map((one) => formatMendStep(one, words)),
    ...formatTraces(mend, words),
  ];
}

function heading({ how, afterDone, thenDone }: Mend, words: Words): string {
  switch (how) {
    case 'now':
      return words.say`It can be set right now, without a trace:`;
    case 'rip':
      return words.say`Rip back and do it again from step ${thenDone + 1}:`;
    case 'make-up':
      return words.say`Or keep it and make up for it, once step ${afterDone} is done:`;
  }
}

export const formatTraces = ({ shows }: Mend, words: Words): readonly string[] =>
  shows.length === 0
    ? []
    : [words.say`It will show: ${words.amounts.list(shows.map((trace) => traces[trace](words)))}.`];

export const formatMendStep = ({ moves, row, turnsCounterBack }: MendStep, words: Words): string =>
  [...formatMoves(moves, words), ...counterBack(turnsCounterBack, row, words)].join(' ');

const counterBack = (turnsBack: boolean, row: number, words: Words): readonly string[] =>
  turnsBack ? [words.say`Turn the row counter back to ${row}.`] : [];

/** The way back in one line, before its steps. */
export function formatRipBack({ steps, row, irreversible }: RipBack, words: Words): string {
  const marked = irreversible.length;
  const back = words.say`${words.count(steps.length, 'step')} back, to ${words.count(row, 'row')} on the counter.`;
  return marked === 0
    ? back
    : `${back} ${words.say`${marked} of them cannot be undone just as they were done.`}`;
}

export function formatRipStep({ moves, row, turnsCounterBack, irreversible }: RipStep, words: Words): string {
  const marked = irreversible === null ? [] : [formatIrreversible(irreversible, words)];
  return [...formatMoves(moves, words), ...counterBack(turnsCounterBack, row, words), ...marked].join(' ');
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
