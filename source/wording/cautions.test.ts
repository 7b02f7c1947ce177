/**
 * Each caution at its step, and only there. Limits of cords on toys for the very young: free cord 220 mm, perimeter of a
 * loop 380 mm (EN 71-1). The other cautions: common practice, no source.
 */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { openMemoryBench } from '../../test/fixtures/bench-in-memory.ts';
import { jobOf } from '../../test/fixtures/plan-of.ts';
import { stepAt } from '../steps/job.ts';
import { cautionLines, cautionOf } from './steps.ts';
import { englishWords } from './words.ts';

const job = jobOf(readFileSync('demo/dice-bag.json', 'utf8'));
const steps = Array.from({ length: job.stepCount }, (_, done) => stepAt(job, done + 1));
const given = steps.flatMap((step) => {
  const caution = cautionOf(job.plan, step, englishWords);
  return caution === null ? [] : [{ step: step.step, act: step.act.kind, caution }];
});

it('come once each in the dice bag, where the hands are near what hurts', () => {
  expect(given.map(({ act }) => act)).toEqual([
    'set-needles',
    'hang-comb',
    'weights-off',
    'hide-ends',
    'tie',
  ]);
  const hints = ['hooks', 'Weights', 'weights', 'steam', 'cords'];
  for (const [i, hint] of hints.entries()) {
    expect(given.filter(({ caution }) => caution.includes(hint)).map(({ act }) => act)).toEqual([
      given[i]?.act,
    ]);
  }
});

it('hold the free end and the tied loop of this cord against the published limits, and leave it to local rules', () => {
  const tie = given.find(({ act }) => act === 'tie')?.caution ?? '';
  const { cord, brief } = job.plan;
  expect(tie).toContain(`free ends of ${brief.cord.tieCm} cm`);
  expect(tie).toContain(`a loop of ${Math.ceil(cord.lengthCm)} cm`);
  // EN 71-1:2005+A8:2009, 5.4 b and c: 220 and 380 mm, stretched by 25 N.
  expect(tie).toMatch(
    /EN 71-1:2005\+A8:2009 .* 22 cm and 38 cm in toys for the youngest; see the edition in force\. Local rules decide\.$/,
  );
});

it('tell of the foot switch and its cable as one is assigned, and at no step', () => {
  const bench = openMemoryBench();
  bench.type('pedal confirm', 0);
  bench.key('b', 5000);
  expect(bench.said(1)).toBe(englishWords.settings.cable);
  expect(bench.said(1)).toMatch(/nobody trips.*cable.*weight/);
  expect(given.filter(({ caution }) => /cable|switch/.test(caution))).toEqual([]);
});

it('are on the screen at their step and gone at the next', () => {
  const bench = openMemoryBench({ brief: readFileSync('demo/dice-bag.json', 'utf8') });
  bench.type('again', 1000);
  expect(bench.said(1)).toContain('Caution: Needle hooks');
  bench.type('next', 2000);
  bench.type('again', 3000);
  expect(bench.said(1)).not.toContain('Caution');
});

it('stand together on one page, each with its step', () => {
  const page = cautionLines(job, englishWords);
  for (const { step, caution } of given) expect(page).toContain(`At step ${step}: ${caution}`);
  expect(page.slice(given.length)).toEqual([
    `When you assign a foot switch: ${englishWords.settings.cable}`,
    'After half an hour of work: Rest your hands and shoulders for a few minutes (rule of thumb).',
  ]);
});

it('name the steps of a caution that comes more than once', () => {
  const short = jobOf({
    ...JSON.parse(readFileSync('demo/dice-bag.json', 'utf8')),
    bed: { needles: 60, pitchMm: 6.5, marginNeedles: 2 },
  });
  const off = Array.from({ length: short.stepCount }, (_, done) => stepAt(short, done + 1))
    .filter(({ act }) => act.kind === 'weights-off')
    .map(({ step }) => step);
  expect(off.length).toBeGreaterThan(2);
  const line = cautionLines(short, englishWords).find((one) => one.includes('Take the weights off')) ?? '';
  for (const step of off.slice(0, 4)) expect(line).toContain(String(step));
});
