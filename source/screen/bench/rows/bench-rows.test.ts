/** The bench in windows of all sizes and both languages: words whole, nothing too wide, the band where it always is. */

import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import { jobOf } from '../../../../test/fixtures/plan-of.ts';
import { german, speak } from '../../../../test/fixtures/spoken.ts';
import {
  allViews,
  demoViews,
  differentBags,
  stepsOfAllKinds,
} from '../../../../test/fixtures/steps-of-all-kinds.ts';
import { colourRuns } from '../../../planning/colour-run.ts';
import { metric } from '../../../shared/units.ts';
import type { Span } from '../../../sheet/terminal/ansi.ts';
import { loadWords } from '../../../wording/language.ts';
import { englishWords, wordsIn } from '../../../wording/words.ts';
import { benchRows } from './bench-rows.ts';
import { instructionOf } from './instruction.ts';
import { brushFor, widthOf } from './row.ts';

const windows = [
  [40, 11],
  [60, 16],
  [80, 18],
  [100, 24],
  [120, 34],
  [200, 44],
] as const;
const languages = [
  ['English', null, englishWords],
  ['German', german, wordsIn(await loadWords('de'), metric)],
] as const;
const cases = windows.flatMap(([columns, room]) =>
  languages.flatMap(([name, spoken, words]) =>
    [false, true].map((large) => ({ columns, room, name, spoken, words, large })),
  ),
);

afterEach(() => speak(null));

describe.each(cases)(
  '$columns by $room, $name, large view $large',
  ({ columns, room, spoken, words, large }) => {
    it.each([true, false])('has instruction and caution whole and nothing too wide, ASCII %j', (ascii) => {
      speak(spoken);
      for (const view of stepsOfAllKinds()) {
        const brush = brushFor(view.plan, 'true', ascii);
        const { above, below, layout } = benchRows(view, { columns, room, large }, brush, words);
        for (const line of above) expect(widthOf(line)).toBeLessThanOrEqual(columns);
        for (const line of below) expect(widthOf(line)).toBeLessThanOrEqual(layout.width);
        expect(above.length + below.length).toBeLessThanOrEqual(room);
        const text = below
          .flat()
          .map((span) => span.text)
          .join(' ')
          .replace(/\s+/g, ' ');
        const { now, caution } = instructionOf(view, words);
        for (const word of `${now} ${caution ?? ''}`.split(/\s+/)) expect(text).toContain(word);
      }
    });
  },
);

it('has only ASCII where that is wanted', () => {
  for (const view of demoViews('token-pouch')) {
    for (const depth of ['true', '256', '16', 'none'] as const) {
      const brush = brushFor(view.plan, depth, true);
      const { above, below } = benchRows(view, { columns: 80, room: 18, large: false }, brush, englishWords);
      expect(
        [...above, ...below]
          .flat()
          .map(({ text }) => text)
          .join(''),
      ).toMatch(/^[\x20-\x7e]*$/);
    }
  }
});

describe.each([
  [80, 18],
  [60, 16],
  [120, 34],
])('the large view at %d by %d', (columns, room) => {
  const isLetter = ({ text, ground, ink }: Span): boolean =>
    /^[█▀▄]+$/.test(text) || (!ink && ['#000000', '#ffffff'].includes(ground ?? ''));

  // A change of yarn is told from afar by its two colours.
  it.each(differentBags)('has large letters at every other step of the %s than a change of yarn', (bag) => {
    const views = demoViews(bag).filter(({ glance }) => glance.kind !== 'yarn' || !glance.leaves);
    expect(views.length).toBeGreaterThan(40);
    for (const view of views) {
      const brush = brushFor(view.plan, 'true', false);
      const { above } = benchRows(view, { columns, room, large: true }, brush, englishWords);
      expect(above.flat().filter(isLetter).length, `step ${view.steps.at}`).toBeGreaterThan(4);
    }
  });
});

