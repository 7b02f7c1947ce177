/** What to do, in the maker's words: one sentence or two a step, with the needles named in it. */
import type { Side } from '../../bed/side.ts';
import type { RelaxedState } from '../../planning/brief.ts';
import type { Plan } from '../../planning/plan.ts';
import { endTailCm } from '../../planning/tails.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import { count, formatList, say } from '../../shared/say.ts';
import { formatLength, formatLengthNeeded, formatTail, metric, type Units } from '../../shared/units.ts';
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
      return (
        sayDial(act.stitchSize) +
        say`Carriage on the ${act.carriage}. Bring ${act.count} needles into work: ${act.first} to ${act.last}.`
      );
    case 'cast-on':
      return say`E-wrap ${named(act.yarn)} round each needle from ${act.from} to ${act.to}, so that the yarn ends beside the carriage.`;
    case 'hang-comb':
      return act.hasComb
        ? say`Hang the cast-on comb on the loops.`
        : say`No comb: hold the loops down against the bed with a hand while the first rows are knitted.`;
    case 'thread-waste':
      return setAside(act.aside, units) + say`Thread ${threaded(act.yarn)} into the feeder.`;
    case 'waste-pass':
      return say`Waste row ${act.number} of ${act.count}: one pass to the ${act.to}.`;
    case 'lay-ravel-cord':
      return act.ravel === 'cord'
        ? say`Cut ${bare(act.wasteYarn)}. Lay the ravel cord in the feeder, its end held slack by a clip on the ${act.clipSide}.`
        : say`At the ${act.clipSide} edge draw out a loop of ${bare(act.wasteYarn)} as long as your hand, and hold it slack with a clip: it marks the row that is pulled out later.`;
    case 'ravel-pass':
      return say`Ravel row: one pass to the ${act.to}.`;
    case 'trim-ravel-cord':
      return act.ravel === 'cord'
        ? say`Cut the ravel cord, leaving an end at each side to pull later. Row counter to 0.`
        : say`Cut ${bare(act.wasteYarn)} here; the loop in its clip stays. Row counter to 0.`;
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
      return act.rehang
        ? say`Push the work off all the needles, on its waste rows. All needles out of work.`
        : say`Drop the work off the needles: the waste rows hold its loops. All needles out of work.`;
    case 'rehang':
      return say`Hang the ${act.count} loops again, one on each needle, from ${act.first} to ${act.last}, left to right.`;
    case 'release-waste':
      return act.left && act.right
        ? say`Unpick the waste rows. Hang the claw weights again: under ${act.left} and under ${act.right}.`
        : say`Unpick the waste rows from edge A.`;
    case 'cut-graft-tail':
      return sayGraftTail(act, tail(act.lengthCm)) + alsoCut(act.alsoCut);
    case 'lay-graft':
      return say`Knit side up: A, where the tail hangs, above the gap; B, the start, below; mouth on the ${act.mouthSide}. Fold the waste under: open loops show. The ravel cord stays in.`;
    case 'graft-start':
      return say`Thread the tail into the blunt needle and count the loops of both edges from where it hangs. A: up through 1, from behind.`;
    case 'graft-pair':
      return (
        say`B: down through ${act.down}, up through ${act.up}. A: down through ${act.down}, up through ${act.up}.` +
        graftHint(act.down)
      );
    case 'graft-end':
      return say`B: down through ${act.down}, the last. Look along the row: every stitch as big as the ones beside it.`;
    case 'fasten-graft':
      return say`Fasten the graft thread at the edge.`;
    case 'pull-ravel-cord':
      return plan.brief.waste.ravel === 'cord'
        ? say`Pull the ravel cord out: the waste comes away from edge B.`
        : say`Find the loop in its clip, cut one strand of that row and pull it out: the waste comes away from edge B.`;
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
    case 'wash':
      return say`${washing(act.state)} Lay it flat, ${formatLength(act.widthCm, units)} wide and ${formatLength(act.depthCm, units)} deep, and let it dry.`;
    case 'measure-bag':
      return say`Measure the bag, dry and flat: it should be ${formatLength(act.widthCm, units)} wide and ${formatLength(act.depthCm, units)} deep. Note what you got: the next bag is planned from it.`;
    case 'set-cord-needles':
      return say`For the cord: carriage on the ${act.carriage}. Bring ${act.count} needles into work: ${act.first} to ${act.last}.`;
    case 'cast-on-cord':
      return say`E-wrap the ${act.count} needles with ${act.yarn}, from ${act.from} to ${act.to} beside the carriage, leaving a ${tail(endTailCm)} tail.`;
    case 'thread-cord':
      return say`Thread ${act.yarn} into the feeder.`;
    case 'cord-first-row':
      return say`Knit one row to the ${act.to}.`;
    case 'set-slip':
      return say`Hang a small weight on the cord. Set the carriage to slip to the ${act.slipTo} and knit to the ${act.knitTo}.`;
    case 'rounds':
      return act.from === act.through
        ? say`Round ${act.from} of ${plan.cord.rounds}: slip to the ${act.slipTo}, knit to the ${act.knitTo}.`
        : say`Rounds ${act.from} to ${act.through} of ${plan.cord.rounds}: each time slip to the ${act.slipTo}, knit to the ${act.knitTo}.`;
    case 'measure-rounds':
      return say`Measure the cord, lying at rest: ${act.rounds} rounds should be ${formatLength(act.lengthCm, units)}. Where yours differ, type cord and your length: the rounds still to knit follow it.`;
    case 'measure-cord':
      return say`Measure the cord, lying at rest: it should be ${formatLengthNeeded(act.lengthCm, units)} long. Knit more rounds if it is shorter.`;
    case 'draw-through':
      return say`Cut ${act.yarn}, leaving ${tail(endTailCm)}. Draw the end through the ${act.count} loops, take them off, and hide it inside the cord.`;
    case 'thread-eyelets':
      return say`Holes ${act.hole} and ${act.hole + 1} of ${act.of}, counted from the graft: the cord goes in through eyelet ${act.inThrough} and comes out through eyelet ${act.outThrough}.`;
    case 'tie':
      return say`Even the two ends, knot each, and tie a bow.`;
    default:
      return exhaustive(act);
  }
}

