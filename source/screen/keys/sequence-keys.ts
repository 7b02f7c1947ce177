import { characterKey, type Key, type KeyKind, makeKey } from './key.ts';

// What each code in a key sequence stands for. From xterm's control sequences ("PC-Style" and "VT220-Style
// Function Keys"), the Linux console, rxvt, and the functional key table of the kitty keyboard protocol.

const numbered = (first: number, names: readonly string[]): Map<number, string> =>
  new Map(names.map((name, place) => [first + place, name]));

const functionKeys = (from: number, to: number): string[] =>
  Array.from({ length: to - from + 1 }, (_, place) => `f${from + place}`);

/** `CSI number ~`. The gaps at 16, 22, 27 and 30 are those of the VT220. */
const tildeNames: ReadonlyMap<number, string> = new Map([
  ...numbered(1, ['home', 'insert', 'delete', 'end', 'page-up', 'page-down', 'home', 'end']),
  ...numbered(11, functionKeys(1, 5)),
  ...numbered(17, functionKeys(6, 10)),
  ...numbered(23, functionKeys(11, 14)),
  ...numbered(28, functionKeys(15, 16)),
  ...numbered(31, functionKeys(17, 20)),
]);

/** `CSI 1 ; modifiers letter`, or `CSI letter` and `SS3 letter` without modifiers. */
const letterNames: ReadonlyMap<string, string> = new Map([
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
const smallArrowNames: ReadonlyMap<string, string> = new Map([
  ['a', 'up'],
  ['b', 'down'],
  ['c', 'right'],
  ['d', 'left'],
]);

/** Linux console: `CSI [ letter`. */
const consoleNames: ReadonlyMap<string, string> = new Map(
  functionKeys(1, 5).map((name, place) => ['ABCDE'.charAt(place), name]),
);

/** The keypad in application mode: `SS3 letter`. Its keys count as those of the main block. */
const keypadCharacters: ReadonlyMap<string, string> = new Map(
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
const codeNames: ReadonlyMap<number, string> = new Map([
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

/** Parameters between semicolons, each with its parts between colons; 0 stands for one left out. */
type Fields = readonly (readonly number[])[];
type Modifiers = { ctrl: boolean; alt: boolean; shift: boolean; caps: boolean; kind: KeyKind };

const noModifiers: Modifiers = { ctrl: false, alt: false, shift: false, caps: false, kind: 'press' };
const kinds: readonly KeyKind[] = ['press', 'press', 'repeat', 'release'];

function readFields(body: string): Fields | undefined {
  if (!/^[0-9:;]{0,200}$/.test(body)) return undefined;
  return body.split(';').map((field) => field.split(':').map(Number));
}

// Modifiers are sent as 1 + shift 1, alt 2, ctrl 4, super 8, hyper 16, meta 32, caps lock 64, num lock 128.
// Keys with super, hyper or meta belong to the desktop and are nothing to us.
function readModifiers([bitsAndOne, kind]: readonly number[] = []): Modifiers | undefined {
  const bits = (bitsAndOne || 1) - 1;
  const named = kinds[kind ?? 0];
  if (bits > 255 || bits & 0b111000 || named === undefined) return undefined;
  return { shift: !!(bits & 1), alt: !!(bits & 2), ctrl: !!(bits & 4), caps: !!(bits & 64), kind: named };
}

const held = ({ caps: _, ...modifiers }: Modifiers) => modifiers;

// xterm has no codes of its own above F12: it sends F13 to F24 as shift with F1 to F12.
function namedKey(name: string | undefined, modifiers: Modifiers): Key | undefined {
  if (name === undefined) return undefined;
  const number = Number(/^f(\d+)$/.exec(name)?.[1]);
  if (modifiers.shift && number <= 12)
    return makeKey(`f${number + 12}`, { ...held(modifiers), shift: false });
  return makeKey(name, held(modifiers));
}

const isPrintable = (code: number): boolean =>
  code <= 0x10ffff && code !== 0xfffd && !/[\p{Cc}\p{Cs}]/u.test(String.fromCodePoint(code));

function typedText(code: number, shifted: number, modifiers: Modifiers): string {
  if (shifted && modifiers.shift && isPrintable(shifted)) return String.fromCodePoint(shifted);
  const character = String.fromCodePoint(code);
  if (!modifiers.shift && !modifiers.caps) return character;
  const upper = character.toUpperCase();
  // Shift with a figure types something that only the keyboard's layout knows: better nothing than a guess.
  if (upper === character && modifiers.shift && character !== ' ' && /\P{L}/u.test(character)) return '';
  return modifiers.shift && modifiers.caps ? character : upper;
}

function codeKey([[code = 0, shifted = 0] = [], , texts]: Fields, modifiers: Modifiers): Key | undefined {
  const name = codeNames.get(code);
  if (name !== undefined && name.length > 1) return namedKey(name, modifiers);
  if (name !== undefined) return characterKey(name, held(modifiers));
  if ((code >= 57344 && code <= 63743) || !isPrintable(code)) return undefined;
  const sent = (texts ?? []).filter((each) => each > 0 && isPrintable(each));
  const text = sent.length > 0 ? String.fromCodePoint(...sent) : typedText(code, shifted, modifiers);
  if (modifiers.ctrl || modifiers.alt || text === '') {
    const plain = characterKey(String.fromCodePoint(code), held(modifiers));
    return { ...plain, shift: plain.shift || modifiers.shift, text: '' };
  }
  return characterKey(text, held(modifiers));
}

function letterKey(fields: Fields, final: string, modifiers: Modifiers): Key | undefined {
  const first = fields[0]?.[0] ?? 0;
  if (first > 1 || fields.length > 2) return undefined;
  if (final === 'Z') return makeKey('tab', { ...held(modifiers), shift: true });
  const arrow = smallArrowNames.get(final);
  return arrow
    ? makeKey(arrow, { ...held(modifiers), shift: true })
    : namedKey(letterNames.get(final), modifiers);
}

/**
 * The key of a `CSI body final` sequence, or undefined when it is none: focus and mouse reports, replies
 * of the terminal, anything unknown. Sources: xterm control sequences (function keys, modifyOtherKeys as
 * `CSI 27 ; modifiers ; code ~`) and the kitty keyboard protocol (`CSI code ; modifiers : kind ; text u`).
 * A cursor report from the first row looks like F3 with modifiers; never ask for one.
 */
export function decodeCsi(body: string, final: string): Key | undefined {
  if (body === '[') return namedKey(consoleNames.get(final), noModifiers);
  const fields = readFields(body);
  const modifiers = readModifiers(fields?.[1]);
  if (!fields || !modifiers || fields.length > 3) return undefined;
  if (final === 'u') return codeKey(fields, modifiers);
  if (final !== '~') return letterKey(fields, final, modifiers);
  const [first, , other] = fields;
  // modifyOtherKeys names the character as typed: its shifted form is itself.
  if (first?.[0] === 27 && other) return codeKey([[other[0] ?? 0, other[0] ?? 0]], modifiers);
  return other ? undefined : namedKey(tildeNames.get(first?.[0] ?? 0), modifiers);
}

/** The key of an `SS3 body final` sequence, with older modifiers in its body, or undefined. */
export function decodeSs3(body: string, final: string): Key | undefined {
  const older = /^(?:1;)?(\d{0,3})$/.exec(body)?.[1];
  const modifiers = older === undefined ? undefined : readModifiers([Number(older)]);
  if (!modifiers) return undefined;
  if (final === 'M') return makeKey('enter', held(modifiers));
  if (final === 'I') return makeKey('tab', held(modifiers));
  const arrow = smallArrowNames.get(final);
  if (arrow) return makeKey(arrow, { ...held(modifiers), ctrl: true });
  const character = keypadCharacters.get(final);
  return character ? characterKey(character, held(modifiers)) : namedKey(letterNames.get(final), modifiers);
}
