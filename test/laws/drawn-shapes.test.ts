/** The shapes of the drawings, measured with a general-purpose geometry library over bags at random. */
import { Polygon as FlatPolygon, point, segment } from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../source/planning/plan.ts';
import { bagOf } from '../../source/sheet/geometry/bag.ts';
import { bedMapOf, edgesAtRow } from '../../source/sheet/geometry/bed-map.ts';
import { drawnFolded, foldOf, panelCount } from '../../source/sheet/geometry/fold.ts';
import type { Point, Polygon } from '../../source/sheet/geometry/shape.ts';
import { stripOf } from '../../source/sheet/geometry/strip.ts';
import { stepAt } from '../../source/steps/job.ts';
import { jobOf, planOf } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import { demoNames, demoPlan } from '../fixtures/sheets.ts';
import { tries } from '../tools/tries.ts';

const overPlans = (check: (plan: Plan) => void, runs = 60): void =>
  fc.assert(
    fc.property(briefFile(), (file) => check(planOf(file))),
    { numRuns: tries(runs) },
  );

const areaOf = (polygon: Polygon): number => new FlatPolygon(polygon.map(([x, y]) => point(x, y))).area();
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const stripAreaOf = ({ stitches, rows, gauge }: Plan): number =>
  stitches * gauge.stitchMm * rows * gauge.rowMm * Math.cos(gauge.skewRad);
const near = (actual: number, wanted: number): void =>
  expect(Math.abs(actual - wanted)).toBeLessThanOrEqual(1e-6 * Math.max(1, Math.abs(wanted)));

/** Degrees between a line and the level, 0 to 90. */
function slantOf([x1, y1]: Point, [x2, y2]: Point): number {
  const { slope } = segment(point(x1, y1), point(x2, y2));
  return acute(((slope * 180) / Math.PI) % 180);
}

const acute = (degrees: number): number => Math.min(degrees, 180 - degrees);

describe('the strip', () => {
  it('has the area of its stitches and rows, whatever is knitted of it', () => {
    overPlans((plan) => {
      for (const rowsDone of [0, 1, Math.floor(plan.rows / 3), plan.rows]) {
        const { pieces, outline } = stripOf(plan, rowsDone);
        near(sum(pieces.map((piece) => areaOf(piece.shape))), stripAreaOf(plan));
        near(areaOf(outline), stripAreaOf(plan));
      }
    });
  });

  it('leans at the angle of the stripes, the way it crawls', () => {
    overPlans((plan) => {
      const [trailingStart, leadingStart, leadingEnd, trailingEnd] = stripOf(plan, 0).outline as [
        Point,
        Point,
        Point,
        Point,
      ];
      near(slantOf(leadingStart, leadingEnd), acute(plan.size.stripeAngleDeg));
      near(slantOf(trailingStart, trailingEnd), acute(plan.size.stripeAngleDeg));
      const leans =
        plan.shapings * plan.gauge.stitchMm + plan.rows * plan.gauge.rowMm * Math.sin(plan.gauge.skewRad);
      expect(Math.sign(leadingEnd[0] - leadingStart[0])).toBe(
        (plan.brief.crawl === 'right' ? 1 : -1) * Math.sign(leans),
      );
      expect(Math.sign(leadingStart[0] - trailingStart[0])).toBe(plan.brief.crawl === 'right' ? 1 : -1);
    });
  });

  it('has the stripes of the plan, each as high as its rows and as wide as its stitches', () => {
    overPlans((plan) => {
      const { pieces } = stripOf(plan, plan.rows);
      expect(pieces.map(({ stripe, yarn }) => ({ stripe, yarn }))).toEqual(
        plan.stripes.map(({ number, yarn }) => ({ stripe: number, yarn })),
      );
      for (const [i, { shape }] of pieces.entries()) {
        const ys = shape.map(([, y]) => y);
        near(
          Math.max(...ys) - Math.min(...ys),
          (plan.stripes[i]?.rows ?? 0) * plan.gauge.rowMm * Math.cos(plan.gauge.skewRad),
        );
        near(Math.abs((shape[1]?.[0] ?? 0) - (shape[0]?.[0] ?? 0)), plan.stitches * plan.gauge.stitchMm);
      }
    });
  });

  it('is filled as far as the rows done, a stripe in the middle of it in two pieces', () => {
    overPlans((plan) => {
      const rowsDone = Math.floor(plan.rows / 2) + 1;
      const knitted = stripOf(plan, rowsDone).pieces.filter((piece) => piece.knitted);
      near(sum(knitted.map((piece) => areaOf(piece.shape))), (stripAreaOf(plan) * rowsDone) / plan.rows);
    });
  });

  it('through a window shows only the rows asked for', () => {
    const plan = demoPlan('rulebook-bag');
    const { pieces, box } = stripOf(plan, 20, { fromRow: 11, throughRow: 30 });
    near(box.top, 20 * plan.gauge.rowMm);
    near(sum(pieces.map((piece) => areaOf(piece.shape))), (stripAreaOf(plan) * 20) / plan.rows);
  });
});

