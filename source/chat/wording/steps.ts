/** What to do, in the maker's words: one sentence or two a step, with the needles named in it. */
import type { Side } from '../../bed/side.ts';
import type { Plan } from '../../planning/plan.ts';
import { endTailCm } from '../../planning/tails.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import { formatLength, formatTail, metric, type Units } from '../../shared/units.ts';
import type { Act, Aside, Phase, Step } from '../../steps/step.ts';
import { count, formatList } from './numbers.ts';

export const phaseNames: Readonly<Record<Phase, string>> = {
  'cast-on': 'cast-on',
  stripes: 'stripes',
  'closing-row': 'closing row',
  graft: 'graft',
  seam: 'seam',
  cord: 'cord',
};

/** The instruction for a step of `plan`'s job, as plain text. */
export function sayStep(plan: Plan, step: Step, units: Units = metric): string {
  const { act } = step;
  const tail = (cm: number): string => formatTail(cm, units);
  switch (act.kind) {
    case 'set-needles':
      return `Carriage on the ${act.carriage}. Bring ${act.count} needles to working: ${act.first} to ${act.last}.`;
    case 'cast-on':
      return `Cast on with ${named(act.yarn)}: one loop on each needle from ${act.first} to ${act.last}.`;
    case 'hang-comb':
      return 'Hang the cast-on comb on the loops.';
    case 'thread-waste':
      return `${setAside(act.aside, units)}Thread ${threaded(act.yarn)} into the feeder.`;
    case 'waste-pass':
      return `Waste row ${act.number} of ${act.count}: one pass to the ${act.to}.`;
    case 'lay-ravel-cord':
      return `Cut ${bare(act.wasteYarn)}. Lay the ravel cord in the feeder, its end held slack by a clip on the ${act.clipSide}.`;
    case 'ravel-pass':
      return `Ravel-cord row: one pass to the ${act.to}.`;
    case 'trim-ravel-cord':
      return 'Cut the ravel cord, leaving an end at each side to pull later.';
    case 'hang-weights':
      return `Hang a claw weight at each edge: under ${act.left} and under ${act.right}.`;
    case 'thread':
      return `${setAside(act.aside, units)}Thread ${act.yarn} into the feeder${act.first ? `, leaving a ${tail(endTailCm)} tail` : ''}.`;
    case 'pass':
      return `Knit one row to the ${act.to} with ${act.yarn}: row ${act.rowInStripe} of ${act.stripeRows} in this stripe.`;
    case 'closing-pass':
      return `Closing row: knit one row to the ${act.to} with ${act.yarn}. The graft will be the last row of this stripe.`;
    case 'increase':
      return sayIncrease(step, act);
    case 'decrease':
      return sayDecrease(step, act);
    case 'move-weights':
      return `Move the claw weights up: under ${act.left} and under ${act.right}.`;
    case 'weights-off':
      return `Cut ${bare(act.wasteYarn)}. Take the weights off, a hand under each.`;
    case 'take-off':
      return act.reseat
        ? 'Push the work off all the needles, on its waste rows. All needles to resting.'
        : 'Drop the work off the needles: the waste rows hold its loops. All needles to resting.';
    case 'rehang':
      return `Hang the ${act.count} loops again, one on each needle, from ${act.first} to ${act.last}, left to right.`;
    case 'release-waste':
      return act.reseat
        ? `Unpick the waste rows. Hang the claw weights again: under ${act.left} and under ${act.right}.`
        : 'Unpick the waste rows from edge A.';
    case 'cut-graft-tail':
      return `Measure ${tail(act.lengthCm)} of ${act.yarn} and cut it there: the tail for the graft${act.throughSeam ? ' and the bottom seam' : ''}.${alsoCut(act.alsoCut)}`;
    case 'ready-graft':
      return `Fold the waste rows under, so that the open loops show. Edge A is where the tail hangs, at the ${act.tailSide}; edge B is the start.`;
    case 'bite':
      return `Bite ${act.number} of ${plan.graft.bites}: open ${act.opens}, finish ${act.finishes}.${biteHint(act.number)}`;
    case 'fasten-graft':
      return 'Fasten the graft thread at the edge.';
    case 'pull-ravel-cord':
      return 'Pull the ravel cord out: the waste comes away from edge B.';
    case 'fold-seam':
      return `Fold the tube flat along the trailing edge, ${count(act.rowsPerSide, 'row')} facing ${act.rowsPerSide}. ${act.tailCm === null ? 'The graft tail sews on.' : `Cut ${tail(act.tailCm)} of ${act.yarn} for the seam.`}`;
    case 'bars':
      return `Seam, ${act.from === act.through ? `bar ${act.from}` : `bars ${act.from} to ${act.through}`} of ${act.of}: one from the front, one from the back, in turn. Draw up until the edges meet.`;
    case 'fasten-seam':
      return 'Fasten the seam thread.';
    case 'hide-ends':
      return 'Sew all yarn ends in on the inside.';
    case 'set-cord-needles':
      return `For the cord: carriage on the ${act.carriage}. Bring ${act.count} needles to working: ${act.first} to ${act.last}.`;
    case 'cast-on-cord':
      return `E-wrap the ${act.count} needles with ${act.yarn}, leaving a ${tail(endTailCm)} tail.`;
    case 'thread-cord':
      return `Thread ${act.yarn} into the feeder.`;
    case 'cord-first-row':
      return `Knit one row to the ${act.to}.`;
    case 'set-slip':
      return `Hang a small weight on the cord. Set the carriage to slip to the ${act.slipTo} and knit to the ${act.knitTo}.`;
    case 'round':
      return `Round ${act.number} of ${plan.cord.rounds}: slip to the ${act.slipTo}, knit to the ${act.knitTo}.`;
    case 'measure-cord':
      return `Measure the cord, lying at rest: it should be ${formatLength(Math.round(act.lengthCm), units)} long. Knit more rounds if it is shorter.`;
    case 'draw-through':
      return `Cut ${act.yarn}, leaving ${tail(endTailCm)}. Draw the end through the ${act.count} loops, take them off, and hide it inside the cord.`;
    case 'thread-eyelet':
      return `Hole ${act.hole} of ${act.of}: ${act.passesBy === null ? '' : `pass by eyelet ${act.passesBy}, then `}lead the cord through eyelet ${act.eyelet} to the ${act.towards}.`;
    case 'tie':
      return 'Even the two ends, knot each, and tie a bow.';
    default:
      return exhaustive(act);
  }
}

