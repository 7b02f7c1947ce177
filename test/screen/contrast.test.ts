import { describe, expect, it } from 'vitest';
import { luminanceOf, readableOn } from '../../source/screen/bench/contrast.ts';

/** WCAG 2.2 (W3C Recommendation, 2023), definitions of relative luminance and contrast ratio. */
describe('text on a yarn colour', () => {
  it.each([
    ['#ffffff', 1],
    ['#000000', 0],
    ['#ff0000', 0.2126],
    ['#00ff00', 0.7152],
    ['#0000ff', 0.0722],
  ])('%s has relative luminance %d', (colour, luminance) => {
    expect(luminanceOf(colour)).toBeCloseTo(luminance, 4);
  });

  it('stands out at 4.5 to 1 at the least, on any colour', () => {
    const ratio = (one: number, other: number): number =>
      (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    for (let red = 0; red < 256; red += 15) {
      for (let green = 0; green < 256; green += 15) {
        for (let blue = 0; blue < 256; blue += 15) {
          const colour = `#${[red, green, blue].map((channel) => channel.toString(16).padStart(2, '0')).join('')}`;
          const text = readableOn(colour);
          expect(ratio(luminanceOf(colour), luminanceOf(text))).toBeGreaterThanOrEqual(4.5);
        }
      }
    }
  });
});
