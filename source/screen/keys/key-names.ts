// What each code in a key sequence stands for. From xterm's control sequences ("PC-Style" and "VT220-Style
// Function Keys"), the Linux console, rxvt, and the functional key table of the kitty keyboard protocol.

const numbered = (first: number, names: readonly string[]): Map<number, string> =>
  new Map(names.map((name, place) => [first + place, name]));

const functionKeys = (from: number, to: number): string[] =>
  Array.from({ length: to - from + 1 }, (_, place) => `f${from + place}`);

/** `CSI number ~`. The gaps at 16, 22, 27 and 30 are those of the VT220. */
export const tildeNames: ReadonlyMap<number, string> = new Map([
  ...numbered(1, ['home', 'insert', 'delete', 'end', 'page-up', 'page-down', 'home', 'end']),
  ...numbered(11, functionKeys(1, 5)),
  ...numbered(17, functionKeys(6, 10)),
  ...numbered(23, functionKeys(11, 14)),
  ...numbered(28, functionKeys(15, 16)),
  ...numbered(31, functionKeys(17, 20)),
]);

/** `CSI 1 ; modifiers letter`, or `CSI letter` and `SS3 letter` without modifiers. */
export const letterNames: ReadonlyMap<string, string> = new Map([
  ['A', 'up'],
  ['B', 'down'],
  ['C', 'right'],
  ['D', 'left'],
  ['E', 'begin'],
  ['F', 'end'],
  ['H', 'home'],
  ['P', 'f1'],
  ['Q', 'f2'],
  ['R', 'f3'],
  ['S', 'f4'],
]);

/** rxvt: a small letter is an arrow with shift after CSI, with ctrl after SS3. */
export const smallArrowNames: ReadonlyMap<string, string> = new Map([
  ['a', 'up'],
  ['b', 'down'],
  ['c', 'right'],
  ['d', 'left'],
]);

/** Linux console: `CSI [ letter`. */
export const consoleNames: ReadonlyMap<string, string> = new Map(
  functionKeys(1, 5).map((name, place) => ['ABCDE'.charAt(place), name]),
);

/** The keypad in application mode: `SS3 letter`. Its keys count as those of the main block. */
export const keypadCharacters: ReadonlyMap<string, string> = new Map(
  [...'jklmnopqrstuvwxyX '].map((letter, place) => [letter, '*+,-./0123456789= '.charAt(place)]),
);

const mediaNames = [
  ...['media-play', 'media-pause', 'media-play-pause', 'media-reverse', 'media-stop', 'media-forward'],
  ...['media-rewind', 'media-next', 'media-previous', 'media-record'],
  ...['volume-down', 'volume-up', 'volume-mute'],
];
const keypadNames = [
  ...['enter', '=', ',', 'left', 'right', 'up', 'down', 'page-up', 'page-down'],
  ...['home', 'end', 'insert', 'delete', 'begin'],
];

/** `CSI code u`: keys that are no character. Characters in the keypad's part of the table type themselves. */
export const codeNames: ReadonlyMap<number, string> = new Map([
  ...numbered(8, ['backspace', 'tab']),
  ...numbered(13, ['enter']),
  ...numbered(27, ['escape']),
  ...numbered(127, ['backspace']),
  ...numbered(57358, ['caps-lock', 'scroll-lock', 'num-lock', 'print-screen', 'pause', 'menu']),
  ...numbered(57376, functionKeys(13, 35)),
  ...numbered(57399, [...'0123456789./*-+']),
  ...numbered(57414, keypadNames),
  ...numbered(57428, mediaNames),
]);
