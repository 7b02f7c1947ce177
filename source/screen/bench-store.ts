import type { Picture } from '../chat/intent.ts';
import { answer, type Line } from '../chat/line.ts';
import { parseLine } from '../chat/parse-line.ts';
import { replyTo } from '../chat/reply.ts';
import { isRestDue, pressed, type Spell } from '../chat/rest.ts';
import type { Scene } from '../chat/situation.ts';
import { noTalk, type Reply, stillHolds } from '../chat/talk.ts';
import { sayWayStep, type Way } from '../chat/way.ts';
import { formatChatFault } from '../chat/wording/chat-faults.ts';
import { formatHelp } from '../chat/wording/help.ts';
import { sayNow } from '../chat/wording/place.ts';
import { sayRest } from '../chat/wording/rest.ts';
import {
  sayPastSwitches,
  sayPedals,
  sayPedalsForgotten,
  sayPressNow,
  saySet,
  sayWarning,
  type Warning,
} from '../chat/wording/settings.ts';
import type { Plan } from '../planning/plan.ts';
import type { Command, SessionFault } from '../session/command.ts';
import type { Session } from '../session/session.ts';
import type { PedalAct, SettingChange, Settings } from '../settings/settings.ts';
import type { Result } from '../shared/result.ts';
import { unitsFor } from '../shared/units.ts';
import { createMoves } from './bench-moves.ts';

export interface BenchState {
  readonly session: Session;
  /** The end of the transcript, which only ever grows: what was said long ago is left to the terminal. */
  readonly lines: readonly Line[];
  /** Lines said before these. */
  readonly linesBefore: number;
  /** What is wrong with saving, in a sentence; null while every press is on disk. */
  readonly trouble: string | null;
  readonly settings: Settings;
  /** What the next key pressed is to do: a foot switch is being assigned. */
  readonly assigning: PedalAct | null;
  /** The drawing that stands in place of the counters. */
  readonly picture: Picture | null;
  /** A way back or a mend that the hands are on: its steps come before the plan's. */
  readonly way: Way | null;
}

/** Carries out a command and has it on disk before it answers. */
export type Recorder = (command: Command) => Result<Session, SessionFault>;

/** The engine of a bench, outside React: keys and lines come in, states go out to whoever subscribes. */
export interface BenchStore {
  readonly get: () => BenchState;
  readonly subscribe: (listener: () => void) => () => void;
  readonly perform: (command: Command) => void;
  /** Carries out a typed line; whether it asks to leave, perhaps to plan another bag. */
  readonly submit: (text: string) => 'left' | 'new' | null;
  readonly say: (lines: readonly Line[]) => void;
  readonly set: (change: SettingChange) => void;
  readonly assign: (act: PedalAct | null) => void;
  readonly again: () => void;
  /** A press did nothing: says why, to the ears too. */
  readonly warn: (warning: Warning) => void;
  readonly draw: (picture: Picture | null) => void;
  /** Whether nothing would be lost by leaving, or the maker was told so and asks again. */
  readonly mayLeave: () => boolean;
  /** Waits for what the last line has begun. */
  readonly untilDone: () => Promise<void>;
}

export interface BenchStoreOptions {
  readonly session: Session;
  readonly record: Recorder;
  readonly settings: Settings;
  readonly lines?: readonly Line[];
  /** Asked after each record. */
  readonly trouble?: () => string | null;
  /** From here on says everything in the language of this setting. */
  readonly speakIn?: (language: string) => Promise<void>;
  /** Keeps a setting for the next time. */
  readonly keep?: (change: SettingChange) => void;
  /** Writes the sheet of a plan to a file; what came of it, in a sentence. */
  readonly writeSheet?: (plan: Plan, out: string) => Promise<string>;
  /** Writes the whole log elsewhere and goes on there; what came of it, in a sentence. */
  readonly saveElsewhere?: (out: string) => string;
  /** What would be lost by leaving now, in a sentence; null where nothing would. */
  readonly lossOnLeaving?: () => string | null;
  /** Minutes that a row takes this maker; null before the first bag is finished. */
  readonly minutesPerRow?: () => number | null;
  /** The bags on the go and finished, a line each. */
  readonly bags?: () => readonly string[];
  /** The time, in milliseconds; without it nobody is reminded to rest. */
  readonly nowMs?: () => number;
  /** Told whenever there is something for the ears. */
  readonly announce?: Announce;
}

/** `next`: another step is to be done. `again`: it is asked for again. `rest`: hands are due one. The others: a press did nothing. */
export type Announce = (state: BenchState, why: 'next' | 'again' | 'rest' | Warning) => void;

/** Each line more costs a copy of those kept. */
const fewestKept = 500;

/** Leaves out lines that were said before the newest and are more than need be kept. */
function withoutOldLines(state: BenchState, saidBefore: number): BenchState {
  const extra = Math.min(state.lines.length - fewestKept, saidBefore);
  if (extra < fewestKept) return state;
  return { ...state, lines: state.lines.slice(extra), linesBefore: state.linesBefore + extra };
}