describe('the folded strip', () => {
  it('covers the flat bag exactly twice, front and back', () => {
    overPlans((plan) => {
      const { pieces, band } = foldOf(plan);
      for (const layer of ['front', 'back']) {
        const shapes = pieces.filter((piece) => piece.layer === layer).map((piece) => piece.folded);
        near(sum(shapes.map(areaOf)), band.widthMm * band.depthMm);
        for (const [x, y] of shapes.flat()) {
          expect(x).toBeGreaterThanOrEqual(-1e-6);
          expect(x).toBeLessThanOrEqual(band.widthMm + 1e-6);
          expect(y).toBeGreaterThanOrEqual(-1e-6);
          expect(y).toBeLessThanOrEqual(band.depthMm + 1e-6);
        }
      }
    });
  });

  it('lays its last edge along its first, point on point and in the same layer', () => {
    overPlans((plan) => {
      const { band } = foldOf(plan);
      for (const part of [0, 0.13, 0.5, 0.77, 1]) {
        const onB: Point = [band.startMm + part * band.leanMm, part * band.depthMm];
        const onA: Point = [band.mouthMm + onB[0], onB[1]];
        const folded = [onA, onB].map((at) => {
          const panel = Math.min(panelCount(band) - 1, Math.floor(at[0] / band.widthMm));
          const [x, y] = drawnFolded(band, panel, at);
          return { layer: panel % 2, at: point(x, y) };
        });
        const [a, b] = folded as [(typeof folded)[0], (typeof folded)[0]];
        expect(a.at.distanceTo(b.at)[0]).toBeLessThan(1e-6 * band.mouthMm);
        const [x] = [b.at.x];
        const isAtFold = Math.min(x, band.widthMm - x) < 1e-6 * band.mouthMm;
        if (!isAtFold) expect(a.layer).toBe(b.layer);
      }
    });
  });

  it('brings pieces that touch A and pieces that touch B together along the graft', () => {
    for (const name of demoNames) {
      const plan = demoPlan(name);
      const { pieces, graft } = foldOf(plan);
      const meeting = (stripe: number) =>
        pieces
          .filter((piece) => piece.stripe === stripe && piece.layer === 'front')
          .map((piece) => new FlatPolygon(piece.folded.map(([x, y]) => point(x, y))));
      for (const [[x1, y1], [x2, y2]] of graft) {
        const middle = point((x1 + x2) / 2, (y1 + y2) / 2);
        for (const stripe of [1, plan.stripes.length]) {
          const gap = Math.min(...meeting(stripe).map((shape) => shape.distanceTo(middle)[0]));
          expect(gap).toBeLessThan(1e-6);
        }
      }
    }
  });

  it('letters loop 1 where the tail of the closing row hangs', () => {
    overPlans((plan) => {
      const { edges, startsAtMouth, band } = foldOf(plan);
      for (const letter of ['A', 'B'] as const) {
        near(edges[letter][0][1], startsAtMouth ? band.depthMm : 0);
        near(edges[letter][1][1], startsAtMouth ? 0 : band.depthMm);
      }
      expect(startsAtMouth).toBe(plan.brief.homeSide !== plan.brief.crawl);
    });
  });
});

