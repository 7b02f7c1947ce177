/** A yarn that stripes by itself, in an invented bag of one yarn: lengths counted by hand. */
import { describe, expect, it } from 'vitest';
import { planOf, stripedBrief } from '../../test/fixtures/plan-of.ts';
import { colourAt, colourRuns } from './colour-run.ts';

const run = [
  { colour: '#111111', metres: 2 },
  { colour: '#222222', metres: 1 },
  { colour: '#333333', metres: 0.5 },
];

describe('the colour of a place along the yarn', () => {
  it.each([
    [0, '#111111'],
    [1.99, '#111111'],
    [2, '#222222'],
    [2.99, '#222222'],
    [3, '#333333'],
    [3.5, '#111111'],
    [5.6, '#222222'],
    [7 + 3.2, '#333333'],
  ])('at %d m is %s', (metres, colour) => expect(colourAt(run, metres)).toBe(colour));
});

const plum = { colour: '#6b2d5c', metresPer100g: 190, run };
const bag = (rows: number, more: object = {}) =>
  planOf({
    ...stripedBrief(20, rows),
    // A row of 20 stitches of 10 mm takes 0.2 m.
    swatch: { ...stripedBrief(20, 24).swatch, loopLengthMm: 10 },
    yarns: { plum, mint: { colour: '#9fd8c2', metresPer100g: 190 } },
    stripes: [{ yarn: 'plum', rows: 2 }],
    ...more,
  });

describe('the bands that it knits', () => {
  it('follow the yarn, from the end that is left to hide', () => {
    const [found] = colourRuns(bag(24));
    expect(found).toMatchObject({ yarn: 'plum', runMetres: 3.5, rowMetres: expect.closeTo(0.2, 9) });
    // 15 cm lie before row 1; its middle is at 0.25 m. Row 9 has its middle at 1.85 m and row 10 at 2.05, row 14 at 2.85 and row
    // 15 at 3.05, row 17 at 3.45 and row 18 at 3.65, a new run.
    expect(found?.bands.slice(0, 3)).toEqual([
      { colour: '#111111', fromRow: 1, throughRow: 9 },
      { colour: '#222222', fromRow: 10, throughRow: 14 },
      { colour: '#333333', fromRow: 15, throughRow: 17 },
    ]);
    expect(found?.bands.at(-1)).toMatchObject({ colour: '#111111', fromRow: 18 });
  });

  it('are cut by the stripes of another yarn', () => {
    const striped = bag(24, {
      stripes: [
        { yarn: 'plum', rows: 2 },
        { yarn: 'mint', rows: 2 },
      ],
    });
    const [found] = colourRuns(striped);
    expect(found?.bands.slice(0, 3)).toEqual([
      { colour: '#111111', fromRow: 1, throughRow: 2 },
      { colour: '#111111', fromRow: 5, throughRow: 6 },
      { colour: '#111111', fromRow: 9, throughRow: 10 },
    ]);
    expect(found?.graft).toBeNull();
  });
});

describe('the join of colours at the graft', () => {
  it('is off by what lies beyond whole runs, and may be better at other rows', () => {
    // 24 rows take 4.8 m, 1.3 beyond one run; 18 rows 3.6 m, only 0.1 beyond it.
    const graft = colourRuns(bag(24))[0]?.graft;
    expect(graft?.offMetres).toBeCloseTo(1.3, 9);
    expect(graft?.offRows).toBeCloseTo(6.5, 9);
    expect(graft?.better).toEqual({ rows: 18, offMetres: expect.closeTo(0.1, 9) });
    expect(colourRuns(bag(18))[0]?.graft?.better).toBeNull();
  });

  it('may be short of a whole run', () => {
    // 34 rows take 6.8 m: 0.2 less than two runs.
    expect(colourRuns(bag(34))[0]?.graft?.offMetres).toBeCloseTo(-0.2, 9);
  });

  it('is never better in what is no bag any more', () => {
    // Two rows would be off by 0.4 m only; four, the fewest, are by 0.8, and up to twelve by more.
    expect(colourRuns(bag(4))[0]?.graft).toMatchObject({ offMetres: expect.closeTo(0.8, 9), better: null });
  });
});
