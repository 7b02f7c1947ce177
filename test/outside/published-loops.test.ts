/** Loop length of plain knitting against published constants and worked examples. */
import { describe, expect, it } from 'vitest';
import type { RelaxedState } from '../../source/planning/brief.ts';
import { gaugeToAimAt, tightnessFactor } from '../../source/planning/fabric.ts';
import { gaugeOf, modelLoopLength, stitchInState } from '../../source/planning/gauge.ts';
import { planOf } from '../fixtures/plan-of.ts';

describe('loop length', () => {
  // D. L. Munden, "The geometry and dimensional properties of plain-knit fabrics", Journal of the Textile Institute 50
  // (1959), T448, for wool: courses kc/l, wales kw/l, loops ks/l²; fully-relaxed values by J. J. F. Knapton and others (from
  // memory: Textile Research Journal 38, 1968, 999).
  it.each<[RelaxedState, number, number, number]>([
    ['dry-relaxed', 5.0, 3.8, 19.0],
    ['wet-relaxed', 5.3, 4.1, 21.6],
    ['fully-relaxed', 5.5, 4.2, 23.1],
  ])('of 1 cm makes the published courses and wales to the centimetre: %s', (state, kc, kw, ks) => {
    // 144 tex is a loop of 10 mm at a tightness of 1.2.
    const { tightness, tenStitchesMm, tenRowsMm } = gaugeToAimAt(144, state);
    expect(tightness).toBe(1.2);
    expect(100 / tenStitchesMm).toBeCloseTo(kw, 9);
    expect(100 / tenRowsMm).toBeCloseTo(kc, 9);
    // As many loops to the square centimetre as published, whatever their shape.
    expect(modelLoopLength(10 / ks, 10, state)).toBeCloseTo(10, 9);
  });

  // Graduate Aptitude Test in Engineering, Textile Engineering 2015, question 54: kw 4.2, kc 5.5, loop length 0.5 cm
  // give 92 loops to the square centimetre.
  it('agrees with a worked example of loop density', () => {
    const { tenStitchesMm, tenRowsMm } = gaugeToAimAt((1.2 * 5) ** 2, 'fully-relaxed');
    expect(Math.round(1e4 / (tenStitchesMm * tenRowsMm))).toBe(92);
    expect(modelLoopLength(1 / Math.sqrt(92), 1 / Math.sqrt(92), 'fully-relaxed')).toBeCloseTo(0.5, 2);
  });

  // Loop shape factor kc/kw about 1.3 for fully relaxed cotton: Graduate Aptitude Test in Engineering, Textile Engineering
  // 2009, question 40 (the answer from memory).
  it('has the published loop shape factor', () => {
    const { tenStitchesMm, tenRowsMm } = gaugeToAimAt(144, 'fully-relaxed');
    expect(tenStitchesMm / tenRowsMm).toBeCloseTo(1.3, 1);
  });

  it('is the measured one where the maker has measured', () => {
    const swatch = {
      stitches: 40,
      rows: 60,
      widthMm: 192,
      heightMm: 216,
      state: 'wet-relaxed',
      asideMm: 0,
      stitchSize: null,
    } as const;
    const gaugeWith = (loopLengthMm: number | null) =>
      gaugeOf({
        swatch: { ...swatch, loopLengthMm },
        finishState: 'wet-relaxed',
        crawl: 'left',
        learned: null,
      });
    expect(gaugeWith(17.1)).toMatchObject({
      stitchMm: 4.8,
      rowMm: 3.6,
      loopLengthMm: 17.1,
      loopLengthMeasured: true,
    });
    // √(21.6 × 4.8 × 3.6) = 19.32, by pocket calculator.
    expect(gaugeWith(null).loopLengthMm).toBeCloseTo(19.32, 2);
  });
});

describe('tightness', () => {
  // Worked here by hand: 25 tex in loops of 3.57 mm, 5 / 3.57.
  it('is the root of the tex over the loop length', () => {
    expect(tightnessFactor(25, 3.57)).toBeCloseTo(1.4, 2);
  });
});

describe('a stitch in another state', () => {
  // Munden's constants (as above): courses kc/l and wales kw/l, so a stitch of the same loop is narrower by kw/kw'.
  it.each<[RelaxedState, RelaxedState, number, number]>([
    ['dry-relaxed', 'fully-relaxed', 3.8 / 4.2, 5.0 / 5.5],
    ['dry-relaxed', 'wet-relaxed', 3.8 / 4.1, 5.0 / 5.3],
    ['wet-relaxed', 'fully-relaxed', 4.1 / 4.2, 5.3 / 5.5],
    ['fully-relaxed', 'dry-relaxed', 4.2 / 3.8, 5.5 / 5.0],
  ])('shrinks or grows from %s to %s', (from, to, width, height) => {
    const { stitchMm, rowMm } = stitchInState({ stitchMm: 4.8, rowMm: 3.6 }, from, to);
    expect(stitchMm / 4.8).toBeCloseTo(width, 12);
    expect(rowMm / 3.6).toBeCloseTo(height, 12);
  });

  // The dice bag, invented, worked by calculator: 13.7 by 18.1 cm; a bag knitted so and then washed and tumbled is narrower and
  // shallower, 12.4 by 16.4 cm, some 9 %.
  it('makes the whole bag smaller, which the plan says beside its size as knitted', () => {
    const plan = planOf({
      name: 'Dice bag',
      bed: { needles: 150, pitchMm: 6.5 },
      swatch: { stitches: 40, rows: 60, widthCm: 19.2, heightCm: 21.6, state: 'dry-relaxed' },
      finishState: 'fully-relaxed',
      bag: { stitches: 46, rows: 64 },
      yarns: { plum: { colour: '#6b2d5c', metresPer100g: 190 } },
      stripes: [{ yarn: 'plum', rows: 2 }],
    });
    const told = [plan.asKnitted?.widthCm, plan.asKnitted?.depthCm, plan.size.widthCm, plan.size.depthCm];
    expect(told.map((cm) => cm?.toFixed(1))).toEqual(['13.7', '18.1', '12.4', '16.4']);
  });
});
