import type { Entry } from '../journal/entry.ts';
import { isCommand } from '../journal/notation.ts';
import type { Recording } from '../journal/recording.ts';
import { sayDone } from './reply.ts';
import { formatDuration } from './wording/logs.ts';

/** A recording as plain lines, one or more an event, each with the time since the beginning. */
export function* replayLines({ header, start, moments, finished }: Recording): Generator<string> {
  yield `${header.name}, begun ${header.startedAt.slice(0, 10)}`;
  let before = start;
  let elapsedMs = 0;
  for (const { entry, session } of moments) {
    elapsedMs += entry.afterMs;
    const texts = isCommand(entry.event)
      ? sayDone(before, session, entry.event).map((line) => line.text)
      : occurrenceLines(entry);
    for (const text of texts) yield `${formatDuration(elapsedMs / 1000).padStart(10)}  ${text}`;
    before = session;
  }
  yield finished ? 'The bag is finished.' : 'The log ends here; the bag is not finished.';
}

function occurrenceLines({ event }: Entry): readonly string[] {
  switch (event.do) {
    case 'resume':
      return [`Back at the bench, ${event.at.slice(0, 10)}`];
    case 'say':
      return [event.text];
    case 'pause-here':
      return ['A place to pause'];
    default:
      return [];
  }
}
