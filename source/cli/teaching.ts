/**
 * `slantwise lesson LOG LINES`, a teacher's copy of a log, with lines to read and places to stop, which are written one to a line
 * of text: `33 say Watch the left edge.`, `33 pause`; and `slantwise class FOLDER`, how pupils stand by their logs in a folder.
 */

import { basename } from 'node:path';
import { readBriefText } from '../files/kept-files.ts';
import { folderFault, listLogs, soundLogs } from '../files/log-list.ts';
import { writeText } from '../files/write-whole.ts';
import { type Recording, readRecording } from '../journal/read-log.ts';
import {
  type Addition,
  addToCopy,
  type ClassProgress,
  classProgress,
  type LessonFault,
  type Pupil,
} from '../journal/teaching.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { quote } from '../wording/brief-faults.ts';
import { formatFault } from '../wording/faults.ts';
import { formatFileFault, formatLessonFault } from '../wording/file-faults.ts';
import { formatDuration } from '../wording/logs.ts';
import { table } from '../wording/page.ts';
import type { Words } from '../wording/words.ts';
import { complain, exitCodes, print, printDone, printJson } from './outcome.ts';
import { openRecording } from './read-input.ts';

type LessonLineFault =
  | { readonly code: 'lesson/not-understood'; readonly line: number; readonly text: string }
  | {
      readonly code: 'lesson/step-not-reached';
      readonly line: number;
      readonly step: number;
      readonly most: number;
    }
  | { readonly code: 'lesson/nothing-added' };

/** What is to be added where. Empty lines and those that begin with `#` say nothing. Lines count from 1. */
export function readLessonLines(
  text: string,
  recording: Recording,
): Result<readonly Addition[], LessonLineFault> {
  const additions: Addition[] = [];
  for (const [i, line] of text.split(/\r?\n/).entries()) {
    if (line.trim() === '' || line.trimStart().startsWith('#')) continue;
    const read = readLine(line.trim(), i + 1, recording);
    if (!read.ok) return read;
    additions.push(read.value);
  }
  return additions.length === 0 ? fail({ code: 'lesson/nothing-added' }) : succeed(additions);
}

function readLine(text: string, line: number, recording: Recording): Result<Addition, LessonLineFault> {
  const [, number, word = '', rest = ''] = /^(\d+)\s+(\S+)\s*(.*)$/.exec(text) ?? [];
  const event = eventOf(word.toLowerCase(), rest);
  if (number === undefined || event === null) return fail({ code: 'lesson/not-understood', line, text });
  const step = Number(number);
  const after = eventsBefore(recording, step);
  return after === null
    ? fail({ code: 'lesson/step-not-reached', line, step, most: furthest(recording) })
    : succeed({ after, event });
}

function eventOf(word: string, rest: string): Addition['event'] | null {
  if (word === 'pause') return rest === '' ? { do: 'pause' } : null;
  if (rest === '') return null;
  if (word === 'say' || word === 'note') return { do: word, text: rest };
  return word === 'mark' ? { do: 'mark', name: rest } : null;
}

/** Events recorded when `step` first came next; where it was confirmed together with others, when the first of those did. */
function eventsBefore({ start, frames }: Recording, step: number): number | null {
  if (step === start.done + 1) return 0;
  if (step < 1) return null;
  const passed = frames.findIndex(({ session }) => session.done >= step - 1);
  if (passed < 0) return null;
  return frames[passed]?.session.done === step - 1 ? passed + 1 : passed;
}

/** The last step that ever came next. */
const furthest = ({ start, frames }: Recording): number =>
  1 + frames.reduce((most, { session }) => Math.max(most, session.done), start.done);

/** Why a teacher's line cannot be used, and what one looks like. */
export function formatLessonLineFault(fault: LessonLineFault, words: Words): string {
  switch (fault.code) {
    case 'lesson/not-understood':
      return words.logs.lesson.notUnderstood(fault.line, quote(fault.text));
    case 'lesson/step-not-reached':
      return words.logs.lesson.stepNotReached(fault.line, fault.step, fault.most);
    case 'lesson/nothing-added':
      return words.logs.lesson.nothingAdded;
  }
}

/** Why the copy cannot be made. */
const formatCopyFault = (fault: LessonFault, words: Words): string =>
  fault.code === 'lesson/no-such-event' ? formatLessonFault(fault, words) : formatFault(fault, words);

/** Writes a copy of a log with a teacher's lines in it. The log is only read. */
export function writeLesson(path: string, linesPath: string, out: string, words: Words): number {
  const recording = openRecording(path, words);
  if (!recording.ok) return complain(recording.fault);
  const text = readBriefText(linesPath);
  if (!text.ok) return complain(formatFileFault(text.fault, words));
  const additions = readLessonLines(text.value, recording.value);
  if (!additions.ok) return complain(`${linesPath}: ${formatLessonLineFault(additions.fault, words)}`);
  const copy = addToCopy(recording.value, additions.value);
  if (!copy.ok) return complain(`${linesPath}: ${formatCopyFault(copy.fault, words)}`);
  const written = writeText(out, copy.value);
  if (!written.ok) return complain(formatFileFault(written.fault, words));
  return printDone(words.logs.lesson.added(additions.value.length, out));
}

const pupilOf = (path: string): string => basename(path, '.jsonl');

export function printClass(folder: string, json: boolean, words: Words): number {
  const fault = folderFault(folder);
  if (fault) return complain(formatFileFault(fault, words));
  const logs = [...soundLogs(folder)].flatMap(({ path, bytes }) => {
    const recording = readRecording(bytes);
    return recording.ok ? [{ log: pupilOf(path), recording: recording.value }] : [];
  });
  const unreadable = listLogs(folder).filter(({ tally }) => !tally.ok);
  if (logs.length === 0 && unreadable.length === 0) return complain(words.logs.classIsEmpty(folder));
  const progress = classProgress(logs);
  if (json) printJson({ ...progress, unreadable: unreadable.map(({ path }) => path) }, 2);
  else {
    print(formatClass(progress, words));
    for (const { path } of unreadable) print(`${pupilOf(path)}  ${words.logs.cannotBeRead}`);
  }
  return exitCodes.done;
}

function formatClass({ pupils, hardSteps }: ClassProgress, words: Words): string {
  const { logs: say } = words;
  const finished = pupils.filter(({ phase }) => phase === null).length;
  const rows = pupils.map((pupil) => rowOf(pupil, words));
  const hard = hardSteps.map(({ step, row, pupils: many }) => say.hardStep(step, row, many));
  return [say.classOf(pupils.length, finished), ...table(rows), ...hard].join('\n');
}

function rowOf(
  { log, bag, stepsDone, stepCount, phase, workS, takenBack }: Pupil,
  words: Words,
): readonly string[] {
  const { logs: say } = words;
  return [
    log,
    bag,
    phase === null ? say.finished : say.nextStep(stepsDone + 1, stepCount),
    phase === null ? '' : words.prompt.phases[phase],
    formatDuration(workS),
    takenBack === 0 ? '' : say.takenBack(takenBack),
  ];
}
