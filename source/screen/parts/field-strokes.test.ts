import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Line, lineOf } from '../keys/edit-line.ts';
import { fieldStrokes } from './field-strokes.ts';

const left = '\x1b[D';
const right = '\x1b[C';
const backspace = '\x7f';

/** A field as plain as ink-text-input; it refuses the moves that would take the cursor off the line. */
function type({ text, cursor }: Line, stroke: string): Line {
  if (stroke === left || stroke === backspace) expect(cursor).toBeGreaterThan(0);
  if (stroke === left) return { text, cursor: cursor - 1 };
  if (stroke === right) expect(cursor).toBeLessThan(text.length);
  if (stroke === right) return { text, cursor: cursor + 1 };
  const from = stroke === backspace ? cursor - 1 : cursor;
  const added = stroke === backspace ? '' : stroke;
  return { text: text.slice(0, from) + added + text.slice(cursor), cursor: from + added.length };
}

const line = fc
  .tuple(fc.stringMatching(/^[ab ]{0,12}$/), fc.nat(12))
  .map(([text, cursor]): Line => ({ text, cursor: Math.min(cursor, text.length) }));

test('a letter at the end is one stroke, and so is a whole pasted text', () => {
  expect(fieldStrokes(lineOf('ba'), lineOf('bag'))).toEqual(['g']);
  expect(fieldStrokes(lineOf(''), lineOf('rip back 12'))).toEqual(['rip back 12']);
  expect(fieldStrokes(lineOf('bag'), lineOf('ba'))).toEqual([backspace]);
});

test('what is deleted behind the cursor is stepped over and taken back', () => {
  expect(fieldStrokes({ text: 'bag', cursor: 1 }, { text: 'bg', cursor: 1 })).toEqual([right, backspace]);
});

test('any line becomes any other, without a step off its ends', () => {
  fc.assert(
    fc.property(line, line, (from, to) => {
      expect(fieldStrokes(from, to).reduce(type, from)).toEqual(to);
    }),
    { numRuns: 2000 },
  );
});
