import type { InUse } from '../journal/fault.ts';
import type { PlayerView } from '../journal/player.ts';
import type { PlayerFault } from '../journal/player-actions.ts';
import { exhaustive } from '../shared/result.ts';
import type { Amounts } from './amounts.ts';

/** Why the player stays where it is. A replay can go to fewer places than a maker can, and knows no other words. */
export type CannotPlay = PlayerFault | { readonly code: 'player/cannot-go-there' };

/** Why the player stands, or that it plays. */
export type Playing = Pick<PlayerView, 'playing' | 'ended' | 'last'>;

const fault = (why: CannotPlay, decimal: Amounts['decimal']): string => {
  switch (why.code) {
    case 'player/at-start':
      return 'This is the beginning of the log.';
    case 'player/at-end':
      return 'This is the end of the log.';
    case 'player/no-more-marks':
      return 'There is no mark further on.';
    case 'player/fastest':
      return `${decimal(why.speed)} times is as fast as it goes.`;
    case 'player/slowest':
      return `${decimal(why.speed)} times is as slow as it goes.`;
    case 'player/phase-not-reached':
      return `The log never comes to this part of the work: ${why.phase}.`;
    case 'player/stripe-not-reached':
      return `The log never comes to stripe ${why.stripe}.`;
    case 'player/cannot-go-there':
      return 'A replay goes to a part of the work or to a stripe. For example: go graft, or go stripe 3.';
    default:
      return exhaustive(why);
  }
};

export const player = ({ decimal }: Amounts) => ({
  note: 'note',
  lesson: 'lesson',
  play: 'play',
  fault: (why: CannotPlay) => fault(why, decimal),
  /** Both as a clock shows them. */
  time: (elapsed: string, total: string) => `${elapsed} of ${total}`,
  speed: (times: number) => `${decimal(times)}x`,
  state: ({ playing, ended, last }: Playing): string => {
    if (playing) return 'playing';
    if (ended) return 'the end';
    if (last?.event.do === 'mark') return `mark: ${last.event.name}`;
    return last?.event.do === 'pause' ? 'a place to pause' : 'paused';
  },
  /** From the longest to the shortest. */
  keys: [
    'Space: pause  ← →: a step  + -: speed  N: next mark  E: end  Q: leave  go stripe 3',
    'Space pause  ← → step  + - speed  N next mark  E end  Q leave',
    'Space, ← →, + -, N mark, E end, Q leave',
    'Q leaves',
  ] as readonly string[],
  /** The bag is open elsewhere, and there is no screen to show it on. */
  howToLook: (path: string) => `To look: slantwise replay ${path}`,
  /** The bag is open elsewhere, so this one may look. */
  onlyLooking: ({ pid, host }: InUse) =>
    `Another Slantwise (process ${pid}${host === null ? '' : ` on ${host}`}) has this bag open: here you only look, as far as it has come. If there is none, copy the log and go on in the copy: slantwise --log COPY`,
});

export type PlayerWords = ReturnType<typeof player>;
