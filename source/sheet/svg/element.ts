/** SVG as strings. Everything is measured in mm on paper, y down. */
import type { Point } from '../geometry/shape.ts';
import { escapeXml } from '../text.ts';

type Attributes = Readonly<Record<string, string | number | null | undefined>>;

/** Three decimals: a thousandth of a millimetre. */
export const round = (value: number): number => Math.round(value * 1000) / 1000 || 0;

/** One element; `children` is markup already. Attributes that are null are left out, the others escaped. */
export function element(name: string, attributes: Attributes, children = ''): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== null && value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? round(value) : escapeXml(value ?? '')}"`)
    .join('');
  return children === '' ? `<${name}${written}/>` : `<${name}${written}>${children}</${name}>`;
}

export const pointList = (points: readonly Point[]): string =>
  points.map(([x, y]) => `${round(x)},${round(y)}`).join(' ');

export const palette = {
  ink: '#1f1d1a',
  quiet: '#57524a',
  rule: '#8f887c',
  pale: '#efece6',
  paper: '#ffffff',
  /** The thread that is sewn with, in every picture of it. */
  thread: '#b3204d',
} as const;

/** Marks a style, which is not for the maker to read. */
export const css = String.raw;

export const fontFamily = css`sans-serif`;

export interface TextStyle {
  readonly size?: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly colour?: string;
  readonly weight?: number;
  readonly turn?: number;
}

/** Height of a text where no other is given. */
export const usualTextMm = 2.6;

/** One line of text whose baseline starts, is centred or ends at a point. */
export const textAt = (at: Point, text: string, style: TextStyle = {}): string =>
  markupAt(at, escapeXml(text), style);

/** The same of text that is markup already. */
export function markupAt([x, y]: Point, markup: string, style: TextStyle = {}): string {
  const { size = usualTextMm, anchor = 'start', colour = palette.ink, weight, turn } = style;
  const attributes = {
    x,
    y,
    'font-size': size,
    'text-anchor': anchor === 'start' ? null : anchor,
    'font-weight': weight,
    fill: colour,
    transform: turn ? `rotate(${round(turn)} ${round(x)} ${round(y)})` : null,
  };
  return element('text', attributes, markup);
}

export const lineFrom = ([x1, y1]: Point, [x2, y2]: Point, attributes: Attributes = {}): string =>
  element('line', { x1, y1, x2, y2, stroke: palette.ink, 'stroke-width': 0.2, ...attributes });

/** An open path, drawn as a line. */
export const strokePath = (d: string, attributes: Attributes = {}): string =>
  element('path', { d, fill: 'none', stroke: palette.ink, 'stroke-width': 0.3, ...attributes });

/** A point as it stands in a path. */
export const pair = ([x, y]: Point): string => `${round(x)} ${round(y)}`;

/** A picture of known size, to stand alone or in a page. */
export interface Drawing {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly body: string;
  /** What it shows, in words; empty for what the text beside it says already. */
  readonly title: string;
}

export function standalone({ widthMm, heightMm, body, title }: Drawing): string {
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${round(widthMm)} ${round(heightMm)}`,
      width: `${round(widthMm)}mm`,
      height: `${round(heightMm)}mm`,
      role: title === '' ? null : 'img',
      'aria-label': title === '' ? null : title,
      'aria-hidden': title === '' ? 'true' : null,
      'font-family': fontFamily,
    },
    body,
  );
}

/** A drawing moved to a place in another. */
export const placed = ({ body }: Pick<Drawing, 'body'>, [x, y]: Point): string =>
  element('g', { transform: `translate(${round(x)} ${round(y)})` }, body);

/** The same drawing with all that is in it so many times as large. */
export const enlarged = ({ widthMm, heightMm, body, title }: Drawing, times: number): Drawing => ({
  widthMm: widthMm * times,
  heightMm: heightMm * times,
  body: element('g', { transform: `scale(${round(times)})` }, body),
  title,
});

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
  // Nearly every word fits, and taking one apart is slow.
  if (textWidth(word, size) <= widthMm) return [word];
  const pieces = [''];
  for (const { segment } of new Intl.Segmenter('en').segment(word)) {
    const longer = `${pieces.at(-1)}${segment}`;
    if (textWidth(longer, size) <= widthMm || pieces.at(-1) === '') pieces[pieces.length - 1] = longer;
    else pieces.push(segment);
  }
  return pieces;
}
