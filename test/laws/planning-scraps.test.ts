/** Sequences of scraps against brute force: every order of up to six yarns in small bags, amounts summed again. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readBrief } from '../../source/planning/parse-brief.ts';
import { planBag } from '../../source/planning/plan-bag.ts';
import { arrangeStripes } from '../../source/planning/scraps.ts';
import { layOutJob } from '../../source/steps/job.ts';
import { jobOf, planOf } from '../fixtures/plan-of.ts';
import { valueIn } from '../tools/result.ts';
import { tries } from '../tools/tries.ts';
import { scrapsBrief } from './planning-briefs.ts';
import { seenOn, simulate } from './simulate.ts';

type ScrapsFile = Parameters<Parameters<ReturnType<typeof scrapsBrief>['map']>[0]>[0];

const planFile = (file: unknown) => {
  const brief = valueIn(readBrief(file));
  return planBag(brief);
};

/** Grams that a yarn must weigh, with 15 % in reserve for a loop by the model, its strand climbing the whole bag: 4.8 by 3.6 mm, tex 666.7. */
function gramsFor(file: ScrapsFile, yarn: string, stripes: number, closes: boolean): number {
  const { stitches, rows } = file.bag;
  const [stitchMm, rowMm] = [4.8, 3.6];
  const loopMm = Math.sqrt(21.6 * stitchMm * rowMm);
  const mouthMm = Math.hypot((rows / 2 - 1) * stitchMm, rows * rowMm);
  const ownRows = stripes * file.scraps.rows;
  const graftMm = Math.max(3 * stitches * 6.5, 1.1 * stitches * loopMm) + 150;
  const seamMm = mouthMm + 150;
  const parts = [
    (ownRows - (closes ? 1 : 0)) * stitches * loopMm,
    stripes > 0 ? (rows - ownRows) * rowMm + 150 : 0,
    closes ? graftMm + seamMm : stripes > 0 ? 150 : 0,
    yarn === 'plum' ? cordRounds(rows, mouthMm) * (3 * loopMm + 2 * stitchMm) + 300 : 0,
  ];
  return ((parts.reduce((sum, mm) => sum + mm, 0) / 1000) * 100 * 1.15) / 150;
}

const cordRounds = (rows: number, mouthMm: number): number =>
  Math.ceil((mouthMm + windingMm(rows / 2 - 1) + 60) / 3.6);

/**
 * What the cord's way in and out adds. It is thick for holes so near, so it passes by every other one where that leaves 8 at
 * least; else it passes by the middle one of an odd count.
 */
function windingMm(holes: number): number {
  const half = 2 * Math.floor((holes + 1) / 4);
  const used =
    half >= 8
      ? Array.from({ length: half }, (_, i) => Math.floor(((i + 0.5) * (holes + 1)) / half))
      : Array.from({ length: holes }, (_, i) => i + 1).filter(
          (hole) => holes % 2 === 0 || hole !== (holes + 1) / 2,
        );
  const oneMm = Math.hypot(4.8, 2 * 3.6);
  const gaps = used.slice(1).map((hole, i) => (hole - (used[i] ?? 0)) * oneMm);
  return gaps.reduce((sum, gapMm) => sum + Math.hypot(gapMm, 1.2 * 4.8) - gapMm, 0);
}

/** Whether any order of stripes works, all of them tried. */
function anyOrderWorks(file: ScrapsFile): boolean {
  const names = Object.keys(file.yarns);
  const total = file.bag.rows / file.scraps.rows;
  // By yarn and number of stripes: whether what there is lasts, where it closes the bag and where it does not.
  const lastsFor = new Map(
    names.map((name) => [
      name,
      Array.from({ length: total + 1 }, (_, stripes) =>
        [false, true].map(
          (closes) => gramsFor(file, name, stripes, closes) <= (file.yarns[name]?.grams ?? 0),
        ),
      ),
    ]),
  );
  const lasts = (order: readonly string[]): boolean =>
    names.every((name) => {
      const stripes = order.filter((yarn) => yarn === name).length;
      return lastsFor.get(name)?.[stripes]?.[order.at(-1) === name ? 1 : 0] ?? false;
    });
  const tryFrom = (order: readonly string[]): boolean =>
    order.length === total
      ? order[0] !== order.at(-1) && lasts(order)
      : names.some((yarn) => yarn !== order.at(-1) && tryFrom([...order, yarn]));
  return tryFrom([]);
}

