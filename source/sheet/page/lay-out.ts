/**
 * Blocks as they are drawn on a page, and so how high they are; and pages, filled from the top with blocks that are never split.
 * HTML keeps to the same sizes, so that its pages fill the same way.
 */

import type { Plan } from '../../planning/plan.ts';
import { palette, placed, textAt } from '../svg/element.ts';
import { patchFills } from '../svg/fills.ts';
import { type Block, besideGapMm, columnMm, type SheetPage, type Station, types } from './block.ts';
import {
  type Laid,
  type Lettering,
  mixedParagraph,
  type Piece,
  padded,
  paragraph,
  ruled,
  sideBySide,
  stack,
} from './laid.ts';
import { stripeList } from './lay-stripes.ts';
import {
  blankTable,
  detailTable,
  linesToWriteOn,
  numbers,
  type Room,
  register,
  yarnTable,
} from './lay-tables.ts';

const tight = 0.6;

export function layBlock(block: Block, room: Room): Laid {
  const { widthMm, type } = room;
  const plain: Lettering = { size: type.size, leading: type.leading };
  switch (block.kind) {
    case 'heading':
      return heading(block.text, block.note ?? '', room);
    case 'text':
      return paragraph(block.text, widthMm, block.quiet ? { ...plain, colour: palette.quiet } : plain);
    case 'ruled':
      return padded(ruled(block.text, widthMm, plain), 1.2, 0);
    case 'steps':
      return stack(
        block.items.map(({ text, mind }, i) =>
          step(i + 1, text, mind === null ? null : `${block.mind} ${mind}`, room),
        ),
        tight,
      );
    case 'run':
      return mixedParagraph(piecesOf(block), widthMm, plain);
    case 'terms':
      return stack(
        block.terms.map(([word, means]) =>
          mixedParagraph([{ text: `${word}:`, bold: true }, { text: means }], widthMm, plain),
        ),
        tight,
      );
    case 'figure':
      return { heightMm: block.drawing.heightMm, draw: (at) => placed(block.drawing, at) };
    case 'numbers':
      return numbers(block.numbers, room);
    case 'facts':
      return detailTable(block.facts, room);
    case 'yarns':
      return yarnTable(block.titles, block.rows, room);
    case 'stripes':
      return stripeList(block.columns, block.across, room);
    case 'blanks':
      return blankTable(block.blanks, room);
    case 'register':
      return register(block.titles, block.count, room);
    case 'lines':
      return linesToWriteOn(block.count, room);
    case 'beside': {
      let left = 0;
      return sideBySide(
        block.parts.map(({ widthMm: own, blocks }) => {
          const at = left;
          left += own + besideGapMm;
          return [
            at,
            stack(
              blocks.map((one) => layBlock(one, { ...room, widthMm: own })),
              1.2,
            ),
          ];
        }),
      );
    }
    case 'together':
      return stack(
        block.blocks.map((one) => layBlock(one, room)),
        1.2,
      );
  }
}

/** The heading, then each step after its number, its caution behind it. */
export const piecesOf = ({ head, items, mind: word }: Block & { kind: 'run' }): readonly Piece[] => [
  ...(head === null ? [] : [{ text: `${head}.`, bold: true } as const]),
  ...items.flatMap(({ text, mind }, i): readonly Piece[] => [
    ...(items.length > 1 ? [{ text: `${i + 1}`, bold: true } as const] : []),
    { text },
    ...(mind === null ? [] : [{ text: word, bold: true } as const, { text: mind }]),
  ]),
];

function heading(text: string, note: string, { widthMm, type }: Room): Laid {
  const big = paragraph(text, widthMm, { size: type.heading, leading: type.heading * 1.25, serif: true });
  if (note === '') return big;
  const small = paragraph(note, widthMm, { size: type.size, leading: type.leading, colour: palette.quiet });
  return stack([big, small], 0);
}

/** `1` and a sentence, its further lines set in, the caution below it beside a rule. */
function step(number: number, text: string, mind: string | null, { widthMm, type }: Room): Laid {
  const plain: Lettering = { size: type.size, leading: type.leading };
  const inset = type.size * 2;
  const body = stack(
    [
      paragraph(text, widthMm - inset, plain),
      ...(mind === null ? [] : [ruled(mind, widthMm - inset, plain)]),
    ],
    0,
  );
  return {
    heightMm: body.heightMm,
    draw: ([x, y]) =>
      textAt([x + inset - type.size * 0.5, y + (type.leading + type.size * 0.72) / 2], `${number}`, {
        size: type.size,
        anchor: 'end',
        weight: 700,
      }) + body.draw([x + inset, y]),
  };
}

export type Measure = (block: Block, place: Station) => number;

/** A block is measured once, however many pages it is tried on. */
export const measureFor = (plan: Plan): Measure => {
  const fills = patchFills(plan);
  const known = new Map<Station, WeakMap<Block, number>>();
  return (block, place) => {
    const own = known.get(place) ?? new WeakMap<Block, number>();
    known.set(place, own);
    const height =
      own.get(block) ?? layBlock(block, { widthMm: columnMm, type: types[place], fills }).heightMm;
    own.set(block, height);
    return height;
  };
};

export const heightOf = (blocks: readonly Block[], place: Station, measure: Measure): number =>
  blocks.reduce((sum, block) => sum + measure(block, place) + types[place].gap, -types[place].gap);

export function paged(
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

/** What comes of the first of the rooms, which go from large to small, that will do; else of the smallest. */
export function largest<Room, T>(
  rooms: readonly Room[],
  made: (room: Room) => T,
  willDo: (one: T, least: T) => boolean,
): T {
  const least = made(rooms.at(-1) as Room);
  // Where the smallest will not do none does.
  if (!willDo(least, least)) return least;
  for (const room of rooms.slice(0, -1)) {
    const one = made(room);
    if (willDo(one, least)) return one;
  }
  return least;
}

/** Lines to write on, as many as the rest of the page has room for. */
export function notesIn(roomMm: number, text: string, measure: Measure): readonly Block[] {
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
