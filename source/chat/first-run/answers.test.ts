/** Each question by itself: what a maker may type, what it is taken for, and what is said where it is no answer. */
import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { german, speak, spoken } from '../../../test/fixtures/spoken.ts';
import { faultIn, valueIn } from '../../../test/tools/result.ts';
import { slantsOf } from '../../planning/choose-size.ts';
import { readBrief } from '../../planning/parse-brief.ts';
import { planBag } from '../../planning/plan-bag.ts';
import type { Result } from '../../shared/result.ts';
import { imperial, metric } from '../../shared/units.ts';
import { readAmounts } from './amounts.ts';
import { type AnswerFault, questionIds } from './answers.ts';
import { briefFileOf } from './brief-of.ts';
import { formatInterviewFault } from './faults.ts';
import { questions, valuesOf, withAnswer } from './questions.ts';
import { readBed } from './read-bed.ts';
import { readSize } from './read-size.ts';
import { readCords, readEdges, readStripes } from './read-stripes.ts';
import { readSwatch } from './read-swatch.ts';
import { readOtherYarns, readYarn } from './read-yarn.ts';
import { examplesOf } from './say.ts';

const taken = <T>(read: Result<T, AnswerFault>): T | string => (read.ok ? read.value : read.fault.code);
const notUnderstood = 'first-run/not-understood';

it.each([
  [
    '14 by 18 cm',
    [
      [14, null],
      [18, 'cm'],
    ],
  ],
  [
    '19,2 × 21,6',
    [
      [19.2, null],
      [21.6, null],
    ],
  ],
  [
    '5 1/2 in by 7½',
    [
      [5.5, 'in'],
      [7.5, null],
    ],
  ],
  ['3/4"', [[0.75, 'in']]],
])('reads the amounts in %j', (line, amounts) => {
  expect(readAmounts(line).amounts.map(({ value, unit }) => [value, unit])).toEqual(amounts);
});

it.each([
  ['-5 by 4 cm', '-5'],
  ['14 by −18,5', '−18,5'],
])('takes no amount below nothing: %j', (line, word) => {
  expect(readSize(line, 'cm')).toEqual({
    ok: false,
    fault: { code: notUnderstood, question: 'size', word },
  });
  expect(readYarn(`plum ${line}`)).toMatchObject({ ok: false, fault: { code: notUnderstood, word } });
});

it('takes a dash between two numbers for what it is', () => {
  expect(taken(readSize('14 - 18', 'cm'))).toEqual(taken(readSize('14-18', 'cm')));
});

describe('the size', () => {
  const cm = (widthCm: number, depthCm: number) => ({ widthCm, depthCm });
  it.each([
    ['14 by 18', 'cm', cm(14, 18)],
    ['14x18cm', 'cm', cm(14, 18)],
    ['18 deep 14 wide', 'cm', cm(14, 18)],
    ['14,5 mal 18', 'cm', cm(14.5, 18)],
    ['tief 18, breit 14', 'cm', cm(14, 18)],
    // The inch is 25.4 mm exactly (1959 agreement).
    ['5 1/2 by 7', 'in', cm(13.97, 17.78)],
    ['14 by 18 cm', 'in', cm(14, 18)],
    ['140 mm by 18 cm', 'cm', cm(14, 18)],
    ['26 round 12 high', 'cm', { girthCm: 26, heightCm: 12 }],
    ['12 high and 26 round', 'cm', { girthCm: 26, heightCm: 12 }],
    ['Umfang 26 Höhe 12', 'cm', { girthCm: 26, heightCm: 12 }],
    ['14', 'cm', notUnderstood],
    ['14 by 18 by 3', 'cm', { girthCm: 34, heightCm: 18, thicknessCm: 3 }],
    ['14 by 18 by 3 by 2', 'cm', notUnderstood],
    ['14 g by 18 g', 'cm', notUnderstood],
    ['about so big', 'cm', notUnderstood],
  ] as const)('is read from %j in %s', (line, length, size) => {
    expect(taken(readSize(line, length))).toEqual(size);
  });
});

describe('the bed', () => {
  it.each([
    ['150 needles 6.5 mm', { needles: 150, pitchMm: 6.5 }],
    ['6.5 mm, 150', { needles: 150, pitchMm: 6.5 }],
    ['180 x 5', { needles: 180, pitchMm: 5 }],
    ['standard 180', { needles: 180, pitchMm: 4.5 }],
    ['mittel, 132 Nadeln', { needles: 132, pitchMm: 6.5 }],
    ['bulky 110 needles', { needles: 110, pitchMm: 9 }],
    // No gauge says how many needles a bed has, and no number of needles its gauge.
    ['standard', notUnderstood],
    ['9 mm', notUnderstood],
    ['200', notUnderstood],
    ['0.45 cm 200 needles', { needles: 200, pitchMm: 4.5 }],
    ['173 needles', notUnderstood],
    ['150 needles 6.5 mm 7 mm', notUnderstood],
    ['a small one', notUnderstood],
  ])('is read from %j', (line, bed) => expect(taken(readBed(line))).toEqual(bed));
});

