/** The drawings as SVG: parsed by a library, their polygons measured against the plan. */
import { Polygon as FlatPolygon, point } from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planOf } from '../../../test/fixtures/plan-of.ts';
import { briefFile } from '../../../test/fixtures/random-brief.ts';
import { allNodes, pointsOf, readSvg, type SvgNode, withClass } from '../../../test/fixtures/read-svg.ts';
import { demoNames, demoPlan, twoColours } from '../../../test/fixtures/sheets.ts';
import { german } from '../../../test/fixtures/spoken.ts';
import { tries } from '../../../test/tools/tries.ts';
import type { Plan } from '../../planning/plan.ts';
import { metric } from '../../shared/units.ts';
import { allSteps, layOutJob } from '../../steps/job.ts';
import { englishWords, type Words, wordsIn } from '../../wording/words.ts';
import { bagDrawing } from './bag-drawing.ts';
import { bedDrawing } from './bed-drawing.ts';
import { cordDiagram } from './cord-diagram.ts';
import { type Drawing, standalone, textWidth } from './element.ts';
import { bandDrawing } from './fills.ts';
import { foldDrawing } from './fold-drawing.ts';
import { graftDiagram } from './graft-diagram.ts';
import { seamDiagram } from './seam-diagram.ts';
import { shapingDiagram } from './shaping-and-hem.ts';
import { stripDrawing } from './strip-drawing.ts';
import { threadingDiagram } from './threading-diagram.ts';

const stripSvg = (plan: Plan, rowsDone?: number): SvgNode =>
  readSvg(
    standalone(
      stripDrawing(plan, englishWords, {
        widthMm: 92,
        heightMm: 62,
        id: 's',
        ...(rowsDone === undefined ? {} : { rowsDone }),
      }),
    ),
  );
const bagSvg = (plan: Plan): SvgNode =>
  readSvg(standalone(bagDrawing(plan, englishWords, { widthMm: 90, heightMm: 80, id: 'b' })));
const areaOf = (node: SvgNode): number => new FlatPolygon(pointsOf(node).map(([x, y]) => point(x, y))).area();
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

const drawingsOf = (plan: Plan, words: Words): Readonly<Record<string, Drawing>> => ({
  strip: stripDrawing(plan, words, { widthMm: 92, heightMm: 62, id: 's', rowsDone: 5 }),
  bag: bagDrawing(plan, words, { widthMm: 90, heightMm: 80, id: 'b' }),
  fold: foldDrawing(plan, words, { widthMm: 182, heightMm: 58 }, 'f'),
  bed: bedDrawing(plan, words.sheet, { widthMm: 180, size: 4.6, lanes: 2 }),
  band: bandDrawing(plan, words.sheet, 182, 4, 'r'),
  shaping: shapingDiagram(plan, words),
  graft: graftDiagram(plan, words.sheet),
  seam: seamDiagram(words.sheet),
  cord: cordDiagram(plan, words),
  threading: threadingDiagram(plan, words.sheet, 182),
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
  it.each(demoNames)('of the %s is covered by its stripes and its hem', (name) => {
    const plan = demoPlan(name);
    const svg = bagSvg(plan);
    const area = sum([...withClass(svg, 'stripe'), ...withClass(svg, 'hem')].map(areaOf));
    expect(area / (plan.size.widthCm * plan.size.depthCm * 100)).toBeCloseTo(1, 3);
  });

  it('keeps colours that look alike apart by pattern', () => {
    const fillsOf = (plan: Plan): ReadonlySet<string> =>
      new Set(withClass(bagSvg(plan), 'stripe').map(({ attributes }) => attributes.fill ?? ''));
    expect(fillsOf(twoColours('#6b2d5c', '#9fd8c2'))).toEqual(new Set(['#6b2d5c', '#9fd8c2']));
    expect(fillsOf(twoColours('#6b2d5c', '#6b3560'))).toEqual(new Set(['#6b2d5c', 'url(#b-yarn-2)']));
  });
});

const languages: readonly (readonly [string, Words])[] = [
  ['English', englishWords],
  ['German', wordsIn(german, metric)],
];

