import { say } from '../../shared/say.ts';

export const sayOutKind = (out: string): string =>
  say`${out} does not end in .html, .svg or .md, which say what kind of sheet to write: add one of them.`;

export const sayWritten = (out: string): string => say`The sheet is written: ${out}`;
