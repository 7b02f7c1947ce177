/** Coloured text for a terminal: ECMA-48 SGR sequences; the 16 colours are taken to be xterm's defaults. */
import { labOf, linear, parseColour } from '../colour/colour.ts';
import { colourDifference } from '../colour/colour-difference.ts';

/** A run of text in one style. Colours are `#rrggbb`; null leaves the terminal's own. */
export interface Span {
  readonly text: string;
  readonly ink?: string | null;
  readonly ground?: string | null;
}
export type Line = readonly Span[];

const sixteen: readonly string[] = [
  ...['#000000', '#cd0000', '#00cd00', '#cdcd00', '#0000ee', '#cd00cd', '#00cdcd', '#e5e5e5'],
  ...['#7f7f7f', '#ff0000', '#00ff00', '#ffff00', '#5c5cff', '#ff00ff', '#00ffff', '#ffffff'],
];

/** Gives a colour its SGR parameters, as ink or as ground. */
export type Palette = (colour: string, place: 'ink' | 'ground') => string;

export const trueColour: Palette = (colour, place) => {
  const channels = parseColour(colour).map((value) => Math.round(value * 255));
  return `${place === 'ink' ? 38 : 48};2;${channels.join(';')}`;
};

/** The nearest of the 16; the colours given first each get one of their own, as long as there are some. */
export function sixteenColours(first: readonly string[]): Palette {
  const chosen = new Map<string, number>();
  for (const colour of first) {
    if (!chosen.has(colour)) chosen.set(colour, nearest(colour, new Set(chosen.values())));
  }
  return (colour, place) => {
    const index = chosen.get(colour) ?? nearest(colour, new Set());
    chosen.set(colour, index);
    return String((index < 8 ? 30 : 82) + index + (place === 'ink' ? 0 : 10));
  };
}

function nearest(colour: string, taken: ReadonlySet<number>): number {
  const wanted = labOf(linear(parseColour(colour)));
  const away = (index: number): number =>
    colourDifference(wanted, labOf(linear(parseColour(sixteen[index] ?? '#000000'))));
  const free = sixteen.map((_, index) => index).filter((index) => !taken.has(index));
  const choices = free.length > 0 ? free : sixteen.map((_, index) => index);
  return choices.reduce((best, index) => (away(index) < away(best) ? index : best));
}

/** One string for the line, its styles closed at the end; without a palette no sequences at all. */
export function formatLine(line: Line, palette: Palette | null): string {
  let text = '';
  let style = '';
  for (const span of line) {
    const wanted = palette ? styleOf(span, palette) : '';
    if (wanted !== style) text += `\u001b[${wanted === '' ? '0' : `0;${wanted}`}m`;
    style = wanted;
    text += span.text;
  }
  return style === '' ? text.trimEnd() : `${text}\u001b[0m`;
}

const styleOf = ({ ink, ground }: Span, palette: Palette): string =>
  [ink ? palette(ink, 'ink') : '', ground ? palette(ground, 'ground') : '']
    .filter((one) => one !== '')
    .join(';');