describe('the swatch', () => {
  const dice = { stitches: 40, rows: 60, widthCm: 19.2, heightCm: 21.6 };
  it.each([
    ['40 stitches over 19.2 cm, 60 rows over 21.6 cm', 'cm', dice],
    ['60 rows 21.6 cm, 40 stitches 19.2 cm', 'cm', dice],
    ['40 stitches 60 rows 19.2 by 21.6', 'cm', dice],
    ['40 Maschen auf 19,2 cm und 60 Reihen auf 21,6 cm', 'cm', dice],
    ['40 M 60 R 19,2 x 21,6 cm', 'cm', dice],
    ['40 sts 19.2 cm 60 r 21.6 cm', 'cm', dice],
    ['40 19.2 cm 60 21.6 cm', 'cm', dice],
    ['30 stitches 42 rows', 'cm', { stitches: 30, rows: 42, widthCm: 10, heightCm: 10 }],
    ['30 42', 'cm', { stitches: 30, rows: 42, widthCm: 10, heightCm: 10 }],
    ['30 stitches 42 rows to 12 cm', 'cm', { stitches: 30, rows: 42, widthCm: 12, heightCm: 12 }],
    // Gauge is told to 4 inches where it is told in inches (Craft Yarn Council, Standard Yarn Weight System).
    ['30 stitches 42 rows', 'in', { stitches: 30, rows: 42, widthCm: 10.16, heightCm: 10.16 }],
    ['none', 'cm', null],
    ['40 60 19.2 21.6', 'cm', 'first-run/which-is-which'],
    ['40 stitches 19.2 cm', 'cm', notUnderstood],
    ['40 stitches 60 rows 1 cm 2 cm 3 cm', 'cm', notUnderstood],
    ['quite loose', 'cm', notUnderstood],
  ] as const)('is read from %j in %s', (line, length, swatch) => {
    expect(taken(readSwatch(line, length))).toEqual(swatch);
  });
});

describe('a yarn', () => {
  const yarn = (name: string, colour: string | null, metresPer100g: number | null, grams: number | null) => ({
    name,
    colour,
    metresPer100g,
    isUsualLength: false,
    grams,
  });
  it.each([
    ['plum', yarn('plum', null, null, null)],
    ['plum #6B2D5C 190 m per 100 g 60 g', yarn('plum', '#6b2d5c', 190, 60)],
    ['plum, 60 g, 85 m/50 g', yarn('plum', null, 170, 60)],
    ['dark plum 190m', yarn('dark plum', null, 190, null)],
    // A yard is 0.9144 m and an ounce 28.349523125 g, exactly (1959 agreement).
    ['mint 200 yd per 100 g 2 oz', yarn('mint', null, 182.9, 56.7)],
    ['Pflaume 95 m auf 50 g, 1,5 oz', yarn('Pflaume', null, 190, 42.5)],
    ['60 g', 'first-run/yarn-without-name'],
    ['none', 'first-run/yarn-without-name'],
  ])('is read from %j', (line, value) => {
    expect(taken(readYarn(line))).toEqual(value);
  });

  it('is none where the maker says so, for the second alone', () => {
    expect(taken(readOtherYarns('none'))).toEqual([]);
    expect(taken(readOtherYarns('keins'))).toEqual([]);
    expect(taken(readOtherYarns('mint'))).toMatchObject([{ name: 'mint' }]);
  });
});

it.each([
  ['3', { stitches: 3, hemRows: null }],
  ['three stitches', { stitches: 3, hemRows: null }],
  ['zwei Maschen', { stitches: 2, hemRows: null }],
  ['hem', { stitches: 2, hemRows: 4 }],
  ['a hem 6 rows', { stitches: 2, hemRows: 6 }],
  ['3 and hem', { stitches: 3, hemRows: 4 }],
  ['drei Maschen und ein Saum', { stitches: 3, hemRows: 4 }],
  ['3 und Saum 8', { stitches: 3, hemRows: 8 }],
  ['hem 5', notUnderstood],
  ['hem 40', notUnderstood],
  ['4', notUnderstood],
  ['3 rows', notUnderstood],
])('reads the edge stitches and a hem from %j', (line, edges) =>
  expect(taken(readEdges(line))).toEqual(edges),
);

it.each([
  ['two', 2],
  ['zwei Kordeln', 2],
  ['1', 1],
  ['both sides', 2],
  ['three', notUnderstood],
])('reads the cords from %j', (line, cords) => expect(taken(readCords(line))).toEqual(cords));

