import { logFolder } from '../files/data-folders.ts';
import { folderFault, listLogs, readLogFile } from '../files/log-list.ts';
import { saveSoundPart } from '../files/open-log.ts';
import { tallyLog } from '../journal/read-log.ts';
import { formatCutOff, formatFileFault, formatJournalFault } from '../wording/file-faults.ts';
import { formatBag, formatTally, sayBags } from '../wording/logs.ts';
import type { Words } from '../wording/words.ts';
import { complain, exitCodes, print, printJson } from './outcome.ts';

/** Exits 0 for a sound log; for a damaged one, saves its sound part beside it and names the line. */
export function check(path: string, json: boolean, words: Words): number {
  const found = readLogFile(path);
  if (!found.ok) return complain(formatFileFault(found.fault, words));
  const tally = tallyLog(found.value.reading);
  if (!tally.ok) {
    const saved = saveSoundPart(found.value);
    const sentence = `${path}: ${formatJournalFault(tally.fault, words)}`;
    if (!saved.ok || !saved.value) return complain(sentence);
    return complain(`${sentence} ${words.logs.soundPart(saved.value.path)}`);
  }
  for (const sign of tally.value.foreign) complain(words.logs.foreign[sign]);
  const { stepsDone, ...tallied } = tally.value;
  if (json) printJson({ ...tallied, step: stepsDone });
  else print(formatTally(tally.value, words));
  const { tornBytes, events } = tally.value;
  // The header is line 1.
  return tornBytes === 0 ? exitCodes.done : complain(`${path}: ${formatCutOff(events + 2, words)}`);
}

export function listBags(json: boolean, words: Words): number {
  const fault = folderFault(logFolder());
  if (fault) return complain(formatFileFault(fault, words));
  const logs = listLogs(logFolder());
  if (logs.length === 0) complain(sayBags(logs, words).join(' '));
  for (const [i, listed] of logs.entries()) {
    const { path, lastUsed, tally } = listed;
    const bag = tally.ok ? tally.value : null;
    if (json)
      printJson({ number: i + 1, path, lastUsedAt: lastUsed.toISOString(), ...bag, sound: bag !== null });
    else print(formatBag(i + 1, listed, words));
  }
  return exitCodes.done;
}
