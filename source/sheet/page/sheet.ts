/**
 * The pages of a sheet: each place of work begins a page of its own, and a page is filled from the top with blocks that are
 * never split, measured in the widest of common fonts. So pages break by rule, whatever font a printer has.
 */
import type { Plan } from '../../planning/plan.ts';
import { layOutJob } from '../../steps/job.ts';
import { wordsFor } from '../../wording/act-words.ts';
import { patchFills } from '../svg/band-drawing.ts';
import { wrapText } from '../svg/text-width.ts';
import type { DrawOptions } from '../terminal/options.ts';
import { plainText } from '../text.ts';
import { type Block, columnMm, gapMm, type Place, type Sheet, type SheetPage, types } from './block.ts';
import { deskBlocks, deskRooms } from './desk.ts';
import { digestOf, type Sentences } from './digest.ts';
import { sizeFor } from './laid.ts';
import { lapBlocks, troubleBlock } from './lap.ts';
import { acrossFor, heightOfStripe, layOut } from './lay-out.ts';
import { machineBlocks } from './machine.ts';
import type { SheetOptions } from './options.ts';
import { stripeTables } from './stripe-lines.ts';

/** What every page has: its margins, and at the top its title, beside it the place, below it a line. */
export const marginMm = { top: 11, side: 14 } as const;

export function sheetOf(plan: Plan, options: SheetOptions, pageMm: number): Sheet {
  const { sheet: words } = options.words;
  const look: DrawOptions = {
    columns: 72,
    rows: 26,
    colour: 'none',
    glyphs: 'ascii',
  };
  const sentences: Sentences = {
    step: ({ act }) => wordsFor(options.words.steps, act),
    mind: options.cautionOf,
  };
  const digest = digestOf(layOutJob(plan), sentences, words.leadingTo);
  const title = plainText(options.name ?? plan.brief.name);
  const measure = measureFor(plan);
  const roomOf = (place: Place): number =>
    pageMm - 2 * marginMm.top - headerMm(title, place, place === 'desk');
  const chosen =
    deskRooms
      .map((room) => deskBlocks(plan, options, look, room))
      .find((blocks) => heightOf(blocks, 'desk', measure) <= roomOf('desk')) ??
    deskBlocks(plan, options, look, deskRooms.at(-1) as (typeof deskRooms)[number]);
  const left = roomOf('desk') - heightOf(chosen, 'desk', measure) - gapMm;
  const desk = [...chosen, ...notesIn(left, words.notes, measure)];
  return {
    title,
    date: plainText(options.date),
    lead: words.lead(plan.size.widthCm, plan.size.depthCm),
    pages: [
      ...paged('desk', desk, roomOf('desk'), measure),
      ...machinePages(plan, options, look, digest, roomOf('machine'), measure),
      ...filledUp(
        'lap',
        paged('lap', lapBlocks(plan, options, look, digest), roomOf('lap'), measure),
        troubleBlock(options),
        roomOf('lap'),
        measure,
      ),
    ],
  };
}

/** Lines to write on, as many as the rest of the page has room for. */
function notesIn(roomMm: number, text: string, measure: Measure): readonly Block[] {
  const notes = (count: number): Block => ({
    kind: 'together',
    blocks: [
      { kind: 'heading', text },
      { kind: 'lines', count },
    ],
  });
  const count = Math.min(6, Math.floor((roomMm - measure(notes(0), 'desk')) / 7));
  return count >= 1 && Number.isFinite(roomMm) ? [notes(count)] : [];
}

type Measure = (block: Block, place: Place) => number;

const measureFor = (plan: Plan): Measure => {
  const fills = patchFills(plan);
  return (block, place) => layOut(block, { widthMm: columnMm, type: types[place], fills }).heightMm;
};

const heightOf = (blocks: readonly Block[], place: Place, measure: Measure): number =>
  blocks.reduce((sum, block) => sum + measure(block, place) + gapMm, -gapMm);