const isOdd = (yarns: Readonly<Record<string, unknown>>, stripes: number): boolean =>
  Object.keys(yarns).length === 2 && stripes % 2 === 1;

describe('a sequence of scraps', () => {
  it('is found exactly where trying every order finds one', () => {
    let [found, refused] = [0, 0];
    fc.assert(
      fc.property(scrapsBrief(), (file) => {
        if (isOdd(file.yarns, file.bag.rows / file.scraps.rows)) return;
        const plan = planFile(file);
        expect(plan.ok).toBe(anyOrderWorks(file));
        if (plan.ok) found++;
        else refused++;
      }),
      { numRuns: tries(1000) },
    );
    expect(found).toBeGreaterThan(tries(1000) / 12);
    expect(refused).toBeGreaterThan(tries(1000) / 10);
  });

  it('fills the bag with whole stripes whose neighbours differ, the last and the first too', () => {
    fc.assert(
      fc.property(scrapsBrief(), (file) => {
        const plan = planFile(file);
        fc.pre(plan.ok);
        const { stripes, rows } = plan.value;
        expect(stripes.map((stripe) => stripe.rows)).toEqual(stripes.map(() => file.scraps.rows));
        expect(stripes.at(-1)?.lastRow).toBe(rows);
        for (const [i, stripe] of stripes.entries()) expect(stripe.yarn).not.toBe(stripes.at(i - 1)?.yarn);
      }),
      { numRuns: tries(200) },
    );
  });

  it('leaves no scrap out that has a stripe to give, while there are stripes for all', () => {
    fc.assert(
      fc.property(scrapsBrief(), (file) => {
        const plan = planFile(file);
        fc.pre(plan.ok);
        const names = Object.keys(file.yarns);
        const able = names.filter((name) => gramsFor(file, name, 1, false) <= (file.yarns[name]?.grams ?? 0));
        const used = new Set(plan.value.stripes.map(({ yarn }) => yarn));
        expect(used.size).toBeGreaterThanOrEqual(Math.min(able.length, plan.value.stripes.length));
      }),
      { numRuns: tries(200) },
    );
  });

  it('says why there is none, and the largest smaller bag for which there is one', () => {
    let named = 0;
    fc.assert(
      fc.property(scrapsBrief(), (file) => {
        const plan = planFile(file);
        if (plan.ok) return;
        const { fault } = plan;
        expect(fault.code).toMatch(
          /^plan\/(scraps-(too-little|no-closer|cord-short)|rows-not-whole-repeats)$/,
        );
        if (fault.code !== 'plan/scraps-too-little') return;
        expect(fault.possible).toBe(fault.scraps.reduce((sum, { stripes }) => sum + stripes, 0));
        expect(fault.possible).toBeLessThan(fault.stripes);
        for (const { stripes } of fault.scraps) expect(stripes).toBeLessThanOrEqual(fault.everyOther);
        if (!fault.largest) return;
        named++;
        const { rows, stitches } = fault.largest;
        expect(planFile({ ...file, bag: { rows, stitches } }).ok).toBe(true);
        const next = planFile({
          ...file,
          bag: { rows: rows + (fault.stripeRows % 4 === 0 ? 4 : 2), stitches },
        });
        expect(next.ok).toBe(false);
      }),
      { numRuns: tries(1000) },
    );
    expect(named).toBeGreaterThan(tries(1000) / 40);
  });

  it('can be knitted: every move made on a bed leaves what the steps foretell', () => {
    let made = 0;
    fc.assert(
      fc.property(scrapsBrief(), (file) => {
        const plan = planFile(file);
        if (!plan.ok) return;
        made++;
        const colours: (string | null)[] = [];
        for (const { step, bed } of simulate(layOutJob(plan.value))) {
          const { shapings: _, ...foretold } = step.after;
          expect({ step: step.step, ...seenOn(bed) }).toEqual({ step: step.step, ...foretold });
          if (step.act.kind === 'pass' || step.act.kind === 'closing-pass') colours.push(step.after.feeder);
        }
        const asked = plan.value.stripes.flatMap(({ yarn, rows }) => Array<string>(rows).fill(yarn));
        expect(colours).toEqual(asked.slice(0, -1));
      }),
      { numRuns: tries(300) },
    );
    expect(made).toBeGreaterThan(tries(300) / 10);
  });
});

