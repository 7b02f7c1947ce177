/** A recording in words: what the player and a plain replay say of each event. */

import type { Entry } from '../journal/entry.ts';
import { isCommand } from '../journal/notation.ts';
import type { Moment, Recording } from '../journal/recording.ts';
import type { Session } from '../session/session.ts';
import { formatDuration } from '../wording/logs.ts';
import type { Words } from '../wording/words.ts';
import { sayDone } from './reply.ts';
import { answer, type Line } from './transcript.ts';

/** A recording as plain lines, one or more an event, each with the time since the beginning. */
export function* replayLines(
  { header, start, moments, finished }: Recording,
  words: Words,
): Generator<string> {
  yield words.record.bagBegun(header.name, header.startedAt.slice(0, 10));
  let before = start;
  let elapsedMs = 0;
  for (const moment of moments) {
    elapsedMs += moment.entry.afterMs;
    for (const { text } of momentLines(before, moment, words))
      yield `${formatDuration(elapsedMs / 1000).padStart(10)}  ${text}`;
    before = moment.session;
  }
  yield finished ? words.record.bagFinished : words.record.logEnds;
}

/** The last lines once `shown` events have been shown, at most `most` of them. Costs the same anywhere in the log. */
export function lastLines(
  { start, moments }: Recording,
  shown: number,
  most: number,
  words: Words,
): readonly Line[] {
  let lines: readonly Line[] = [];
  for (let i = shown - 1; i >= 0 && lines.length < most; i--) {
    const before = moments[i - 1]?.session ?? start;
    lines = [...momentLines(before, moments[i] as Moment, words), ...lines];
  }
  return lines.slice(-most);
}

const momentLines = (before: Session, { entry, session }: Moment, words: Words): readonly Line[] =>
  isCommand(entry.event) ? sayDone(before, session, entry.event, words) : occurrenceLines(entry, words);

function occurrenceLines({ event }: Entry, words: Words): readonly Line[] {
  switch (event.do) {
    case 'resume':
      return answer(words.record.backAtBench(event.at.slice(0, 10)));
    case 'say':
      return answer(event.text);
    case 'pause':
      return answer(words.record.placeToPause);
    default:
      return [];
  }
}
