/** Self-striping yarn, laid loop by loop through random bags, against what the plan says of its colours and what is drawn. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { colourRuns } from '../../source/planning/colour-run.ts';
import type { Plan } from '../../source/planning/plan.ts';
import { asDyed } from '../../source/sheet/yarn-signs.ts';
import { planOf } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import { tries } from '../tools/tries.ts';

const colours = ['#b3262e', '#2f5fa8', '#e3c23b', '#3f8f4f'];
const run = fc
  .array(fc.double({ min: 0.2, max: 9, noNaN: true }), { minLength: 2, maxLength: 4 })
  .map((lengths) => lengths.map((metres, i) => ({ colour: colours[i] ?? '', metres })));

const overRuns = (
  check: (plan: Plan, stretches: readonly { colour: string; metres: number }[]) => void,
): void =>
  fc.assert(
    fc.property(briefFile(), run, (file, stretches) => {
      const yarns = file.yarns as Record<string, object>;
      const plan = planOf({ ...file, yarns: { ...yarns, plum: { ...yarns.plum, run: stretches } } });
      check(plan, stretches);
    }),
    { numRuns: tries(200) },
  );

/** By row of the bag: the colour in the middle of it, the yarn laid in mm from its 15 cm end on. */
function laidByRow(
  plan: Plan,
  stretches: readonly { colour: string; metres: number }[],
): ReadonlyMap<number, string> {
  const dye = stretches.flatMap(({ colour, metres }) => [{ colour, mm: metres * 1000 }]);
  let [which, left] = [0, dye[0]?.mm ?? 0];
  const lay = (mm: number): void => {
    let rest = mm;
    while (rest >= left) {
      rest -= left;
      which = (which + 1) % dye.length;
      left = dye[which]?.mm ?? 0;
    }
    left -= rest;
  };
  lay(150);
  const byRow = new Map<number, string>();
  let last = 0;
  for (let row = 1; row <= plan.rows; row++) {
    const stripe = plan.stripes.find(({ firstRow, lastRow }) => firstRow <= row && row <= lastRow);
    if (stripe?.yarn !== 'plum') continue;
    if (last > 0) lay((row - last - 1) * plan.gauge.rowMm);
    for (let half = 0; half < 2; half++) {
      lay((plan.stitches / 2) * plan.gauge.loopLengthMm);
      if (half === 0) byRow.set(row, dye[which]?.colour ?? '');
    }
    last = row;
  }
  return byRow;
}

describe('yarn that stripes by itself', () => {
  it('has in each row the colour that is there when it is laid loop by loop', () => {
    overRuns((plan, stretches) => {
      const [told] = colourRuns(plan);
      const laid = laidByRow(plan, stretches);
      const rows = new Map(
        told?.bands.flatMap(({ colour, fromRow, throughRow }) =>
          Array.from({ length: throughRow - fromRow + 1 }, (_, i) => [fromRow + i, colour] as const),
        ),
      );
      expect([...rows]).toEqual([...laid]);
    });
  });

  it('is drawn in those colours, and every other yarn as it was', () => {
    overRuns((plan, stretches) => {
      const laid = laidByRow(plan, stretches);
      const dyed = asDyed(plan);
      let row = 0;
      for (const stripe of dyed.stripes)
        for (let i = 0; i < stripe.rows; i++) {
          row++;
          expect(stripe.firstRow + i).toBe(row);
          const own =
            plan.stripes.find(({ firstRow, lastRow }) => firstRow <= row && row <= lastRow)?.yarn ?? '';
          const colour = laid.get(row) ?? plan.brief.yarns.get(own)?.colour;
          expect(dyed.brief.yarns.get(stripe.yarn)?.colour).toBe(colour);
        }
      expect(row).toBe(plan.rows);
    });
  });

  it('meets itself in the graft where all rows come to whole runs, and says with how many rows it would', () => {
    const bag = (rows: number, metres: number) =>
      planOf({
        name: 'Self-striping pouch',
        bed: { needles: 100, pitchMm: 6 },
        swatch: { stitches: 40, rows: 60, widthCm: 19.2, heightCm: 21.6, loopLengthMm: 20 },
        bag: { stitches: 20, rows },
        yarns: {
          fern: {
            colour: '#3f8f4f',
            metresPer100g: 200,
            run: [
              { colour: '#3f8f4f', metres },
              { colour: '#e3c23b', metres },
            ],
          },
        },
        stripes: [{ yarn: 'fern', rows: 2 }],
      });
    // A row takes 20 × 20 mm = 0.4 m, so 40 rows are 16 m: two runs of 8 m.
    const [whole] = colourRuns(bag(40, 4));
    expect(whole?.graft?.offMetres).toBeCloseTo(0, 9);
    expect(whole?.graft?.better).toBe(null);
    // 44 rows are 17.6 m: 1.6 m beyond, 4 rows.
    const [beyond] = colourRuns(bag(44, 4));
    expect(beyond?.graft?.offMetres).toBeCloseTo(1.6, 9);
    expect(beyond?.graft?.offRows).toBeCloseTo(4, 9);
    expect(beyond?.graft?.better?.rows).toBe(40);
    // 36 rows are 14.4 m: 1.6 m short of two runs.
    expect(colourRuns(bag(36, 4))[0]?.graft?.offMetres).toBeCloseTo(-1.6, 9);
  });

  it('has no graft of its own beside another yarn', () => {
    overRuns((plan) => {
      const alone = plan.stripes.every(({ yarn }) => yarn === 'plum');
      expect(colourRuns(plan)[0]?.graft === null).toBe(!alone);
    });
  });
});
