import { extname } from 'node:path';
import { today } from '../files/clock.ts';
import { writeText } from '../files/write-whole.ts';
import type { Plan } from '../planning/plan.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { type Paper, papers, type SheetOptions } from '../sheet/page/options.ts';
import { sheetHtml } from '../sheet/page/sheet-html.ts';
import { sheetMarkdown } from '../sheet/page/sheet-markdown.ts';
import { sheetSvg } from '../sheet/page/sheet-svg.ts';
import { type TagOptions, tagHtml, tagMarkdown, tagSvg } from '../sheet/page/tag.ts';
import { cautionOf } from '../wording/cautions.ts';
import { formatFileFault } from '../wording/file-faults.ts';
import { formatWarning } from '../wording/warnings.ts';
import type { Words } from '../wording/words.ts';
import { complain, exitCodes, print } from './outcome.ts';
import { readPlan } from './read-input.ts';

interface Makers {
  readonly sheet: (plan: Plan, options: SheetOptions) => string;
  readonly tag: (plan: Plan, options: TagOptions) => string;
}

const makers: ReadonlyMap<string, Makers> = new Map([
  ['.html', { sheet: sheetHtml, tag: tagHtml }],
  ['.svg', { sheet: sheetSvg, tag: tagSvg }],
  ['.md', { sheet: sheetMarkdown, tag: tagMarkdown }],
]);

export interface SheetRequest {
  readonly out: string;
  readonly words: Words;
  /** What the bag is called now; left out, as its brief has it. */
  readonly name?: string;
  /** With blanks for each pupil's own swatch. */
  readonly forClass?: boolean;
  readonly paper?: Paper;
  /** A gift tag in place of the sheet, with the maker's own words on it. */
  readonly tag?: Pick<TagOptions, 'fibre' | 'care'>;
}

/** What stood on the command line. */
export interface AskedSheet extends Omit<SheetRequest, 'paper'> {
  readonly paper: string | undefined;
}

/** Writes the printable sheet of a brief; the kind follows from the ending of the file's name. */
export function writeSheet(path: string, { paper: typed, ...request }: AskedSheet): number {
  const { words } = request;
  const paper = paperNamed(typed);
  if (paper === undefined)
    return complain(words.cli.notAPaper(typed ?? '', Object.keys(papers)), exitCodes.usage);
  const plan = readPlan(path, words);
  if (!plan.ok) return complain(plan.fault);
  const written = saveSheet(plan.value, { ...request, paper });
  if (!written.ok) return complain(written.fault);
  print(written.value);
  return exitCodes.done;
}

const paperNamed = (typed = 'a4'): Paper | undefined =>
  (Object.keys(papers) as Paper[]).find((name) => name === typed.toLowerCase());

/** The sheet of a plan, or its tag, as a new file: a sentence that says so, or why not. */
export function saveSheet(
  plan: Plan,
  { out, forClass, paper, tag, name, words }: SheetRequest,
): Result<string, string> {
  const make = makers.get(extname(out).toLowerCase());
  if (!make) return fail(sayOutKind(out, words));
  const options: SheetOptions = {
    date: today(),
    words,
    cautionOf: (step) => cautionOf(plan, step, words),
    class: forClass ?? false,
    paper: paper ?? 'a4',
    ...(name === undefined ? {} : { name }),
    remarks: plan.warnings.map((warning) => formatWarning(warning, words)),
  };
  const text = tag ? make.tag(plan, { ...options, ...tag }) : make.sheet(plan, options);
  const written = writeText(out, text);
  return written.ok ? succeed(sayWritten(out, words)) : fail(formatFileFault(written.fault, words));
}

const sayOutKind = (out: string, words: Words): string => words.prompt.sheetEnding(out);

const sayWritten = (out: string, words: Words): string => words.prompt.sheetWritten(out);
