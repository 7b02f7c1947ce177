/**
 * A boxed bottom folded out of paper: the flat bag is cut into its parts, each is moved into space by vectors without being bent or
 * stretched, and what lies on one another there must be what the plan says is sewn. Plane and solid geometry, no source needed.
 * The corner as it lies flat on the table is measured with a geometry library (flatten-js). Things are invented.
 */

import Flatten from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BoxedBottom } from '../../source/planning/boxed.ts';
import type { Plan } from '../../source/planning/plan.ts';
import { planBag } from '../../source/planning/plan-bag.ts';
import { planWarnings } from '../../source/planning/warnings.ts';
import { planOf } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import { valueIn } from '../tools/result.ts';
import { tries } from '../tools/tries.ts';

type Vector = readonly [number, number, number];
/** A place on the flat bag: from the left side, and up from the bottom seam; and which layer. */
type Place = readonly [across: number, up: number, layer: 'front' | 'back'];

const apart = (a: Vector, b: Vector): number => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);

const boxedPlans = (check: (plan: Plan, boxed: BoxedBottom) => void): void => {
  let seen = 0;
  fc.assert(
    fc.property(briefFile(), (file) => {
      const plan = planOf(file);
      if (!plan.boxed) return;
      seen++;
      check(plan, plan.boxed);
    }),
    { numRuns: tries(200) },
  );
  expect(seen).toBeGreaterThan(10);
};

/** Parts of one layer that stay flat: each is turned as a whole, so distances within it stay. `side` 0 is the left one. */
const parts = {
  base: (_: number, layer: 'front' | 'back', at: Place): Vector => [
    at[0],
    layer === 'front' ? -at[1] : at[1],
    0,
  ],
  wall: (half: number, layer: 'front' | 'back', at: Place): Vector => [
    at[0],
    layer === 'front' ? -half : half,
    at[1] - half,
  ],
  end: (half: number, layer: 'front' | 'back', at: Place): Vector => [
    half,
    layer === 'front' ? -at[0] : at[0],
    at[1] - half,
  ],
};

describe('a boxed bottom', () => {
  it('folds out of the flat bag: parts keep their shape, meet at their edges, and the corner seam joins what lies together', () => {
    boxedPlans(({ size }, boxed) => {
      const half = boxed.fromTipCm;
      const [left, right, top] = [half, size.widthCm - half, size.depthCm];
      for (const layer of ['front', 'back'] as const) {
        const at = (part: keyof typeof parts, across: number, up: number): Vector =>
          parts[part](half, layer, [across, up, layer]);
        // Unbent: corners of each part are as far apart in space as on the flat bag.
        const corners: readonly (readonly [keyof typeof parts, number, number])[] = [
          ['base', left, 0],
          ['base', right, half],
          ['wall', left, half],
          ['wall', right, top],
          ['end', 0, half],
          ['end', left, top],
        ];
        for (const [one, x1, y1] of corners)
          for (const [other, x2, y2] of corners)
            if (one === other)
              expect(apart(at(one, x1, y1), at(other, x2, y2))).toBeCloseTo(Math.hypot(x2 - x1, y2 - y1), 9);
        for (const share of [0, 0.3, 1]) {
          // Base and wall meet along the front; wall and end along an upright.
          const x = left + share * (right - left);
          const y = half + share * (top - half);
          expect(apart(at('base', x, half), at('wall', x, half))).toBeCloseTo(0, 9);
          expect(apart(at('wall', left, y), at('end', left, y))).toBeCloseTo(0, 9);
          // Sewn together: what is so far from the bottom seam lies on what is so far from the side's fold.
          expect(apart(at('base', left, share * half), at('end', share * half, half))).toBeCloseTo(0, 9);
        }
        // Both layers meet on the bottom seam and on the side's fold.
        expect(parts.base(half, 'front', [left, 0, 'front'])[1]).toBeCloseTo(0, 9);
        expect(parts.end(half, 'back', [0, top, 'back'])[1]).toBeCloseTo(0, 9);
      }
      const front = parts.base(half, 'front', [left, half, 'front']);
      const back = parts.base(half, 'back', [left, half, 'back']);
      const other = parts.base(half, 'front', [right, half, 'front']);
      expect(apart(front, back)).toBeCloseTo(boxed.baseDepthCm, 9);
      expect(apart(front, back)).toBeCloseTo(boxed.cornerSeamCm, 9);
      expect(apart(front, other)).toBeCloseTo(boxed.baseWidthCm, 9);
      const rim = parts.wall(half, 'front', [left, top, 'front']);
      expect(rim[2]).toBeCloseTo(boxed.sideCm, 9);
      expect(boxed.sideCm - boxed.sideBelowCordCm).toBeCloseTo(size.depthCm - size.depthBelowCordCm, 9);
      expect(2 * (apart(front, back) + apart(front, other))).toBeCloseTo(size.mouthCm, 9);
    });
  });

  it('uses the whole cloth: base, walls and the four flaps of the corners are the flat bag', () => {
    boxedPlans(({ size }, boxed) => {
      const flap = new Flatten.Polygon([
        new Flatten.Point(0, 0),
        new Flatten.Point(boxed.fromTipCm, boxed.cornerSeamCm / 2),
        new Flatten.Point(boxed.fromTipCm, -boxed.cornerSeamCm / 2),
      ]);
      const base = boxed.baseWidthCm * boxed.baseDepthCm;
      const walls = 2 * (boxed.baseWidthCm + boxed.baseDepthCm) * boxed.sideCm;
      expect((base + walls + 4 * flap.area()) / (2 * size.widthCm * size.depthCm)).toBeCloseTo(1, 9);
    });
  });

  it('is sewn across where the corner, laid flat, is as wide as the base is deep', () => {
    boxedPlans((_, boxed) => {
      // The right angle between seam and side is halved, since one lies on the other: the folds run at 45° to the seam.
      const fold = (degrees: number): Flatten.Line => {
        const turn = (degrees * Math.PI) / 180;
        return new Flatten.Line(new Flatten.Point(0, 0), new Flatten.Point(Math.cos(turn), Math.sin(turn)));
      };
      const across = new Flatten.Line(
        new Flatten.Point(boxed.fromTipCm, 0),
        new Flatten.Point(boxed.fromTipCm, 1),
      );
      const [one, other] = [45, -45].map((degrees) => across.intersect(fold(degrees))[0] as Flatten.Point);
      expect(one?.distanceTo(other as Flatten.Point)[0]).toBeCloseTo(boxed.cornerSeamCm, 9);
    });
  });
});

