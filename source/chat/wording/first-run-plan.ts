/** The plan in a few lines, before the bag is begun. */

import type { Plan } from '../../planning/plan.ts';
import { usualMetresPer100g } from '../../planning/usual-swatch.ts';
import type { YarnNeed } from '../../planning/yarn-needs.ts';
import { reserveOf } from '../../planning/yarn-needs.ts';
import type { Words } from '../../wording/words.ts';
import type { Values } from '../first-run/answers.ts';
import { answer, type Line } from '../line.ts';
import { showSize } from './first-run.ts';
import { formatWarning } from './warnings.ts';

const caution = (text: string): Line => ({ tone: 'caution', text });

export function sayShortPlan(plan: Plan, values: Values, words: Words): readonly Line[] {
  const { stitches, rows, shapings, needlesUsed, brief } = plan;
  return [
    ...answer(
      sizeLine(plan, values, words),
      words.say`To knit: ${words.count(stitches, 'stitch', 'stitches')}, ${words.count(rows, 'row')} round and ${words.count(shapings, 'shaping move')}. They take ${needlesUsed} needles; the bed has ${brief.bed.needles}.`,
      yarnLine(plan, words),
      words.say`Have ready too: some waste yarn of another colour, and a smooth strand as ravel cord.`,
    ),
    ...guesses(values, words).map(caution),
    ...plan.warnings.map((warning) => caution(formatWarning(warning, words))),
    ...answer(
      words.say`Cord, waste yarn, edges and crawl are the usual ones. They stand in the brief file, to be changed there.`,
    ),
  ];
}

function sizeLine({ size, brief }: Plan, { size: asked }: Values, words: Words): string {
  const got = words.say`${words.amounts.length(size.widthCm)} wide and ${words.amounts.length(size.depthCm)} deep`;
  return 'girthCm' in asked
    ? words.say`${brief.name}: ${got}, sewn and lying flat, ${showSize(asked, words)}.`
    : words.say`${brief.name}: ${got}, sewn and lying flat. Asked: ${showSize(asked, words)}.`;
}

function yarnLine({ yarn, brief, gauge }: Plan, words: Words): string {
  const needs = yarn.filter((need) => need.yarn !== brief.waste.yarn).map((need) => yarnText(need, words));
  return words.say`Yarn, with a reserve of ${Math.round((reserveOf(gauge) - 1) * 100)} %: ${words.amounts.list(needs)}.`;
}

function yarnText({ yarn, withReserveGrams, haveGrams, enough }: YarnNeed, words: Words): string {
  const need = words.amounts.massNeeded(withReserveGrams ?? 0);
  if (enough === null) return `${yarn} ${need}`;
  const have = words.amounts.mass(haveGrams ?? 0);
  return enough
    ? words.say`${yarn} ${need}, enough (you have ${have})`
    : words.say`${yarn} ${need}, too little (you have ${have})`;
}

/** What the plan stands on where nobody measured. */
function guesses(values: Values, words: Words): readonly string[] {
  const isGuessed = [values.first, values.second].some(
    (yarn) => yarn !== null && yarn.metresPer100g === null,
  );
  return [
    ...(values.swatch === null
      ? [
          words.say`The swatch is a guess, so the bag may come out larger or smaller. Knit one first, then type change swatch.`,
        ]
      : []),
    ...(isGuessed
      ? [
          words.say`Where you gave no length, yarn is taken as ${usualLength(values, words)} to 100 g, a rule of thumb: the label knows better.`,
        ]
      : []),
  ];
}

const usualLength = (values: Values, words: Words): string =>
  words.amounts.yarnNeeded(usualMetresPer100g(values.bed.pitchMm));
