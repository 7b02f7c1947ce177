/** A bag among the logs, as a maker names it. */

import { existsSync } from 'node:fs';
import { fail, type Result, succeed } from '../shared/result.ts';
import type { Words } from '../wording/words.ts';
import { logFolder } from './data-folders.ts';
import { type ListedLog, listLogs, slugOf } from './log-list.ts';

export type FoundBag =
  | { readonly is: 'one'; readonly bag: ListedLog }
  | { readonly is: 'none' }
  | { readonly is: 'several'; readonly names: readonly string[] };

/** By number in the list, by whole name, or by a part of a name that only one has. Of bags of one name the one used last. */
function findBag(logs: readonly ListedLog[], wanted: string): FoundBag {
  const numbered = /^\d+$/.test(wanted) ? logs[Number(wanted) - 1] : undefined;
  if (numbered) return { is: 'one', bag: numbered };
  const slug = slugOf(wanted);
  const named = logs.flatMap((bag) => (bag.tally.ok ? [{ bag, name: bag.tally.value.name }] : []));
  const whole = named.find(({ name }) => slugOf(name) === slug);
  if (whole) return { is: 'one', bag: whole.bag };
  const partly = named.filter(({ name }) => slugOf(name).includes(slug));
  const names = [...new Set(partly.map(({ name }) => name))];
  if (names.length > 1) return { is: 'several', names };
  return partly[0] ? { is: 'one', bag: partly[0].bag } : { is: 'none' };
}

/** The bag that a maker names, or why there is none, in a sentence. */
export function bagNamed(wanted: string, { logs: say }: Words): Result<ListedLog, string> {
  const logs = listLogs(logFolder());
  const found = findBag(logs, wanted);
  if (found.is === 'none') return fail(say.noSuchBag(wanted, logs.length));
  return found.is === 'several' ? fail(say.severalBags(wanted, found.names)) : succeed(found.bag);
}

/** The log of the bag to go on with. `open`: the log that is open now, which a name that another has too does not mean. */
export function bagToOpen(wanted: string, open: string | null, words: Words): Result<string, string> {
  const found = bagNamed(wanted, words);
  if (!found.ok) return found;
  const bag = found.value.path === open ? namesake(wanted, found.value) : found.value;
  if (!bag.tally.ok) return fail(words.logs.cannotOpen(bag.path));
  return bag.path === open ? fail(words.logs.openAlready(bag.tally.value.name)) : succeed(bag.path);
}

/** Another bag of the same name where there is one; a number means one bag alone. */
function namesake(wanted: string, bag: ListedLog): ListedLog {
  if (/^\d+$/.test(wanted)) return bag;
  const found = findBag(
    listLogs(logFolder()).filter(({ path }) => path !== bag.path),
    wanted,
  );
  return found.is === 'one' ? found.bag : bag;
}

/** A log by its file; where there is no such file, by the number or name of its bag. */
export function logNamed(file: string, words: Words): string {
  if (existsSync(file)) return file;
  const found = bagNamed(file, words);
  return found.ok ? found.value.path : file;
}
