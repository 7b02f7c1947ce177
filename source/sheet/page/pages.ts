/**
 * The pages of a sheet: each place of work begins a page of its own, and a page is filled from the top with blocks that are
 * never split, measured in the widest of common fonts. So pages break by rule, whatever font a printer has.
 */
import type { Plan } from '../../planning/plan.ts';
import { layOutJob } from '../../steps/job.ts';
import type { SheetWords } from '../../wording/sheet.en.ts';
import { wrapText } from '../svg/text-width.ts';
import type { DrawOptions } from '../terminal/picture.ts';
import { plainText } from '../text.ts';
import {
  type Block,
  marginMm,
  type Sheet,
  type SheetOptions,
  type SheetPage,
  type Station,
  types,
} from './block.ts';
import { classList, swatchBlock } from './class.ts';
import { deskBlocks, deskRooms } from './desk.ts';
import { type Digest, digestOf } from './digest.ts';
import { heightOf, largest, type Measure, measureFor, notesIn, paged } from './fill.ts';
import { sizeFor } from './laid.ts';
import { closingBlocks, cordBlocks, foldRooms } from './lap.ts';
import { machinePages } from './machine.ts';

/** For files of text, which have drawings in letters. */
const look: DrawOptions = {
  columns: 72,
  rows: 26,
  colour: 'none',
  glyphs: 'ascii',
};

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
      ...machinePages(plan, options, look, digest, roomOf('machine'), measure),
      ...lapPages(plan, options, digest, roomOf('lap'), measure),
    ],
  };
}

/**
 * The bag is closed on the first page, its pictures as large as that allows; the cord and what may go wrong have the next.
 * Where closing it takes more than a page, the cord follows at once.
 */
function lapPages(
  plan: Plan,
  options: SheetOptions,
  digest: Digest,
  roomMm: number,
  measure: Measure,
): readonly SheetPage[] {
  const pagesOf = (blocks: readonly Block[]): readonly SheetPage[] => paged('lap', blocks, roomMm, measure);
  const cord = cordBlocks(plan, options, look, digest);
  return largest(
    foldRooms,
    (foldMm) => {
      const closing = closingBlocks(plan, options, look, digest, foldMm);
      const closed = pagesOf(closing);
      return closed.length === 1 ? [...closed, ...pagesOf(cord)] : pagesOf([...closing, ...cord]);
    },
    (fitting, fewest) => fitting.length <= fewest.length,
  );
}

/** The pictures as large as one page allows. */
function deskPages(
  plan: Plan,
  options: SheetOptions,
  roomMm: number,
  measure: Measure,
): readonly SheetPage[] {
  const own = options.class ? [swatchBlock(plan, options.words)] : [];
  const fits = (blocks: readonly Block[]): boolean => heightOf(blocks, 'desk', measure) <= roomMm;
  const drawnFor = (more: readonly Block[]): readonly Block[] =>
    largest(
      deskRooms,
      (highMm) => deskBlocks(plan, options, look, highMm),
      (blocks) => fits([...blocks, ...more]),
    );
  const small = drawnFor(own);
  const blocks = [...(fits([...small, ...own]) ? small : drawnFor([])), ...own];
  const left = roomMm - heightOf(blocks, 'desk', measure) - types.desk.gap;
  const notes = notesIn(left, options.words.sheet.notes, measure);
  const last = options.class ? [classList(options.words)] : notes;
  return paged('desk', [...blocks, ...last], roomMm, measure);
}

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
