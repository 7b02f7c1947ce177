/** What a message makes of a bench, and what is to be done for it. Nothing is done here. */

import { completeLine } from '../../chat/parse-line.ts';
import { answer } from '../../chat/talk.ts';
import type { SaveStatus } from '../../journal/fault.ts';
import { marksOf } from '../../session/marks.ts';
import { isRestDue, pressed } from '../../session/rest.ts';
import { isFinished } from '../../session/session.ts';
import type { PedalAct } from '../../settings/settings.ts';
import { formatLoss } from '../../wording/file-faults.ts';
import { sayRest } from '../../wording/steps.ts';
import { type Arrival, type Key, keyId } from '../keys/key.ts';
import { isEmpty, typeKey } from '../parts/prompt.ts';
import { createStore, type Effects } from '../parts/store.ts';
import { answerInPace, answerLine, askToLeave } from './answer-line.ts';
import { perform } from './bench-moves.ts';
import { assign, changeLanguage, refuseSwitch, set } from './bench-settings.ts';
import {
  andThen,
  type BenchEffect,
  type BenchMessage,
  type BenchState,
  type BenchStore,
  type Leaving,
  only,
  putAway,
  type Reaction,
  withLines,
} from './bench-state.ts';
import { pressElsewhere, pressSwitch } from './press-switch.ts';
import { isLong } from './reading.ts';

/** What is done from now on is announced, and what was said long ago is let go of. */
export function updateBench(before: BenchState, message: BenchMessage): Reaction {
  const [reacted, effects] = react(before, message);
  const after = toBeRead(before, reacted, message);
  const state = withoutOldLines(after, before.lines.length);
  const moved = hasMoved(before, state);
  const told: Reaction = [state, moved ? [...effects, { do: 'announce', why: 'next' }] : effects];
  return isFinished(state.session) && !isFinished(before.session) ? andThen(told, endOfBag) : told;
}

const hasMoved = (before: BenchState, after: BenchState): boolean =>
  after.session.done !== before.session.done || after.session.way !== before.session.way;

/**
 * What a line was answered with, or what was told for it, is read by itself where it is long. Not where the hands are led
 * on: then the bench is what they look for. What a finished bag took is read before its picture is.
 */
function toBeRead(before: BenchState, after: BenchState, { is }: BenchMessage): BenchState {
  const { window, lines, reading } = after;
  const wasRead = reading === null ? (before.reading?.lines.length ?? 0) : 0;
  const said = before.linesBefore + before.lines.length - after.linesBefore + wasRead;
  const fresh = lines.slice(said);
  if (!window || fresh.length === 0 || !answers.has(is)) return after;
  if (!reading && hasMoved(before, after)) return after;
  const kept = { ...after, lines: lines.slice(0, said) };
  if (reading) return { ...kept, reading: { ...reading, lines: [...reading.lines, ...fresh] } };
  return isLong(fresh, window) ? { ...kept, reading: { lines: fresh, at: 0 } } : after;
}

const answers: ReadonlySet<BenchMessage['is']> = new Set(['key', 'line', 'told', 'pace']);

/** The bag is finished: it is shown, with what it took and what can be done with it now. */
const endOfBag = (state: BenchState): Reaction => [{ ...state, picture: 'bag' }, [{ do: 'tell-record' }]];

function react(state: BenchState, message: BenchMessage): Reaction {
  switch (message.is) {
    case 'key':
      return takeKey(state, message.key, message.came);
    case 'line':
      return answerLine(putAway(state), message.text);
    case 'window':
      return only({ ...state, window: { columns: message.columns, rows: message.rows } });
    case 'command':
      return perform(state, message.command);
    case 'recorded':
      return andThen(
        andThen(takeSaving(state, message.saving), (after) => remindToRest(after, message.atMs)),
        readPace,
      );
    case 'saving':
      return takeSaving(state, message.saving);
    case 'quit':
      return askToLeave(state, message.how);
    case 'tried-to-save':
      return andThen(takeSaving(state, message.saving), (after) => leave(after, message.how));
    case 'told':
      return only(withLines(state, message.lines));
    case 'language':
      return changeLanguage(state, message.language, message.setting);
    case 'found-bag':
      return askToLeave(state, { open: message.path });
    case 'another':
      return askToLeave(state, message.another);
    case 'discard-this':
      return askToLeave(state, { discard: message.called });
    case 'pace':
      return answerInPace(state, message.pace, message.asked);
    case 'picture-shown':
      return only({ ...state, picture: null });
    case 'no-switch-here':
      return refuseSwitch(state);
  }
}

