/** What to do, in the maker's words: one sentence or two a step, with the needles named in it. */

import type { Side } from '../../bed/side.ts';
import type { RelaxedState } from '../../planning/brief.ts';
import type { Plan } from '../../planning/plan.ts';
import { endTailCm } from '../../planning/tails.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import type { Act, Aside, Phase, Step } from '../../steps/step.ts';
import type { Words } from '../../wording/words.ts';
import { sayYarn } from './yarns.ts';

const phaseNames: Readonly<Record<Phase, (words: Words) => string>> = {
  'cast-on': (words: Words) => words.say`cast-on`,
  stripes: (words: Words) => words.say`stripes`,
  'closing-row': (words: Words) => words.say`closing row`,
  graft: (words: Words) => words.say`graft`,
  seam: (words: Words) => words.say`seam`,
  cord: (words: Words) => words.say`cord`,
};

export const sayPhase = (phase: Phase, words: Words): string => phaseNames[phase](words);

/** The instruction for a step of `plan`'s job, as plain text. */
export function sayStep(plan: Plan, step: Step, words: Words): string {
  const { act } = step;
  const tail = (cm: number): string => words.amounts.tail(cm);
  switch (act.kind) {
    case 'set-needles':
      return (
        sayDial(act.stitchSize, words) +
        words.say`Carriage on the ${act.carriage}. Bring ${act.count} needles into work: ${act.first} to ${act.last}.`
      );
    case 'cast-on':
      return words.say`E-wrap ${named(act.yarn, words)} round each needle from ${act.from} to ${act.to}, so that the yarn ends beside the carriage.`;
    case 'hang-comb':
      return act.hasComb
        ? words.say`Hang the cast-on comb on the loops.`
        : words.say`No comb: hold the loops down against the bed with a hand while the first rows are knitted.`;
    case 'thread-waste':
      return setAside(act.aside, words) + words.say`Thread ${threaded(act.yarn, words)} into the feeder.`;
    case 'waste-pass':
      return words.say`Waste row ${act.number} of ${act.count}: one pass to the ${act.to}.`;
    case 'lay-ravel-cord':
      return act.ravel === 'cord'
        ? words.say`Cut ${bare(act.wasteYarn, words)}. Lay the ravel cord in the feeder, its end held slack by a clip on the ${act.clipSide}.`
        : words.say`At the ${act.clipSide} edge draw out a loop of ${bare(act.wasteYarn, words)} as long as your hand, and hold it slack with a clip: it marks the row that is pulled out later.`;
    case 'ravel-pass':
      return words.say`Ravel row: one pass to the ${act.to}.`;
    case 'trim-ravel-cord':
      return act.ravel === 'cord'
        ? words.say`Cut the ravel cord, leaving an end at each side to pull later. Row counter to 0.`
        : words.say`Cut ${bare(act.wasteYarn, words)} here; the loop in its clip stays. Row counter to 0.`;
    case 'hang-weights':
      return words.say`Hang a claw weight at each edge: under ${act.left} and under ${act.right}.`;
    case 'thread':
      return setAside(act.aside, words) + sayThread(act, tail(endTailCm), words);
    case 'pass':
      return words.say`Knit one row to the ${act.to} with ${act.yarn}: row ${act.rowInStripe} of ${act.stripeRows} in this stripe.`;
    case 'closing-pass':
      return words.say`Closing row: knit one row to the ${act.to} with ${act.yarn}. The graft will be the last row of this stripe.`;
    case 'increase':
      return sayIncrease(step, act, words);
    case 'decrease':
      return sayDecrease(step, act, words);
    case 'move-weights':
      return words.say`Move the claw weights up: under ${act.left} and under ${act.right}.`;
    case 'weights-off':
      return words.say`Cut ${bare(act.wasteYarn, words)}. Take the weights off, a hand under each.`;
    case 'take-off':
      return act.rehang
        ? words.say`Push the work off all the needles, on its waste rows. All needles out of work.`
        : words.say`Drop the work off the needles: the waste rows hold its loops. All needles out of work.`;
    case 'rehang':
      return words.say`Hang the ${act.count} loops again, one on each needle, from ${act.first} to ${act.last}, left to right.`;
    case 'release-waste':
      return act.left && act.right
        ? words.say`Unpick the waste rows. Hang the claw weights again: under ${act.left} and under ${act.right}.`
        : words.say`Unpick the waste rows from edge A.`;
    case 'cut-graft-tail':
      return sayGraftTail(act, tail(act.lengthCm), words) + alsoCut(act.alsoCut, words);
    case 'lay-graft':
      return words.say`Knit side up: A, where the tail hangs, above the gap; B, the start, below; mouth on the ${act.mouthSide}. Fold the waste under: open loops show. The ravel cord stays in.`;
    case 'graft-start':
      return words.say`Thread the tail into the blunt needle and count the loops of both edges from where it hangs. A: up through 1, from behind.`;
    case 'graft-pair':
      return (
        words.say`B: down through ${act.down}, up through ${act.up}. A: down through ${act.down}, up through ${act.up}.` +
        graftHint(act.down, words)
      );
    case 'graft-end':
      return words.say`B: down through ${act.down}, the last. Look along the row: every stitch as big as the ones beside it.`;
    case 'fasten-graft':
      return words.say`Fasten the graft thread at the edge.`;
    case 'pull-ravel-cord':
      return plan.brief.waste.ravel === 'cord'
        ? words.say`Pull the ravel cord out: the waste comes away from edge B.`
        : words.say`Find the loop in its clip, cut one strand of that row and pull it out: the waste comes away from edge B.`;
    case 'fold-seam':
      return act.tailCm === null
        ? words.say`Fold the tube flat along the trailing edge, ${words.count(act.rowsPerSide, 'row')} facing ${act.rowsPerSide}. The graft tail sews on.`
        : words.say`Fold the tube flat along the trailing edge, ${words.count(act.rowsPerSide, 'row')} facing ${act.rowsPerSide}. Cut ${tail(act.tailCm)} of ${act.yarn} for the seam.`;
    case 'bars':
      return act.from === act.through
        ? words.say`Seam, bar ${act.from} of ${act.of}: one from the front, one from the back, in turn. Draw up until the edges meet.`
        : words.say`Seam, bars ${act.from} to ${act.through} of ${act.of}: one from the front, one from the back, in turn. Draw up until the edges meet.`;
    case 'fasten-seam':
      return words.say`Fasten the seam thread.`;
    case 'hide-ends':
      return words.say`Sew all yarn ends in on the inside.`;
    case 'wash':
      return words.say`${washing(act.state, words)} Lay it flat, ${words.amounts.length(act.widthCm)} wide and ${words.amounts.length(act.depthCm)} deep, and let it dry.`;
    case 'measure-bag':
      return words.say`Measure the bag, dry and flat: it should be ${words.amounts.length(act.widthCm)} wide and ${words.amounts.length(act.depthCm)} deep. Note what you got: the next bag is planned from it.`;
    case 'set-cord-needles':
      return words.say`For the cord: carriage on the ${act.carriage}. Bring ${act.count} needles into work: ${act.first} to ${act.last}.`;
    case 'cast-on-cord':
      return words.say`E-wrap the ${act.count} needles with ${act.yarn}, from ${act.from} to ${act.to} beside the carriage, leaving a ${tail(endTailCm)} tail.`;
    case 'thread-cord':
      return words.say`Thread ${act.yarn} into the feeder.`;
    case 'cord-first-row':
      return words.say`Knit one row to the ${act.to}.`;
    case 'set-slip':
      return words.say`Hang a small weight on the cord. Set the carriage to slip to the ${act.slipTo} and knit to the ${act.knitTo}.`;
    case 'rounds':
      return act.from === act.through
        ? words.say`Round ${act.from} of ${plan.cord.rounds}: slip to the ${act.slipTo}, knit to the ${act.knitTo}.`
        : words.say`Rounds ${act.from} to ${act.through} of ${plan.cord.rounds}: each time slip to the ${act.slipTo}, knit to the ${act.knitTo}.`;
    case 'measure-rounds':
      return words.say`Measure the cord, lying at rest: ${act.rounds} rounds should be ${words.amounts.length(act.lengthCm)}. Where yours differ, type cord and your length: the rounds still to knit follow it.`;
    case 'measure-cord':
      return words.say`Measure the cord, lying at rest: it should be ${words.amounts.lengthNeeded(act.lengthCm)} long. Knit more rounds if it is shorter.`;
    case 'draw-through':
      return words.say`Cut ${act.yarn}, leaving ${tail(endTailCm)}. Draw the end through the ${act.count} loops, take them off, and hide it inside the cord.`;
    case 'thread-eyelets':
      return words.say`Holes ${act.hole} and ${act.hole + 1} of ${act.of}, counted from the graft: the cord goes in through eyelet ${act.inThrough} and comes out through eyelet ${act.outThrough}.`;
    case 'tie':
      return words.say`Even the two ends, knot each, and tie a bow.`;
    default:
      return exhaustive(act);
  }
}

