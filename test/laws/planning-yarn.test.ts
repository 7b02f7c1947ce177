/** Yarn and tails over random bags, against what the hands are told to do step by step. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readBrief } from '../../source/planning/parse-brief.ts';
import type { Plan } from '../../source/planning/plan.ts';
import { planBag } from '../../source/planning/plan-bag.ts';
import { allSteps, layOutJob } from '../../source/steps/job.ts';
import { planOf } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import { valueIn } from '../tools/result.ts';
import { tries } from '../tools/tries.ts';
import { scrapsBrief } from './planning-briefs.ts';

const needOf = (plan: Plan, yarn: string) => {
  const need = plan.yarn.find((one) => one.yarn === yarn);
  if (!need) throw new Error(`no need for ${yarn}`);
  return need;
};

/** Rows of every yarn in the order of its passes, as the steps tell them. */
function rowsKnitted(plan: Plan): ReadonlyMap<string, readonly number[]> {
  const rows = new Map<string, number[]>();
  for (const { act, row } of allSteps(layOutJob(plan))) {
    if (act.kind !== 'pass' && act.kind !== 'closing-pass') continue;
    rows.set(act.yarn, [...(rows.get(act.yarn) ?? []), row]);
  }
  return rows;
}

/** Metres counted along the steps: loops, strands up the edge, 15 cm at both ends, tails, cord. */
function metresAlongSteps(plan: Plan, yarn: string): number {
  const rows = rowsKnitted(plan).get(yarn) ?? [];
  const { stitches, gauge, graft, seam, cord } = plan;
  const closes = plan.stripes.at(-1)?.yarn === yarn;
  const loopsMm = rows.length * stitches * gauge.loopLengthMm;
  const strandMm =
    rows.reduce((sum, row, i) => sum + (i > 0 ? row - (rows[i - 1] ?? 0) - 1 : 0), 0) * gauge.rowMm;
  const startMm = rows.length > 0 ? 150 : 0;
  // Each corner of a boxed bottom has a thread of its own: twice its seam, and 15 cm to hold.
  const cornersCm = 2 * (plan.brief.boxedCm === 0 ? 0 : 2 * plan.brief.boxedCm + 15);
  const endMm = closes ? (graft.tailCm + seam.tailCm + cornersCm) * 10 : startMm;
  // A flat cord has no strand across its back, and is sewn together: twice its length, and 15 cm to hold.
  const isFlat = plan.brief.bed.without.includes('slip');
  const roundMm = cord.stitches * gauge.loopLengthMm + (isFlat ? 0 : (cord.stitches - 1) * gauge.stitchMm);
  const sewnMm = isFlat ? 20 * cord.lengthCm + 150 : 0;
  const oneCordMm = cord.rounds * roundMm + sewnMm + 300;
  const cordMm = cord.yarn === yarn ? plan.brief.cord.draws * oneCordMm : 0;
  return (loopsMm + strandMm + startMm + endMm + cordMm + hemMm(plan, yarn)) / 1000;
}

/** The hem's loops pass by pass, and 15 cm at both ends of every thread that goes into the feeder for it. */
function hemMm(plan: Plan, yarn: string): number {
  let mm = 0;
  for (const { phase, moves, after } of allSteps(layOutJob(plan))) {
    if (phase !== 'hem') continue;
    for (const move of moves) {
      if (move.move === 'knit' && after.feeder === yarn) mm += after.stitches * plan.gauge.loopLengthMm;
      if (move.move === 'feed' && move.yarn === yarn) mm += 300;
    }
  }
  return mm;
}

const overPlans = (check: (plan: Plan) => void, runs = 300): void =>
  fc.assert(
    fc.property(briefFile(), (file) => check(planOf(file))),
    { numRuns: tries(runs) },
  );

