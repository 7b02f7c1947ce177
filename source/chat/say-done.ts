/** What the transcript says once a command has been carried out, at the bench and where a log is played. */
import { type Entry, isCommand } from '../journal/notation.ts';
import type { Frame, Recording } from '../journal/read-log.ts';
import type { Command } from '../session/command.ts';
import { bedNow, type Session } from '../session/session.ts';
import { stepAt } from '../steps/job.ts';
import { sayCannotUndo, sayChanged, sayCounted, sayPlanned, sayWayStep } from '../wording/finding.ts';
import { formatDuration } from '../wording/logs.ts';
import { sayCord, sayMeasured, sayWeighed } from '../wording/measured.ts';
import { sayPlace, sayPlaceOrWay, sayWhere } from '../wording/place.ts';
import { sayStep } from '../wording/steps.ts';
import type { Words } from '../wording/words.ts';
import { answer, type Said } from './talk.ts';

export function sayDone(before: Session, after: Session, command: Command, words: Words): readonly Said[] {
  switch (command.do) {
    case 'confirm':
      return doneLines(before, after, words);
    case 'back':
      return answer(
        words.prompt.done.back(sayPlaceOrWay(after, words)),
        ...sayCounted(before, after, command.do, words),
        ...sayChanged(before, after, words),
        ...sayCannotUndo(before, after, words),
      );
    case 'redo':
      return answer(
        words.prompt.done.redo(sayPlaceOrWay(after, words)),
        ...sayCounted(before, after, command.do, words),
        ...sayChanged(before, after, words),
      );
    case 'go':
      return answer(words.prompt.done.go(sayPlace(after, words)), ...sayWhere(after, words).slice(1));
    case 'note':
      return answer(words.prompt.done.note(command.text));
    case 'weigh':
      return answer(sayWeighed(after, command.yarn, words));
    case 'measured':
      return answer(...sayMeasured(after, words));
    case 'cord':
      return answer(sayCord(after, words));
    case 'rip':
    case 'mend':
      return after.way === null
        ? answer(words.prompt.done.setRight(sayPlace(after, words)))
        : answer(words.prompt.oneAtATime);
    case 'on-the-way':
      return sayOnWay(before, after, words);
    case 'stop':
      return sayLeft(before, after, words);
    case 'replan':
      return answer(
        words.prompt.done.replan(sayPlanned(after, words)),
        words.prompt.done.now(sayPlace(after, words)),
      );
    case 'rename':
      return answer(words.logs.renamed(before.name, after.name));
    case 'mark':
      return answer(words.prompt.done.mark(command.name));
  }
}

/** A way that is left: where the work stands then, and the weights, if they were off for it. */
function sayLeft(before: Session, after: Session, words: Words): readonly Said[] {
  const left = after.adrift ? words.slips.leftBetween : words.prompt.done.stop;
  const cares = before.way?.steps.slice(0, before.way.at).map(({ care }) => care) ?? [];
  const off = cares.find((care) => care?.is === 'weights-off');
  const bed = bedNow(before);
  if (off?.is !== 'weights-off' || !bed?.left || !bed.right) return answer(left);
  const { comb } = off;
  return answer(left, words.slips.care({ is: 'weights-on', left: bed.left, right: bed.right, comb }));
}

/** What was done on a way, and at its end the place. */
function sayOnWay(before: Session, after: Session, words: Words): readonly Said[] {
  const { way } = before;
  const line: Said = { tone: 'done', text: (way && sayWayStep(way, words)) ?? '' };
  if (after.way !== null || way === null) return [line];
  const place =
    way.kind === 'rip'
      ? words.prompt.done.rippedBack(sayPlace(after, words))
      : words.prompt.done.setRight(sayPlace(after, words));
  return [line, ...answer(place, ...sayWhere(after, words).slice(1))];
}

function doneLines({ done, job }: Session, after: Session, words: Words): readonly Said[] {
  const last = after.done;
  const text =
    last === done + 1
      ? `${last} ${sayStep(stepAt(job, last), words)}`
      : words.prompt.done.several(done + 1, last, last - done);
  return [{ tone: 'done', text }];
}

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
