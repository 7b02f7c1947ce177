/** The bench without a screen, a disk or a clock: keys go in with their times, states come out. */

import { readFileSync } from 'node:fs';
import { usualPace } from '../../source/journal/pace.ts';
import type { Announce } from '../../source/screen/bench/announce.ts';
import { type BenchStore, startBench } from '../../source/screen/bench/bench-state.ts';
import { type BenchEffects, createBenchStore } from '../../source/screen/bench/bench-store.ts';
import { characterKey, type Key, type KeyKind, makeKey } from '../../source/screen/keys/key.ts';
import type { Command } from '../../source/session/command.ts';
import { type Session, startSession } from '../../source/session/session.ts';
import { updateSession } from '../../source/session/update-session.ts';
import { readSettings, type SettingChange } from '../../source/settings/settings.ts';
import { unitsFor } from '../../source/shared/units.ts';
import { doneBefore, type Landmark } from '../../source/steps/landmarks.ts';
import { loadWords } from '../../source/wording/language.ts';
import { wordsIn } from '../../source/wording/words.ts';
import { jobOf } from '../fixtures/plan-of.ts';
import { spokenLanguage } from '../fixtures/spoken.ts';

export interface MemoryOptions {
  readonly brief?: unknown;
  readonly settings?: Readonly<Record<string, unknown>>;
  readonly announce?: Announce;
  readonly nowMs?: () => number;
  /** In place of those that do nothing. */
  readonly effects?: Partial<BenchEffects>;
}

export interface MemoryBench {
  readonly store: BenchStore;
  readonly commands: readonly Command[];
  readonly kept: readonly SettingChange[];
  readonly perform: (command: Command) => void;
  readonly submit: (line: string) => void;
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
  let session: Session = startSession(job);
  const announce = options.announce ?? (() => undefined);
  const { settings } = readSettings(options.settings ?? {});
  const effects: BenchEffects = {
    record: ({ command }, send) => {
      const after = updateSession(session, command);
      if (!after.ok) throw new Error(JSON.stringify(after.fault));
      session = after.value;
      commands.push(command);
      send({ is: 'recorded', atMs: options.nowMs?.() ?? 0, saving: { state: 'saved', slowFlushMs: null } });
    },
    keep: ({ change }) => void kept.push(change),
    'load-language': async ({ setting }, send) => {
      send({ is: 'language', setting, language: await loadWords(setting) });
    },
    announce: ({ why }, _, state) => void announce(state, why),
    'save-and-leave': ({ how }, send) =>
      send({ is: 'tried-to-save', how, saving: { state: 'saved', slowFlushMs: null } }),
    'write-sheet': () => undefined,
    'save-elsewhere': () => undefined,
    'list-bags': () => undefined,
    'read-pace': ({ asked }, send) => send({ is: 'pace', pace: usualPace, asked }),
    ...options.effects,
  };
  const language = spokenLanguage();
  const words = wordsIn(language, unitsFor(settings.units));
  const store = createBenchStore(startBench({ session, settings, language, words }), effects);
  const key = (name: string, at: number, kind: KeyKind = 'press'): void =>
    store.send({ is: 'key', key: keyNamed(name, kind), at });
  const perform = (command: Command): void => store.send({ is: 'command', command });
  return {
    store,
    commands,
    kept,
    perform,
    submit: (text) => store.send({ is: 'line', text }),
    prompt: () => store.get().prompt.line.text,
    key,
    type: (line, atMs) => {
      for (const letter of line) key(letter === ' ' ? 'space' : letter, atMs);
      key('enter', atMs);
    },
    goTo: (place) => {
      const done = doneBefore(job, place);
      if (!done.ok) throw new Error(JSON.stringify(done.fault));
      if (done.value !== session.done) perform({ do: 'go', done: done.value });
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
  store.send({ is: 'line', text: line });
  return store
    .get()
    .lines.slice(before)
    .filter(({ tone }) => tone !== 'typed')
    .map(({ text }) => text);
}
