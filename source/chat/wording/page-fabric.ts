import { normalTightness, workableTightness } from '../../planning/fabric.ts';
import { modelLoopLength } from '../../planning/gauge.ts';
import type { Plan } from '../../planning/plan.ts';
import { classesOfGauge, classesOfPitch, stitchesPer4In } from '../../planning/yarn-class.ts';
import { formatFabricMass, formatLength, formatSmall, type Units } from '../../shared/units.ts';
import { nameClass, nameClasses } from './classes.ts';
import { labelled } from './page.ts';

export function fabricLines(
  { gauge, tightness, fabricMassGsm, brief }: Plan,
  units: Units,
): readonly string[] {
  const { stitchMm, rowMm } = gauge;
  const { stitches, rows, widthMm, heightMm, state } = brief.swatch;
  const per = units.length === 'cm' ? { name: '10 cm', mm: 100 } : { name: '4 in', mm: 101.6 };
  const size = `${formatLength(widthMm / 10, units)} by ${formatLength(heightMm / 10, units)}`;
  return [
    ...labelled('swatch', `${stitches} stitches and ${rows} rows on ${size}, ${state}`),
    ...labelled(
      'gauge',
      `${(per.mm / stitchMm).toFixed(1)} stitches and ${(per.mm / rowMm).toFixed(1)} rows to ${per.name}; a stitch is ${formatSmall(stitchMm, units)} wide and ${formatSmall(rowMm, units)} high`,
    ),
    ...labelled('loop', loopText({ gauge, brief }, units)),
    ...labelled(
      'tightness',
      `${tightness.toFixed(2)} (root of tex / loop in mm), ${tightnessText(tightness)}`,
    ),
    ...labelled('weight', `${formatFabricMass(fabricMassGsm, units)}, as the swatch measures it`),
    ...labelled('yarn', classText(stitchMm, brief.bed.pitchMm)),
  ];
}

function loopText({ gauge, brief }: Pick<Plan, 'gauge' | 'brief'>, units: Units): string {
  const { stitchMm, rowMm, loopLengthMm, loopLengthMeasured } = gauge;
  const { state } = brief.swatch;
  const model = formatSmall(modelLoopLength(stitchMm, rowMm, state), units);
  const source = `by the gauge of ${state} plain knitting (Munden 1959)`;
  return loopLengthMeasured
    ? `${formatSmall(loopLengthMm, units)} of yarn in a stitch, measured; ${model} ${source}`
    : `${model} of yarn in a stitch, ${source}`;
}

/** Tightness factor √tex / l, and what to expect of it. */
function tightnessText(tightness: number): string {
  const { least, most } = normalTightness;
  const usual = `the usual ${least} to ${most} (textile handbooks)`;
  if (tightness < workableTightness.least) return `far below ${usual}: limp and see-through`;
  if (tightness < least) return `below ${usual}: soft and open`;
  if (tightness > workableTightness.most) return `far above ${usual}: the bed may jam`;
  return tightness > most ? `above ${usual}: firm` : `within ${usual}`;
}

function classText(stitchMm: number, pitchMm: number): string {
  const own = classesOfGauge(stitchesPer4In(stitchMm));
  const [first, second] = own.map(nameClass);
  const name = second ? `between ${first} and ${second}` : (first ?? 'finer than lace (0)');
  const usual = classesOfPitch(pitchMm);
  const bed = usual.length > 0 ? nameClasses(usual) : 'yarn finer than lace (0)';
  return `${name} by its gauge (Craft Yarn Council); a pitch of ${pitchMm} mm usually knits ${bed} (rule of thumb)`;
}
