/**
 * The pages of a sheet: each place of work begins a page of its own, and a page is filled from the top with blocks that are
 * never split, measured in the widest of common fonts. So pages break by rule, whatever font a printer has.
 */
import type { Plan } from '../../planning/plan.ts';
import { layOutJob } from '../../steps/job.ts';
import type { SheetWords } from '../../wording/sheet.en.ts';
import { patchFills } from '../svg/fills.ts';
import { wrapText } from '../svg/text-width.ts';
import type { DrawOptions } from '../terminal/picture.ts';
import { inSentence, plainText } from '../text.ts';
import { yarnSigns } from '../yarn-signs.ts';
import {
  type Block,
  columnMm,
  marginMm,
  type Sheet,
  type SheetOptions,
  type SheetPage,
  type Station,
  types,
} from './block.ts';
import { classList } from './class.ts';
import { deskBlocks, deskRooms } from './desk.ts';
import { type Digest, digestOf } from './digest.ts';
import { sizeFor } from './laid.ts';
import { closingBlocks, cordBlocks, foldRooms } from './lap.ts';
import { layBlock } from './lay-out.ts';
import { heightOfStripe } from './lay-tables.ts';
import { machineBlocks } from './machine.ts';
import { type StripeLines, stripeTables } from './stripe-lines.ts';

export function sheetOf(plan: Plan, options: SheetOptions, pageMm: number): Sheet {
  const { sheet: words } = options.words;
  const digest = digestOf(layOutJob(plan), options.cautionOf, options.words);
  const title = plainText(options.name ?? plan.brief.name);
  const measure = measureFor(plan);
  const roomOf = (place: Station): number =>
    pageMm - 2 * marginMm.top - headerMm(title, place, place === 'desk');
  return {
    title,
    date: plainText(options.date),
    lead: words.lead(plan.size.widthCm, plan.size.depthCm),
    pages: [
      ...deskPages(plan, options, roomOf('desk'), measure),
      ...machinePages(plan, options, digest, roomOf('machine'), measure),
      ...lapPages(plan, options, digest, roomOf('lap'), measure),
    ],
  };
}

/** For files of text, which have drawings in letters. */
const look: DrawOptions = {
  columns: 72,
  rows: 26,
  colour: 'none',
  glyphs: 'ascii',
};

/** The bag is closed on the first page, its pictures as large as that allows; the cord and what may go wrong have the next. */
const lapPages = (
  plan: Plan,
  options: SheetOptions,
  digest: Digest,
  roomMm: number,
  measure: Measure,
): readonly SheetPage[] => [
  ...largest(
    foldRooms,
    (foldMm) => paged('lap', closingBlocks(plan, options, look, digest, foldMm), roomMm, measure),
    (fitting, fewest) => fitting.length === fewest.length,
  ),
  ...paged('lap', cordBlocks(plan, options, look, digest), roomMm, measure),
];

/** The pictures as large as one page allows. */
function deskPages(
  plan: Plan,
  options: SheetOptions,
  roomMm: number,
  measure: Measure,
): readonly SheetPage[] {
  const blocks = largest(
    deskRooms,
    (highMm) => deskBlocks(plan, options, look, highMm),
    (own) => heightOf(own, 'desk', measure) <= roomMm,
  );
  const left = roomMm - heightOf(blocks, 'desk', measure) - types.desk.gap;
  const notes = notesIn(left, options.words.sheet.notes, measure);
  const last = options.class ? [classList(options.words)] : notes;
  return paged('desk', [...blocks, ...last], roomMm, measure);
}

