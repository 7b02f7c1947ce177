/** The large letters of the band, and what it is drawn with: the yarn's colour and letters on it, in every depth of colour. */

import { inkOn } from '../../../shared/colour.ts';
import { edgeInk, filled, type Line, onYarn, type Span } from '../../../sheet/terminal/ansi.ts';
import type { BandText } from './band-text.ts';
import { type Brush, type Placed, rowOf } from './row.ts';

/**
 * Letters to be read from across the bed, five squares high: a square is one row and two cells, so that stems and bars are
 * equally heavy. The 0 has a slit; no two letters differ by fewer than two squares.
 */
const glyphs: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries({
    A: '.##. #..# #### #..# #..#',
    B: '###. #..# ###. #..# ###.',
    C: '.### #... #... #... .###',
    D: '###. #..# #..# #..# ###.',
    E: '#### #... ###. #... ####',
    F: '#### #... ###. #... #...',
    G: '.#### #.... #..## #...# .####',
    H: '#..# #..# #### #..# #..#',
    I: '### .#. .#. .#. ###',
    J: '..## ...# ...# #..# .##.',
    K: '#..# #.#. ##.. #.#. #..#',
    L: '#... #... #... #... ####',
    M: '#...# ##.## #.#.# #...# #...#',
    N: '#...# ##..# #.#.# #..## #...#',
    O: '.###. #...# #...# #...# .###.',
    P: '###. #..# ###. #... #...',
    Q: '.###. #...# #...# #..#. .##.#',
    R: '###. #..# ###. #.#. #..#',
    S: '.#### #.... .###. ....# ####.',
    T: '##### ..#.. ..#.. ..#.. ..#..',
    U: '#..# #..# #..# #..# .##.',
    V: '#...# #...# .#.#. .#.#. ..#..',
    W: '#...# #...# #.#.# ##.## #...#',
    X: '#...# .#.#. ..#.. .#.#. #...#',
    Y: '#...# .#.#. ..#.. ..#.. ..#..',
    Z: '##### ...#. ..#.. .#... #####',
    Ä: '#..# .... .##. #### #..#',
    Ö: '#...# ..... .###. #...# .###.',
    Ü: '#..# .... #..# #..# .##.',
    0: '.###. #..## #.#.# ##..# .###.',
    1: '.#. ##. .#. .#. ###',
    2: '###. ...# .##. #... ####',
    3: '###. ...# .##. ...# ###.',
    4: '#..# #..# #### ...# ...#',
    5: '#### #... ###. ...# ###.',
    6: '.##. #... ###. #..# .##.',
    7: '#### ...# ..#. .#.. .#..',
    8: '#### #..# #### #..# ####',
    9: '.##. #..# .### ...# .##.',
    '/': '...# ..#. ..#. .#.. #...',
    '-': '.... .... #### .... ....',
    ' ': '.. .. .. .. ..',
    '<': '...##...... ..##....... ########### ..##....... ...##......',
    '>': '......##... .......##.. ########### .......##.. ......##...',
  }).map(([letter, rows]) => [letter, rows.split(' ')]),
);

export const bigLetterNames: readonly string[] = [...glyphs.keys()];

export const bigHeight = 5;

/** Cells that one square is wide and rows that it is high. */
interface Square {
  readonly columns: number;
  readonly rows: number;
}

export const squareOf = (size: number): Square => ({ columns: 2 * size, rows: size });

/** The squares of `text`, `#` where they are full; null when it has a letter without any. An arrow is one sign, < or >. */
export function bigSquares(text: string): readonly string[] | null {
  const letters = [...text.toUpperCase()].map((letter) => glyphs.get(letter));
  if (letters.some((rows) => rows === undefined)) return null;
  return Array.from({ length: bigHeight }, (_, row) => letters.map((rows) => rows?.[row] ?? '').join('.'));
}

/** One yarn's part of the band. */
export interface BandBlock {
  readonly yarn: string | null;
  readonly width: number;
  readonly text: BandText;
}

export interface BandPaint {
  readonly fill: (cells: number) => Span;
  readonly text: (text: string) => Span;
  /** A full square of a big letter. */
  readonly square: (cells: number) => Span;
  /** Cells of which the upper, the lower, or both halves belong to a letter. */
  readonly halves: (text: string) => Span;
  readonly rim: (where: 'top' | 'bottom') => Line;
  /** Cells between the band's end and its text. */
  readonly inset: number;
}

