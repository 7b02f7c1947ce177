/**
 * What to do, in the maker's words: one instruction a step, with the needles named in it. Aloud and across the room it is
 * said in the fewest words that still name them.
 */

import { kitOf } from '../planning/kit.ts';
import type { Plan } from '../planning/plan.ts';
import type { Warning } from '../settings/settings.ts';
import { harmless } from '../shared/plain-text.ts';
import type { Phase, Step } from '../steps/step.ts';
import { sayAct } from './act-words.ts';
import type { Words } from './words.ts';

const phaseNames: Readonly<Record<Phase, (words: Words) => string>> = {
  'cast-on': (words: Words) => words.prompt.castOn,
  stripes: (words: Words) => words.prompt.stripes,
  'closing-row': (words: Words) => words.prompt.closingRow,
  hem: (words: Words) => words.prompt.hem,
  graft: (words: Words) => words.prompt.graft,
  seam: (words: Words) => words.prompt.seam,
  cord: (words: Words) => words.prompt.cord,
};

export const sayPhase = (phase: Phase, words: Words): string => phaseNames[phase](words);

/** The instruction for a step, as plain text. */
export const sayStep = ({ act }: Step, words: Words): string => harmless(sayAct(words.steps, act));

/** What comes before the instruction when a press did nothing. */
export const speakWarning = (warning: Warning, words: Words): string =>
  warning === 'too-soon' ? words.prompt.tooSoonLookFirst : words.prompt.noPassIsDue;

/** A short spoken instruction, such as `left edge, one out, to L24, L22 stays empty`. */
export const speakStep = (step: Step | null, words: Words): string =>
  step ? harmless(sayAct(words.spoken, step.act)) : words.prompt.theBagIsFinished;

/** One or two words for the large view. */
export const shoutStep = ({ act }: Step, words: Words): string => harmless(sayAct(words.shouted, act));

export function sayTools(plan: Plan, { kit }: Words): readonly string[] {
  const needed = kitOf(plan);
  return [kit.tools(needed), kit.materials(needed)];
}
