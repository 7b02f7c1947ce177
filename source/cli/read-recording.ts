import { formatFileFault } from '../chat/wording/file-faults.ts';
import { formatJournalFault } from '../chat/wording/journal-faults.ts';
import { mostLogBytes, readBytes } from '../files/read-file.ts';
import { type Recording, readRecording } from '../journal/recording.ts';
import { fail, type Result, succeed } from '../shared/result.ts';

/** The recording in a log, or one sentence that names the file and what is wrong in it. */
export function openRecording(path: string): Result<Recording, string> {
  const bytes = readBytes(path, mostLogBytes);
  if (!bytes.ok) return fail(formatFileFault(bytes.fault));
  const recording = readRecording(bytes.value);
  return recording.ok ? succeed(recording.value) : fail(`${path}: ${formatJournalFault(recording.fault)}`);
}
