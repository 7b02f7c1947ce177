/** Why the plan asks for so much yarn, and what it says of the fabric. */
import { firmTightness, labelTightness, meanTex } from '../planning/fabric.ts';
import { classesOfGauge, loopConstants, modelLoopLength, wholeStitches } from '../planning/gauge.ts';
import type { Plan } from '../planning/plan.ts';
import { endTailCm } from '../planning/tails.ts';
import { reserveOf, texOf, type YarnNeed } from '../planning/yarn-needs.ts';
import { metric } from '../shared/units.ts';
import { formatFabricMass, formatFine, nameClasses, type Reason, ruleOfThumb } from './reason.ts';
import type { Words } from './words.ts';

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
    names: (words: Words) => words.reasons.yarn.names,
    rule: (words: Words) => words.reasons.yarn.rule(endTailCm),
    formula: (words: Words) => words.reasons.yarn.formula,
    here: (plan, words) => {
      const all = weighed(plan);
      const shown = all.slice(0, mostShown).map((need) => yarnSum(plan, need, words));
      return `${shown.join('; ')}${all.length > mostShown ? ' …' : ''}`;
    },
    source: (words: Words) => words.reasons.yarn.source,
  },
  {
    id: 'reserve',
    names: (words: Words) => words.reasons.reserve.names,
    rule: (words: Words) => words.reasons.reserve.rule,
    formula: (words: Words) => words.reasons.reserve.formula,
    here: (plan, words) =>
      `× ${words.amounts.decimal(reserveOf(plan.gauge), 6)}: ${weighed(plan)
        .slice(0, mostShown)
        .map(
          ({ yarn, grams, withReserveGrams }) =>
            `${yarn} ${words.amounts.massNeeded(grams ?? 0)} → ${words.amounts.massNeeded(withReserveGrams ?? 0)}`,
        )
        .join('; ')}`,
    source: ruleOfThumb,
  },
  {
    id: 'loop-length',
    names: (words: Words) => words.reasons['loop-length'].names,
    rule: (words: Words) => words.reasons['loop-length'].rule,
    formula: (words: Words) => {
      const [dry = '', wet = '', full = ''] = Object.values(loopConstants).map(({ ks }) =>
        words.amounts.fixed(ks, 1),
      );
      return words.reasons['loop-length'].formula(dry, wet, full);
    },
    here: ({ gauge, brief: { swatch } }, words) => {
      const { loopLengthMm, loopLengthMeasured } = gauge;
      const { stitchMm, rowMm } = gauge.asKnitted;
      const { ks } = loopConstants[swatch.state];
      const model = `√(${words.amounts.decimal(ks, 6)} × ${formatFine(stitchMm, words)} × ${formatFine(rowMm, words)}) = ${words.amounts.small(modelLoopLength(stitchMm, rowMm, swatch.state))}`;
      return loopLengthMeasured ? words.reasons['loop-length'].here(model, loopLengthMm) : model;
    },
    source: (words: Words) => words.reasons['loop-length'].source,
  },
  {
    id: 'tightness',
    names: (words: Words) => words.reasons.tightness.names,
    rule: (words: Words) => words.reasons.tightness.rule,
    formula: (words: Words) =>
      words.reasons.tightness.formula(
        labelTightness.least,
        labelTightness.most,
        firmTightness.least,
        firmTightness.most,
      ),
    here: ({ brief, stripes, gauge, tightness }, words: Words) =>
      `√${words.amounts.fixed(meanTex(brief, stripes), 1)} / ${words.amounts.fixed(gauge.loopLengthMm, 2)} = ${words.amounts.fixed(tightness, 2)}`,
    source: (words: Words) => words.reasons.tightness.source,
  },
  {
    id: 'fabric',
    names: (words: Words) => words.reasons.fabric.names,
    rule: (words: Words) => words.reasons.fabric.rule,
    formula: (words: Words) => words.reasons.fabric.formula,
    here: ({ brief, stripes, gauge, fabricGramsPerM2 }, words: Words) => {
      const { stitchMm, rowMm } = gauge.asKnitted;
      const loops = Math.round(1_000_000 / (stitchMm * rowMm));
      const metres = words.amounts.fixed(gauge.loopLengthMm / 1000, 4);
      const tex = words.amounts.fixed(meanTex(brief, stripes), 1);
      return `${loops} × ${metres} m × ${tex} / 1000 = ${formatFabricMass(fabricGramsPerM2, words.inUnits(metric))}`;
    },
    source: (words: Words) => words.reasons.fabric.source,
  },
  {
    id: 'class',
    names: (words: Words) => words.reasons.class.names,
    rule: (words: Words) => words.reasons.class.rule,
    formula: (words: Words) => words.reasons.class.here,
    here: ({ gauge }, words: Words) => {
      const { stitchMm } = gauge.asKnitted;
      const classes = classesOfGauge(stitchMm);
      return `100 mm / ${formatFine(stitchMm, words)} ≈ ${wholeStitches(stitchMm)}${classes.length > 0 ? `: ${nameClasses(classes, words)}` : ''}`;
    },
    source: (words: Words) => words.reasons.class.source,
  },
];