describe('the eight needles at an edge', () => {
  const rowsAt = (kind: 'increase' | 'decrease') => {
    const view = stepsOfAllKinds('dice-bag').find(({ step }) => step?.act.kind === kind);
    if (!view) throw new Error(kind);
    const { above, below } = benchRows(
      view,
      { columns: 80, room: 18, large: false },
      brushFor(view.plan, 'none', true),
      englishWords,
    );
    const texts = [...above, ...below].map((line) => line.map(({ text }) => text).join(''));
    const now = texts.findIndex((text) => text.trimStart().startsWith('now'));
    return [now - 1, now, now + 1].map((row) => texts[row]?.trim().split(/\s+/) ?? []);
  };

  it('show what an increase makes of them: one more in work, the third from the edge empty', () => {
    const [names, now, make] = rowsAt('increase');
    expect(names).toHaveLength(8);
    expect(now).toEqual(['now', '.', '.', 'O', 'O', 'O', 'O', 'O', 'O']);
    expect(make).toEqual(['make', '.', 'O', 'O', '_', 'O', 'O', 'O', 'O']);
  });

  it('show what a decrease makes of them: the outer one out of work, the third from it doubled', () => {
    const [names, now, make] = rowsAt('decrease');
    expect(names).toHaveLength(8);
    expect(now).toEqual(['now', 'O', 'O', 'O', 'O', 'O', 'O', 'O', '.']);
    expect(make).toEqual(['make', 'O', 'O', 'O', 'O', 'OO', 'O', '.', '.']);
  });
});

it.each([false, true])(
  'has needles, loops, bars or the whole bag under its glass at every step, ASCII %j',
  (ascii) => {
    const blank = stepsOfAllKinds().filter((view) => {
      const brush = brushFor(view.plan, 'none', ascii);
      const { layout, above, below } = benchRows(
        view,
        { columns: 80, room: 18, large: false },
        brush,
        englishWords,
      );
      const { row = 0, height = 0 } = layout.closeUp ?? {};
      const rows = [...above, ...below].slice(row, row + height);
      return height > 0 && rows.every((line) => line.every(({ text }) => text.trim() === ''));
    });
    expect(blank.map(({ step }) => step?.act.kind ?? 'finished')).toEqual([]);
  },
);

it('shows the whole bag with its size where it is measured, and the part that hands are on', () => {
  const rowsOf = (kind: string): readonly (readonly Span[])[] => {
    const view = stepsOfAllKinds().find(({ step }) => step?.act.kind === kind);
    if (!view) throw new Error(kind);
    const window = { columns: 80, room: 18, large: false };
    const { layout, above, below } = benchRows(view, window, brushFor(view.plan, 'none', true), englishWords);
    const { row = 0, height = 0 } = layout.closeUp ?? {};
    return [...above, ...below].slice(row, row + height);
  };
  const text = (kind: string): string =>
    rowsOf(kind)
      .map((line) => line.map(({ text: one }) => one).join(''))
      .join('\n');
  expect(text('measure-bag')).toMatch(/o---o[\s\S]* cm deep[\s\S]* cm wide/);
  const bold = (kind: string): string =>
    rowsOf(kind)
      .flat()
      .filter(({ bold: is }) => is)
      .map(({ text: one }) => one.trim())
      .join(' ');
  expect(bold('tie')).toMatch(/^o---o---o---o---o$/);
  expect(bold('hide-ends')).toMatch(/^\+-+\+$/);
});

it('has band and ruler of a self-striping yarn in the colours that are expected', () => {
  const run = [
    { colour: '#1d4e89', metres: 6 },
    { colour: '#e9c46a', metres: 4 },
    { colour: '#b3262e', metres: 5 },
  ];
  const brief = JSON.parse(readFileSync('demo/dice-bag.json', 'utf8'));
  const yarns = { ...brief.yarns, plum: { ...brief.yarns.plum, run } };
  const job = jobOf({ ...brief, yarns });
  const [{ bands } = { bands: [] }] = colourRuns(job.plan);
  const passes = allViews(job).filter(({ glance, phase }) => glance.kind === 'pass' && phase === 'stripes');
  const brush = brushFor(job.plan, 'true', false);
  const window = { columns: 80, room: 18, large: false };
  const coloursOf = (lines: readonly (readonly Span[])[]) =>
    new Set(lines.flat().flatMap(({ ink, ground }) => [ink, ground]));
  for (const view of passes.filter(({ yarn }) => yarn === 'plum')) {
    const { above } = benchRows(view, window, brush, englishWords);
    const row = view.rows.at + 1;
    const expected = bands.find(({ fromRow, throughRow }) => row >= fromRow && row <= throughRow)?.colour;
    expect(coloursOf(above), `row ${row}`).toContain(expected);
    expect(
      run.filter(({ colour }) => coloursOf(above).has(colour)),
      `row ${row}`,
    ).toHaveLength(1);
  }
  const [first] = passes;
  if (!first) throw new Error('no pass');
  const { below } = benchRows(first, window, brush, englishWords);
  for (const { colour } of run) expect(coloursOf(below)).toContain(colour);
});
