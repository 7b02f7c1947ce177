/** Where things lie: the platform's folders for a program's data and settings, as env-paths and conf have them, and what comes with it. */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { getAsset, isSea } from 'node:sea';
import envPaths from 'env-paths';

const folders = () => envPaths('slantwise', { suffix: '' });

export const logFolder = (): string => join(folders().data, 'bags');
/** Where the bag lies that was thrown away last. */
export const discardFolder = (): string => join(folders().data, 'discarded');
/** Where briefs are kept that the questions made. */
export const briefFolder = (): string => join(folders().data, 'briefs');
/** Beds, swatches and yarns that are kept under names. */
export const shelfPath = (): string => join(folders().data, 'shelf.json');
/** The bags that are planned together. */
export const partyPath = (): string => join(folders().data, 'party.json');
/** Answers to questions that were not asked to the end. */
export const draftPath = (): string => join(folders().data, 'new-bag.json');
/** For what can be made again. */
export const cacheFolder = (): string => folders().cache;
export const settingsFolder = (): string => folders().config;
/** All that the program writes to unasked. */
export const ownFolders = (): readonly string[] => [
  folders().data,
  logFolder(),
  briefFolder(),
  discardFolder(),
  settingsFolder(),
];

/** The log that the maker names: by option, or by the environment variable SLANTWISE_LOG; null leaves it to us. */
export const namedLog = (
  option: string | undefined,
  environment: Readonly<Record<string, string | undefined>>,
): string | null => option || environment.SLANTWISE_LOG || null;

// What comes with the program: files beside it, or parts of the one file that `npm run executable` makes.

/** The practice bag's brief. */
export const practiceText = (): string =>
  isSea()
    ? getAsset('dice-bag.json', 'utf8')
    : readFileSync(new URL('../demo/dice-bag.json', import.meta.url), 'utf8');

/** What a thread runs that writes logs: where it stands, or its text. */
export const journalWorker = (): URL | string =>
  isSea() ? getAsset('journal-worker.js', 'utf8') : new URL('./journal-worker.js', import.meta.url);
