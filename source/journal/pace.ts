/**
 * How long the hands take for each act: a rule of thumb (no source) until bags are finished, then the middle of what their
 * logs hold. Whatever those hold too seldom keeps its rule of thumb. Rests are no part of it. A step in which the hands do
 * the same thing many times counts as many: ten rounds of cord are ten, a pass is one.
 */
import { medianOf } from '../shared/numbers.ts';
import type { Act } from '../steps/act.ts';
import { type Job, stepAt } from '../steps/job.ts';
import { type Phase, phases } from '../steps/step.ts';
import type { Recording } from './read-log.ts';
import { spentTimes } from './record.ts';

function handfulsIn(act: Act): number {
  switch (act.kind) {
    case 'cast-on':
    case 'rehang':
    case 'pick-up':
    case 'hang-fold':
    case 'bind-off':
    case 'cast-on-cord':
      return act.count;
    case 'bars':
    case 'rounds':
    case 'flat-rows':
    case 'hem-rows':
    case 'waste-rows':
      return act.through - act.from + 1;
    case 'thread-eyelets':
      return 2;
    default:
      return 1;
  }
}

export interface Pace {
  /** For one time that the hands do it: a stitch cast on, a bar, a round. */
  readonly seconds: Readonly<Record<Act['kind'], number>>;
  /** Finished bags that it comes from; 0 where it is the rule of thumb alone. */
  readonly bags: number;
}

export const usualPace: Pace = {
  bags: 0,
  seconds: {
    'set-needles': 120,
    'cast-on': 4,
    'hang-comb': 60,
    'thread-waste': 40,
    'waste-rows': 8,
    'lay-ravel-cord': 60,
    'ravel-pass': 10,
    'trim-ravel-cord': 20,
    'hang-weights': 40,
    thread: 30,
    pass: 8,
    'closing-pass': 8,
    increase: 20,
    decrease: 20,
    'comb-off': 60,
    'move-weights': 20,
    'weights-off': 40,
    'take-off': 30,
    'set-needles-again': 60,
    rehang: 6,
    'release-waste': 120,
    'cut-graft-tail': 40,
    'lay-graft': 180,
    'graft-start': 20,
    'graft-pair': 25,
    'graft-end': 20,
    'fasten-graft': 40,
    'pull-ravel-cord': 180,
    'fold-seam': 120,
    bars: 10,
    'fasten-seam': 40,
    'hide-ends': 300,
    'fold-corner': 120,
    'sew-corner': 240,
    'set-hem-needles': 60,
    'pick-up': 6,
    'thread-hem': 30,
    'hem-rows': 8,
    'fold-row': 15,
    'hang-fold': 6,
    'hem-close': 15,
    'bind-off': 6,
    'join-hem': 180,
    wash: 600,
    'measure-bag': 60,
    'set-cord-needles': 40,
    'cast-on-cord': 5,
    'thread-cord': 30,
    'cord-first-row': 10,
    'set-slip': 20,
    'weigh-flat-cord': 20,
    rounds: 5,
    'flat-rows': 4,
    'measure-rounds': 40,
    'measure-cord': 40,
    'draw-through': 60,
    'sew-cord': 900,
    'thread-eyelets': 8,
    tie: 60,
  },
};

/** An act seen more seldom than this says too little of itself (rule of thumb). */
const leastSeen = 3;

/** From steps that were confirmed each by a press of its own. */
export function paceOf(finished: readonly Recording[]): Pace {
  const seen = new Map<Act['kind'], number[]>();
  for (const recording of finished) {
    for (const { step, ms, alone, rest } of spentTimes(recording)) {
      if (!alone || rest) continue;
      const times = seen.get(step.act.kind) ?? [];
      if (times.length === 0) seen.set(step.act.kind, times);
      times.push(ms / 1000 / handfulsIn(step.act));
    }
  }
  const own = [...seen].filter(([, times]) => times.length >= leastSeen);
  const seconds = Object.fromEntries(own.map(([kind, times]) => [kind, medianOf(times)]));
  return { bags: finished.length, seconds: { ...usualPace.seconds, ...seconds } };
}

/** Seconds on the bench for the whole bag, phase by phase. */
export function timeByPhase(job: Job, pace: Pace): ReadonlyMap<Phase, number> {
  const times = timesUpTo(job, pace);
  return new Map(
    phases.map((phase, i) => [phase, (times[endOf(job, i)] ?? 0) - (times[job.phaseStarts[i] ?? 0] ?? 0)]),
  );
}

/** What is left once `done` steps are confirmed. */
export interface TimeLeft {
  /** To the end of the phase that is on. */
  readonly phaseS: number;
  readonly bagS: number;
}

export function timeLeft(job: Job, done: number, pace: Pace): TimeLeft {
  const times = timesUpTo(job, pace);
  const spent = times[done] ?? 0;
  const phase = job.phaseStarts.findLastIndex((start) => start <= done);
  return { phaseS: (times[endOf(job, phase)] ?? 0) - spent, bagS: (times[job.stepCount] ?? 0) - spent };
}

const endOf = ({ phaseStarts, stepCount }: Job, phase: number): number => phaseStarts[phase + 1] ?? stepCount;

/** By steps done: seconds up to there. Made once for a job and a pace, since it is asked for at every press. */
function timesUpTo(job: Job, pace: Pace): Float64Array {
  const known = made.get(job);
  if (known?.pace === pace) return known.times;
  const times = new Float64Array(job.stepCount + 1);
  for (let number = 1; number <= job.stepCount; number++) {
    const { act } = stepAt(job, number);
    times[number] = (times[number - 1] ?? 0) + handfulsIn(act) * pace.seconds[act.kind];
  }
  made.set(job, { pace, times });
  return times;
}

const made = new WeakMap<Job, { readonly pace: Pace; readonly times: Float64Array }>();