/** The first page of all has the ornament and a line on what the bag is. */
export const headerMm = (title: string, place: Place, isFirst: boolean): number => {
  const { size, lines } = titleOf(title, place);
  return (
    Math.max(lines * size * 1.15, 2 * types.desk.leading) +
    2.2 +
    (isFirst ? types.desk.leading + 5.6 : 0) +
    gapMm
  );
};

/** A long title is written smaller. */
export function titleOf(title: string, place: Place): { readonly size: number; readonly lines: number } {
  const sizes = [1, 0.75, 0.58, 0.46].map((share) => types[place].title * share);
  const size = sizeFor(title, titleMm, 2, sizes);
  return { size, lines: wrapText(title, size, titleMm).length };
}
export const titleMm = 106;

function paged(
  place: Place,
  blocks: readonly Block[],
  roomMm: number,
  measure: Measure,
): readonly SheetPage[] {
  const pages: Block[][] = [[]];
  let used = 0;
  for (const block of blocks) {
    const height = measure(block, place);
    if (used > 0 && used + height > roomMm) {
      pages.push([]);
      used = 0;
    }
    pages.at(-1)?.push(block);
    used += height + gapMm;
  }
  return pages.map((own) => ({ place, blocks: own }));
}

/** A block that may stand anywhere goes to the foot of the first page with room for it, else to a page of its own. */
function filledUp(
  place: Place,
  pages: readonly SheetPage[],
  block: Block,
  roomMm: number,
  measure: Measure,
): readonly SheetPage[] {
  const height = measure(block, place) + gapMm;
  const at = pages.findIndex(({ blocks }) => heightOf(blocks, place, measure) + height <= roomMm);
  if (at < 0) return [...pages, { place, blocks: [block] }];
  return pages.map((page, i) => (i === at ? { place, blocks: [...page.blocks, block] } : page));
}

/** Stripes that the first page of their list must have room for; else the list begins on the next. */
const leastLinesMm = 60;

/** What is done once has its pages, what is done at each stripe the next, with the list of stripes as far as it goes. */
function machinePages(
  plan: Plan,
  options: SheetOptions,
  look: DrawOptions,
  digest: ReturnType<typeof digestOf>,
  roomMm: number,
  measure: Measure,
): readonly SheetPage[] {
  const place = 'machine';
  const { setUp, perStripe, stripes } = machineBlocks(plan, options, look, digest);
  const { sheet: words } = options.words;
  const together = (blocks: readonly Block[]): Block => ({ kind: 'together', blocks });
  const head = (isFirst: boolean): readonly Block[] =>
    isFirst
      ? [
          { kind: 'heading', text: words.stripeByStripe },
          { kind: 'text', text: words.stripesNote, quiet: true },
        ]
      : [{ kind: 'heading', text: words.goesOn }];
  const rules = paged(place, perStripe, roomMm, measure);
  const left = roomMm - heightOf(rules.at(-1)?.blocks ?? [], place, measure) - gapMm;
  const across = acrossFor(stripes, types.machine);
  const [first] = stripes;
  const firstMm = first ? heightOfStripe(first, across, types.machine) : 0;
  const isBegunHere = left - measure(together(head(true)), place) - 1.2 >= Math.max(leastLinesMm, firstMm);
  const tables = stripeTables(
    stripes,
    across,
    (stripe) => heightOfStripe(stripe, across, types.machine),
    (table) =>
      (table === 0 && isBegunHere ? left : roomMm) - measure(together(head(table === 0)), place) - 1.2,
  );
  const lists = tables.map(
    (columns, i): Block => together([...head(i === 0), { kind: 'stripes', columns, across }]),
  );
  const own = lists.slice(isBegunHere ? 1 : 0).map((list): SheetPage => ({ place, blocks: [list] }));
  const [here] = isBegunHere ? lists : [];
  return [
    ...paged(place, setUp, roomMm, measure),
    ...rules.slice(0, -1),
    { place, blocks: [...(rules.at(-1)?.blocks ?? []), ...(here ? [here] : [])] },
    ...own,
  ];
}
