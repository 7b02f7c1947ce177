import type { Tally } from '../../journal/check.ts';
import { count } from './numbers.ts';

/** `1 h 4 min`, `12 min`, `40 s`. */
export function formatDuration(seconds: number): string {
  if (seconds < 60) return `${Math.round(seconds)} s`;
  const minutes = Math.round(seconds / 60);
  return minutes < 60 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
}

/** What a sound log holds, in a few lines. */
export const formatTally = (tally: Tally): string =>
  [
    `${tally.name}: the log is sound.`,
    `${count(tally.events, 'event')} in ${count(tally.sittings, 'sitting')}, ${formatDuration(tally.durationS)} recorded, rests included.`,
    tally.finished ? 'The bag is finished.' : `${tally.step} of ${tally.stepCount} steps confirmed.`,
  ].join('\n');

/** One bag in a list. */
export function formatBag(tally: Tally | null, path: string, lastUsed: Date): string {
  const day = lastUsed.toISOString().slice(0, 10);
  if (!tally) return `${day}  cannot be read  ${path}`;
  const state = tally.finished ? 'finished' : `step ${tally.step + 1} of ${tally.stepCount} next`;
  return `${day}  ${tally.name}, ${state}  ${path}`;
}

/** The log named holds another bag than the brief named. */
export const sayOtherBag = (path: string, name: string): string =>
  `${path} already holds the log of ${name}, made from another brief: name another file, or leave the brief out to go on with it.`;
