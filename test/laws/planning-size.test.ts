/** The size of a bag against brute force: every count of rows and stitches tried, measured by a geometry library. */

import Flatten from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readBrief } from '../../source/planning/parse-brief.ts';
import type { Plan } from '../../source/planning/plan.ts';
import { planBag } from '../../source/planning/plan-bag.ts';
import { planWarnings } from '../../source/planning/warnings.ts';
import { valueIn } from '../tools/result.ts';
import { tries } from '../tools/tries.ts';
import { type SizedBrief, sizedBrief } from './planning-briefs.ts';

/** Plans of random briefs; those whose bed is too short say so, and are passed over. */
function overPlans(
  kind: 'size' | 'contents',
  runs: number,
  check: (plan: Plan, file: SizedBrief) => void,
): void {
  let planned = 0;
  fc.assert(
    fc.property(sizedBrief(kind), (file) => {
      const brief = valueIn(readBrief(file));
      const plan = planBag(brief);
      if (plan.ok) {
        planned++;
        check(plan.value, file);
      } else expect(plan.fault.code).toBe('plan/bed-too-short');
    }),
    { numRuns: tries(runs) },
  );
  expect(planned).toBeGreaterThan(tries(runs) / 2);
}

/** Wales and courses times the loop length, by how a piece has rested (Munden 1959, Knapton and others 1968). */
const rested = {
  'dry-relaxed': { wales: 3.8, courses: 5.0 },
  'wet-relaxed': { wales: 4.1, courses: 5.3 },
  'fully-relaxed': { wales: 4.2, courses: 5.5 },
} as const;

/** In the state in which the bag is used. */
const stitchCm = ({ swatch, finishState }: SizedBrief): number =>
  ((swatch.widthCm / swatch.stitches) * rested[swatch.state].wales) / rested[finishState].wales;
const rowCm = ({ swatch, finishState }: SizedBrief): number =>
  ((swatch.heightCm / swatch.rows) * rested[swatch.state].courses) / rested[finishState].courses;

/** Up a column of stitches, as it leans on the flat cloth; x grows towards the leading edge. */
function columnOf(file: SizedBrief, rows: number): Flatten.Vector {
  const { asideCm = 0, heightCm } = file.swatch;
  const leans = (file.crawl === 'left' ? 1 : -1) * (asideCm / heightCm);
  return new Flatten.Vector(leans, 1).normalize().multiply(rows * rowCm(file));
}

/** Once round the tube: where the first loop of an edge lies, and where the graft brings it back to itself. */
function onceRound(file: SizedBrief, rows: number): Flatten.Segment {
  const moves = rows / file.shapeEveryRows - 1;
  return new Flatten.Segment(
    new Flatten.Point(0, 0),
    new Flatten.Point(moves * stitchCm(file), 0).translate(columnOf(file, rows)),
  );
}

const flatWidthCm = (file: SizedBrief, rows: number): number => onceRound(file, rows).length / 2;

/** How far `stitches` stitches along a row take us from the edge, straight across the strip. */
function acrossCm(file: SizedBrief, rows: number, stitches: number): number {
  const edge = onceRound(file, rows);
  const line = new Flatten.Line(edge.start, edge.end);
  return new Flatten.Point(stitches * stitchCm(file), 0).distanceTo(line)[0];
}

/** All rows that are whole repeats and whole shaping intervals with a move among them, up to far beyond `widthCm`. */
function allRows(file: SizedBrief, widthCm: number): readonly number[] {
  const repeat = file.stripes.reduce((sum, { rows }) => sum + rows, 0);
  const choices: number[] = [];
  for (let rows = repeat; ; rows += repeat) {
    if (rows % file.shapeEveryRows !== 0 || rows === file.shapeEveryRows) continue;
    choices.push(rows);
    if (choices.length > 1 && flatWidthCm(file, rows) > 2 * widthCm) return choices;
  }
}

const hair = 1e-6;

describe('a bag of a wanted size', () => {
  it('has the width nearest to the wish', () => {
    overPlans('size', 2000, ({ rows, size }, file) => {
      const wanted = size.wantedWidthCm ?? 0;
      const off = (choice: number): number => Math.abs(flatWidthCm(file, choice) - wanted);
      const choices = allRows(file, wanted);
      const best = Math.min(...choices.map(off));
      expect(choices).toContain(rows);
      expect(off(rows)).toBeLessThan(best + hair);
      expect(size.widthCm).toBeCloseTo(flatWidthCm(file, rows), 9);
    });
  });

  it('has the larger of two widths that are as near', () => {
    overPlans('size', 100, ({ rows, brief, neighbours }, file) => {
      const larger = neighbours.find((one) => one.rows > rows)?.rows ?? 0;
      const widthCm = (flatWidthCm(file, rows) + flatWidthCm(file, larger)) / 2;
      const between = planBag({ ...brief, bag: { by: 'size', widthCm, depthCm: 3 } });
      expect(between).toMatchObject({ value: { rows: larger } });
    });
  });

  it('has the depth nearest to the wish, of as many stitches as two moving edges need', () => {
    overPlans('size', 500, ({ rows, stitches, size }, file) => {
      const wanted = size.wantedDepthCm ?? 0;
      const least = 2 * file.edgeStitches + 2;
      const off = (choice: number): number => Math.abs(acrossCm(file, rows, choice - 1) - wanted);
      for (let choice = least; choice <= stitches + 60; choice++)
        expect(off(stitches)).toBeLessThan(off(choice) + hair);
      expect(stitches).toBeGreaterThanOrEqual(least);
      expect(size.depthCm).toBeCloseTo(acrossCm(file, rows, stitches - 1), 9);
    });
  });
});

