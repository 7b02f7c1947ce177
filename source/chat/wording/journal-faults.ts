import type { JournalFault, LineFault } from '../../journal/fault.ts';
import type { LessonFault } from '../../journal/lesson.ts';
import type { SessionFault } from '../../session/command.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import type { Words } from '../../wording/words.ts';

const lineFaults: Readonly<Record<LineFault, (words: Words) => string>> = {
  'not-text': (words: Words) => words.say`holds bytes that are not text`,
  'not-json': (words: Words) => words.say`is not JSON`,
  'no-checksum': (words: Words) => words.say`has lost its checksum`,
  checksum: (words: Words) =>
    words.say`does not fit its checksum: it was changed, or a line before it is missing`,
  'wrong-fields': (words: Words) => words.say`does not have the fields it should`,
  'out-of-place': (words: Words) => words.say`calls the bag finished where it is not`,
};

/** Why a log cannot be read to its end, and what to do about it. */
export function formatJournalFault(fault: JournalFault, words: Words): string {
  switch (fault.code) {
    case 'journal/not-a-log':
      return words.say`This file is not a Slantwise log. Name a file that Slantwise wrote.`;
    case 'journal/no-header':
      return words.say`This log was cut off before anything was recorded in it. Start the bag from its brief, in a new log.`;
    case 'journal/newer-version':
      return words.say`This log is written in format ${fault.version} and this program reads up to ${fault.known}: open it with a newer Slantwise.`;
    case 'journal/damaged-line':
      return `${words.say`Line ${fault.line} ${lineFaults[fault.reason](words)}.`} ${soundPart(fault.line, words, fault.laterStep !== null)}${laterStep(fault.laterStep, words)}`;
    case 'journal/step-differs':
      return words.say`Line ${fault.line} says ${words.count(fault.recorded, 'step')} were done where ${fault.reached} come out. ${soundPart(fault.line, words)}`;
    case 'journal/command-refused':
      return words.say`Line ${fault.line} records something that cannot be done there (${fault.fault.code}). ${soundPart(fault.line, words)}`;
    case 'journal/unknown-event':
      return words.say`Line ${fault.line} records "${fault.name}", which this program does not know: open the log with a newer Slantwise.`;
    case 'journal/brief':
      return words.say`This program cannot plan the brief in this log (${fault.fault.code}): open it with Slantwise ${fault.program}, which began it.`;
    case 'journal/plan-differs':
      return words.say`This program plans the bag otherwise (${fault.figure}: ${fault.planned}, in the log ${fault.recorded}): open it with Slantwise ${fault.program}, which began it.`;
    default:
      return exhaustive(fault);
  }
}

function soundPart(line: number, words: Words, hasMore = false): string {
  if (line === 1) return hasMore ? words.logs.needsBrief : words.say`Nothing after it can be used.`;
  return line === 2 ? words.say`Line 1 is sound.` : words.say`Lines 1 to ${line - 1} are sound.`;
}

const laterStep = (step: number | null, words: Words): string =>
  step === null ? '' : ` ${words.say`Later lines say that ${words.count(step, 'step')} had been done.`}`;

/** The last line was being written when the program or the machine stopped: what became of it. */
export const formatTornTail = (keptAs: string, words: Words): string =>
  words.say`The last line of the log was cut off, by a crash perhaps. It is kept in ${keptAs}; all before it is sound.`;

/** The same, where the log is only looked at. */
export const formatCutOff = (line: number, words: Words): string =>
  words.say`Line ${line}, the last, was cut off and belongs to no confirmed step. All before it is sound: open the log to go on from there.`;

/** Why a lesson cannot be made. */
export function formatLessonFault(fault: Exclude<LessonFault, SessionFault>, words: Words): string {
  return words.say`There is no event ${fault.after}: the log has ${words.count(fault.events, 'event')}.`;
}
