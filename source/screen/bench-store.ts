import type { Line } from '../chat/line.ts';
import { parseLine } from '../chat/parse-line.ts';
import { replyTo, sayDone } from '../chat/reply.ts';
import { formatChatFault } from '../chat/wording/chat-faults.ts';
import { formatFault } from '../chat/wording/faults.ts';
import type { Command, SessionFault } from '../session/command.ts';
import type { Session } from '../session/session.ts';
import type { Result } from '../shared/result.ts';

export interface BenchState {
  readonly session: Session;
  /** The transcript: only ever grows. */
  readonly lines: readonly Line[];
  /** What is wrong with saving, in a sentence; null while every press is on disk. */
  readonly trouble: string | null;
}

/** Carries out a command and has it on disk before it answers. */
export type Recorder = (command: Command) => Result<Session, SessionFault>;

/** The engine of a bench, outside React: keys and lines come in, states go out to whoever subscribes. */
export interface BenchStore {
  readonly get: () => BenchState;
  readonly subscribe: (listener: () => void) => () => void;
  readonly perform: (command: Command) => void;
  /** Carries out a typed line; true when it asks to leave. */
  readonly submit: (text: string) => boolean;
  readonly say: (lines: readonly Line[]) => void;
}

export interface BenchStoreOptions {
  readonly session: Session;
  readonly record: Recorder;
  readonly lines?: readonly Line[];
  /** Asked after each record. */
  readonly trouble?: () => string | null;
}

export function createBenchStore({
  session,
  record,
  lines = [],
  trouble = () => null,
}: BenchStoreOptions): BenchStore {
  let state: BenchState = { session, lines, trouble: trouble() };
  const listeners = new Set<() => void>();

  const publish = (next: Partial<BenchState>): void => {
    state = { ...state, ...next, trouble: trouble() };
    for (const listener of listeners) listener();
  };
  const say = (more: readonly Line[]): void => publish({ lines: [...state.lines, ...more] });

  const perform = (command: Command): void => {
    const before = state.session;
    const after = record(command);
    if (!after.ok) return say([{ tone: 'fault', text: formatFault(after.fault) }]);
    publish({ session: after.value, lines: [...state.lines, ...sayDone(before, after.value, command)] });
  };

  const submit = (text: string): boolean => {
    if (text.trim() !== '') say([{ tone: 'typed', text: text.trim() }]);
    const intent = parseLine(text);
    const reply = intent.ok ? replyTo(state.session, intent.value) : intent;
    if (!reply.ok) say([{ tone: 'fault', text: formatChatFault(reply.fault) }]);
    else if (reply.value.kind === 'say') say(reply.value.lines);
    else if (reply.value.kind === 'do') perform(reply.value.command);
    return reply.ok && reply.value.kind === 'leave';
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
  };
}
