/** What is taken where nobody has swatched, against ranges that were published for yarn and fabric. */
import { expect, it } from 'vitest';
import { usualMetresPer100g, usualSwatch } from '../../source/planning/usual.ts';

// Stitches to 4 inches of plain knitting: Craft Yarn Council, Standard Yarn Weight System; lace 33-40, super fine 27-32,
// medium 16-20, bulky 12-15. Which class a bed is for is common practice: 3.6 mm lace, 4.5 mm super fine, 6.5 mm
// medium, 9 mm bulky.
it.each([
  [3.6, 33, 40],
  [4.5, 27, 32],
  [6.5, 16, 20],
  [9, 12, 15],
])('the guess for a bed of %d mm lies in its yarn class', (pitchMm, least, most) => {
  const { stitches, widthCm } = usualSwatch(pitchMm);
  // The table counts 4 inches as 10 cm, and whole stitches.
  const toTenCm = Math.round((stitches / widthCm) * 10);
  expect(toTenCm).toBeGreaterThanOrEqual(least);
  expect(toTenCm).toBeLessThanOrEqual(most);
});

// Loop shape of plain knitting, width over height: kc/kw about 1.3 (GATE Textile Engineering 2009, question 40).
it.each([3.6, 4.5, 6.5, 9])(
  'the stitches of the guess for %d mm have the shape of plain knitting',
  (pitchMm) => {
    const { stitches, rows, widthCm, heightCm } = usualSwatch(pitchMm);
    expect(widthCm / stitches / (heightCm / rows)).toBeCloseTo(1.3, 1);
  },
);

// Usual labels, metres to 100 g (rule of thumb): super fine 400-480, medium 160-240, bulky 100-130; lace 600 and more.
it.each([
  [3.6, 600, 800],
  [4.5, 400, 480],
  [6.5, 160, 240],
  [9, 100, 130],
])('the yarn that is guessed for a bed of %d mm is as its label would say', (pitchMm, least, most) => {
  expect(usualMetresPer100g(pitchMm)).toBeGreaterThanOrEqual(least);
  expect(usualMetresPer100g(pitchMm)).toBeLessThanOrEqual(most);
});

// Hand yarns at the gauge of their labels have a tightness of 0.95 to 1.2 (rule of thumb); stitch and loop by Munden's kw.
it.each([
  [3.6, 33, 40],
  [4.5, 27, 32],
  [6.5, 16, 20],
  [9, 12, 15],
])(
  'the label for a bed of %d mm has the gauge of its class at the tightness of labels',
  (pitchMm, least, most) => {
    const rootTex = Math.sqrt(100_000 / usualMetresPer100g(pitchMm));
    const toTenCm = [0.95, 1.2].map((tightness) => 100 / (rootTex / tightness / 4.1));
    const [loosest = 0, tightest = 0] = toTenCm;
    expect(loosest).toBeLessThan(most + 0.5);
    expect(tightest).toBeGreaterThan(least - 0.5);
    const middle = Math.round(100 / (rootTex / 1.05 / 4.1));
    expect(middle).toBeGreaterThanOrEqual(least);
    expect(middle).toBeLessThanOrEqual(most);
  },
);

it.each([3.6, 4.5, 6.5, 9])(
  'guessed yarn on the guessed swatch for %d mm is as tight as labels are',
  (pitchMm) => {
    const { stitches, rows, widthCm, heightCm } = usualSwatch(pitchMm);
    // Loops by Munden's ks for wet-relaxed wool.
    const loopMm = Math.sqrt(21.6 * ((10 * widthCm) / stitches) * ((10 * heightCm) / rows));
    const tightness = Math.sqrt(100_000 / usualMetresPer100g(pitchMm)) / loopMm;
    expect(tightness).toBeGreaterThan(0.95);
    expect(tightness).toBeLessThan(1.2);
  },
);

it('the yarn that is guessed grows heavier with the pitch, between the labels and beyond them', () => {
  const metres = [2, 3.6, 4, 4.5, 5.5, 6.5, 8, 9, 12, 20].map(usualMetresPer100g);
  expect(metres).toEqual(metres.toSorted((a, b) => b - a));
  expect(metres.at(-1)).toBeGreaterThanOrEqual(10);
});
