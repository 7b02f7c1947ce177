import { type Entry, isCommand } from '../journal/notation.ts';
import type { Frame, Recording } from '../journal/read-log.ts';
import type { Session } from '../session/session.ts';
import { formatDuration } from '../wording/logs.ts';
import type { Words } from '../wording/words.ts';
import { sayDone } from './reply.ts';
import { answer, type Said } from './transcript.ts';

/** A recording as plain lines, one or more an event, each with the time since the beginning. */
export function* replayLines(
  { header, start, frames, finished }: Recording,
  words: Words,
): Generator<string> {
  yield words.record.bagBegun(header.name, header.startedAt.slice(0, 10));
  let before = start;
  let elapsedMs = 0;
  for (const frame of frames) {
    elapsedMs += frame.entry.afterMs;
    for (const { text } of frameLines(before, frame, words))
      yield `${formatDuration(elapsedMs / 1000).padStart(10)}  ${text}`;
    before = frame.session;
  }
  yield finished ? words.record.bagFinished : words.record.logEnds;
}

/** The last lines once `shown` events have been shown, at most `most` of them. Costs the same anywhere in the log. */
export function lastLines(
  { start, frames }: Recording,
  shown: number,
  most: number,
  words: Words,
): readonly Said[] {
  let lines: readonly Said[] = [];
  for (let i = shown - 1; i >= 0 && lines.length < most; i--) {
    const before = frames[i - 1]?.session ?? start;
    lines = [...frameLines(before, frames[i] as Frame, words), ...lines];
  }
  return lines.slice(-most);
}

const frameLines = (before: Session, { entry, session }: Frame, words: Words): readonly Said[] =>
  isCommand(entry.event) ? sayDone(before, session, entry.event, words) : occurrenceLines(entry, words);

function occurrenceLines({ event }: Entry, words: Words): readonly Said[] {
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