/** Without a yarn of the bag in the hands there is no colour: two lines hold the text between them. */
export function paintOf({ yarn, width }: BandBlock, { signs, depth, ascii }: Brush): BandPaint {
  const sign = yarn === null ? undefined : signs.get(yarn);
  if (!sign) {
    const line = [{ text: (ascii ? '=' : '━').repeat(width) }];
    return {
      fill: (cells) => ({ text: ' '.repeat(cells) }),
      text: (text) => ({ text, bold: true }),
      square: (cells) => ({ text: (ascii ? '#' : '█').repeat(cells) }),
      halves: (text) => ({ text }),
      rim: () => line,
      inset: 2,
    };
  }
  const fill = (cells: number): Span =>
    depth === 'none' ? { text: ' '.repeat(cells), inverse: true } : filled(sign, cells, depth, ascii);
  const text = (wanted: string): Span => ({
    ...onYarn(sign, depth === '16' ? ` ${wanted} ` : wanted, depth),
    bold: true,
  });
  const [top, bottom] = ascii ? ['-', '_'] : ['▔', '▁'];
  return {
    fill,
    text,
    square: (cells) => {
      const text = ' '.repeat(cells);
      return depth === 'none' ? { text } : { text, ground: inkOn(sign.colour) };
    },
    halves: (text) =>
      depth === 'none' ? { text, inverse: true } : { text, ink: inkOn(sign.colour), ground: sign.colour },
    rim: (where) =>
      sign.edged && depth !== 'none'
        ? [{ text: (where === 'top' ? top : bottom).repeat(width), ink: edgeInk(depth), ground: sign.colour }]
        : [fill(width)],
    inset: 2,
  };
}

/** As large as there is room for; null where there is none for any. */
export const letterRows = (
  block: BandBlock,
  size: number,
  paint: BandPaint,
  ascii: boolean,
): readonly Line[] | null =>
  size < 1 ? null : (bigRows(block, size, paint) ?? (ascii ? null : halfRows(block, size, paint)));

/** Big letters at the side of the hands and, where they fit, an arrow or the count at the other side. */
function bigRows({ width, text }: BandBlock, size: number, paint: BandPaint): readonly Line[] | null {
  const { columns, rows } = squareOf(size);
  const room = Math.floor((width - 2 * paint.inset) / columns);
  const [first, last] = [text.big, text.bigBeside ?? ''];
  const wanted = bigSquares(first);
  const beside = bigSquares(last);
  if (first === '' || !wanted || (wanted[0]?.length ?? 0) > room) return null;
  const both = (wanted[0]?.length ?? 0) + (beside?.[0]?.length ?? 0) + 3 <= room && beside;
  return wanted.flatMap((squares, i) => {
    const other = both && last !== '' ? (beside[i] ?? '') : '';
    const [left, right] = text.side === 'left' ? [squares, other] : [other, squares];
    const line = rowOf(
      width,
      [
        ...at(left, paint.inset, columns, paint),
        ...at(right, width - paint.inset - right.length * columns, columns, paint),
      ],
      paint.fill,
    );
    return Array.from({ length: rows }, () => line);
  });
}

/** Where a word is too long for big letters it has letters of half their size: two squares a cell, one above the other. */
function halfRows({ width, text }: BandBlock, size: number, paint: BandPaint): readonly Line[] | null {
  const squares = bigSquares(text.big);
  const letters = squares?.[0]?.length ?? 0;
  const height = bigHeight * size;
  if (text.big === '' || !squares || letters > width - 2 * paint.inset) return null;
  const column = text.side === 'left' ? paint.inset : width - paint.inset - letters;
  const rows = Array.from({ length: Math.ceil(bigHeight / 2) }, (_, row) => {
    const [upper = '', lower = ''] = [squares[2 * row], squares[2 * row + 1]];
    const cells = [...upper].map((square, x) => halfSign[square === '#' ? 1 : 0][lower[x] === '#' ? 1 : 0]);
    const runs = [...cells.join('').matchAll(/[^ ]+/g)];
    const parts = runs.map(({ 0: run, index }) => ({ column: column + index, spans: [paint.halves(run)] }));
    return rowOf(width, parts, paint.fill);
  });
  const above = Math.floor((height - rows.length) / 2);
  const blank = rowOf(width, [], paint.fill);
  const blanks = (count: number): readonly Line[] => Array.from({ length: count }, () => blank);
  return [...blanks(above), ...rows, ...blanks(height - rows.length - above)];
}

/** By the upper half, then by the lower. */
const halfSign = [
  [' ', '▄'],
  ['▀', '█'],
] as const;

/** Runs of full squares at their columns. */
function at(squares: string, column: number, columns: number, paint: BandPaint): readonly Placed[] {
  return [...squares.matchAll(/#+/g)].map(({ 0: run, index }) => ({
    column: column + index * columns,
    spans: [paint.square(run.length * columns)],
  }));
}