describe('stripes in a ring', () => {
  /** Every way to give up to `most` stripes to each of `yarns` yarns. */
  const allCounts = (yarns: number, most: number): readonly (readonly number[])[] =>
    yarns === 0
      ? [[]]
      : allCounts(yarns - 1, most).flatMap((counts) =>
          Array.from({ length: most }, (_, i) => [...counts, i + 1]),
        );

  it.each([2, 3, 4])('are arranged for every count of %i yarns of which none exceeds half', (yarns) => {
    let arranged = 0;
    const wrong: unknown[] = [];
    for (const counts of allCounts(yarns, yarns === 4 ? 6 : 8)) {
      const total = counts.reduce((sum, one) => sum + one, 0);
      if (counts.some((one) => one > total / 2)) continue;
      const named = new Map(counts.map((one, i) => [`yarn ${i}`, one]));
      for (const closing of named.keys()) {
        const order = arrangeStripes(named, closing);
        arranged++;
        const isArranged =
          order.length === total &&
          order.at(-1) === closing &&
          order.every((yarn, i) => yarn !== order.at(i - 1)) &&
          [...named].every(([yarn, count]) => order.filter((one) => one === yarn).length === count);
        if (!isArranged) wrong.push({ counts, closing, order });
      }
    }
    expect(wrong).toEqual([]);
    expect(arranged).toBeGreaterThan(10);
  });
});

describe('scraps by hand', () => {
  const scraps = (grams: Readonly<Record<string, number>>, more: object = {}) => ({
    name: 'Scraps',
    bed: { needles: 150, pitchMm: 6.5 },
    swatch: { stitches: 40, rows: 60, widthCm: 19.2, heightCm: 21.6 },
    bag: { stitches: 10, rows: 24 },
    yarns: Object.fromEntries(
      Object.entries(grams).map(([name, own]) => [
        name,
        { colour: '#6b2d5c', metresPer100g: 150, grams: own },
      ]),
    ),
    scraps: { rows: 4 },
    cord: { tieCm: 3 },
    ...more,
  });

  it('two yarns take turns', () => {
    const { stripes } = planOf(scraps({ plum: 50, mint: 50 }));
    expect(stripes.map(({ yarn }) => yarn)).toEqual(['mint', 'plum', 'mint', 'plum', 'mint', 'plum']);
  });

  it('the longest one makes the cord, and more stripes than a shorter one', () => {
    const { stripes, cord } = planOf(scraps({ plum: 9, mint: 40, sand: 12 }));
    expect(cord.yarn).toBe('mint');
    const count = (name: string): number => stripes.filter(({ yarn }) => yarn === name).length;
    expect(count('mint')).toBe(3);
    expect(count('sand') + count('plum')).toBe(3);
  });

  it('one yarn cannot be striped', () => {
    expect(planFile(scraps({ plum: 500 }))).toMatchObject({
      fault: { code: 'plan/scraps-too-little', stripes: 6, possible: 3, everyOther: 3, largest: null },
    });
  });

  it('an unweighed one is asked for', () => {
    const file = scraps({ plum: 50, mint: 50 });
    const yarns = { ...file.yarns, mint: { colour: '#6b2d5c', metresPer100g: 150 } };
    expect(readBrief({ ...file, yarns })).toMatchObject({
      fault: { code: 'brief/scrap-not-weighed', yarn: 'mint' },
    });
  });

  it('stripes and scraps are one or the other', () => {
    const stripes = [{ yarn: 'plum', rows: 2 }];
    expect(readBrief(scraps({ plum: 50, mint: 50 }, { stripes }))).toMatchObject({
      fault: { code: 'brief/stripes-and-scraps' },
    });
  });

  it('a cord that takes more than its yarn is told apart from stripes that do', () => {
    expect(planFile(scraps({ plum: 1, mint: 50, sand: 50 }, { cord: { yarn: 'plum' } }))).toMatchObject({
      fault: { code: 'plan/scraps-cord-short', yarn: 'plum' },
    });
  });

  it('none is left to close when the cord has taken the only long one', () => {
    expect(planFile(scraps({ plum: 2.8, mint: 0.8, sand: 0.7 }))).toMatchObject({
      fault: { code: 'plan/scraps-no-closer', scraps: ['plum', 'mint', 'sand'] },
    });
  });

  it('a bag of them is a job like any other', () => {
    expect(jobOf(scraps({ plum: 20, mint: 9, sand: 9 })).stepCount).toBeGreaterThan(100);
  });
});
