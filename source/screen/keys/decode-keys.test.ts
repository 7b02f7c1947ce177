import { describe, expect, test } from 'vitest';
import { createKeyDecoder } from './decode-keys.ts';
import { type Key, keyId, makeKey } from './key.ts';

const decode = (...chunks: string[]): readonly Key[] => {
  const decoder = createKeyDecoder();
  return [...chunks.flatMap((chunk) => decoder.push(chunk)), ...decoder.flush()];
};
const ids = (...chunks: string[]): string[] => decode(...chunks).map(keyId);
const typed = (...chunks: string[]): string =>
  decode(...chunks)
    .map((key) => key.text)
    .join('');

describe('text', () => {
  test('keys that arrive together are as many keys', () => {
    expect(ids('  ')).toEqual(['space', 'space']);
    expect(ids('ab\x03')).toEqual(['a', 'b', 'ctrl+c']);
    expect(ids('undo\r')).toEqual(['u', 'n', 'd', 'o', 'enter']);
  });

  test('a capital is its letter with shift, and types itself', () => {
    expect(decode('B?é')).toEqual([
      makeKey('b', { text: 'B', shift: true }),
      makeKey('?', { text: '?' }),
      makeKey('é', { text: 'é' }),
    ]);
  });

  test('Ctrl takes 64 off the code of the capital (ASCII)', () => {
    expect(ids('\x00\x01\x1a\x1c\x1d\x1e\x1f')).toEqual([
      ...['ctrl+space', 'ctrl+a', 'ctrl+z', 'ctrl+\\', 'ctrl+]', 'ctrl+^', 'ctrl+_'],
    ]);
  });

  test('a line end of two characters is one Enter, even cut in two', () => {
    expect(ids('\r\n')).toEqual(['enter']);
    expect(ids('\r', '\n')).toEqual(['enter']);
    expect(ids('\r\r', '\n\n')).toEqual(['enter', 'enter', 'enter']);
  });

  test('both codes of Backspace are Backspace', () => {
    expect(ids('\x7f\b\t')).toEqual(['backspace', 'backspace', 'tab']);
  });

  test('a character of two units survives a cut between them', () => {
    expect(typed('\ud83e', '\uddf6')).toBe('🧶');
  });

  test('broken characters are not typed', () => {
    expect(typed('a\ud83eb\uddf6c\ufffdd\x85e')).toBe('abcde');
  });
});

describe('Escape and Alt', () => {
  test('an Escape waits for what may follow, and is a key when nothing does', () => {
    const decoder = createKeyDecoder();
    expect(decoder.push('\x1b')).toEqual([]);
    expect(decoder.waitingFor()).toBe('escape');
    expect(decoder.flush()).toEqual([makeKey('escape')]);
    expect(decoder.waitingFor()).toBe('nothing');
  });

  test('two Escapes are two keys', () => {
    expect(ids('\x1b\x1b')).toEqual(['escape', 'escape']);
  });

  test('Alt sends Escape before the key', () => {
    expect(ids('\x1bb\x1bB\x1b\x7f\x1b\r\x1b\x12\x1bé')).toEqual([
      ...['alt+b', 'alt+shift+b', 'alt+backspace', 'alt+enter', 'ctrl+alt+r', 'alt+é'],
    ]);
    expect(typed('\x1bb')).toBe('');
  });

  test('Alt with a key that could begin a sequence is told by time', () => {
    expect(['\x1b[', '\x1bO', '\x1b]', '\x1bP'].flatMap((chunk) => ids(chunk))).toEqual([
      ...['alt+[', 'alt+shift+o', 'alt+]', 'alt+shift+p'],
    ]);
  });

  test('Alt with an arrow sends Escape before its sequence in some terminals', () => {
    expect(ids('\x1b\x1b[A\x1b\x1bOB')).toEqual(['alt+up', 'alt+down']);
  });
});

