/** A fact that is told in several places is the same in all of them, in both languages and both systems of units. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatNeedle } from '../../source/bed/needles.ts';
import { benchView } from '../../source/chat/view.ts';
import { planJson, stepJson } from '../../source/cli/plan.ts';
import { workJson } from '../../source/cli/work-json.ts';
import { edgesOfRow } from '../../source/planning/hangings.ts';
import type { Plan } from '../../source/planning/plan.ts';
import { closingTailCm } from '../../source/planning/tails.ts';
import { planWarnings } from '../../source/planning/warnings.ts';
import { bandText } from '../../source/screen/bench/rows/band-text.ts';
import { colourBands, looksAfter } from '../../source/session/locate/looks-of.ts';
import { startSession } from '../../source/session/session.ts';
import { imperial, metric, type Units } from '../../source/shared/units.ts';
import { sheetHtml } from '../../source/sheet/page/sheet-html.ts';
import { sheetMarkdown } from '../../source/sheet/page/sheet-markdown.ts';
import { sheetSvg } from '../../source/sheet/page/sheet-svg.ts';
import { allSteps, type Job, layOutJob, rowAt, stepAt } from '../../source/steps/job.ts';
import type { Step } from '../../source/steps/step.ts';
import { sayNow } from '../../source/wording/place.ts';
import { formatPlanPage } from '../../source/wording/plan-page.ts';
import { sayStep, speakStep } from '../../source/wording/steps.ts';
import { englishWords, inEnglish, type Language, type Words, wordsIn } from '../../source/wording/words.ts';
import { openMemoryBench } from '../fixtures/bench-in-memory.ts';
import { planOf } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import { optionsFor } from '../fixtures/sheets.ts';
import { german, speak } from '../fixtures/spoken.ts';
import { demoBags, demoJob, demoViews } from '../fixtures/steps-of-all-kinds.ts';
import { tries } from '../tools/tries.ts';

type Told = Readonly<Record<'bench' | 'page' | 'sheet' | 'html' | 'svg', string>>;

/** Where the lists of yarns, eyelets and bars stand in figures. */
const papers = ['page', 'sheet', 'html', 'svg'] as const;
const everywhere = ['bench', ...papers] as const;

/** All that is told of a bag, with lines run together. */
function tell(plan: Plan, language: Language, units: Units): Told {
  const words: Words = wordsIn(language, units);
  const flow = (text: string): string => text.replaceAll(/\s+/g, ' ');
  /** Without its marks; each ends a word. */
  const textOf = (markup: string): string =>
    flow(markup.replaceAll(/<style>[\s\S]*?<\/style>|<script>[\s\S]*?<\/script>|<[^>]*>/g, ' '));
  const options = optionsFor(plan, {}, language, units);
  return {
    bench: [...allSteps(layOutJob(plan))].map((step) => sayStep(step, words)).join(' '),
    page: flow(formatPlanPage(plan, words)),
    sheet: flow(sheetMarkdown(plan, options)),
    html: textOf(sheetHtml(plan, options)),
    svg: textOf(sheetSvg(plan, options)),
  };
}

/** Not as the end of a longer number. */
const alone = (amount: string): RegExp => new RegExp(`(?<![\\d.,])${amount.replaceAll('.', '\\.')}`);

const spoken: readonly (readonly [string, Language, Units])[] = [
  ['English, in centimetres', inEnglish, metric],
  ['English, in inches', inEnglish, imperial],
  ['German, in centimetres', german, metric],
  ['German, in inches', german, imperial],
];

