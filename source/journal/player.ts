/** Playing a recording: a place on its timeline, moved by time and by the viewer. Nothing here can change the log. */
import { currentStep, type Session } from '../session/session.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import type { Phase, Step } from '../steps/step.ts';
import type { Entry, LogEvent } from './notation.ts';
import type { Recording } from './read-log.ts';

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

const isStop = (entry: Entry | undefined): boolean => stops.has(entry?.event.do);

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
const sessionAt = ({ frames, start }: Recording, shown: number): Session =>
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
const usualLongestGapMs = 20_000;

/** When each event of a recording is shown, at the recorded pace. */
interface Timeline {
  readonly atMs: Float64Array;
  readonly totalMs: number;
}

function layTimeline({ frames }: Recording, longestGapMs: number): Timeline {
  const atMs = new Float64Array(frames.length);
  let totalMs = 0;
  for (const [i, { entry }] of frames.entries()) {
    totalMs += Math.min(entry.afterMs, longestGapMs);
    atMs[i] = totalMs;
  }
  return { atMs, totalMs };
}

/** What a viewer can do while a recording plays. */
export type PlayerAction =
  | { readonly do: 'play' | 'pause' | 'step-on' | 'step-back' | 'faster' | 'slower' | 'next-mark' | 'to-end' }
  | { readonly do: 'to-phase'; readonly phase: Phase }
  | { readonly do: 'to-stripe'; readonly stripe: number };

export type PlayerFault =
  | { readonly code: 'player/at-start' }
  | { readonly code: 'player/at-end' }
  | { readonly code: 'player/no-more-marks' }
  | { readonly code: 'player/fastest'; readonly speed: number }
  | { readonly code: 'player/slowest'; readonly speed: number }
  | { readonly code: 'player/phase-not-reached'; readonly phase: Phase }
  | { readonly code: 'player/stripe-not-reached'; readonly stripe: number };

type Outcome = Result<Player, PlayerFault>;

/** The player after `action`. Stepping stops it; going to a phase or a stripe leaves it running or standing. */
export function updatePlayer(player: Player, action: PlayerAction): Outcome {
  switch (action.do) {
    case 'play':
      return isAtEnd(player) ? fail({ code: 'player/at-end' }) : succeed({ ...player, playing: true });
    case 'pause':
      return succeed({ ...player, playing: false });
    case 'step-on':
      return showThrough(player, isSeen, { code: 'player/at-end' });
    case 'step-back':
      return stepBack(player);
    case 'next-mark':
      return showThrough(player, isStop, { code: 'player/no-more-marks' });
    case 'to-end':
      return succeed({ ...showFirst(player, player.recording.frames.length), playing: false });
    case 'faster':
      return faster(player);
    case 'slower':
      return slower(player);
    case 'to-phase':
      return goTo(player, ({ phase }) => phase === action.phase, {
        code: 'player/phase-not-reached',
        phase: action.phase,
      });
    case 'to-stripe':
      return goTo(player, ({ stripe }) => stripe === action.stripe, {
        code: 'player/stripe-not-reached',
        stripe: action.stripe,
      });
  }
}

const isAtEnd = ({ shown, recording }: Player): boolean => shown === recording.frames.length;

/** Events that leave nothing to see are passed over when stepping. */
const unseen: ReadonlySet<LogEvent['do']> = new Set(['resume', 'quit', 'unknown', 'finished']);
const isSeen = ({ event }: Entry): boolean => !unseen.has(event.do);

/** On to the next event of a sort, showing it. */
function showThrough(player: Player, isWanted: (entry: Entry) => boolean, none: PlayerFault): Outcome {
  const ahead = player.recording.frames.slice(player.shown).findIndex(({ entry }) => isWanted(entry));
  return ahead < 0 ? fail(none) : succeed({ ...showFirst(player, player.shown + ahead + 1), playing: false });
}

/** Back to just before the last event that could be seen. */
function stepBack(player: Player): Outcome {
  const last = player.recording.frames.slice(0, player.shown).findLastIndex(({ entry }) => isSeen(entry));
  return last < 0
    ? fail({ code: 'player/at-start' })
    : succeed({ ...showFirst(player, last), playing: false });
}

/** Times the recorded pace. */
export const speeds: readonly number[] = [0.25, 0.5, 1, 2, 4, 8, 16, 32, 64];

function faster(player: Player): Outcome {
  const speed = speeds.find((one) => one > player.speed);
  return speed ? succeed({ ...player, speed }) : fail({ code: 'player/fastest', speed: player.speed });
}

function slower(player: Player): Outcome {
  const speed = speeds.findLast((one) => one < player.speed);
  return speed ? succeed({ ...player, speed }) : fail({ code: 'player/slowest', speed: player.speed });
}

/** To the first moment at which the step to do is the wanted one, before or behind. */
function goTo(player: Player, isWanted: (step: Step) => boolean, none: PlayerFault): Outcome {
  const { recording } = player;
  for (let shown = 0; shown <= recording.frames.length; shown++) {
    const step = currentStep(sessionAt(recording, shown));
    if (step && isWanted(step)) return succeed(showFirst(player, shown));
  }
  return fail(none);
}
