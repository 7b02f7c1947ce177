import * as v from 'valibot';
import { fail, type Result, succeed } from '../shared/result.ts';
import type { Brief, BriefFile } from './brief.ts';
import { briefSchema } from './brief-schema.ts';
import { completeBrief } from './complete-brief.ts';
import { explainIssues, findOddShape } from './explain-issue.ts';
import type { BriefFault } from './fault.ts';
import { findJsonSlip } from './json-slip.ts';
import { emptyShelf, namesShelf, type Shelf, takeFromShelf } from './shelf.ts';

/** Far more than any brief needs; a file beyond it is another file, given by mistake. */
const mostCharacters = 1_000_000;

/** The JSON in the text of a brief file, or the place (line and column from 1) where it stops being JSON. */
function readJson(file: string): Result<unknown, BriefFault> {
  const text = file.replace(/^\uFEFF/, '');
  if (text.trim() === '') return fail({ code: 'brief/empty' });
  if (text.length > mostCharacters) {
    return fail({ code: 'brief/too-big', characterCount: text.length, most: mostCharacters });
  }
  const slip = findJsonSlip(text);
  if (!slip) return succeed(JSON.parse(text));
  const lines = text.slice(0, slip.offset).split('\n');
  const place = { line: lines.length, column: (lines.at(-1)?.length ?? 0) + 1 };
  return fail({ code: 'brief/not-json', ...place, slip: slip.slip, found: slip.found });
}

/** Reads a brief from the text of its file; the first thing wrong comes back as a fault. `shelf` is asked for what it names. */
export function parseBrief(
  text: string,
  shelf: () => Shelf = () => emptyShelf,
): Result<BriefFile, BriefFault> {
  const written = readJson(text);
  if (!written.ok) return written;
  const json = namesShelf(written.value) ? takeFromShelf(written.value, shelf()) : written;
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
