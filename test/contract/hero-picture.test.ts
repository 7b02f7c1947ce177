import { readFileSync } from 'node:fs';
import { Polygon as FlatPolygon, point } from '@flatten-js/core';
import { describe, expect, it } from 'vitest';
import { standalone } from '../../source/sheet/svg/element.ts';
import { heroDrawing } from '../../source/sheet/svg/hero-drawing.ts';
import { englishWords } from '../../source/wording/words.ts';
import { allNodes, pointsOf, readSvg, withClass } from '../fixtures/read-svg.ts';
import { demoPlan } from '../fixtures/sheets.ts';

const plan = demoPlan('dice-bag');
const drawn = (theme: 'light' | 'dark'): string => `${standalone(heroDrawing(plan, englishWords, theme))}\n`;

/** The README's first picture. `npx vitest run -u` on this file draws it again. */
describe('the picture at the head of the README', () => {
  it.each(['light', 'dark'] as const)('is as the program draws it, %s', async (theme) => {
    await expect(drawn(theme)).toMatchFileSnapshot(`../../demo/hero-${theme}.svg`);
  });

  it('is named in the README, with what it shows', () => {
    const readme = readFileSync('README.md', 'utf8');
    for (const theme of ['light', 'dark']) expect(readme).toContain(`demo/hero-${theme}.svg`);
    expect(readme).toContain(`alt="${englishWords.sheet.shows.hero}"`);
  });

  const svg = readSvg(drawn('light'));

  it('has every stripe of the strip, as high and as far aslant as the plan has them', () => {
    const stripes = withClass(svg, 'strip-stripe').map(pointsOf);
    expect(stripes).toHaveLength(plan.stripes.length);
    const all = stripes.flat();
    const [xs, ys] = [all.map(([x]) => x), all.map(([, y]) => y)];
    const [wide, high] = [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
    const { stitchMm, rowMm } = plan.gauge;
    // 46 stitches and 31 moves across, 64 rows up (trade geometry: the strip crawls K stitches over T rows).
    expect(wide / high).toBeCloseTo(((plan.stitches + plan.shapings) * stitchMm) / (plan.rows * rowMm), 2);
    const area = stripes.reduce(
      (sum, shape) => sum + new FlatPolygon(shape.map(([x, y]) => point(x, y))).area(),
      0,
    );
    expect(area / (high * high)).toBeCloseTo((plan.stitches * stitchMm) / (plan.rows * rowMm), 2);
  });

  it('draws half of the stitches on the front of the bag, less the one that the seam takes', () => {
    const vees = withClass(svg, 'stitches').flatMap(
      ({ attributes }) => (attributes.d ?? '').match(/M/g) ?? [],
    );
    const half = ((plan.stitches - 1) * plan.rows) / 2;
    expect(Math.abs(vees.length - half) / half).toBeLessThan(0.02);
  });

  it('fetches nothing and refers only to itself', () => {
    const ids = new Set(allNodes(svg).map(({ attributes }) => attributes.id));
    const markup = drawn('dark');
    expect(markup).not.toMatch(/(?:href|src)=|NaN|Infinity/);
    for (const [, id] of markup.matchAll(/url\(#([^)]*)\)/g)) expect(ids.has(id)).toBe(true);
  });
});
