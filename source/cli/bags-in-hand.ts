/** The bags of the maker: found by number or name, opened, called something else, thrown away and brought back. */

import { discardFolder, logFolder } from '../files/data-folders.ts';
import { discardLog, restoreLog } from '../files/discard.ts';
import { bagNamed } from '../files/find-bag.ts';
import { type ListedLog, listLogs } from '../files/log-list.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { formatFileFault } from '../wording/file-faults.ts';
import { sayState } from '../wording/logs.ts';
import type { Words } from '../wording/words.ts';
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