it.each([
  ['2', [2, 2]],
  ['4 and 2', [4, 2]],
  ['4 rows, 2 rows', [4, 2]],
  ['4 2 2', [4, 2, 2]],
  ['1.5 cm and 5 mm', { widthsCm: [1.5, 0.5] }],
  ['random', 'random'],
  ['Verlauf', 'gradient'],
  ['wide', notUnderstood],
  ['4 cm', { widthsCm: [4] }],
  ['4 g', notUnderstood],
])('reads the stripes from %j', (line, stripes) => expect(taken(readStripes(line))).toEqual(stripes));

describe('a line that is no answer', () => {
  it.each([
    ['name', ' x\u202e', 'brief/not-a-name', 'That cannot be a name'],
    ['name', 'x'.repeat(201), 'brief/too-long', 'at most 200 characters'],
    ['name', '""', 'brief/too-short', 'The name is empty'],
    ['size', '14', notUnderstood, 'Give two lengths, as in "14 by 18 cm".'],
    ['size', '14 by eggs', notUnderstood, 'I do not know what "eggs" means here'],
    ['size', '0.2 by 18', 'brief/too-small', 'at least 1 cm'],
    ['size', '14 by 4000', 'brief/too-large', 'at most 300 cm'],
    ['bed', '5 needles 6.5 mm', 'brief/too-small', 'at least 10 needles'],
    ['bed', '150.5 needles 6.5 mm', 'brief/not-whole', 'whole number'],
    ['bed', '200 needles 60 mm', 'brief/too-large', 'at most 20 mm'],
    ['bed', 'the long one', notUnderstood, 'I do not know what "the" means here'],
    ['bed', '173 needles', notUnderstood, 'the number of needles and how far apart'],
    ['swatch', '40 60 19.2 21.6', 'first-run/which-is-which', 'which number is which'],
    ['swatch', '40 stitches', notUnderstood, 'Give stitches and rows'],
    ['swatch', '400 stitches 1 cm 60 rows 20 cm', 'brief/stitch-impossible', 'check its width'],
    ['first', '60 g', 'first-run/yarn-without-name', 'needs a name of its own'],
    ['first', 'plum #6b2', 'brief/not-a-colour', 'such as #6b2d5c'],
    ['first', 'waste', 'brief/reserved-yarn', 'another name'],
    ['first', 'plum 0 m', 'brief/too-small', 'at least 1 m'],
    ['second', 'plum 20 g', 'first-run/same-yarn', 'Both yarns are called "plum"'],
    ['stripes', '3', 'brief/not-even', 'even number of rows'],
    ['stripes', '0', 'brief/too-small', 'at least 2 rows'],
    ['stripes', '4 2 2', 'first-run/more-stripes-than-yarns', 'one for each of plum and mint'],
    ['slant', '5', notUnderstood, 'an angle between 10 and 90'],
    ['cord', '3', notUnderstood, 'as in "one"'],
    ['size', '300 cm as deep as the bed', 'first-run/bed-too-short', 'a smaller width'],
    ['first', '__proto__', 'brief/reserved-yarn', 'another name'],
    ['size', '0/0 by 18', 'brief/wrong-type', 'cannot be used here'],
  ] as const)('%s: %j is %s, and the sentence tells what to do', (id, line, code, sentence) => {
    const fault = faultIn(withAnswer({}, id, { line, length: 'cm' }, spoken()));
    expect(fault.code).toBe(code);
    expect(formatInterviewFault(fault, spoken(), questionIds)).toContain(sentence);
  });

  it('tells limits in inches to those who measure in them', () => {
    const fault = faultIn(withAnswer({}, 'size', { line: '14 by 4000', length: 'in' }, spoken(imperial)));
    expect(formatInterviewFault(fault, spoken(imperial), questionIds)).toContain('at most 118.1 in');
  });
});

