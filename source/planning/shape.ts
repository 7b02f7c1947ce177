/** A wish taken for a shape: the proportion of depth to width, which bags of any size can have. */
import { fail, type Result, succeed } from '../shared/result.ts';
import type { BagWish, Brief } from './brief.ts';
import { chooseRows, contentsDepthCm, contentsWidthCm, leastStitchesOf } from './choose-size.ts';
import type { PlanFault } from './fault.ts';
import type { Gauge } from './gauge.ts';
import { type Counts, depthBelowCordCm, depthCm, widthCm } from './geometry.ts';
import { countsFor } from './neighbours.ts';

/** As wide as a brief may ask for. */
export const mostWidthCm = 300;

/** A wish that can be scaled. */
export type ShapeWish = Exclude<BagWish, { readonly by: 'counts' }>;

/** The wish as a size that can be scaled; counts are taken for the size that they give. */
export function shapeOf(brief: Brief, gauge: Gauge): Result<ShapeWish, PlanFault> {
  const { bag } = brief;
  if (bag.by !== 'counts') return succeed(bag);
  const least = leastStitchesOf(brief);
  if (bag.stitches < least) return fail({ code: 'plan/too-few-stitches', stitches: bag.stitches, least });
  const rows = chooseRows(brief, gauge);
  if (!rows.ok) return rows;
  const counts = countsFor(brief, gauge, rows.value);
  return succeed({ by: 'size', widthCm: widthCm(counts, gauge), depthCm: depthCm(counts, gauge) });
}

export type Shaped = Brief & { readonly bag: ShapeWish };

/** Counts for `rows` round the tube, the depth in the same proportion to the width as in the wish. */
export function countsAt(shaped: Shaped, gauge: Gauge, rows: number): Counts {
  const { bag } = shaped;
  const gotCm = widthCm({ rows, shapeEveryRows: shaped.shapeEveryRows }, gauge);
  const wish: ShapeWish =
    bag.by === 'size'
      ? { ...bag, depthCm: (bag.depthCm * gotCm) / bag.widthCm }
      : {
          ...bag,
          heightCm: (bag.heightCm * gotCm) / contentsWidthCm(bag),
          thicknessCm: (bag.thicknessCm * gotCm) / contentsWidthCm(bag),
        };
  return countsFor({ ...shaped, bag: wish }, gauge, rows);
}

/** How deep a bag is for its width, against the wish: 1 has its shape, 1.05 is a twentieth deeper. */
export function shapeShare({ bag, edgeStitches }: Shaped, gauge: Gauge, counts: Counts): number {
  const gotCm = widthCm(counts, gauge);
  return bag.by === 'size'
    ? depthCm(counts, gauge) / gotCm / (bag.depthCm / bag.widthCm)
    : depthBelowCordCm(counts, edgeStitches, gauge) / gotCm / (contentsDepthCm(bag) / contentsWidthCm(bag));
}
