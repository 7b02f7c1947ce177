/**
 * Text and fillings in a yarn's colour. Black or white on a true colour is always readable; among 16 colours no pair is
 * in every scheme, so text keeps the terminal's own colours there and stands beside the yarn's, not on it.
 */
import { type ColourDepth, inkOn, mixColours } from '../../shared/colour.ts';
import type { Pattern, YarnSign } from '../yarn-signs.ts';
import type { Span } from './ansi.ts';

export const edgeInk = (depth: ColourDepth): string | null =>
  depth === 'true' || depth === '256' ? '#808080' : null;

/** Text on the yarn's colour. */
export function onYarn({ colour }: YarnSign, text: string, depth: ColourDepth): Span {
  if (depth === 'none') return { text, inverse: true };
  return depth === '16' ? { text } : { text, ink: inkOn(colour), ground: colour };
}

/** Three cells that stand for the yarn: its letter on its colour. */
export function sampleOf(sign: YarnSign, depth: ColourDepth, ascii = false): readonly Span[] {
  if (depth === 'none') return [{ text: `[${sign.letter}]` }];
  if (depth === '16') return [filled(sign, 2, depth, ascii), { text: sign.letter }];
  return [onYarn(sign, ` ${sign.letter} `, depth)];
}

/** The yarn's name in its colour; the name alone tells it where there is none. */
export function chip(sign: YarnSign, name: string, depth: ColourDepth, ascii = false): readonly Span[] {
  if (depth === 'none') return [{ text: name }];
  return depth === '16'
    ? [filled(sign, 2, depth, ascii), { text: ` ${name}` }]
    : [onYarn(sign, ` ${name} `, depth)];
}

const shades: Readonly<Record<Pattern, string>> = {
  plain: '█',
  rising: '▓',
  dots: '▒',
  falling: '░',
  grid: '▚',
  level: '▞',
  upright: '▌',
};
const asciiShades: Readonly<Record<Pattern, string>> = {
  plain: '#',
  rising: '=',
  dots: ':',
  falling: '%',
  grid: '+',
  level: '-',
  upright: '|',
};

/** A sign that fills a cell with the yarn's pattern. */
const shadeOf = ({ pattern }: YarnSign, ascii: boolean): string => (ascii ? asciiShades : shades)[pattern];

/** The second colour of a pattern, no further from the yarn's than must be: from afar both are one. */
export const shadeColour = (colour: string, depth: ColourDepth): string =>
  mixColours(colour, inkOn(colour), depth === '16' ? 1 : 0.35);

/** `width` cells of the yarn. */
export function filled(sign: YarnSign, width: number, depth: ColourDepth, ascii = false): Span {
  if (depth === 'none') return { text: sign.letter.repeat(width) };
  if (sign.pattern === 'plain') return { text: ' '.repeat(width), ground: sign.colour };
  const text = shadeOf(sign, ascii).repeat(width);
  return { text, ink: sign.colour, ground: shadeColour(sign.colour, depth) };
}
