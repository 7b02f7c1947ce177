/** The printed plan: as wide as a page, every number with a meaning, and what it says of the demo bags. */

import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { planJson } from '../../source/cli/plan.ts';
import { usualPace } from '../../source/journal/pace.ts';
import { planFromYarn } from '../../source/planning/from-yarn.ts';
import { readBrief } from '../../source/planning/parse-brief.ts';
import { planBag } from '../../source/planning/plan-bag.ts';
import { noChange, type PlanChanges, planFrom } from '../../source/planning/plan-from.ts';
import { imperial, metric } from '../../source/shared/units.ts';
import { reasons } from '../../source/wording/explain.ts';
import { labelled, wrap } from '../../source/wording/page.ts';
import { formatPlanPage } from '../../source/wording/plan-page.ts';
import { briefOf, planOf } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import { german, speak, spoken } from '../fixtures/spoken.ts';
import { valueIn } from '../tools/result.ts';
import { tries } from '../tools/tries.ts';
import { sizedBrief } from './planning-briefs.ts';

const demo = (name: string): string => readFileSync(`demo/${name}.json`, 'utf8');
const demoPlan = (name: string) => planOf(demo(name));
const demoNames = readdirSync('demo').flatMap((file) => (file.endsWith('.json') ? [file.slice(0, -5)] : []));

const sectionOf = (page: string, title: string): readonly string[] =>
  (page.split('\n\n').find((part) => part.startsWith(`${title}\n`)) ?? '').split('\n').slice(1);

/** Lines of a page run together, so that a sentence can be looked for across them. */
const flow = (page: string): string => page.replace(/\s+/g, ' ');

