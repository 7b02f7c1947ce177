import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tries } from '../../test/tools/tries.ts';
import { type Slip, slipKinds } from '../session/mend/slip.ts';
import { type Entry, entryJson, isCommand, type LogEvent, readEntry } from './notation.ts';

const text = fc.string({ unit: 'binary' });
const orNull = <Value>(value: fc.Arbitrary<Value>): fc.Arbitrary<Value | null> =>
  fc.option(value, { nil: null });
const mm = orNull(fc.double({ min: 0.5, max: 20, noNaN: true }));

/** A slip of any kind, with facts of the kinds that it has. */
function slip(): fc.Arbitrary<Slip> {
  const values = { number: fc.nat(), text, 'text or null': orNull(text) };
  const kinds = Object.entries(slipKinds).map(([is, facts]) => {
    const own = Object.entries(facts).map(([name, kind]) => [name, values[kind as keyof typeof values]]);
    return fc.record(Object.fromEntries(own)).map((facts) => ({ is, ...facts }) as unknown as Slip);
  });
  return fc.oneof(...kinds);
}

/** What each kind may hold beside its name; the compiler asks for a row when a kind is added. */
const fields: {
  readonly [Do in LogEvent['do']]: fc.Arbitrary<Omit<Extract<LogEvent, { readonly do: Do }>, 'do'>>;
} = {
  confirm: fc.record({ count: fc.nat() }),
  back: fc.constant({}),
  redo: fc.constant({}),
  go: fc.record({ done: fc.nat() }),
  note: fc.record({ text }),
  mark: fc.record({ name: text }),
  rip: fc.record({ done: fc.nat() }),
  mend: fc.record({
    mistakes: fc.array(slip(), { minLength: 1, maxLength: 2 }),
    place: fc.nat(),
    how: fc.constantFrom('now' as const, 'rip' as const, 'make-up' as const),
    thenDone: fc.nat(),
  }),
  'on-the-way': fc.constant({}),
  stop: fc.constant({}),
  replan: fc.record({
    rows: fc.nat(),
    stitchMm: mm,
    rowMm: mm,
    from: orNull(text),
    to: orNull(text),
    cord: orNull(text),
    colour: orNull(fc.stringMatching(/^#[0-9A-Fa-f]{6}$/)),
    metresPer100g: mm,
  }),
  cord: fc.record({ lengthCm: fc.double({ min: 0.1, max: 90, noNaN: true }) }),
  measured: fc.record({
    widthCm: fc.double({ min: 0.1, max: 90, noNaN: true }),
    depthCm: fc.double({ min: 0.1, max: 90, noNaN: true }),
  }),
  rename: fc.record({ name: fc.string() }),
  weigh: fc.record({ yarn: text, grams: fc.double({ min: 0, max: 1e5, noNaN: true }) }),
  resume: fc.constant({ at: '2031-03-04T18:00:00.000Z' }),
  quit: fc.constant({}),
  finished: fc.constant({}),
  say: fc.record({ text }),
  pause: fc.constant({}),
  unknown: fc.constant({ name: 'humidity', fields: { yarn: 'plum', grams: 41.5 } }),
};

const event = (): fc.Arbitrary<LogEvent> =>
  fc.oneof(
    ...Object.entries(fields).map(([kind, own]) => own.map((one) => ({ do: kind, ...one }) as LogEvent)),
  );

const entry = (): fc.Arbitrary<Entry> =>
  fc.record({ event: event(), afterMs: fc.nat(), stepsDone: fc.nat() });

describe('an entry', () => {
  it('reads back from JSON as it was', () => {
    fc.assert(
      fc.property(entry(), (one) => {
        const json = JSON.stringify(entryJson(one));
        expect(readEntry(JSON.parse(json))).toEqual({ ok: true, value: one });
      }),
      { numRuns: tries(1000) },
    );
  });

  it.each([
    ['a kind that is no text', { do: 3, afterMs: 0, stepsDone: 0 }],
    ['no kind', { afterMs: 0, stepsDone: 0 }],
    ['no interval', { do: 'redo', stepsDone: 0 }],
    ['an interval below zero', { do: 'redo', afterMs: -1, stepsDone: 0 }],
    ['half a step', { do: 'redo', afterMs: 0, stepsDone: 0.5 }],
    ['a field missing', { do: 'confirm', afterMs: 0, stepsDone: 1 }],
    ['a field of another kind', { do: 'confirm', count: 1, done: 1, afterMs: 0, stepsDone: 1 }],
    ['a count in words', { do: 'confirm', count: 'one', afterMs: 0, stepsDone: 1 }],
    ['a day that does not exist', { do: 'resume', at: '2031-13-41T18:00:00.000Z', afterMs: 0, stepsDone: 1 }],
    [
      'a slip nobody knows',
      {
        do: 'mend',
        mistakes: [{ is: 'hiccup' }],
        place: 1,
        how: 'now',
        thenDone: 1,
        afterMs: 0,
        stepsDone: 1,
      },
    ],
    [
      'a slip with a fact too many',
      {
        do: 'mend',
        mistakes: [{ is: 'stitch-dropped', move: 3 }],
        place: 1,
        how: 'now',
        thenDone: 1,
        afterMs: 0,
        stepsDone: 1,
      },
    ],
    ['a list', []],
    ['nothing', null],
  ])('is refused with %s', (_, json) => {
    expect(readEntry(json)).toEqual({ ok: false, fault: 'wrong-fields' });
  });

  it('of a kind that is not known is kept whole, also when it is called like a part of every object', () => {
    const json = { do: 'toString', grams: 3, afterMs: 5, stepsDone: 2 };
    const read = readEntry(json);
    expect(read).toMatchObject({
      ok: true,
      value: { event: { do: 'unknown', name: 'toString', fields: { grams: 3 } } },
    });
    expect(read.ok && entryJson(read.value)).toEqual(json);
  });

  it('is a command or an occurrence', () => {
    expect(isCommand({ do: 'go', done: 3 })).toBe(true);
    expect(isCommand({ do: 'quit' })).toBe(false);
    expect(isCommand({ do: 'unknown', name: 'humidity', fields: {} })).toBe(false);
  });
});