describe('paste', () => {
  test('a bracketed paste is one key with its text, line ends as \\n', () => {
    expect(decode('a\x1b[200~two\r\nlines\rmore\x1b[201~b')).toEqual([
      makeKey('a', { text: 'a' }),
      makeKey('paste', { text: 'two\nlines\nmore' }),
      makeKey('b', { text: 'b' }),
    ]);
  });

  test('control sequences in a paste do not act and are not kept', () => {
    expect(decode('\x1b[200~a\x03b\x1b[31mc\x1b[Ad\te\x1b[201~')).toEqual([
      makeKey('paste', { text: 'abcd\te' }),
    ]);
  });

  test('a paste that never ends is given up with what came of it', () => {
    const decoder = createKeyDecoder();
    decoder.push('\x1b[200~half a bag\x1b[20');
    expect(decoder.waitingFor()).toBe('paste');
    expect(decoder.flush().map((key) => key.text)).toEqual(['half a bag']);
    expect(decoder.push('x').map(keyId)).toEqual(['x']);
  });

  test('a paste holds 65,536 characters and its end is still found', () => {
    const [paste, after] = decode('\x1b[200~', ...Array(9).fill('m'.repeat(10_000)), '\x1b[201~z');
    expect(paste?.text).toHaveLength(65_536);
    expect(after).toEqual(makeKey('z', { text: 'z' }));
  });

  test('without brackets a run of more than eight characters in one read is a paste', () => {
    expect(ids('12345678')).toHaveLength(8);
    expect(decode('123456789')).toEqual([makeKey('paste', { text: '123456789' })]);
    expect(decode('first line\nsecond')).toEqual([makeKey('paste', { text: 'first line\nsecond' })]);
  });

  test('line ends behind such a run, and other keys around it, stay keys', () => {
    expect(ids('\x03rip back 12\r')).toEqual(['ctrl+c', 'paste', 'enter']);
    expect(ids('rip back 12\x7f\x7f')).toEqual(['paste', 'backspace', 'backspace']);
  });

  test('presses of a switch stay keys before and behind what was typed, when all is read at once', () => {
    expect(ids('bbb/where')).toEqual([...'bbb/where']);
    expect(ids('b/note loose\rbb')).toEqual(['b', 'paste', 'enter', 'b', 'b']);
    expect(ids('bag of mint\ra word')).toEqual(['paste']);
    expect(decode(`${'bc'.repeat(50_000)}`)).toHaveLength(1);
  });

  test('one character over and over is a held key that came late', () => {
    expect(ids('bbbbbbbbbbbb')).toEqual(Array(12).fill('b'));
    expect(ids('b'.repeat(200))).toEqual(['paste']);
  });
});

describe('what is swallowed', () => {
  // xterm control sequences: focus, mouse (X10, SGR, urxvt), DA1, DA2, DECRPM, CPR, window size, colour query
  // (OSC 11), XTGETTCAP; kitty keyboard protocol: the query of its flags. From memory.
  test.each([
    ['focus in and out', '\x1b[I\x1b[O'],
    ['X10 mouse', '\x1b[M !!\x1b[M#zz'],
    ['SGR mouse', '\x1b[<0;12;5M\x1b[<0;12;5m'],
    ['urxvt mouse', '\x1b[32;12;5M'],
    ['device attributes', '\x1b[?62;22c\x1b[>41;354;0c'],
    ['mode report', '\x1b[?2026;2$y'],
    ['cursor position', '\x1b[24;80R'],
    ['window size', '\x1b[8;24;80t'],
    ['kitty flags', '\x1b[?0u'],
    ['colour, ended by BEL and by ST', '\x1b]11;rgb:1e1e/2e2e/3e3e\x07\x1b]11;rgb:0/0/0\x1b\\'],
    ['terminfo query', '\x1bP1+r544e=787465726d\x1b\\'],
    ['eight-bit controls', '\x9b24;80R\x9d11;x\x9c\x90q\x9c'],
    ['modifier keys of the kitty protocol', '\x1b[57441;2u\x1b[57442;5:3u'],
    ['unknown functional codes', '\x1b[57500u\x1b[63743u'],
    ['invalid code points', '\x1b[1114112u\x1b[55296u\x1b[999999999999u\x1b[65533u\x1b[0u\x1b[1u'],
    ['unknown kinds, modifiers and too many fields', '\x1b[97;1:4u\x1b[97;999u\x1b[97;1;97;97u'],
    ['keys of the desktop (super)', '\x1b[98;9u'],
    ['unknown finals and numbers', '\x1b[5z\x1b[99~\x1b[1;2;3A\x1b[1;2;3;4A\x1bO!\x1b[[Z\x1b[[[A'],
    ['a stray end of paste', '\x1b[201~'],
  ])('%s', (_name, input) => {
    expect(ids(`${input}b`)).toEqual(['b']);
    expect(ids(...input, 'b')).toEqual(['b']);
  });

  test('a sequence that breaks off gives way to the key that breaks it', () => {
    expect(ids('\x1b[1;\x03')).toEqual(['ctrl+c']);
    expect(ids('\x1b]11;rgb:\x03x')).toEqual(['ctrl+c', 'x']);
    expect(ids('\x1b[1;\x1b[A')).toEqual(['up']);
    expect(ids('\x1b[Mé\r\x1b[Méé\r')).toEqual(['enter', 'enter']);
  });

  test('a broken sequence is dropped when it is given up', () => {
    const decoder = createKeyDecoder();
    decoder.push('\x1b[1;2');
    expect(decoder.waitingFor()).toBe('sequence');
    expect(decoder.flush()).toEqual([]);
  });

  test('a sequence of any length is swallowed to its end without being kept', () => {
    const parts = Array(500).fill('1;1;1;'.repeat(100));
    expect(ids('\x1b[', ...parts, 'Ab')).toEqual(['b']);
    expect(ids('\x1b]', ...parts, '\x1b', '\\b')).toEqual(['b']);
    expect(ids('\x1b]', `${parts[0]}\x1b`, '\\b')).toEqual(['b']);
    expect(ids('\x1bO', ...parts, 'Ab')).toEqual(['b']);
    expect(ids(`\x1b[${parts.join('')}Ab`)).toEqual(['b']);
  });
});
