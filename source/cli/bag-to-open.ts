import { logFolder } from '../files/data-folders.ts';
import { findBag } from '../files/find-bag.ts';
import { listLogs } from '../files/log-list.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import type { Words } from '../wording/words.ts';

/** The log of the bag that a maker names, or why there is none, in a sentence. `open`: the log that is open now. */
export function bagToOpen(wanted: string, open: string | null, { logs: say }: Words): Result<string, string> {
  const logs = listLogs(logFolder());
  const found = findBag(logs, wanted);
  if (found.is === 'none') return fail(say.noSuchBag(wanted, logs.length));
  if (found.is === 'several') return fail(say.severalBags(wanted, found.names));
  const { path, tally } = found.bag;
  if (!tally.ok) return fail(say.cannotOpen(path));
  return path === open ? fail(say.openAlready(tally.value.name)) : succeed(path);
}
