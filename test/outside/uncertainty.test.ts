/** The doubt of a size: GUM (JCGM 100:2008) in closed form against published figures and against drawing lots. */
import { describe, expect, it } from 'vitest';
import { learn, nextBagDoubt } from '../../source/planning/learned.ts';
import type { Plan } from '../../source/planning/plan.ts';
import {
  coverage,
  doubtsOf,
  propagate,
  rectangular,
  smallerDoubt,
} from '../../source/planning/uncertainty.ts';
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

/** Bags of the plan's counts from swatches measured and pieces knitted with all that may go wrong, written out again. */
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

describe('bags that have been measured', () => {
  // JCGM 100:2008, table G.2: Student's factors for 95.45 %; 4 degrees of freedom 2.87, 8 degrees 2.37, 18 degrees 2.15.
  it.each([
    [3, 2.87],
    [5, 2.37],
  ])('%d of them widen the doubt by the published factor for so few', (bags, student) => {
    expect(2 * nextBagDoubt({ bags, spread: 0.01 })).toBeCloseTo(student * 0.01 * Math.sqrt(1 + 1 / bags), 9);
  });

  it.each([3, 4, 6, 10])('%d of them foretell the next as surely as the plan says', (count) => {
    const { normal } = lots(20_261_126 + count);
    const spread = 0.012;
    const drawn = () => ({ width: 0.97 * (1 + spread * normal()), depth: 1.03 * (1 + spread * normal()) });
    let inside = 0;
    let told = 0;
    for (let trial = 0; trial < 8000; trial++) {
      const learned = learn(Array.from({ length: count }, drawn));
      if (!learned || learned.setAside > 0) continue;
      told++;
      const next = drawn();
      const doubt = coverage * nextBagDoubt(learned) * learned.widthFactor;
      if (Math.abs(next.width - learned.widthFactor) <= doubt) inside++;
    }
    expect(told).toBeGreaterThan(7000);
    expect(inside / told).toBeGreaterThan(0.94);
    expect(inside / told).toBeLessThan(0.97);
  });

  it('give the plan their factors, and their spread in place of what was assumed', () => {
    const learned = { bags: 5, setAside: 0, widthFactor: 0.96, depthFactor: 1.02, spread: 0.008 };
    const counts = { bag: { stitches: 46, rows: 64 } };
    const plain = planOf({ ...briefWith({}), ...counts }).size;
    const told = planOf({ ...briefWith({}), ...counts, learned }).size;
    expect(told.widthCm).toBeCloseTo(0.96 * plain.widthCm, 9);
    expect(told.mouthCm).toBeCloseTo(0.96 * plain.mouthCm, 9);
    expect(told.depthCm).toBeCloseTo(1.02 * plain.depthCm, 9);
    expect(told.depthBelowCordCm).toBeCloseTo(1.02 * plain.depthBelowCordCm, 9);
    // 2.37 × 0.8 % × √1.2 = 2.077 %, by calculator.
    expect(told.widthUncertaintyCm / told.widthCm).toBeCloseTo(0.02077, 4);
    expect(told.depthUncertaintyCm / told.depthCm).toBeCloseTo(0.02077, 4);
  });
});

// JCGM 100:2008, annex H.1, calibration of an end gauge of 50 mm: standard uncertainties of 25, 9.7, 2.9 and 16.6 nm combine
// to 32 nm. 2.9 nm is 50 mm · 0.1 °C times that of a difference of coefficients within ± 1e-6 (0.58e-6), 16.6 nm is
// 50 mm · 11.5e-6 times that of a difference of temperatures within ± 0.05 °C (0.029 °C); 9.7 nm combines 5.8, 3.9 and 6.7.
it('propagates as the published example of an end gauge', () => {
  expect(rectangular(1e-6)).toBeCloseTo(0.58e-6, 8);
  expect(rectangular(0.05)).toBeCloseTo(0.029, 3);
  const comparison = propagate([
    [1, 5.8],
    [1, 3.9],
    [1, 6.7],
  ]);
  expect(comparison).toBeCloseTo(9.7, 1);
  const length = 50e6;
  const combined = propagate([
    [1, 25],
    [1, comparison],
    [length * 0.1, rectangular(1e-6)],
    [length * 11.5e-6, rectangular(0.05)],
  ]);
  expect(Math.round(combined)).toBe(32);
});

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
    const advice = smallerDoubt(small);
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