const sayDial = (stitchSize: string | null, words: Words): string =>
  stitchSize === null
    ? `${words.say`Stitch size as for the swatch.`} `
    : `${words.say`Stitch size ${stitchSize}, as for the swatch.`} `;

function setAside(aside: Aside | null, words: Words): string {
  if (!aside) return '';
  const yarn = sayYarn(aside.yarn, words);
  return aside.how === 'park'
    ? `${words.say`Take ${yarn} out of the feeder, lead it straight back and clip it on the ${aside.end}.`} `
    : `${words.say`Cut ${yarn}, leaving a ${words.amounts.tail(endTailCm)} tail.`} `;
}

type ActOf<K> = Extract<Act, { readonly kind: K }>;

const sayThread = ({ yarn, first }: ActOf<'thread'>, tail: string, words: Words): string =>
  first
    ? words.say`Thread ${yarn} into the feeder, leaving a ${tail} tail.`
    : words.say`Thread ${yarn} into the feeder.`;

const sayGraftTail = ({ yarn, throughSeam }: ActOf<'cut-graft-tail'>, tail: string, words: Words): string =>
  throughSeam
    ? words.say`Measure ${tail} of ${yarn} and cut it there: the tail for the graft and the bottom seam.`
    : words.say`Measure ${tail} of ${yarn} and cut it there: the tail for the graft.`;

