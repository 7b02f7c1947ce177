import { fail, type Result, succeed } from '../shared/result.ts';
import type { BriefFault } from './fault.ts';
import { findJsonSlip } from './json-slip.ts';

/** Far more than any brief needs; a file beyond it is another file, given by mistake. */
const mostCharacters = 1_000_000;

/** The JSON in the text of a brief file, or the place (line and column from 1) where it stops being JSON. */
export function readJson(file: string): Result<unknown, BriefFault> {
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
