/** Taking back and doing again, over random runs of commands. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rowMultipleOf } from '../../source/planning/choose-size.ts';
import type { Command } from '../../source/session/command.ts';
import { storyOf } from '../../source/session/diagnose/story.ts';
import { waysOut } from '../../source/session/diagnose/ways-out.ts';
import type { How } from '../../source/session/mend/mend.ts';
import { type Session, startSession } from '../../source/session/session.ts';
import { updateSession } from '../../source/session/update-session.ts';
import type { Job } from '../../source/steps/job.ts';
import { jobOf, noChange, stripedBrief } from '../fixtures/plan-of.ts';
import { valueIn } from '../tools/result.ts';
import { tries } from '../tools/tries.ts';

const job = jobOf(stripedBrief(20, 24, 60));

/** A forgotten decrease, set right in a way that the bag has; where there is none, nothing is named that could be. */
function mendOf(how: How, place: number): Command {
  const slips = [{ is: 'decrease-missing', move: 3 } as const];
  const story = storyOf(job, slips, place);
  const mend = story && waysOut(job, story).find((one) => one.how === how);
  return { do: 'mend', mistakes: slips, place, how, thenDone: mend?.thenDone ?? 0 };
}

const command = (): fc.Arbitrary<Command> =>
  fc.oneof(
    {
      weight: 6,
      arbitrary: fc.integer({ min: 1, max: 30 }).map((count) => ({ do: 'confirm', count }) as const),
    },
    { weight: 4, arbitrary: fc.constant({ do: 'back' } as const) },
    { weight: 3, arbitrary: fc.constant({ do: 'redo' } as const) },
    { weight: 2, arbitrary: fc.integer({ min: 0, max: 260 }).map((done) => ({ do: 'go', done }) as const) },
    {
      weight: 2,
      arbitrary: fc.integer({ min: 0, max: 200 }).map((done) => ({ do: 'rip', done }) as const),
    },
    {
      weight: 1,
      arbitrary: fc
        .record({ how: fc.constantFrom('rip', 'make-up'), place: fc.integer({ min: 30, max: 60 }) })
        .map(({ how, place }) => mendOf(how as How, place)),
    },
    { weight: 4, arbitrary: fc.constant({ do: 'on-the-way' } as const) },
    { weight: 1, arbitrary: fc.constant({ do: 'stop' } as const) },
    {
      weight: 1,
      arbitrary: fc
        .record({ repeats: fc.integer({ min: 2, max: 9 }), wide: fc.boolean() })
        .map(({ repeats, wide }) => ({
          ...noChange,
          ...(wide ? { stitchMm: 5.1, rowMm: 3.3 } : {}),
          do: 'replan' as const,
          rows: repeats * rowMultipleOf(job.plan.brief),
        })),
    },
    { weight: 1, arbitrary: fc.constantFrom('tight', ' ').map((text) => ({ do: 'note', text }) as const) },
    { weight: 1, arbitrary: fc.constantFrom('a', 'b').map((name) => ({ do: 'mark', name }) as const) },
    {
      weight: 1,
      arbitrary: fc
        .record({ yarn: fc.constantFrom('plum', 'gold'), grams: fc.integer({ min: -1, max: 9 }) })
        .map((weighing) => ({ do: 'weigh', ...weighing }) as const),
    },
    {
      weight: 1,
      arbitrary: fc.integer({ min: -1, max: 40 }).map((lengthCm) => ({ do: 'cord', lengthCm }) as const),
    },
    {
      weight: 1,
      arbitrary: fc
        .record({ widthCm: fc.integer({ min: -1, max: 20 }), depthCm: fc.constant(18.1) })
        .map((size) => ({ do: 'measured', ...size }) as const),
    },
  );

const jobFacts = ({ plan, stepCount, kept }: Job) => ({
  rows: plan.rows,
  gauge: plan.gauge,
  stepCount,
  keptDone: kept?.done ?? null,
});

interface PlaceList {
  readonly job: Job;
  readonly done: number;
  readonly earlier: PlaceList | null;
}

