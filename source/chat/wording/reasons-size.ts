/** Why the bag comes out in the size it does. */
import { stepRowsOf } from '../../planning/choose-size.ts';
import { stitchDepthCm } from '../../planning/geometry.ts';
import type { Plan } from '../../planning/plan.ts';
import { formatDecimal, say } from '../../shared/say.ts';
import { formatLength, type Units } from '../../shared/units.ts';
import type { Reason } from '../reason.ts';
import { formatFine } from './figures.ts';
import { commonPractice, planeGeometry, ruleOfThumb } from './sources.ts';

/** How far the edges crawl and how far the rows climb, once round the tube. */
const sidesOf = ({ shapings, rows, gauge }: Plan, units: Units) => ({
  across: `${shapings} × ${formatFine(gauge.stitchMm, units)}`,
  up: `${rows} × ${formatFine(gauge.rowMm, units)}`,
});

const depthOfStitch = ({ brief, rows, gauge }: Plan, units: Units): string =>
  formatFine(10 * stitchDepthCm({ rows, shapeEveryRows: brief.shapeEveryRows }, gauge), units);

export const sizeReasons: readonly Reason[] = [
  {
    id: 'width',
    names: () => say`width, wide, mouth, circumference, size`,
    rule: () =>
      say`Once round the tube, the edges crawl one way while the rows climb the other: the mouth is as long as the slant between. The bag lies flat, so it is half as wide.`,
    formula: () =>
      say`mouth = √(a² + b² + 2·a·b·sin lean), a = moves × stitch width, b = rows round × row height; width = half of it`,
    here: (plan, units) => {
      const { across, up } = sidesOf(plan, units);
      const { skewRad } = plan.gauge;
      const lean =
        skewRad === 0 ? '' : ` + 2 × ${across} × ${up} × ${formatDecimal(Math.sin(skewRad).toFixed(4))}`;
      const learned = plan.gauge.learned
        ? ` × ${formatDecimal(plan.gauge.learned.widthFactor.toFixed(4))}`
        : '';
      return say`√((${across})² + (${up})²${lean})${learned} = ${formatLength(plan.size.mouthCm, units)}; half is ${formatLength(plan.size.widthCm, units)}`;
    },
    source: planeGeometry,
  },
  {
    id: 'depth',
    names: () => say`depth, deep, height`,
    rule: () =>
      say`The strip's area, spread along the mouth, gives the depth. The bottom seam is sewn one stitch in, which takes one stitch away.`,
    formula: () => say`depth = (stitches − 1) × stitch width × rows round × row height × cos lean / mouth`,
    here: (plan, units) =>
      say`each stitch is ${depthOfStitch(plan, units)} of depth: ${plan.stitches - 1} × ${depthOfStitch(plan, units)} = ${formatLength(plan.size.depthCm, units)}`,
    source: planeGeometry,
  },
  {
    id: 'inside',
    names: () => say`depth below the cord, below the cord, inside`,
    rule: () =>
      say`The eyelets lie half a stitch below the edge stitches. What is above the cord does not count as room.`,
    formula: () => say`depth below the cord = depth − (edge stitches + ½) × depth of a stitch`,
    here: (plan, units) =>
      `${formatLength(plan.size.depthCm, units)} − ${formatDecimal(String(plan.brief.edgeStitches + 0.5))} × ${depthOfStitch(plan, units)} = ${formatLength(plan.size.depthBelowCordCm, units)}`,
    source: planeGeometry,
  },
  {
    id: 'angle',
    names: () => say`angle, slant, degrees, bias`,
    rule: () =>
      say`The stripes climb with the rows while the edges crawl sideways. More moves for the same rows make them flatter.`,
    formula: () => say`angle = arctan(b × cos lean / (a + b × sin lean)), from the bottom edge`,
    here: (plan, units) => {
      const { across, up } = sidesOf(plan, units);
      const { skewRad } = plan.gauge;
      const [sin, cos] = [Math.sin(skewRad), Math.cos(skewRad)].map((of) => formatDecimal(of.toFixed(4)));
      if (skewRad !== 0)
        return say`arctan(${up} × ${cos ?? ''} / (${across} + ${up} × ${sin ?? ''})) = ${Math.round(plan.size.stripeAngleDeg)} degrees`;
      return say`arctan(${up} / (${across})) = ${Math.round(plan.size.stripeAngleDeg)} degrees`;
    },
    source: planeGeometry,
  },
  {
    id: 'rows',
    names: () => say`whole repeats, repeat, rows, not as wide as asked, smaller, larger`,
    rule: () =>
      say`The last row meets the first at the graft. The colours meet there only after whole repeats of the stripes, so the width goes up in steps.`,
    formula: () => say`rows round = a whole number of repeats, and of rows between moves`,
    here: ({ rows, brief }) => {
      const step = stepRowsOf(brief);
      return `${rows} = ${rows / step} × ${step}`;
    },
    source: commonPractice,
  },
  {
    id: 'moves',
    names: () => say`shaping moves, moves, number of moves, crawl, shaping`,
    rule: () =>
      say`One stitch out at one edge and one in at the other keep the count the same and slant the strip. After the last row no move is due: it is grafted.`,
    formula: () => say`moves = rows round / rows between moves − 1`,
    here: ({ rows, shapings, brief }) => `${rows} / ${brief.shapeEveryRows} − 1 = ${shapings}`,
    source: planeGeometry,
  },
  {
    id: 'ease',
    names: () => say`ease, room, girth, contents`,
    rule: () =>
      say`The bag must go round what is put in, and close above it: from the flat bottom over half its thickness, up, and over half again. So the width is half the girth, and some more.`,
    formula: () =>
      say`width = girth / 2 × (1 + ease); depth below the cord = height × (1 + ease) + thickness`,
    here: ({ brief: { bag }, size }, units) =>
      bag.by === 'contents'
        ? say`${formatLength(bag.girthCm, units)} / 2 and ${bag.easePercent} %: at least ${formatLength(size.wantedWidthCm ?? 0, units)} wide`
        : say`no girth was asked for`,
    source: ruleOfThumb,
  },
];
