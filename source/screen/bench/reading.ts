/**
 * An answer that is longer than what is seen of the transcript stands in place of the bench, page by page, until it has been
 * read; then it goes where all answers go. Where there is no window it is printed, and nothing waits.
 */
import type { Said } from '../../chat/talk.ts';
import { wrap } from '../../wording/page.ts';
import { belowBench, benchRoom, highestBench } from './rows/lay-out.ts';

export interface Window {
  readonly columns: number;
  readonly rows: number;
}

export interface LongAnswer {
  readonly lines: readonly Said[];
  /** The page that is shown, from 0. */
  readonly at: number;
}

/** Rows below a page: the choices, the prompt, and two to stay lower than the window. */
const otherRows = 4;
const leastSeen = 3;
const markWidth = 2;

const rowsOf = ({ text }: Said, columns: number): number => {
  const setIn = text.length - text.trimStart().length;
  return Math.max(1, wrap(text.trimStart(), Math.max(10, columns - markWidth - setIn)).length);
};

const rowsIn = (lines: readonly Said[], columns: number): number =>
  lines.reduce((sum, line) => sum + rowsOf(line, columns), 0);

/** Rows of the transcript that stay in sight above the bench; of a low window as few as a glance takes in. */
function rowsSeen({ columns, rows }: Window): number {
  const room = benchRoom(rows);
  return Math.max(leastSeen, rows - belowBench - Math.min(room, highestBench(columns, room)));
}

/** Whether what was said has to be read by itself. */
export const isLong = (lines: readonly Said[], window: Window): boolean =>
  rowsIn(lines, window.columns) > rowsSeen(window);

/** As many lines to a page as the window has rows for; never none. */
export function pagesOf({ lines }: LongAnswer, { columns, rows }: Window): readonly (readonly Said[])[] {
  const room = Math.max(1, rows - otherRows);
  const pages: Said[][] = [];
  let used = room;
  for (const line of lines) {
    const own = rowsOf(line, columns);
    if (used + own > room) {
      pages.push([]);
      used = 0;
    }
    pages.at(-1)?.push(line);
    used += own;
  }
  return pages;
}
