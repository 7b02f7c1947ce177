/** Why the bag comes out in the size it does. */

import { stepRowsOf } from '../../planning/choose-size.ts';
import { stitchDepthCm } from '../../planning/geometry.ts';
import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import type { Reason } from '../reason.ts';
import { formatFine } from './figures.ts';
import { commonPractice, planeGeometry, ruleOfThumb } from './sources.ts';

/** How far the edges crawl and how far the rows climb, once round the tube. */
const sidesOf = ({ shapings, rows, gauge }: Plan, words: Words) => ({
  across: `${shapings} × ${formatFine(gauge.stitchMm, words)}`,
  up: `${rows} × ${formatFine(gauge.rowMm, words)}`,
});

const depthOfStitch = ({ brief, rows, gauge }: Plan, words: Words): string =>
  formatFine(10 * stitchDepthCm({ rows, shapeEveryRows: brief.shapeEveryRows }, gauge), words);

export const sizeReasons: readonly Reason[] = [
  {
    id: 'width',
    names: (words: Words) => words.say`width, wide, mouth, circumference, size`,
    rule: (words: Words) =>
      words.say`Once round the tube, the edges crawl one way while the rows climb the other: the mouth is as long as the slant between. The bag lies flat, so it is half as wide.`,
    formula: (words: Words) =>
      words.say`mouth = √(a² + b² + 2·a·b·sin lean), a = moves × stitch width, b = rows round × row height; width = half of it`,
    here: (plan, words) => {
      const { across, up } = sidesOf(plan, words);
      const { skewRad } = plan.gauge;
      const lean =
        skewRad === 0 ? '' : ` + 2 × ${across} × ${up} × ${words.decimalText(Math.sin(skewRad).toFixed(4))}`;
      const learned = plan.gauge.learned
        ? ` × ${words.decimalText(plan.gauge.learned.widthFactor.toFixed(4))}`
        : '';
      return words.say`√((${across})² + (${up})²${lean})${learned} = ${words.amounts.length(plan.size.mouthCm)}; half is ${words.amounts.length(plan.size.widthCm)}`;
    },
    source: planeGeometry,
  },
  {
    id: 'depth',
    names: (words: Words) => words.say`depth, deep, height`,
    rule: (words: Words) =>
      words.say`The strip's area, spread along the mouth, gives the depth. The bottom seam is sewn one stitch in, which takes one stitch away.`,
    formula: (words: Words) =>
      words.say`depth = (stitches − 1) × stitch width × rows round × row height × cos lean / mouth`,
    here: (plan, words) =>
      words.say`each stitch is ${depthOfStitch(plan, words)} of depth: ${plan.stitches - 1} × ${depthOfStitch(plan, words)} = ${words.amounts.length(plan.size.depthCm)}`,
    source: planeGeometry,
  },
  {
    id: 'inside',
    names: (words: Words) => words.say`depth below the cord, below the cord, inside`,
    rule: (words: Words) =>
      words.say`The eyelets lie half a stitch below the edge stitches. What is above the cord does not count as room.`,
    formula: (words: Words) =>
      words.say`depth below the cord = depth − (edge stitches + ½) × depth of a stitch`,
    here: (plan, words) =>
      `${words.amounts.length(plan.size.depthCm)} − ${words.decimalText(String(plan.brief.edgeStitches + 0.5))} × ${depthOfStitch(plan, words)} = ${words.amounts.length(plan.size.depthBelowCordCm)}`,
    source: planeGeometry,
  },
  {
    id: 'angle',
    names: (words: Words) => words.say`angle, slant, degrees, bias`,
    rule: (words: Words) =>
      words.say`The stripes climb with the rows while the edges crawl sideways. More moves for the same rows make them flatter.`,
    formula: (words: Words) =>
      words.say`angle = arctan(b × cos lean / (a + b × sin lean)), from the bottom edge`,
    here: (plan, words) => {
      const { across, up } = sidesOf(plan, words);
      const { skewRad } = plan.gauge;
      const [sin, cos] = [Math.sin(skewRad), Math.cos(skewRad)].map((of) => words.decimalText(of.toFixed(4)));
      if (skewRad !== 0)
        return words.say`arctan(${up} × ${cos ?? ''} / (${across} + ${up} × ${sin ?? ''})) = ${Math.round(plan.size.stripeAngleDeg)} degrees`;
      return words.say`arctan(${up} / (${across})) = ${Math.round(plan.size.stripeAngleDeg)} degrees`;
    },
    source: planeGeometry,
  },
  {
    id: 'rows',
    names: (words: Words) => words.say`whole repeats, repeat, rows, not as wide as asked, smaller, larger`,
    rule: (words: Words) =>
      words.say`The last row meets the first at the graft. The colours meet there only after whole repeats of the stripes, so the width goes up in steps.`,
    formula: (words: Words) => words.say`rows round = a whole number of repeats, and of rows between moves`,
    here: ({ rows, brief }) => {
      const step = stepRowsOf(brief);
      return `${rows} = ${rows / step} × ${step}`;
    },
    source: commonPractice,
  },
  {
    id: 'moves',
    names: (words: Words) => words.say`shaping moves, moves, number of moves, crawl, shaping`,
    rule: (words: Words) =>
      words.say`One stitch out at one edge and one in at the other keep the count the same and slant the strip. After the last row no move is due: it is grafted.`,
    formula: (words: Words) => words.say`moves = rows round / rows between moves − 1`,
    here: ({ rows, shapings, brief }) => `${rows} / ${brief.shapeEveryRows} − 1 = ${shapings}`,
    source: planeGeometry,
  },
  {
    id: 'ease',
    names: (words: Words) => words.say`ease, room, girth, contents`,
    rule: (words: Words) =>
      words.say`The bag must go round what is put in, and close above it: from the flat bottom over half its thickness, up, and over half again. So the width is half the girth, and some more.`,
    formula: (words: Words) =>
      words.say`width = girth / 2 × (1 + ease); depth below the cord = height × (1 + ease) + thickness`,
    here: ({ brief: { bag }, size }, words) =>
      bag.by === 'contents'
        ? words.say`${words.amounts.length(bag.girthCm)} / 2 and ${bag.easePercent} %: at least ${words.amounts.length(size.wantedWidthCm ?? 0)} wide`
        : words.say`no girth was asked for`,
    source: ruleOfThumb,
  },
];
