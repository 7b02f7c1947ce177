import type { Step } from '../../steps/step.ts';
import type { Words } from '../../wording/words.ts';

export const papers = {
  a4: { widthMm: 210, heightMm: 297 },
  letter: { widthMm: 215.9, heightMm: 279.4 },
} as const;
export type Paper = keyof typeof papers;

export interface SheetOptions {
  /** Printed as it is given. */
  readonly date: string;
  /** The maker's name for the bag; left out, the brief's. */
  readonly name?: string;
  readonly words: Words;
  /** What could hurt at a step; null where nothing new does. */
  readonly cautionOf: (step: Step) => string | null;
  /** For SVG, whose pages are drawn; HTML prints on either. */
  readonly paper?: Paper;
  /** For a class: with blanks for each pupil's own swatch. */
  readonly class?: boolean;
  /** Sentences to print near the top, such as the plan's warnings. */
  readonly remarks?: readonly string[];
}
