/** The maker's own shelf: what is kept of a bag, what the logs have taken of it since, and the words that print it. */
import { readYarn } from '../chat/first-run/read-yarn.ts';
import { logFolder, shelfPath } from '../files/data-folders.ts';
import { loadShelf, type ShelfFault, saveShelf } from '../files/kept-files.ts';
import { soundLogs } from '../files/log-list.ts';
import type { SessionLog } from '../files/session-log.ts';
import { type BagUse, shelfNow, takenBy, writeOff } from '../journal/shelf-now.ts';
import { couldMake } from '../planning/from-yarn.ts';
import {
  emptyShelf,
  type KeptYarn,
  nameOnShelf,
  namesOn,
  type Shelf,
  type ShelfKind,
  swatchToKeep,
  withKept,
  without,
} from '../planning/shelf.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { formatFileFault } from '../wording/file-faults.ts';
import { sayKept, sayShelf } from '../wording/shelf.ts';
import type { Words } from '../wording/words.ts';
import type { Asked } from './command.ts';
import { complain, exitCodes, printDone, printJson } from './outcome.ts';

const sayFault = (fault: ShelfFault, words: Words): string =>
  fault.code === 'shelf/damaged' ? words.shelf.damaged(fault.path) : formatFileFault(fault, words);

const bagUses = (): readonly BagUse[] =>
  [...soundLogs(logFolder())].map(({ state }) => takenBy(state.session, state.header.startedAt));

/** With what is left of each yarn by now; empty where it cannot be read. */
export function ownShelf(): Shelf {
  const shelf = loadShelf(shelfPath());
  if (!shelf.ok) return emptyShelf;
  return Object.keys(shelf.value.yarns).length === 0 ? shelf.value : shelfNow(shelf.value, bagUses());
}

export function tellShelf(words: Words): Result<readonly string[], string> {
  const shelf = loadShelf(shelfPath());
  if (!shelf.ok) return fail(sayFault(shelf.fault, words));
  const now = shelfNow(shelf.value, bagUses());
  return succeed(sayShelf(now, couldMake(now), words));
}

export function printShelf({ given, words }: Asked): number {
  if (!given.has('json')) {
    const told = tellShelf(words);
    return told.ok ? printDone(told.value.join('\n')) : complain(told.fault);
  }
  const shelf = loadShelf(shelfPath());
  if (!shelf.ok) return complain(sayFault(shelf.fault, words));
  const now = shelfNow(shelf.value, bagUses());
  printJson({ ...now, couldMake: couldMake(now) }, 2);
  return exitCodes.done;
}

type WhatToKeep = ShelfKind | 'yarns';

/** Keeps something of the bag that is open; says what is kept now, or why it is not. */
export function keepOnShelf(
  log: SessionLog,
  what: WhatToKeep,
  text: string,
  words: Words,
): Result<readonly string[], string> {
  const shelf = loadShelf(shelfPath());
  if (!shelf.ok) return fail(sayFault(shelf.fault, words));
  const things = thingsToKeep(log, what, text, words);
  if (!things.ok) return things;
  const kind = what === 'yarns' ? 'yarn' : what;
  const after = things.value.reduce((on, [name, kept]) => withKept(on, kind, name, kept), shelf.value);
  const saved = saveShelf(shelfPath(), after);
  if (!saved.ok) return fail(formatFileFault(saved.fault, words));
  const now = shelfNow(after, bagUses());
  return succeed(things.value.map(([name]) => words.shelf.kept(kind, sayKept(now, kind, name, words))));
}

type Things = readonly (readonly [name: string, kept: object])[];

function thingsToKeep(log: SessionLog, what: WhatToKeep, text: string, words: Words): Result<Things, string> {
  const { brief } = log.session.job.plan;
  switch (what) {
    case 'bed':
      return succeed([[text, brief.bed]]);
    case 'swatch': {
      const swatch = swatchToKeep(brief);
      return swatch ? succeed([[text, swatch]]) : fail(words.shelf.guessIsNoSwatch);
    }
    case 'yarns':
      return succeed([...brief.yarns].map(([name]) => [name, ownYarn(log, name) ?? {}] as const));
    case 'yarn': {
      const yarn = yarnToKeep(log, text);
      return yarn ? succeed([yarn]) : fail(words.shelf.sayOfYarn);
    }
  }
}

/** As the bag has it, which was begun with all of it. */
function ownYarn({ session, state }: SessionLog, name: string): KeptYarn | null {
  const yarn = session.job.plan.brief.yarns.get(name);
  return yarn ? { ...yarn, since: state.header.startedAt } : null;
}

/** By its name a yarn of the bag; what is told behind it counts, and the grams from now on. */
function yarnToKeep(log: SessionLog, text: string): readonly [string, KeptYarn] | null {
  const read = readYarn(text);
  if (!read.ok) return null;
  const { name, colour, metresPer100g, grams } = read.value;
  const own = ownYarn(log, name);
  const base = own ?? { colour: '', metresPer100g: 0, grams: null, pricePer100g: null, since: '' };
  const kept = {
    ...base,
    colour: colour ?? base.colour,
    metresPer100g: metresPer100g ?? base.metresPer100g,
    ...(grams === null && own ? {} : { grams, since: new Date().toISOString() }),
  };
  return kept.colour === '' || kept.metresPer100g === 0 ? null : [name, kept];
}

export function forgetOnShelf(kind: ShelfKind, typed: string, words: Words): Result<string, string> {
  const shelf = loadShelf(shelfPath());
  if (!shelf.ok) return fail(sayFault(shelf.fault, words));
  const name = nameOnShelf(shelf.value, kind, typed);
  if (name === null) return fail(words.shelf.notThere(kind, typed, namesOn(shelf.value, kind)));
  const saved = saveShelf(shelfPath(), without(shelf.value, kind, name));
  return saved.ok ? succeed(words.shelf.forgotten(kind, name)) : fail(formatFileFault(saved.fault, words));
}

/** Before its log is thrown away: a finished bag's yarn does not come back. */
export function writeOffBag(path: string): void {
  const shelf = loadShelf(shelfPath());
  const gone = [...soundLogs(logFolder())].find((log) => log.path === path);
  if (shelf.ok && gone?.state.finished)
    saveShelf(shelfPath(), writeOff(shelf.value, takenBy(gone.state.session, gone.state.header.startedAt)));
}
