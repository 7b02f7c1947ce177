/** The bare answer to a question that stands: `3`, `left`, `R10`, `yes`. */
import { isNeedleName } from '../../bed/needles.ts';
import type { OpenQuestion } from '../../session/diagnose/question.ts';
import type { SlipMoment } from '../../session/diagnose/slip-moment.ts';
import type { Fact, Look } from '../../session/locate/seen.ts';
import type { Words } from '../../wording/words.ts';
import { nothingTold, type Told } from './intent.ts';
import { type CountFact, isNothing, isNumber } from './seen-words.ts';

const words: ReadonlySet<string> = new Set(['left', 'right', 'empty', 'nothing', 'none']);

/** What is told by it; null where it is no bare answer to that. */
export function bareAnswer(
  typed: string,
  question: OpenQuestion,
  yes: boolean | undefined,
  { understand }: Words,
): Told | null {
  const answer = understand(typed.replace(/[.!]+$/, ''), words).toLowerCase();
  const { about } = question;
  const seen = about === 'fact' ? seenOf(question.fact, answer) : about === 'loose' ? looseOf(yes) : null;
  const moment = isNumber(answer) ? momentOf(about, Number(answer)) : null;
  return seen || moment ? { ...nothingTold, seen: seen ?? {}, moment } : null;
}

function seenOf(fact: Fact, answer: string): Look | null {
  switch (fact) {
    case 'carriage':
      return /^(left|right|l|r)$/.test(answer)
        ? { carriage: answer.startsWith('l') ? 'left' : 'right' }
        : null;
    case 'left':
    case 'right':
      return isNeedleName(answer) ? { [fact]: answer.toUpperCase() } : null;
    case 'feeder':
      return isNothing(answer) ? { feeder: null } : null;
    case 'lastColour':
      return null;
    default:
      return isNumber(answer) ? { [fact satisfies CountFact]: Number(answer) } : null;
  }
}

const looseOf = (yes: boolean | undefined): Look | null =>
  yes === undefined ? null : { looseEdgeLoop: yes };

function momentOf(about: OpenQuestion['about'], number: number): SlipMoment | null {
  if (about === 'move' || about === 'move-or-rehang') return { by: 'move', number };
  return about === 'stripe' || about === 'row' ? { by: about, number } : null;
}
