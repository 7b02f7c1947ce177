import { emitKeypressEvents } from 'node:readline';
import { PassThrough } from 'node:stream';
import { describe, expect, test } from 'vitest';
import { createKeyDecoder } from './decode-keys.ts';
import { type Key, keyId, makeKey } from './key.ts';

const decode = (input: string): readonly Key[] => createKeyDecoder().push(input);
const ids = (input: string): string[] => decode(input).map(keyId);

// xterm control sequences, "PC-Style Function Keys" and "VT220-Style Function Keys" (from memory). The
// numbers of CSI … ~ skip 16, 22, 27, 30 as on the VT220.
const vt220 = [11, 12, 13, 14, 15, 17, 18, 19, 20, 21, 23, 24, 25, 26, 28, 29, 31, 32, 33, 34];
const arrows = [
  ['up', 'A'],
  ['down', 'B'],
  ['right', 'C'],
  ['left', 'D'],
  ['home', 'H'],
  ['end', 'F'],
] as const;
const edits = [
  ['home', 1],
  ['insert', 2],
  ['delete', 3],
  ['end', 4],
  ['page-up', 5],
  ['page-down', 6],
] as const;
// Modifiers are sent as one more than the sum of shift 1, alt 2, ctrl 4.
const modifiers = [
  '',
  'shift+',
  'alt+',
  'alt+shift+',
  'ctrl+',
  'ctrl+shift+',
  'ctrl+alt+',
  'ctrl+alt+shift+',
];

describe('xterm', () => {
  test.each(vt220.map((number, place) => [`f${place + 1}`, number]))('%s is CSI %i ~', (name, number) => {
    expect(ids(`\x1b[${number}~`)).toEqual([name]);
  });

  test.each(['P', 'Q', 'R', 'S'].map((letter, place) => [`f${place + 1}`, letter]))(
    '%s is SS3 %s',
    (name, letter) => {
      expect(ids(`\x1bO${letter}`)).toEqual([name]);
    },
  );

  // terminfo of xterm: kf13 = CSI 1;2P … kf16 = CSI 1;2S, kf17 = CSI 15;2~ … kf24 = CSI 24;2~.
  test('F13 to F24 are F1 to F12 with shift', () => {
    const first = ['P', 'Q', 'R', 'S'].map((letter) => `\x1b[1;2${letter}`);
    const rest = vt220.slice(4, 12).map((number) => `\x1b[${number};2~`);
    expect(ids([...first, ...rest].join(''))).toEqual(
      Array.from({ length: 12 }, (_, place) => `f${place + 13}`),
    );
  });

  test.each(arrows)('%s is CSI %s or SS3 %s, with any modifiers before the letter', (name, letter) => {
    expect(ids(`\x1b[${letter}\x1bO${letter}`)).toEqual([name, name]);
    const modified = modifiers.map((_, place) => `\x1b[1;${place + 1}${letter}`).join('');
    expect(ids(modified)).toEqual(modifiers.map((held) => held + name));
  });

  test.each(edits)('%s is CSI %i ~, with any modifiers behind the number', (name, number) => {
    const modified = modifiers.map((_, place) => `\x1b[${number};${place + 1}~`).join('');
    expect(ids(`\x1b[${number}~${modified}`)).toEqual([name, ...modifiers.map((held) => held + name)]);
  });

  test('Shift-Tab is CSI Z', () => {
    expect(ids('\x1b[Z')).toEqual(['shift+tab']);
  });

  test('the keypad in application mode types as the main keys do', () => {
    const keys = decode('\x1bOp\x1bOy\x1bOk\x1bOn\x1bOX\x1bO \x1bOM\x1bOI');
    expect(keys.map((key) => key.text).join('')).toBe('09+.= ');
    expect(keys.slice(-2).map(keyId)).toEqual(['enter', 'tab']);
  });

  // "modifyOtherKeys": CSI 27 ; modifiers ; code ~, the code being that of the character typed.
  test('modifyOtherKeys names other keys by their character', () => {
    expect(ids('\x1b[27;5;114~\x1b[27;6;82~\x1b[27;2;13~\x1b[27;5;9~\x1b[27;3;32~')).toEqual([
      ...['ctrl+r', 'ctrl+shift+r', 'shift+enter', 'ctrl+tab', 'alt+space'],
    ]);
    expect(decode('\x1b[27;2;64~')).toEqual([makeKey('@', { text: '@' })]);
  });
});

describe('other terminals', () => {
  test('the Linux console has CSI [ A to E for F1 to F5', () => {
    expect(ids('\x1b[[A\x1b[[B\x1b[[C\x1b[[D\x1b[[E')).toEqual(['f1', 'f2', 'f3', 'f4', 'f5']);
  });

  // From memory of their terminfo entries.
  test('rxvt has small letters for modified arrows and 7, 8 for Home, End', () => {
    expect(ids('\x1b[a\x1b[d\x1bOa\x1bOd\x1b[7~\x1b[8~')).toEqual([
      ...['shift+up', 'shift+left', 'ctrl+up', 'ctrl+left', 'home', 'end'],
    ]);
  });

  test('older ones put the modifiers of F1 to F4 behind SS3', () => {
    expect(ids('\x1bO5P\x1bO1;2Q')).toEqual(['ctrl+f1', 'f14']);
  });
});