/** What they do on an empty prompt, where no switch has the key. */
export const benchKeys: ReadonlyMap<string, PedalAct> = new Map([
  ['enter', 'confirm'],
  ['space', 'confirm'],
  ['left', 'back'],
]);

/** More of a switch's letter than anybody holds it for came at once: nobody can tell any more what was meant. */
const isLongHold = ({ prompt, settings }: BenchState, { name, text }: Key): boolean =>
  name === 'paste' && isEmpty(prompt) && new Set(text).size === 1 && (text[0] ?? '') in settings.pedals;

/** Large letters on or off, whatever is typed. */
export const largeKey = 'f2';

/** On an empty prompt some keys act at once; otherwise they type. */
function takeKey(state: BenchState, key: Key, came: Arrival): Reaction {
  const { assigning, settings, session } = state;
  const id = keyId(key);
  const isPress = key.kind === 'press';
  if (assigning) return pressElsewhere(isPress ? assign(state, assigning, id) : only(state), key, came);
  const what = isEmpty(state.prompt) ? (settings.pedals[id] ?? benchKeys.get(id)) : undefined;
  if (what) return pressSwitch(state, what, key, came);
  if (state.reading && id === 'escape' && isEmpty(state.prompt)) return only(putAway(state));
  if (isLongHold(state, key)) return only(state);
  if (id === largeKey) {
    return isPress ? set(state, { name: 'large', value: !settings.large }) : only(state);
  }
  const { prompt, line } = typeKey(state.prompt, key, (text) =>
    completeLine(text, [...marksOf(session).keys()]),
  );
  const typed = prompt === state.prompt ? state : { ...state, prompt };
  if (id !== 'enter') return only(typed);
  return pressElsewhere(line === null ? only(typed) : answerLine(putAway(typed), line), key, came);
}

/** Says once why presses take long to answer. */
function takeSaving(state: BenchState, saving: SaveStatus): Reaction {
  const { slowFlushMs } = saving;
  const isSame = saving.state === 'saved' && state.saving.state === 'saved';
  const after = isSame ? state : { ...state, saving };
  if (slowFlushMs === null || state.toldOfSlowDisk) return only(after);
  return only(withLines({ ...after, toldOfSlowDisk: true }, answer(state.words.files.slow(slowFlushMs))));
}

/** Once, when the first press is on disk: nothing waits for it. */
const readPace = (state: BenchState): Reaction => [
  state,
  state.pace === null ? [{ do: 'read-pace', asked: null }] : [],
];

/** Once each half hour of work. */
function remindToRest(state: BenchState, atMs: number): Reaction {
  const spell = pressed(state.spell, atMs);
  if (!isRestDue(spell)) return only({ ...state, spell });
  const rested = { ...state, spell: { ...spell, sinceMs: spell.lastMs } };
  return [
    withLines(rested, [{ tone: 'caution', text: sayRest(state.words) }]),
    [{ do: 'announce', why: 'rest' }],
  ];
}

/** Leaves, unless something would be lost by it that the maker does not know of. */
function leave(state: BenchState, how: Leaving): Reaction {
  const loss = formatLoss(state.saving, state.words);
  if (loss === null) return only({ ...state, end: how });
  const told = withLines(state, [{ tone: 'caution', text: loss }]);
  return only({ ...told, toldOfLoss: state.session });
}

/** Each line more costs a copy of those kept. */
const fewestKept = 500;

/** Leaves out lines that were said before the newest and are more than need be kept. */
function withoutOldLines(state: BenchState, saidBefore: number): BenchState {
  const extra = Math.min(state.lines.length - fewestKept, saidBefore);
  if (extra < fewestKept) return state;
  return { ...state, lines: state.lines.slice(extra), linesBefore: state.linesBefore + extra };
}

export type BenchEffects = Effects<BenchState, BenchMessage, BenchEffect>;

/** A bench at work: its state outside React, and the machine that carries out what it wants done. */
export const createBenchStore = (first: BenchState, effects: BenchEffects): BenchStore =>
  createStore(first, updateBench, effects);