const sayDial = (stitchSize: string | null): string =>
  stitchSize === null
    ? `${say`Stitch size as for the swatch.`} `
    : `${say`Stitch size ${stitchSize}, as for the swatch.`} `;

function setAside(aside: Aside | null, units: Units): string {
  if (!aside) return '';
  const yarn = sayYarn(aside.yarn);
  return aside.how === 'park'
    ? `${say`Take ${yarn} out of the feeder, lead it straight back and clip it on the ${aside.end}.`} `
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
  say`${titled(act.side)}, one out: bring ${act.outer} into work, ${liftAndSet(step)}. Leave ${act.uncovered} in work and empty: the eyelet.`;

const sayDecrease = (step: Step, act: ActOf<'decrease'>): string =>
  say`${titled(act.side)}, one in: ${liftAndSet(step)}. Push ${act.emptied} out of work.`;

/** Said at the first pair, and every ten a look along the row. */
function graftHint(loop: number): string {
  if (loop === 1) return ` ${say`Draw each movement to the size of a stitch, never tight.`}`;
  return loop % 10 === 0 ? ` ${say`Look along the row.`}` : '';
}

const washings: Readonly<Record<RelaxedState, () => string>> = {
  'dry-relaxed': () => say`Let the bag rest for a day.`,
  'wet-relaxed': () => say`Soak the bag, press the water out and do not wring it.`,
  'fully-relaxed': () => say`Wash and tumble the bag as it will be washed.`,
};
const washing = (state: RelaxedState): string => washings[state]();

/** The waste yarn by its own name and by its part, or by its part alone where it has no other name. */
const named = (waste: string): string =>
  waste === 'waste' ? say`the waste yarn` : say`${waste}, the waste yarn`;
const threaded = (waste: string): string =>
  waste === 'waste' ? say`the waste yarn` : say`${waste}, the waste yarn,`;
const bare = (waste: string): string => (waste === 'waste' ? say`the waste yarn` : waste);

/** Yarns that a change of plan has left parked. */
const alsoCut = (yarns: readonly string[]): string =>
  yarns.length === 0 ? '' : ` ${say`Cut ${formatList(yarns)} too.`}`;
