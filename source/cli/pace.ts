import { logFolder } from '../files/data-folders.ts';
import { listLogs } from '../files/log-list.ts';
import { mostLogBytes, readBytes } from '../files/read-file.ts';
import { type BagRecord, recordOf, typicalRowMinutes } from '../journal/record.ts';
import { readRecording } from '../journal/recording.ts';

/** Bags finished longest ago tell least about the pace of today. */
const mostBags = 10;

/** Minutes that a row takes in the maker's own finished bags; null where there are none. */
export function ownRowMinutes(): number | null {
  const finished = listLogs(logFolder()).filter(({ tally }) => tally.ok && tally.value.finished);
  return typicalRowMinutes(finished.slice(0, mostBags).flatMap(({ path }) => recordOfLog(path)));
}

function recordOfLog(path: string): readonly BagRecord[] {
  const bytes = readBytes(path, mostLogBytes);
  const recording = bytes.ok ? readRecording(bytes.value) : bytes;
  return recording.ok ? [recordOf(recording.value)] : [];
}
