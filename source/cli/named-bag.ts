/** Words of the command line for one bag of the maker's: rename, discard; and restore. */

import { bagToOpen } from '../files/find-bag.ts';
import { openSessionLog } from '../files/open-log.ts';
import type { FileFault, JournalFault } from '../journal/fault.ts';
import type { Result } from '../shared/result.ts';
import { formatFault } from '../wording/faults.ts';
import { formatFileFault, formatJournalFault } from '../wording/file-faults.ts';
import type { Words } from '../wording/words.ts';
import { discardNamed, restore } from './bags-in-hand.ts';
import type { Asked } from './command.ts';
import { complain, printDone } from './outcome.ts';

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
