/** What was found out about the work: where it is, what may have happened, and how to go on. Facts, nobody's fault. */
import type { Diagnosis } from '../../session/diagnose/slip.ts';
import type { Finding, Place } from '../../session/locate/locate.ts';
import type { Fact, SeenFault } from '../../session/locate/seen.ts';
import type { Mend, MendStep, Trace } from '../../session/mend.ts';
import type { Irreversible } from '../../session/rip-back/irreversible.ts';
import type { RipBack, RipBackFault, RipStep } from '../../session/rip-back/rip-back.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import { formatMendMove } from './finding-moves.ts';
import { count, formatList } from './numbers.ts';

/** Where the work is, or what to look at next; one sentence a line. */
export function formatFinding(finding: Finding): readonly string[] {
  switch (finding.found) {
    case 'one':
      return [`It is here: ${formatLook(finding.place)}.`];
    case 'several': {
      const shown = finding.count > finding.places.length ? ', the first of them' : '';
      const next = finding.bestQuestion;
      return [
        `${finding.count} places look like this${shown}:`,
        ...finding.places.map(formatLook),
        next === null ? 'Nothing on the bed tells them apart.' : formatQuestion(next),
      ];
    }
    case 'none':
      return ['No place in this bag looks like that.'];
  }
}

/** `step 48 comes next, row 12 knitted, edges L25 and R10, carriage on the right, plum in the feeder`. */
export function formatLook({ done, looks }: Place): string {
  const edges = looks.left === null ? 'no loops on the bed' : `edges ${looks.left} and ${looks.right}`;
  const feeder = looks.feeder === null ? 'nothing in the feeder' : `${looks.feeder} in the feeder`;
  const rows = `${count(looks.rowCounter, 'row')} knitted`;
  const waste = looks.wasteRows === 0 ? '' : `, ${count(looks.wasteRows, 'waste row')} below`;
  return `step ${done + 1} comes next, ${rows}${waste}, ${edges}, carriage on the ${looks.carriage}, ${feeder}`;
}

const questions: Readonly<Record<Fact, string>> = {
  carriage: 'Which side does the carriage stand on?',
  lastColour: 'Which yarn are the loops on the needles made of?',
  feeder: 'Which yarn is in the feeder, if any?',
  left: 'Which needle is the outermost on the left that holds a loop?',
  right: 'Which needle is the outermost on the right that holds a loop?',
  stitches: 'How many needles hold a loop?',
  wasteRows: 'How many waste rows hang below the needles?',
  stripesCounted: 'How many stripes can be counted on the work, the one on the needles too?',
  rowCounter: 'What does the row counter show?',
};

export const formatQuestion = (fact: Fact): string => questions[fact];

export function formatSeenFault(fault: SeenFault): string {
  switch (fault.code) {
    case 'seen/needle-off-bed':
      return `There is no needle ${fault.needle} on a bed of ${fault.needleCount}: read its name again.`;
    case 'seen/unknown-yarn':
      return `${fault.yarn} is not a yarn of this bag: it has ${formatList(fault.known)}.`;
    case 'seen/not-a-count':
      return `${fault.value} cannot be counted: give a whole number, 0 or more.`;
    default:
      return exhaustive(fault);
  }
}

/** What may have happened, in one sentence. */
export function formatDiagnosis(diagnosis: Diagnosis): string {
  const { slip, number, row, rowsSince, needle, yarn, usedYarn, place } = diagnosis;
  const move = `move ${number}, after row ${row}`;
  switch (slip) {
    case 'increase-missing':
      return `The increase of ${move}, is not on the bed: the leading edge is one needle short.`;
    case 'decrease-missing':
      return `The decrease of ${move}, is not on the bed: the trailing edge is one needle too far out.`;
    case 'increase-doubled':
      return `The increase of ${move}, is there twice: the leading edge is one needle too far out.`;
    case 'decrease-doubled':
      return `The decrease of ${move}, is there twice: the trailing edge is one needle too far in.`;
    case 'move-missing':
      return `Shaping ${move}, is not on the bed: both edges are where they were before it.`;
    case 'move-doubled':
      return `Shaping ${move}, is there twice: both edges are one needle too far along.`;
    case 'move-mirrored':
      return `Shaping ${move}, went the other way: left and right changed places, and the work moved back by one needle.`;
    case 'needle-left-working':
      return `${needle} has taken a loop of its own since ${move}: it should be resting.`;
    case 'needle-left-resting':
      return `${needle} holds no loop since ${move}: it should be working, for the eyelet.`;
    case 'stitch-dropped':
      return 'One needle between the edges has lost its loop: look along the row for a ladder, and catch it with a latch tool before the next pass.';
    case 'carriage-wrong-side':
      return `The carriage should stand on the ${place.looks.carriage} after row ${row}.`;
    case 'wrong-yarn-in-feeder':
      return `The feeder should hold ${yarn}; it holds ${usedYarn ?? 'nothing'}.`;
    case 'stripe-not-changed':
      return `${usedYarn} went on where ${yarn} was due after row ${row}: two stripes of one colour, ${count(rowsSince, 'row')} so far.`;
    case 'parked-yarn-used':
      return `Row ${row + 1} is in ${usedYarn}, which should be waiting; ${yarn} was due.`;
    case 'sides-swapped':
      return `It fits when left and right change places: ${formatLook(place)}. Read the needle names again.`;
    default:
      return exhaustive(slip);
  }
}

