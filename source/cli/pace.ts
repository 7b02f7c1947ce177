import { logFolder } from '../files/data-folders.ts';
import { listLogs } from '../files/log-list.ts';
import { mostLogBytes, readBytes } from '../files/read-file.ts';
import { type Reckoning, reckon, typicalRowMinutes } from '../journal/reckoning.ts';
import { readRecording } from '../journal/recording.ts';

/** Bags finished longest ago tell least about the pace of today. */
const mostBags = 10;

/** Minutes that a row takes in the maker's own finished bags; null where there are none. */
export function ownRowMinutes(): number | null {
  const finished = listLogs(logFolder()).filter(({ tally }) => tally.ok && tally.value.finished);
  return typicalRowMinutes(finished.slice(0, mostBags).flatMap(({ path }) => reckonLog(path)));
}

function reckonLog(path: string): readonly Reckoning[] {
  const bytes = readBytes(path, mostLogBytes);
  const recording = bytes.ok ? readRecording(bytes.value) : bytes;
  return recording.ok ? [reckon(recording.value)] : [];
}
