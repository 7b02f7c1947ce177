import { workedCost } from '../journal/bag-cost.ts';
import { lastInstant, lastSession, type Recording } from '../journal/read-log.ts';
import { type BagRecord, recordOf, typicalRowMinutes } from '../journal/record.ts';
import { usedYarn } from '../session/measured.ts';
import type { JsonGroup } from '../shared/result.ts';
import { formatRecord } from '../wording/record.ts';
import type { Words } from '../wording/words.ts';
import { complain, exitCodes, print, printJson } from './outcome.ts';
import { planJson } from './plan.ts';
import { openRecording, sayCutOff } from './read-input.ts';

/** The record of a bag as JSON; times in seconds. */
export function recordJson(recording: Recording, record: BagRecord, words: Words): JsonGroup {
  const { header, finished } = recording;
  const session = lastSession(recording);
  const { job, done, notes, measured } = session;
  const { benchMs, restMs, sittings, takenBack, byPhase, byStripe, slowPlaces } = record;
  const cost = workedCost(session, benchMs);
  const seconds = <Key>(times: ReadonlyMap<Key, number>) =>
    Object.fromEntries([...times].map(([key, ms]) => [key, ms / 1000]));
  return {
    name: session.name,
    startedAt: header.startedAt,
    lastUsedAt: lastInstant(recording),
    finished,
    stepsDone: done,
    stepCount: job.stepCount,
    workS: benchMs / 1000,
    restS: restMs / 1000,
    sittings,
    takenBack,
    minutesPerRow: typicalRowMinutes([record]),
    phaseS: seconds(byPhase),
    stripeS: seconds(byStripe),
    slowPlaces: slowPlaces.map(({ step, row, ms, usualMs }) => ({
      step,
      row,
      tookS: ms / 1000,
      usualS: usualMs / 1000,
    })),
    yarnUsed: usedYarn(session).map(({ yarn, haveGrams, leftGrams, usedGrams, done: stepsDone }) => ({
      yarn,
      plannedGrams: job.plan.yarn.find((need) => need.yarn === yarn)?.grams ?? null,
      haveGrams,
      leftGrams,
      usedGrams,
      stepsDone,
    })),
    ...(cost ? { cost } : {}),
    measured: measured && {
      widthCm: measured.widthCm,
      depthCm: measured.depthCm,
      stepsDone: measured.done,
    },
    notes: [...notes].map(({ done: after, text }) => ({ step: after + 1, text })),
    plan: planJson(job.plan, words),
    brief: header.brief,
  };
}

/** Prints the record of a bag: time, size, yarn, needles, dates, notes. */
export function printRecord(path: string, json: boolean, words: Words): number {
  const recording = openRecording(path, words);
  if (!recording.ok) return complain(recording.fault);
  const record = recordOf(recording.value);
  if (json) printJson(recordJson(recording.value, record, words), 2);
  else print(`${formatRecord(recording.value, record, words)}\n\n${words.record.another(path)}`);
  const { tornBytes, frames } = recording.value;
  const cutOff = sayCutOff(path, tornBytes, frames.length, words);
  if (cutOff !== null) complain(cutOff);
  return exitCodes.done;
}
