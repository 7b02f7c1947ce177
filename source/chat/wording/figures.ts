/** Figures that stand in a sum, so exact that a reader who works it out gets the same. */

import { mmPerInch } from '../../shared/units.ts';
import type { Words } from '../../wording/words.ts';

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
