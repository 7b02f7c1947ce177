/** What a switch does to the bench: confirms, counts a pass, speaks, takes back; and some steps ask for a look first. */
import type { Count } from '../../chat/glance.ts';
import { currentStep } from '../../session/session.ts';
import { type PedalAct, pauseMs, type Warning } from '../../settings/settings.ts';
import { isGuarded, passesIn } from '../../steps/acts.ts';
import { sayStep } from '../../wording/steps.ts';
import type { Arrival, Key } from '../keys/key.ts';
import type { PressAct } from '../keys/press-filter.ts';
import { pageTurned } from '../parts/reading.ts';
import { againIn, perform } from './bench-moves.ts';
import { andThen, type BenchState, only, putAway, type Reaction, withLines } from './bench-state.ts';
import { forgetLast, judgePress, lastOf, noPasses, remember, type Switches } from './switches.ts';

/** Takes an event of a key that has something to do. */
export function pressSwitch(state: BenchState, what: PedalAct, key: Key, came: Arrival): Reaction {
  const [switches, act] = judgePress(state.switches, key, came, state.settings.pedalGapMs);
  return looking(takeJudged({ ...state, switches }, act, what, key, came), came);
}

/** Takes an event that has just done something else, so that its repeats are no presses. */
export function pressElsewhere(reaction: Reaction, key: Key, came: Arrival): Reaction {
  const after = andThen(reaction, (state) => {
    const [switches, act] = judgePress(state.switches, key, came, state.settings.pedalGapMs);
    return only({ ...state, switches: act === 'press' ? remember(switches, key, 'elsewhere') : switches });
  });
  return looking(after, came);
}

/** A step that has just come is there to be looked at from now on. */
const looking = (reaction: Reaction, { at }: Arrival): Reaction =>
  andThen(reaction, (state) => {
    const { session, switches } = state;
    const { way } = session;
    if (switches.shown.done === session.done && switches.shown.way === way) return only(state);
    return only(withSwitches(state, { shown: { done: session.done, way, since: at } }));
  });

const withSwitches = (state: BenchState, change: Partial<Switches>): BenchState => ({
  ...state,
  switches: { ...state.switches, ...change },
});

function takeJudged(state: BenchState, act: PressAct, what: PedalAct, key: Key, came: Arrival): Reaction {
  if (act === 'press') return counted(state, what, key, came);
  if (act === 'withdraw') return withdraw(state, what, key);
  return act === 'held' && what === 'confirm' ? goBack(state, key) : only(state);
}

function counted(before: BenchState, what: PedalAct, key: Key, came: Arrival): Reaction {
  return andThen(press(before, what, came), (state) => {
    const changed = state.session !== before.session;
    const did = { changed, passesBefore: before.switches.passes };
    return only({ ...state, switches: remember(state.switches, key, did) });
  });
}

function press(state: BenchState, what: PedalAct, came: Arrival): Reaction {
  if (state.reading) return only(turnPage(state, what));
  switch (what) {
    case 'confirm':
      return confirm(state, came);
    case 'pass':
      return pass(state);
    case 'again':
      return againIn(state);
    case 'back':
      return perform(state, { do: 'back' });
  }
}

/** While something is read, a press turns its page, and puts it away behind the last; nothing is confirmed by it. */
function turnPage(state: BenchState, what: PedalAct): BenchState {
  const { reading, window } = state;
  if (!reading || !window) return state;
  const page = pageTurned(reading, window, what === 'back' ? -1 : 1);
  return page ? { ...state, reading: page } : putAway(state);
}

function confirm(state: BenchState, { since }: Arrival): Reaction {
  const { session, settings, switches } = state;
  const { way } = session;
  const step = way ? null : currentStep(session);
  const tooSoon = since - switches.shown.since < pauseMs[settings.pause];
  if (step && tooSoon && isGuarded(step)) return warn(state, 'too-soon');
  return perform(state, { do: 'confirm', count: 1 });
}

/** No care here: a carriage that has crossed cannot be asked to look first. */
function pass(state: BenchState): Reaction {
  const { session, switches } = state;
  const { way } = session;
  // On the way back the carriage crosses without knitting: the maker says when a step of it is done.
  if (way) return only(state);
  const step = currentStep(session);
  const due = step ? passesIn(step) : 0;
  if (due === 0) return warn(state, 'no-pass-due');
  const count = switches.passes.done === session.done ? switches.passes.count + 1 : 1;
  if (count < due) return only(withSwitches(state, { passes: { done: session.done, count } }));
  return perform(withSwitches(state, { passes: noPasses }), { do: 'confirm', count: 1 });
}

/** Of the step on the screen, once the first of its passes has come. */
export function passesCounted({ session, switches }: BenchState): Count | null {
  const step = currentStep(session);
  const { done, count } = switches.passes;
  return step && !session.way && done === session.done && count > 0
    ? { at: count, of: passesIn(step) }
    : null;
}

/** Undoes what the first repeat of a held key did when it looked like a press. */
function withdraw(state: BenchState, what: PedalAct, key: Key): Reaction {
  const last = lastOf(state.switches, key);
  const forgetful = { ...state, switches: forgetLast(state.switches, key) };
  if (!last || last === 'elsewhere') return only(forgetful);
  const undone = last.changed
    ? perform(forgetful, { do: what === 'back' ? 'redo' : 'back' })
    : only(forgetful);
  return andThen(undone, (after) => only(withSwitches(after, { passes: last.passesBefore })));
}

function goBack(state: BenchState, key: Key): Reaction {
  const began = lastOf(state.switches, key);
  if (!began || began === 'elsewhere') return only(state);
  const undone = began.changed ? perform(state, { do: 'back' }) : only(state);
  return andThen(undone, (after) => perform(after, { do: 'back' }));
}

/** A press did nothing: says why, to the ears too. */
function warn(state: BenchState, warning: Warning): Reaction {
  const text = warning === 'too-soon' ? state.words.settings.tooSoon : sayNoPassDue(state);
  return [withLines(state, [{ tone: 'caution', text }]), [{ do: 'announce', why: warning }]];
}

function sayNoPassDue({ session, words }: BenchState): string {
  const step = currentStep(session);
  const next = step ? sayStep(step, words) : words.settings.nothingIsNext;
  return `${words.settings.noPassDue} ${next}`;
}
