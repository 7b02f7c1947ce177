/** Numbers and lists as a maker reads them; quantities with a unit are in `shared/units`. */
import { formatLength, metric } from '../../shared/units.ts';

export const formatCm = (cm: number): string => formatLength(cm, metric);

/** `1 row`, `3 rows`. */
export const count = (howMany: number, one: string, many = `${one}s`): string =>
  `${howMany} ${howMany === 1 ? one : many}`;

/** `a, b and c`. */
export function formatList(items: readonly string[], last = 'and'): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`;
}
