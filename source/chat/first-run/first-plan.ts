/** The plan in a few lines, before the bag is begun. */

import type { Plan } from '../../planning/plan.ts';
import { usualMetresPer100g } from '../../planning/usual.ts';
import { planWarnings } from '../../planning/warnings.ts';
import { reserveOf, type YarnNeed } from '../../planning/yarn-needs.ts';
import { sayBy } from '../../wording/by-kind.ts';
import type { Words } from '../../wording/words.ts';
import { answer, type Said } from '../talk.ts';
import type { Values } from './answers.ts';
import { showSize } from './say.ts';

/** What a maker may want to change before the first stitch. */
type Doubt =
  | { readonly is: 'short'; readonly yarn: string; readonly grams: number }
  | { readonly is: 'tight' | 'guess' };

export const doubtsToTell = (plan: Plan): readonly Doubt[] =>
  planWarnings(plan).flatMap((warning): Doubt[] => {
    switch (warning.code) {
      case 'plan/yarn-short':
        return [{ is: 'short', yarn: warning.yarn, grams: warning.shortGrams }];
      case 'plan/fabric-jams':
        return [{ is: 'tight' }];
      case 'plan/swatch-guessed':
        return [{ is: 'guess' }];
      default:
        return [];
    }
  });

export function sayLookAgain(doubts: readonly Doubt[], { firstRun: say }: Words): Said {
  const said = doubts.map((doubt) =>
    doubt.is === 'short' ? say.doubts.short(doubt.yarn, doubt.grams) : say.doubts[doubt.is],
  );
  return caution(say.lookAgain(said));
}

const caution = (text: string): Said => ({ tone: 'caution', text });

export function sayShortPlan(plan: Plan, values: Values, words: Words): readonly Said[] {
  const { stitches, rows, shapings, needlesUsed, brief } = plan;
  return [
    ...answer(
      sizeLine(plan, values, words),
      words.firstRun.toKnit(stitches, rows, shapings, needlesUsed, brief.bed.needles),
      yarnLine(plan, words),
      words.firstRun.haveReady,
    ),
    ...guesses(values, words).map(caution),
    ...planWarnings(plan)
      .filter(({ code }) => code !== 'plan/swatch-guessed')
      .map((warning) => caution(sayBy('code', words.warnings, warning))),
    ...answer(words.firstRun.restIsUsual),
  ];
}

function sizeLine({ size, brief }: Plan, { size: asked }: Values, words: Words): string {
  const got = words.firstRun.wideAndDeep(size.widthCm, size.depthCm);
  return !('widthCm' in asked && 'depthCm' in asked)
    ? words.firstRun.plan(brief.name, got, showSize(asked, words))
    : words.firstRun.planAndAsked(brief.name, got, showSize(asked, words));
}

function yarnLine({ yarn, brief, gauge }: Plan, words: Words): string {
  const needs = yarn.filter((need) => need.yarn !== brief.waste.yarn).map((need) => yarnText(need, words));
  return words.firstRun.yarnNeeds(Math.round((reserveOf(gauge) - 1) * 100), needs);
}

function yarnText({ yarn, withReserveGrams, haveGrams, enough }: YarnNeed, words: Words): string {
  const need = words.amounts.massNeeded(withReserveGrams ?? 0);
  if (enough === null) return `${yarn} ${need}`;
  const have = words.amounts.mass(haveGrams ?? 0);
  return enough
    ? words.firstRun.yarnEnough(yarn, need, have)
    : words.firstRun.yarnTooLittle(yarn, need, have);
}

/** What the plan stands on where nobody measured. */
function guesses(values: Values, words: Words): readonly string[] {
  const isGuessed = [values.first, ...values.second].some((yarn) => yarn.metresPer100g === null);
  return [
    ...(values.swatch === null ? words.firstRun.swatchIsGuess : []),
    ...(isGuessed ? [words.firstRun.lengthIsGuess(usualLength(values, words))] : []),
  ];
}

const usualLength = (values: Values, words: Words): string =>
  words.amounts.yarnNeeded(usualMetresPer100g(values.bed.pitchMm));
