/** Where a rule comes from, as it is named to the maker. */
import type { Words } from '../../wording/words.ts';

export const commonPractice = (words: Words): string => words.reasons.sources.commonPractice;
export const ruleOfThumb = (words: Words): string => words.reasons.sources.ruleOfThumb;
export const planeGeometry = (words: Words): string => words.reasons.sources.planeGeometry;
