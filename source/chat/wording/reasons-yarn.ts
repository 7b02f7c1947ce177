/** Why the plan asks for so much yarn, and what it says of the fabric. */
import { firmTightness, labelTightness, meanTex } from '../../planning/fabric.ts';
import { loopConstants, modelLoopLength } from '../../planning/gauge.ts';
import type { Plan } from '../../planning/plan.ts';
import { endTailCm } from '../../planning/tails.ts';
import { classesOfGauge, wholeStitches } from '../../planning/yarn-class.ts';
import { reserveOf, texOf, type YarnNeed } from '../../planning/yarn-needs.ts';
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
    names: () => say`reserve, 10 %, 15 %, ten percent, more yarn`,
    rule: () =>
      say`A bag that runs out of yarn in its last row is no bag. So 10 % is added before your scales are asked, or 15 % where the loop was not measured.`,
    formula: () => say`grams with reserve = 1.1 × grams with a measured loop, 1.15 × grams without`,
    here: (plan, units) =>
      `× ${formatDecimal(String(reserveOf(plan.gauge)))}: ${weighed(plan)
        .slice(0, mostShown)
        .map(
          ({ yarn, grams, withReserveGrams }) =>
            `${yarn} ${formatMassNeeded(grams ?? 0, units)} → ${formatMassNeeded(withReserveGrams ?? 0, units)}`,
        )
        .join('; ')}`,
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
      const { loopLengthMm, loopLengthMeasured } = gauge;
      const { stitchMm, rowMm } = gauge.asKnitted;
      const { ks } = loopConstants[swatch.state];
      const model = `√(${formatDecimal(String(ks))} × ${formatFine(stitchMm, units)} × ${formatFine(rowMm, units)}) = ${formatSmall(modelLoopLength(stitchMm, rowMm, swatch.state), units)}`;
      return loopLengthMeasured
        ? say`${model}; measured, and used: ${formatSmall(loopLengthMm, units)}`
        : model;
    },
    source: () =>
      say`Munden 1959, Journal of the Textile Institute 50, T448, for wool; fully-relaxed by Knapton and others 1968 (from memory)`,
  },
  {
    id: 'tightness',
    names: () => say`tightness, tightness factor, limp, jam`,
    rule: () =>
      say`Thick yarn in short loops is tight, thin yarn in long loops is loose. Too loose and the fabric is limp; too tight and the loops jam, and the carriage with them.`,
    formula: () =>
      say`tightness = √tex / loop length in mm; hand yarns ${labelTightness.least} to ${labelTightness.most}, a bag that keeps its shape ${firmTightness.least} to ${firmTightness.most}`,
    here: ({ brief, stripes, gauge, tightness }) =>
      `√${formatDecimal(meanTex(brief, stripes).toFixed(1))} / ${formatDecimal(gauge.loopLengthMm.toFixed(2))} = ${formatDecimal(tightness.toFixed(2))}`,
    source: () =>
      say`bands: rule of thumb, from usual labels; jamming: Texcoms Textile Technical Handbook 2023, p. 147`,
  },
  {
    id: 'fabric',
    names: () => say`fabric weight, square metre, weight of the fabric, heavy, fabric`,
    rule: () => say`All loops of a square metre, times the yarn in each, times what the yarn weighs.`,
    formula: () => say`grams to the square metre = loops to the square metre × loop length in m × tex / 1000`,
    here: ({ brief, stripes, gauge, fabricMassGsm }) => {
      const { stitchMm, rowMm } = gauge.asKnitted;
      const loops = Math.round(1_000_000 / (stitchMm * rowMm));
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
      say`A yarn's class is read from how many whole stitches it gives to 10 cm, which the table also calls 4 inches. The ranges leave gaps and overlap, so a yarn can lie between two.`,
    formula: () => say`stitches to 10 cm = 100 mm / stitch width, to the nearest whole stitch`,
    here: ({ gauge }) => {
      const { stitchMm } = gauge.asKnitted;
      const classes = classesOfGauge(stitchMm);
      return `100 mm / ${formatFine(stitchMm, metric)} ≈ ${wholeStitches(stitchMm)}${classes.length > 0 ? `: ${nameClasses(classes)}` : ''}`;
    },
    source: () => say`Craft Yarn Council, Standard Yarn Weight System`,
  },
];
