/** How often the work is hung, and what would save a hanging, against every way of doing it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Brief } from '../../source/planning/brief.ts';
import { readBrief } from '../../source/planning/parse-brief.ts';
import type { Plan } from '../../source/planning/plan.ts';
import { planBag, planRows } from '../../source/planning/plan-bag.ts';
import { planOf } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import { valueIn } from '../tools/result.ts';
import { tries } from '../tools/tries.ts';
import { sizedBrief } from './planning-briefs.ts';

interface Strip {
  readonly rows: number;
  readonly shapeEveryRows: number;
  /** Needles beyond the stitches, within the margins. */
  readonly room: number;
}

/**
 * The fewest hangings of all sequences of rehangs: off after any even row, when the carriage is home, and before the move of
 * that row. Worked out row by row, every earlier rehang tried.
 */
function fewestOf({ rows, shapeEveryRows, room }: Strip): number {
  const movesBefore = (row: number): number => Math.floor((row - 1) / shapeEveryRows);
  /** By last row of a hanging: the fewest hangings that come so far. */
  const fewest = new Map<number, number>([[0, 0]]);
  const ends = Array.from({ length: rows - 1 }, (_, i) => i + 1).filter(
    (row) => row % 2 === 0 || row === rows - 1,
  );
  for (const end of ends) {
    const from = [...fewest].filter(
      ([start]) => movesBefore(end) - (start === 0 ? 0 : movesBefore(start)) <= room,
    );
    if (from.length > 0) fewest.set(end, 1 + Math.min(...from.map(([, hangings]) => hangings)));
  }
  return fewest.get(rows - 1) ?? Number.POSITIVE_INFINITY;
}

const roomOf = ({ bed }: Brief, stitches: number): number => bed.needles - 2 * bed.marginNeedles - stitches;

const stripOf = ({ brief, rows, stitches }: Plan): Strip => ({
  rows,
  shapeEveryRows: brief.shapeEveryRows,
  room: roomOf(brief, stitches),
});

/** Small beds, so that most bags hang more than once. */
const tightBrief = () =>
  fc.tuple(briefFile(), fc.integer({ min: 1, max: 6 })).map(([file, room]) => {
    const { bag, bed } = file as { bag: { stitches: number }; bed: { marginNeedles: number } };
    const needles = Math.max(10, bag.stitches + room + 2 * bed.marginNeedles);
    return { ...file, bed: { ...bed, needles } };
  });

const overTight = (check: (plan: Plan) => void): void => {
  let rehung = 0;
  fc.assert(
    fc.property(tightBrief(), (file) => {
      const plan = planOf(file);
      if (plan.hangings.length > 1) rehung++;
      check(plan);
    }),
    { numRuns: tries(400) },
  );
  expect(rehung).toBeGreaterThan(tries(400) / 2);
};

describe('the work', () => {
  it('is hung as few times as can be', () => {
    overTight((plan) => expect(plan.hangings).toHaveLength(fewestOf(stripOf(plan))));
  });
});

describe('what saves a hanging', () => {
  it('has the size and the hangings of the bag that is planned so', () => {
    overTight(({ brief, savings }) => {
      for (const { by, stitches, rows, shapeEveryRows, ...told } of savings) {
        const other = valueIn(planBag({ ...brief, shapeEveryRows, bag: { by: 'counts', stitches, rows } }));
        expect(other.hangings).toHaveLength(told.hangings);
        expect(other.size.widthCm).toBeCloseTo(told.widthCm, 9);
        expect(other.size.depthCm).toBeCloseTo(told.depthCm, 9);
        expect(by === 'rarer-moves').toBe(shapeEveryRows !== brief.shapeEveryRows);
      }
    });
  });

  it('is told wherever it can be had, and is the smallest change of its kind', () => {
    overTight((plan) => {
      const { brief, rows, stitches, savings } = plan;
      const now = plan.hangings.length;
      const told = (by: string): number | undefined => {
        const one = savings.find((saving) => saving.by === by);
        return by === 'fewer-rows' ? one?.rows : one?.stitches;
      };
      const saves = (change: Partial<Strip>): boolean => fewestOf({ ...stripOf(plan), ...change }) < now;
      const canBePlanned = (stitches: number, rows: number): boolean =>
        planBag({ ...brief, bag: { by: 'counts', stitches, rows } }).ok;
      const step = (plan.neighbours.at(-1)?.rows ?? 0) - rows;
      const least = Math.ceil((2 * brief.shapeEveryRows) / step) * step;
      const fewerRows: number[] = [];
      for (let fewer = rows - step; fewer >= least; fewer -= step) fewerRows.push(fewer);
      expect(told('fewer-rows')).toBe(
        fewerRows.find((fewer) => saves({ rows: fewer }) && canBePlanned(stitches, fewer)),
      );
      const fewerStitches: number[] = [];
      for (let fewer = stitches - 1; fewer >= 2 * brief.edgeStitches + 2; fewer--) fewerStitches.push(fewer);
      expect(told('fewer-stitches')).toBe(
        fewerStitches.find((fewer) => saves({ room: roomOf(brief, fewer) }) && canBePlanned(fewer, rows)),
      );
    });
  });

  it('keeps to the size that was asked, where rows or moves change', () => {
    let told = 0;
    fc.assert(
      fc.property(sizedBrief('size'), (file) => {
        const brief = readBrief({ ...file, bed: { ...file.bed, needles: 150 } });
        const plan = brief.ok ? planBag(brief.value) : brief;
        if (!plan.ok || !brief.ok) return;
        for (const { by, stitches, rows, shapeEveryRows } of plan.value.savings) {
          if (by === 'fewer-stitches') continue;
          told++;
          const again =
            by === 'rarer-moves'
              ? planBag({ ...brief.value, shapeEveryRows })
              : planRows(brief.value, plan.value.gauge, rows);
          expect(again).toMatchObject({ value: { stitches, rows } });
        }
      }),
      { numRuns: tries(300) },
    );
    expect(told).toBeGreaterThan(tries(300) / 30);
  });

  // 108 needles within the margins; by hand: 78 rows make 38 moves, 108 − 70 leaves room for 38; a move every 4 of 108 rows
  // makes 26; 44 moves leave 64 stitches.
  it('is told of the rulebook bag, which crawls over 114 needles of 108', () => {
    const plan = planOf({
      name: 'Rulebook bag',
      bed: { needles: 112, pitchMm: 9 },
      swatch: { stitches: 20, rows: 28, widthCm: 14.4, heightCm: 15.4, state: 'dry-relaxed' },
      bag: { widthCm: 30, depthCm: 42 },
      yarns: {
        plum: { colour: '#6b2d5c', metresPer100g: 100 },
        mint: { colour: '#9fd8c2', metresPer100g: 100 },
      },
      stripes: [
        { yarn: 'plum', rows: 4 },
        { yarn: 'mint', rows: 2 },
      ],
    });
    expect([plan.needlesUsed, plan.hangings.length]).toEqual([114, 2]);
    expect(plan.savings).toMatchObject([
      { by: 'fewer-rows', rows: 78, stitches: 70, hangings: 1 },
      { by: 'rarer-moves', shapeEveryRows: 4, rows: 108, hangings: 1 },
      { by: 'fewer-stitches', rows: 90, stitches: 64, hangings: 1 },
    ]);
  });

  it('is nothing where the work hangs once', () => {
    fc.assert(
      fc.property(briefFile(), (file) => {
        const { hangings, savings } = planOf(file);
        expect(hangings.length === 1 && savings.length > 0).toBe(false);
      }),
    );
  });
});
