import { type Reckoning, typicalRowMinutes } from '../journal/reckoning.ts';
import type { Recording } from '../journal/recording.ts';
import { planJson } from './plan-json.ts';
import { lastInstant, lastSession } from './wording/reckoning.ts';

/** The record of a bag as JSON; times in seconds. */
export function recordJson(recording: Recording, reckoning: Reckoning): Readonly<Record<string, unknown>> {
  const { header, finished } = recording;
  const { job, done, notes } = lastSession(recording);
  const { benchMs, restMs, sittings, takenBack, byPhase, byStripe, slowPlaces } = reckoning;
  const seconds = <Key>(times: ReadonlyMap<Key, number>) =>
    Object.fromEntries([...times].map(([key, ms]) => [key, ms / 1000]));
  return {
    name: header.name,
    startedAt: header.startedAt,
    lastAt: lastInstant(recording),
    finished,
    step: done,
    stepCount: job.stepCount,
    benchS: benchMs / 1000,
    restS: restMs / 1000,
    sittings,
    takenBack,
    minutesPerRow: typicalRowMinutes([reckoning]),
    byPhaseS: seconds(byPhase),
    byStripeS: seconds(byStripe),
    slowPlaces: slowPlaces.map(({ step, row, ms, usualMs }) => ({
      step,
      row,
      seconds: ms / 1000,
      usualSeconds: usualMs / 1000,
    })),
    notes: notes.map(({ done: after, text }) => ({ step: after + 1, text })),
    plan: planJson(job.plan),
    brief: header.brief,
  };
}
