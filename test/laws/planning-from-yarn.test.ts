/** The largest bag that the weighed yarn allows, against every repeat up to it and the ones beyond. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Brief } from '../../source/planning/brief.ts';
import { type BagFromYarn, planFromYarn } from '../../source/planning/from-yarn.ts';
import { gaugeOf } from '../../source/planning/gauge.ts';
import { readBrief } from '../../source/planning/parse-brief.ts';
import type { Plan } from '../../source/planning/plan.ts';
import { planBag } from '../../source/planning/plan-bag.ts';
import { valueIn } from '../tools/result.ts';
import { tries } from '../tools/tries.ts';
import { scrapsBrief, sizedBrief } from './planning-briefs.ts';

function briefOf(file: unknown): Brief {
  return valueIn(readBrief(file));
}

/** The stitches that give a bag of `rows` the proportions of the wish, found by trying them one by one. */
function stitchesFor(brief: Brief, rows: number): number {
  const { bag, edgeStitches, shapeEveryRows } = brief;
  // The gauge itself is held against brute force in the laws of the size.
  const { stitchMm, rowMm, skewRad } = gaugeOf(brief);
  const [along, up] = [(rows / shapeEveryRows - 1) * stitchMm, rows * rowMm];
  const mouthMm = Math.hypot(along + up * Math.sin(skewRad), up * Math.cos(skewRad));
  const oneMm = (stitchMm * up * Math.cos(skewRad)) / mouthMm;
  let stitches = 2 * edgeStitches + 2;
  if (bag.by === 'counts') throw new Error('no proportions wished');
  if (bag.by === 'contents') {
    // Scaled with the width; the ease grows with the height, the thickness is closed over as it is.
    const ease = 1 + bag.easePercent / 100;
    const scale = mouthMm / (bag.girthCm * ease);
    const heightMm = scale * (bag.heightCm * ease + bag.thicknessCm);
    while ((stitches - 1.5 - edgeStitches) * oneMm < heightMm - 1e-7) stitches++;
    return stitches;
  }
  const off = (choice: number): number =>
    Math.abs((choice - 1) * oneMm - (mouthMm / 2) * (bag.depthCm / bag.widthCm));
  while (off(stitches + 1) <= off(stitches) + 1e-7) stitches++;
  return stitches;
}

/** The plan of that bag; null where the bed or the scraps do not reach. */
function shapedAt(brief: Brief, rows: number): Plan | null {
  const plan = planBag({ ...brief, bag: { by: 'counts', stitches: stitchesFor(brief, rows), rows } });
  if (!plan.ok) expect(plan.fault.code).toMatch(/^plan\/(bed-too-short|scraps-)/);
  return plan.ok ? plan.value : null;
}

const covers = (plan: Plan): boolean => plan.yarn.every(({ enough }) => enough !== false);

const overBags = (
  kind: 'size' | 'contents',
  check: (bag: BagFromYarn, brief: Brief) => void,
  runs = 150,
): void => {
  let found = 0;
  fc.assert(
    fc.property(sizedBrief(kind), (file) => {
      const brief = briefOf(file);
      const bag = planFromYarn(brief);
      if (!bag.ok) return;
      found++;
      check(bag.value, brief);
    }),
    { numRuns: tries(runs) },
  );
  expect(found).toBeGreaterThan(tries(runs) / 3);
};

describe.each(['size', 'contents'] as const)('the largest bag of a shape wished by %s', (kind) => {
  it('takes no more than there is, and the next repeat up would, or would not fit', () => {
    overBags(kind, ({ plan, limit }, brief) => {
      expect(covers(plan)).toBe(true);
      const rowMultiple = (plan.neighbours.at(-1)?.rows ?? 0) - plan.rows;
      const next = shapedAt(brief, plan.rows + rowMultiple);
      switch (limit.by) {
        case 'yarn': {
          expect(next && covers(next)).toBe(false);
          expect(next?.yarn.find(({ yarn }) => yarn === limit.yarn)?.enough).toBe(false);
          break;
        }
        case 'bed':
          expect(next).toBeNull();
          break;
        case 'width':
          expect(next?.size.widthCm).toBeGreaterThan(300);
          break;
        default:
          expect.unreachable('stripes are given');
      }
    });
  });

  it('has as many stitches as its shape asks', () => {
    overBags(kind, ({ plan }, brief) => {
      expect(plan.stitches).toBe(shapedAt(brief, plan.rows)?.stitches);
    });
  });
});

