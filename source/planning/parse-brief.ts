import * as v from 'valibot';
import { fail, type Result } from '../shared/result.ts';
import type { Brief } from './brief.ts';
import { briefSchema } from './brief-schema.ts';
import { completeBrief } from './complete-brief.ts';
import { explainIssues } from './explain-issue.ts';
import type { BriefFault } from './fault.ts';

/** Reads a brief from the text of its file; the first thing wrong comes back as a fault. */
export function parseBrief(text: string): Result<Brief, BriefFault> {
  let json: unknown;
  try {
    json = JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (error) {
    return fail({ code: 'brief/not-json', detail: (error as SyntaxError).message });
  }
  return readBrief(json);
}

/** Checks a brief that is already parsed JSON and fills in its defaults. */
export function readBrief(json: unknown): Result<Brief, BriefFault> {
  const parsed = v.safeParse(briefSchema, json);
  return parsed.success ? completeBrief(parsed.output) : fail(explainIssues(parsed.issues));
}
