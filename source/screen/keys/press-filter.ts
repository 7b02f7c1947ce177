import { type Arrival, type Key, keyId } from './key.ts';

/**
 * `press`: counts. `ignore`: is no press of its own (bounce, repeat, release). `withdraw`: the last press
 * counted of this key was the first repeat of a held key; take it back. `held`: the key has been down for
 * `heldMs`, said once a hold; take back the press it began with and, as its meaning, one more.
 */
export type PressAct = 'press' | 'ignore' | 'withdraw' | 'held';

type PressTiming = {
  /** An event sooner than this after the last event of the key is no press. */
  readonly windowMs: number;
  /** Contacts bounce for less than this; a repeat comes later. It is the whole window where kinds are told. */
  readonly bounceMs: number;
  /** A held key repeats for the first time this long after it went down. */
  readonly repeatMs: readonly [from: number, to: number];
  readonly heldMs: number;
};

/** Common settings of keyboards and desktops; from practice, no source. */
export const pressTiming: PressTiming = { windowMs: 100, bounceMs: 20, repeatMs: [180, 700], heldMs: 1000 };

type Past = {
  /** The latest that the last event can have come. */
  readonly lastAt: number;
  /** The last press counted. */
  readonly pressedAt: number;
  /** The press with which a hold began, if this is one. */
  readonly downAt: number;
  /** `doubtful`: the last press counted may have been a repeat; the next event tells. */
  readonly phase: 'tap' | 'doubtful' | 'hold';
  readonly heldSaid: boolean;
  /** Its release was reported: what else comes before a press is none of a hold. */
  readonly isUp: boolean;
  readonly tellsKinds: boolean;
};
type Judged = readonly [past: Past, act: PressAct];

/** What is remembered of each key, by its id. Bounded by the number of keys passed in. */
export type PressState = ReadonlyMap<string, Past>;

export const noPresses: PressState = new Map();

const freshPress = (at: number, tellsKinds: boolean): Judged => [
  { lastAt: at, pressedAt: at, downAt: at, phase: 'tap', heldSaid: false, isUp: false, tellsKinds },
  'press',
];

function stillDown(past: Past, at: number, timing: PressTiming): Judged {
  const isHeld = !past.heldSaid && !past.isUp && at - past.downAt >= timing.heldMs;
  return [{ ...past, lastAt: at, heldSaid: past.heldSaid || isHeld }, isHeld ? 'held' : 'ignore'];
}

// The terminal says what each event is: only bounce is left to time.
function judgeByKind(past: Past, key: Key, at: number, timing: PressTiming): Judged {
  if (key.kind !== 'press') {
    const [down, act] = stillDown(past, at, timing);
    return [{ ...down, isUp: past.isUp || key.kind === 'release' }, act];
  }
  if (at - past.lastAt >= timing.bounceMs || at < past.lastAt) return freshPress(at, true);
  return [{ ...past, lastAt: at, isUp: false }, 'ignore'];
}

// A press after the window counts at once. It stays doubtful where a first repeat may have come, or where the
// events of a hold came late.
function judgePress(past: Past, { since, at }: Arrival, timing: PressTiming): Judged {
  const [fresh, act] = freshPress(at, false);
  const [from, to] = timing.repeatMs;
  if (past.phase === 'hold' && since - past.lastAt <= to) {
    return [{ ...fresh, phase: 'doubtful', downAt: past.downAt, heldSaid: past.heldSaid }, act];
  }
  if (at - past.pressedAt < from || since - past.pressedAt > to) return [fresh, act];
  return [{ ...fresh, phase: 'doubtful', downAt: past.pressedAt }, act];
}

// What may have come within the window is no press: one press too few is seen at once, one too many is knitted past.
function judgeByTime(past: Past, came: Arrival, timing: PressTiming): Judged {
  const { at } = came;
  if (at < past.lastAt) return freshPress(at, false);
  const gapMs = came.since - past.lastAt;
  if (gapMs >= timing.windowMs) return judgePress(past, came, timing);
  if (past.phase === 'doubtful' && gapMs >= timing.bounceMs) {
    return [{ ...past, lastAt: at, phase: 'hold' }, 'withdraw'];
  }
  return past.phase === 'hold' ? stillDown(past, at, timing) : [{ ...past, lastAt: at }, 'ignore'];
}

function judge(past: Past | undefined, key: Key, came: Arrival, timing: PressTiming): Judged {
  const { at } = came;
  const tellsKinds = key.kind !== 'press' || past?.tellsKinds === true;
  if (!past && key.kind === 'press') return freshPress(at, false);
  // A repeat or release of a key that went down before we listened.
  if (!past) return [{ ...freshPress(at, true)[0], heldSaid: true }, 'ignore'];
  if (tellsKinds) return judgeByKind({ ...past, tellsKinds }, key, at, timing);
  return judgeByTime(past, came, timing);
}

/**
 * Turns events of a foot switch into presses: bounce, a held key and its repeats are one press, however late they are
 * read. Every event of a key that surely comes `windowMs` or more after the last one is a `press` at once; only what
 * follows can withdraw it. Keys are judged apart. A key whose repeats or releases are reported is judged by them and, for
 * bounce alone, by `bounceMs`.
 */
export function filterPress(
  state: PressState,
  key: Key,
  came: Arrival,
  timing: PressTiming = pressTiming,
): { readonly state: PressState; readonly act: PressAct } {
  const id = keyId(key);
  const [past, act] = judge(state.get(id), key, came, timing);
  return { state: new Map(state).set(id, past), act };
}
