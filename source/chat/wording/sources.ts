/** Where a rule comes from, as it is named to the maker. */
import { say } from '../../shared/say.ts';

export const commonPractice = (): string => say`common practice, no source`;
export const ruleOfThumb = (): string => say`rule of thumb`;
export const planeGeometry = (): string => say`plane geometry`;
