import { createInterface } from 'node:readline';
import { PassThrough } from 'node:stream';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { tries } from '../../../test/tools/tries.ts';
import { characterKey, type Key, makeKey } from '../keys/key.ts';
import { editLine, emptyLine, lineOf, longestLine, type TypedLine } from './prompt.ts';

const ctrl = (name: string) => makeKey(name, { ctrl: true });
const alt = (name: string) => makeKey(name, { alt: true });
const paste = (text: string) => makeKey('paste', { text });
const edit = (line: TypedLine, ...keys: Key[]): TypedLine => keys.reduce(editLine, line);
/** A line drawn with | for its cursor. */
const drawn = ({ text, cursor }: TypedLine): string => `${text.slice(0, cursor)}|${text.slice(cursor)}`;
const edited = (text: string, ...keys: Key[]): string => drawn(edit(lineOf(text), ...keys));

describe('a line', () => {
  test('takes text where the cursor is', () => {
    expect(edited('bg', makeKey('left'), characterKey('a'))).toBe('ba|g');
    expect(drawn(edit(emptyLine, ...[...'Mint 2'].map((each) => characterKey(each))))).toBe('Mint 2|');
  });

  test('takes a paste as one line', () => {
    expect(edited('note ', paste('plum,\n\n\tthen mint\n'))).toBe('note plum, then mint|');
  });

  test('moves and deletes by character as it is seen, not by its parts', () => {
    const family = '👩‍👩‍👧';
    expect(edited(`a${family}e\u0301`, makeKey('left'), makeKey('left'))).toBe(`a|${family}e\u0301`);
    expect(edited(`a${family}e\u0301`, makeKey('backspace'), makeKey('backspace'))).toBe('a|');
    expect(edited(`${family}b`, makeKey('home'), makeKey('delete'))).toBe('|b');
  });

  test('has words of any script', () => {
    expect(edited('fünf Größen', alt('b'))).toBe('fünf |Größen');
    expect(edited('fünf Größen', makeKey('home'), ctrl('right'))).toBe('fünf |Größen');
  });

  test('stays as it is at its ends', () => {
    const line = lineOf('');
    for (const name of ['left', 'right', 'backspace', 'delete', 'home', 'end']) {
      expect(editLine(line, makeKey(name))).toEqual(line);
    }
  });

  test('takes no more than its longest, and no half character', () => {
    const full = edit(lineOf('a'.repeat(longestLine - 1)), paste('🧶b'));
    expect(full.text).toBe('a'.repeat(longestLine - 1));
    expect(edit(full, paste('bcd')).text).toHaveLength(longestLine);
  });

  test('is the same object after a key that is none of its business', () => {
    const line = lineOf('rip');
    const others = [makeKey('enter'), makeKey('up'), makeKey('tab'), makeKey('f13'), ctrl('c'), alt('x')];
    for (const key of [...others, makeKey('backspace', { kind: 'release' })]) {
      expect(editLine(line, key)).toBe(line);
    }
  });
});

// The reference is the line editor inside Node, for lines of ASCII, where its words are the same as ours.
// Left out: deleting the word ahead, for which Node has other words than for stepping over it.
describe("Node's readline", () => {
  const keys: readonly Key[] = [
    ...['left', 'right', 'home', 'end', 'backspace', 'delete'].map((name) => makeKey(name)),
    ...['a', 'e', 'b', 'f', 'd', 'u', 'k', 'w', 'left', 'right', 'backspace'].map(ctrl),
    ...['b', 'f', 'backspace'].map(alt),
  ];

  function nodeEdits(text: string, presses: readonly Key[]): string {
    const input = new PassThrough();
    const editor = createInterface({ input, output: new PassThrough(), terminal: true });
    editor.write(text);
    for (const { name, text: types, ctrl: isCtrl, alt: meta } of presses) {
      // On an empty line Ctrl-D closes it.
      if (isCtrl && name === 'd' && editor.line === '') continue;
      if (types) editor.write(types);
      else editor.write(null, { name, ctrl: isCtrl, meta });
    }
    const line = drawn({ text: editor.line, cursor: editor.cursor });
    editor.close();
    return line;
  }

  // To a terminal of that name it leaves the keys alone.
  beforeEach(() => void vi.stubEnv('TERM', 'xterm-256color'));
  afterEach(() => void vi.unstubAllEnvs());

  test('edits any line in the same way', () => {
    const press = fc.oneof(
      fc.constantFrom(...keys),
      fc.constantFrom(...'a1 .-').map((each) => characterKey(each)),
    );
    const text = fc.stringMatching(/^[ab1_ .,-]{0,20}$/);
    fc.assert(
      fc.property(text, fc.array(press, { maxLength: 20 }), (before, presses) => {
        expect(edited(before, ...presses)).toBe(nodeEdits(before, presses));
      }),
      { numRuns: tries(1500) },
    );
  });
});

test('deleting the word ahead takes what the cursor would have stepped over', () => {
  for (const key of [alt('d'), alt('delete'), ctrl('delete')]) {
    expect(edited('stripe 12, mint', makeKey('home'), key)).toBe('|12, mint');
    expect(edited('stripe 12, mint', makeKey('home'), ctrl('right'), ctrl('right'), key)).toBe(
      'stripe 12|mint',
    );
  }
});

test('the cursor never stands inside a character', () => {
  const press = fc.constantFrom(
    ...['left', 'right', 'backspace', 'delete'].map((name) => makeKey(name)),
    ...['w', 'u', 'k', 'left', 'right'].map(ctrl),
    ...[paste('🧶'), paste('e\u0301'), paste('👩‍👧 ok'), characterKey('x')],
  );
  fc.assert(
    fc.property(fc.array(press, { maxLength: 30 }), (presses) => {
      const { text, cursor } = edit(emptyLine, ...presses);
      const starts = [...new Intl.Segmenter().segment(text)].map(({ index }) => index);
      expect([...starts, text.length]).toContain(cursor);
    }),
  );
});