function setAside(aside: Aside | null, units: Units): string {
  if (!aside) return '';
  return aside.how === 'park'
    ? `Park ${aside.yarn} at the ${aside.end} end. `
    : `Cut ${aside.yarn}, leaving a ${formatTail(endTailCm, units)} tail. `;
}

type Shaping<K> = Extract<Act, { readonly kind: K }>;

const titled = (side: Side): string => `${side === 'left' ? 'Left' : 'Right'} edge`;

function liftAndSet(step: Step): string {
  const transfer = step.moves.find((move) => move.move === 'transfer');
  const from = transfer?.from ?? [];
  const loops = from.length === 1 ? 'the outermost loop' : `the ${from.length} outermost loops`;
  return `lift ${loops}, ${formatList(from)}, to ${formatList(transfer?.to ?? [])}`;
}

const sayIncrease = (step: Step, act: Shaping<'increase'>): string =>
  `${titled(act.side)}, one out: ${liftAndSet(step)}. Leave ${act.uncovered} working and empty: the eyelet.`;

const sayDecrease = (step: Step, act: Shaping<'decrease'>): string =>
  `${titled(act.side)}, one in: ${liftAndSet(step)}. Push ${act.emptied} to resting.`;

function biteHint(number: number): string {
  if (number === 1) return ' Never pull tight: each bite is as big as a stitch.';
  return '';
}

/** The waste yarn by its own name and by its part, or by its part alone where it has no other name. */
const named = (waste: string): string => (waste === 'waste' ? 'the waste yarn' : `${waste}, the waste yarn`);
const threaded = (waste: string): string =>
  waste === 'waste' ? 'the waste yarn' : `${waste}, the waste yarn,`;
const bare = (waste: string): string => (waste === 'waste' ? 'the waste yarn' : waste);

/** Yarns that a change of plan has left parked. */
const alsoCut = (yarns: readonly string[]): string =>
  yarns.length === 0 ? '' : ` Cut ${formatList(yarns)} too.`;
