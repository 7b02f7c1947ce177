import type { Words } from '../../wording/words.ts';

export const sayOutKind = (out: string, words: Words): string => words.prompt.sheetEnding(out);

export const sayWritten = (out: string, words: Words): string => words.prompt.sheetWritten(out);
