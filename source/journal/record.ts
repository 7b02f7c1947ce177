/**
 * What a log says about the time a bag took. Time before a confirmation belongs to the steps it confirms, in equal parts;
 * time before anything else to the step that was to be done. The clock cannot tell a rest from a slow step, so a gap longer
 * than a limit counts as a rest: a rule of thumb, no source.
 */
import type { Session } from '../session/session.ts';
import { medianOf } from '../shared/numbers.ts';
import type { Act } from '../steps/act.ts';
import { stepAt } from '../steps/job.ts';
import type { Phase, Step } from '../steps/step.ts';
import type { Entry } from './notation.ts';
import type { Recording } from './read-log.ts';

/** Rests are in `restMs` and nowhere else. */
export interface BagRecord {
  readonly benchMs: number;
  readonly restMs: number;
  readonly sittings: number;
  readonly byPhase: ReadonlyMap<Phase, number>;
  /** By stripe, from 1. */
  readonly byStripe: ReadonlyMap<number, number>;
  /** By main-yarn row, from 1: the rows of the stripes whose pass was confirmed by a press of its own. */
  readonly byRow: ReadonlyMap<number, number>;
  readonly slowPlaces: readonly SlowPlace[];
  /** How often something was taken back. */
  readonly takenBack: number;
}

/** A step that took much longer than its like in the same log. */
interface SlowPlace {
  readonly step: number;
  readonly row: number;
  readonly ms: number;
  /** The median of steps of this kind. */
  readonly usualMs: number;
}

/** Slow is three times the usual; a rule of thumb, no source. */
const slowTimes = 3;
const mostSlowPlaces = 5;
/** Below this many of a kind there is no saying what is usual. */
const leastAlike = 5;

export function recordOf(recording: Recording, restLimitMs = usualRestLimitMs): BagRecord {
  const all = [...spentTimes(recording, restLimitMs)];
  const work = all.filter(({ rest }) => !rest);
  const events = recording.frames.map(({ entry }) => entry.event.do);
  return {
    benchMs: total(work),
    restMs: total(all) - total(work),
    sittings: 1 + events.filter((kind) => kind === 'resume').length,
    byPhase: sums(work, ({ step }) => step.phase),
    byStripe: sums(work, ({ step }) => step.stripe),
    byRow: rowTimes(work),
    slowPlaces: slowPlaces(work),
    takenBack: events.filter((kind) => kind === 'back').length,
  };
}

/**
 * Minutes that a row usually takes, its shaping moves and yarn changes included: the median of all rows in all logs.
 * Null before any row has been knitted.
 */
export function typicalRowMinutes(records: readonly BagRecord[]): number | null {
  const rows = records.flatMap(({ byRow }) => [...byRow.values()]);
  const median = medianOf(rows);
  return median === null ? null : median / 60_000;
}

const total = (times: readonly Spent[]): number => times.reduce((sum, { ms }) => sum + ms, 0);

function sums<Key>(times: readonly Spent[], keyOf: (spent: Spent) => Key | null): ReadonlyMap<Key, number> {
  const byKey = new Map<Key, number>();
  for (const spent of times) {
    const key = keyOf(spent);
    if (key !== null) byKey.set(key, (byKey.get(key) ?? 0) + spent.ms);
  }
  return byKey;
}

function rowTimes(work: readonly Spent[]): ReadonlyMap<number, number> {
  const measured = new Set(
    work.filter(({ step, alone }) => alone && step.act.kind === 'pass').map(({ step }) => step.row),
  );
  return sums(work, ({ step }) => {
    const row = rowOf(step);
    return row !== null && measured.has(row) ? row : null;
  });
}

/** The row that a step of the stripes belongs to: threading a yarn to the row it is threaded for. */
function rowOf({ phase, act, row }: Step): number | null {
  if (phase !== 'stripes') return null;
  return act.kind === 'thread' ? row + 1 : row;
}

function slowPlaces(work: readonly Spent[]): readonly SlowPlace[] {
  const usualMs = usualTimes(work);
  return work
    .map(({ step, ms }) => ({
      step: step.step,
      row: step.row,
      ms,
      usualMs: usualMs.get(step.act.kind) ?? null,
    }))
    .filter((place): place is SlowPlace => place.usualMs !== null && place.ms > slowTimes * place.usualMs)
    .sort((a, b) => b.ms - a.ms)
    .slice(0, mostSlowPlaces);
}

function usualTimes(work: readonly Spent[]): ReadonlyMap<Act['kind'], number | null> {
  const timesByKind = new Map<Act['kind'], number[]>();
  for (const { step, ms } of work) {
    const alike = timesByKind.get(step.act.kind);
    if (alike) alike.push(ms);
    else timesByKind.set(step.act.kind, [ms]);
  }
  return new Map([...timesByKind].map(([kind, ms]) => [kind, ms.length < leastAlike ? null : medianOf(ms)]));
}

const usualRestLimitMs = 5 * 60_000;

/** Time spent on one step, once. */
interface Spent {
  readonly step: Step;
  readonly ms: number;
  /** It ended in a press that confirmed this step and no other, so the time is the step's own. */
  readonly alone: boolean;
  /** The gap was too long to be work. */
  readonly rest: boolean;
}

/** In order of recording. `restLimitMs` is for one step: ten passes confirmed together may take ten times as long. */
export function* spentTimes(recording: Recording, restLimitMs = usualRestLimitMs): Generator<Spent> {
  let before = recording.start;
  for (const { entry, session } of recording.frames) {
    const steps = stepsOf(entry, before);
    const ms = entry.afterMs / steps.count;
    for (let i = 0; i < steps.count; i++) {
      const step = stepAt(before.job, steps.first + i);
      yield { step, ms, alone: steps.confirmed && steps.count === 1, rest: ms > restLimitMs };
    }
    before = session;
  }
}

interface StepsOf {
  readonly first: number;
  readonly count: number;
  readonly confirmed: boolean;
}

function stepsOf({ event }: Entry, { done, job }: Session): StepsOf {
  if (event.do === 'confirm') return { first: done + 1, count: event.count, confirmed: true };
  return { first: Math.min(done + 1, job.stepCount), count: 1, confirmed: false };
}