/** Once round the tube and straight across the strip, in mm, for counts by hand. */
function measure(brief: Brief, rows: number): { readonly mouthMm: number; readonly stitchMm: number } {
  const { stitchMm, rowMm, skewRad } = gaugeOf(brief);
  const [along, up] = [(rows / brief.shapeEveryRows - 1) * stitchMm, rows * rowMm];
  const mouthMm = Math.hypot(along + up * Math.sin(skewRad), up * Math.cos(skewRad));
  return { mouthMm, stitchMm: (stitchMm * up * Math.cos(skewRad)) / mouthMm };
}

/** Depth to width against the wish, and the area in cm². */
function shapeOf(brief: Brief, stitches: number, rows: number) {
  const { bag, edgeStitches } = brief;
  const { mouthMm, stitchMm } = measure(brief, rows);
  const widthMm = mouthMm / 2;
  const areaCm2 = (widthMm * (stitches - 1) * stitchMm) / 100;
  if (bag.by === 'counts') throw new Error('no proportions wished');
  if (bag.by === 'size') {
    const share = ((stitches - 1) * stitchMm) / widthMm / (bag.depthCm / bag.widthCm);
    return { share, areaCm2 };
  }
  const ease = 1 + bag.easePercent / 100;
  const wanted = (bag.heightCm * ease + bag.thicknessCm) / ((bag.girthCm / 2) * ease);
  return { share: ((stitches - 1.5 - edgeStitches) * stitchMm) / widthMm / wanted, areaCm2 };
}

/** Every bag that the bed holds and the yarn covers whose shape lies in the band; the largest of them. */
function largestIn(brief: Brief, rowMultiple: number, [least, most]: readonly [number, number]) {
  const usable = brief.bed.needles - 2 * brief.bed.marginNeedles;
  let best = { stitches: 0, rows: 0, areaCm2: 0 };
  for (let rows = rowMultiple; measure(brief, rows).mouthMm <= 2 * 3000; rows += rowMultiple) {
    if (rows < 2 * brief.shapeEveryRows) continue;
    for (let stitches = 2 * brief.edgeStitches + 2; stitches < usable; stitches++) {
      const { share, areaCm2 } = shapeOf(brief, stitches, rows);
      if (share < least || share > most || areaCm2 <= best.areaCm2 * (1 + 1e-12)) continue;
      const plan = planBag({ ...brief, bag: { by: 'counts', stitches, rows } });
      if (plan.ok && covers(plan.value)) best = { stitches, rows, areaCm2 };
    }
  }
  return best;
}

describe('near shapes', () => {
  it.each(['size', 'contents'] as const)(
    'wished by %s: are the largest of all bags up to a twentieth shallower and deeper, where they gain a fiftieth',
    (kind) => {
      let offered = 0;
      fc.assert(
        fc.property(sizedBrief(kind), (file) => {
          const brief = briefOf({ ...file, bed: { ...file.bed, needles: 70 } });
          const bag = planFromYarn(brief);
          if (!bag.ok) return;
          const { plan, nearShapes } = bag.value;
          const rowMultiple = (plan.neighbours.at(-1)?.rows ?? 0) - plan.rows;
          const kept = plan.size.widthCm * plan.size.depthCm;
          const bands = [
            [0.95, 1 - 1e-9],
            [1 + 1e-9, 1.05],
          ] as const;
          const expected = bands
            .map((band) => largestIn(brief, rowMultiple, band))
            .filter(({ areaCm2 }) => areaCm2 > 1.02 * kept)
            .sort((a, b) => b.areaCm2 - a.areaCm2);
          offered += expected.length;
          expect(nearShapes.map(({ stitches, rows }) => [stitches, rows])).toEqual(
            expected.map(({ stitches, rows }) => [stitches, rows]),
          );
          for (const [i, one] of nearShapes.entries()) {
            expect(one.areaShare).toBeCloseTo((expected[i]?.areaCm2 ?? 0) / kept, 9);
            expect(one.shapeShare).toBeCloseTo(shapeOf(brief, one.stitches, one.rows).share, 9);
            expect(one.areaShare).toBeCloseTo((one.widthCm * one.depthCm) / kept, 9);
          }
        }),
        { numRuns: tries(60) },
      );
      expect(offered).toBeGreaterThan(tries(60) / 3);
    },
  );

  it('of scraps have a sequence, and gain', () => {
    let offered = 0;
    fc.assert(
      fc.property(scrapsBrief(), (file) => {
        const brief = briefOf({ ...file, bag: { widthCm: 5, depthCm: 5 } });
        const bag = planFromYarn(brief);
        if (!bag.ok) return;
        for (const { stitches, rows, areaShare } of bag.value.nearShapes) {
          offered++;
          const plan = planBag({ ...brief, bag: { by: 'counts', stitches, rows } });
          expect(plan.ok && covers(plan.value)).toBe(true);
          expect(areaShare).toBeGreaterThan(1.02);
        }
      }),
      { numRuns: tries(300) },
    );
    expect(offered).toBeGreaterThan(tries(300) / 30);
  });
});