// The kitty keyboard protocol, "Comprehensive keyboard handling in terminals" (from memory): CSI
// code : shifted code : base code ; modifiers : kind ; text u; kinds press 1, repeat 2, release 3.
describe('kitty keyboard protocol', () => {
  test('keys are told apart from one another and from their text', () => {
    expect(ids('\x1b[114;5u\x1b[114;6u\x1b[27u\x1b[13;2u\x1b[9;5u\x1b[127;3u\x1b[32;5u')).toEqual([
      ...['ctrl+r', 'ctrl+shift+r', 'escape', 'shift+enter', 'ctrl+tab', 'alt+backspace', 'ctrl+space'],
    ]);
    expect(ids('\x1b[105;5u')).toEqual(['ctrl+i']);
  });

  test('kinds are told, and a release types nothing', () => {
    expect(decode('\x1b[98;1:1;98u\x1b[98;1:2;98u\x1b[98;1:3u')).toEqual([
      makeKey('b', { text: 'b' }),
      makeKey('b', { text: 'b', kind: 'repeat' }),
      makeKey('b', { kind: 'release' }),
    ]);
    expect(decode('\x1b[1;1:3A\x1b[3;5:2~\x1b[57376;1:3u')).toEqual([
      makeKey('up', { kind: 'release' }),
      makeKey('delete', { ctrl: true, kind: 'repeat' }),
      makeKey('f13', { kind: 'release' }),
    ]);
  });

  test('the text sent along is what is typed, the same key as in any other terminal', () => {
    expect(decode('\x1b[98;2;66u\x1b[47:63;2;63u\x1b[32;;32u')).toEqual(decode('B? '));
    expect(decode('\x1b[101;;233u')).toEqual(decode('é'));
  });

  test('without text it is the shifted code, or the capital, or nothing rather than a guess', () => {
    const keys = decode('\x1b[50:64;2u\x1b[98;2u\x1b[98;65u\x1b[98;66u\x1b[50;2u');
    expect(keys.map((key) => key.text)).toEqual(['@', 'B', 'B', 'b', '']);
  });

  test('keypad, lock and media keys and those up to F35 have their own codes', () => {
    expect(ids('\x1b[57376u\x1b[57387u\x1b[57398u')).toEqual(['f13', 'f24', 'f35']);
    expect(ids('\x1b[57358u\x1b[57361u\x1b[57363u')).toEqual(['caps-lock', 'print-screen', 'menu']);
    expect(ids('\x1b[57428u\x1b[57430u\x1b[57435u\x1b[57436u\x1b[57440u')).toEqual([
      ...['media-play', 'media-play-pause', 'media-next', 'media-previous', 'volume-mute'],
    ]);
    expect(decode('\x1b[57400u')).toEqual(decode('1'));
    expect(ids('\x1b[57413u\x1b[57414u\x1b[57417u\x1b[57426u\x1b[57427u')).toEqual([
      ...['+', 'enter', 'left', 'delete', 'begin'],
    ]);
  });

  test('lock keys that are on change no name', () => {
    expect(ids('\x1b[1;129A\x1b[57376;193u')).toEqual(['up', 'f13']);
  });
});

// A second opinion: the key parser inside Node.
describe("Node's own reading of the same sequences", () => {
  const renamed: Record<string, string> = { pageup: 'page-up', pagedown: 'page-down', return: 'enter' };
  function nodeId(sequence: string): string {
    const input = new PassThrough();
    const seen: string[] = [];
    emitKeypressEvents(input);
    input.on('keypress', (_text, key) => {
      const held = [key.ctrl && 'ctrl', key.meta && 'alt', key.shift && 'shift'].filter(Boolean);
      seen.push([...held, renamed[key.name] ?? key.name].join('+'));
    });
    input.emit('data', Buffer.from(sequence));
    return seen.join(' ');
  }
  const letters = [...'ABCDHF'].flatMap((letter) => [
    `\x1b[${letter}`,
    `\x1bO${letter}`,
    `\x1b[1;5${letter}`,
  ]);
  const numbers = [1, 2, 3, 4, 5, 6, 7, 8, 11, 12, 13, 14, 15, 17, 18, 19, 20, 21, 23, 24];
  const tildes = numbers.flatMap((number) => [`\x1b[${number}~`, `\x1b[${number};5~`, `\x1b[${number};3~`]);
  const others = [
    '\x1b[Z',
    '\x1b[[A',
    '\x1b[[E',
    '\x1bOP',
    '\x1bOS',
    '\x1b[a',
    '\x1bOd',
    '\r',
    '\t',
    '\x7f',
    '\b',
  ];
  // Node has no name for Alt with Ctrl and a letter.
  const plain = [...[...'azBZ \x01\x12\x1a'], ...[...'azBZ '].map((each) => `\x1b${each}`)];

  test.each([...letters, ...tildes, ...others, ...plain])('%j', (sequence) => {
    expect(ids(sequence)).toEqual([nodeId(sequence)]);
  });
});
