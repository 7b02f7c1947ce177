/** The doubt of a size: GUM (JCGM 100:2008) in closed form against published figures and against drawing lots. */
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../source/planning/plan.ts';
import { coverage, doubtsOf, rectangular } from '../../source/planning/uncertainty.ts';
import { planOf } from '../fixtures/plan-of.ts';

// JCGM 100:2008, 4.3.7, example 2: a coefficient of thermal expansion of copper known to ± 0.40e-6 has the standard
// uncertainty 0.23e-6.
it('takes the standard uncertainty of a rectangular distribution as published', () => {
  expect(rectangular(0.4)).toBeCloseTo(0.23, 2);
});

/** Invented; the swatch of the dice bag. */
const briefWith = (swatch: object, crawl: 'left' | 'right' = 'left') => ({
  name: 'Dice bag',
  bed: { needles: 150, pitchMm: 6.5 },
  swatch: { stitches: 40, rows: 60, widthCm: 19.2, heightCm: 21.6, ...swatch },
  bag: { widthCm: 14, depthCm: 18 },
  crawl,
  yarns: {
    plum: { colour: '#6b2d5c', metresPer100g: 190 },
    mint: { colour: '#9fd8c2', metresPer100g: 190 },
  },
  stripes: [
    { yarn: 'plum', rows: 2 },
    { yarn: 'mint', rows: 2 },
  ],
});

/** Standard normal deviates from uniform ones by Box and Muller (1958); the numbers are the same in every run. */
function lots(seed: number): { uniform: () => number; normal: () => number } {
  let state = seed;
  // Park and Miller 1988, the minimal standard generator.
  const uniform = (): number => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
  return { uniform, normal: () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform()) };
}

const deviation = (values: readonly number[]): number => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
};

/** Bags of the plan's counts from swatches measured and pieces knitted with all that may go wrong, written out anew. */
function drawnSizes({ brief, stitches, rows, shapings, gauge }: Plan, count: number) {
  const { uniform, normal } = lots(20_261_126);
  const within = (half: number): number => (2 * uniform() - 1) * half;
  const { swatch } = brief;
  const skewHalf = swatch.asideMm === 0 ? 2 : 0.5;
  return Array.from({ length: count }, () => {
    const common = 1 + 0.01 * normal();
    const stitch =
      ((swatch.widthMm + within(1) + within(1)) / (swatch.stitches + within(0.5))) *
      (1 + 0.02 * normal()) *
      common;
    const row =
      ((swatch.heightMm + within(1) + within(1)) / (swatch.rows + within(0.5))) *
      (1 + 0.02 * normal()) *
      common;
    const lean = gauge.skewRad + (within(skewHalf) * Math.PI) / 180;
    const [along, up] = [shapings * stitch, rows * row];
    // The way round the tube as a vector, and the strip's area as the cross product of its sides.
    const round = [along + up * Math.sin(lean), up * Math.cos(lean)] as const;
    const mouth = Math.hypot(...round);
    const area = (stitches - 1) * stitch * round[1];
    return { widthCm: mouth / 20, depthCm: area / mouth / 10 };
  });
}

describe('the size of a bag', () => {
  it.each([
    ['as measured', {}, 'left'],
    ['from a small swatch', { stitches: 10, rows: 12, widthCm: 4.8, heightCm: 4.32 }, 'left'],
    ['of twisty yarn', { asideCm: 2 }, 'left'],
    ['of twisty yarn the other way', { asideCm: 2 }, 'right'],
  ] as const)('%s: is as uncertain as 40,000 bags drawn by lot', (_, swatch, crawl) => {
    const plan = planOf(briefWith(swatch, crawl));
    const drawn = drawnSizes(plan, 40_000);
    const { widthUncertaintyCm, depthUncertaintyCm } = plan.size;
    expect((2 * deviation(drawn.map(({ widthCm }) => widthCm))) / widthUncertaintyCm).toBeCloseTo(1, 1);
    expect((2 * deviation(drawn.map(({ depthCm }) => depthCm))) / depthUncertaintyCm).toBeCloseTo(1, 1);
    const inside = drawn.filter(({ widthCm }) => Math.abs(widthCm - plan.size.widthCm) <= widthUncertaintyCm);
    expect(inside.length / drawn.length).toBeGreaterThan(0.94);
    expect(inside.length / drawn.length).toBeLessThan(0.97);
  });

  // The dice bag, worked by hand and with a program of another make: 13.7 ± 0.6 by 18.1 ± 0.8 cm.
  it('is 13.7 ± 0.6 by 18.1 ± 0.8 cm for the dice bag', () => {
    const { size } = planOf(briefWith({}));
    expect([size.widthCm, size.widthUncertaintyCm].map((cm) => cm.toFixed(1))).toEqual(['13.7', '0.6']);
    expect([size.depthCm, size.depthUncertaintyCm].map((cm) => cm.toFixed(1))).toEqual(['18.1', '0.8']);
    expect(size.widthUncertaintyCm).toBeCloseTo(0.58, 2);
    expect(size.depthUncertaintyCm).toBeCloseTo(0.78, 2);
    expect(coverage).toBe(2);
  });

  it('grows surer by what the plan advises', () => {
    const small = planOf(briefWith({ stitches: 10, rows: 12, widthCm: 4.8, heightCm: 4.32 }));
    const advice = small.size.smallerDoubt;
    expect(advice).toMatchObject({ by: 'larger-swatch', stitches: 20, rows: 24 });
    const larger = planOf(briefWith({ stitches: 20, rows: 24, widthCm: 9.6, heightCm: 8.64 }));
    expect(larger.size.widthUncertaintyCm).toBeCloseTo(advice?.widthCm ?? 0, 9);
    expect(larger.size.depthUncertaintyCm).toBeCloseTo(advice?.depthCm ?? 0, 9);
  });

  it('has a hundredth of relative doubt for 1 mm at each end of 81.6 mm', () => {
    // √2 · (1/√3) mm / 81.65 mm = 0.01, by calculator; the count and the 2 % of the piece added in squares.
    const { stitch } = doubtsOf({
      stitches: 1e9,
      rows: 1e9,
      widthMm: 81.65,
      heightMm: 81.65,
      state: 'wet-relaxed',
      loopLengthMm: null,
      asideMm: 0,
      stitchSize: null,
    });
    expect(stitch).toBeCloseTo(Math.hypot(0.01, 0.02), 5);
  });
});