describe('the largest bag of scraps', () => {
  it('takes no more than there is, and no larger one that the bed holds has a sequence', () => {
    fc.assert(
      fc.property(scrapsBrief(), (file) => {
        const brief = briefOf({ ...file, bag: { widthCm: 5, depthCm: 5 } });
        const bag = planFromYarn(brief);
        if (!bag.ok) {
          expect(bag.fault.code).toMatch(/^plan\/scraps-/);
          return;
        }
        const { plan } = bag.value;
        expect(covers(plan)).toBe(true);
        const rowMultiple = (plan.neighbours.at(-1)?.rows ?? 0) - plan.rows;
        for (let more = 1; more <= 5; more++)
          expect(shapedAt(brief, plan.rows + more * rowMultiple)).toBeNull();
      }),
      { numRuns: tries(150) },
    );
  });
});

describe('a bag from its yarn, by hand', () => {
  const file = {
    name: 'From yarn',
    bed: { needles: 60, pitchMm: 6.5 },
    swatch: { stitches: 40, rows: 60, widthCm: 19.2, heightCm: 21.6 },
    bag: { stitches: 20, rows: 40 },
    yarns: { plum: { colour: '#6b2d5c', metresPer100g: 190, grams: 40 } },
    stripes: [{ yarn: 'plum', rows: 2 }],
  };
  const withPlum = (plum: object) => ({ ...file, yarns: { plum: { ...file.yarns.plum, ...plum } } });

  it('keeps the proportions of stitches and rows that were given', () => {
    const [bag, asked] = [planFromYarn(briefOf(file)), planBag(briefOf(file))];
    if (!bag.ok || !asked.ok) throw new Error('not planned');
    const { size } = bag.value.plan;
    expect(size.widthCm).toBeGreaterThan(asked.value.size.widthCm);
    expect(size.depthCm / size.widthCm).toBeCloseTo(asked.value.size.depthCm / asked.value.size.widthCm, 1);
    expect(bag.value.limit).toEqual({ by: 'yarn', yarn: 'plum' });
  });

  it('stops at the end of the bed where there is yarn for more', () => {
    const bag = planFromYarn(briefOf(withPlum({ grams: 5000 })));
    expect(bag).toMatchObject({ value: { plan: { stitches: 55 }, limit: { by: 'bed', usable: 56 } } });
  });

  it('stops at the greatest width that a brief may ask for', () => {
    const flat = { ...withPlum({ grams: 90_000 }), bag: { widthCm: 300, depthCm: 3 } };
    const bag = valueIn(planFromYarn(briefOf(flat)));
    expect(bag.limit).toEqual({ by: 'width', mostCm: 300 });
    expect(bag.plan.size.widthCm).toBeGreaterThan(299);
  });

  it('asks for weights, where no yarn has any', () => {
    const { grams: _, ...plum } = file.yarns.plum;
    expect(planFromYarn(briefOf({ ...file, yarns: { plum } }))).toMatchObject({
      fault: { code: 'plan/yarn-not-weighed' },
    });
  });

  it('says what is lacking for even the smallest', () => {
    const bag = planFromYarn(briefOf(withPlum({ grams: 1 })));
    expect(bag).toMatchObject({
      fault: { code: 'plan/yarn-for-no-bag', yarn: 'plum', smallest: { rows: 4, fitsBed: true } },
    });
  });
});

it('a boxed bottom keeps its proportion to the width', () => {
  let found = 0;
  fc.assert(
    fc.property(sizedBrief('size'), fc.double({ min: 0.05, max: 0.4, noNaN: true }), (file, share) => {
      const bag = file.bag as { readonly widthCm: number; readonly depthCm: number };
      const boxedCm = share * Math.min(bag.widthCm, bag.depthCm);
      const made = planFromYarn(briefOf({ ...file, bag: { ...bag, boxedCm } }));
      if (!made.ok) return;
      found++;
      const { brief, size, boxed } = made.value.plan;
      expect(brief.boxedCm / size.widthCm).toBeCloseTo(boxedCm / bag.widthCm, 9);
      expect(boxed?.baseWidthCm).toBeCloseTo(size.widthCm * (1 - boxedCm / bag.widthCm), 9);
    }),
    { numRuns: tries(120) },
  );
  expect(found).toBeGreaterThan(8);
});
