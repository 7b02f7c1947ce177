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
export interface Square {
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
