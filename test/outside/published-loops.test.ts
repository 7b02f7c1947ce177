/** Loop length of plain knitting against published constants and worked examples. */
import { describe, expect, it } from 'vitest';
import type { RelaxedState } from '../../source/planning/brief.ts';
import { tightnessFactor } from '../../source/planning/fabric.ts';
import { gaugeOf, loopConstants, modelLoopLength, stitchInState } from '../../source/planning/gauge.ts';

describe('loop length', () => {
  // D. L. Munden, "The geometry and dimensional properties of plain-knit fabrics", Journal of the Textile Institute 50
  // (1959), T448: courses kc/l, wales kw/l, loops ks/l²; fully-relaxed values by J. J. F. Knapton and others.
  it.each<[RelaxedState, number, number, number]>([
    ['dry-relaxed', 5.0, 3.8, 19.0],
    ['wet-relaxed', 5.3, 4.1, 21.6],
    ['fully-relaxed', 5.5, 4.2, 23.1],
  ])('takes the published constants of %s plain knitting', (state, kc, kw, ks) => {
    expect(loopConstants[state]).toEqual({ kc, kw, ks });
  });

  it.each(Object.keys(loopConstants) as RelaxedState[])(
    'comes out as published from courses and wales of %s fabric',
    (state) => {
      const { kc, kw } = loopConstants[state];
      const loopMm = 6;
      // The published ks is rounded by itself; for wet-relaxed fabric it lies 0.6 % below kc · kw.
      expect(modelLoopLength(loopMm / kw, loopMm / kc, state) / loopMm).toBeCloseTo(1, 2);
    },
  );

  // Graduate Aptitude Test in Engineering, Textile Engineering 2015, question 54: kw 4.2, kc 5.5, loop length 0.5 cm
  // give 92 loops to the square centimetre.
  it('agrees with a worked example of loop density', () => {
    const [stitchCm, rowCm] = [0.5 / 4.2, 0.5 / 5.5];
    expect(Math.round(1 / (stitchCm * rowCm))).toBe(92);
    expect(modelLoopLength(stitchCm, rowCm, 'fully-relaxed')).toBeCloseTo(0.5, 9);
    expect(modelLoopLength(1 / Math.sqrt(92), 1 / Math.sqrt(92), 'fully-relaxed')).toBeCloseTo(0.5, 2);
  });

  // Graduate Aptitude Test in Engineering, Textile Engineering 2009, question 40: loop shape factor kc/kw about 1.3.
  it.each(Object.values(loopConstants))('has the published loop shape factor: %j', ({ kc, kw }) => {
    expect(kc / kw).toBeCloseTo(1.3, 1);
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
});
