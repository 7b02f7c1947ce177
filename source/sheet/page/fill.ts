/** Pages are filled from the top with blocks that are never split, measured as they are drawn. */
import type { Plan } from '../../planning/plan.ts';
import { patchFills } from '../svg/fills.ts';
import { type Block, columnMm, type SheetPage, type Station, types } from './block.ts';
import { layBlock } from './lay-out.ts';

export type Measure = (block: Block, place: Station) => number;

export const measureFor = (plan: Plan): Measure => {
  const fills = patchFills(plan);
  return (block, place) => layBlock(block, { widthMm: columnMm, type: types[place], fills }).heightMm;
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
  for (const room of rooms) {
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
