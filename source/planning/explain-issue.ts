/**
 * Turns what the schema library reports into our own faults, each naming the field, the value and what is allowed; also what
 * the library lets by or cannot name: a list where a group belongs, and yarn names that it skips in silence.
 */

import * as v from 'valibot';
import { isGroup, type JsonGroup } from '../shared/result.ts';
import { bagSchemaFor, bagWays, briefSchema, colourPattern } from './brief-schema.ts';
import type { BriefFault, JsonKind } from './fault.ts';

/** Keys that need no quotes to be read in a path. */
const plainKey = /^[\p{L}\p{N}_-]+$/u;

/** A field as the maker finds it in the file: `stripes[1].rows`, `yarns."deep plum".grams`; '' is the brief itself. */
const formatField = (path: readonly (string | number)[]): string =>
  path.reduce<string>((field, key) => {
    if (typeof key === 'number') return `${field}[${key}]`;
    const name = plainKey.test(key) ? key : JSON.stringify(key);
    return field ? `${field}.${name}` : name;
  }, '');

type Issue = v.BaseIssue<unknown>;
type PathKey = string | number;

/** The fault that helps the maker most, out of all that the schema found. */
export function explainIssues(issues: readonly [Issue, ...Issue[]]): BriefFault {
  const issue = mostTelling(issues);
  const [first] = issue.path ?? [];
  return first?.key === 'bag' && first.value !== undefined
    ? explainBag(first.value)
    : explainIssue(issue, []);
}

/** A misspelt key shows up as both unknown and missing: the unknown one says more. */
const mostTelling = (issues: readonly [Issue, ...Issue[]]): Issue => issues.find(isUnknownKey) ?? issues[0];

const isUnknownKey = (issue: Issue): boolean => issue.type === 'strict_object' && issue.expected === 'never';

function explainIssue(issue: Issue, above: readonly PathKey[]): BriefFault {
  const path = [...above, ...(issue.path ?? []).map(({ key }) => key as PathKey)];
  const field = formatField(path);
  const value = issue.input;
  if (isUnknownKey(issue)) {
    return { code: 'brief/unknown-key', field, key: String(path.at(-1)), known: keysBeside(path) };
  }
  if (issue.received === 'undefined') return { code: 'brief/missing', field };
  switch (issue.type) {
    case 'integer':
      return { code: 'brief/not-whole', field, value };
    case 'multiple_of':
      return { code: 'brief/not-even', field, value };
    case 'min_value':
      return { code: 'brief/too-small', field, value, least: issue.requirement as number };
    case 'max_value':
      return { code: 'brief/too-large', field, value, most: issue.requirement as number };
    case 'min_length':
      return { code: 'brief/too-short', field };
    case 'max_length':
      return { code: 'brief/too-long', field, most: issue.requirement as number };
    case 'regex':
      return {
        code: issue.requirement === colourPattern ? 'brief/not-a-colour' : 'brief/not-a-name',
        field,
        value,
      };
    case 'picklist':
      return { code: 'brief/not-one-of', field, value, choices: choicesOf(issue.expected) };
    default:
      return { code: 'brief/wrong-type', field, expected: kinds[issue.expected ?? ''] ?? 'group', value };
  }
}

const kinds: Readonly<Record<string, JsonKind>> = {
  number: 'number',
  string: 'text',
  Array: 'list',
  Object: 'group',
};

/** The library writes choices as `("left" | "right")`. */
const choicesOf = (expected: string | null): readonly (string | number)[] =>
  (expected ?? '')
    .replace(/^\(|\)$/g, '')
    .split(' | ')
    .map((choice) => JSON.parse(choice));

function explainBag(bag: unknown): BriefFault {
  if (typeof bag !== 'object' || bag === null) {
    return { code: 'brief/wrong-type', field: 'bag', expected: 'group', value: bag };
  }
  const keys = Object.keys(bag);
  const ways = bagWays.filter((way) => way.some((key) => keys.includes(key)));
  if (ways.length > 1) {
    return { code: 'brief/two-sizes', keys: keys.filter((key) => bagWays.flat().includes(key)) };
  }
  if (keys.length === 0) return { code: 'brief/no-size' };
  const issues = v.safeParse(bagSchemaFor(bag), bag).issues;
  return issues ? explainIssue(mostTelling(issues), ['bag']) : { code: 'brief/no-size' };
}

/** The keys that may stand where the last of `path` stands, read off the schema itself. */
function keysBeside(path: readonly PathKey[]): readonly string[] {
  let at: unknown = briefSchema;
  for (const step of path.slice(0, -1)) at = unwrap(innerSchema(unwrap(at), step));
  const { entries, options } = (unwrap(at) ?? {}) as Node;
  return Object.keys(Object.assign({}, entries, ...(options ?? []).map((option) => option.entries)));
}

type Node = {
  wrapped?: unknown;
  pipe?: unknown[];
  entries?: Record<string, unknown>;
  item?: unknown;
  value?: unknown;
  options?: Node[];
};

function unwrap(schema: unknown): unknown {
  const node = schema as Node | undefined;
  if (node?.wrapped) return unwrap(node.wrapped);
  if (node?.pipe?.[0] && node.pipe[0] !== schema) return unwrap(node.pipe[0]);
  return schema;
}

function innerSchema(schema: unknown, step: PathKey): unknown {
  const node = schema as Node | undefined;
  if (typeof step === 'number') return node?.item;
  const option = node?.options?.find((one) => one.entries && step in one.entries);
  return node?.entries?.[step] ?? option?.entries?.[step] ?? node?.value;
}

/** The first such oddity; null when there is none. */
export function findOddShape(json: unknown): BriefFault | null {
  const list = groupsOf(json).find(([, value]) => Array.isArray(value));
  if (list)
    return { code: 'brief/wrong-type', field: formatField(list[0]), expected: 'group', value: list[1] };
  const yarns = asGroup(asGroup(json).yarns);
  const skipped = ['__proto__', 'prototype', 'constructor'].find((name) => Object.hasOwn(yarns, name));
  return skipped === undefined ? null : { code: 'brief/reserved-yarn', yarn: skipped };
}

const asGroup = (value: unknown): JsonGroup => (isGroup(value) ? value : {});

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
    ...Object.entries(asGroup(brief.yarns)).flatMap(([name, yarn]) => {
      const { run } = asGroup(yarn);
      const stretches = Array.isArray(run) ? run : [];
      return [
        [['yarns', name], yarn] as const,
        ...stretches.map((stretch, i) => [['yarns', name, 'run', i], stretch] as const),
      ];
    }),
    ...stripes.map((stripe, i) => [['stripes', i], stripe] as const),
  ];
}
