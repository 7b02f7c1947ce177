/** The drawings as SVG: parsed by a library, their polygons measured against the plan. */

import { Polygon as FlatPolygon, point } from '@flatten-js/core';
import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { planOf } from '../../../test/fixtures/plan-of.ts';
import { briefFile } from '../../../test/fixtures/random-brief.ts';
import { allNodes, pointsOf, readSvg, type SvgNode, withClass } from '../../../test/fixtures/read-svg.ts';
import { demoNames, demoPlan, twoColours } from '../../../test/fixtures/sheet-briefs.ts';
import { german, speak, spoken } from '../../../test/fixtures/spoken.ts';
import { tries } from '../../../test/tools/tries.ts';
import type { Plan } from '../../planning/plan.ts';
import type { Language } from '../../wording/words.ts';
import { bagDrawing } from './bag-drawing.ts';
import { bandDrawing } from './band-drawing.ts';
import { bedDrawing } from './bed-drawing.ts';
import { type Drawing, standalone } from './element.ts';
import { foldDrawing } from './fold-drawing.ts';
import { graftDiagram } from './graft-diagram.ts';
import { seamDiagram } from './seam-diagram.ts';
import { shapingDiagram } from './shaping-diagram.ts';
import { stripDrawing } from './strip-drawing.ts';
import { textWidth } from './text-width.ts';
import { threadingDiagram } from './threading-diagram.ts';

const stripSvg = (plan: Plan, rowsDone?: number): SvgNode =>
  readSvg(
    standalone(
      stripDrawing(
        plan,
        {
          widthMm: 76,
          heightMm: 50,
          id: 's',
          ...(rowsDone === undefined ? {} : { rowsDone }),
        },
        spoken(),
      ),
    ),
  );
const bagSvg = (plan: Plan): SvgNode =>
  readSvg(standalone(bagDrawing(plan, { widthMm: 90, heightMm: 80 }, spoken(), 'b')));
const areaOf = (node: SvgNode): number => new FlatPolygon(pointsOf(node).map(([x, y]) => point(x, y))).area();
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

const drawingsOf = (plan: Plan): Readonly<Record<string, Drawing>> => ({
  strip: stripDrawing(plan, { widthMm: 76, heightMm: 50, id: 's', rowsDone: 5 }, spoken()),
  bag: bagDrawing(plan, { widthMm: 90, heightMm: 80 }, spoken(), 'b'),
  fold: foldDrawing(plan, { widthMm: 100, heightMm: 46 }, 'f', spoken()),
  bed: bedDrawing(plan, { widthMm: 182, lanes: 2 }, spoken()),
  band: bandDrawing(plan, 182, 4, 'r', spoken()),
  shaping: shapingDiagram(plan, spoken()),
  graft: graftDiagram(spoken()),
  seam: seamDiagram(spoken()),
  threading: threadingDiagram(plan, 182, spoken()),
});

describe.each(demoNames)('the strip of the %s as SVG', (name) => {
  const plan = demoPlan(name);
  const svg = stripSvg(plan);
  const stripes = withClass(svg, 'stripe');

  it('has the area of the plan, in square millimetres', () => {
    const wanted = plan.stitches * plan.gauge.stitchMm * plan.rows * plan.gauge.rowMm;
    expect(sum(stripes.map(areaOf)) / wanted).toBeCloseTo(1, 3);
  });

  it('leans within half a degree of the plan', () => {
    const corners = pointsOf(withClass(svg, 'outline')[0] as SvgNode);
    const [x1 = 0, y1 = 0] = corners[1] ?? [];
    const [x2 = 0, y2 = 0] = corners[2] ?? [];
    const degrees = (Math.atan2(Math.abs(y2 - y1), Math.abs(x2 - x1)) * 180) / Math.PI;
    expect(Math.abs(degrees - plan.size.stripeAngleDeg)).toBeLessThan(0.5);
  });

  it('has as many stripes as the plan, each of its own height, in the fill of its yarn', () => {
    expect(stripes.map(({ attributes }) => Number(attributes['data-stripe']))).toEqual(
      plan.stripes.map(({ number }) => number),
    );
    for (const [i, stripe] of stripes.entries()) {
      const ys = pointsOf(stripe).map(([, y]) => y);
      expect(Math.max(...ys) - Math.min(...ys)).toBeCloseTo(
        (plan.stripes[i]?.rows ?? 0) * plan.gauge.rowMm,
        2,
      );
    }
    const fills = new Map(stripes.map(({ attributes }, i) => [plan.stripes[i]?.yarn, attributes.fill]));
    expect(new Set(fills.values()).size).toBe(new Set(plan.stripes.map(({ yarn }) => yarn)).size);
  });

  it('is drawn at one scale both ways', () => {
    const group = withClass(svg, 'strip')[0]?.attributes.transform ?? '';
    const [a, , , d] = (/matrix\(([^)]*)\)/.exec(group)?.[1] ?? '').split(' ').map(Number);
    expect(d).toBe(-(a ?? 0));
  });
});

