/** What to do, part by part, in short numbered sentences, each part with the caution that belongs to it. */
import { opposite } from '../../bed/side.ts';
import type { Plan } from '../../planning/plan.ts';
import { endTailCm } from '../../planning/tails.ts';
import { closingWasteRows } from '../../planning/yarn-needs.ts';
import { formatLength, formatTail, type Units } from '../../shared/units.ts';
import { bedMapOf } from '../geometry/bed-map.ts';
import { foldOf } from '../geometry/fold.ts';
import { counted } from '../measure.ts';
import { inSentence } from '../text.ts';

export interface Part {
  readonly title: string;
  readonly steps: readonly string[];
  readonly caution: string | null;
}

export interface Instructions {
  readonly start: Part;
  readonly stripes: Part;
  readonly closing: Part;
  readonly graft: Part;
  readonly seam: Part;
  readonly cord: Part;
}

export const instructionsFor = (plan: Plan, units: Units): Instructions => ({
  start: startPart(plan),
  stripes: stripesPart(plan),
  closing: closingPart(plan, units),
  graft: graftPart(plan),
  seam: seamPart(plan, units),
  cord: cordPart(plan, units),
});

function startPart(plan: Plan): Part {
  const { waste, homeSide } = plan.brief;
  const hung = bedMapOf(plan).seatings[0]?.hung;
  const stand = (waste.rows + 1) % 2 === 0 ? homeSide : opposite(homeSide);
  return {
    title: 'Open start',
    steps: [
      `Carriage on the ${stand}. Bring ${plan.stitches} needles to working, ${hung?.leftName} to ${hung?.rightName}.`,
      `Cast on with ${inSentence(waste.yarn)}, hang the comb, knit ${counted(waste.rows, 'waste row')}.`,
      `One row with the ravel cord brings the carriage home, to the ${homeSide}. Cut it, an end left at each side, and hang a weight at each edge.`,
    ],
    caution:
      'Hooks and latches are sharp: fingers clear while the carriage moves. Weights fall: a hand under them, feet clear.',
  };
}

function stripesPart(plan: Plan): Part {
  const { crawl, edgeStitches, shapeEveryRows, homeSide } = plan.brief;
  const loops = edgeStitches === 1 ? 'the outermost loop' : `the ${edgeStitches} outermost loops`;
  return {
    title: 'Stripes',
    steps: [
      `Shape after every ${shapeEveryRows === 2 ? 'second' : `${shapeEveryRows}th`} row, ${counted(plan.shapings, 'time')} in all, with the carriage home on the ${homeSide}.`,
      `Leading edge, ${crawl}: ${loops} one needle out. The needle this uncovers stays working and empty: the next pass makes it an eyelet.`,
      `Trailing edge, ${opposite(crawl)}: ${loops} one needle in, the innermost onto a needle that holds one. Push the emptied needle to resting.`,
      'Park the yarn that waits at its own end of the bed. Move the edge weights up every 10 rows.',
    ],
    caution:
      'An empty feeder drops every stitch: look before each pass. Rest hands and shoulders every half hour or so.',
  };
}

function closingPart(plan: Plan, units: Units): Part {
  const { graft, seam } = plan;
  const yarn = inSentence(plan.stripes.at(-1)?.yarn ?? '');
  const tail = formatTail(graft.tailCm + (graft.goesOnToSeam ? seam.tailCm : 0), units);
  return {
    title: 'Closing row',
    steps: [
      `Row ${plan.knittedRows}, in ${yarn}, is the last to be knitted; the graft is row ${plan.rows}.`,
      `Cut ${yarn} ${tail} long: the tail for the graft${graft.goesOnToSeam ? ' and the seam' : ''}.`,
      `Knit ${closingWasteRows(plan.brief)} rows of ${inSentence(plan.brief.waste.yarn)}, take the weights off, drop the work off the needles.`,
    ],
    caution: 'Weights off before any stitch is let go, a hand under them, feet clear.',
  };
}

function graftPart(plan: Plan): Part {
  const { goesOnToSeam } = plan.graft;
  const end = foldOf(plan).startsAtMouth ? ['mouth', 'bottom'] : ['bottom', 'mouth'];
  return {
    title: 'Graft',
    steps: [
      `Fold the waste under, so that open loops show. A is the edge with the tail, B the start; loop 1 of both is at the ${end[0]}.`,
      `Bite 1 opens A1 and finishes B1; bite 2 opens B2 and finishes A1; bite 3 opens A2 and finishes B2. Go on so: ${plan.graft.bites} bites, to the ${end[1]}.`,
      `Each bite is as big as a stitch, never tight.${goesOnToSeam ? '' : ' Fasten.'} Pull the ravel cord out and unpick the waste.`,
    ],
    caution: null,
  };
}

function seamPart(plan: Plan, units: Units): Part {
  const { seam, graft } = plan;
  const thread = graft.goesOnToSeam
    ? 'The graft tail sews on'
    : `Cut ${formatTail(seam.tailCm, units)} of yarn`;
  return {
    title: 'Seam',
    steps: [
      `Lay the tube flat along the trailing edge, ${seam.barsPerSide} rows facing ${seam.barsPerSide}. ${thread}.`,
      `One stitch in from the edge, take one bar from the front, one from the back, in turn: ${counted(seam.barsPerSide, 'bar')} a side.`,
      'After every few bites draw the thread up until the edges meet. Fasten, and sew all ends in on the inside.',
    ],
    caution: 'Steam scalds, and it flattens man-made fibre.',
  };
}

function cordPart(plan: Plan, units: Units): Part {
  const { cord, eyelets } = plan;
  const passedBy = eyelets.skipped.length > 0 ? ` Pass by ${eyelets.skipped.join(', ')}.` : '';
  return {
    title: 'Cord',
    steps: [
      `E-wrap ${counted(cord.stitches, 'needle')} with ${inSentence(cord.yarn)}, an end of ${formatLength(endTailCm, units)} left; knit one row, hang a small weight.`,
      `Set the carriage to slip one way and knit the other: ${counted(cord.rounds, 'round')} of two passes make ${formatLength(cord.lengthCm, units)}. Draw the end through the loops.`,
      `From the gap at the graft go in through eyelet ${eyelets.used[0] ?? 1}, out through the next, and so on, ${eyelets.used.length} in all.${passedBy} Both ends come out on the outside: knot them.`,
    ],
    caution:
      'Keep cords from small children. Toy rules (EN 71-1) allow the very young far shorter cords; this bag is no toy, and local rules decide.',
  };
}