describe('a bag for what goes inside', () => {
  it('holds it with its ease, and no bag of fewer rows or stitches would', () => {
    overPlans('contents', 2000, ({ rows, stitches, brief }, file) => {
      if (brief.bag.by !== 'contents') throw new Error('planned by another wish');
      const { girthCm, heightCm, easePercent } = brief.bag;
      const thicknessCm = file.bag.contents?.thicknessCm ?? girthCm / Math.PI;
      const ease = 1 + easePercent / 100;
      const goesRound = (choice: number): boolean => flatWidthCm(file, choice) > (girthCm / 2) * ease - hair;
      const closesOver = (choice: number): boolean =>
        acrossCm(file, rows, choice - 1 - file.edgeStitches - 0.5) > heightCm * ease + thicknessCm - hair;
      const wideEnough = allRows(file, girthCm).filter(goesRound);
      expect(rows).toBe(wideEnough[0]);
      const least = 2 * file.edgeStitches + 2;
      expect(closesOver(stitches)).toBe(true);
      for (let fewer = stitches - 1; fewer >= least; fewer--) expect(closesOver(fewer)).toBe(false);
    });
  });
});

describe('a bag with a boxed bottom for what goes inside', () => {
  it('goes round it, stands it on its base and closes over it, and no bag of fewer rows or stitches would', () => {
    fc.assert(
      fc.property(sizedBrief('contents'), fc.double({ min: 0.5, max: 15, noNaN: true }), (file, boxedCm) => {
        const read = valueIn(readBrief({ ...file, bag: { ...file.bag, boxedCm } }));
        const plan = planBag(read);
        if (!plan.ok) {
          expect(plan.fault.code).toBe('plan/bed-too-short');
          return;
        }
        const { rows, stitches, brief } = plan.value;
        if (brief.bag.by !== 'contents') throw new Error('planned by another wish');
        const { girthCm, heightCm, easePercent } = brief.bag;
        const told: SizedBrief['bag'] = file.bag;
        const thickCm = told.contents?.thicknessCm ?? boxedCm;
        const ease = 1 + easePercent / 100;
        // A box so thick and so far round is as long as this; nothing of that girth and thickness is shorter, nor shorter than thick.
        const longCm = Math.max(girthCm / 2 - thickCm, thickCm);
        const stands = (widthCm: number): boolean =>
          widthCm - boxedCm > longCm - hair ||
          (boxedCm > longCm - hair && widthCm - boxedCm > thickCm - hair);
        const holds = (choice: number): boolean => {
          const widthCm = flatWidthCm(file, choice);
          return widthCm > (girthCm / 2) * ease - hair && stands(widthCm);
        };
        const closesOver = (choice: number): boolean =>
          acrossCm(file, rows, choice - 1 - file.edgeStitches - 0.5) >
          heightCm * ease + Math.max(thickCm, boxedCm) - hair;
        expect(rows).toBe(allRows(file, girthCm + boxedCm + thickCm).find(holds));
        expect(closesOver(stitches)).toBe(true);
        for (let fewer = stitches - 1; fewer >= 2 * file.edgeStitches + 2; fewer--)
          expect(closesOver(fewer)).toBe(false);
        const isNarrow = planWarnings(plan.value).some(({ code }) => code === 'plan/base-too-narrow');
        expect(isNarrow).toBe(thickCm > boxedCm);
      }),
      { numRuns: tries(400) },
    );
  });
});

describe('the neighbours of a bag', () => {
  it('are one repeat down and up, and lie on both sides of it', () => {
    overPlans('size', 300, ({ rows, neighbours, size }, file) => {
      const choices = allRows(file, size.widthCm);
      const at = choices.indexOf(rows);
      expect(neighbours.map((one) => one.rows)).toEqual(
        [choices[at - 1], choices[at + 1]].filter((choice) => choice !== undefined),
      );
      for (const one of neighbours) {
        expect(one.widthCm).toBeCloseTo(flatWidthCm(file, one.rows), 9);
        expect(one.widthCm < size.widthCm).toBe(one.rows < rows);
      }
    });
  });
});
