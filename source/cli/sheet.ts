import { extname } from 'node:path';
import { cautionOf } from '../chat/wording/cautions.ts';
import { formatFileFault } from '../chat/wording/file-faults.ts';
import { sayOutKind, sayWritten } from '../chat/wording/sheet.ts';
import { formatWarning } from '../chat/wording/warnings.ts';
import { writeText } from '../files/text-file.ts';
import type { Plan } from '../planning/plan.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import type { SheetOptions } from '../sheet/page/options.ts';
import { sheetHtml } from '../sheet/page/sheet-html.ts';
import { sheetMarkdown } from '../sheet/page/sheet-markdown.ts';
import { sheetSvg } from '../sheet/page/sheet-svg.ts';
import type { Words } from '../wording/words.ts';
import { complain, exitCodes, print } from './outcome.ts';
import { readPlan } from './read-input.ts';

const makers: ReadonlyMap<string, (plan: Plan, options: SheetOptions) => string> = new Map([
  ['.html', sheetHtml],
  ['.svg', sheetSvg],
  ['.md', sheetMarkdown],
]);

export interface SheetRequest {
  readonly out: string;
  /** With blanks for each pupil's own swatch. */
  readonly forClass: boolean;
  readonly words: Words;
}

/** Writes the printable sheet of a brief; the kind follows from the ending of the file's name. */
export function writeSheet(path: string, request: SheetRequest): number {
  const plan = readPlan(path, request.words);
  if (!plan.ok) return complain(plan.fault);
  const written = saveSheet(plan.value, request);
  if (!written.ok) return complain(written.fault);
  print(written.value);
  return exitCodes.done;
}

/** The sheet of a plan as a new file: a sentence that says so, or why not. */
export function saveSheet(plan: Plan, { out, forClass, words }: SheetRequest): Result<string, string> {
  const make = makers.get(extname(out).toLowerCase());
  if (!make) return fail(sayOutKind(out, words));
  const text = make(plan, {
    date: new Date().toISOString().slice(0, 10),
    words,
    cautionOf: (step) => cautionOf(plan, step, words),
    class: forClass,
    remarks: plan.warnings.map((warning) => formatWarning(warning, words)),
  });
  const written = writeText(out, text);
  return written.ok ? succeed(sayWritten(out, words)) : fail(formatFileFault(written.fault, words));
}
