/** The plan in a few lines, before the bag is begun. */
import type { Plan } from '../../planning/plan.ts';
import { usualMetresPer100g } from '../../planning/usual-swatch.ts';
import type { YarnNeed } from '../../planning/yarn-needs.ts';
import { count, formatList, say } from '../../shared/say.ts';
import {
  formatLength,
  formatMass,
  formatMassNeeded,
  formatYarnNeeded,
  type Units,
} from '../../shared/units.ts';
import type { Values } from '../first-run/answers.ts';
import { answer, type Line } from '../line.ts';
import { showSize } from './first-run.ts';
import { formatWarning } from './warnings.ts';

const caution = (text: string): Line => ({ tone: 'caution', text });

export function sayShortPlan(plan: Plan, values: Values, units: Units): readonly Line[] {
  const { stitches, rows, shapings, needlesUsed, brief } = plan;
  return [
    ...answer(
      sizeLine(plan, values, units),
      say`To knit: ${count(stitches, 'stitch', 'stitches')}, ${count(rows, 'row')} round and ${count(shapings, 'shaping move')}. They take ${needlesUsed} needles; the bed has ${brief.bed.needles}.`,
      yarnLine(plan, units),
      say`Have ready too: some waste yarn of another colour, and a smooth strand as ravel cord.`,
    ),
    ...guesses(values, units).map(caution),
    ...plan.warnings.map((warning) => caution(formatWarning(warning, units))),
    ...answer(
      say`Cord, waste yarn, edges and crawl are the usual ones. They stand in the brief file, to be changed there.`,
    ),
  ];
}

function sizeLine({ size, brief }: Plan, { size: asked }: Values, units: Units): string {
  const got = say`${formatLength(size.widthCm, units)} wide and ${formatLength(size.depthCm, units)} deep`;
  return 'girthCm' in asked
    ? say`${brief.name}: ${got}, sewn and lying flat, ${showSize(asked, units)}.`
    : say`${brief.name}: ${got}, sewn and lying flat. Asked: ${showSize(asked, units)}.`;
}

function yarnLine({ yarn, brief }: Plan, units: Units): string {
  const needs = yarn.filter((need) => need.yarn !== brief.waste.yarn).map((need) => yarnText(need, units));
  return say`Yarn, with a reserve of 10 %: ${formatList(needs)}.`;
}

function yarnText({ yarn, withReserveGrams, haveGrams, enough }: YarnNeed, units: Units): string {
  const need = formatMassNeeded(withReserveGrams ?? 0, units);
  if (enough === null) return `${yarn} ${need}`;
  const have = formatMass(haveGrams ?? 0, units);
  return enough
    ? say`${yarn} ${need}, enough (you have ${have})`
    : say`${yarn} ${need}, too little (you have ${have})`;
}

/** What the plan stands on where nobody measured. */
function guesses(values: Values, units: Units): readonly string[] {
  const isGuessed = [values.first, values.second].some(
    (yarn) => yarn !== null && yarn.metresPer100g === null,
  );
  return [
    ...(values.swatch === null
      ? [
          say`The swatch is a guess, so the bag may come out larger or smaller. Knit one first, then type change swatch.`,
        ]
      : []),
    ...(isGuessed
      ? [
          say`Where you gave no length, yarn is taken as ${usualLength(values, units)} to 100 g, a rule of thumb: the label knows better.`,
        ]
      : []),
  ];
}

const usualLength = (values: Values, units: Units): string =>
  formatYarnNeeded(usualMetresPer100g(values.bed.pitchMm), units);
