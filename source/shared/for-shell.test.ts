import { execFileSync } from 'node:child_process';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { tries } from '../../test/tools/tries.ts';
import { forShell } from './plain-text.ts';

it('leaves plain paths as they are', () => {
  expect(forShell('/home/käthe/bags/dice-bag-2031-03-04.jsonl')).toBe(
    '/home/käthe/bags/dice-bag-2031-03-04.jsonl',
  );
});

it('quotes what a shell would read otherwise', () => {
  expect(forShell('a b/bag.jsonl')).toBe("'a b/bag.jsonl'");
  expect(forShell("it's;touch X")).toBe("'it'\\''s;touch X'");
});

it('comes out of a real shell as it went in', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme-ascii', minLength: 1, maxLength: 30 }), (path) => {
      expect(execFileSync('/bin/sh', ['-c', `printf %s ${forShell(path)}`], { encoding: 'utf8' })).toBe(path);
    }),
    { numRuns: tries(30) },
  );
});
