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
