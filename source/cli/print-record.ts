import { formatRecord, sayAnother } from '../chat/wording/record.ts';
import { recordOf } from '../journal/record.ts';
import type { Words } from '../wording/words.ts';
import { complain, exitCodes, print, printJson } from './outcome.ts';
import { openRecording } from './read-input.ts';
import { recordJson } from './record-json.ts';

/** Prints the record of a bag: time, size, yarn, needles, dates, notes. */
export function printRecord(path: string, json: boolean, words: Words): number {
  const recording = openRecording(path, words);
  if (!recording.ok) return complain(recording.fault);
  const record = recordOf(recording.value);
  if (json) printJson(recordJson(recording.value, record, words), 2);
  else print(`${formatRecord(recording.value, record, words)}\n\n${sayAnother(path, words)}`);
  return exitCodes.done;
}