export function createBenchStore(options: BenchStoreOptions): BenchStore {
  const { session, settings, lines = [], trouble = () => null, keep, announce, writeSheet, bags } = options;
  let state: BenchState = {
    session,
    lines,
    linesBefore: 0,
    trouble: trouble(),
    settings,
    assigning: null,
    picture: null,
    way: null,
  };
  let talk = noTalk;
  let spell: Spell | null = null;
  /** What the last line has begun and is not done at once. */
  let begun: Promise<void> | undefined;
  /** The session that the maker was told not all of is on disk. */
  let toldOfLoss: Session | null = null;
  const listeners = new Set<() => void>();

  const publish = (next: Partial<BenchState>): void => {
    const { session: before, way, lines: said } = state;
    state = withoutOldLines({ ...state, ...next, trouble: trouble() }, said.length);
    for (const listener of listeners) listener();
    if (before.done !== state.session.done || way !== state.way) announce?.(state, 'next');
  };
  const say = (more: readonly Line[]): void => publish({ lines: [...state.lines, ...more] });
  const tell = (...texts: readonly string[]): void => say(answer(...texts));

  const { perform: move, begin, leave } = createMoves({ get: () => state, publish, record: options.record });

  const perform = (command: Command): void => {
    move(command);
    remindToRest();
  };

  /** Once each half hour of work. */
  const remindToRest = (): void => {
    if (!options.nowMs) return;
    spell = pressed(spell, options.nowMs());
    if (!isRestDue(spell)) return;
    spell = { ...spell, sinceMs: spell.lastMs };
    say([{ tone: 'caution', text: sayRest() }]);
    announce?.(state, 'rest');
  };

  const set = (change: SettingChange): void => {
    publish({ settings: { ...state.settings, [change.name]: change.value } });
    keep?.(change);
    // The step on the screen is spoken at once, or cut short.
    if (change.name === 'speech') announce?.(state, 'again');
  };

  const setAndTell = (change: SettingChange): void => {
    set(change);
    tell(saySet(change));
  };

  const changeLanguage = async (change: SettingChange, to: string): Promise<void> => {
    await options.speakIn?.(to);
    setAndTell(change);
  };

  const warn = (warning: Warning): void => {
    const { session: now, settings: given } = state;
    say([{ tone: 'caution', text: sayWarning(warning, now, unitsFor(given.units)) }]);
    announce?.(state, warning);
  };

  const again = (): void => {
    announce?.(state, 'again');
    tell((state.way && sayWayStep(state.way)) ?? sayNow(state.session, unitsFor(state.settings.units)));
  };

  const beginPedal = (act: PedalAct | 'off' | null): void => {
    const { pedals } = state.settings;
    if (act === null && Object.keys(pedals).length > 0) return tell(sayPedals(state.settings));
    if (act === 'off') {
      set({ name: 'pedals', value: {} });
      return tell(sayPedalsForgotten());
    }
    publish({ assigning: act ?? 'confirm' });
    tell(sayPressNow(act ?? 'confirm'));
  };

  const scene = (): Scene => {
    const { session: now, way } = state;
    const offers = stillHolds(talk, now) ? talk.offers.length : 0;
    return { session: now, way, trouble: state.trouble, offers };
  };

  const carryOut = (reply: Reply): boolean => {
    switch (reply.kind) {
      case 'do':
        perform(reply.command);
        return false;
      case 'say':
        say(reply.lines);
        return false;
      case 'offer':
        for (const command of reply.record) perform(command);
        talk = reply.talk;
        say(reply.lines);
        return false;
      case 'begin':
        begin(reply.way);
        return false;
      case 'stop':
        if (state.way) leave(state.way);
        else say([{ tone: 'fault', text: formatChatFault({ code: 'chat/nothing-to-stop' }) }]);
        return false;
      case 'help':
        tell(...formatHelp(reply.topic, scene()), ...sayPastSwitches(state.settings));
        return false;
      case 'bags':
        tell(...(bags?.() ?? []));
        return false;
      case 'set':
        if (reply.change.name === 'language') begun = changeLanguage(reply.change, reply.change.value);
        else setAndTell(reply.change);
        return false;
      case 'pedal':
        beginPedal(reply.act);
        return false;
      case 'again':
        again();
        return false;
      case 'draw':
        publish({ picture: reply.picture });
        return false;
      case 'sheet':
        begun = writeSheet?.(state.session.job.plan, reply.out).then((told) => tell(told));
        return false;
      case 'save':
        tell(options.saveElsewhere?.(reply.out) ?? '');
        return false;
      case 'new':
      case 'leave':
        return true;
    }
  };

  const mayLeave = (): boolean => {
    const loss = options.lossOnLeaving?.() ?? null;
    if (loss === null || toldOfLoss === state.session) return true;
    toldOfLoss = state.session;
    say([{ tone: 'caution', text: loss }]);
    return false;
  };

  const submit = (text: string): 'left' | 'new' | null => {
    if (text.trim() !== '') say([{ tone: 'typed', text: text.trim() }]);
    const intent = parseLine(text);
    const units = unitsFor(state.settings.units);
    const reply = intent.ok
      ? replyTo(state.session, intent.value, units, talk, options.minutesPerRow)
      : intent;
    if (reply.ok) {
      if (!carryOut(reply.value)) return null;
      return reply.value.kind === 'new' ? 'new' : 'left';
    }
    say([{ tone: 'fault', text: formatChatFault(reply.fault) }]);
    return null;
  };

  return {
    get: () => state,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    perform,
    submit,
    say,
    set,
    assign: (act) => publish({ assigning: act }),
    again,
    warn,
    draw: (picture) => publish({ picture }),
    mayLeave,
    untilDone: async () => begun,
  };
}
