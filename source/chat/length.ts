/** A length as it is typed: `7.4`, `7,4 cm`, `2.9 in`. */
import { mmPerInch, type Units } from '../shared/units.ts';
import type { Amount } from './replan-wish.ts';

/** Two groups: the number and its unit. */
export const lengthPattern = '(\\d+(?:[.,]\\d+)?)\\s*(mm|cm|in)?';

export const lengthOf = (value: string | undefined, unit: string | undefined): Amount => ({
  value: Number((value ?? '').replace(',', '.')),
  unit: (unit?.toLowerCase() ?? null) as Amount['unit'],
});

/** Without a unit it is in the maker's own. */
export function inCm({ value, unit }: Amount, units: Units): number {
  const written = unit ?? units.length;
  return written === 'in' ? (value * mmPerInch) / 10 : written === 'mm' ? value / 10 : value;
}
