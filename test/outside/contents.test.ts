/**
 * What goes inside, laid in the bag: the cloth leaves the flat bottom seam, goes under half the thing, up its side, and over half
 * of it to where the cord closes. Sections of solids are drawn with a geometry library (flatten-js) or integrated; the rule
 * itself is plane geometry. Things are invented.
 */
import Flatten from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../source/planning/plan.ts';
import { planBag } from '../../source/planning/plan-bag.ts';
import { planOf } from '../fixtures/plan-of.ts';
import { valueIn } from '../tools/result.ts';
import { tries } from '../tools/tries.ts';

interface Contents {
  readonly girthCm: number;
  readonly heightCm: number;
  readonly thicknessCm?: number;
}

/** Fine stitches, so that whole ones lie close together; no ease, so that nothing is given away. */
const planFor = (contents: Contents): Plan =>
  planOf({
    name: 'Close bag',
    bed: { needles: 400, pitchMm: 2.5, marginNeedles: 0 },
    swatch: { stitches: 40, rows: 60, widthCm: 8, heightCm: 9 },
    bag: { contents: { ...contents, easePercent: 0 } },
    yarns: { plum: { colour: '#6b2d5c', metresPer100g: 700 } },
    stripes: [{ yarn: 'plum', rows: 2 }],
  });

const oneStitchLess = ({ brief, stitches, rows }: Plan): Plan => {
  return valueIn(planBag({ ...brief, bag: { by: 'counts', stitches: stitches - 1, rows } }));
};

const perimeter = (outline: Flatten.Polygon): number =>
  [...outline.edges].reduce((sum: number, edge: Flatten.Edge) => sum + edge.length, 0);

const rectangle = (width: number, height: number): Flatten.Polygon =>
  new Flatten.Polygon(new Flatten.Box(0, 0, width, height));

const circle = (radius: number): Flatten.Polygon =>
  new Flatten.Polygon(new Flatten.Circle(new Flatten.Point(0, 0), radius));

const side = fc.double({ min: 1.5, max: 9, noNaN: true });
const hair = 1e-6;

/** From the seam to the closing along one side is half of the outline of a section straight across the seam. */
const halfOutline = (outline: Flatten.Polygon): number => perimeter(outline) / 2;

describe('a box in the bag', () => {
  it('is gone round and closed over, and would not be with a stitch less', () => {
    fc.assert(
      fc.property(side, side, side, (one, other, heightCm) => {
        const [long, thicknessCm] = [Math.max(one, other), Math.min(one, other)];
        const girthCm = perimeter(rectangle(long, thicknessCm));
        const plan = planFor({ girthCm, heightCm, thicknessCm });
        const needed = halfOutline(rectangle(thicknessCm, heightCm));
        expect(plan.size.mouthCm).toBeGreaterThan(girthCm - hair);
        expect(plan.size.depthBelowCordCm).toBeGreaterThan(needed - hair);
        expect(oneStitchLess(plan).size.depthBelowCordCm).toBeLessThan(needed);
      }),
      { numRuns: tries(200) },
    );
  });

  it('of 5 cm each way needs 10 cm below the cord, not 5', () => {
    const { size } = planFor({ girthCm: 20, heightCm: 5, thicknessCm: 5 });
    expect(size.depthBelowCordCm).toBeGreaterThan(10 - hair);
    expect(size.depthBelowCordCm).toBeLessThan(10.3);
  });
});

describe('a round thing in the bag, its thickness not told', () => {
  it('a tin is closed over along every section, and would not be with a stitch less', () => {
    fc.assert(
      fc.property(side, side, (radius, heightCm) => {
        const girthCm = perimeter(circle(radius));
        const plan = planFor({ girthCm, heightCm });
        const sections = [0, 0.3, 0.7, 0.95].map((share) => {
          const chord = 2 * radius * Math.sqrt(1 - share ** 2);
          return halfOutline(rectangle(chord, heightCm));
        });
        for (const needed of sections) expect(plan.size.depthBelowCordCm).toBeGreaterThan(needed - hair);
        expect(oneStitchLess(plan).size.depthBelowCordCm).toBeLessThan(Math.max(...sections));
      }),
      { numRuns: tries(200) },
    );
  });

  it('a ball has room: the cloth needs half round it, and has four radii', () => {
    fc.assert(
      fc.property(side, (radius) => {
        const girthCm = perimeter(circle(radius));
        const { size } = planFor({ girthCm, heightCm: 2 * radius });
        expect(size.mouthCm).toBeGreaterThan(girthCm - hair);
        expect(size.depthBelowCordCm).toBeGreaterThan(halfOutline(circle(radius)));
        expect(size.depthBelowCordCm / radius).toBeGreaterThan(4 - hair);
        expect(size.depthBelowCordCm / radius).toBeLessThan(4.3);
        // Front and back of the bag below the cord cover the ball: 4πr².
        expect(2 * size.widthCm * size.depthBelowCordCm).toBeGreaterThan(4 * Math.PI * radius ** 2);
      }),
      { numRuns: tries(200) },
    );
  });

  it('anything turned, from a spindle to a tin, is closed over', () => {
    const bulge = fc.double({ min: 1, max: 30, noNaN: true });
    fc.assert(
      fc.property(side, side, bulge, (radius, heightCm, power) => {
        const plan = planFor({ girthCm: 2 * Math.PI * radius, heightCm });
        expect(plan.size.depthBelowCordCm).toBeGreaterThan(meridian(radius, heightCm, power) - hair);
      }),
      { numRuns: tries(200) },
    );
  });

  it('the integral is right for a ball and for two cones', () => {
    expect(meridian(3, 6, 2)).toBeCloseTo(Math.PI * 3, 3);
    expect(meridian(3, 8, 1)).toBeCloseTo(2 * Math.hypot(3, 4), 6);
  });
});

/**
 * Along a surface of revolution from bottom to top, (r/R)^p + (|z|/(H/2))^p = 1: two cones with p = 1, an ellipsoid with 2, nearly a
 * cylinder with 30. In small chords, at angles that crowd where the curve turns.
 */
function meridian(radius: number, heightCm: number, power: number): number {
  const at = (angle: number): readonly [number, number] => {
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    const turned = (value: number): number => Math.sign(value) * Math.abs(value) ** (2 / power);
    return [radius * turned(Math.max(0, cos)), (heightCm / 2) * turned(sin)];
  };
  const parts = 20_000;
  let length = 0;
  let [r, z] = [0, -heightCm / 2];
  for (let part = 0; part <= parts; part++) {
    const [nextR, nextZ] = at(-Math.PI / 2 + (Math.PI * part) / parts);
    length += Math.hypot(nextR - r, nextZ - z);
    [r, z] = [nextR, nextZ];
  }
  return length;
}
