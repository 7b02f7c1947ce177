/** Why the plan asks for so much yarn, and what it says of the fabric. */

import { firmTightness, labelTightness, meanTex } from '../../planning/fabric.ts';
import { loopConstants, modelLoopLength } from '../../planning/gauge.ts';
import type { Plan } from '../../planning/plan.ts';
import { endTailCm } from '../../planning/tails.ts';
import { classesOfGauge, wholeStitches } from '../../planning/yarn-class.ts';
import { reserveOf, texOf, type YarnNeed } from '../../planning/yarn-needs.ts';
import { metric } from '../../shared/units.ts';
import type { Words } from '../../wording/words.ts';
import type { Reason } from '../reason.ts';
import { nameClasses } from './classes.ts';
import { formatFabricMass, formatFine } from './figures.ts';
import { ruleOfThumb } from './sources.ts';

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
    names: (words: Words) => words.say`yarn, how much yarn, grams, metres, weight of the yarn, tex`,
    rule: (words: Words) =>
      words.say`Each yarn: its stitches times the loop length, its strand up past other stripes, ${endTailCm} cm at each end, and the graft, the seam and the cord where it makes them.`,
    formula: (words: Words) => words.say`grams = metres × tex / 1000; tex = 100 000 / (metres to 100 g)`,
    here: (plan, words) => {
      const all = weighed(plan);
      const shown = all.slice(0, mostShown).map((need) => yarnSum(plan, need, words));
      return `${shown.join('; ')}${all.length > mostShown ? ' …' : ''}`;
    },
    source: (words: Words) => words.say`the definition of tex; tails are common practice`,
  },
  {
    id: 'reserve',
    names: (words: Words) => words.say`reserve, 10 %, 15 %, ten percent, more yarn`,
    rule: (words: Words) =>
      words.say`A bag that runs out of yarn in its last row is no bag. So 10 % is added before your scales are asked, or 15 % where the loop was not measured.`,
    formula: (words: Words) =>
      words.say`grams with reserve = 1.1 × grams with a measured loop, 1.15 × grams without`,
    here: (plan, words) =>
      `× ${words.decimalText(String(reserveOf(plan.gauge)))}: ${weighed(plan)
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
    names: (words: Words) => words.say`loop length, yarn in a stitch, loop, ks, constants, relaxed`,
    rule: (words: Words) =>
      words.say`In plain knitting the size of a stitch follows from the yarn in it, by how it has rested. A measured loop counts more than the model: unravel one swatch row and divide by its stitches.`,
    formula: (words: Words) => {
      const [dry = '', wet = '', full = ''] = Object.values(loopConstants).map(({ ks }) =>
        words.decimalText(ks.toFixed(1)),
      );
      return words.say`loop = √(ks × stitch width × row height); ks ${dry} dry-relaxed, ${wet} wet-relaxed, ${full} fully-relaxed`;
    },
    here: ({ gauge, brief: { swatch } }, words) => {
      const { loopLengthMm, loopLengthMeasured } = gauge;
      const { stitchMm, rowMm } = gauge.asKnitted;
      const { ks } = loopConstants[swatch.state];
      const model = `√(${words.decimalText(String(ks))} × ${formatFine(stitchMm, words)} × ${formatFine(rowMm, words)}) = ${words.amounts.small(modelLoopLength(stitchMm, rowMm, swatch.state))}`;
      return loopLengthMeasured
        ? words.say`${model}; measured, and used: ${words.amounts.small(loopLengthMm)}`
        : model;
    },
    source: (words: Words) =>
      words.say`Munden 1959, Journal of the Textile Institute 50, T448, for wool; fully-relaxed by Knapton and others 1968 (from memory)`,
  },
  {
    id: 'tightness',
    names: (words: Words) => words.say`tightness, tightness factor, limp, jam`,
    rule: (words: Words) =>
      words.say`Thick yarn in short loops is tight, thin yarn in long loops is loose. Too loose and the fabric is limp; too tight and the loops jam, and the carriage with them.`,
    formula: (words: Words) =>
      words.say`tightness = √tex / loop length in mm; hand yarns ${labelTightness.least} to ${labelTightness.most}, a bag that keeps its shape ${firmTightness.least} to ${firmTightness.most}`,
    here: ({ brief, stripes, gauge, tightness }, words: Words) =>
      `√${words.decimalText(meanTex(brief, stripes).toFixed(1))} / ${words.decimalText(gauge.loopLengthMm.toFixed(2))} = ${words.decimalText(tightness.toFixed(2))}`,
    source: (words: Words) =>
      words.say`bands: rule of thumb, from usual labels; jamming: Texcoms Textile Technical Handbook 2023, p. 147`,
  },
  {
    id: 'fabric',
    names: (words: Words) => words.say`fabric weight, square metre, weight of the fabric, heavy, fabric`,
    rule: (words: Words) =>
      words.say`All loops of a square metre, times the yarn in each, times what the yarn weighs.`,
    formula: (words: Words) =>
      words.say`grams to the square metre = loops to the square metre × loop length in m × tex / 1000`,
    here: ({ brief, stripes, gauge, fabricMassGsm }, words: Words) => {
      const { stitchMm, rowMm } = gauge.asKnitted;
      const loops = Math.round(1_000_000 / (stitchMm * rowMm));
      const metres = words.decimalText((gauge.loopLengthMm / 1000).toFixed(4));
      const tex = words.decimalText(meanTex(brief, stripes).toFixed(1));
      return `${loops} × ${metres} m × ${tex} / 1000 = ${formatFabricMass(fabricMassGsm, words.inUnits(metric))}`;
    },
    source: (words: Words) => words.say`Texcoms Textile Technical Handbook 2023, p. 147`,
  },
  {
    id: 'class',
    names: (words: Words) => words.say`yarn class, class, weight class, light, medium, bulky`,
    rule: (words: Words) =>
      words.say`A yarn's class is read from how many whole stitches it gives to 10 cm, which the table also calls 4 inches. The ranges leave gaps and overlap, so a yarn can lie between two.`,
    formula: (words: Words) =>
      words.say`stitches to 10 cm = 100 mm / stitch width, to the nearest whole stitch`,
    here: ({ gauge }, words: Words) => {
      const { stitchMm } = gauge.asKnitted;
      const classes = classesOfGauge(stitchMm);
      return `100 mm / ${formatFine(stitchMm, words)} ≈ ${wholeStitches(stitchMm)}${classes.length > 0 ? `: ${nameClasses(classes, words)}` : ''}`;
    },
    source: (words: Words) => words.say`Craft Yarn Council, Standard Yarn Weight System`,
  },
];
