/** A step in the fewest words that still name the needles: to be spoken aloud, and to be read across the room. */
import type { Warning } from '../../settings/settings.ts';
import { harmless } from '../../shared/plain-text.ts';
import type { Step } from '../../steps/step.ts';
import { wordsFor } from '../../wording/act-words.ts';
import type { Words } from '../../wording/words.ts';

/** What comes before the instruction when a press did nothing. */
export const speakWarning = (warning: Warning, words: Words): string =>
  warning === 'too-soon' ? words.prompt.tooSoonLookFirst : words.prompt.noPassIsDue;

/** A short spoken instruction, such as `left edge, one out, to L24, L22 stays empty`. */
export const speakStep = (step: Step | null, words: Words): string =>
  step ? harmless(wordsFor(words.spoken, step.act)) : words.prompt.theBagIsFinished;

/** One or two words for the large view. */
export const shoutStep = ({ act }: Step, words: Words): string => harmless(wordsFor(words.shouted, act));
