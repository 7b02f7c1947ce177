/** What `find` and the way back answer is what bench and plan say of the same place, in both languages and both systems of units. */
import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { edgesOf, opposite } from '../../source/bed/bed.ts';
import { formatNeedle } from '../../source/bed/needles.ts';
import { benchView } from '../../source/chat/view.ts';
import { setIn, setOut } from '../../source/session/diagnose/settle.ts';
import { looksAt } from '../../source/session/locate/looks-of.ts';
import { bedAtPlace } from '../../source/session/rip-back/bed-at-place.ts';
import { startSession } from '../../source/session/session.ts';
import { imperial, metric, type Units } from '../../source/shared/units.ts';
import { allSteps, type Job, layOutJob, stepAt } from '../../source/steps/job.ts';
import type { Step } from '../../source/steps/step.ts';
import { formatPlanPage } from '../../source/wording/plan-page.ts';
import { sayStep } from '../../source/wording/steps.ts';
import { inEnglish, type Language, wordsIn } from '../../source/wording/words.ts';
import { answersTo, openMemoryBench } from '../fixtures/bench-in-memory.ts';
import { planOf } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import { german, speak } from '../fixtures/spoken.ts';
import { tries } from '../tools/tries.ts';

const spoken: readonly (readonly [string, Language, Units])[] = [
  ['English, in centimetres', inEnglish, metric],
  ['English, in inches', inEnglish, imperial],
  ['German, in centimetres', german, metric],
  ['German, in inches', german, imperial],
];

const benchIn = (file: unknown, language: Language, units: Units) => {
  speak(language);
  return openMemoryBench({ brief: file, settings: { language: language.code, units: units.length } });
};

afterEach(() => speak(null));

/** Needles, numbers and sides: a German side may end as its noun asks. */
const factsIn = (text: string): readonly string[] =>
  (text.match(/\b[LR]\d+\b|\b\d+\b|\b(?:left|right)\b|\b(?:link|recht)(?=s|e)/gi) ?? []).map((fact) =>
    fact.toLowerCase(),
  );

const needlesIn = (text: string): readonly string[] =>
  [...new Set(text.match(/\b[LR][1-9]\d*\b/g))].toSorted();

/** Everything that can be read off the bed after a step, as it is typed. */
function findLine(job: Job, done: number): string {
  const { left, right, lastColour, carriage, feeder, rowCounter, stitches } = looksAt(job, done);
  return `find ${left} ${right} ${lastColour} carriage ${carriage} row ${rowCounter} ${stitches} stitches feeder ${feeder ?? 'empty'}`;
}

const shapingSteps = (job: Job): readonly Step[] =>
  [...allSteps(job)].filter(({ act }) => act.kind === 'increase' || act.kind === 'decrease');

