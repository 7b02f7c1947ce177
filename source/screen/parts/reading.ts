/**
 * An answer that is longer than what is seen of the transcript stands by itself, page by page, until it has been read; then it
 * goes where all answers go. Where there is no window it is printed, and nothing waits.
 */
import type { Said } from '../../chat/talk.ts';
import { wrap } from '../../wording/page.ts';

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
const markWidth = 2;

const rowsOf = ({ text }: Said, columns: number): number => {
  const setIn = text.length - text.trimStart().length;
  return Math.max(1, wrap(text.trimStart(), Math.max(10, columns - markWidth - setIn)).length);
};

export const rowsIn = (lines: readonly Said[], columns: number): number =>
  lines.reduce((sum, line) => sum + rowsOf(line, columns), 0);

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

/** So many pages on, or back; null behind the last. */
export function pageTurned(reading: LongAnswer, window: Window, by: 1 | -1): LongAnswer | null {
  const at = Math.max(0, reading.at + by);
  return at < pagesOf(reading, window).length ? { ...reading, at } : null;
}

/** Tells how large the window is, now and whenever that changes, as long as `run` goes on. */
export async function inWindow<Value>(
  tell: (window: Window) => void,
  run: () => Promise<Value>,
): Promise<Value> {
  const { stdout } = process;
  const measure = (): void => tell({ columns: stdout.columns || 80, rows: stdout.rows || 24 });
  measure();
  stdout.on('resize', measure);
  try {
    return await run();
  } finally {
    stdout.off('resize', measure);
  }
}
