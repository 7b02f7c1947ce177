/**
 * How wide a line of text comes out at most, in mm: SVG does not wrap by itself, and fonts differ. Widths are those of DejaVu
 * Sans, the widest of the common sans-serif faces, measured in a browser; what is not in the table is taken wider than it is.
 */
export function textWidth(text: string, size: number): number {
  let hundredths = 0;
  for (const letter of text) hundredths += widthOf(letter);
  return (hundredths * size) / 100;
}

/** From the space to the tilde, in hundredths of the size. */
const ascii: readonly number[] = [
  32, 41, 46, 84, 64, 95, 78, 28, 39, 39, 50, 84, 32, 37, 32, 34, 64, 64, 64, 64, 64, 64, 64, 64, 64, 64, 34,
  34, 84, 84, 84, 54, 102, 69, 69, 73, 77, 67, 62, 78, 76, 30, 50, 67, 56, 87, 75, 79, 67, 79, 73, 67, 62, 74,
  69, 99, 69, 67, 69, 39, 34, 39, 84, 56, 50, 62, 64, 56, 64, 62, 36, 64, 64, 28, 28, 58, 28, 98, 64, 62, 64,
  64, 42, 53, 40, 64, 60, 82, 60, 60, 53, 64, 34, 64, 84,
];

/** More signs that a sheet has. */
const others: Readonly<Record<string, number>> = {
  '–': 56,
  '•': 60,
  '…': 100,
  '°': 50,
  '·': 32,
  '×': 84,
  '±': 84,
  '√': 64,
};

function widthOf(letter: string): number {
  const code = letter.codePointAt(0) ?? 0;
  const known = ascii[code - 32] ?? others[letter];
  if (known !== undefined) return known;
  if (/[\p{M}\p{Cf}]/u.test(letter)) return 0;
  if (code > 0x24f) return code >= 0x1100 ? 130 : 88;
  return /\p{Lu}/u.test(letter) ? 80 : 66;
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
