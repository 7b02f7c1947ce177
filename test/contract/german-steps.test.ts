/** Every instruction of the demo bags, as it is shown and as it is spoken, in each language. */
import { readdirSync, readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { bigSquares } from '../../source/screen/bench/rows/band-letters.ts';
import { imperial } from '../../source/shared/units.ts';
import { type Job, stepAt } from '../../source/steps/job.ts';
import type { Phase } from '../../source/steps/step.ts';
import { sayStep, shoutStep, speakStep } from '../../source/wording/steps.ts';
import type { Language } from '../../source/wording/words.ts';
import { jobOf } from '../fixtures/plan-of.ts';
import { englishWord, german, speak, spoken } from '../fixtures/spoken.ts';

const jobs = readdirSync('demo')
  .filter((file) => file.endsWith('.json'))
  .map((file): readonly [string, Job] => [file, jobOf(readFileSync(`demo/${file}`, 'utf8'))]);

const stepsOf = (job: Job) => Array.from({ length: job.stepCount }, (_, done) => stepAt(job, done + 1));

const shown = (job: Job): readonly string[] =>
  stepsOf(job).flatMap((step) => [sayStep(step, spoken()), sayStep(step, spoken(imperial))]);

const heard = (job: Job): readonly string[] =>
  stepsOf(job).flatMap((step) => [
    speakStep(step, spoken()),
    speakStep(step, spoken(imperial)),
    shoutStep(step, spoken()),
  ]);

/** One instruction has at most 240 letters; those that come again and again two lines of 80 columns (common practice). */
const mostCharacters = (phase: Phase): number => (phase === 'stripes' ? 160 : 240);

const languages: readonly (readonly [string, Language | null, RegExp])[] = [
  ['English', null, /\b1 (rows|needles|loops|stitches|inches|centimetres)\b/],
  ['German', german, /\b1 (Reihen|Nadeln|Maschen|Runden|Querfäden)\b/],
];

afterEach(() => speak(null));

describe.each(languages)('in %s', (_, language, severalOfOne) => {
  beforeEach(() => speak(language));

  it.each(jobs)('every instruction for %s can be read at a glance', (_file, job) => {
    const tooLong = stepsOf(job).flatMap((step) =>
      [sayStep(step, spoken()), sayStep(step, spoken(imperial))].filter(
        (text) => text.length > mostCharacters(step.phase),
      ),
    );
    expect(tooLong).toEqual([]);
  });

  it.each(jobs)('one is never several in %s', (_file, job) => {
    expect([...shown(job), ...heard(job)].filter((text) => severalOfOne.test(text))).toEqual([]);
  });

  it.each(jobs)('the large view has letters for each action in %s', (_file, job) => {
    const actions = new Set(stepsOf(job).map((step) => shoutStep(step, spoken())));
    expect([...actions].filter((action) => bigSquares(action) === null)).toEqual([]);
  });

  it.each(jobs)('what is spoken for %s is no longer than what is shown', (_file, job) => {
    const longer = stepsOf(job).filter(
      (step) => speakStep(step, spoken()).length > sayStep(step, spoken()).length,
    );
    expect(longer.map((step) => speakStep(step, spoken()))).toEqual([]);
  });
});

describe('in German', () => {
  beforeEach(() => speak(german));

  it.each(jobs)('no English is left in %s', (_file, job) => {
    expect([...shown(job), ...heard(job)].filter((text) => englishWord.test(text))).toEqual([]);
  });
});
