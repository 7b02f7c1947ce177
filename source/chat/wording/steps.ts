/** What to do, in the maker's words: one sentence or two a step, with the needles named in it. */
import type { Side } from '../../bed/side.ts';
import type { Plan } from '../../planning/plan.ts';
import { endTailCm } from '../../planning/tails.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import { count, formatList, say } from '../../shared/say.ts';
import { formatLengthNeeded, formatTail, metric, type Units } from '../../shared/units.ts';
import type { Act, Aside, Phase, Step } from '../../steps/step.ts';
import { sayYarn } from './yarns.ts';

const phaseNames: Readonly<Record<Phase, () => string>> = {
  'cast-on': () => say`cast-on`,
  stripes: () => say`stripes`,
  'closing-row': () => say`closing row`,
  graft: () => say`graft`,
  seam: () => say`seam`,
  cord: () => say`cord`,
};

export const sayPhase = (phase: Phase): string => phaseNames[phase]();

/** The instruction for a step of `plan`'s job, as plain text. */
export function sayStep(plan: Plan, step: Step, units: Units = metric): string {
  const { act } = step;
  const tail = (cm: number): string => formatTail(cm, units);
  switch (act.kind) {
    case 'set-needles':
      return say`Carriage on the ${act.carriage}. Bring ${act.count} needles to working: ${act.first} to ${act.last}.`;
    case 'cast-on':
      return say`Cast on with ${named(act.yarn)}: one loop on each needle from ${act.first} to ${act.last}.`;
    case 'hang-comb':
      return say`Hang the cast-on comb on the loops.`;
    case 'thread-waste':
      return setAside(act.aside, units) + say`Thread ${threaded(act.yarn)} into the feeder.`;
    case 'waste-pass':
      return say`Waste row ${act.number} of ${act.count}: one pass to the ${act.to}.`;
    case 'lay-ravel-cord':
      return say`Cut ${bare(act.wasteYarn)}. Lay the ravel cord in the feeder, its end held slack by a clip on the ${act.clipSide}.`;
    case 'ravel-pass':
      return say`Ravel-cord row: one pass to the ${act.to}.`;
    case 'trim-ravel-cord':
      return say`Cut the ravel cord, leaving an end at each side to pull later.`;
    case 'hang-weights':
      return say`Hang a claw weight at each edge: under ${act.left} and under ${act.right}.`;
    case 'thread':
      return setAside(act.aside, units) + sayThread(act, tail(endTailCm));
    case 'pass':
      return say`Knit one row to the ${act.to} with ${act.yarn}: row ${act.rowInStripe} of ${act.stripeRows} in this stripe.`;
    case 'closing-pass':
      return say`Closing row: knit one row to the ${act.to} with ${act.yarn}. The graft will be the last row of this stripe.`;
    case 'increase':
      return sayIncrease(step, act);
    case 'decrease':
      return sayDecrease(step, act);
    case 'move-weights':
      return say`Move the claw weights up: under ${act.left} and under ${act.right}.`;
    case 'weights-off':
      return say`Cut ${bare(act.wasteYarn)}. Take the weights off, a hand under each.`;
    case 'take-off':
      return act.reseat
        ? say`Push the work off all the needles, on its waste rows. All needles to resting.`
        : say`Drop the work off the needles: the waste rows hold its loops. All needles to resting.`;
    case 'rehang':
      return say`Hang the ${act.count} loops again, one on each needle, from ${act.first} to ${act.last}, left to right.`;
    case 'release-waste':
      return act.left && act.right
        ? say`Unpick the waste rows. Hang the claw weights again: under ${act.left} and under ${act.right}.`
        : say`Unpick the waste rows from edge A.`;
    case 'cut-graft-tail':
      return sayGraftTail(act, tail(act.lengthCm)) + alsoCut(act.alsoCut);
    case 'ready-graft':
      return say`Fold the waste rows under, so that the open loops show. Edge A is where the tail hangs, at the ${act.tailSide}; edge B is the start.`;
    case 'bite':
      return (
        say`Bite ${act.number} of ${plan.graft.bites}: open ${act.opens}, finish ${act.finishes}.` +
        biteHint(act.number)
      );
    case 'fasten-graft':
      return say`Fasten the graft thread at the edge.`;
    case 'pull-ravel-cord':
      return say`Pull the ravel cord out: the waste comes away from edge B.`;
    case 'fold-seam':
      return act.tailCm === null
        ? say`Fold the tube flat along the trailing edge, ${count(act.rowsPerSide, 'row')} facing ${act.rowsPerSide}. The graft tail sews on.`
        : say`Fold the tube flat along the trailing edge, ${count(act.rowsPerSide, 'row')} facing ${act.rowsPerSide}. Cut ${tail(act.tailCm)} of ${act.yarn} for the seam.`;
    case 'bars':
      return act.from === act.through
        ? say`Seam, bar ${act.from} of ${act.of}: one from the front, one from the back, in turn. Draw up until the edges meet.`
        : say`Seam, bars ${act.from} to ${act.through} of ${act.of}: one from the front, one from the back, in turn. Draw up until the edges meet.`;
    case 'fasten-seam':
      return say`Fasten the seam thread.`;
    case 'hide-ends':
      return say`Sew all yarn ends in on the inside.`;
    case 'set-cord-needles':
      return say`For the cord: carriage on the ${act.carriage}. Bring ${act.count} needles to working: ${act.first} to ${act.last}.`;
    case 'cast-on-cord':
      return say`E-wrap the ${act.count} needles with ${act.yarn}, leaving a ${tail(endTailCm)} tail.`;
    case 'thread-cord':
      return say`Thread ${act.yarn} into the feeder.`;
    case 'cord-first-row':
      return say`Knit one row to the ${act.to}.`;
    case 'set-slip':
      return say`Hang a small weight on the cord. Set the carriage to slip to the ${act.slipTo} and knit to the ${act.knitTo}.`;
    case 'round':
      return say`Round ${act.number} of ${plan.cord.rounds}: slip to the ${act.slipTo}, knit to the ${act.knitTo}.`;
    case 'measure-cord':
      return say`Measure the cord, lying at rest: it should be ${formatLengthNeeded(act.lengthCm, units)} long. Knit more rounds if it is shorter.`;
    case 'draw-through':
      return say`Cut ${act.yarn}, leaving ${tail(endTailCm)}. Draw the end through the ${act.count} loops, take them off, and hide it inside the cord.`;
    case 'thread-eyelet':
      return act.passesBy === null
        ? say`Hole ${act.hole} of ${act.of}: lead the cord through eyelet ${act.eyelet} to the ${act.towards}.`
        : say`Hole ${act.hole} of ${act.of}: pass by eyelet ${act.passesBy}, then lead the cord through eyelet ${act.eyelet} to the ${act.towards}.`;
    case 'tie':
      return say`Even the two ends, knot each, and tie a bow.`;
    default:
      return exhaustive(act);
  }
}

