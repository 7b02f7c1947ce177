import type { Words } from '../../wording/words.ts';

export const sayOutKind = (out: string, words: Words): string =>
  words.say`${out} does not end in .html, .svg or .md, which say what kind of sheet to write: add one of them.`;

export const sayWritten = (out: string, words: Words): string => words.say`The sheet is written: ${out}`;
