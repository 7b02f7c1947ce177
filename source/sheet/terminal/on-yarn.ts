/**
 * Text and fillings in a yarn's colour. Black or white on a true colour is always readable; among 16 colours no pair is
 * in every scheme, so text keeps the terminal's own colours there and stands beside the yarn's, not on it.
 */
import { inkOn } from '../../shared/colour.ts';
import type { ColourDepth } from '../../shared/shown-colour.ts';
import type { Pattern, YarnMark } from '../yarn-marks.ts';
import type { Span } from './ansi.ts';

export const edgeInk = (depth: ColourDepth): string | null =>
  depth === 'true' || depth === '256' ? '#808080' : null;

/** Text on the yarn's colour. */
export function onYarn({ colour }: YarnMark, text: string, depth: ColourDepth): Span {
  if (depth === 'none') return { text, inverse: true };
  return depth === '16' ? { text } : { text, ink: inkOn(colour), ground: colour };
}

/** Three cells that stand for the yarn: its letter on its colour. */
export function swatchOf(mark: YarnMark, depth: ColourDepth, ascii = false): readonly Span[] {
  if (depth === 'none') return [{ text: `[${mark.letter}]` }];
  if (depth === '16') return [filled(mark, 2, depth, ascii), { text: mark.letter }];
  return [onYarn(mark, ` ${mark.letter} `, depth)];
}

/** The yarn's name in its colour; the name alone tells it where there is none. */
export function chip(mark: YarnMark, name: string, depth: ColourDepth, ascii = false): readonly Span[] {
  if (depth === 'none') return [{ text: name }];
  return depth === '16'
    ? [filled(mark, 2, depth, ascii), { text: ` ${name}` }]
    : [onYarn(mark, ` ${name} `, depth)];
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
export const shadeOf = ({ pattern }: YarnMark, ascii: boolean): string =>
  (ascii ? asciiShades : shades)[pattern];

/** `width` cells of the yarn. */
export function filled(mark: YarnMark, width: number, depth: ColourDepth, ascii = false): Span {
  if (depth === 'none') return { text: mark.letter.repeat(width) };
  if (mark.pattern === 'plain') return { text: ' '.repeat(width), ground: mark.colour };
  const text = shadeOf(mark, ascii).repeat(width);
  return { text, ink: mark.colour, ground: inkOn(mark.colour) };
}
