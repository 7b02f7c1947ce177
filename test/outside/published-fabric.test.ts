/** Fabric mass, yarn count, weight classes and cord limits against what has been published. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toyCordLimits } from '../../source/chat/wording/cautions.ts';
import { massPerSquareMetre } from '../../source/planning/fabric.ts';
import { classesOfGauge, stitchesPer4In } from '../../source/planning/yarn-class.ts';
import { texOf } from '../../source/planning/yarn-needs.ts';
import { planOf } from '../fixtures/plan-of.ts';

describe('fabric mass', () => {
  // Texcoms Textile Technical Handbook (2023), page 147: grams per square metre of a knitted fabric from courses and
  // wales per inch and loop length in mm, cpi · wpi · l · 39.37² · tex / 10⁶, or cpi · wpi · l · 0.9155 / Ne.
  const fabrics = fc.record({
    stitchMm: fc.double({ min: 0.5, max: 12, noNaN: true }),
    rowMm: fc.double({ min: 0.5, max: 9, noNaN: true }),
    loopLengthMm: fc.double({ min: 1, max: 60, noNaN: true }),
    tex: fc.double({ min: 10, max: 2000, noNaN: true }),
  });

  it('agrees with the handbook, counts in tex', () => {
    fc.assert(
      fc.property(fabrics, ({ tex, ...gauge }) => {
        const [wpi, cpi] = [25.4 / gauge.stitchMm, 25.4 / gauge.rowMm];
        const handbook = (cpi * wpi * gauge.loopLengthMm * 39.37 ** 2 * tex) / 1e6;
        expect(massPerSquareMetre(gauge, tex) / handbook).toBeCloseTo(1, 4);
      }),
    );
  });

  it('agrees with the handbook, counts in cotton count', () => {
    fc.assert(
      fc.property(fabrics, ({ tex, ...gauge }) => {
        const [wpi, cpi] = [25.4 / gauge.stitchMm, 25.4 / gauge.rowMm];
        const handbook = (cpi * wpi * gauge.loopLengthMm * 0.9155) / (590.5 / tex);
        expect(massPerSquareMetre(gauge, tex) / handbook).toBeCloseTo(1, 3);
      }),
    );
  });

  it('is what the yarn of a plan weighs over its area', () => {
    const plan = planOf({
      name: 'Blanket',
      bed: { needles: 400, pitchMm: 6.5, marginNeedles: 0 },
      swatch: { stitches: 40, rows: 60, widthCm: 19.2, heightCm: 21.6 },
      bag: { stitches: 399, rows: 4000 },
      yarns: {
        plum: { colour: '#6b2d5c', metresPer100g: 190 },
        mint: { colour: '#9fd8c2', metresPer100g: 190 },
      },
      stripes: [{ yarn: 'plum', rows: 2 }],
      cord: { yarn: 'mint' },
    });
    const squareMetres = (399 * 4.8 * 4000 * 3.6) / 1e6;
    // Tails are less than a hundredth of so large a piece.
    expect((plan.yarn[0]?.grams ?? 0) / squareMetres / plan.fabricMassGsm).toBeCloseTo(1, 2);
  });
});

describe('yarn count', () => {
  // Tex is grams per kilometre (ISO 1144); cotton count Ne = 590.5 / tex (same handbook, page 147).
  it.each([
    [100, 1000],
    [190, 526.3],
    [400, 250],
  ])('%d metres to 100 g are %d tex', (metresPer100g, tex) => {
    expect(texOf(metresPer100g)).toBeCloseTo(tex, 1);
  });
});

describe('yarn weight class', () => {
  // Craft Yarn Council, Standard Yarn Weight System: plain knitting, stitches to 4 inches.
  const published = [
    [0, 'lace', 33, 40],
    [1, 'super fine', 27, 32],
    [2, 'fine', 23, 26],
    [3, 'light', 21, 24],
    [4, 'medium', 16, 20],
    [5, 'bulky', 12, 15],
    [6, 'super bulky', 7, 11],
    [7, 'jumbo', 1, 6],
  ] as const;

  it.each(published)('%i %s holds %i to %i stitches', (number, name, least, most) => {
    for (let stitches: number = least; stitches <= most; stitches++) {
      const classes = classesOfGauge(stitches);
      expect(classes).toContainEqual(expect.objectContaining({ number, name }));
      expect(classes).toHaveLength(stitches === 23 || stitches === 24 ? 2 : 1);
    }
  });

  it.each([
    [32.5, [0, 1]],
    [26.5, [1, 2]],
    [23.5, [2, 3]],
    [20.5, [3, 4]],
    [15.5, [4, 5]],
    [11.5, [5, 6]],
    [6.5, [6, 7]],
    [41, []],
  ])('%d stitches lie between: %j', (stitches, numbers) => {
    expect(classesOfGauge(stitches).map(({ number }) => number)).toEqual(numbers);
  });

  it('counts over 4 inches of 25.4 mm', () => {
    expect(stitchesPer4In(5.08)).toBeCloseTo(20, 9);
  });
});

describe('cord limits', () => {
  // EN 71-1, cords on toys for the very young: a free cord of 220 mm, a loop of 380 mm round.
  it('are those of toys for the very young', () => {
    expect(toyCordLimits).toEqual({ freeCordCm: 22, loopCm: 38 });
  });
});
