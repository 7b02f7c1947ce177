/** What the maker's own finished bags tell. */
import { logFolder } from '../files/data-folders.ts';
import { listLogs } from '../files/log-list.ts';
import { mostLogBytes, readBytes } from '../files/read-file.ts';
import { type Pace, paceOf } from '../journal/pace.ts';
import { type Recording, readRecording } from '../journal/recording.ts';

/** Bags finished longest ago tell least about the pace of today. */
const mostBags = 10;

export const ownPace = (): Pace => paceOf(finishedBags(mostBags));

/** The finished bags used last. */
function finishedBags(most: number): readonly Recording[] {
  const finished = listLogs(logFolder()).filter(({ tally }) => tally.ok && tally.value.finished);
  return finished.slice(0, most).flatMap(({ path }) => {
    const bytes = readBytes(path, mostLogBytes);
    const recording = bytes.ok ? readRecording(bytes.value) : bytes;
    return recording.ok ? [recording.value] : [];
  });
}
