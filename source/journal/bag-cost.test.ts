/** What a bag costs. Prices are invented, sums done by hand from the plan's grams. */
import { describe, expect, it } from 'vitest';
import { planOf } from '../../test/fixtures/plan-of.ts';
import { confirm, type SampleLine, smallBrief, writeLog } from '../../test/fixtures/sample-log.ts';
import { valueIn } from '../../test/tools/result.ts';
import { recordJson } from '../cli/record.ts';
import { layOutJob } from '../steps/job.ts';
import { formatPlanPage } from '../wording/plan-page.ts';
import { formatRecord } from '../wording/record.ts';
import { englishWords } from '../wording/words.ts';
import { plannedCost, workedCost } from './bag-cost.ts';
import { timeByPhase, usualPace } from './pace.ts';
import { readRecording } from './read-log.ts';
import { recordOf } from './record.ts';

const { plum, mint } = smallBrief.yarns;
const priced = {
  ...smallBrief,
  yarns: { plum: { ...plum, pricePer100g: 8, grams: 60 }, mint: { ...mint, pricePer100g: 5 } },
  cost: { perHour: 12, currency: 'EUR' },
};
const gramsOf = (plan: ReturnType<typeof planOf>, name: string): number =>
  plan.yarn.find(({ yarn }) => yarn === name)?.grams ?? 0;

describe('the cost of a bag', () => {
  it('is neither asked for nor shown', () => {
    const plan = planOf(smallBrief);
    expect(plannedCost(plan, usualPace)).toBeNull();
    expect(formatPlanPage(plan, englishWords)).not.toMatch(/^ {2}cost/m);
  });

  it('is that of the yarn and of the hours that are foretold', () => {
    const plan = planOf(priced);
    const hours = [...timeByPhase(layOutJob(plan), usualPace).values()].reduce((a, b) => a + b, 0) / 3600;
    const cost = plannedCost(plan, usualPace);
    const yarn = [0.08 * gramsOf(plan, 'plum'), 0.05 * gramsOf(plan, 'mint')];
    expect(cost?.yarn.map((one) => one.cost)).toEqual(yarn.map((own) => expect.closeTo(own, 9)));
    expect(cost?.work).toBeCloseTo(12 * hours, 9);
    expect(cost?.total).toBeCloseTo(12 * hours + (yarn[0] ?? 0) + (yarn[1] ?? 0), 9);
    expect(formatPlanPage(plan, englishWords)).toContain(`cost      ${cost?.total.toFixed(2)} EUR: plum `);
  });

  it('names the yarns that have no price, and may leave out the hours', () => {
    const plan = planOf({ ...priced, yarns: { ...priced.yarns, mint }, cost: {} });
    expect(plannedCost(plan, usualPace)).toMatchObject({ unpriced: ['mint'], work: null, currency: null });
    expect(formatPlanPage(plan, englishWords)).toMatch(/; no price for mint$/m);
  });

  it('is in the end that of what was taken and of the time that was spent', () => {
    const plan = planOf(priced);
    const { stepCount } = layOutJob(plan);
    const lines: readonly SampleLine[] = [
      confirm(stepCount, stepCount * 36_000),
      { event: { do: 'weigh', yarn: 'plum', grams: 47.5 } },
    ];
    const recording = valueIn(readRecording(writeLog(lines, priced).bytes));
    const session = recording.frames.at(-1)?.session;
    const { benchMs } = recordOf(recording);
    const cost = session && workedCost(session, benchMs);
    // 12.5 g of plum at 8 for 100 g; mint was not weighed, so as planned.
    expect(cost?.yarn[0]).toEqual({ yarn: 'plum', cost: 1 });
    expect(cost?.yarn[1]?.cost).toBeCloseTo(0.05 * gramsOf(plan, 'mint'), 9);
    expect(cost?.work).toBeCloseTo((12 * benchMs) / 3_600_000, 9);
    expect(formatRecord(recording, recordOf(recording), englishWords)).toMatch(
      /^ {2}cost .* EUR: plum 1\.00 EUR, /m,
    );
    expect(recordJson(recording, recordOf(recording), englishWords).cost).toEqual(cost);
  });
});
