/**
 * What the events of a switch's key come to, whatever key it types: one press one act, a hold goes back. Here is only what
 * has to be remembered from one event to the next.
 */
import type { Way } from '../../session/way.ts';
import { type Arrival, type Key, keyId } from '../keys/key.ts';
import { filterPress, noPresses, type PressAct, type PressState, pressTiming } from '../keys/press-filter.ts';

/** Passes of the carriage that have come for the step after `done`. */
export interface Passes {
  readonly done: number;
  readonly count: number;
}

/** What a press that counted has done: `elsewhere` is a press that typed or assigned, no act of a switch. */
type PressDid = { readonly changed: boolean; readonly passesBefore: Passes } | 'elsewhere';

export interface Switches {
  readonly presses: PressState;
  readonly passes: Passes;
  /** Since when the step on the screen has been there to be looked at. */
  readonly shown: { readonly done: number; readonly way: Way | null; readonly since: number };
  /** By key, the last two presses: the one a hold began with, and its first repeat while that is in doubt. */
  readonly did: ReadonlyMap<string, readonly PressDid[]>;
}

export const noPasses: Passes = { done: -1, count: 0 };

/** The first step has been there for as long as anybody looked. */
export const startSwitches = (done: number): Switches => ({
  presses: noPresses,
  passes: noPasses,
  shown: { done, way: null, since: Number.NEGATIVE_INFINITY },
  did: new Map(),
});

/** Whether the event of a key is a press of its own. */
export function judgePress(
  switches: Switches,
  key: Key,
  came: Arrival,
  windowMs: number,
): readonly [Switches, PressAct] {
  const { state, act } = filterPress(switches.presses, key, came, { ...pressTiming, windowMs });
  return [{ ...switches, presses: state }, act];
}

export const remember = (switches: Switches, key: Key, done: PressDid): Switches => {
  const past = switches.did.get(keyId(key)) ?? [];
  return { ...switches, did: new Map(switches.did).set(keyId(key), [...past, done].slice(-2)) };
};

export const lastOf = ({ did }: Switches, key: Key): PressDid | undefined => did.get(keyId(key))?.at(-1);

export const forgetLast = (switches: Switches, key: Key): Switches => {
  const past = switches.did.get(keyId(key)) ?? [];
  return { ...switches, did: new Map(switches.did).set(keyId(key), past.slice(0, -1)) };
};
