import type { Recording } from './recording.ts';

/** A gap longer than this is shortened when a log is played, unless the viewer says otherwise. */
export const usualLongestGapMs = 20_000;

/** When each event of a recording is shown, at the recorded pace. */
export interface Timeline {
  readonly atMs: Float64Array;
  readonly totalMs: number;
}

export function layTimeline({ moments }: Recording, longestGapMs: number): Timeline {
  const atMs = new Float64Array(moments.length);
  let totalMs = 0;
  for (const [i, { entry }] of moments.entries()) {
    totalMs += Math.min(entry.afterMs, longestGapMs);
    atMs[i] = totalMs;
  }
  return { atMs, totalMs };
}
