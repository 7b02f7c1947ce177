/** What to do, in the maker's words: one instruction a step, with the needles named in it. */
import { harmless } from '../../shared/plain-text.ts';
import type { Phase, Step } from '../../steps/step.ts';
import { wordsFor } from '../../wording/act-words.ts';
import type { Words } from '../../wording/words.ts';

const phaseNames: Readonly<Record<Phase, (words: Words) => string>> = {
  'cast-on': (words: Words) => words.prompt.castOn,
  stripes: (words: Words) => words.prompt.stripes,
  'closing-row': (words: Words) => words.prompt.closingRow,
  graft: (words: Words) => words.prompt.graft,
  seam: (words: Words) => words.prompt.seam,
  cord: (words: Words) => words.prompt.cord,
};

export const sayPhase = (phase: Phase, words: Words): string => phaseNames[phase](words);

/** The instruction for a step, as plain text. */
export const sayStep = ({ act }: Step, words: Words): string => harmless(wordsFor(words.steps, act));
