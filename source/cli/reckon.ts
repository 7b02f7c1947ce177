import { recordJson } from '../chat/record-json.ts';
import { formatFileFault } from '../chat/wording/file-faults.ts';
import { formatRecord, sayAnother } from '../chat/wording/reckoning.ts';
import { writeBriefFile } from '../files/brief-file.ts';
import { settingsFolder } from '../files/data-folders.ts';
import { loadSettings } from '../files/settings-file.ts';
import { reckon } from '../journal/reckoning.ts';
import { unitsFor } from '../shared/units.ts';
import { complain, exitCodes } from './outcome.ts';
import { openRecording } from './read-recording.ts';

export interface ReckonOptions {
  readonly json: boolean;
  /** A new file for the brief of the bag. */
  readonly brief: string | undefined;
}

/** Prints the record of a bag: time, size, yarn, needles, dates, notes. */
export function printRecord(path: string, { json, brief }: ReckonOptions): number {
  const recording = openRecording(path);
  if (!recording.ok) return complain(recording.fault);
  const reckoning = reckon(recording.value);
  if (brief !== undefined) {
    const written = writeBriefFile(brief, recording.value.header.brief);
    if (!written.ok) return complain(formatFileFault(written.fault));
  }
  const units = unitsFor(loadSettings(settingsFolder()).settings.units);
  const text = json
    ? JSON.stringify(recordJson(recording.value, reckoning), null, 2)
    : `${formatRecord(recording.value, reckoning, units)}\n\n${sayAnother(path)}`;
  process.stdout.write(`${text}\n`);
  return exitCodes.done;
}