describe.each(spoken)('in %s', (_, language, units) => {
  it('find tells a place by the facts that where tells of it', () => {
    let told = 0;
    fc.assert(
      fc.property(briefFile(), fc.integer({ min: 0, max: 99 }), (file, percent) => {
        const job = layOutJob(planOf(file));
        const [from, to] = [job.phaseStarts[1] ?? 0, job.phaseStarts[2] ?? 0];
        const rows = [...allSteps(job)].filter(({ step, row }) => step > from && step < to && row > 0);
        const there = rows[Math.floor((rows.length * percent) / 100)]?.step ?? from + 1;
        const bench = benchIn(file, language, units);
        const answer = answersTo(bench.store, findLine(job, there));
        const [offer, ...others] = bench.store.get().talk.offers;
        if (offer?.is !== 'place' || others.length > 0) return;
        const { place } = offer;
        expect(place.done).toBeLessThanOrEqual(there);
        expect(place.through).toBeGreaterThanOrEqual(there);
        answersTo(bench.store, 'choose 1');
        const where = answersTo(bench.store, 'where').join(' ');
        expect(factsIn(where), `${answer[0]} ${where}`).toEqual(
          expect.arrayContaining([...factsIn(answer[0] ?? '')]),
        );
        const { feeder } = place.looks;
        if (feeder !== null) for (const text of [answer[0], where]) expect(text).toContain(feeder);
        told++;
      }),
      { numRuns: tries(25) },
    );
    expect(told).toBeGreaterThan(tries(25) / 3);
  });

  it('the way back over a shaping move names the needles of its instruction', () => {
    const words = wordsIn(language, units);
    fc.assert(
      fc.property(briefFile(), fc.integer({ min: 0, max: 99 }), (file, percent) => {
        const job = layOutJob(planOf(file));
        const moves = shapingSteps(job);
        const step = moves[Math.floor((moves.length * percent) / 100)];
        if (!step) throw new Error('a bag without a shaping move');
        const bench = benchIn(file, language, units);
        bench.perform({ do: 'go', done: step.step });
        const back = answersTo(bench.store, `rip step ${step.step}`).slice(1).join(' ');
        const instruction = needlesIn(sayStep(step, words));
        expect(instruction).toEqual(expect.arrayContaining([...needlesIn(back)]));
        const lifted = step.act.kind === 'increase' || step.act.kind === 'decrease' ? step.act.from : [];
        expect(needlesIn(back)).toEqual(expect.arrayContaining([lifted[0], lifted.at(-1)]));
      }),
      { numRuns: tries(25) },
    );
  });

  it('the plan hangs a bag on the needles that find tells of its first and last rows', () => {
    const words = wordsIn(language, units);
    let hungOnce = 0;
    fc.assert(
      fc.property(briefFile(), (file) => {
        const plan = planOf(file);
        if (plan.hangings.length > 1) return;
        const job = layOutJob(plan);
        const steps = [...allSteps(job)];
        const first = steps.find(({ act }) => act.kind === 'pass');
        const last = steps.find(({ act }) => act.kind === 'closing-pass');
        const page = needlesIn(formatPlanPage(plan, words));
        for (const pass of [first, last]) {
          const { left, right } = looksAt(job, pass?.step ?? 0);
          expect(page).toEqual(expect.arrayContaining([left, right]));
        }
        hungOnce++;
      }),
      { numRuns: tries(40) },
    );
    expect(hungOnce).toBeGreaterThan(0);
  });
});

it('a shaping move lifts the loops that the hands find outermost on the bed', () => {
  fc.assert(
    fc.property(briefFile(), (file) => {
      const job = layOutJob(planOf(file));
      const { crawl, edgeStitches } = job.plan.brief;
      for (const { step, act, moves } of shapingSteps(job)) {
        const bed = bedAtPlace(job, step - 1);
        const hands =
          act.kind === 'increase'
            ? setOut(bed, crawl, edgeStitches)
            : setIn(bed, opposite(crawl), edgeStitches);
        expect(hands).toEqual(moves);
      }
    }),
    { numRuns: tries(60) },
  );
});

it('the needle that an instruction calls empty or doubled is so in the picture of the bed', () => {
  fc.assert(
    fc.property(briefFile(), (file) => {
      const job = layOutJob(planOf(file));
      const named = (place: number): string => formatNeedle(job.plan.brief.bed.needles, place);
      for (const { step, act } of shapingSteps(job)) {
        const { bed } = benchView({ ...startSession(job), done: step });
        if (act.kind === 'increase') expect(bed.empty.map(named), `step ${step}`).toContain(act.uncovered);
        if (act.kind === 'decrease') expect(bed.doubled.map(named), `step ${step}`).toContain(act.doubled);
      }
    }),
    { numRuns: tries(60) },
  );
});

it('the loops that find counts are those on the bed', () => {
  fc.assert(
    fc.property(briefFile(), fc.integer({ min: 1, max: 99 }), (file, percent) => {
      const job = layOutJob(planOf(file));
      const done = Math.max(1, Math.floor((job.stepCount * percent) / 100));
      const { left, right, stitchCount } = edgesOf(bedAtPlace(job, done));
      const named = (place: number | null) =>
        place === null ? null : formatNeedle(job.plan.brief.bed.needles, place);
      const { left: first, right: last, stitches } = looksAt(job, done);
      expect([first, last, stitches], stepAt(job, done).act.kind).toEqual([
        named(left),
        named(right),
        stitchCount,
      ]);
    }),
    { numRuns: tries(200) },
  );
});
