/** Playing a recording: a place on its timeline, moved by time and by the viewer. Nothing here can change the log. */
import type { Session } from '../session/session.ts';
import type { Entry, LogEvent } from './notation.ts';
import type { Recording } from './recording.ts';

export interface Player {
  readonly recording: Recording;
  readonly timeline: Timeline;
  /** Events shown so far. */
  readonly shown: number;
  /** Where on the timeline. */
  readonly positionMs: number;
  readonly speed: number;
  readonly playing: boolean;
}

export interface PlayerOptions {
  /** Times the recorded pace. */
  readonly speed?: number;
  /** Longer gaps are shortened to this. */
  readonly longestGapMs?: number;
}

/** A player at the start of a recording, running. */
export function startPlayer(
  recording: Recording,
  { speed = 1, longestGapMs = usualLongestGapMs }: PlayerOptions = {},
): Player {
  const timeline = layTimeline(recording, longestGapMs);
  return { recording, timeline, shown: 0, positionMs: 0, speed, playing: recording.frames.length > 0 };
}

/** The player `elapsedMs` later by the viewer's clock. It stops by itself at marks, at `pause` and at the end. */
export function advancePlayer(player: Player, elapsedMs: number): Player {
  if (!player.playing) return player;
  const { recording, timeline } = player;
  const target = player.positionMs + elapsedMs * player.speed;
  for (let { shown } = player; ; shown++) {
    const at = timeline.atMs[shown];
    if (at === undefined) return { ...showFirst(player, shown), playing: false };
    if (at > target) return { ...player, shown, positionMs: target };
    if (isStop(recording.frames[shown]?.entry)) return { ...showFirst(player, shown + 1), playing: false };
  }
}

/** Milliseconds by the viewer's clock until something more is shown; null when nothing will be. */
export function untilNextMs({ playing, shown, timeline, positionMs, speed }: Player): number | null {
  const at = timeline.atMs[shown];
  return playing && at !== undefined ? (at - positionMs) / speed : null;
}

/** The player with exactly this many events shown, at the moment of the last of them. */
export const showFirst = (player: Player, shown: number): Player => ({
  ...player,
  shown,
  positionMs: player.timeline.atMs[shown - 1] ?? 0,
});

const stops: ReadonlySet<LogEvent['do'] | undefined> = new Set(['mark', 'pause']);

export const isStop = (entry: Entry | undefined): boolean => stops.has(entry?.event.do);

/** What a screen draws. Times at the recorded pace, long gaps shortened. */
export interface PlayerView {
  readonly session: Session;
  /** The event shown last; null before the first. */
  readonly last: Entry | null;
  /** What a teacher says at this place; null where nothing is said. */
  readonly saying: string | null;
  readonly elapsedMs: number;
  readonly totalMs: number;
  readonly speed: number;
  readonly playing: boolean;
  readonly ended: boolean;
}

export function viewPlayer(player: Player): PlayerView {
  const { recording, timeline, shown, positionMs, speed, playing } = player;
  return {
    session: sessionAt(recording, shown),
    last: recording.frames[shown - 1]?.entry ?? null,
    saying: sayingAt(player),
    elapsedMs: positionMs,
    totalMs: timeline.totalMs,
    speed,
    playing,
    ended: shown === recording.frames.length,
  };
}

/** The session once `shown` events have been shown. */
export const sessionAt = ({ frames, start }: Recording, shown: number): Session =>
  frames[shown - 1]?.session ?? start;

/** The newest `say` that no change of place has followed. */
function sayingAt({ recording, shown }: Player): string | null {
  const { done } = sessionAt(recording, shown);
  for (let i = shown - 1; i >= 0; i--) {
    const entry = recording.frames[i]?.entry;
    if (!entry || entry.stepsDone !== done) return null;
    if (entry.event.do === 'say') return entry.event.text;
  }
  return null;
}

/** A gap longer than this is shortened when a log is played, unless the viewer says otherwise. */
export const usualLongestGapMs = 20_000;

/** When each event of a recording is shown, at the recorded pace. */
export interface Timeline {
  readonly atMs: Float64Array;
  readonly totalMs: number;
}

export function layTimeline({ frames }: Recording, longestGapMs: number): Timeline {
  const atMs = new Float64Array(frames.length);
  let totalMs = 0;
  for (const [i, { entry }] of frames.entries()) {
    totalMs += Math.min(entry.afterMs, longestGapMs);
    atMs[i] = totalMs;
  }
  return { atMs, totalMs };
}
