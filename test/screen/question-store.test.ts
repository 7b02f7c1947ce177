/** The questions without a screen or a disk: what is kept and when, and what is said where that fails. */
import { describe, expect, it } from 'vitest';
import type { QuestionId } from '../../source/chat/first-run/answers.ts';
import { beginInterview } from '../../source/chat/first-run/interview.ts';
import { createQuestionKeys } from '../../source/screen/questions/question-keys.ts';
import {
  createQuestionStore,
  type QuestionStoreOptions,
  type QuestionsEnd,
} from '../../source/screen/questions/question-store.ts';
import type { SettingChange } from '../../source/settings/settings.ts';
import { keyNamed } from './bench-in-memory.ts';

function openQuestions(options: Partial<QuestionStoreOptions> = {}) {
  const kept: (readonly string[])[] = [];
  const settings: SettingChange[] = [];
  const store = createQuestionStore({
    interview: beginInterview({}, 'cm'),
    lines: [],
    keepAnswers: ({ answers }) => {
      kept.push(Object.keys(answers));
      return null;
    },
    keepBrief: (_, out) => ({ ok: true, value: { file: {}, name: 'Pouch', told: out ?? 'ours' } }),
    keep: (change) => settings.push(change),
    ...options,
  });
  const told = (): readonly string[] => store.get().lines.map(({ text }) => text);
  return { store, kept, settings, told, at: (): QuestionId | 'plan' => store.get().interview.at };
}

describe('the questions', () => {
  it('keep each answer as it is given, and nothing where none was', () => {
    const { store, kept } = openQuestions();
    for (const line of ['Pouch', '? girth', 'so big', 'back', '']) store.submit(line);
    expect(kept).toEqual([['name']]);
    store.submit('14 by 18');
    expect(kept).toEqual([['name'], ['name', 'size']]);
  });

  it('say once that answers cannot be kept, and go on', () => {
    const { store, told, at } = openQuestions({ keepAnswers: () => 'The disk is full.' });
    for (const line of ['Pouch', '14 by 18', 'mid']) store.submit(line);
    expect(told().filter((text) => text === 'The disk is full.')).toHaveLength(1);
    expect(at()).toBe('swatch');
  });

  it('stay at the plan where the brief cannot be kept, and end where it can', () => {
    const { store, told, at } = openQuestions({
      keepBrief: (_, out) =>
        out === 'taken.json'
          ? { ok: false, fault: 'taken.json exists already.' }
          : { ok: true, value: { file: {}, name: 'Pouch', told: 'kept' } },
    });
    for (const line of ['', '', '', '', '', '', '']) store.submit(line);
    expect(store.submit('save taken.json')).toBe(null);
    expect(told().at(-1)).toBe('taken.json exists already.');
    expect(at()).toBe('plan');
    expect(store.submit('')).toMatchObject({ kind: 'begin', brief: { told: 'kept' } });
  });

  it('keep the units for the next time', () => {
    const { store, settings } = openQuestions();
    store.submit('units in');
    expect(settings).toEqual([{ name: 'units', value: 'in' }]);
  });
});

describe('the keys', () => {
  const openKeys = () => {
    const questions = openQuestions();
    const ends: QuestionsEnd[] = [];
    const keys = createQuestionKeys({
      store: questions.store,
      leave: (end) => ends.push(end),
      suspend: () => undefined,
      pressWindowMs: 100,
    });
    const press = (name: string, atMs: number): void => keys.onKey(keyNamed(name), atMs);
    const chord = (name: string): void => keys.onKey({ ...keyNamed(name), ctrl: true, text: '' }, 0);
    return { ...questions, ends, press, chord, prompt: () => keys.prompt().line.text };
  };

  it('take one answer for an Enter that bounces, another for one that comes later', () => {
    const { press, at } = openKeys();
    press('enter', 0);
    for (const atMs of [10, 40, 70]) press('enter', atMs);
    expect(at()).toBe('size');
    press('enter', 2000);
    expect(at()).toBe('bed');
  });

  it('complete the words that steer, and bring back what was typed', () => {
    const { press, prompt } = openKeys();
    for (const letter of 'ans') press(letter, 0);
    press('tab', 1);
    expect(prompt()).toBe('answers ');
    press('enter', 500);
    press('up', 600);
    expect(prompt()).toBe('answers ');
  });

  it('leave on Ctrl-C, and on Ctrl-D where nothing is typed', () => {
    const { chord, ends } = openKeys();
    chord('d');
    chord('c');
    expect(ends.map(({ kind }) => kind)).toEqual(['left', 'interrupted']);
  });
});
