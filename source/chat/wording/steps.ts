/** What to do, in the maker's words: one instruction a step, with the needles named in it. */
import { harmless } from '../../shared/plain-text.ts';
import type { Phase, Step } from '../../steps/step.ts';
import { wordsFor } from '../../wording/act-words.ts';
import type { Words } from '../../wording/words.ts';

const phaseNames: Readonly<Record<Phase, (words: Words) => string>> = {
  'cast-on': (words: Words) => words.say`cast-on`,
  stripes: (words: Words) => words.say`stripes`,
  'closing-row': (words: Words) => words.say`closing row`,
  graft: (words: Words) => words.say`graft`,
  seam: (words: Words) => words.say`seam`,
  cord: (words: Words) => words.say`cord`,
};

export const sayPhase = (phase: Phase, words: Words): string => phaseNames[phase](words);

/** The instruction for a step, as plain text. */
export const sayStep = ({ act }: Step, words: Words): string => harmless(wordsFor(words.steps, act));