describe('the yarn of a plan', () => {
  it('is what the steps take of it, pass by pass', () => {
    overPlans((plan) => {
      for (const yarn of plan.brief.yarns.keys()) {
        expect(needOf(plan, yarn).metres).toBeCloseTo(metresAlongSteps(plan, yarn), 9);
      }
    });
  });

  it('is what the steps take of it in a bag of scraps too, and never more than was weighed', () => {
    let planned = 0;
    fc.assert(
      fc.property(scrapsBrief(), (file) => {
        const brief = readBrief(file);
        const plan = brief.ok ? planBag(brief.value) : brief;
        if (!plan.ok) return;
        planned++;
        for (const { yarn, metres, enough } of plan.value.yarn.slice(0, -1)) {
          expect(metres).toBeCloseTo(metresAlongSteps(plan.value, yarn), 9);
          expect(enough).toBe(true);
        }
      }),
      { numRuns: tries(1000) },
    );
    expect(planned).toBeGreaterThan(tries(1000) / 10);
  });

  it('weighs as its thickness: half the metres to 100 g, twice the grams', () => {
    overPlans(({ brief, yarn }) => {
      const yarns = new Map(
        [...brief.yarns].map(([name, one]) => [name, { ...one, metresPer100g: one.metresPer100g / 2 }]),
      );
      const thicker = valueIn(planBag({ ...brief, yarns }));
      for (const need of yarn.slice(0, -1)) {
        const thick = needOf(thicker, need.yarn);
        expect(thick.metres).toBeCloseTo(need.metres, 9);
        expect(thick.grams).toBeCloseTo(2 * (need.grams ?? 0), 9);
      }
    });
  });

  it('grows by the same length with every stitch, a loop at least for each row', () => {
    overPlans(({ brief, rows, stitches, gauge }) => {
      const wider = (extra: number): Plan | null => {
        const bag = { by: 'counts', rows, stitches: stitches + extra } as const;
        const plan = planBag({ ...brief, bed: { ...brief.bed, needles: 400 }, bag });
        return plan.ok ? plan.value : null;
      };
      const [none, one, two] = [wider(0), wider(1), wider(2)];
      if (!none || !one || !two) return;
      for (const need of none.yarn.slice(0, -1)) {
        const [once, twice] = [needOf(one, need.yarn).metres, needOf(two, need.yarn).metres];
        expect(twice - once).toBeCloseTo(once - need.metres, 9);
        const loopsMm = (rowsKnitted(one).get(need.yarn) ?? []).length * gauge.loopLengthMm;
        expect(once - need.metres).toBeGreaterThan(loopsMm / 1000 - 1e-9);
      }
    });
  });

  it('has 15 % in reserve where the loop was not measured, and says what is short of it', () => {
    overPlans(({ brief }) => {
      const [name = ''] = brief.yarns.keys();
      const weighed = (grams: number) => {
        const plan = valueIn(
          planBag({
            ...brief,
            yarns: new Map(
              [...brief.yarns].map(([one, yarn]) => [one, { ...yarn, grams: one === name ? grams : null }]),
            ),
          }),
        );
        return needOf(plan, name);
      };
      const need = weighed(0).grams ?? 0;
      expect(weighed(need * 1.15 + 0.001)).toMatchObject({ enough: true, shortGrams: 0 });
      const short = weighed(need * 1.15 - 0.5);
      expect(short.enough).toBe(false);
      expect(short.shortGrams).toBeCloseTo(0.5, 9);
    });
  });
});

describe('the tails of a plan', () => {
  it('are what the steps measure off, added up where one thread sews on', () => {
    overPlans((plan) => {
      const { graft, seam } = plan;
      const measured = [...allSteps(layOutJob(plan))]
        .flatMap(({ moves }) => moves)
        .flatMap((move) => (move.move === 'measure' ? [move.lengthCm] : []));
      const threads = graft.goesOnToSeam ? [graft.tailCm + seam.tailCm] : [graft.tailCm, seam.tailCm];
      for (const [i, cm] of threads.entries()) {
        expect(measured[i]).toBeCloseTo(cm, 9);
      }
    }, 200);
  });
});
