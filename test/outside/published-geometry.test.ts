/** The strip and the tube drawn with a geometry library (flatten-js), and measured there. */
import Flatten from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../source/planning/plan.ts';
import { planOf } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import { tries } from '../tools/tries.ts';

const point = (xMm: number, yMm: number): Flatten.Point => new Flatten.Point(xMm, yMm);

/** So many moves and rows further along an edge, the columns leaning towards the leading one. */
const onceRound = ({ shapings, rows, gauge }: Pick<Plan, 'shapings' | 'rows' | 'gauge'>): Flatten.Vector =>
  new Flatten.Vector(
    shapings * gauge.stitchMm + rows * gauge.rowMm * Math.sin(gauge.skewRad),
    rows * gauge.rowMm * Math.cos(gauge.skewRad),
  );

/** The strip flat on the table, rows across and first row at the bottom, crawling to the right. */
function drawStrip({ stitches, rows, shapings, gauge }: Plan) {
  const width = stitches * gauge.stitchMm;
  const top = rows * gauge.rowMm * Math.cos(gauge.skewRad);
  const shift = shapings * gauge.stitchMm + rows * gauge.rowMm * Math.sin(gauge.skewRad);
  const outline = new Flatten.Polygon([
    point(0, 0),
    point(width, 0),
    point(width + shift, top),
    point(shift, top),
  ]);
  const bottomEdge = new Flatten.Segment(point(0, 0), point(shift, top));
  const mouthEdge = new Flatten.Segment(point(width, 0), point(width + shift, top));
  return { outline, bottomEdge, mouthEdge };
}

/** A hem stands above the strip. */
const stripDepthCm = ({ size, hem }: Plan): number => size.depthCm - (hem?.heightCm ?? 0);

const lineOf = ({ start, end }: Flatten.Segment): Flatten.Line => new Flatten.Line(start, end);

const overPlans = (check: (plan: Plan) => void): void =>
  fc.assert(
    fc.property(briefFile(), (file) => check(planOf(file))),
    { numRuns: tries(500) },
  );

describe('a strip drawn to scale', () => {
  it('has the mouth for its slanting edge, and half of it for the width of the bag', () => {
    overPlans((plan) => {
      const { mouthEdge, outline } = drawStrip(plan);
      expect(plan.size.mouthCm).toBeCloseTo(mouthEdge.length / 10, 9);
      expect(plan.size.widthCm).toBeCloseTo(mouthEdge.length / 20, 9);
      const perimeter = [...outline.edges].reduce((sum: number, edge: Flatten.Edge) => sum + edge.length, 0);
      const acrossMm = plan.stitches * plan.gauge.stitchMm;
      expect(20 * plan.size.mouthCm + 2 * acrossMm).toBeCloseTo(perimeter, 6);
    });
  });

  it('has its depth between the edges, less the stitch that the seam takes', () => {
    overPlans((plan) => {
      const { mouthEdge } = drawStrip(plan);
      const seam = point(plan.gauge.stitchMm, 0);
      expect(stripDepthCm(plan)).toBeCloseTo(seam.distanceTo(lineOf(mouthEdge))[0] / 10, 9);
    });
  });

  it('covers as much as width and depth say, the seam allowance with it', () => {
    overPlans((plan) => {
      const { size, stitches } = plan;
      const unsewnCm = (stripDepthCm(plan) * stitches) / (stitches - 1);
      expect(2 * size.widthCm * unsewnCm).toBeCloseTo(Math.abs(drawStrip(plan).outline.area()) / 100, 6);
    });
  });

  it('has the cord half a stitch past the edge stitches', () => {
    overPlans((plan) => {
      const { stitchMm } = plan.gauge;
      const eyelet = point((plan.stitches - plan.brief.edgeStitches - 0.5) * stitchMm, 0);
      const seam = new Flatten.Line(point(stitchMm, 0), point(stitchMm, 0).translate(onceRound(plan)));
      expect(plan.size.depthBelowCordCm).toBeCloseTo(eyelet.distanceTo(seam)[0] / 10, 9);
    });
  });

  it('has its rows, and so its stripes, at the planned angle to the bottom', () => {
    overPlans((plan) => {
      const { bottomEdge } = drawStrip(plan);
      const row = new Flatten.Vector(point(0, 0), point(1, 0));
      const angle = row.angleTo(new Flatten.Vector(bottomEdge.start, bottomEdge.end));
      expect(plan.size.stripeAngleDeg).toBeCloseTo((angle * 180) / Math.PI, 9);
    });
  });

  it('has its eyelets and its widest gap where they lie on the edge', () => {
    overPlans(({ eyelets, shapings, rows, gauge, brief }) => {
      const once = onceRound({ shapings, rows, gauge });
      const holes = eyelets.used.map((hole) =>
        point(0, 0).translate(onceRound({ shapings: hole, rows: hole * brief.shapeEveryRows, gauge })),
      );
      const [first] = holes;
      if (!first) return;
      const gaps = holes.map((hole, i) => hole.distanceTo(holes[i + 1] ?? first.translate(once))[0]);
      expect(eyelets.widestGapCm).toBeCloseTo(Math.max(...gaps) / 10, 9);
      if (eyelets.used.at(-1) === shapings && eyelets.used[0] === 1)
        expect(gaps.at(-1)).toBeCloseTo(eyelets.graftGapCm * 10, 9);
      expect(eyelets.used.length % 2).toBe(0);
      for (const [i, gapCm] of eyelets.gapsCm.entries()) expect(gaps[i]).toBeCloseTo(gapCm * 10, 9);
      if (eyelets.skipped.length === 0 && holes.length > 1)
        expect(gaps[0]).toBeCloseTo(eyelets.spacingCm * 10, 9);
    });
  });
});
