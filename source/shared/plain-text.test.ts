import fc from 'fast-check';
import { expect, it } from 'vitest';
import { harmless } from './plain-text.ts';

it('shows controls as pictures, so that no sequence begins', () => {
  expect(harmless('a\u001b]52;c;AAAA\u0007b')).toBe('a␛]52;c;AAAA␇b');
  expect(harmless('a\u009b2Jb')).toBe('a\ufffd2Jb');
});

it('leaves out what turns the writing round or cannot be seen', () => {
  expect(harmless('plum\u202e.jsonl\u200b')).toBe('plum.jsonl');
});

it('keeps letters of any script, line ends and plain text as they are', () => {
  for (const text of ['Würfelbeutel', 'कपड़ा', 'שקית', 'a\nb', '🧶 wool']) expect(harmless(text)).toBe(text);
});

it('lets nothing through that acts, whatever comes', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (text) => {
      // C0 without the line end, DEL and C1 (ECMA-48); overrides and embeddings (Unicode UAX 9).
      expect(harmless(text)).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e]/);
    }),
  );
});