function setAside(aside: Aside | null, units: Units): string {
  if (!aside) return '';
  const yarn = sayYarn(aside.yarn);
  return aside.how === 'park'
    ? `${say`Park ${yarn} at the ${aside.end} end.`} `
    : `${say`Cut ${yarn}, leaving a ${formatTail(endTailCm, units)} tail.`} `;
}

type ActOf<K> = Extract<Act, { readonly kind: K }>;

const sayThread = ({ yarn, first }: ActOf<'thread'>, tail: string): string =>
  first ? say`Thread ${yarn} into the feeder, leaving a ${tail} tail.` : say`Thread ${yarn} into the feeder.`;

const sayGraftTail = ({ yarn, throughSeam }: ActOf<'cut-graft-tail'>, tail: string): string =>
  throughSeam
    ? say`Measure ${tail} of ${yarn} and cut it there: the tail for the graft and the bottom seam.`
    : say`Measure ${tail} of ${yarn} and cut it there: the tail for the graft.`;

const titled = (side: Side): string => (side === 'left' ? say`Left edge` : say`Right edge`);

function liftAndSet(step: Step): string {
  const transfer = step.moves.find((move) => move.move === 'transfer');
  const from = transfer?.from ?? [];
  const to = formatList(transfer?.to ?? []);
  return from.length === 1
    ? say`lift the outermost loop, ${formatList(from)}, to ${to}`
    : say`lift the ${from.length} outermost loops, ${formatList(from)}, to ${to}`;
}

const sayIncrease = (step: Step, act: ActOf<'increase'>): string =>
  say`${titled(act.side)}, one out: ${liftAndSet(step)}. Leave ${act.uncovered} working and empty: the eyelet.`;

const sayDecrease = (step: Step, act: ActOf<'decrease'>): string =>
  say`${titled(act.side)}, one in: ${liftAndSet(step)}. Push ${act.emptied} to resting.`;

const biteHint = (number: number): string =>
  number === 1 ? ` ${say`Never pull tight: each bite is as big as a stitch.`}` : '';

/** The waste yarn by its own name and by its part, or by its part alone where it has no other name. */
const named = (waste: string): string =>
  waste === 'waste' ? say`the waste yarn` : say`${waste}, the waste yarn`;
const threaded = (waste: string): string =>
  waste === 'waste' ? say`the waste yarn` : say`${waste}, the waste yarn,`;
const bare = (waste: string): string => (waste === 'waste' ? say`the waste yarn` : waste);

/** Yarns that a change of plan has left parked. */
const alsoCut = (yarns: readonly string[]): string =>
  yarns.length === 0 ? '' : ` ${say`Cut ${formatList(yarns)} too.`}`;
