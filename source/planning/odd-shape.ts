/** What the schema library lets by or cannot name: a list where a group belongs, and yarn names it skips in silence. */
import type { BriefFault } from './fault.ts';
import { formatField } from './field.ts';

type Group = Readonly<Record<string, unknown>>;

/** The first such oddity; null when there is none. */
export function findOddShape(json: unknown): BriefFault | null {
  const list = groupsOf(json).find(([, value]) => Array.isArray(value));
  if (list)
    return { code: 'brief/wrong-type', field: formatField(list[0]), expected: 'group', value: list[1] };
  const yarns = asGroup(asGroup(json).yarns);
  const skipped = ['__proto__', 'prototype', 'constructor'].find((name) => Object.hasOwn(yarns, name));
  return skipped === undefined ? null : { code: 'brief/reserved-yarn', yarn: skipped };
}

const asGroup = (value: unknown): Group =>
  typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Group) : {};

/** Every value of the file that has to be a group, with the keys that lead to it. */
function groupsOf(json: unknown): readonly (readonly [path: readonly (string | number)[], value: unknown])[] {
  const brief = asGroup(json);
  const stripes = Array.isArray(brief.stripes) ? brief.stripes : [];
  return [
    [[], json],
    ...['bed', 'swatch', 'bag', 'yarns', 'scraps', 'waste', 'cord', 'cost', 'learned'].map(
      (key) => [[key], brief[key]] as const,
    ),
    [['bag', 'contents'], asGroup(brief.bag).contents],
    ...Object.entries(asGroup(brief.yarns)).map(([name, yarn]) => [['yarns', name], yarn] as const),
    ...stripes.map((stripe, i) => [['stripes', i], stripe] as const),
  ];
}
