import { firmTightness, jamTightness, labelTightness, limpTightness } from '../../planning/fabric.ts';
import { modelLoopLength } from '../../planning/gauge.ts';
import type { Plan } from '../../planning/plan.ts';
import { classesOfGauge, classesOfPitch } from '../../planning/yarn-class.ts';
import type { Words } from '../../wording/words.ts';
import { nameClass, nameClasses } from './classes.ts';
import { formatFabricMass } from './figures.ts';
import { labelled } from './page.ts';

export function fabricLines(
  { gauge, tightness, fabricMassGsm, aim, brief }: Plan,
  words: Words,
): readonly string[] {
  const { stitchMm, rowMm } = gauge.asKnitted;
  const { stitches, rows, widthMm, heightMm, state, onPiece, stitchSize } = brief.swatch;
  const per = words.units.length === 'cm' ? { name: '10 cm', mm: 100 } : { name: '4 in', mm: 101.6 };
  const size = words.say`${words.amounts.length(widthMm / 10)} by ${words.amounts.length(heightMm / 10)}`;
  return [
    ...labelled(
      onPiece ? words.say`piece` : words.say`swatch`,
      stitchSize === null
        ? words.say`${stitches} stitches and ${rows} rows on ${size}, ${state}`
        : words.say`${stitches} stitches and ${rows} rows on ${size}, ${state}, stitch size ${stitchSize}`,
    ),
    ...labelled(
      words.say`gauge`,
      words.say`${fixed(per.mm / stitchMm, 1, words)} stitches and ${fixed(per.mm / rowMm, 1, words)} rows to ${per.name}; a stitch is ${words.amounts.small(stitchMm)} wide and ${words.amounts.small(rowMm)} high`,
    ),
    ...labelled(words.say`loop`, loopText({ gauge, brief }, words)),
    ...labelled(
      words.say`tightness`,
      words.say`${fixed(tightness, 2, words)} (root of tex / loop in mm), ${tightnessText(tightness, words)}`,
    ),
    ...labelled(
      words.say`aim`,
      words.say`before a swatch: ten stitches of this yarn should measure ${words.amounts.small(aim.tenStitchesMm)} and ten rows ${words.amounts.small(aim.tenRowsMm)} at rest, for a tightness of ${aim.tightness} (rule of thumb)`,
    ),
    ...labelled(
      words.say`weight`,
      onPiece
        ? words.say`${formatFabricMass(fabricMassGsm, words)}, as the piece measures`
        : words.say`${formatFabricMass(fabricMassGsm, words)}, as the swatch measures it`,
    ),
    ...labelled(words.say`yarn`, classText(stitchMm, brief.bed.pitchMm, words)),
  ];
}

const fixed = (value: number, decimals: number, words: Words): string =>
  words.decimalText(value.toFixed(decimals));

function loopText({ gauge, brief }: Pick<Plan, 'gauge' | 'brief'>, words: Words): string {
  const { loopLengthMm, loopLengthMeasured } = gauge;
  const { stitchMm, rowMm } = gauge.asKnitted;
  const { state } = brief.swatch;
  const model = words.amounts.small(modelLoopLength(stitchMm, rowMm, state));
  const source =
    state === 'fully-relaxed'
      ? words.say`by the gauge of ${state} plain knitting (Knapton and others 1968)`
      : words.say`by the gauge of ${state} plain knitting (Munden 1959, for wool)`;
  return loopLengthMeasured
    ? words.say`${words.amounts.small(loopLengthMm)} of yarn in a stitch, measured; ${model} ${source}`
    : words.say`${model} of yarn in a stitch, ${source}`;
}

/** Tightness factor √tex / l, and what to expect of it. */
function tightnessText(tightness: number, words: Words): string {
  const usual = words.say`hand yarns at the gauge of their labels have ${labelTightness.least} to ${labelTightness.most}, a bag that keeps its shape ${firmTightness.least} to ${firmTightness.most} (rule of thumb)`;
  if (tightness < limpTightness) return words.say`limp and see-through: ${usual}`;
  if (tightness < firmTightness.least) return words.say`soft: ${usual}`;
  if (tightness > jamTightness) return words.say`so tight that loops jam: ${usual}`;
  return tightness > firmTightness.most ? words.say`stiff: ${usual}` : words.say`firm: ${usual}`;
}

function classText(stitchMm: number, pitchMm: number, words: Words): string {
  const own = classesOfGauge(stitchMm);
  const [first, second] = own.map((one) => nameClass(one, words));
  const name = second
    ? words.say`between ${first ?? ''} and ${second}`
    : (first ?? words.say`finer than lace (0)`);
  const usual = classesOfPitch(pitchMm);
  const bed = usual.length > 0 ? nameClasses(usual, words) : words.say`yarn finer than lace (0)`;
  return words.say`${name} by its gauge (Craft Yarn Council); a pitch of ${pitchMm} mm usually knits ${bed} (rule of thumb)`;
}