describe('the flat bag', () => {
  it('is as wide and as deep as planned, and its stripes cover it up to its hem', () => {
    overPlans((plan) => {
      const { widthMm, depthMm, pieces, cordMm, hem } = bagOf(plan);
      near(widthMm, plan.size.widthCm * 10);
      near(depthMm, plan.size.depthCm * 10);
      near(cordMm, plan.size.depthBelowCordCm * 10);
      const hemMm2 = hem ? areaOf(hem.shape) : 0;
      near(hemMm2, widthMm * 10 * (plan.hem?.heightCm ?? 0));
      near(sum(pieces.map((piece) => areaOf(piece.shape))) + hemMm2, widthMm * depthMm);
    });
  });

  it('has its stripes and its graft at the angle of the plan, climbing the way the work crawled', () => {
    overPlans((plan) => {
      for (const [[x1, y1], [x2, y2]] of bagOf(plan).graft) {
        if (Math.hypot(x2 - x1, y2 - y1) < 1) continue;
        near(slantOf([x1, y1], [x2, y2]), acute(plan.size.stripeAngleDeg));
        const climbs = Math.sign(90 - plan.size.stripeAngleDeg);
        expect(Math.sign((x2 - x1) * (y2 - y1))).toBe(plan.brief.crawl === 'right' ? climbs : -climbs);
      }
    });
  });

  it('shows about half of the eyelets in front, evenly spaced along the cord line', () => {
    overPlans((plan) => {
      const { eyelets, cordMm, widthMm } = bagOf(plan);
      expect(Math.abs(eyelets.length - plan.eyelets.made / 2)).toBeLessThanOrEqual(1);
      for (const { at, number } of eyelets) {
        near(at[1], cordMm);
        expect(number).toBeGreaterThanOrEqual(1);
      }
      const xs = eyelets.map(({ at }) => at[0]).toSorted((a, b) => a - b);
      const step = (widthMm * 2 * plan.brief.shapeEveryRows) / plan.rows;
      for (const [i, x] of xs.entries()) {
        const gap = x - (xs[i - 1] ?? x);
        if (i > 0) expect([1, 2].some((steps) => Math.abs(gap - steps * step) < 1e-6 * widthMm)).toBe(true);
      }
    });
  });

  it('shows the cord where it runs outside: token pouch, counted by hand', () => {
    // 7 eyelets 11.50 mm apart, the 4th passed by. The cord line starts 7.5 stitches up, 24.10 mm along. Outside run
    // intervals 0–1, 2–3, 5–6 and 7–8: from 24.10, 47.11, 81.62 and 104.63 mm. In front lie 0–46.02 and 92.03–138.05 mm,
    // so of these 11.50 + 0 + 1.09 + 11.50 mm can be seen.
    const outside = bagOf(demoPlan('token-pouch')).cordOutside.map(([[x1], [x2]]) => Math.abs(x2 - x1));
    expect(outside).toHaveLength(3);
    expect(sum(outside)).toBeCloseTo(24.1, 1);
  });
});

describe('the bed map', () => {
  it('puts every row on the needles that the steps say', () => {
    fc.assert(
      fc.property(briefFile(), fc.nat(), (file, pick) => {
        const job = jobOf(file);
        const row = 1 + (pick % job.plan.knittedRows);
        let step = 1;
        for (; step <= job.stepCount; step++) {
          const one = stepAt(job, step);
          if ((one.act.kind === 'pass' || one.act.kind === 'closing-pass') && one.row === row) break;
        }
        const { left, right } = stepAt(job, step).after;
        const edges = edgesAtRow(job.plan, row);
        expect([edges.leftName, edges.rightName]).toEqual([left, right]);
      }),
      { numRuns: tries(60) },
    );
  });

  it('hangs each hanging where the steps hang it', () => {
    overPlans((plan) => {
      for (const [i, { hung, fromRow, throughRow, last }] of bedMapOf(plan).hangings.entries()) {
        expect(hung.right - hung.left + 1).toBe(plan.stitches);
        expect(last.right - last.left + 1).toBe(plan.stitches);
        expect(throughRow).toBeGreaterThanOrEqual(fromRow);
        expect(hung.left).toBe(plan.hangings[i]?.hungLeft);
      }
    });
  });
});
