/** The questions without a screen or a disk: what is kept and when, and what is said where that fails. */

import { describe, expect, it } from 'vitest';
import { keyNamed } from '../../../test/fixtures/bench-in-memory.ts';
import { briefOf, stripedBrief } from '../../../test/fixtures/plan-of.ts';
import type { QuestionId } from '../../chat/first-run/answers.ts';
import { beginInterview } from '../../chat/first-run/interview.ts';
import type { SettingChange } from '../../settings/settings.ts';
import type { Result } from '../../shared/result.ts';
import { englishWords } from '../../wording/words.ts';
import { createQuestionStore, type KeptBrief, startQuestions } from './update-questions.ts';

interface Machine {
  readonly trouble?: string | null;
  readonly keepBrief?: (out: string | null) => Result<KeptBrief, string>;
}

const brief = (told: string): Result<KeptBrief, string> => ({
  ok: true,
  value: { brief: briefOf(stripedBrief(8, 8, 60)), told },
});

function openQuestions({ trouble = null, keepBrief = (out) => brief(out ?? 'ours') }: Machine = {}) {
  const kept: (readonly string[])[] = [];
  const settings: SettingChange[] = [];
  const store = createQuestionStore(
    startQuestions({ interview: beginInterview({}, englishWords), lines: [], pedalGapMs: 100 }),
    {
      'keep-answers': ({ interview: { answers } }, send) => {
        kept.push(Object.keys(answers));
        send({ is: 'answers-kept', trouble });
      },
      'keep-brief': ({ out }, send) => send({ is: 'brief-kept', kept: keepBrief(out) }),
      keep: ({ change }) => void settings.push(change),
    },
  );
  return {
    kept,
    settings,
    submit: (text: string): void => store.send({ is: 'line', text }),
    press: (name: string, at: number): void =>
      store.send({ is: 'key', key: keyNamed(name), came: { since: at, at } }),
    leave: (how: 'left' | 'interrupted'): void => store.send({ is: 'quit', how }),
    told: (): readonly string[] => store.get().lines.map(({ text }) => text),
    at: (): QuestionId | 'plan' => store.get().interview.at,
    end: () => store.get().end,
    prompt: (): string => store.get().prompt.line.text,
    window: (columns: number, rows: number): void => store.send({ is: 'window', window: { columns, rows } }),
    reading: () => store.get().reading,
  };
}

describe('the questions', () => {
  it('keep each answer as it is given, and nothing where none was', () => {
    const { submit, kept } = openQuestions();
    for (const line of ['Pouch', '? girth', 'so big', 'back', '']) submit(line);
    expect(kept).toEqual([['name']]);
    submit('14 by 18');
    expect(kept).toEqual([['name'], ['name', 'size']]);
  });

  it('say once that answers cannot be kept, and go on', () => {
    const { submit, told, at } = openQuestions({ trouble: 'The disk is full.' });
    for (const line of ['Pouch', '14 by 18', 'mid 120']) submit(line);
    expect(told().filter((text) => text === 'The disk is full.')).toHaveLength(1);
    expect(at()).toBe('swatch');
  });

  it('stay at the plan where the brief cannot be kept, and end where it can', () => {
    const { submit, told, at, end } = openQuestions({
      keepBrief: (out) =>
        out === 'taken.json' ? { ok: false, fault: 'taken.json exists already.' } : brief('kept'),
    });
    for (const line of ['', '', '', '40 st 60 rows 19.2 by 21.6', '', '', '', '']) submit(line);
    submit('save taken.json');
    expect(end()).toBe(null);
    expect(told().at(-1)).toBe('taken.json exists already.');
    expect(at()).toBe('plan');
    submit('');
    expect(end()).toMatchObject({ kind: 'begin', kept: { told: 'kept' } });
  });

  it('keep the units for the next time', () => {
    const { submit, settings } = openQuestions();
    submit('units in');
    expect(settings).toEqual([{ name: 'units', value: 'in' }]);
  });
});

describe('the keys', () => {
  it('take one answer for an Enter that bounces, another for one that comes later', () => {
    const { press, at } = openQuestions();
    press('enter', 0);
    for (const atMs of [10, 40, 70]) press('enter', atMs);
    expect(at()).toBe('size');
    press('enter', 2000);
    expect(at()).toBe('bed');
  });

  it('complete the words that steer, and bring back what was typed', () => {
    const { press, prompt } = openQuestions();
    for (const letter of 'ans') press(letter, 0);
    press('tab', 1);
    expect(prompt()).toBe('answers ');
    press('enter', 500);
    press('up', 600);
    expect(prompt()).toBe('answers ');
  });

  it('leave as they are asked to', () => {
    for (const how of ['left', 'interrupted'] as const) {
      const { leave, end } = openQuestions();
      leave(how);
      expect(end()).toEqual({ kind: how });
    }
  });
});

describe('what is too long to be seen above the question', () => {
  it('is read page by page, and Enter answers nothing until then', () => {
    const { window, submit, press, at, reading, told } = openQuestions();
    window(40, 15);
    for (const _ of ['name', 'size', 'bed']) submit('');
    submit('?');
    const asked = at();
    expect(reading()?.lines[0]?.text).toMatch(/^Swatch: /);
    expect(told().join()).not.toContain('Swatch: ');
    press('enter', 1000);
    expect(at()).toBe(asked);
    expect(reading()).toBeNull();
    expect(told().at(-1)).toMatch(/^Swatch: /);
    press('enter', 2000);
    expect(at()).not.toBe(asked);
  });

  it('is put away by Escape and by what is typed, and goes back a page', () => {
    const { window, submit, press, at, reading } = openQuestions();
    window(40, 15);
    for (let i = 0; i < 8; i++) submit('');
    expect(at()).toBe('plan');
    press('enter', 1000);
    expect(reading()?.at).toBe(1);
    press('left', 2000);
    expect(reading()?.at).toBe(0);
    press('escape', 3000);
    expect(reading()).toBeNull();
    submit('change size');
    expect(at()).toBe('size');
  });

  it('is a question, too, that would be cut', () => {
    const { window, submit, reading } = openQuestions();
    window(40, 11);
    for (const _ of ['name', 'size', 'bed']) submit('');
    expect(
      reading()
        ?.lines.map(({ text }) => text)
        .join(' '),
    ).toMatch(/What does your swatch measure/);
  });

  it('waits for nobody where nothing is drawn', () => {
    const { submit, reading } = openQuestions();
    for (let i = 0; i < 8; i++) submit('');
    expect(reading()).toBeNull();
  });
});
