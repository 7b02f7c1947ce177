import * as v from 'valibot';
import { fail, type Result, succeed } from '../shared/result.ts';
import type { Brief, BriefFile } from './brief.ts';
import { briefSchema } from './brief-schema.ts';
import { completeBrief } from './complete-brief.ts';
import { explainIssues } from './explain-issue.ts';
import type { BriefFault } from './fault.ts';
import { findOddShape } from './odd-shape.ts';
import { readJson } from './read-json.ts';

/** Reads a brief from the text of its file; the first thing wrong comes back as a fault. */
export function parseBrief(text: string): Result<BriefFile, BriefFault> {
  const json = readJson(text);
  if (!json.ok) return json;
  const brief = readBrief(json.value);
  return brief.ok ? succeed({ json: json.value, brief: brief.value }) : brief;
}

/** Checks a brief's JSON and fills in its defaults. */
export function readBrief(json: unknown): Result<Brief, BriefFault> {
  const oddShape = findOddShape(json);
  if (oddShape) return fail(oddShape);
  const parsed = v.safeParse(briefSchema, json);
  return parsed.success ? completeBrief(parsed.output) : fail(explainIssues(parsed.issues));
}
