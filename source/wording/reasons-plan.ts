/** Why the bag comes out in the size it does, why the plan asks for so much yarn, and what it says of the fabric. */
import { rowMultipleOf } from '../planning/choose-size.ts';
import { meanTex } from '../planning/fabric.ts';
import { classesOfGauge, loopConstants, modelLoopLength, wholeStitches } from '../planning/gauge.ts';
import { stitchDepthCm } from '../planning/geometry.ts';
import type { Plan } from '../planning/plan.ts';
import { reserveOf, texOf, type YarnNeed } from '../planning/yarn-needs.ts';
import { metric } from '../shared/units.ts';
import { formatFabricMass, formatFine, nameClasses, type Reason } from './reason.ts';
import type { Words } from './words.ts';

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
    here: (plan, words) => {
      const { across, up } = sidesOf(plan, words);
      const { skewRad } = plan.gauge;
      const lean =
        skewRad === 0 ? '' : ` + 2 × ${across} × ${up} × ${words.amounts.fixed(Math.sin(skewRad), 4)}`;
      const learned = plan.gauge.learned
        ? ` × ${words.amounts.fixed(plan.gauge.learned.widthFactor, 4)}`
        : '';
      return words.reasons.width.here(across, up, lean, learned, plan.size.mouthCm, plan.size.widthCm);
    },
    source: 'planeGeometry',
  },
  {
    id: 'depth',
    here: (plan, words) =>
      words.reasons.depth.here(
        depthOfStitch(plan, words),
        plan.stitches - 1,
        plan.hem?.heightCm ?? 0,
        plan.size.depthCm,
      ),
    source: 'planeGeometry',
  },
  {
    id: 'inside',
    here: (plan, words) =>
      `${words.amounts.length(plan.size.depthCm - (plan.hem?.heightCm ?? 0))} − ${words.amounts.decimal(plan.brief.edgeStitches + 0.5, 6)} × ${depthOfStitch(plan, words)} = ${words.amounts.length(plan.size.depthBelowCordCm)}`,
    source: 'planeGeometry',
  },
  {
    id: 'angle',
    here: (plan, words) => {
      const { across, up } = sidesOf(plan, words);
      const { skewRad } = plan.gauge;
      const [sin, cos] = [Math.sin(skewRad), Math.cos(skewRad)].map((of) => words.amounts.fixed(of, 4));
      if (skewRad !== 0)
        return words.reasons.angle.withLean(
          up,
          cos ?? '',
          across,
          sin ?? '',
          Math.round(plan.size.stripeAngleDeg),
        );
      return words.reasons.angle.here(up, across, Math.round(plan.size.stripeAngleDeg));
    },
    source: 'planeGeometry',
  },
  {
    id: 'rows',
    here: ({ rows, brief }) => {
      const multiple = rowMultipleOf(brief);
      return `${rows} = ${rows / multiple} × ${multiple}`;
    },
  },
  {
    id: 'moves',
    here: ({ rows, shapings, brief }) => `${rows} / ${brief.shapeEveryRows} − 1 = ${shapings}`,
    source: 'planeGeometry',
  },
  {
    id: 'ease',
    here: ({ brief: { bag }, size }, words) =>
      bag.by === 'contents'
        ? words.reasons.ease.here(bag.girthCm, bag.easePercent, size.wantedWidthCm ?? 0)
        : words.reasons.ease.notAsked,
    source: 'ruleOfThumb',
  },
];

/** More yarns than these stand on the plan page. */
const mostShown = 3;

const weighed = ({ yarn }: Plan): readonly YarnNeed[] => yarn.filter(({ grams }) => grams !== null);

function yarnSum({ brief }: Plan, { yarn, metres, grams }: YarnNeed, words: Words): string {
  const tex = Math.round(texOf(brief.yarns.get(yarn)?.metresPer100g ?? 1));
  return `${yarn} ${words.amounts.yarnNeeded(metres)}, ${tex} tex: ${words.amounts.massNeeded(grams ?? 0)}`;
}

export const yarnReasons: readonly Reason[] = [
  {
    id: 'yarn',
    here: (plan, words) => {
      const all = weighed(plan);
      const shown = all.slice(0, mostShown).map((need) => yarnSum(plan, need, words));
      return `${shown.join('; ')}${all.length > mostShown ? ' …' : ''}`;
    },
  },
  {
    id: 'reserve',
    here: (plan, words) =>
      `× ${words.amounts.decimal(reserveOf(plan.gauge), 6)}: ${weighed(plan)
        .slice(0, mostShown)
        .map(
          ({ yarn, grams, withReserveGrams }) =>
            `${yarn} ${words.amounts.massNeeded(grams ?? 0)} → ${words.amounts.massNeeded(withReserveGrams ?? 0)}`,
        )
        .join('; ')}`,
    source: 'ruleOfThumb',
  },
  {
    id: 'loop-length',
    here: ({ gauge, brief: { swatch } }, words) => {
      const { loopLengthMm, loopLengthMeasured } = gauge;
      const { stitchMm, rowMm } = gauge.asKnitted;
      const { ks } = loopConstants[swatch.state];
      const model = `√(${words.amounts.decimal(ks, 6)} × ${formatFine(stitchMm, words)} × ${formatFine(rowMm, words)}) = ${words.amounts.small(modelLoopLength(stitchMm, rowMm, swatch.state))}`;
      return loopLengthMeasured ? words.reasons['loop-length'].here(model, loopLengthMm) : model;
    },
  },
  {
    id: 'tightness',
    here: ({ brief, stripes, gauge, tightness }, words) =>
      `√${words.amounts.fixed(meanTex(brief, stripes), 1)} / ${words.amounts.fixed(gauge.loopLengthMm, 2)} = ${words.amounts.fixed(tightness, 2)}`,
  },
  {
    id: 'fabric',
    here: ({ brief, stripes, gauge, fabricGramsPerM2 }, words) => {
      const { stitchMm, rowMm } = gauge.asKnitted;
      const loops = Math.round(1_000_000 / (stitchMm * rowMm));
      const metres = words.amounts.fixed(gauge.loopLengthMm / 1000, 4);
      const tex = words.amounts.fixed(meanTex(brief, stripes), 1);
      return `${loops} × ${metres} m × ${tex} / 1000 = ${formatFabricMass(fabricGramsPerM2, words.inUnits(metric))}`;
    },
  },
  {
    id: 'class',
    here: ({ gauge }, words) => {
      const { stitchMm } = gauge.asKnitted;
      const classes = classesOfGauge(stitchMm);
      return `100 mm / ${formatFine(stitchMm, words)} ≈ ${wholeStitches(stitchMm)}${classes.length > 0 ? `: ${nameClasses(classes, words)}` : ''}`;
    },
  },
];
