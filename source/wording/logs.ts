import type { Tally } from '../journal/read-log.ts';
import { type UsedYarn, usedYarn } from '../session/measured.ts';
import type { Session } from '../session/session.ts';
import type { Words } from './words.ts';

/** `1 h 4 min`, `12 min`, `40 s`. */
export function formatDuration(seconds: number): string {
  if (seconds < 60) return `${Math.round(seconds)} s`;
  const minutes = Math.round(seconds / 60);
  return minutes < 60 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
}

/** What a sound log holds, in a few lines. */
export const formatTally = (tally: Tally, words: Words): string =>
  [
    words.logs.sound(tally.name),
    words.logs.recorded(tally.events, tally.sittings, formatDuration(tally.durationS)),
    tally.finished ? words.logs.bagFinished : words.logs.stepsConfirmed(tally.stepsDone, tally.stepCount),
  ].join('\n');

/** `Dice bag, step 12 of 279 next`. */
export const sayState = (
  { name, finished, stepsDone, stepCount }: Pick<Tally, 'name' | 'finished' | 'stepsDone' | 'stepCount'>,
  { logs }: Words,
): string => `${name}, ${finished ? logs.finished : logs.nextStep(stepsDone + 1, stepCount)}`;

/** One bag in a list. */
export function formatBag(number: number, { tally: read, path, lastUsed }: ListedBag, words: Words): string {
  const tally = read.ok ? read.value : null;
  const day = lastUsed.toISOString().slice(0, 10);
  const at = String(number).padStart(2);
  if (!tally) return `${at}  ${day}  ${words.logs.cannotBeRead}  ${path}`;
  return `${at}  ${day}  ${sayState(tally, words)}`;
}

interface ListedBag {
  readonly path: string;
  readonly lastUsed: Date;
  readonly tally: { readonly ok: true; readonly value: Tally } | { readonly ok: false };
}

/** More bags than this are seen with `slantwise bags`. */
const mostBags = 8;

/** The bags used last, and how to make another like one of them. */
export function sayBags(bags: readonly ListedBag[], words: Words): readonly string[] {
  if (bags.length === 0) return words.logs.noBags;
  const more = bags.length - mostBags;
  return [
    ...bags.slice(0, mostBags).map((bag, i) => formatBag(i + 1, bag, words)),
    ...(more > 0 ? [words.logs.moreBags(more)] : []),
    ...(bags.length > 1 ? [words.logs.openHint] : []),
    words.logs.another,
  ];
}

/** What was noted and weighed, as it is carried over: each says where it belongs. */
export const notesLike = (session: Session, words: Words): readonly string[] => [
  ...notesOf(session, words),
  ...usedYarn(session)
    .filter(({ atEnd }) => atEnd)
    .map((one) => sayUsedLastTime(one, words)),
];

function sayUsedLastTime({ yarn, usedGrams, leftGrams }: UsedYarn, words: Words): string {
  const left = words.amounts.mass(leftGrams);
  return usedGrams === null
    ? words.record.leftLastTime(left, yarn)
    : words.record.usedLastTime(usedGrams, yarn, left);
}

const notesOf = ({ notes, job }: Session, words: Words): readonly string[] =>
  [...notes].map(({ done, text }) =>
    done >= job.stepCount ? words.record.noteAtEnd(text) : words.record.noteAtStep(done + 1, text),
  );