describe('every drawing', () => {
  it('of any bag is well-formed, finite, and refers only to itself', () => {
    fc.assert(
      fc.property(briefFile(), (file) => {
        for (const [name, drawing] of Object.entries(drawingsOf(planOf(file), englishWords))) {
          const markup = standalone(drawing);
          expect(markup, name).not.toMatch(/NaN|Infinity|undefined/);
          expect(markup.match(/(?:href|src)=/g), name).toBeNull();
          const ids = new Set(allNodes(readSvg(markup)).map(({ attributes }) => attributes.id));
          for (const [, id] of markup.matchAll(/url\(#([^)]*)\)/g)) expect(ids.has(id)).toBe(true);
        }
      }),
      { numRuns: tries(40, 10) },
    );
  });

  it.each(languages)(
    'keeps its text inside its edges and in letters of 7 points or more, in the widest of common fonts, in %s',
    (_, words) => {
      fc.assert(
        fc.property(briefFile(), (file) => {
          for (const [name, drawing] of Object.entries(drawingsOf(planOf(file), words))) {
            for (const { size, text, corners } of textsOf(readSvg(standalone(drawing)))) {
              expect((size * 72) / 25.4, `${name}: ${text}`).toBeGreaterThanOrEqual(7);
              for (const [x, y] of corners) {
                expect(x, `${name}: ${text}`).toBeGreaterThan(-0.5);
                expect(x, `${name}: ${text}`).toBeLessThan(drawing.widthMm + 0.5);
                expect(y, `${name}: ${text}`).toBeGreaterThan(-0.5);
                expect(y, `${name}: ${text}`).toBeLessThan(drawing.heightMm + 0.5);
              }
            }
          }
        }),
        { numRuns: tries(60, 10) },
      );
    },
  );

  it('says which side of the cloth it shows, first of all that is written in it, and never both', () => {
    fc.assert(
      fc.property(briefFile(), (file) => {
        const { strip, bed, shaping, bag, graft, seam, cord, threading } = drawingsOf(
          planOf(file),
          englishWords,
        );
        const sides = (drawing: Drawing | undefined): readonly string[] =>
          textsOf(readSvg(standalone(drawing as Drawing)))
            .map(({ text }) => text)
            .filter((text) => text.endsWith('side towards you'));
        for (const one of [strip, bed, shaping, cord]) expect(sides(one)).toEqual(['purl side towards you']);
        for (const one of [bag, graft, seam, threading])
          expect(sides(one)).toEqual(['knit side towards you']);
        for (const one of [strip, bed, shaping, bag, graft, seam, cord, threading]) {
          const [first] = textsOf(readSvg(standalone(one as Drawing)));
          expect(first?.text).toMatch(/side towards you$/);
          expect(first?.corners[0]?.[0]).toBeLessThan(12);
          expect(first?.corners[0]?.[1]).toBeLessThan(2);
        }
      }),
      { numRuns: 10 },
    );
  });
});

describe('the cord as SVG', () => {
  it('has its stitches on the needles of the steps, its rounds knitted their way, a strand between any two', () => {
    fc.assert(
      fc.property(briefFile(), (file) => {
        const plan = planOf(file);
        const steps = [...allSteps(layOutJob(plan))].map(({ act }) => act);
        const svg = readSvg(standalone(cordDiagram(plan, englishWords)));
        const rows = withClass(svg, 'round');
        expect(new Set(rows.map(({ attributes }) => attributes['data-stitches']))).toEqual(
          new Set([`${plan.cord.stitches}`]),
        );
        const strands = withClass(svg, 'strand').map(({ attributes }) => attributes['data-way']);
        const slips = steps.some(({ kind }) => kind === 'set-slip');
        expect(strands).toEqual(rows.slice(1).map(() => (slips ? 'across' : 'edge')));
        const texts = textsOf(svg);
        const at = (text: string): number => texts.find((one) => one.text === text)?.corners[0]?.[0] ?? 0;
        const needles = steps.find((act) => act.kind === 'set-cord-needles');
        const knitted = steps.find((act) => act.kind === 'cord-first-row');
        if (needles?.kind !== 'set-cord-needles' || knitted?.kind !== 'cord-first-row')
          throw new Error('no cord');
        // A round starts on the side from which it is knitted; to and fro the row after the first starts where that one ended.
        const startsRight = (knitted.to === 'left') === slips;
        expect(at('1') > at(needles.last)).toBe(startsRight);
        expect(at('1') < at(needles.first)).toBe(!startsRight);
      }),
      { numRuns: 20 },
    );
  });
});

interface DrawnText {
  readonly text: string;
  readonly size: number;
  /** In the drawing's own millimetres, turned and moved as it is. */
  readonly corners: readonly (readonly [number, number])[];
}

/** Texts with the corners of their boxes, in the widest of common fonts. */
function textsOf(node: SvgNode, moves: readonly string[] = []): readonly DrawnText[] {
  const own = node.attributes.transform;
  const all = own === undefined ? moves : [...moves, own];
  if (node.name !== 'text') return node.children.flatMap((child) => textsOf(child, all));
  const { x, y, 'font-size': size, 'text-anchor': anchor } = node.attributes;
  const width = textWidth(node.text, Number(size));
  const left = Number(x) - width * (anchor === 'middle' ? 0.5 : anchor === 'end' ? 1 : 0);
  const [top, bottom] = [Number(y) - Number(size) * 0.75, Number(y) + Number(size) * 0.2];
  const box: readonly (readonly [number, number])[] = [
    [left, top],
    [left + width, top],
    [left + width, bottom],
    [left, bottom],
  ];
  return [
    {
      text: node.text,
      size: Number(size),
      corners: box.map((point) => all.toReversed().reduce(moveBy, point)),
    },
  ];
}

/** One transform of SVG: translate, or rotate about a point. */
function moveBy([x, y]: readonly [number, number], transform: string): readonly [number, number] {
  const [, kind, list = ''] = /^(\w+)\(([^)]*)\)$/.exec(transform) ?? [];
  const [a = 0, b = 0, c = 0] = list.split(/[ ,]+/).map(Number);
  if (kind === 'translate') return [x + a, y + b];
  if (kind !== 'rotate') throw new Error(`not looked for around text: ${transform}`);
  const turn = (a * Math.PI) / 180;
  const [dx, dy] = [x - b, y - c];
  return [b + dx * Math.cos(turn) - dy * Math.sin(turn), c + dx * Math.sin(turn) + dy * Math.cos(turn)];
}
