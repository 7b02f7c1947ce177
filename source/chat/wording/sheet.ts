export const sayOutKind = (out: string): string =>
  `${out} does not end in .html, .svg or .md, which say what kind of sheet to write: add one of them.`;

export const sayWritten = (out: string): string => `The sheet is written: ${out}`;
