/**
 * How wide a line of text comes out at most, in mm: SVG does not wrap by itself, and fonts differ. Bounds for wide
 * sans-serif faces, measured on DejaVu Sans, regular.
 */
export function textWidth(text: string, size: number): number {
  let ems = 0;
  for (const letter of text) ems += emsOf(letter);
  return ems * size;
}

function emsOf(letter: string): number {
  const code = letter.codePointAt(0) ?? 0;
  if (/[\p{M}\p{Cf}]/u.test(letter)) return 0;
  if (code > 0x24f) return code >= 0x1100 ? 1.3 : 0.8;
  if (/[ijlI.,:;'|]/.test(letter)) return 0.34;
  if (/[ ftr()[\]/!-]/.test(letter)) return 0.42;
  if (/[mwMW@%—]/.test(letter)) return 1;
  if (/[#+<=>^~×÷]/.test(letter)) return 0.84;
  return /[A-Z&]/.test(letter) ? 0.79 : 0.64;
}

/** Where to centre a line of text so that it stays between 0 and `widthMm`, as near `x` as it can. */
export function centreWithin(x: number, text: string, size: number, widthMm: number): number {
  const half = textWidth(text, size) / 2;
  return Math.max(half, Math.min(x, widthMm - half));
}

/** Lines of at most `widthMm`, broken at spaces, and inside a word that is longer than a line. */
export function wrapText(text: string, size: number, widthMm: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (textWidth(longer, size) <= widthMm) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    const pieces = breakWord(word, size, widthMm);
    lines.push(...pieces.slice(0, -1));
    line = pieces.at(-1) ?? '';
  }
  return [...lines, line];
}

function breakWord(word: string, size: number, widthMm: number): readonly string[] {
  const pieces = [''];
  for (const { segment } of new Intl.Segmenter('en').segment(word)) {
    const longer = `${pieces.at(-1)}${segment}`;
    if (textWidth(longer, size) <= widthMm || pieces.at(-1) === '') pieces[pieces.length - 1] = longer;
    else pieces.push(segment);
  }
  return pieces;
}
