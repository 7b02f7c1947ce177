/** Letters five cells high, to be read from across the bed. A legibility rule of thumb asks for 1/200 of the distance. */
const glyphs: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries({
    A: '.##. #..# #### #..# #..#',
    B: '###. #..# ###. #..# ###.',
    C: '.### #... #... #... .###',
    D: '###. #..# #..# #..# ###.',
    E: '#### #... ###. #... ####',
    F: '#### #... ###. #... #...',
    G: '.### #... #.## #..# .###',
    H: '#..# #..# #### #..# #..#',
    I: '### .#. .#. .#. ###',
    J: '..## ...# ...# #..# .##.',
    K: '#..# #.#. ##.. #.#. #..#',
    L: '#... #... #... #... ####',
    M: '#...# ##.## #.#.# #...# #...#',
    N: '#..# ##.# #.## #..# #..#',
    O: '.##. #..# #..# #..# .##.',
    P: '###. #..# ###. #... #...',
    Q: '.##. #..# #..# #.## .###',
    R: '###. #..# ###. #.#. #..#',
    S: '.### #... .##. ...# ###.',
    T: '##### ..#.. ..#.. ..#.. ..#..',
    U: '#..# #..# #..# #..# .##.',
    V: '#...# #...# .#.#. .#.#. ..#..',
    W: '#...# #...# #.#.# ##.## #...#',
    X: '#..# #..# .##. #..# #..#',
    Y: '#...# .#.#. ..#.. ..#.. ..#..',
    Z: '#### ...# .##. #... ####',
    Ä: '#..# .... .##. #### #..#',
    Ö: '#..# .... .##. #..# .##.',
    Ü: '#..# .... #..# #..# .##.',
    0: '.##. #..# #..# #..# .##.',
    1: '.#. ##. .#. .#. ###',
    2: '###. ...# .##. #... ####',
    3: '###. ...# .##. ...# ###.',
    4: '#..# #..# #### ...# ...#',
    5: '#### #... ###. ...# ###.',
    6: '.##. #... ###. #..# .##.',
    7: '#### ...# ..#. .#.. .#..',
    8: '.##. #..# .##. #..# .##.',
    9: '.##. #..# .### ...# .##.',
    '/': '...# ..#. ..#. .#.. #...',
    '-': '.... .... #### .... ....',
    ' ': '.. .. .. .. ..',
  }).map(([letter, rows]) => [letter, rows.split(' ')]),
);

export const bigHeight = 5;

/** `text` in big letters, five strings; null when it has a letter without one or would be wider than `width`. */
export function bigLetters(text: string, width: number, ink = '#'): readonly string[] | null {
  const letters = [...text.toUpperCase()].map((letter) => glyphs.get(letter));
  if (letters.some((rows) => rows === undefined)) return null;
  const lines = Array.from({ length: bigHeight }, (_, row) =>
    letters
      .map((rows) => rows?.[row] ?? '')
      .join('.')
      .replaceAll('.', ' ')
      .replaceAll('#', ink),
  );
  return (lines[0]?.length ?? 0) <= width ? lines : null;
}
