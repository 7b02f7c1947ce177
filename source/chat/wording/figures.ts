/** Figures that stand in a sum, so exact that a reader who works it out gets the same. */
import { formatDecimal } from '../../shared/say.ts';
import { mmPerInch, type Units } from '../../shared/units.ts';

/** The size of a stitch to a hundredth of a millimetre, or a thousandth of an inch. */
export const formatFine = (mm: number, { length }: Units): string =>
  length === 'cm' ? `${round(mm, 2)} mm` : `${round(mm / mmPerInch, 3)} in`;

const round = (value: number, decimals: number): string =>
  formatDecimal(String(Number(value.toFixed(decimals))));
