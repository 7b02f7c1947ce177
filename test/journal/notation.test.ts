import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Entry, LogEvent } from '../../source/journal/entry.ts';
import { entryJson, isCommand, readEntry } from '../../source/journal/notation.ts';

const event = (): fc.Arbitrary<LogEvent> =>
  fc.oneof(
    fc.record({ do: fc.constant('confirm' as const), count: fc.nat() }),
    fc.record({ do: fc.constantFrom('take-back' as const, 'redo' as const) }),
    fc.record({ do: fc.constant('jump' as const), done: fc.nat() }),
    fc.record({ do: fc.constant('note' as const), text: fc.string({ unit: 'binary' }) }),
    fc.record({ do: fc.constant('mark' as const), name: fc.string({ unit: 'binary' }) }),
    fc.record({ do: fc.constant('resume' as const), at: fc.constant('2031-03-04T18:00:00.000Z') }),
    fc.record({ do: fc.constantFrom('leave' as const, 'finished' as const, 'pause-here' as const) }),
    fc.record({ do: fc.constant('say' as const), text: fc.string({ unit: 'binary' }) }),
    fc.constant({ do: 'unknown' as const, name: 'weigh', fields: { yarn: 'plum', grams: 41.5 } }),
  );

const entry = (): fc.Arbitrary<Entry> => fc.record({ event: event(), afterMs: fc.nat(), step: fc.nat() });

describe('an entry', () => {
  it('reads back from JSON as it was', () => {
    fc.assert(
      fc.property(entry(), (one) => {
        const text = JSON.stringify(entryJson(one));
        expect(readEntry(JSON.parse(text))).toEqual({ ok: true, value: one });
      }),
    );
  });

  it.each([
    ['a kind that is no text', { do: 3, afterMs: 0, step: 0 }],
    ['no kind', { afterMs: 0, step: 0 }],
    ['no interval', { do: 'redo', step: 0 }],
    ['an interval below zero', { do: 'redo', afterMs: -1, step: 0 }],
    ['half a step', { do: 'redo', afterMs: 0, step: 0.5 }],
    ['a field missing', { do: 'confirm', afterMs: 0, step: 1 }],
    ['a field of another kind', { do: 'confirm', count: 1, done: 1, afterMs: 0, step: 1 }],
    ['a count in words', { do: 'confirm', count: 'one', afterMs: 0, step: 1 }],
    ['a day that does not exist', { do: 'resume', at: '2031-13-41T18:00:00.000Z', afterMs: 0, step: 1 }],
    ['a list', []],
    ['nothing', null],
  ])('is refused with %s', (_, json) => {
    expect(readEntry(json)).toEqual({ ok: false, fault: 'wrong-fields' });
  });

  it('of a kind that is not known is kept whole, also when it is called like a part of every object', () => {
    const json = { do: 'toString', grams: 3, afterMs: 5, step: 2 };
    const read = readEntry(json);
    expect(read).toMatchObject({
      ok: true,
      value: { event: { do: 'unknown', name: 'toString', fields: { grams: 3 } } },
    });
    expect(read.ok && entryJson(read.value)).toEqual(json);
  });

  it('is a command or an occurrence', () => {
    expect(isCommand({ do: 'jump', done: 3 })).toBe(true);
    expect(isCommand({ do: 'leave' })).toBe(false);
    expect(isCommand({ do: 'unknown', name: 'weigh', fields: {} })).toBe(false);
  });
});
