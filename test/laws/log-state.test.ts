import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beginLog, type LogState, recordEvent } from '../../source/journal/log-state.ts';
import { isCommand } from '../../source/journal/notation.ts';
import { readLog } from '../../source/journal/read-log.ts';
import type { Command } from '../../source/session/command.ts';
import { shapingSlips } from '../../source/session/mend/slip.ts';
import { type Session, startSession } from '../../source/session/session.ts';
import { updateSession } from '../../source/session/update-session.ts';
import { seenOf } from '../fixtures/compare-sessions.ts';
import { briefOf, jobOf } from '../fixtures/plan-of.ts';
import { finishedLines, smallBrief, startedAt, writeLog } from '../fixtures/sample-log.ts';
import { valueIn } from '../tools/result.ts';
import { tries } from '../tools/tries.ts';

const job = jobOf(smallBrief);

const command = (): fc.Arbitrary<Command> =>
  fc.oneof(
    {
      weight: 4,
      arbitrary: fc.record({ do: fc.constant('confirm' as const), count: fc.integer({ min: 0, max: 9 }) }),
    },
    { weight: 3, arbitrary: fc.record({ do: fc.constantFrom('back' as const, 'redo' as const) }) },
    fc.record({ do: fc.constant('go' as const), done: fc.integer({ min: 0, max: job.stepCount + 1 }) }),
    fc.record({ do: fc.constant('note' as const), text: fc.string({ maxLength: 8 }) }),
    fc.record({ do: fc.constant('mark' as const), name: fc.constantFrom('heel', 'toe', ' ') }),
    fc.record({
      do: fc.constant('weigh' as const),
      yarn: fc.constantFrom('plum', 'gold'),
      grams: fc.integer({ min: -1, max: 9 }),
    }),
    fc.record({ do: fc.constant('cord' as const), lengthCm: fc.integer({ min: -1, max: 20 }) }),
    fc.record({
      do: fc.constant('measured' as const),
      widthCm: fc.integer({ min: -1, max: 20 }),
      depthCm: fc.constant(18.1),
    }),
    fc.record({ do: fc.constant('rip' as const), done: fc.integer({ min: 0, max: 40 }) }),
    fc.record({
      do: fc.constant('mend' as const),
      mistakes: fc
        .record({ is: fc.constantFrom(...shapingSlips), move: fc.integer({ min: 1, max: 3 }) })
        .map((slip) => [slip]),
      place: fc.integer({ min: 20, max: 40 }),
      how: fc.constantFrom('rip' as const, 'now' as const, 'make-up' as const),
      thenDone: fc.integer({ min: 20, max: 40 }),
    }),
    fc.record({ do: fc.constantFrom('on-the-way' as const, 'on-the-way' as const, 'stop' as const) }),
    fc.record({
      do: fc.constant('replan' as const),
      rows: fc.constantFrom(8, 12, 16, 17),
      stitchMm: fc.constantFrom(null, 4.8),
      rowMm: fc.constant(3.6),
      from: fc.constantFrom(null, 'mint'),
      to: fc.constant('sand'),
      cord: fc.constantFrom(null, null, 'sand', 'plum'),
      colour: fc.constant('#d8c29f'),
      metresPer100g: fc.constant(190),
    }),
  );

describe('the fold of a log', () => {
  it('gives at each line what updateSession gives step by step', () => {
    const lines = finishedLines();
    const reached: unknown[] = [];
    readLog(writeLog(lines).bytes, (_, { session }) => reached.push(seenOf(session)));
    let session = startSession(job);
    const expected = lines.map(({ event }) => {
      const after = isCommand(event) ? updateSession(session, event) : null;
      if (after?.ok) session = after.value;
      return seenOf(session);
    });
    expect(reached).toEqual(expected);
  });

  it('of random command sequences is the session at every point, refused commands leaving no line', () => {
    fc.assert(
      fc.property(fc.array(command(), { maxLength: 30 }), fc.nat(), (commands, pick) => {
        const { text, sessions } = perform(commands);
        const lines = text.split('\n').slice(0, -1);
        const point = pick % sessions.length;
        for (const lineCount of new Set([point, sessions.length - 1])) {
          const part = lines.slice(0, lineCount + 1).map((line) => `${line}\n`);
          const { fault, state } = readLog(new TextEncoder().encode(part.join('')));
          expect(fault).toBeNull();
          expect(state && seenOf(state.session)).toEqual(seenOf(sessions[lineCount] as Session));
        }
      }),
      { numRuns: tries(4000) },
    );
  }, 120_000);

  it('opens and verifies 100,000 events in under 2 seconds', () => {
    const press = [{ event: { do: 'confirm', count: 1 } as const }, { event: { do: 'back' } as const }];
    const { bytes, states } = writeLog(Array.from({ length: 50_000 }, () => press).flat());
    // Processor time of all threads: what the log costs, whatever else the machine is doing.
    const from = process.cpuUsage();
    const { state, fault } = readLog(bytes);
    const { user, system } = process.cpuUsage(from);
    expect((user + system) / 1e6).toBeLessThan(2);
    expect([fault, state?.events, state?.sum]).toEqual([null, 100_000, states.at(-1)?.sum]);
  });
});

/** Every accepted command recorded, beside the sessions that updateSession alone gives. */
function perform(commands: readonly Command[]): {
  readonly text: string;
  readonly sessions: readonly Session[];
} {
  const begun = valueIn(beginLog({ brief: briefOf(smallBrief), program: '0.1.0', startedAt }));
  let { line: text, state }: { line: string; state: LogState } = begun;
  let session = startSession(job);
  const sessions = [session];
  for (const one of commands) {
    const written = recordEvent(state, one, 250);
    const after = updateSession(session, one);
    expect(written.ok).toBe(after.ok);
    if (!written.ok || !after.ok) continue;
    text += written.value.line;
    state = written.value.state;
    session = after.value;
    sessions.push(session);
  }
  return { text, sessions };
}
