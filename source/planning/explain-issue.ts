/** Turns what the schema library reports into our own faults, each naming the field, the value and what is allowed. */
import * as v from 'valibot';
import { bagSchemaFor, bagWays, briefSchema, colourPattern } from './brief-schema.ts';
import type { BriefFault, JsonKind } from './fault.ts';
import { formatField } from './field.ts';

type Issue = v.BaseIssue<unknown>;
type Key = string | number;

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

function explainIssue(issue: Issue, above: readonly Key[]): BriefFault {
  const path = [...above, ...(issue.path ?? []).map(({ key }) => key as Key)];
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
function keysBeside(path: readonly Key[]): readonly string[] {
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

function innerSchema(schema: unknown, step: Key): unknown {
  const node = schema as Node | undefined;
  if (typeof step === 'number') return node?.item;
  const option = node?.options?.find((one) => one.entries && step in one.entries);
  return node?.entries?.[step] ?? option?.entries?.[step] ?? node?.value;
}
