/** What was found out about the work: where it is, what may have happened, and how to go on. Facts, nobody's fault. */
import type { Diagnosis } from '../../session/diagnose/slip.ts';
import type { Place } from '../../session/locate/locate.ts';
import type { Fact, SeenFault } from '../../session/locate/seen.ts';
import type { Mend, MendStep, Trace } from '../../session/mend.ts';
import type { Irreversible } from '../../session/rip-back/irreversible.ts';
import type { RipBack, RipBackFault, RipStep } from '../../session/rip-back/rip-back.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import { count, formatList, say } from '../../shared/say.ts';
import { formatMendMove } from './finding-moves.ts';
import { sayYarn } from './yarns.ts';

/** `step 48 comes next, row 12 knitted, edges L25 and R10, carriage on the right, plum in the feeder`. */
export function formatLook({ done, looks }: Place): string {
  const { left, right, feeder, wasteRows } = looks;
  return [
    say`step ${done + 1} comes next`,
    say`${count(looks.rowCounter, 'row')} knitted`,
    ...(wasteRows === 0 ? [] : [say`${count(wasteRows, 'waste row')} below`]),
    left === null || right === null ? say`no loops on the bed` : say`edges ${left} and ${right}`,
    say`carriage on the ${looks.carriage}`,
    feeder === null ? say`nothing in the feeder` : say`${sayYarn(feeder)} in the feeder`,
  ].join(', ');
}

const questions: Readonly<Record<Fact, () => string>> = {
  carriage: () => say`Which side does the carriage stand on?`,
  lastColour: () => say`Which yarn are the loops on the needles made of?`,
  feeder: () => say`Which yarn is in the feeder, if any?`,
  left: () => say`Which needle is the outermost on the left that holds a loop?`,
  right: () => say`Which needle is the outermost on the right that holds a loop?`,
  stitches: () => say`How many needles hold a loop?`,
  wasteRows: () => say`How many waste rows hang below the needles?`,
  stripesCounted: () => say`How many stripes can be counted on the work, the one on the needles too?`,
  rowCounter: () => say`What does the row counter show?`,
};

export const formatQuestion = (fact: Fact): string => questions[fact]();

export function formatSeenFault(fault: SeenFault): string {
  switch (fault.code) {
    case 'seen/needle-off-bed':
      return say`There is no needle ${fault.needle} on a bed of ${fault.needleCount}: read its name again.`;
    case 'seen/unknown-yarn':
      return say`${fault.yarn} is not a yarn of this bag: it has ${formatList(fault.known.map(sayYarn))}.`;
    case 'seen/not-a-count':
      return say`${fault.value} cannot be counted: give a whole number, 0 or more.`;
    default:
      return exhaustive(fault);
  }
}

/** What may have happened, in one sentence. */
export function formatDiagnosis(diagnosis: Diagnosis): string {
  const { slip, row, rowsSince, place } = diagnosis;
  const move = say`move ${diagnosis.number ?? 0}, after row ${row}`;
  const needle = diagnosis.needle ?? '';
  const yarn = sayYarn(diagnosis.yarn ?? '');
  const usedYarn = diagnosis.usedYarn === null ? say`nothing` : sayYarn(diagnosis.usedYarn);
  switch (slip) {
    case 'increase-missing':
      return say`The increase of ${move}, is not on the bed: the leading edge is one needle short.`;
    case 'decrease-missing':
      return say`The decrease of ${move}, is not on the bed: the trailing edge is one needle too far out.`;
    case 'increase-doubled':
      return say`The increase of ${move}, is there twice: the leading edge is one needle too far out.`;
    case 'decrease-doubled':
      return say`The decrease of ${move}, is there twice: the trailing edge is one needle too far in.`;
    case 'move-missing':
      return say`Shaping ${move}, is not on the bed: both edges are where they were before it.`;
    case 'move-doubled':
      return say`Shaping ${move}, is there twice: both edges are one needle too far along.`;
    case 'move-mirrored':
      return say`Shaping ${move}, went the other way: left and right changed places, and the work moved back by one needle.`;
    case 'needle-left-working':
      return say`${needle} has taken a loop of its own since ${move}: it should be out of work.`;
    case 'needle-left-resting':
      return say`${needle} holds no loop since ${move}: it should be in work, for the eyelet.`;
    case 'stitch-dropped':
      return say`One needle between the edges has lost its loop: look along the row for a ladder, and catch it with a latch tool before the next pass.`;
    case 'carriage-wrong-side':
      return say`The carriage should stand on the ${place.looks.carriage} after row ${row}.`;
    case 'wrong-yarn-in-feeder':
      return say`The feeder should hold ${yarn}; it holds ${usedYarn}.`;
    case 'stripe-not-changed':
      return say`${usedYarn} went on where ${yarn} was due after row ${row}: two stripes of one colour, ${count(rowsSince, 'row')} so far.`;
    case 'parked-yarn-used':
      return say`Row ${row + 1} is in ${usedYarn}, which should be waiting; ${yarn} was due.`;
    case 'sides-swapped':
      return say`It fits when left and right change places: ${formatLook(place)}. Read the needle names again.`;
    default:
      return exhaustive(slip);
  }
}