interface Thing {
  readonly long: number;
  readonly thick: number;
  readonly heightCm: number;
}

const thing = fc.record({
  long: fc.double({ min: 2, max: 14, noNaN: true }),
  thick: fc.double({ min: 1.5, max: 14, noNaN: true }),
  heightCm: fc.double({ min: 1.5, max: 20, noNaN: true }),
});

/** Fine stitches, so that whole ones lie close together; no ease, so that nothing is given away. */
const planFor = ({ long, thick, heightCm }: Thing, boxedCm: number): Plan =>
  planOf({
    name: 'Close bag',
    bed: { needles: 400, pitchMm: 2.5, marginNeedles: 0 },
    swatch: { stitches: 40, rows: 60, widthCm: 8, heightCm: 9 },
    bag: {
      contents: { girthCm: 2 * (long + thick), heightCm, thicknessCm: Math.min(long, thick), easePercent: 0 },
      boxedCm,
    },
    yarns: { plum: { colour: '#6b2d5c', metresPer100g: 700 } },
    stripes: [{ yarn: 'plum', rows: 2 }],
  });

const hair = 1e-6;

describe('a box in a bag with a boxed bottom', () => {
  it('stands on the base, and the cloth goes under it, up and over; with a stitch less it would not', () => {
    fc.assert(
      fc.property(thing, fc.double({ min: 0, max: 8, noNaN: true }), (box, deeper) => {
        const boxedCm = Math.min(box.long, box.thick) + deeper;
        const plan = planFor(box, boxedCm);
        const { baseWidthCm = 0, baseDepthCm = 0 } = plan.boxed ?? {};
        const fits = (a: number, b: number): boolean => a <= baseWidthCm + hair && b <= baseDepthCm + hair;
        expect(fits(box.long, box.thick) || fits(box.thick, box.long)).toBe(true);
        // Half the base under it, its height, and half the depth of the bag to close.
        const needed = boxedCm / 2 + box.heightCm + boxedCm / 2;
        expect(plan.size.depthBelowCordCm).toBeGreaterThan(needed - hair);
        const { brief, stitches, rows } = plan;
        const less = valueIn(planBag({ ...brief, bag: { by: 'counts', stitches: stitches - 1, rows } }));
        expect(less.size.depthBelowCordCm).toBeLessThan(needed);
        expect(planWarnings(plan).map(({ code }) => code)).not.toContain('plan/base-too-narrow');
      }),
      { numRuns: tries(200) },
    );
  });

  it('is told that it cannot stand on a base that is not as deep as it is thick', () => {
    const warnings = planWarnings(planFor({ long: 8, thick: 6, heightCm: 9 }, 5));
    expect(warnings).toContainEqual({ code: 'plan/base-too-narrow', boxedCm: 5, thicknessCm: 6 });
  });

  it('is taken to be as thick as the base where nothing is said', () => {
    const { brief, size } = planOf({
      name: 'Close bag',
      bed: { needles: 400, pitchMm: 2.5, marginNeedles: 0 },
      swatch: { stitches: 40, rows: 60, widthCm: 8, heightCm: 9 },
      bag: { contents: { girthCm: 30, heightCm: 12, easePercent: 0 }, boxedCm: 5 },
      yarns: { plum: { colour: '#6b2d5c', metresPer100g: 700 } },
      stripes: [{ yarn: 'plum', rows: 2 }],
    });
    expect(brief.bag).toMatchObject({ thicknessCm: 5 });
    expect(size.wantedWidthCm).toBe(15);
    expect(size.wantedDepthBelowCordCm).toBe(17);
  });
});
