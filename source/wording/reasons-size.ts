/** Why the bag comes out in the size it does. */
import { rowMultipleOf } from '../planning/choose-size.ts';
import { stitchDepthCm } from '../planning/geometry.ts';
import type { Plan } from '../planning/plan.ts';
import { commonPractice, formatFine, planeGeometry, type Reason, ruleOfThumb } from './reason.ts';
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
    names: (words: Words) => words.reasons.width.names,
    rule: (words: Words) => words.reasons.width.rule,
    formula: (words: Words) => words.reasons.width.formula,
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
    source: planeGeometry,
  },
  {
    id: 'depth',
    names: (words: Words) => words.reasons.depth.names,
    rule: (words: Words) => words.reasons.depth.rule,
    formula: (words: Words) => words.reasons.depth.formula,
    here: (plan, words) =>
      words.reasons.depth.here(
        depthOfStitch(plan, words),
        plan.stitches - 1,
        plan.hem?.heightCm ?? 0,
        plan.size.depthCm,
      ),
    source: planeGeometry,
  },
  {
    id: 'inside',
    names: (words: Words) => words.reasons.inside.names,
    rule: (words: Words) => words.reasons.inside.rule,
    formula: (words: Words) => words.reasons.inside.formula,
    here: (plan, words) =>
      `${words.amounts.length(plan.size.depthCm - (plan.hem?.heightCm ?? 0))} − ${words.amounts.decimal(plan.brief.edgeStitches + 0.5, 6)} × ${depthOfStitch(plan, words)} = ${words.amounts.length(plan.size.depthBelowCordCm)}`,
    source: planeGeometry,
  },
  {
    id: 'angle',
    names: (words: Words) => words.reasons.angle.names,
    rule: (words: Words) => words.reasons.angle.rule,
    formula: (words: Words) => words.reasons.angle.formula,
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
    source: planeGeometry,
  },
  {
    id: 'rows',
    names: (words: Words) => words.reasons.rows.names,
    rule: (words: Words) => words.reasons.rows.rule,
    formula: (words: Words) => words.reasons.rows.formula,
    here: ({ rows, brief }) => {
      const multiple = rowMultipleOf(brief);
      return `${rows} = ${rows / multiple} × ${multiple}`;
    },
    source: commonPractice,
  },
  {
    id: 'moves',
    names: (words: Words) => words.reasons.moves.names,
    rule: (words: Words) => words.reasons.moves.rule,
    formula: (words: Words) => words.reasons.moves.formula,
    here: ({ rows, shapings, brief }) => `${rows} / ${brief.shapeEveryRows} − 1 = ${shapings}`,
    source: planeGeometry,
  },
  {
    id: 'ease',
    names: (words: Words) => words.reasons.ease.names,
    rule: (words: Words) => words.reasons.ease.rule,
    formula: (words: Words) => words.reasons.ease.formula,
    here: ({ brief: { bag }, size }, words) =>
      bag.by === 'contents'
        ? words.reasons.ease.here(bag.girthCm, bag.easePercent, size.wantedWidthCm ?? 0)
        : words.reasons.ease.notAsked,
    source: ruleOfThumb,
  },
];
