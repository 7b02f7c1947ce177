import type { JournalFault, LineFault } from '../../journal/fault.ts';
import type { LessonFault } from '../../journal/lesson.ts';
import type { SessionFault } from '../../session/command.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import type { Words } from '../../wording/words.ts';

const lineFaults: Readonly<Record<LineFault, (words: Words) => string>> = {
  'not-text': (words: Words) => words.files.line.notText,
  'not-json': (words: Words) => words.files.line.notJson,
  'no-checksum': (words: Words) => words.files.line.noChecksum,
  checksum: (words: Words) => words.files.line.checksum,
  'wrong-fields': (words: Words) => words.files.line.wrongFields,
  'out-of-place': (words: Words) => words.files.line.outOfPlace,
};

/** Why a log cannot be read to its end, and what to do about it. */
export function formatJournalFault(fault: JournalFault, words: Words): string {
  switch (fault.code) {
    case 'journal/not-a-log':
      return words.files.notALog;
    case 'journal/no-header':
      return words.files.noHeader;
    case 'journal/newer-version':
      return words.files.newerVersion(fault.version, fault.known);
    case 'journal/damaged-line':
      return `${words.files.damagedLine(fault.line, lineFaults[fault.reason](words))} ${soundPart(fault.line, words, fault.laterStep !== null)}${laterStep(fault.laterStep, words)}`;
    case 'journal/step-differs':
      return words.files.stepDiffers(fault.line, fault.recorded, fault.reached, soundPart(fault.line, words));
    case 'journal/command-refused':
      return words.files.commandRefused(fault.line, fault.fault.code, soundPart(fault.line, words));
    case 'journal/unknown-event':
      return words.files.unknownEvent(fault.line, fault.name);
    case 'journal/brief':
      return words.files.brief(fault.fault.code, fault.program);
    case 'journal/plan-differs':
      return words.files.planDiffers(fault.figure, fault.planned, fault.recorded, fault.program);
    default:
      return exhaustive(fault);
  }
}

function soundPart(line: number, words: Words, hasMore = false): string {
  if (line === 1) return hasMore ? words.logs.needsBrief : words.files.nothingAfter;
  return line === 2 ? words.files.lineOneSound : words.files.linesSound(line - 1);
}

const laterStep = (step: number | null, words: Words): string =>
  step === null ? '' : ` ${words.files.laterLines(step)}`;

/** The last line was being written when the program or the machine stopped: what became of it. */
export const formatTornTail = (keptAs: string, words: Words): string => words.files.tornTail(keptAs);

/** The same, where the log is only looked at. */
export const formatCutOff = (line: number, words: Words): string => words.files.cutOff(line);

/** Why a lesson cannot be made. */
export function formatLessonFault(fault: Exclude<LessonFault, SessionFault>, words: Words): string {
  return words.files.noSuchEvent(fault.after, fault.events);
}
