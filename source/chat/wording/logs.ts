import type { Tally } from '../../journal/read-log.ts';
import type { Words } from '../../wording/words.ts';

/** `1 h 4 min`, `12 min`, `40 s`. */
export function formatDuration(seconds: number): string {
  if (seconds < 60) return `${Math.round(seconds)} s`;
  const minutes = Math.round(seconds / 60);
  return minutes < 60 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
}

/** What a sound log holds, in a few lines. */
export const formatTally = (tally: Tally, words: Words): string =>
  [
    words.say`${tally.name}: the log is sound.`,
    words.say`${words.count(tally.events, 'event')} in ${words.count(tally.sittings, 'sitting')}, ${formatDuration(tally.durationS)} recorded, rests included.`,
    tally.finished
      ? words.say`The bag is finished.`
      : words.say`${tally.step} of ${tally.stepCount} steps confirmed.`,
  ].join('\n');

/** One bag in a list. */
export function formatBag(number: number, { tally: read, path, lastUsed }: Bag, words: Words): string {
  const tally = read.ok ? read.value : null;
  const day = lastUsed.toISOString().slice(0, 10);
  const at = String(number).padStart(2);
  if (!tally) return `${at}  ${day}  ${words.say`cannot be read`}  ${path}`;
  const state = tally.finished
    ? words.say`finished`
    : words.say`step ${tally.step + 1} of ${tally.stepCount} next`;
  return `${at}  ${day}  ${tally.name}, ${state}  ${path}`;
}

export interface Bag {
  readonly path: string;
  readonly lastUsed: Date;
  readonly tally: { readonly ok: true; readonly value: Tally } | { readonly ok: false };
}

/** More bags than this are seen with `slantwise bags`. */
const mostBags = 8;

/** The bags used last, and how to make another like one of them. */
export function sayBags(bags: readonly Bag[], words: Words): readonly string[] {
  if (bags.length === 0) return [words.say`No bags in the folder of logs yet.`];
  const more = bags.length - mostBags;
  return [
    ...bags.slice(0, mostBags).map((bag, i) => formatBag(i + 1, bag, words)),
    ...(more > 0 ? [words.say`and ${more} more: slantwise bags lists them all.`] : []),
    ...(bags.length > 1 ? [words.logs.openHint] : []),
    words.say`To make another like one of them, leave and type slantwise work --like and its file.`,
  ];
}

/** What is asked for cannot be had together. */
export const sayLikeAlone = (words: Words): string =>
  words.say`Give --like or a brief, not both: the brief comes from the log.`;

/** The log named holds another bag than the brief named. */
export const sayOtherBag = (path: string, name: string, words: Words): string =>
  words.say`${path} already holds the log of ${name}, made from another brief: name another file, or leave the brief out to go on with it.`;
