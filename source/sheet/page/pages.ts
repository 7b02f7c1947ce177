/**
 * The pages of a sheet: each place of work begins a page of its own, and a page is filled from the top with blocks that are
 * never split, measured in the widest of common fonts. So pages break by rule, whatever font a printer has.
 */
import type { Plan } from '../../planning/plan.ts';
import { layOutJob } from '../../steps/job.ts';
import type { Words } from '../../wording/words.ts';
import { wrapText } from '../svg/element.ts';
import type { DrawOptions } from '../terminal/picture.ts';
import { plainText } from '../text.ts';
import {
  type Blank,
  type Block,
  marginMm,
  type Sheet,
  type SheetOptions,
  type SheetPage,
  type Station,
  together,
  types,
} from './block.ts';
import { deskBlocks, deskPictures, deskRooms } from './desk.ts';
import { type Digest, digestOf } from './digest.ts';
import { sizeFor } from './laid.ts';
import { closingBlocks, cordBlocks, foldBlock, foldRooms } from './lap.ts';
import { heightOf, largest, type Measure, measureFor, notesIn, paged } from './lay-out.ts';
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
  const rest = closingBlocks(plan, options, look, digest);
  return largest(
    foldRooms,
    (foldMm) => {
      const closing = [foldBlock(plan, options, look, foldMm), ...rest];
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
  const rest = deskBlocks(plan, options);
  const own = options.class ? [swatchBlock(plan, options.words)] : [];
  const fits = (blocks: readonly Block[]): boolean => heightOf(blocks, 'desk', measure) <= roomMm;
  const drawnFor = (more: readonly Block[]): readonly Block[] =>
    largest(
      deskRooms,
      (highMm) => [deskPictures(plan, options, look, highMm), ...rest],
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
  { places, pageOf }: Words['sheet'],
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

/** Lines for pupils on the list. */
const listed = 24;

/** On the sheet that each pupil gets. */
export const swatchBlock = (plan: Plan, words: Words): Block =>
  together(
    words.sheet.mySwatch,
    [{ kind: 'blanks', blanks: blanksFor(plan, words) }],
    words.sheet.mySwatchNote,
  );

/** For whoever teaches. */
export const classList = ({ sheet }: Words): Block =>
  together(sheet.classList, [{ kind: 'register', titles: sheet.classListTitles, count: listed }]);

/** The sums a pupil does with their own swatch; the counts of the plan stay. */
function blanksFor(
  { stitches, rows, shapings, hem }: Plan,
  { sheet: { blanks }, amounts }: Words,
): readonly Blank[] {
  const andHem = hem ? ` + ${amounts.decimal(hem.rows + 0.5)} × h` : '';
  return [
    { label: blanks.name, value: '' },
    { label: blanks.stitches, value: blanks.over },
    { label: blanks.rows, value: blanks.overHeight },
    { label: blanks.stitchWidth, value: blanks.widthByStitches, isSum: true },
    { label: blanks.rowHeight, value: blanks.heightByRows, isSum: true },
    { label: blanks.acrossA, value: `${shapings} × w =`, isSum: true },
    { label: blanks.alongB, value: `${rows} × h =`, isSum: true },
    { label: blanks.mouthC, value: '√(a × a + b × b) =', isSum: true },
    { label: blanks.wide, value: 'c ÷ 2 =', isSum: true },
    { label: blanks.deep, value: `${stitches - 1} × w × b ÷ c${andHem} =`, isSum: true },
  ];
}
