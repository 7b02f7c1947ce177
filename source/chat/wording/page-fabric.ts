import { firmTightness, jamTightness, labelTightness, limpTightness } from '../../planning/fabric.ts';
import { modelLoopLength } from '../../planning/gauge.ts';
import type { Plan } from '../../planning/plan.ts';
import { classesOfGauge, classesOfPitch } from '../../planning/yarn-class.ts';
import { formatDecimal, say } from '../../shared/say.ts';
import { formatFabricMass, formatLength, formatSmall, type Units } from '../../shared/units.ts';
import { nameClass, nameClasses } from './classes.ts';
import { labelled } from './page.ts';

export function fabricLines(
  { gauge, tightness, fabricMassGsm, aim, brief }: Plan,
  units: Units,
): readonly string[] {
  const { stitchMm, rowMm } = gauge.asKnitted;
  const { stitches, rows, widthMm, heightMm, state, onPiece, stitchSize } = brief.swatch;
  const per = units.length === 'cm' ? { name: '10 cm', mm: 100 } : { name: '4 in', mm: 101.6 };
  const size = say`${formatLength(widthMm / 10, units)} by ${formatLength(heightMm / 10, units)}`;
  return [
    ...labelled(
      onPiece ? say`piece` : say`swatch`,
      stitchSize === null
        ? say`${stitches} stitches and ${rows} rows on ${size}, ${state}`
        : say`${stitches} stitches and ${rows} rows on ${size}, ${state}, stitch size ${stitchSize}`,
    ),
    ...labelled(
      say`gauge`,
      say`${fixed(per.mm / stitchMm, 1)} stitches and ${fixed(per.mm / rowMm, 1)} rows to ${per.name}; a stitch is ${formatSmall(stitchMm, units)} wide and ${formatSmall(rowMm, units)} high`,
    ),
    ...labelled(say`loop`, loopText({ gauge, brief }, units)),
    ...labelled(
      say`tightness`,
      say`${fixed(tightness, 2)} (root of tex / loop in mm), ${tightnessText(tightness)}`,
    ),
    ...labelled(
      say`aim`,
      say`before a swatch: ten stitches of this yarn should measure ${formatSmall(aim.tenStitchesMm, units)} and ten rows ${formatSmall(aim.tenRowsMm, units)} at rest, for a tightness of ${aim.tightness} (rule of thumb)`,
    ),
    ...labelled(
      say`weight`,
      onPiece
        ? say`${formatFabricMass(fabricMassGsm, units)}, as the piece measures`
        : say`${formatFabricMass(fabricMassGsm, units)}, as the swatch measures it`,
    ),
    ...labelled(say`yarn`, classText(stitchMm, brief.bed.pitchMm)),
  ];
}

const fixed = (value: number, decimals: number): string => formatDecimal(value.toFixed(decimals));

function loopText({ gauge, brief }: Pick<Plan, 'gauge' | 'brief'>, units: Units): string {
  const { loopLengthMm, loopLengthMeasured } = gauge;
  const { stitchMm, rowMm } = gauge.asKnitted;
  const { state } = brief.swatch;
  const model = formatSmall(modelLoopLength(stitchMm, rowMm, state), units);
  const source =
    state === 'fully-relaxed'
      ? say`by the gauge of ${state} plain knitting (Knapton and others)`
      : say`by the gauge of ${state} plain knitting (Munden 1959)`;
  return loopLengthMeasured
    ? say`${formatSmall(loopLengthMm, units)} of yarn in a stitch, measured; ${model} ${source}`
    : say`${model} of yarn in a stitch, ${source}`;
}

/** Tightness factor √tex / l, and what to expect of it. */
function tightnessText(tightness: number): string {
  const usual = say`hand yarns at the gauge of their labels have ${labelTightness.least} to ${labelTightness.most}, a bag that keeps its shape ${firmTightness.least} to ${firmTightness.most} (rule of thumb)`;
  if (tightness < limpTightness) return say`limp and see-through: ${usual}`;
  if (tightness < firmTightness.least) return say`soft: ${usual}`;
  if (tightness > jamTightness) return say`so tight that loops jam: ${usual}`;
  return tightness > firmTightness.most ? say`stiff: ${usual}` : say`firm: ${usual}`;
}

function classText(stitchMm: number, pitchMm: number): string {
  const own = classesOfGauge(stitchMm);
  const [first, second] = own.map(nameClass);
  const name = second ? say`between ${first ?? ''} and ${second}` : (first ?? say`finer than lace (0)`);
  const usual = classesOfPitch(pitchMm);
  const bed = usual.length > 0 ? nameClasses(usual) : say`yarn finer than lace (0)`;
  return say`${name} by its gauge (Craft Yarn Council); a pitch of ${pitchMm} mm usually knits ${bed} (rule of thumb)`;
}
