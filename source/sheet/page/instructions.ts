/** What to do, part by part, in short numbered sentences, each part with the caution that belongs to it. */

import { opposite } from '../../bed/side.ts';
import type { Plan } from '../../planning/plan.ts';
import { closingTailCm, endTailCm } from '../../planning/tails.ts';
import { closingWasteRows } from '../../planning/yarn-needs.ts';
import type { Words } from '../../wording/words.ts';
import { bedMapOf } from '../geometry/bed-map.ts';
import { foldOf } from '../geometry/fold.ts';
import { formatEvery } from '../measure.ts';
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

export const instructionsFor = (plan: Plan, words: Words): Instructions => ({
  start: startPart(plan, words),
  stripes: stripesPart(plan, words),
  closing: closingPart(plan, words),
  graft: graftPart(plan, words),
  seam: seamPart(plan, words),
  cord: cordPart(plan, words),
});

function startPart(plan: Plan, words: Words): Part {
  const { waste, homeSide } = plan.brief;
  const hung = bedMapOf(plan).hangings[0]?.hung;
  const stand = (waste.rows + 1) % 2 === 0 ? homeSide : opposite(homeSide);
  return {
    title: words.say`Open start`,
    steps: [
      words.say`Carriage on the ${stand}. Bring ${plan.stitches} needles into work, ${hung?.leftName ?? ''} to ${hung?.rightName ?? ''}.`,
      words.say`Cast on with ${inSentence(waste.yarn)}, hang the comb, knit ${words.count(waste.rows, 'waste row')}.`,
      words.say`One row with the ravel cord brings the carriage home, to the ${homeSide}. Cut it, an end left at each side, and hang a weight at each edge.`,
    ],
    caution: words.say`Hooks and latches are sharp: fingers clear while the carriage moves. Weights fall: a hand under them, feet clear.`,
  };
}

function stripesPart(plan: Plan, words: Words): Part {
  const { crawl, edgeStitches, shapeEveryRows, homeSide } = plan.brief;
  const loops =
    edgeStitches === 1 ? words.say`the outermost loop` : words.say`the ${edgeStitches} outermost loops`;
  return {
    title: words.say`Stripes`,
    steps: [
      words.say`Shape after every ${formatEvery(shapeEveryRows, words)} row, ${words.count(plan.shapings, 'time')} in all, with the carriage home on the ${homeSide}.`,
      words.say`Leading edge, ${crawl}: ${loops} one needle out. The needle this uncovers stays in work and empty: the next pass makes it an eyelet.`,
      words.say`Trailing edge, ${opposite(crawl)}: ${loops} one needle in, the innermost onto a needle that holds one. Push the emptied needle out of work.`,
      words.say`Park the yarn that waits at its own end of the bed. Move the edge weights up every 10 rows.`,
    ],
    caution: words.say`An empty feeder drops every stitch: look before each pass. Rest hands and shoulders every half hour or so.`,
  };
}

function closingPart(plan: Plan, words: Words): Part {
  const { graft, seam } = plan;
  const yarn = inSentence(plan.stripes.at(-1)?.yarn ?? '');
  const tail = words.amounts.tail(closingTailCm({ graft, seam }));
  return {
    title: words.say`Closing row`,
    steps: [
      words.say`Row ${plan.knittedRows}, in ${yarn}, is the last to be knitted; the graft is row ${plan.rows}.`,
      graft.goesOnToSeam
        ? words.say`Cut ${yarn} ${tail} long: the tail for the graft and the seam.`
        : words.say`Cut ${yarn} ${tail} long: the tail for the graft.`,
      words.say`Knit ${closingWasteRows(plan.brief)} rows of ${inSentence(plan.brief.waste.yarn)}, take the weights off, drop the work off the needles.`,
    ],
    caution: words.say`Weights off before any stitch is let go, a hand under them, feet clear.`,
  };
}

function graftPart(plan: Plan, words: Words): Part {
  const { goesOnToSeam } = plan.graft;
  const [start, end] = foldOf(plan).startsAtMouth ? ['mouth', 'bottom'] : ['bottom', 'mouth'];
  return {
    title: words.say`Graft`,
    steps: [
      words.say`Fold the waste under, so that open loops show. A is the edge with the tail, B the start; loop 1 of both is at the ${start}.`,
      words.say`A: up through 1, from behind. For 1, 2, 3 … on B, then on A: down through it, up through the next. At the ${end} B: down through ${plan.stitches}.`,
      goesOnToSeam
        ? words.say`Draw each movement to the size of a stitch, never tight. Pull the ravel cord out and unpick the waste.`
        : words.say`Draw each movement to the size of a stitch, never tight. Fasten. Pull the ravel cord out and unpick the waste.`,
    ],
    caution: null,
  };
}

function seamPart(plan: Plan, words: Words): Part {
  const { seam, graft } = plan;
  const thread = graft.goesOnToSeam
    ? words.say`The graft tail sews on`
    : words.say`Cut ${words.amounts.tail(seam.tailCm)} of yarn`;
  return {
    title: words.say`Seam`,
    steps: [
      words.say`Lay the tube flat along the trailing edge, ${seam.barsPerSide} rows facing ${seam.barsPerSide}. ${thread}.`,
      words.say`One stitch in from the edge, take one bar from the front, one from the back, in turn: ${words.count(seam.barsPerSide, 'bar')} a side.`,
      words.say`After every few bars draw the thread up until the edges meet. Fasten, and sew all ends in on the inside.`,
    ],
    caution: words.say`Steam scalds, and it flattens man-made fibre.`,
  };
}

function cordPart(plan: Plan, words: Words): Part {
  const { cord, eyelets } = plan;
  const first = eyelets.used[0] ?? 1;
  return {
    title: words.say`Cord`,
    steps: [
      words.say`E-wrap ${words.count(cord.stitches, 'needle')} with ${inSentence(cord.yarn)}, an end of ${words.amounts.length(endTailCm)} left; knit one row, hang a small weight.`,
      words.say`Set the carriage to slip one way and knit the other: ${words.count(cord.rounds, 'round')} of two passes make ${words.amounts.lengthNeeded(cord.lengthCm)}. Draw the end through the loops.`,
      eyelets.skipped.length > 1
        ? words.say`From the gap at the graft in through eyelet ${first}, out through ${eyelets.used[1] ?? first}, every second one, ${eyelets.used.length} in all. Knot both ends outside.`
        : eyelets.skipped.length === 0
          ? words.say`From the gap at the graft go in through eyelet ${first}, out through the next, and so on, ${eyelets.used.length} in all. Both ends come out on the outside: knot them.`
          : words.say`From the gap at the graft go in through eyelet ${first}, out through the next, and so on, ${eyelets.used.length} in all. Pass by ${eyelets.skipped.join(', ')}. Both ends come out on the outside: knot them.`,
    ],
    caution: words.say`Keep cords from small children. Toy rules (EN 71-1) allow the very young far shorter cords; this bag is no toy, and local rules decide.`,
  };
}
