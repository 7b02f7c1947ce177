/** Why the plan asks for so much yarn, and what it says of the fabric. */
import { meanTex, normalTightness } from '../../planning/fabric.ts';
import { loopConstants, modelLoopLength } from '../../planning/gauge.ts';
import type { Plan } from '../../planning/plan.ts';
import { endTailCm } from '../../planning/tails.ts';
import { classesOfGauge, stitchesPer4In } from '../../planning/yarn-class.ts';
import { texOf, type YarnNeed } from '../../planning/yarn-needs.ts';
import { formatDecimal, say } from '../../shared/say.ts';
import {
  formatFabricMass,
  formatMassNeeded,
  formatSmall,
  formatYarnNeeded,
  metric,
  type Units,
} from '../../shared/units.ts';
import type { Reason } from '../reason.ts';
import { nameClasses } from './classes.ts';
import { formatFine } from './figures.ts';
import { ruleOfThumb } from './sources.ts';

/** More yarns than these stand on the plan page. */
const mostShown = 3;

const weighed = ({ yarn }: Plan): readonly YarnNeed[] => yarn.filter(({ grams }) => grams !== null);

function yarnSum({ brief }: Plan, { yarn, metres, grams }: YarnNeed, units: Units): string {
  const tex = Math.round(texOf(brief.yarns.get(yarn)?.metresPer100g ?? 1));
  return `${yarn} ${formatYarnNeeded(metres, units)}, ${tex} tex: ${formatMassNeeded(grams ?? 0, units)}`;
}

export const yarnReasons: readonly Reason[] = [
  {
    id: 'yarn',
    names: () => say`yarn, how much yarn, grams, metres, weight of the yarn, tex`,
    rule: () =>
      say`Each yarn: its stitches times the loop length, its strand up past other stripes, ${endTailCm} cm at each end, and the graft, the seam and the cord where it makes them.`,
    formula: () => say`grams = metres × tex / 1000; tex = 100 000 / (metres to 100 g)`,
    here: (plan, units) => {
      const all = weighed(plan);
      const shown = all.slice(0, mostShown).map((need) => yarnSum(plan, need, units));
      return `${shown.join('; ')}${all.length > mostShown ? ' …' : ''}`;
    },
    source: () => say`the definition of tex; tails are common practice`,
  },
  {
    id: 'reserve',
    names: () => say`reserve, 10 %, ten percent, more yarn`,
    rule: () =>
      say`A bag that runs out of yarn in its last row is no bag. So 10 % is added before your scales are asked.`,
    formula: () => say`grams with reserve = 1.1 × grams`,
    here: (plan, units) =>
      weighed(plan)
        .slice(0, mostShown)
        .map(
          ({ yarn, grams, withReserveGrams }) =>
            `${yarn} ${formatMassNeeded(grams ?? 0, units)} → ${formatMassNeeded(withReserveGrams ?? 0, units)}`,
        )
        .join('; '),
    source: ruleOfThumb,
  },
  {
    id: 'loop-length',
    names: () => say`loop length, yarn in a stitch, loop, ks, constants, relaxed`,
    rule: () =>
      say`In plain knitting the size of a stitch follows from the yarn in it, by how it has rested. A measured loop counts more than the model: unravel one swatch row and divide by its stitches.`,
    formula: () => {
      const [dry = '', wet = '', full = ''] = Object.values(loopConstants).map(({ ks }) =>
        formatDecimal(ks.toFixed(1)),
      );
      return say`loop = √(ks × stitch width × row height); ks ${dry} dry-relaxed, ${wet} wet-relaxed, ${full} fully-relaxed`;
    },
    here: ({ gauge, brief: { swatch } }, units) => {
      const { stitchMm, rowMm, loopLengthMm, loopLengthMeasured } = gauge;
      const { ks } = loopConstants[swatch.state];
      const model = `√(${formatDecimal(String(ks))} × ${formatFine(stitchMm, units)} × ${formatFine(rowMm, units)}) = ${formatSmall(modelLoopLength(stitchMm, rowMm, swatch.state), units)}`;
      return loopLengthMeasured
        ? say`${model}; measured, and used: ${formatSmall(loopLengthMm, units)}`
        : model;
    },
    source: () =>
      say`Munden 1959, Journal of the Textile Institute 50, T448; fully-relaxed by Knapton and others`,
  },
  {
    id: 'tightness',
    names: () => say`tightness, tightness factor, limp, jam`,
    rule: () =>
      say`Thick yarn in short loops is tight, thin yarn in long loops is loose. Far below the usual the fabric is limp; far above, the bed jams.`,
    formula: () =>
      say`tightness = √tex / loop length in mm; usual ${normalTightness.least} to ${normalTightness.most}`,
    here: ({ brief, stripes, gauge, tightness }) =>
      `√${formatDecimal(meanTex(brief, stripes).toFixed(1))} / ${formatDecimal(gauge.loopLengthMm.toFixed(2))} = ${formatDecimal(tightness.toFixed(2))}`,
    source: () => say`textile handbooks`,
  },
  {
    id: 'fabric',
    names: () => say`fabric weight, square metre, weight of the fabric, heavy, fabric`,
    rule: () => say`All loops of a square metre, times the yarn in each, times what the yarn weighs.`,
    formula: () => say`grams to the square metre = loops to the square metre × loop length in m × tex / 1000`,
    here: ({ brief, stripes, gauge, fabricMassGsm }) => {
      const loops = Math.round(1_000_000 / (gauge.stitchMm * gauge.rowMm));
      const metres = formatDecimal((gauge.loopLengthMm / 1000).toFixed(4));
      const tex = formatDecimal(meanTex(brief, stripes).toFixed(1));
      return `${loops} × ${metres} m × ${tex} / 1000 = ${formatFabricMass(fabricMassGsm, metric)}`;
    },
    source: () => say`Texcoms Textile Technical Handbook 2023, p. 147`,
  },
  {
    id: 'class',
    names: () => say`yarn class, class, weight class, light, medium, bulky`,
    rule: () =>
      say`A yarn's class is read from how many stitches it gives to 4 inches. The ranges leave gaps and overlap, so a yarn can lie between two.`,
    formula: () => say`stitches to 4 inches = 101.6 mm / stitch width`,
    here: ({ gauge: { stitchMm } }) => {
      const perFour = stitchesPer4In(stitchMm);
      const classes = classesOfGauge(perFour);
      return `${formatDecimal('101.6')} mm / ${formatFine(stitchMm, metric)} = ${formatDecimal(perFour.toFixed(1))}${classes.length > 0 ? `: ${nameClasses(classes)}` : ''}`;
    },
    source: () => say`Craft Yarn Council, Standard Yarn Weight System`,
  },
];
