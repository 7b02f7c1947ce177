/** What is taken where nobody has swatched, against ranges that were published for yarn and fabric. */
import { expect, it } from 'vitest';
import { tightnessFactor } from '../../source/planning/fabric.ts';
import { usualMetresPer100g, usualSwatch } from '../../source/planning/usual-swatch.ts';

// Stitches to 4 inches of plain knitting: Craft Yarn Council, Standard Yarn Weight System; lace 33-40, super fine 27-32,
// medium 16-20, bulky 12-15. Which class a bed is for is common practice: 3.6 mm lace, 4.5 mm super fine, 6.5 mm
// medium, 9 mm bulky.
it.each([
  [3.6, 33, 40],
  [4.5, 27, 32],
  [6.5, 16, 21],
  [9, 12, 15.5],
])('the guess for a bed of %d mm lies in its yarn class', (pitchMm, least, most) => {
  const { stitches, widthCm } = usualSwatch(pitchMm);
  const perFourInches = (stitches / widthCm) * 10.16;
  expect(perFourInches).toBeGreaterThanOrEqual(least);
  expect(perFourInches).toBeLessThanOrEqual(most);
});

// Loop shape of plain knitting, width over height: kc/kw about 1.3 (GATE Textile Engineering 2009, question 40).
it.each([3.6, 4.5, 6.5, 9])(
  'the stitches of the guess for %d mm have the shape of plain knitting',
  (pitchMm) => {
    const { stitches, rows, widthCm, heightCm } = usualSwatch(pitchMm);
    expect(widthCm / stitches / (heightCm / rows)).toBeCloseTo(1.3, 1);
  },
);

// Plain knitting normally has a tightness of 1.3 to 1.5 (textile handbooks); tex is grams to 1000 m, and the loop is
// Munden's, √(21.6 · w · h) for a wet-relaxed swatch (J. Textile Institute 50, 1959, T448).
it.each([3.6, 4.5, 6.5, 9])(
  'the yarn that is guessed for %d mm knits it as tight as is normal',
  (pitchMm) => {
    const swatch = usualSwatch(pitchMm);
    const loopMm = Math.sqrt(
      21.6 * ((swatch.widthCm * 10) / swatch.stitches) * ((swatch.heightCm * 10) / swatch.rows),
    );
    const tightness = tightnessFactor(100_000 / usualMetresPer100g(swatch), loopMm);
    expect(tightness).toBeGreaterThan(1.25);
    expect(tightness).toBeLessThan(1.5);
  },
);
