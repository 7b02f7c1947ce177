/** Where things are kept: the platform's folders for a program's data and settings, as env-paths and conf have them. */
import { join } from 'node:path';
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
