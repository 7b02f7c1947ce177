import { expect, test } from 'vitest';
import { readToken, shortenRest } from './input-grammar.ts';

test('what is kept of an unfinished piece stays short, and goes on as it was', () => {
  for (const start of ['\x1b[', '\x1b\x1b[', '\x9b', '\x1bO', '\x8f', '\x1b]', '\x1bP', '\x9d']) {
    const rest = shortenRest(start + '1;'.repeat(5000));
    expect(rest.length).toBeLessThan(10);
    expect(readToken(rest, 0)).toBeUndefined();
    expect(readToken(`${rest}1\x1b\\`, 0)).toMatchObject({ token: { kind: 'nothing' } });
  }
});

test('a short unfinished piece is kept as it is', () => {
  expect(shortenRest('\x1b[1;2')).toBe('\x1b[1;2');
});
