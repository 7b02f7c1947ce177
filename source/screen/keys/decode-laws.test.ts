import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tries } from '../../../test/tools/tries.ts';
import { createKeyDecoder } from './decode-keys.ts';
import type { Key } from './key.ts';

const decode = (...chunks: string[]): readonly Key[] => {
  const decoder = createKeyDecoder();
  return [...chunks.flatMap((chunk) => decoder.push(chunk)), ...decoder.flush()];
};
const typed = (...chunks: string[]): string =>
  decode(...chunks)
    .map((key) => key.text)
    .join('');

describe('any input', () => {
  const piece = fc.oneof(
    fc.constantFrom(
      '\x1b',
      '\x1b[',
      '\x1bO',
      '\x1b]',
      '\x1bP',
      '\x9b',
      '\x8f',
      '\x9d',
      '\x9c',
      '\x07',
      '\x1b\\',
    ),
    fc.constantFrom(
      '\x1b[200~',
      '\x1b[201~',
      '\x1b[M',
      '\x1b[[',
      '\r',
      '\n',
      '\x7f',
      '\x03',
      '🧶',
      '\ud83e',
      'é',
    ),
    fc.stringMatching(/^[0-9;:<=>?]{1,6}$/),
    fc.string({ unit: 'binary-ascii', minLength: 1, maxLength: 3 }),
    fc.string({ unit: 'binary', minLength: 1, maxLength: 3 }),
  );
  const input = fc.array(piece, { maxLength: 14 }).map((pieces) => pieces.join(''));
  const cuts = fc.array(fc.nat(60), { maxLength: 8 });
  const cutAt = (text: string, places: readonly number[]): string[] => {
    const sorted = [0, ...places.toSorted((one, other) => one - other), text.length];
    return sorted.map((place, index) => text.slice(sorted[index - 1] ?? 0, place));
  };
  const isShort = (text: string): boolean => !/[^\x1b]{9}/.test(text);

  test('gives the same keys however it is cut', () => {
    fc.assert(
      fc.property(input, cuts, (text, places) => {
        fc.pre(isShort(text));
        expect(decode(...cutAt(text, places))).toEqual(decode(text));
      }),
      { numRuns: tries(5000) },
    );
  });

  test('gives the same text however it is cut, where a long run may be a paste or single keys', () => {
    const words = fc.array(
      fc.constantFrom('stripe', ' ', 'é', '🧶', '\x1b[A', '\x1b[1;5C', '\x1b[I', '\x1bb'),
    );
    fc.assert(
      fc.property(words, cuts, (parts, places) => {
        const text = parts.join('');
        expect(typed(...cutAt(text, places))).toBe(typed(text));
      }),
      { numRuns: tries(1000) },
    );
  });

  test('never throws, never gives control characters or half characters as text, never keeps much', () => {
    fc.assert(
      fc.property(fc.array(input, { maxLength: 4 }), (chunks) => {
        const decoder = createKeyDecoder();
        const keys = [...chunks.flatMap((chunk) => [...decoder.push(chunk)]), ...decoder.flush()];
        const text = keys
          .map((key) => (key.name === 'paste' ? key.text.replace(/[\n\t]/g, '') : key.text))
          .join('');
        expect(text).not.toMatch(/[\p{Cc}\p{Cs}]/u);
        expect(decoder.waitingFor()).toBe('nothing');
      }),
      { numRuns: tries(5000) },
    );
  });

  test('a whole control sequence never types a thing, but for the three that carry text', () => {
    // ECMA-48: parameters 30–3F, intermediates 20–2F, final 40–7E. Text comes in `CSI … u`, in
    // `CSI 27 ; … ~` and from the keypad after SS3; CSI M and CSI [ have a longer form.
    const sequence = fc
      .tuple(
        fc.stringMatching(/^[0-?]{0,8}$/),
        fc.stringMatching(/^[ -/]{0,3}$/),
        fc.stringMatching(/^[@-LN-Z\\-tv-~]$/),
      )
      .map((parts) => parts.join(''))
      .filter((body) => !body.startsWith('27;') && body !== '200~');
    fc.assert(
      fc.property(fc.array(sequence), cuts, (bodies, places) => {
        const text = bodies.map((body) => `\x1b[${body}`).join('');
        expect(typed(...cutAt(text, places))).toBe('');
      }),
      { numRuns: tries(2000) },
    );
  });

  test('a very long piece is survived', () => {
    const much = 300_000;
    expect(typed('b'.repeat(much))).toHaveLength(much);
    expect(typed(`${'\x1b'.repeat(much)}`)).toBe('');
    expect(typed(`\x1b[97;1;${'97:'.repeat(much)}97u`, `\x1b[${'['.repeat(much)}`)).toBe('');
  });
});
