/** A fact that is told in several places is the same in all of them, in both languages and both systems of units. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planJson } from '../../source/cli/plan-json.ts';
import type { Plan } from '../../source/planning/plan.ts';
import { closingTailCm } from '../../source/planning/tails.ts';
import { imperial, metric, type Units } from '../../source/shared/units.ts';
import { sheetMarkdown } from '../../source/sheet/page/sheet-markdown.ts';
import { allSteps, layOutJob } from '../../source/steps/job.ts';
import { formatPlanPage } from '../../source/wording/plan-page.ts';
import { sayStep } from '../../source/wording/steps.ts';
import { englishWords, inEnglish, type Language, type Words, wordsIn } from '../../source/wording/words.ts';
import { planOf } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import { optionsFor } from '../fixtures/sheet-options.ts';
import { german } from '../fixtures/spoken.ts';
import { tries } from '../tools/tries.ts';

type Told = Readonly<Record<'bench' | 'page' | 'sheet', string>>;

/** All that is told of a bag, with lines run together. */
function tell(plan: Plan, language: Language, units: Units): Told {
  const words: Words = wordsIn(language, units);
  const flow = (text: string): string => text.replaceAll(/\s+/g, ' ');
  return {
    bench: [...allSteps(layOutJob(plan))].map((step) => sayStep(step, words)).join(' '),
    page: flow(formatPlanPage(plan, words)),
    sheet: flow(sheetMarkdown(plan, optionsFor(plan, {}, language, units))),
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
  const facts: readonly (readonly [string, (plan: Plan) => string, readonly (keyof Told)[]])[] = [
    ['the tail that closes', (plan) => amounts.tail(closingTailCm(plan)), ['bench', 'page', 'sheet']],
    ['the width', ({ size }) => amounts.length(size.widthCm), ['bench', 'page', 'sheet']],
    ['the depth', ({ size }) => amounts.length(size.depthCm), ['bench', 'page', 'sheet']],
    ['the cord', ({ cord }) => amounts.lengthNeeded(cord.lengthCm), ['bench', 'page', 'sheet']],
  ];

  it('tells tail, size and cord alike at the bench, on the page and on the sheet', () => {
    fc.assert(
      fc.property(briefFile(), (file) => {
        const plan = planOf(file);
        const told = tell(plan, language, units);
        for (const [fact, shown, places] of facts) {
          for (const place of places) expect(told[place], `${fact}, ${place}`).toMatch(alone(shown(plan)));
        }
      }),
      { numRuns: tries(60) },
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
      expect(warnings).toHaveLength(plan.warnings.length);
      for (const { text } of warnings) expect(page).toContain(text);
    }),
    { numRuns: tries(100) },
  );
});