describe('the printed plan of any bag', () => {
  afterEach(() => speak(null));

  it.each([
    ['English', null],
    ['German', german],
  ])('fits 78 columns and has no hole in it, in both systems of units: %s', (_, language) => {
    speak(language);
    const files = fc.oneof(briefFile(), sizedBrief('size'), sizedBrief('contents'));
    fc.assert(
      fc.property(files, fc.constantFrom(metric, imperial), (file, units) => {
        const brief = readBrief(file);
        const plan = brief.ok ? planBag(brief.value) : brief;
        if (!plan.ok) return;
        const page = formatPlanPage(plan.value, spoken(units));
        for (const line of page.split('\n')) {
          expect(line.length, line).toBeLessThanOrEqual(78);
          expect(line).toBe(line.trimEnd());
        }
        expect(page).not.toMatch(/undefined|NaN|Infinity|null|\[object/);
      }),
      { numRuns: tries(400) },
    );
  });

  it('fits 78 columns with the longest names that a brief may hold', () => {
    const long = 'W'.repeat(60);
    const file = JSON.parse(demo('dice-bag').replaceAll('"plum"', `"${long}"`));
    const page = formatPlanPage(planOf({ ...file, name: 'V'.repeat(200) }), spoken());
    expect(Math.max(...page.split('\n').map((line) => line.length))).toBeLessThanOrEqual(78);
  });
});

it('a label that fills its column stays apart from its text', () => {
  expect(labelled('105 bis 112', `plum${' mint'.repeat(14)}`)).toEqual([
    `  105 bis 112 plum${' mint'.repeat(12)}`,
    `              mint mint`,
  ]);
});

describe('the printed plan of a demo bag', () => {
  it.each(demoNames)('%s names its sources and its rules of thumb', (name) => {
    const page = flow(formatPlanPage(demoPlan(name), spoken()));
    const loop = name === 'marble-bag' ? 'published loop constants;' : 'published loop constants, for wool';
    for (const source of [loop, 'standard classes 0 to 7', 'EN 71-1:2005+A8:2009'])
      expect(page).toContain(source);
    expect(page.match(/\(rule of thumb\)/g)?.length).toBeGreaterThanOrEqual(3);
  });

  it.each(demoNames)('%s has tails to the next 5 cm and whole grams', (name) => {
    const page = formatPlanPage(demoPlan(name), spoken());
    const [, tail = ''] = /cut a tail of (\S+) cm/.exec(flow(page)) ?? [];
    expect(Number(tail) % 5).toBe(0);
    const grams = [
      ...sectionOf(page, 'YARN')
        .join(' ')
        .matchAll(/(\S+) g\b/g),
    ].map(([, number]) => number);
    expect(grams.length).toBeGreaterThan(2);
    for (const number of grams) expect(number).toMatch(/^\d+$/);
  });

  it('dice-bag reads like this', () => {
    expect(sectionOf(formatPlanPage(demoPlan('dice-bag'), spoken()), 'SIZE')).toEqual([
      '  bag       13.7 cm ± 0.6 cm wide and 18.1 cm ± 0.8 cm deep, flat and sewn,',
      '            wet-relaxed (19 of 20 bags lie within)',
      '  asked     14 cm wide and 18 cm deep',
      '  inside    17.1 cm deep below the cord; the mouth is 27.4 cm round',
      '  knit      46 stitches, 64 rows round: 63 are knitted, the graft is the last',
      '  shaping   31 moves, one after every 2 rows, 2 stitches at each edge',
      '  stripes   16 times plum 2, mint 2 rows; stripes slant 57 degrees from the',
      '            bottom',
      '  smaller   12.8 cm by 18.2 cm, with 60 rows',
      '  larger    14.6 cm by 18.1 cm, with 68 rows',
      '  repeat    one makes 0.9 cm of width; the doubt is ± 0.6 cm',
      expect.stringMatching(/^ {2}time {6}about 2 h/),
      expect.stringMatching(/closing row/),
      expect.stringMatching(/of thumb/),
    ]);
  });

  it('dice-bag has its tail for graft and seam in one, and both ways to find it', () => {
    expect(flow(formatPlanPage(demoPlan('dice-bag'), spoken()))).toContain(
      'cut a tail of 145 cm of mint, 102 cm to graft and 43 cm to go on and sew the bottom. For the graft: the larger of 3 times the width on the needles, 83 cm (rule of thumb), and the yarn of a row and 10 %, 87 cm; and 15 cm to hold.',
    );
  });

  it('dice-bag with the carriage at home on the growing side has two tails', () => {
    const page = flow(
      formatPlanPage(planOf({ ...JSON.parse(demo('dice-bag')), homeSide: 'left' }), spoken()),
    );
    expect(page).toContain('cut a tail of 105 cm of mint. For the graft');
    expect(page).toContain('32 bars from each side, with 45 cm of mint: twice the seam and 15 cm to hold');
  });

  it('rulebook-bag lists where to hang the work, and says so again at the end', () => {
    const page = formatPlanPage(demoPlan('rulebook-bag'), spoken());
    expect(sectionOf(page, 'BED').slice(3, 5)).toEqual([
      '  hang      rows 1 to 78    on L16 to R54   ending on L54 to R16',
      '            rows 79 to 89   on L32 to R38   ending on L38 to R32',
    ]);
    expect(page.split('\n\n').at(-1)).toMatch(/^BEFORE YOU START\n {2}- The bed is too short/);
  });

  it('leftovers-bag lists its stripes, and takes the cord gauge that was counted', () => {
    const page = formatPlanPage(demoPlan('leftovers-bag'), spoken());
    const listed = sectionOf(page, 'STRIPES').flatMap((line) => line.slice(12).split(', '));
    expect(listed).toEqual(demoPlan('leftovers-bag').stripes.map(({ yarn }) => yarn));
    expect(flow(page)).toContain('by your count of 26 rounds to 10 cm');
    expect(flow(page)).toContain('17.5 mm of yarn in a stitch, measured');
  });

  it('marble-bag speaks of one yarn', () => {
    const page = flow(formatPlanPage(demoPlan('marble-bag'), spoken()));
    expect(page).toContain(
      'sunset throughout, no colour changes; the closing row, graft and seam take it too',
    );
    expect(page).not.toContain('STRIPES');
  });

  it('token-pouch has its class by whole stitches', () => {
    expect(flow(formatPlanPage(demoPlan('token-pouch'), spoken()))).toContain('bulky (5) by its gauge');
  });
});

describe('the page of a few scraps', () => {
  it('lists their stripes too', () => {
    const { swatch, bed, yarns, scraps } = JSON.parse(demo('leftovers-bag'));
    const plan = planOf({ name: 'Few', swatch, bed, yarns, scraps, bag: { stitches: 20, rows: 16 } });
    const page = formatPlanPage(plan, spoken());
    expect(flow(page)).toContain('4 of 4 rows, listed below');
    expect(sectionOf(page, 'STRIPES')).toEqual([
      `  1 to 4    ${plan.stripes.map(({ yarn }) => yarn).join(', ')}`,
    ]);
  });
});

describe('the page of a bag planned again on the way', () => {
  const begun = demoPlan('dice-bag');
  const from = (changes: Partial<PlanChanges>) => {
    const all = { rows: 56, ...noChange, ...changes };
    return valueIn(planFrom(begun, { row: 12, colouredThrough: 12 }, all));
  };

  it('says what was measured on the piece, and the sums of it come out', () => {
    const plan = from({ measured: { stitchMm: 4.9, rowMm: 3.5 } });
    const page = formatPlanPage(plan, spoken());
    expect(page).toContain('piece     40 stitches and 60 rows on 19.6 cm by 21 cm');
    const sum = reasons.find(({ id }) => id === 'swatch')?.here?.(plan, spoken());
    expect(sum).toBe('19.6 cm / 40 = 4.9 mm; 21 cm / 60 = 3.5 mm');
  });

  it('lists stripes that no longer follow one repeat, each in its own yarn', () => {
    const yarn = { colour: '#d8c49a', metresPer100g: 190, grams: null, pricePer100g: null };
    const page = formatPlanPage(from({ recolour: { from: 'mint', to: 'sand', yarn } }), spoken());
    expect(flow(page)).toContain('28 stripes, listed below');
    expect(sectionOf(page, 'STRIPES')[0]).toBe(
      '  1 to 8    plum 2, mint 2, plum 2, mint 2, plum 2, mint 2, plum 2, sand 2',
    );
  });

  it('keeps the stitches of its neighbours, and blames no repeat for the size that was chosen', () => {
    const plan = from({});
    expect(plan.neighbours.map(({ stitches }) => stitches)).toEqual([46, 46]);
    expect(formatPlanPage(plan, spoken())).not.toContain('BEFORE YOU START');
  });

  it('still asks for the counts that the brief asked for', () => {
    const pouch = valueIn(
      planFrom(demoPlan('token-pouch'), { row: 4, colouredThrough: 4 }, { rows: 24, ...noChange }),
    );
    expect(formatPlanPage(pouch, spoken())).toContain('asked     10 stitches and 16 rows');
  });
});

describe('the time on the page', () => {
  it('is a rule of thumb, and says so, before the first bag', () => {
    const page = flow(formatPlanPage(demoPlan('dice-bag'), spoken()));
    expect(page).toMatch(/ time about \d h( \d+ min)? on the bench: cast-on \d+ min, stripes /);
    expect(page).toContain('a rule of thumb for each act');
  });

  it('is that of the maker afterwards', () => {
    const page = flow(formatPlanPage(demoPlan('dice-bag'), spoken(), { pace: { ...usualPace, bags: 2 } }));
    expect(page).toContain('; at the pace of your 2 finished bags');
  });
});

describe('the page of a bag planned from its yarn', () => {
  it('says what it is limited by', () => {
    const bag = valueIn(planFromYarn(briefOf(demo('dice-bag')).brief));
    const { plan } = bag;
    expect(flow(formatPlanPage(plan, spoken(), { fromYarn: bag }))).toContain(
      'asked the largest of its shape that the weighed yarn allows; one repeat more would take more mint than there is',
    );
  });

  it('says how to ask for it, and leaves out bags of other shapes', () => {
    const bag = valueIn(planFromYarn(briefOf(demo('dice-bag')).brief));
    const { plan } = bag;
    const page = formatPlanPage(plan, spoken(), { fromYarn: bag });
    const [, written = ''] = /write +"bag": (\{.*?\}) into the brief/.exec(page) ?? [];
    expect(planOf({ ...JSON.parse(demo('dice-bag')), bag: JSON.parse(written) })).toEqual(plan);
    expect(page).not.toMatch(/^ {2}(smaller|larger) /m);
  });
});

describe('the plan as JSON', () => {
  it.each(demoNames)('%s keeps its numbers metric and unrounded', (name) => {
    const plan = demoPlan(name);
    const json = JSON.parse(JSON.stringify(planJson(plan, spoken())));
    expect(json.size.widthCm).toBe(plan.size.widthCm);
    expect(json.graft.cutCm).toBeCloseTo(plan.graft.tailCm + plan.seam.tailCm, 9);
    expect(json.yarn.map((need: { yarn: string }) => need.yarn)).toEqual([
      ...plan.brief.yarns.keys(),
      plan.brief.waste.yarn,
    ]);
    expect(json.stripes).toHaveLength(plan.stripes.length);
  });
});

it('a column with no room for text ends all the same', () => {
  for (const width of [1, 0, -3]) expect(wrap('a bag', width)).toEqual(['a', 'b', 'a', 'g']);
});
