/** Where a rule comes from, as it is named to the maker. */
import type { Words } from '../../wording/words.ts';

export const commonPractice = (words: Words): string => words.say`common practice, no source`;
export const ruleOfThumb = (words: Words): string => words.say`rule of thumb`;
export const planeGeometry = (words: Words): string => words.say`plane geometry`;