describe('the strip under way', () => {
  it('fills what is knitted and outlines the rest', () => {
    const plan = demoPlan('dice-bag');
    const svg = stripSvg(plan, 21);
    expect(withClass(svg, 'knitted')).toHaveLength(11);
    expect(withClass(svg, 'open')).toHaveLength(22);
    expect(sum(withClass(svg, 'knitted').map(areaOf))).toBeCloseTo(
      21 * plan.gauge.rowMm * plan.stitches * plan.gauge.stitchMm,
      0,
    );
    expect(new Set(withClass(svg, 'open').map(({ attributes }) => attributes.fill))).toEqual(
      new Set(['#ffffff']),
    );
  });
});

describe('the bag as SVG', () => {
  it.each(demoNames)('of the %s is covered by its stripes', (name) => {
    const plan = demoPlan(name);
    const area = sum(withClass(bagSvg(plan), 'stripe').map(areaOf));
    expect(area / (plan.size.widthCm * plan.size.depthCm * 100)).toBeCloseTo(1, 3);
  });

  it('keeps colours that look alike apart by pattern', () => {
    const fillsOf = (plan: Plan): ReadonlySet<string> =>
      new Set(withClass(bagSvg(plan), 'stripe').map(({ attributes }) => attributes.fill ?? ''));
    expect(fillsOf(twoColours('#6b2d5c', '#9fd8c2'))).toEqual(new Set(['#6b2d5c', '#9fd8c2']));
    expect(fillsOf(twoColours('#6b2d5c', '#6b3560'))).toEqual(new Set(['#6b2d5c', 'url(#b-yarn-2)']));
  });
});

const languages: readonly (readonly [string, Language | null])[] = [
  ['English', null],
  ['German', german],
];

describe('every drawing', () => {
  afterEach(() => speak(null));

  it('of any bag is well-formed, finite, and refers only to itself', () => {
    fc.assert(
      fc.property(briefFile(), (file) => {
        for (const [name, drawing] of Object.entries(drawingsOf(planOf(file)))) {
          const markup = standalone(drawing);
          expect(markup, name).not.toMatch(/NaN|Infinity|undefined/);
          expect(markup.match(/(?:href|src)=/g), name).toBeNull();
          const ids = new Set(allNodes(readSvg(markup)).map(({ attributes }) => attributes.id));
          for (const [, id] of markup.matchAll(/url\(#([^)]*)\)/g)) expect(ids.has(id)).toBe(true);
        }
      }),
      { numRuns: tries(40) },
    );
  });

  it.each(languages)(
    'keeps its text inside its edges, in the widest of common fonts, in %s',
    (_, language) => {
      speak(language);
      fc.assert(
        fc.property(briefFile(), (file) => {
          for (const [name, drawing] of Object.entries(drawingsOf(planOf(file)))) {
            for (const { attributes, text } of allNodes(readSvg(standalone(drawing))).filter(
              (node) => node.name === 'text',
            )) {
              const isTurned = (attributes.transform ?? '') !== '';
              const width = textWidth(text, Number(attributes['font-size']));
              const share =
                attributes['text-anchor'] === 'middle' ? 0.5 : attributes['text-anchor'] === 'end' ? 1 : 0;
              const from = (isTurned ? Number(attributes.y) : Number(attributes.x)) - width * share;
              const room = isTurned ? drawing.heightMm : drawing.widthMm;
              expect(from, `${name}: ${text}`).toBeGreaterThan(-0.5);
              expect(from + width, `${name}: ${text}`).toBeLessThan(room + 0.5);
            }
          }
        }),
        { numRuns: tries(60) },
      );
    },
  );
});