const titled = (side: Side, words: Words): string =>
  side === 'left' ? words.say`Left edge` : words.say`Right edge`;

function liftAndSet(step: Step, words: Words): string {
  const transfer = step.moves.find((move) => move.move === 'transfer');
  const from = transfer?.from ?? [];
  const to = words.amounts.list(transfer?.to ?? []);
  return from.length === 1
    ? words.say`lift the outermost loop, ${words.amounts.list(from)}, to ${to}`
    : words.say`lift the ${from.length} outermost loops, ${words.amounts.list(from)}, to ${to}`;
}

const sayIncrease = (step: Step, act: ActOf<'increase'>, words: Words): string =>
  words.say`${titled(act.side, words)}, one out: bring ${act.outer} into work, ${liftAndSet(step, words)}. Leave ${act.uncovered} in work and empty: the eyelet.`;

const sayDecrease = (step: Step, act: ActOf<'decrease'>, words: Words): string =>
  words.say`${titled(act.side, words)}, one in: ${liftAndSet(step, words)}. Push ${act.emptied} out of work.`;

/** Said at the first pair, and every ten a look along the row. */
function graftHint(loop: number, words: Words): string {
  if (loop === 1) return ` ${words.say`Draw each movement to the size of a stitch, never tight.`}`;
  return loop % 10 === 0 ? ` ${words.say`Look along the row.`}` : '';
}

const washings: Readonly<Record<RelaxedState, (words: Words) => string>> = {
  'dry-relaxed': (words: Words) => words.say`Let the bag rest for a day.`,
  'wet-relaxed': (words: Words) => words.say`Soak the bag, press the water out and do not wring it.`,
  'fully-relaxed': (words: Words) => words.say`Wash and tumble the bag as it will be washed.`,
};
const washing = (state: RelaxedState, words: Words): string => washings[state](words);

/** The waste yarn by its own name and by its part, or by its part alone where it has no other name. */
const named = (waste: string, words: Words): string =>
  waste === 'waste' ? words.say`the waste yarn` : words.say`${waste}, the waste yarn`;
const threaded = (waste: string, words: Words): string =>
  waste === 'waste' ? words.say`the waste yarn` : words.say`${waste}, the waste yarn,`;
const bare = (waste: string, words: Words): string => (waste === 'waste' ? words.say`the waste yarn` : waste);

/** Yarns that a change of plan has left parked. */
const alsoCut = (yarns: readonly string[], words: Words): string =>
  yarns.length === 0 ? '' : ` ${words.say`Cut ${words.amounts.list(yarns)} too.`}`;