describe.each(spoken)('in %s', (_, language, units) => {
  const { amounts } = wordsIn(language, units);
  const facts: readonly (readonly [
    string,
    (plan: Plan) => string | readonly string[],
    readonly (keyof Told)[],
  ])[] = [
    ['the tail that closes', (plan) => amounts.tail(closingTailCm(plan)), everywhere],
    ['the width', ({ size }) => amounts.length(size.widthCm), everywhere],
    ['the depth', ({ size }) => amounts.length(size.depthCm), everywhere],
    ['the cord', ({ cord }) => amounts.lengthNeeded(cord.lengthCm), everywhere],
    ['the rounds of the cord', ({ cord }) => String(cord.rounds), everywhere],
    ['the bars of a side', ({ seam }) => String(seam.barsPerSide), everywhere],
    ['the yarn', ({ yarn }) => yarn.map(({ metres }) => amounts.yarnNeeded(metres)), papers],
    [
      'its weight with the reserve',
      ({ yarn }) =>
        yarn.flatMap(({ withReserveGrams: grams }) => (grams === null ? [] : [amounts.massNeeded(grams)])),
      papers,
    ],
  ];

  it('tells tail, size, cord, seam and yarn alike at the bench, on the page and on each kind of sheet', () => {
    fc.assert(
      fc.property(briefFile(), (file) => {
        const plan = planOf(file);
        const told = tell(plan, language, units);
        for (const [fact, shown, places] of facts) {
          for (const place of places)
            for (const amount of [shown(plan)].flat())
              expect(told[place], `${fact}, ${place}`).toMatch(alone(amount));
        }
      }),
      { numRuns: tries(8, 4), endOnFailure: true },
    );
  });
});

it('has every warning of the page in the JSON of the plan', () => {
  fc.assert(
    fc.property(briefFile(), (file) => {
      const plan = planOf(file);
      const { warnings } = planJson(plan, englishWords) as {
        readonly warnings: readonly { readonly text: string }[];
      };
      const page = formatPlanPage(plan, englishWords).replaceAll(/\s+/g, ' ');
      expect(warnings).toHaveLength(planWarnings(plan).length);
      for (const { text } of warnings) expect(page).toContain(text);
    }),
    { numRuns: tries(100) },
  );
});

const needlesIn = (text: string): ReadonlySet<string> => new Set(text.match(/\b[LR][1-9]\d*\b/g) ?? []);

/** Steps of a bag, spread over all of it, its shaping moves among them. */
function someSteps(job: Job): readonly Step[] {
  const every = Math.max(1, Math.floor(job.stepCount / 40));
  return [...allSteps(job)].filter(({ step, act }) => step % every === 0 || act.kind === 'increase');
}

it('shows the same bed to the eye, to find, to other programs and in the table of the sheet', () => {
  fc.assert(
    fc.property(briefFile(), (file) => {
      const plan = planOf(file);
      const job = layOutJob(plan);
      const { needles } = plan.brief.bed;
      const named = (place: number | null) => (place === null ? null : formatNeedle(needles, place));
      const bands = colourBands(job);
      for (const step of someSteps(job)) {
        const { bed, carriage } = benchView({ ...startSession(job), done: step.step });
        const seen = { left: named(bed.left), right: named(bed.right), carriage };
        const looks = looksAfter(job, step, bands);
        const { after } = JSON.parse(stepJson(job, step.step, englishWords));
        expect({ left: looks.left, right: looks.right, carriage: looks.carriage }).toEqual(seen);
        expect({ left: after.left, right: after.right, carriage: after.carriage }).toEqual(seen);
        expect(after.feeder).toBe(looks.feeder);
      }
      for (const { act, row, after } of allSteps(job)) {
        if (act.kind !== 'pass' || row >= plan.knittedRows) continue;
        const edges = edgesOfRow(plan, row);
        expect([after.left, after.right]).toEqual([named(edges.left), named(edges.right)]);
      }
    }),
    { numRuns: tries(60) },
  );
});

describe.each(spoken)('aloud, in %s', (_, language, units) => {
  const words = wordsIn(language, units);

  it('names no needle that the instruction does not name', () => {
    fc.assert(
      fc.property(briefFile(), (file) => {
        for (const step of someSteps(layOutJob(planOf(file)))) {
          const written = needlesIn(sayStep(step, words));
          for (const needle of needlesIn(speakStep(step, words))) expect(written).toContain(needle);
        }
      }),
      { numRuns: tries(30) },
    );
  });
});

