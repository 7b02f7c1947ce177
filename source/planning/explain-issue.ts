/** Turns what the schema library reports into our own faults, each naming the field, the value and what is allowed. */
import * as v from 'valibot';
import { bagSchemaFor, briefSchema } from './brief-schema.ts';
import type { BriefFault } from './fault.ts';

type Issue = v.BaseIssue<unknown>;

/** The fault that helps the maker most, out of all that the schema found. */
export const explainIssues = (issues: readonly [Issue, ...Issue[]]): BriefFault =>
  explainIssue(mostTelling(issues));

/** A misspelt key shows up as both unknown and missing: the unknown one says more. */
const mostTelling = (issues: readonly [Issue, ...Issue[]]): Issue =>
  issues.find((issue) => issue.type === 'strict_object' && issue.expected === 'never') ?? issues[0];

const fieldOf = (issue: Issue, prefix = ''): string =>
  (issue.path ?? []).reduce(
    (path, { key }) =>
      typeof key === 'number' ? `${path}[${key}]` : path ? `${path}.${String(key)}` : String(key),
    prefix,
  );

function explainIssue(issue: Issue, prefix = ''): BriefFault {
  const field = fieldOf(issue, prefix);
  const value = JSON.stringify(issue.input) ?? 'nothing';
  if (issue.type === 'union') return explainBag(issue.input);
  if (issue.type === 'strict_object' && issue.expected === 'never') {
    return { code: 'brief/unknown-key', field, known: siblingKeys(field) };
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
      return { code: 'brief/not-a-colour', field, value };
    case 'picklist':
      return { code: 'brief/not-one-of', field, value, choices: choicesOf(issue.expected) };
    default:
      return {
        code: 'brief/wrong-type',
        field: field || 'the brief',
        expected: issue.expected ?? 'something else',
        value,
      };
  }
}

const choicesOf = (expected: string | null): readonly string[] =>
  [...(expected ?? '').matchAll(/"([^"]*)"/g)].map((match) => match[1] ?? '');

function explainBag(bag: unknown): BriefFault {
  const issues = v.safeParse(bagSchemaFor(bag), bag).issues;
  return issues
    ? explainIssue(mostTelling(issues), 'bag')
    : { code: 'brief/wrong-type', field: 'bag', expected: 'Object', value: JSON.stringify(bag) };
}

/** The keys that stand beside `field`, read off the schema itself. */
function siblingKeys(field: string): readonly string[] {
  const steps = field
    .replace(/\[\d+\]/g, '.[]')
    .split('.')
    .slice(0, -1);
  let at: unknown = briefSchema;
  for (const step of steps) at = unwrap(innerSchema(unwrap(at), step));
  const entries = (unwrap(at) as { entries?: Record<string, unknown> } | undefined)?.entries;
  return entries ? Object.keys(entries) : [];
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

function innerSchema(schema: unknown, step: string): unknown {
  const node = schema as Node | undefined;
  if (step === '[]') return node?.item;
  const option = node?.options?.find((one) => one.entries && step in one.entries);
  return node?.entries?.[step] ?? option?.entries?.[step] ?? node?.value;
}