describe('the examples', () => {
  afterEach(() => speak(null));
  it.each([
    ['English', null],
    ['German', german],
  ] as const)('are answers, in %s', (_, language) => {
    speak(language);
    for (const units of [metric, imperial]) {
      for (const id of questionIds) {
        for (const line of examplesOf(id, units, spoken())) {
          expect(questions[id].read(line, units.length), line).toMatchObject({ ok: true });
        }
      }
    }
  });

  it('say the same in both languages', () => {
    const inEnglish = questionIds.map((id) =>
      examplesOf(id, metric, spoken()).map((line) => questions[id].read(line, 'cm')),
    );
    speak(german);
    const inGerman = questionIds.map((id) =>
      examplesOf(id, metric, spoken()).map((line) => questions[id].read(line, 'cm')),
    );
    // All but the names.
    const unnamed = (all: unknown) =>
      JSON.parse(JSON.stringify(all).replaceAll(/"name":"[^"]*",/g, '')).slice(1);
    expect(unnamed(inGerman)).toEqual(unnamed(inEnglish));
  });
});

it('makes of no answer at all a brief that the planner takes', () => {
  const made = briefFileOf(valuesOf({}, spoken()));
  expect(made.ok && readBrief(JSON.parse(JSON.stringify(made.value.json))).ok).toBe(true);
});

it('gives a yarn the colour that its name says, and another to the second', () => {
  const coloursOf = (first: string, second: string) => {
    const values = valuesOf(
      { first: { line: first, length: 'cm' }, second: { line: second, length: 'cm' } },
      spoken(),
    );
    const made = briefFileOf(values);
    return made.ok ? [...made.value.brief.yarns.values()].map(({ colour }) => colour) : [];
  };
  expect(coloursOf('Rot', 'dark green')).toEqual(['#b3262e', '#3f8f4f']);
  const [one, other] = coloursOf('mint', 'cloud');
  expect(one).not.toBe(other);
});

/** A brief made of the usual answers and these. */
function madeOf(answers: Readonly<Record<string, string>>) {
  const given = Object.fromEntries(
    Object.entries({ bed: '150 needles 6.5 mm', ...answers }).map(([id, line]) => [
      id,
      { line, length: 'cm' as const },
    ]),
  );
  const made = valueIn(briefFileOf(valuesOf(given, spoken())));
  return valueIn(planBag(made.brief));
}

const swatch = '40 stitches 19.2 cm, 60 rows 21.6 cm';
const three = { swatch, first: 'plum', second: 'mint; sand' };

describe('answers that only a gauge turns into numbers', () => {
  it('an angle is met by the nearest interval between moves', () => {
    for (const [angle, every] of [
      ['57', 2],
      ['64', 2],
      ['66', 4],
      ['76', 6],
      ['89', 8],
    ] as const) {
      const plan = madeOf({ swatch, slant: angle });
      expect(plan.brief.shapeEveryRows, angle).toBe(every);
      const off = Math.abs(plan.size.stripeAngleDeg - Number(angle));
      for (const { angleDeg } of slantsOf(plan.brief))
        expect(off).toBeLessThanOrEqual(Math.abs(angleDeg - Number(angle)) + 1e-9);
    }
  });

  it('a width of stripes becomes the nearest even number of rows of 3.6 mm', () => {
    const { stripes } = madeOf({ ...three, stripes: '1.5 cm, 1 cm and 0.2 cm' }).brief;
    expect(stripes).toEqual([
      { yarn: 'plum', rows: 4 },
      { yarn: 'mint', rows: 2 },
      { yarn: 'sand', rows: 2 },
    ]);
  });

  it('as deep as the bed leaves needles for every move in one hanging, and none over', () => {
    const plan = madeOf({ swatch, size: '14 wide, as deep as the bed' });
    expect(plan.hangings).toHaveLength(1);
    expect(plan.needlesUsed).toBe(146);
  });

  it.each(['random', 'gradient'])(
    'an order that is %s uses every yarn, joins, and misses no size',
    (order) => {
      fc.assert(
        fc.property(fc.integer({ min: 8, max: 60 }), fc.boolean(), (widthCm, isTwo) => {
          const yarns = isTwo ? { swatch, first: 'plum', second: 'mint' } : three;
          const size = `${widthCm} by 18`;
          const plan = madeOf({ ...yarns, size, stripes: order });
          const laid = plan.stripes.map(({ yarn }) => yarn);
          expect(laid.filter((yarn, i) => yarn === laid.at(i - 1))).toEqual([]);
          expect(new Set(laid).size).toBe(isTwo ? 2 : 3);
          expect(plan.rows).toBe(madeOf({ swatch, second: 'none', size }).rows);
          expect(madeOf({ ...yarns, size, stripes: order }).stripes).toEqual(plan.stripes);
        }),
        { numRuns: 40 },
      );
    },
  );

  it('a gradient goes from the darkest to the lightest and back', () => {
    const plan = madeOf({ ...three, stripes: 'gradient' });
    const broad = plan.stripes.filter(({ rows }) => rows > 2).map(({ yarn }) => yarn);
    expect(broad).toEqual(['plum', 'sand', 'mint', 'sand']);
  });

  it('two cords, three edge stitches, a hem and a boxed bottom stand in the brief', () => {
    const plan = madeOf({ swatch, size: '14 by 18 boxed 5', cord: 'two', edges: '3 and hem 6' });
    expect([plan.brief.boxedCm, plan.cord.draws, plan.brief.edgeStitches, plan.hem?.rows]).toEqual([
      5, 2, 3, 6,
    ]);
  });
});
