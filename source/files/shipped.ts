/** What comes with the program: files beside it, or parts of the one file that `npm run executable` makes. */
import { readFileSync } from 'node:fs';
import { getAsset, isSea } from 'node:sea';

/** The practice bag's brief. */
export const practiceText = (): string =>
  isSea()
    ? getAsset('dice-bag.json', 'utf8')
    : readFileSync(new URL('../demo/dice-bag.json', import.meta.url), 'utf8');

/** What a thread runs that writes logs: where it stands, or its text. */
export const journalWorker = (): URL | string =>
  isSea() ? getAsset('journal-worker.js', 'utf8') : new URL('./journal-worker.js', import.meta.url);
