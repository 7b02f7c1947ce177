import { currentStep } from '../session/session.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import type { Phase, Step } from '../steps/step.ts';
import type { Entry, LogEvent } from './notation.ts';
import { isStop, type Player, sessionAt, showFirst } from './player.ts';

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
