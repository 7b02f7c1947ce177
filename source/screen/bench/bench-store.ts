import { answer, type Line } from '../../chat/line.ts';
import { parseLine } from '../../chat/parse-line.ts';
import { replyTo } from '../../chat/reply.ts';
import type { Scene } from '../../chat/situation.ts';
import { noTalk, type Reply, stillHolds } from '../../chat/talk.ts';
import { sayWayStep } from '../../chat/way.ts';
import { formatChatFault } from '../../chat/wording/chat-faults.ts';
import { formatHelp } from '../../chat/wording/help.ts';
import { sayNow } from '../../chat/wording/place.ts';
import { sayRest } from '../../chat/wording/rest.ts';
import { sayPastSwitches, sayWarning, type Warning } from '../../chat/wording/settings.ts';
import type { Command } from '../../session/command.ts';
import type { Session } from '../../session/session.ts';
import { unitsFor } from '../../shared/units.ts';
import { createListeners } from '../parts/listeners.ts';
import { createMoves } from './bench-moves.ts';
import { createBenchSettings } from './bench-settings.ts';
import type { BenchState, BenchStore, BenchStoreOptions } from './bench-state.ts';
import { createRestReminder } from './rest-reminder.ts';

/** Each line more costs a copy of those kept. */
const fewestKept = 500;

/** Leaves out lines that were said before the newest and are more than need be kept. */
function withoutOldLines(state: BenchState, saidBefore: number): BenchState {
  const extra = Math.min(state.lines.length - fewestKept, saidBefore);
  if (extra < fewestKept) return state;
  return { ...state, lines: state.lines.slice(extra), linesBefore: state.linesBefore + extra };
}

export function createBenchStore(options: BenchStoreOptions): BenchStore {
  const { session, settings, lines = [], trouble = () => null, announce, writeSheet, bags } = options;
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
  /** What the last line has begun and is not done at once. */
  let begun: Promise<void> | undefined;
  /** The session that the maker was told not all of is on disk. */
  let toldOfLoss: Session | null = null;
  const { subscribe, tellAll } = createListeners();

  const publish = (next: Partial<BenchState>): void => {
    const { session: before, way, lines: said } = state;
    state = withoutOldLines({ ...state, ...next, trouble: trouble() }, said.length);
    tellAll();
    if (before.done !== state.session.done || way !== state.way) announce?.(state, 'next');
  };
  const say = (more: readonly Line[]): void => publish({ lines: [...state.lines, ...more] });
  const tell = (...texts: readonly string[]): void => say(answer(...texts));

  const moves = createMoves({ get: () => state, publish, record: options.record });
  const { set, setAndTell, beginPedal } = createBenchSettings({
    ...options,
    get: () => state,
    publish,
    tell,
    announceAgain: () => announce?.(state, 'again'),
  });
  const remindToRest = createRestReminder(options.nowMs, () => {
    say([{ tone: 'caution', text: sayRest() }]);
    announce?.(state, 'rest');
  });

  const perform = (command: Command): void => {
    moves.perform(command);
    remindToRest();
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
        moves.begin(reply.way);
        return false;
      case 'stop':
        if (state.way) moves.leave(state.way);
        else say([{ tone: 'fault', text: formatChatFault({ code: 'chat/nothing-to-stop' }) }]);
        return false;
      case 'help':
        tell(...formatHelp(reply.topic, scene()), ...sayPastSwitches(state.settings));
        return false;
      case 'bags':
        tell(...(bags?.() ?? []));
        return false;
      case 'set':
        begun = setAndTell(reply.change);
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
    subscribe,
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
