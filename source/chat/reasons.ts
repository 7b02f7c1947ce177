/** Why things are as they are: the craft and the formulas, with this bag's own numbers. */
import type { Words } from '../wording/words.ts';
import { findNamed } from './named.ts';
import type { Reason } from './reason.ts';
import { benchReasons } from './wording/reasons-bench.ts';
import { careReasons } from './wording/reasons-care.ts';
import { handReasons } from './wording/reasons-hand.ts';
import { sizeReasons } from './wording/reasons-size.ts';
import { yarnReasons } from './wording/reasons-yarn.ts';

export const reasons: readonly Reason[] = [
  ...sizeReasons,
  ...benchReasons,
  ...handReasons,
  ...yarnReasons,
  ...careReasons,
];

/** The topic that a question speaks of: `width`, `why 3 times the width?`. */
export const findReason = (text: string, words: Words): Reason | null => findNamed(reasons, text, words);
