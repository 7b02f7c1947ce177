/** The bags of the maker, at the prompt and on the command line: found by number or name, opened, renamed, discarded, restored. */
import { discardFolder, logFolder } from '../files/data-folders.ts';
import { discardLog, restoreLog } from '../files/discard.ts';
import { bagNamed, bagToOpen } from '../files/find-bag.ts';
import { type ListedLog, listLogs } from '../files/log-list.ts';
import { openSessionLog } from '../files/open-log.ts';
import type { FileFault, JournalFault } from '../journal/fault.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { formatFault } from '../wording/faults.ts';
import { formatFileFault, formatJournalFault } from '../wording/file-faults.ts';
import { sayState } from '../wording/logs.ts';
import type { Words } from '../wording/words.ts';
import type { Asked } from './command.ts';
import { complain, printDone } from './outcome.ts';
import { writeOffBag } from './own-shelf.ts';

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
  if (!opened.ok) return complain(explain(found.value, opened.fault, words));
  const log = opened.value;
  const before = log.session.name;
  const done = log.append({ do: 'rename', name });
  const status = log.leave();
  if (!done.ok) return complain(formatFault(done.fault, words));
  return status.state === 'saved'
    ? printDone(words.logs.renamed(before, done.value.name))
    : complain(words.logs.cannotOpen(found.value));
}

const isFileFault = (fault: JournalFault | FileFault): fault is FileFault => fault.code.startsWith('files/');

const explain = (path: string, fault: JournalFault | FileFault, words: Words): string =>
  isFileFault(fault) ? formatFileFault(fault, words) : `${path}: ${formatJournalFault(fault, words)}`;

const ended = (result: Result<string, string>): number =>
  result.ok ? printDone(result.value) : complain(result.fault);
