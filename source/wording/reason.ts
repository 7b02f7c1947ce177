/**
 * What a reason is made of: a rule, its formula and figures so exact that a reader who works them out gets the same, and
 * where it comes from.
 */

import type { YarnClass } from '../planning/gauge.ts';
import type { Plan } from '../planning/plan.ts';
import { mmPerInch } from '../shared/units.ts';
import type { Named } from './named.ts';
import type { Words } from './words.ts';

/** A topic of the craft: the rule in plain words, its formula, and where both come from. */
export interface Reason extends Named {
  readonly rule: (words: Words) => string;
  readonly formula?: (words: Words) => string;
  /** This bag's numbers; null where it has none to show. */
  readonly here?: (plan: Plan, words: Words) => string | null;
  readonly source: (words: Words) => string;
}

/** The size of a stitch to a hundredth of a millimetre, or a thousandth of an inch. */
export const formatFine = (mm: number, words: Words): string =>
  words.units.length === 'cm' ? `${round(mm, 2, words)} mm` : `${round(mm / mmPerInch, 3, words)} in`;

const round = (value: number, decimals: number, words: Words): string =>
  words.amounts.decimal(value, decimals);

/** What a fabric weighs: `326 g to the square metre`, `9.6 oz to the square yard`. */
export const formatFabricMass = (gsm: number, words: Words): string =>
  words.units.mass === 'g'
    ? words.reasons.sources.gramsToSquareMetre(gsm)
    : words.reasons.sources.ouncesToSquareYard(gsm);

export const commonPractice = (words: Words): string => words.reasons.sources.commonPractice;
export const ruleOfThumb = (words: Words): string => words.reasons.sources.ruleOfThumb;
export const planeGeometry = (words: Words): string => words.reasons.sources.planeGeometry;

/** `light (3)` */
export const nameClass = ({ number, name }: YarnClass, words: Words): string =>
  words.prompt.yarnClass(name, number);

/** `fine (2), light (3) or medium (4)` */
export const nameClasses = (classes: readonly YarnClass[], words: Words): string =>
  words.amounts.choice(classes.map((one) => nameClass(one, words)));