/** What comes of the first of the rooms, which go from large to small, that will do; else of the smallest. */
function largest<Room, T>(
  rooms: readonly Room[],
  made: (room: Room) => T,
  willDo: (one: T, least: T) => boolean,
): T {
  const least = made(rooms.at(-1) as Room);
  // Where the smallest will not do none does.
  if (!willDo(least, least)) return least;
  for (const room of rooms) {
    const one = made(room);
    if (willDo(one, least)) return one;
  }
  return least;
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

type Measure = (block: Block, place: Station) => number;

const measureFor = (plan: Plan): Measure => {
  const fills = patchFills(plan);
  return (block, place) => layBlock(block, { widthMm: columnMm, type: types[place], fills }).heightMm;
};

const heightOf = (blocks: readonly Block[], place: Station, measure: Measure): number =>
  blocks.reduce((sum, block) => sum + measure(block, place) + types[place].gap, -types[place].gap);

/** The first page of all has the ornament and a line on what the bag is. */
export const headerMm = (title: string, place: Station, isFirst: boolean): number => {
  const { size, lines } = titleSize(title, place);
  return (
    Math.max(lines * size * 1.15, 2 * types.desk.leading) +
    2.2 +
    (isFirst ? types.desk.leading + 5.6 : 0) +
    types[place].gap
  );
};

/** `in the lap, 2 of 2`. */
export function stationOf(
  pages: readonly SheetPage[],
  index: number,
  { places, pageOf }: SheetWords,
): string {
  const { place } = pages[index] as SheetPage;
  const own = pages.flatMap((page, i) => (page.place === place ? [i] : []));
  return pageOf(places[place], [own.indexOf(index) + 1, own.length]);
}

/** A long title is written smaller. */
export function titleSize(title: string, place: Station): { readonly size: number; readonly lines: number } {
  const sizes = [1, 0.75, 0.58, 0.46].map((share) => types[place].title * share);
  const size = sizeFor(title, titleMm, 2, sizes);
  return { size, lines: wrapText(title, size, titleMm).length };
}
export const titleMm = 106;

function paged(
  place: Station,
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
    used += height + types[place].gap;
  }
  return pages.map((own) => ({ place, blocks: own }));
}

/** Stripes that the first page of their list must have room for; else the list begins on the next. */
const leastLinesMm = 60;

/** What is done once and at each stripe, and in the rest of the last page the list of stripes, as far as it goes. */
function machinePages(
  plan: Plan,
  options: SheetOptions,
  digest: Digest,
  roomMm: number,
  measure: Measure,
): readonly SheetPage[] {
  const place = 'machine';
  const { first, stripes, across } = machineBlocks(plan, options, look, digest);
  const { sheet: words } = options.words;
  const named = [...yarnSigns(plan, 'print').values()].map(
    ({ letter, yarn }) => `${letter} ${inSentence(yarn)}`,
  );
  const listHead = (isFirst: boolean): Block => ({
    kind: 'run',
    head: isFirst ? words.stripeByStripe : words.goesOn,
    items: [{ text: words.stripesNote(named), mind: null }],
    mind: '',
  });
  const pages = paged(place, first, roomMm, measure);
  const left = roomMm - heightOf(pages.at(-1)?.blocks ?? [], place, measure) - types[place].gap;
  const stripeMm = (stripe: StripeLines): number => heightOfStripe(stripe, across, types.machine);
  const headMm = (isFirst: boolean): number => measure(listHead(isFirst), place) + 1.2;
  const isBegunHere = left - headMm(true) >= Math.max(leastLinesMm, stripes[0] ? stripeMm(stripes[0]) : 0);
  const tables = stripeTables(
    stripes,
    across,
    stripeMm,
    (table) => (table === 0 && isBegunHere ? left : roomMm) - headMm(table === 0),
  );
  const lists = tables.map(
    (columns, i): Block => ({
      kind: 'together',
      blocks: [listHead(i === 0), { kind: 'stripes', columns, across }],
    }),
  );
  const own = lists.slice(isBegunHere ? 1 : 0).map((list): SheetPage => ({ place, blocks: [list] }));
  const [here] = isBegunHere ? lists : [];
  return [
    ...pages.slice(0, -1),
    { place, blocks: [...(pages.at(-1)?.blocks ?? []), ...(here ? [here] : [])] },
    ...own,
  ];
}
