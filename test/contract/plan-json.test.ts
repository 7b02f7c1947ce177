/** `plan --json` field by field: names and kinds as other programs rely on them, values worked out here without rounding. */

import { readdirSync, readFileSync } from 'node:fs';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { planJson } from '../../source/cli/plan.ts';
import { englishWords } from '../../source/wording/words.ts';
import { planOf } from '../fixtures/plan-of.ts';

const count = v.pipe(v.number(), v.integer(), v.minValue(0));
const amount = v.pipe(v.number(), v.finite(), v.minValue(0));
const needle = v.pipe(v.string(), v.regex(/^[LR][1-9]\d*$/));

/** Every field that must be there; more may be. */
const planShape = v.object({
  stitches: count,
  rows: count,
  knittedRows: count,
  shapings: count,
  shapeEveryRows: count,
  edgeStitches: count,
  gauge: v.object({ stitchMm: amount, rowMm: amount, stitchesPer10Cm: amount, rowsPer10Cm: amount }),
  size: v.object({
    widthCm: amount,
    depthCm: amount,
    depthBelowCordCm: amount,
    mouthCm: amount,
    stripeAngleDeg: amount,
    wantedWidthCm: v.nullable(amount),
    wantedDepthCm: v.nullable(amount),
  }),
  neighbours: v.array(v.object({ stitches: count, rows: count, widthCm: amount, depthCm: amount })),
  bed: v.object({
    needlesUsed: count,
    hangings: v.array(
      v.object({
        fromRow: count,
        throughRow: count,
        firstLeft: needle,
        firstRight: needle,
        lastLeft: needle,
        lastRight: needle,
      }),
    ),
  }),
  yarn: v.array(
    v.object({
      yarn: v.string(),
      metres: amount,
      grams: v.nullable(amount),
      withReserveGrams: v.nullable(amount),
      haveGrams: v.nullable(amount),
      enough: v.nullable(v.boolean()),
    }),
  ),
  loopLengthMm: amount,
  tightness: amount,
  graft: v.object({ entries: count, tailCm: amount, ruleCm: amount, modelCm: amount }),
  seam: v.object({ barsPerSide: count, tailCm: amount }),
  cord: v.object({
    stitches: count,
    lengthCm: amount,
    takeUpCm: amount,
    rounds: count,
    passes: count,
    metres: amount,
  }),
  eyelets: v.object({ made: count, used: v.array(count), skipped: v.array(count) }),
  warnings: v.array(v.object({ code: v.string(), text: v.pipe(v.string(), v.endsWith('.')) })),
});

type PlanShape = v.InferOutput<typeof planShape>;

/** As another program gets it: written out and read again. */
const readPlan = (file: string): PlanShape =>
  v.parse(planShape, JSON.parse(JSON.stringify(planJson(planOf(file), englishWords))));

const demo = (name: string): string => readFileSync(`demo/${name}`, 'utf8');
const demoBriefs = readdirSync('demo').filter((name) => name.endsWith('.json'));

describe('the JSON of a plan', () => {
  it.each(demoBriefs)('%s has every field, of its kind', (name) => {
    expect(() => readPlan(demo(name))).not.toThrow();
  });

  it.each(demoBriefs)('%s agrees with itself', (name) => {
    const plan = readPlan(demo(name));
    expect(plan.knittedRows).toBe(plan.rows - 1);
    expect(plan.shapings).toBe(plan.rows / plan.shapeEveryRows - 1);
    expect(plan.bed.needlesUsed).toBe(plan.stitches + plan.shapings);
    expect(plan.graft.entries).toBe(2 * plan.stitches - 1);
    expect(plan.seam.barsPerSide).toBe(plan.rows / 2);
    // A bed that cannot slip knits its cord flat, a row for a round.
    const aRound = JSON.parse(demo(name)).bed.without?.includes('slip') ? 1 : 2;
    expect(plan.cord.passes).toBe(aRound * plan.cord.rounds);
    expect(plan.size.widthCm).toBe(plan.size.mouthCm / 2);
    expect(plan.eyelets.made).toBe(plan.shapings);
    expect([...plan.eyelets.used, ...plan.eyelets.skipped].sort((a, b) => a - b)).toEqual(
      Array.from({ length: plan.shapings }, (_, i) => i + 1),
    );
    expect(plan.eyelets.used.length % 2).toBe(0);
    expect(plan.bed.hangings[0]?.fromRow).toBe(1);
    expect(plan.bed.hangings.at(-1)?.throughRow).toBe(plan.knittedRows);
  });

  it.each(demoBriefs)('%s lists each of its yarns once, and the waste', (name) => {
    const { yarns, waste } = JSON.parse(demo(name));
    expect(readPlan(demo(name)).yarn.map(({ yarn }) => yarn)).toEqual([
      ...Object.keys(yarns),
      waste?.yarn ?? 'waste',
    ]);
  });
});

