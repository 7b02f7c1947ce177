import { formatFileFault } from '../chat/wording/file-faults.ts';
import { readBriefText } from '../files/brief-file.ts';
import { writeText } from '../files/text-file.ts';
import { addToCopy } from '../journal/lesson.ts';
import type { Words } from '../wording/words.ts';
import { formatCopyFault, formatLessonLineFault, readLessonLines, sayLessonWritten } from './lesson-lines.ts';
import { complain, exitCodes, print } from './outcome.ts';
import { openRecording } from './read-input.ts';

/** Writes a copy of a log with a teacher's lines in it. The log is only read. */
export function writeLesson(path: string, linesPath: string, out: string, words: Words): number {
  const recording = openRecording(path, words);
  if (!recording.ok) return complain(recording.fault);
  const text = readBriefText(linesPath);
  if (!text.ok) return complain(formatFileFault(text.fault, words));
  const additions = readLessonLines(text.value, recording.value);
  if (!additions.ok) return complain(`${linesPath}: ${formatLessonLineFault(additions.fault, words)}`);
  const copy = addToCopy(recording.value, additions.value);
  if (!copy.ok) return complain(`${linesPath}: ${formatCopyFault(copy.fault, words)}`);
  const written = writeText(out, copy.value);
  if (!written.ok) return complain(formatFileFault(written.fault, words));
  print(sayLessonWritten(out, additions.value.length, words));
  return exitCodes.done;
}
