/** A yarn's share in the rows of a bag, counted by hand; the stripes are invented. */
import { expect, it } from 'vitest';
import { planOf, stripedBrief } from '../../test/fixtures/plan-of.ts';
import { shareOf } from './yarn-needs.ts';

/** Rows 1 to 2 of plum, 3 to 4 of mint, and so on to 24. */
const { stripes } = planOf(stripedBrief(20, 24));

it('a yarn has its rows, climbs past those of the others between them, and the last one closes', () => {
  expect(shareOf('plum', stripes)).toEqual({ rows: 12, carriedRows: 10, closes: false });
  expect(shareOf('mint', stripes)).toEqual({ rows: 12, carriedRows: 10, closes: true });
});

it('after some rows it has what is left of them, a stripe that is begun in part', () => {
  // Of plum row 18 is left, and rows 21 and 22; it climbs past rows 19 and 20.
  expect(shareOf('plum', stripes, 17)).toEqual({ rows: 3, carriedRows: 2, closes: false });
  expect(shareOf('mint', stripes, 20)).toEqual({ rows: 2, carriedRows: 0, closes: true });
  expect(shareOf('plum', stripes, 22)).toEqual({ rows: 0, carriedRows: 0, closes: false });
});

it('a yarn that is in no stripe has no share', () => {
  expect(shareOf('teal', stripes)).toEqual({ rows: 0, carriedRows: 0, closes: false });
});
