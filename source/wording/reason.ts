/**
 * What a reason is made of: a rule, its formula and figures so exact that a reader who works them out gets the same, and
 * where it comes from.
 */

import type { YarnClass } from '../planning/gauge.ts';
import type { Plan } from '../planning/plan.ts';
import { mmPerInch } from '../shared/units.ts';
import type { Words } from './words.ts';

/** A topic of the craft, whose rule, formula and source are in words alone. */
export interface Reason {
  readonly id: Exclude<keyof Words['reasons'], 'said' | 'sources'>;
  /** This bag's numbers; null where it has none to show. */
  readonly here?: (plan: Plan, words: Words) => string | null;
  /** Where the words name no source of its own; common practice where it is left out. */
  readonly source?: 'ruleOfThumb' | 'planeGeometry';
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

/** `fine (2), light (3) or medium (4)` */
export const nameClasses = (classes: readonly YarnClass[], words: Words): string =>
  words.amounts.choice(classes.map(words.prompt.yarnClass));