const traces: Readonly<Record<Trace, string>> = {
  'eyelet-out-of-line': 'an eyelet out of line',
  'wide-hole': 'a hole two needles wide',
  'extra-eyelet': 'one eyelet too many close to the next',
  'step-in-leading-edge': 'a small step in the mouth edge',
  'step-in-trailing-edge': 'a small step in the bottom edge, inside the seam',
  'hole-at-trailing-edge': 'a hole near the bottom edge',
  'wrong-colour': 'the row or stripe in the other colour',
};

/** The way to set it right: a heading, then one line a step. */
export function formatMend(mend: Mend): readonly string[] {
  return [heading(mend), ...mend.steps.map(formatMendStep), ...shown(mend)];
}

function heading({ how, afterDone, thenDone }: Mend): string {
  switch (how) {
    case 'now':
      return 'It can be set right now, without a trace:';
    case 'rip-back':
      return `Rip back and do it again from step ${thenDone + 1}:`;
    case 'make-up':
      return `Or keep it and make up for it, once step ${afterDone} is done:`;
  }
}

const shown = ({ shows }: Mend): readonly string[] =>
  shows.length === 0 ? [] : [`It will show: ${formatList(shows.map((trace) => traces[trace]))}.`];

export const formatMendStep = ({ moves, row, turnsCounterBack }: MendStep): string =>
  [...moves.map(formatMendMove), ...counterBack(turnsCounterBack, row)].join(' ');

const counterBack = (turnsBack: boolean, row: number): readonly string[] =>
  turnsBack ? [`Turn the row counter back to ${row}.`] : [];

/** The way back in one line, before its steps. */
export function formatRipBack({ steps, row, irreversible }: RipBack): string {
  const marked = irreversible.length;
  const warning = marked === 0 ? '' : ` ${marked} of them cannot be undone just as they were done.`;
  return `${count(steps.length, 'step')} back, to ${count(row, 'row')} on the counter.${warning}`;
}

export function formatRipStep({ moves, row, turnsCounterBack, irreversible }: RipStep): string {
  const marked = irreversible === null ? [] : [formatIrreversible(irreversible)];
  return [...moves.map(formatMendMove), ...counterBack(turnsCounterBack, row), ...marked].join(' ');
}

/** Why the hands cannot take a step back, and what to do instead. */
export function formatIrreversible(irreversible: Irreversible): string {
  switch (irreversible.why) {
    case 'cut':
      return `A cut stays a cut: join ${irreversible.yarn} at the edge and hide both ends later.`;
    case 'off-the-needles':
      return 'The work is off the needles: hang each loop again from its waste rows, weights off until all hang.';
    case 'released':
      return `The ${irreversible.what} is out: catch every open loop on a spare strand before anything else.`;
    case 'drawn-through':
      return `The cord is closed off: it cannot go back on the needles; knit it anew with ${irreversible.yarn} if it is too short.`;
    default:
      return exhaustive(irreversible);
  }
}

export function formatRipBackFault(fault: RipBackFault): string {
  switch (fault.code) {
    case 'rip-back/no-such-place':
      return `There is no place after ${fault.done} steps: the bag has ${fault.stepCount}.`;
    case 'rip-back/not-behind':
      return `Ripping back goes backwards: choose a place before step ${fault.fromDone + 1}.`;
    default:
      return exhaustive(fault);
  }
}
