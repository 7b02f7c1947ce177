/** Rows and stitches for a wish, on an invented bag of stitches 4.8 mm wide and rows 3.6 mm high; sums by hand. */
import { describe, expect, it } from 'vitest';
import { briefOf, stripedBrief } from '../../test/fixtures/plan-of.ts';
import { faultIn, valueIn } from '../../test/tools/result.ts';
import type { Brief } from './brief.ts';
import {
  chooseRows,
  chooseStitches,
  deepestOnBed,
  leastRowsOf,
  nearestSlant,
  neighbourOf,
  neighboursOf,
  rowMultipleOf,
} from './choose-size.ts';
import { gaugeOf } from './gauge.ts';
import { bagDepthCm } from './hem.ts';

const bag = (widthCm: number, depthCm: number, more: object = {}): Brief =>
  briefOf({ ...stripedBrief(36, 64), bag: { widthCm, depthCm }, ...more }).brief;
const wish = bag(14, 18);
const gauge = gaugeOf(wish);

describe('rows', () => {
  it('come in whole repeats that are whole shaping intervals too', () => {
    expect([rowMultipleOf(wish), leastRowsOf(wish)]).toEqual([4, 4]);
    const sixth = bag(14, 18, { shapeEveryRows: 6 });
    expect([rowMultipleOf(sixth), leastRowsOf(sixth)]).toEqual([12, 12]);
  });

  // Half of hypot((T / 2 − 1) · 4.8, T · 3.6) mm: 128.5 at 60 rows, 137.1 at 64, 145.8 at 68.
  it.each([
    [12.85, 60],
    [13.2, 60],
    [13.4, 64],
    [14, 64],
    [14.1, 64],
    [14.2, 68],
    [1, 4],
  ])('for %d cm are those of the nearest width: %d', (widthCm, rows) => {
    expect(valueIn(chooseRows(bag(widthCm, 18), gauge))).toBe(rows);
  });

  it.each([
    [66, [64, 68]],
    [2, [4]],
  ])('are not %d: those beside it are named', (rows, nearest) => {
    const counted = briefOf({ ...stripedBrief(36, 64), bag: { stitches: 36, rows } }).brief;
    expect(faultIn(chooseRows(counted, gauge))).toEqual({
      code: 'plan/rows-not-whole-repeats',
      rows,
      rowMultiple: 4,
      nearest,
    });
  });
});

describe('stitches', () => {
  it.each([{}, { hem: { rows: 6 } }])('are those of the nearest depth, %j', (more) => {
    for (const depthCm of [9, 13.3, 18, 22.2]) {
      const brief = bag(14, depthCm, more);
      const stitches = chooseStitches(brief, gauge, 64);
      const off = (count: number): number =>
        Math.abs(bagDepthCm(brief, { stitches: count, rows: 64, shapeEveryRows: 2 }, gauge) - depthCm);
      expect(off(stitches)).toBeLessThanOrEqual(Math.min(off(stitches - 1), off(stitches + 1)));
    }
  });

  it('are enough for two edges and what lies between them', () => {
    expect(chooseStitches(bag(14, 1), gauge, 64)).toBe(6);
    expect(chooseStitches(bag(14, 1, { edgeStitches: 3 }), gauge, 64)).toBe(8);
  });
});

describe('the next sizes', () => {
  it('are one repeat fewer and one more', () => {
    expect(neighboursOf(wish, gauge, 64).map(({ rows }) => rows)).toEqual([60, 68]);
    expect(neighboursOf(wish, gauge, 8).map(({ rows }) => rows)).toEqual([4, 12]);
    expect(neighboursOf(wish, gauge, 4).map(({ rows }) => rows)).toEqual([8]);
    expect(neighboursOf(wish, gauge, 64).map(({ widthCm }) => widthCm)).toEqual([
      expect.closeTo(12.85, 2),
      expect.closeTo(14.58, 2),
    ]);
  });

  it('fit a bed that leaves one needle to crawl', () => {
    // Two of 40 needles stay free at each end.
    const narrow = bag(14, 18, { bed: { needles: 40, pitchMm: 6.5 } });
    const fits = (stitches: number) =>
      neighbourOf(narrow, gauge, { stitches, rows: 64, shapeEveryRows: 2 }).fitsBed;
    expect([35, 36].map(fits)).toEqual([true, false]);
    expect(deepestOnBed(narrow, gauge, { stitches: 9, rows: 64, shapeEveryRows: 2 })).toMatchObject({
      stitches: 35,
      rows: 64,
      fitsBed: true,
    });
  });

  it('are none on a bed too short for any bag', () => {
    const on = (needles: number) =>
      deepestOnBed(bag(14, 18, { bed: { needles, pitchMm: 6.5 } }), gauge, {
        stitches: 9,
        rows: 64,
        shapeEveryRows: 2,
      });
    expect(on(11)?.stitches).toBe(6);
    expect(on(10)).toBeNull();
  });
});

describe('the slant of the stripes', () => {
  it('is flatter the oftener the edges move', () => {
    // At 64 rows atan(230.4 / 148.8) is 57°; every eighth row atan(230.4 / 33.6) is 82°.
    expect([0, 57, 72, 90].map((angleDeg) => nearestSlant(wish, angleDeg))).toEqual([2, 2, 4, 8]);
  });
});
