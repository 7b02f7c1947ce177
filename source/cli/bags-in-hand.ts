/** The bags of the maker, at the prompt and on the command line: found by number or name, checked, listed, renamed, discarded, restored. */
import { discardFolder, logFolder } from '../files/data-folders.ts';
import { discardLog, restoreLog } from '../files/kept-files.ts';
import {
  bagNamed,
  bagToOpen,
  folderFault,
  type ListedLog,
  listLogs,
  readLogFile,
} from '../files/log-list.ts';
import { openSessionLog, saveSoundPart } from '../files/open-log.ts';
import { tallyLog } from '../journal/read-log.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { formatFault } from '../wording/faults.ts';
import { formatFileFault } from '../wording/file-faults.ts';
import { formatBag, formatTally, sayBags, sayState } from '../wording/logs.ts';
import type { Words } from '../wording/words.ts';
import type { Asked } from './command.ts';
import { complain, exitCodes, print, printDone, printJson } from './outcome.ts';
import { writeOffBag } from './own-shelf.ts';
import { sayCutOff, sayLogFault } from './read-input.ts';

/** What is about to be thrown away: its name and how far it is, or its file where that is all that can be told. */
const sayBag = ({ path, tally }: ListedLog, words: Words): string =>
  tally.ok ? sayState(tally.value, words) : path;

/** Asks, and only then throws a bag away; a sentence in either case. `ask`: the question. */
export function discardNamed(
  wanted: string,
  isSure: boolean,
  ask: (what: string) => string,
  words: Words,
): Result<string, string> {
  const found = bagNamed(wanted, words);
  if (!found.ok) return found;
  const what = sayBag(found.value, words);
  return isSure ? discard(found.value.path, what, words) : succeed(ask(what));
}

export function discard(path: string, what: string, words: Words): Result<string, string> {
  writeOffBag(path);
  const done = discardLog(path, discardFolder());
  return done.ok ? succeed(words.logs.discarded(what)) : fail(formatFileFault(done.fault, words));
}

/** Brings back what was thrown away last. */
export function restore(words: Words): Result<string, string> {
  const back = restoreLog(discardFolder(), logFolder());
  if (!back.ok) return fail(formatFileFault(back.fault, words));
  if (back.value === null) return fail(words.logs.nothingToRestore);
  const found = listLogs(logFolder()).find(({ path }) => path === back.value);
  return succeed(words.logs.restored(found ? sayBag(found, words) : back.value));
}

export const discardBag = ({ operands: [bag = ''], given, words }: Asked): number =>
  ended(discardNamed(bag, given.has('yes'), (what) => words.logs.askDiscardOutside(what, bag), words));

export const restoreBag = ({ words }: Asked): number => ended(restore(words));

export function renameBag({ operands: [bag = '', name = ''], words }: Asked): number {
  const found = bagToOpen(bag, null, words);
  if (!found.ok) return complain(found.fault);
  const opened = openSessionLog({ path: found.value });
  if (!opened.ok) return complain(sayLogFault(found.value, opened.fault, words));
  const log = opened.value;
  const before = log.session.name;
  const done = log.append({ do: 'rename', name });
  const status = log.leave();
  if (!done.ok) return complain(formatFault(done.fault, words));
  return status.state === 'saved'
    ? printDone(words.logs.renamed(before, done.value.name))
    : complain(words.logs.cannotOpen(found.value));
}

const ended = (result: Result<string, string>): number =>
  result.ok ? printDone(result.value) : complain(result.fault);

/** Exits 0 for a sound log; for a damaged one, saves its sound part beside it and names the line. */
export function check(path: string, json: boolean, words: Words): number {
  const found = readLogFile(path);
  if (!found.ok) return complain(formatFileFault(found.fault, words));
  const tally = tallyLog(found.value.reading);
  if (!tally.ok) {
    const saved = saveSoundPart(found.value);
    const sentence = sayLogFault(path, tally.fault, words);
    if (!saved.ok || !saved.value) return complain(sentence);
    return complain(`${sentence} ${words.logs.soundPart(saved.value.path)}`);
  }
  for (const sign of tally.value.foreign) complain(words.logs.foreign[sign]);
  const { stepsDone, ...tallied } = tally.value;
  if (json) printJson({ ...tallied, step: stepsDone });
  else print(formatTally(tally.value, words));
  const { tornBytes, events } = tally.value;
  const cutOff = sayCutOff(path, tornBytes, events, words);
  return cutOff === null ? exitCodes.done : complain(cutOff);
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