describe.each(spoken)('at every step of the demo bags, in %s', (_, language, units) => {
  const words = wordsIn(language, units);
  const factsIn = (text: string): readonly string[] =>
    text.toLowerCase().match(/\b[lr]\d+|\d+|\b(?:left|right|links|rechts)\b/g) ?? [];

  it.each(demoBags)('the %s is told in lines and aloud as the band shows it', (bag) => {
    const job = demoJob(bag);
    for (const [done, view] of demoViews(bag).entries()) {
      const { act, name } = bandText(view, words);
      const inLines = sayNow({ ...startSession(job), done }, words);
      const aloud = speakStep(view.step, words);
      for (const told of [inLines, aloud]) {
        expect(factsIn(told), `${act}: ${told}`).toEqual(expect.arrayContaining([...factsIn(act)]));
        if (view.glance.kind === 'yarn') expect(told).toContain(words.prompt.yarn(view.glance.comes));
      }
      if (view.glance.kind === 'pass' && view.phase === 'stripes') expect(inLines).toContain(name);
    }
  });
});

it('tells other programs the place that the bench shows, on a way back too', () => {
  let onWays = 0;
  fc.assert(
    fc.property(briefFile(), fc.integer({ min: 2, max: 98 }), fc.nat(20), (file, percent, further) => {
      const job = layOutJob(planOf(file));
      const [from, to] = [job.phaseStarts[1] ?? 0, job.phaseStarts[2] ?? 0];
      const done = from + Math.max(2, Math.floor(((to - from) * percent) / 100));
      const bench = openMemoryBench({ brief: file });
      const back = `rip step ${Math.max(from + 1, done - 25)}`;
      for (const line of [`go step ${done + 1}`, back, 'choose 1', ...Array(further).fill('next')]) {
        bench.submit(line);
        const { session } = bench.store.get();
        const { bed, rows, stripe, carriage } = benchView(session);
        const named = (at: number | null) => (at === null ? null : formatNeedle(bed.needleCount, at));
        const { place } = workJson(null, bench.store.get(), []);
        expect(place, line).toMatchObject({
          row: rows.at,
          stripe: stripe.at,
          left: named(bed.left),
          right: named(bed.right),
          carriage,
        });
        if (session.way) onWays++;
      }
    }),
    { numRuns: tries(30) },
  );
  expect(onWays).toBeGreaterThan(tries(30));
});

describe('what stands on the screen', () => {
  /** A bench after these lines, begun in a language and units. */
  async function benchAfter(lines: readonly string[], language: Language, unit: 'cm' | 'in', file: unknown) {
    speak(language);
    const bench = openMemoryBench({ brief: file, settings: { language: language.code, units: unit } });
    for (const line of lines) bench.submit(line);
    await bench.store.settled();
    return workJson(null, bench.store.get(), []);
  }

  it('follows language and units at once, in the middle of a way back, a mend, offers and questions', async () => {
    await fc.assert(
      fc.asyncProperty(briefFile(), fc.integer({ min: 2, max: 98 }), async (file, percent) => {
        const job = layOutJob(planOf(file));
        const done = Math.floor((job.stepCount * percent) / 100);
        const row = Math.max(1, rowAt(job, done) - 1);
        const { left, right } = stepAt(job, done).after;
        const seen = left ? `find ${left} ${right} firm` : 'find carriage left';
        for (const asked of [
          [`rip row ${row}`],
          [`rip row ${row}`, 'choose 1', 'next'],
          [seen, 'find and unsure'],
          [seen, 'choose 1'],
          ['replan longer'],
        ]) {
          const lines = [`go step ${done + 1}`, ...asked];
          const changed = await benchAfter([...lines, 'language de', 'units in'], inEnglish, 'cm', file);
          const begun = await benchAfter(lines, german, 'in', file);
          expect({ ...changed, ok: true, code: null }).toEqual({ ...begun, ok: true, code: null });
        }
      }),
      { numRuns: tries(12) },
    );
    speak(null);
  });
});