/** 40 stitches on 19.2 cm and 60 rows on 21.6 cm: 4.8 by 3.6 mm. 46 stitches, 64 rows, 31 moves; a loop of 17.1 mm. */
describe('the JSON of the dice bag', () => {
  const plan = readPlan(demo('dice-bag.json'));
  const mouthCm = Math.hypot(31 * 0.48, 64 * 0.36);
  const depthOfStitchCm = (0.48 * 64 * 0.36) / mouthCm;

  it('has its size unrounded, beside the one that was wanted', () => {
    expect(plan).toMatchObject({ stitches: 46, rows: 64, shapings: 31, shapeEveryRows: 2, edgeStitches: 2 });
    expect(plan.gauge.stitchesPer10Cm).toBeCloseTo(100 / 4.8, 12);
    expect(plan.gauge.rowsPer10Cm).toBeCloseTo(100 / 3.6, 12);
    expect(plan.size.mouthCm).toBeCloseTo(mouthCm, 12);
    expect(plan.size.depthCm).toBeCloseTo(45 * depthOfStitchCm, 12);
    expect(plan.size.depthBelowCordCm).toBeCloseTo(42.5 * depthOfStitchCm, 12);
    expect(plan.size.stripeAngleDeg).toBeCloseTo((Math.atan2(64 * 3.6, 31 * 4.8) / Math.PI) * 180, 12);
    expect(plan.size).toMatchObject({ wantedWidthCm: 14, wantedDepthCm: 18 });
    expect(plan.neighbours.map(({ rows }) => rows)).toEqual([60, 68]);
  });

  it('hangs so that the 77 needles it covers stand about the middle, and ends 30 moves to the left', () => {
    expect(plan.bed.hangings).toEqual([
      {
        fromRow: 1,
        throughRow: 63,
        firstLeft: 'L8',
        firstRight: 'R38',
        lastLeft: 'L39',
        lastRight: 'R7',
      },
    ]);
  });

  it('has yarn, tails and cord by their formulas', () => {
    // 32 rows of plum; its strand climbs 2 rows of mint 15 times; 15 cm at both ends.
    const plumM = (32 * 46 * 17.1 + 30 * 3.6 + 300) / 1000;
    const [plum, , waste] = plan.yarn;
    expect(plum?.metres).toBeCloseTo(plumM, 12);
    expect(plum?.grams).toBeCloseTo((plumM / 190) * 100, 12);
    expect(plum?.withReserveGrams).toBeCloseTo((plumM / 190) * 110, 12);
    expect(plum).toMatchObject({ haveGrams: 60, enough: true });
    expect(waste).toMatchObject({ yarn: 'grey', grams: null, haveGrams: null, enough: null });
    expect(plan.loopLengthMm).toBe(17.1);
    expect(plan.tightness).toBeCloseTo(Math.sqrt(100_000 / 190) / 17.1, 12);
    expect(plan.graft.ruleCm).toBeCloseTo(3 * 46 * 0.6, 12);
    expect(plan.graft.modelCm).toBeCloseTo(46 * 1.71 * 1.1, 12);
    expect(plan.graft.tailCm).toBeCloseTo(46 * 1.71 * 1.1 + 15, 12);
    expect(plan.seam.tailCm).toBeCloseTo(mouthCm + 15, 12);
    // 16 holes, two moves apart: 15 gaps, each as long as the way of a cord 1.2 stitches thick.
    const gapCm = 2 * Math.hypot(0.48, 0.72);
    const wayCm = 15 * (Math.hypot(gapCm, 0.576) - gapCm);
    expect(plan.cord.lengthCm).toBeCloseTo(mouthCm + wayCm + 50, 12);
    expect(plan.cord.rounds).toBe(Math.ceil((mouthCm + wayCm + 50) / 0.36));
    expect(plan.cord.metres).toBeCloseTo((plan.cord.rounds * (3 * 17.1 + 2 * 4.8)) / 1000, 12);
  });

  it('leads its thick cord through every second eyelet', () => {
    expect(plan.eyelets.used).toEqual([1, 3, 5, 7, 9, 11, 13, 15, 17, 19, 21, 23, 25, 27, 29, 31]);
  });
});

describe('the JSON of the leftovers bag', () => {
  it('has as many rounds of cord as 26 to 10 cm come to', () => {
    const { cord, size } = readPlan(demo('leftovers-bag.json'));
    expect(cord.lengthCm).toBeCloseTo(size.mouthCm + cord.takeUpCm + 2 * 20, 12);
    expect(cord.rounds).toBe(Math.ceil(cord.lengthCm * 2.6));
  });
});

describe('the JSON of a bag with a rehang', () => {
  it('has the edges of each stay, and the warning with its sentence', () => {
    const { bed, warnings } = readPlan(demo('rulebook-bag.json'));
    expect(bed.hangings.map(({ fromRow, throughRow }) => [fromRow, throughRow])).toEqual([
      [1, 78],
      [79, 89],
    ]);
    // Hung again before the move of row 78, which is the first of the new stay.
    expect(bed.hangings[1]).toMatchObject({ firstLeft: 'L33', firstRight: 'R37' });
    expect(warnings.map(({ code }) => code)).toEqual(['plan/rehang-needed']);
  });
});