const traces: Readonly<Record<Trace, () => string>> = {
  'eyelet-out-of-line': () => say`an eyelet out of line`,
  'wide-hole': () => say`a hole two needles wide`,
  'extra-eyelet': () => say`one eyelet too many close to the next`,
  'step-in-leading-edge': () => say`a small step in the mouth edge`,
  'step-in-trailing-edge': () => say`a small step in the bottom edge, inside the seam`,
  'hole-at-trailing-edge': () => say`a hole near the bottom edge`,
  'wrong-colour': () => say`the row or stripe in the other colour`,
};

/** The way to set it right: a heading, then one line a step. */
export function formatMend(mend: Mend): readonly string[] {
  return [heading(mend), ...mend.steps.map(formatMendStep), ...formatTraces(mend)];
}

function heading({ how, afterDone, thenDone }: Mend): string {
  switch (how) {
    case 'now':
      return say`It can be set right now, without a trace:`;
    case 'rip':
      return say`Rip back and do it again from step ${thenDone + 1}:`;
    case 'make-up':
      return say`Or keep it and make up for it, once step ${afterDone} is done:`;
  }
}

export const formatTraces = ({ shows }: Mend): readonly string[] =>
  shows.length === 0 ? [] : [say`It will show: ${formatList(shows.map((trace) => traces[trace]()))}.`];

export const formatMendStep = ({ moves, row, turnsCounterBack }: MendStep): string =>
  [...moves.map(formatMendMove), ...counterBack(turnsCounterBack, row)].join(' ');

const counterBack = (turnsBack: boolean, row: number): readonly string[] =>
  turnsBack ? [say`Turn the row counter back to ${row}.`] : [];

/** The way back in one line, before its steps. */
export function formatRipBack({ steps, row, irreversible }: RipBack): string {
  const marked = irreversible.length;
  const back = say`${count(steps.length, 'step')} back, to ${count(row, 'row')} on the counter.`;
  return marked === 0 ? back : `${back} ${say`${marked} of them cannot be undone just as they were done.`}`;
}

export function formatRipStep({ moves, row, turnsCounterBack, irreversible }: RipStep): string {
  const marked = irreversible === null ? [] : [formatIrreversible(irreversible)];
  return [...moves.map(formatMendMove), ...counterBack(turnsCounterBack, row), ...marked].join(' ');
}

/** Why the hands cannot take a step back, and what to do instead. */
export function formatIrreversible(irreversible: Irreversible): string {
  switch (irreversible.why) {
    case 'cut':
      return say`A cut stays a cut: join ${sayYarn(irreversible.yarn)} at the edge and hide both ends later.`;
    case 'off-the-needles':
      return say`The work is off the needles: hang each loop again from its waste rows, weights off until all hang.`;
    case 'released':
      return say`The ${irreversible.what} is out: catch every open loop on a spare strand before anything else.`;
    case 'drawn-through':
      return say`The cord is closed off: it cannot go back on the needles; knit it anew with ${sayYarn(irreversible.yarn)} if it is too short.`;
    default:
      return exhaustive(irreversible);
  }
}

export function formatRipBackFault(fault: RipBackFault): string {
  switch (fault.code) {
    case 'rip-back/no-such-place':
      return say`There is no place after ${fault.done} steps: the bag has ${fault.stepCount}.`;
    case 'rip-back/not-behind':
      return say`Ripping back goes backwards: choose a place before step ${fault.fromDone + 1}.`;
    default:
      return exhaustive(fault);
  }
}
