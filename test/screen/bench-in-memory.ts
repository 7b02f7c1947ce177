/** The bench without a screen, a disk or a clock: keys go in with their times, states come out. */
import { readFileSync } from 'node:fs';
import { loadLanguage } from '../../source/languages/languages.ts';
import { createBenchKeys, type Leaving } from '../../source/screen/bench/bench-keys.ts';
import type { Announce, BenchStore } from '../../source/screen/bench/bench-state.ts';
import { createBenchStore } from '../../source/screen/bench/bench-store.ts';
import { characterKey, type Key, type KeyKind, makeKey } from '../../source/screen/keys/key.ts';
import type { Command } from '../../source/session/command.ts';
import { type Session, startSession } from '../../source/session/session.ts';
import { updateSession } from '../../source/session/update-session.ts';
import { readSettings, type SettingChange } from '../../source/settings/settings.ts';
import { speak } from '../../source/shared/say.ts';
import { doneBefore, type Landmark } from '../../source/steps/landmarks.ts';
import { jobOf } from '../fixtures/plan-of.ts';

export interface MemoryOptions {
  readonly brief?: unknown;
  readonly settings?: Readonly<Record<string, unknown>>;
  readonly announce?: Announce;
  readonly nowMs?: () => number;
}

export interface MemoryBench {
  readonly store: BenchStore;
  readonly commands: readonly Command[];
  readonly kept: readonly SettingChange[];
  readonly left: readonly Leaving[];
  readonly prompt: () => string;
  /** An event of the key of this name, such as `b` or `f13`, at a time in milliseconds. */
  readonly key: (name: string, atMs: number, kind?: KeyKind) => void;
  /** Types a line, Enter included, long before or after all else. */
  readonly type: (line: string, atMs: number) => void;
  readonly goTo: (place: Landmark) => void;
  readonly done: () => number;
  /** The newest lines of the transcript. */
  readonly said: (count: number) => string;
}

export const keyNamed = (name: string, kind: KeyKind = 'press'): Key =>
  [...name].length === 1
    ? characterKey(name, { kind })
    : makeKey(name, { kind, text: name === 'space' ? ' ' : '' });

export function openMemoryBench(options: MemoryOptions = {}): MemoryBench {
  const brief = options.brief ?? readFileSync('demo/token-pouch.json', 'utf8');
  const job = jobOf(brief);
  const commands: Command[] = [];
  const kept: SettingChange[] = [];
  const left: Leaving[] = [];
  let session: Session = startSession(job);
  const store = createBenchStore({
    session,
    settings: readSettings(options.settings ?? {}).settings,
    record: (command) => {
      const after = updateSession(session, command);
      if (after.ok) {
        session = after.value;
        commands.push(command);
      }
      return after;
    },
    speakIn: async (code) => speak(await loadLanguage(code)),
    keep: (change) => void kept.push(change),
    ...(options.announce ? { announce: options.announce } : {}),
    ...(options.nowMs ? { nowMs: options.nowMs } : {}),
  });
  const keys = createBenchKeys({ store, leave: (how) => void left.push(how), suspend: () => undefined });
  const key = (name: string, atMs: number, kind: KeyKind = 'press'): void =>
    keys.onKey(keyNamed(name, kind), atMs);
  return {
    store,
    commands,
    kept,
    left,
    prompt: () => keys.prompt().line.text,
    key,
    type: (line, atMs) => {
      for (const letter of line) key(letter === ' ' ? 'space' : letter, atMs);
      key('enter', atMs);
    },
    goTo: (place) => {
      const done = doneBefore(job, place);
      if (!done.ok) throw new Error(JSON.stringify(done.fault));
      if (done.value !== session.done) store.perform({ do: 'jump', done: done.value });
    },
    done: () => store.get().session.done,
    said: (count) =>
      store
        .get()
        .lines.slice(-count)
        .map(({ text }) => text)
        .join('\n'),
  };
}

/** What a bench answers to a typed line. */
export function answersTo(store: BenchStore, line: string): readonly string[] {
  const before = store.get().lines.length;
  store.submit(line);
  return store
    .get()
    .lines.slice(before)
    .filter(({ tone }) => tone !== 'typed')
    .map(({ text }) => text);
}
