import { extname } from 'node:path';
import { today } from '../files/clock.ts';
import { writeText } from '../files/write-whole.ts';
import type { Plan } from '../planning/plan.ts';
import { planWarnings } from '../planning/warnings.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { type Paper, papers, type SheetOptions } from '../sheet/page/block.ts';
import { type PartySheet, partyHtml, partyMarkdown, partySvg } from '../sheet/page/party-sheet.ts';
import { sheetHtml } from '../sheet/page/sheet-html.ts';
import { sheetMarkdown } from '../sheet/page/sheet-markdown.ts';
import { sheetSvg } from '../sheet/page/sheet-svg.ts';
import { type TagOptions, tagHtml, tagMarkdown, tagSvg } from '../sheet/page/tag.ts';
import { sayBy } from '../wording/by-kind.ts';
import { formatFileFault } from '../wording/file-faults.ts';
import { formatParty } from '../wording/shelf.ts';
import { cautionOf } from '../wording/steps.ts';
import type { Words } from '../wording/words.ts';
import { complain, exitCodes, print } from './outcome.ts';
import { ownPace, readPlan } from './read-input.ts';

interface Makers {
  readonly sheet: (plan: Plan, options: SheetOptions) => string;
  readonly tag: (plan: Plan, options: TagOptions) => string;
}

const makers: ReadonlyMap<string, Makers> = new Map([
  ['.html', { sheet: sheetHtml, tag: tagHtml }],
  ['.svg', { sheet: sheetSvg, tag: tagSvg }],
  ['.md', { sheet: sheetMarkdown, tag: tagMarkdown }],
]);

interface SheetRequest {
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
interface AskedSheet extends Omit<SheetRequest, 'paper'> {
  readonly paper: string | undefined;
}

/** Writes the printable sheet of a brief; the kind follows from the ending of the file's name. */
export function writeSheet(paths: readonly string[], { paper: typed, ...request }: AskedSheet): number {
  const { words } = request;
  const paper = paperNamed(typed);
  if (paper === undefined)
    return complain(words.cli.notAPaper(typed ?? '', Object.keys(papers)), exitCodes.usage);
  const single = request.tag ? 'tag' : request.forClass ? 'class' : null;
  if (paths.length > 1 && single) return complain(words.cli.forOneBag(single), exitCodes.usage);
  const plans: Plan[] = [];
  for (const path of paths) {
    const plan = readPlan(path, words);
    if (!plan.ok) return complain(plan.fault);
    plans.push(plan.value);
  }
  const [plan] = plans;
  if (!plan) throw new Error('no brief');
  const written =
    plans.length > 1 ? saveParty(plans, { ...request, paper }) : saveSheet(plan, { ...request, paper });
  if (!written.ok) return complain(written.fault);
  print(written.value);
  return exitCodes.done;
}

const paperNamed = (typed = 'a4'): Paper | undefined =>
  (Object.keys(papers) as Paper[]).find((name) => name === typed.toLowerCase());

/** The sheet of a plan, or its tag, as a new file: a sentence that says so, or why not. */
export function saveSheet(plan: Plan, { out, tag, ...request }: SheetRequest): Result<string, string> {
  const make = makers.get(extname(out).toLowerCase());
  if (!make) return fail(request.words.prompt.sheetEnding(out));
  const options = optionsFor(plan, request);
  const text = tag ? make.tag(plan, { ...options, ...tag }) : make.sheet(plan, options);
  const written = writeText(out, text);
  return written.ok
    ? succeed(request.words.prompt.sheetWritten(out))
    : fail(formatFileFault(written.fault, request.words));
}

const optionsFor = (
  plan: Plan,
  { forClass, paper, name, words }: Pick<SheetRequest, 'forClass' | 'paper' | 'name' | 'words'>,
): SheetOptions => ({
  date: today(),
  words,
  cautionOf: (step) => cautionOf(plan, step, words),
  class: forClass ?? false,
  paper: paper ?? 'a4',
  ...(name === undefined ? {} : { name }),
  remarks: planWarnings(plan).map((warning) => sayBy('code', words.warnings, warning)),
});

const partyMakers: ReadonlyMap<string, (sheet: PartySheet) => string> = new Map([
  ['.html', partyHtml],
  ['.svg', partySvg],
  ['.md', partyMarkdown],
]);

/** What several bags have in common, and a page a bag. */
function saveParty(
  plans: readonly Plan[],
  { out, words, paper = 'a4' }: SheetRequest,
): Result<string, string> {
  const make = partyMakers.get(extname(out).toLowerCase());
  if (!make) return fail(words.prompt.sheetEnding(out));
  const common = formatParty(plans, ownPace(), words).split('\n');
  const bags = plans.map((plan) => ({ plan, options: optionsFor(plan, { words, paper }) }));
  const written = writeText(out, make({ date: today(), words, paper, common, bags }));
  return written.ok ? succeed(words.prompt.sheetWritten(out)) : fail(formatFileFault(written.fault, words));
}
