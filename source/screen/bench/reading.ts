/** Which answers are longer than what is seen of the transcript above the bench. */
import type { Said } from '../../chat/talk.ts';
import { rowsIn, type Window } from '../parts/reading.ts';
import { belowBench, benchRoom, highestBench } from './rows/lay-out.ts';

const leastSeen = 3;

/** Rows of the transcript that stay in sight above the bench; of a low window as few as a glance takes in. */
function rowsSeen({ columns, rows }: Window): number {
  const room = benchRoom(rows);
  return Math.max(leastSeen, rows - belowBench - Math.min(room, highestBench(columns, room)));
}

/** Whether what was said has to be read by itself. */
export const isLong = (lines: readonly Said[], window: Window): boolean =>
  rowsIn(lines, window.columns) > rowsSeen(window);
