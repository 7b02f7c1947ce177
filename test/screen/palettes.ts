/**
 * Colour schemes of terminals: two of today's with true colour, the defaults of xterm and of the VGA console, and one of the
 * teal kind, in which bright colours are greys (values from memory, the first two invented).
 */

import { fixedColour } from '../../source/shared/shown-colour.ts';
import type { Cell } from '../sheet/screen.ts';

export interface Scheme {
  readonly ink: string;
  readonly ground: string;
  /** The 16. */
  readonly colours: readonly string[];
}

const xterm = (
  '#000000 #cd0000 #00cd00 #cdcd00 #0000ee #cd00cd #00cdcd #e5e5e5 ' +
  '#7f7f7f #ff0000 #00ff00 #ffff00 #5c5cff #ff00ff #00ffff #ffffff'
).split(' ');
const vga = (
  '#000000 #aa0000 #00aa00 #aa5500 #0000aa #aa00aa #00aaaa #aaaaaa ' +
  '#555555 #ff5555 #55ff55 #ffff55 #5555ff #ff55ff #55ffff #ffffff'
).split(' ');
const teal = (
  '#073642 #dc322f #859900 #b58900 #268bd2 #d33682 #2aa198 #eee8d5 ' +
  '#002b36 #cb4b16 #586e75 #657b83 #839496 #6c71c4 #93a1a1 #fdf6e3'
).split(' ');

export const schemes: Readonly<Record<string, Scheme>> = {
  dark: { ink: '#d8d8d8', ground: '#1d1e21', colours: xterm },
  light: { ink: '#1f2328', ground: '#ffffff', colours: xterm },
  xterm: { ink: '#e5e5e5', ground: '#000000', colours: xterm },
  vga: { ink: '#aaaaaa', ground: '#000000', colours: vga },
  teal: { ink: '#93a1a1', ground: '#002b36', colours: teal },
};

const parts = (colour: string): readonly number[] =>
  [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));

/** Many terminals show dim text two thirds of the way from ground to ink (from memory). */
const dimmed = (ink: string, ground: string): string =>
  `#${parts(ink)
    .map((value, i) =>
      Math.round((2 * value + (parts(ground)[i] ?? 0)) / 3)
        .toString(16)
        .padStart(2, '0'),
    )
    .join('')}`;

/** What a cell looks like in a scheme. */
export function lookOf(
  cell: Cell,
  { ink, ground, colours }: Scheme,
): { readonly ink: string; readonly ground: string } {
  const colourOf = (colour: string | null, own: string): string => {
    if (colour === null) return own;
    if (!colour.startsWith('ansi ')) return colour;
    const index = Number(colour.slice(5));
    return index < 16 ? (colours[index] ?? own) : fixedColour(index);
  };
  const [front, back] = [colourOf(cell.ink, ink), colourOf(cell.ground, ground)];
  const [shownInk, shownGround] = cell.inverse ? [back, front] : [front, back];
  return { ink: cell.dim ? dimmed(shownInk, shownGround) : shownInk, ground: shownGround };
}