function placesOf(list: PlaceList | null): readonly unknown[] {
  const places: unknown[] = [];
  for (let at = list; at; at = at.earlier) places.push({ done: at.done, ...jobFacts(at.job) });
  return places;
}

/** A session by value: what it shows, and what can be taken back and done again. */
const facts = ({ job: at, done, mends, notes, marks, weighed, measured, takeBack, redo }: Session) => ({
  ...jobFacts(at),
  done,
  mends,
  notes: [...notes],
  marks: [...marks].map(({ name, done: there }) => [name, there]),
  weighed: [...weighed],
  measured,
  takeBack: placesOf(takeBack),
  redo: placesOf(redo),
});

/** Carries commands out, leaving out those that are refused, as a log does. */
function run(commands: readonly Command[]): { session: Session; log: Command[]; states: Session[] } {
  let session = startSession(job);
  const log: Command[] = [];
  const states: Session[] = [];
  for (const one of commands) {
    const next = updateSession(session, one);
    if (!next.ok) continue;
    session = next.value;
    log.push(one);
    states.push(session);
  }
  return { session, log, states };
}

const place = ({ done, mends, job: at, way, adrift }: Session) => ({
  done,
  mends,
  adrift,
  way: way && { at: way.at, of: way.steps.length, bed: way.bed },
  ...jobFacts(at),
});

describe('a session', () => {
  it('comes back where it was by taking back, and where it went by doing again, jumps and new plans too', () => {
    let taken = 0;
    fc.assert(
      fc.property(fc.array(command(), { maxLength: 12 }), command(), (commands, last) => {
        const before = run(commands).session;
        const done = updateSession(before, last);
        if (!done.ok || ['back', 'redo', 'note', 'mark', 'weigh', 'measured'].includes(last.do)) return;
        const back = valueIn(updateSession(done.value, { do: 'back' }));
        expect(place(back)).toEqual(place(before));
        const again = valueIn(updateSession(back, { do: 'redo' }));
        expect(facts(again)).toEqual(facts(done.value));
        taken++;
      }),
      { numRuns: tries(3000) },
    );
    expect(taken).toBeGreaterThan(tries(3000) / 10);
  });

  it('can be taken back to the very beginning, whatever was done, and be done again to the end', () => {
    fc.assert(
      fc.property(fc.array(command(), { maxLength: 20 }), (commands) => {
        const { session } = run(commands);
        let now = session;
        let presses = 0;
        for (let next = updateSession(now, { do: 'back' }); next.ok; presses++) {
          now = next.value;
          next = updateSession(now, { do: 'back' });
        }
        expect(place(now)).toEqual(place(startSession(job)));
        for (let i = 0; i < presses; i++) {
          now = valueIn(updateSession(now, { do: 'redo' }));
        }
        expect(place(now)).toEqual(place(session));
      }),
      { numRuns: tries(1000) },
    );
  });

  it('never leaves the job: its place is always one of the plan’s', () => {
    fc.assert(
      fc.property(fc.array(command(), { maxLength: 20 }), (commands) => {
        for (const { done, job: at } of run(commands).states) {
          expect(done).toBeGreaterThanOrEqual(0);
          expect(done).toBeLessThanOrEqual(at.stepCount);
        }
      }),
      { numRuns: tries(1000) },
    );
  });

  it('refuses to rip back forwards, to a place that is not there, and to plan again once the closing row is begun', () => {
    const start = startSession(job);
    expect(updateSession(start, { do: 'rip', done: 0 })).toMatchObject({
      fault: { code: 'rip-back/not-behind' },
    });
    expect(
      updateSession(start, {
        do: 'mend',
        mistakes: [{ is: 'move-missing', move: 1 }],
        place: -1,
        how: 'now',
        thenDone: 3,
      }),
    ).toMatchObject({
      fault: { code: 'way/no-such-mend' },
    });
    const late = valueIn(updateSession(start, { do: 'go', done: (job.phaseStarts[2] ?? 0) + 1 }));
    expect(updateSession(late, { do: 'replan', rows: 24, ...noChange })).toMatchObject({
      fault: { code: 'replan/too-late' },
    });
  });
});
