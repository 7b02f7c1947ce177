import { formatFault } from '../chat/wording/faults.ts';
import { formatLessonFault } from '../chat/wording/journal-faults.ts';
import { quote } from '../chat/wording/values.ts';
import type { LessonFault } from '../journal/lesson.ts';
import type { SessionFault } from '../session/command.ts';
import { count, say } from '../shared/say.ts';
import type { LessonLineFault } from './lesson-lines.ts';

/** Why a teacher's line cannot be used, and what one looks like. */
export function formatLessonLineFault(fault: LessonLineFault): string {
  switch (fault.code) {
    case 'lesson/not-understood':
      return say`Line ${fault.line} is not understood: ${quote(fault.text)}. For example: 33 say Watch the left edge. After the step comes say, note, mark or pause.`;
    case 'lesson/step-not-reached':
      return say`Line ${fault.line} names step ${fault.step}, which the log never comes to: it goes from step 1 to ${fault.most}.`;
    case 'lesson/nothing-added':
      return say`There is no line to add. For example: 33 say Watch the left edge.`;
  }
}

/** Why the copy cannot be made. */
export const formatCopyFault = (fault: LessonFault): string =>
  isLessonFault(fault) ? formatLessonFault(fault) : formatFault(fault);

const isLessonFault = (fault: LessonFault): fault is Exclude<LessonFault, SessionFault> =>
  fault.code === 'lesson/no-such-event';

export const sayLessonWritten = (path: string, added: number): string =>
  say`${count(added, 'line')} added; the lesson is in ${path}. Play it: slantwise replay ${path}`;
