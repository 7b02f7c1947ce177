/** Answers to the first questions as people give them, in both languages, and what must be understood (invented, common practice). */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spoken } from '../../../test/fixtures/spoken.ts';
import { emptyShelf } from '../../planning/shelf.ts';
import { usualContents } from '../../planning/usual.ts';
import { type QuestionId, questionIds, type Values } from './answers.ts';
import { beginInterview, updateInterview } from './interview.ts';
import { valuesOf } from './questions.ts';

const metricWords = spoken();

/** What stands in the answers once a line was typed at a question. */
function understood(id: QuestionId, line: string): Partial<Values> {
  const before = Object.fromEntries(
    questionIds.slice(0, questionIds.indexOf(id)).map((one) => [one, { line: '', length: 'cm' as const }]),
  );
  const { interview } = updateInterview(beginInterview(before, metricWords), line);
  const values = valuesOf(interview.answers, metricWords);
  const given = questionIds.filter((one) => interview.answers[one] !== before[one]);
  return Object.fromEntries(given.map((one) => [one, values[one]]));
}

const flat = (widthCm: number, depthCm: number) => ({ size: { widthCm, depthCm } });
const around = (girthCm: number, heightCm: number) => ({ size: { girthCm, heightCm } });
const bed = (needles: number, pitchMm: number) => ({ bed: { needles, pitchMm } });
const swatch = (stitches: number, rows: number, widthCm: number, heightCm = widthCm) => ({
  swatch: { stitches, rows, widthCm, heightCm },
});
const yarn = (
  name: string,
  {
    metres = null,
    usual = false,
    grams = null,
  }: { metres?: number | null; usual?: boolean; grams?: number | null },
  colour: string | null = null,
) => ({ first: { name, colour, metresPer100g: metres, isUsualLength: usual, grams } });

const usualSize = flat(14, 18);
const practiceBed = bed(120, 6);
const noSwatch = { swatch: null };

type Case = readonly [QuestionId, string, object];

const sizes: readonly Case[] = [
  ['size', '14 by 18', flat(14, 18)],
  ['size', '14 by 18 cm', flat(14, 18)],
  ['size', '14x18', flat(14, 18)],
  ['size', '14 cm x 18 cm', flat(14, 18)],
  ['size', 'about 14 by 18', flat(14, 18)],
  ['size', '~15 x 20', flat(15, 20)],
  ['size', 'roughly 14 by roughly 18', flat(14, 18)],
  ['size', 'around 14 by around 18 cm', flat(14, 18)],
  ['size', '14 by 18 or so', flat(14, 18)],
  ['size', '18 deep 14 wide', flat(14, 18)],
  ['size', '14 wide and 18 tall', flat(14, 18)],
  ['size', '5 1/2 x 7 inches', flat(13.97, 17.78)],
  ['size', '5½ by 7 in', flat(13.97, 17.78)],
  ['size', '14 cm by 7 in', flat(14, 17.78)],
  ['size', '140 mm by 180 mm', flat(14, 18)],
  ['size', '26 round 12 high', around(26, 12)],
  ['size', '17 round 9 high 2 thick', { size: { girthCm: 17, heightCm: 9, thicknessCm: 2 } }],
  ['size', '6.5 by 9 by 2 cm', { size: { girthCm: 17, heightCm: 9, thicknessCm: 2 } }],
  ['size', 'Umfang 17, Höhe 9, Dicke 20 mm', { size: { girthCm: 17, heightCm: 9, thicknessCm: 2 } }],
  ...(
    [
      ['cards', ['a deck of cards', 'my cards', 'ein Kartenspiel']],
      ['dice', ['dice', 'a set of dice', 'Würfel']],
      ['jar', ['for a jar of jam', 'ein Marmeladenglas']],
      ['socks', ['socks', 'a pair of socks', 'ein Paar Socken']],
      ['book', ['a book', 'ein Taschenbuch']],
    ] as const
  ).flatMap(([usual, named]) =>
    named.map((line): Case => ['size', line, { size: { ...usualContents[usual], usual } }]),
  ),
  ['size', '26 around 12 high', around(26, 12)],
  ['size', 'about 26 round and 12 high', around(26, 12)],
  ['size', 'girth 26 height 12', around(26, 12)],
  ['size', '12 high 26 round', around(26, 12)],
  ['size', 'dunno', usualSize],
  ['size', "don't know", usualSize],
  ['size', 'skip', usualSize],
  ['size', 'no idea', usualSize],
  ['size', 'etwa 14 mal 18', flat(14, 18)],
  ['size', 'ungefähr 14 x 18 cm', flat(14, 18)],
  ['size', 'ca. 14 mal 18', flat(14, 18)],
  ['size', 'rund 14 mal rund 18', flat(14, 18)],
  ['size', '14 breit und 18 hoch', flat(14, 18)],
  ['size', '18 tief 14 breit', flat(14, 18)],
  ['size', '13,5 mal 17,5 cm', flat(13.5, 17.5)],
  ['size', '26 rund 12 hoch', around(26, 12)],
  ['size', 'Umfang 26 Höhe 12', around(26, 12)],
  ['size', '5,5 Zoll mal 7 Zoll', flat(13.97, 17.78)],
  ['size', 'weiß nicht', usualSize],
  ['size', 'keine Ahnung', usualSize],
];

const beds: readonly Case[] = [
  ['bed', '120 needles 6 mm', bed(120, 6)],
  ['bed', '180 x 5', bed(180, 5)],
  ['bed', '4.5 mm, 200 needles', bed(200, 4.5)],
  ['bed', '200 needles, 0.45 cm apart', bed(200, 4.5)],
  ['bed', 'standard, 200 needles', bed(200, 4.5)],
  ['bed', 'mid 132', bed(132, 6.5)],
  ['bed', 'bulky with 110 needles', bed(110, 9)],
  ['bed', 'about 200 needles, 4.5 mm', bed(200, 4.5)],
  ['bed', 'fine gauge 250', bed(250, 3.6)],
  ['bed', 'dunno', practiceBed],
  ['bed', "I don't know", practiceBed],
  ['bed', '200 Nadeln 4,5 mm', bed(200, 4.5)],
  ['bed', 'mittel, 132 Nadeln', bed(132, 6.5)],
  ['bed', 'grob 90', bed(90, 9)],
  ['bed', 'fein mit 250 Nadeln', bed(250, 3.6)],
  ['bed', '120 Nadeln, 6 mm Abstand', bed(120, 6)],
  ['bed', 'ich weiß es nicht', practiceBed],
];

const swatches: readonly Case[] = [
  ['swatch', '40 stitches 19.2 cm, 60 rows 21.6 cm', swatch(40, 60, 19.2, 21.6)],
  ['swatch', '40 stitches over 19.2 cm and 60 rows over 21.6 cm', swatch(40, 60, 19.2, 21.6)],
  ['swatch', '60 rows 21.6 cm, 40 stitches 19.2 cm', swatch(40, 60, 19.2, 21.6)],
  ['swatch', '28 st / 40 rows to 4 inches', swatch(28, 40, 10.16)],
  ['swatch', '28 sts 40 rows = 10 cm', swatch(28, 40, 10)],
  ['swatch', '28 sts and 40 rows to 10 cm', swatch(28, 40, 10)],
  ['swatch', '28 sts x 40 rows = 10 x 10 cm', swatch(28, 40, 10)],
  ['swatch', '28/40 to 10 cm', swatch(28, 40, 10)],
  ['swatch', '28 st x 40 rows over 4"', swatch(28, 40, 10.16)],
  ['swatch', '7.5 st/in, 10 rows/in', swatch(30, 40, 10.16)],
  ['swatch', '7 1/2 st per inch, 10 rows per inch', swatch(30, 40, 10.16)],
  ['swatch', '3 stitches per cm, 4 rows per cm', swatch(30, 40, 10)],
  ['swatch', '20 st = 10 cm, 28 rows = 10 cm', swatch(20, 28, 10)],
  ['swatch', '20 stitches 28 rows', swatch(20, 28, 10)],
  ['swatch', '20 28', swatch(20, 28, 10)],
  ['swatch', 'about 28 st and about 40 rows to 10 cm', swatch(28, 40, 10)],
  ['swatch', '40 stitches 7 1/2 in, 60 rows 8.5 in', swatch(40, 60, 19.05, 21.59)],
  ['swatch', 'no swatch', noSwatch],
  ['swatch', 'none', noSwatch],
  ['swatch', 'none yet', noSwatch],
  ['swatch', 'not yet', noSwatch],
  ['swatch', 'skip', noSwatch],
  ['swatch', 'dunno', noSwatch],
  ['swatch', '28 Maschen 40 Reihen = 10 cm', swatch(28, 40, 10)],
  ['swatch', '28 M 40 R = 10 cm', swatch(28, 40, 10)],
  ['swatch', '40 Maschen auf 19,2 cm und 60 Reihen auf 21,6 cm', swatch(40, 60, 19.2, 21.6)],
  ['swatch', '28 Maschen und 40 Reihen auf 4 Zoll', swatch(28, 40, 10.16)],
  ['swatch', '3 Maschen pro cm, 4 Reihen pro cm', swatch(30, 40, 10)],
  ['swatch', 'ungefähr 28 M 40 R auf 10 cm', swatch(28, 40, 10)],
  ['swatch', 'keine', noSwatch],
  ['swatch', 'keine Maschenprobe', noSwatch],
  ['swatch', 'noch keine', noSwatch],
  ['swatch', 'weiß nicht', noSwatch],
];

// A yard is 0.9144 m and an ounce 28.349523125 g, exactly (1959 agreement); a pound is 16 ounces.
const yarns: readonly Case[] = [
  ['first', 'plum', yarn('plum', {})],
  ['first', 'plum #6B2D5C 190 m per 100 g 60 g', yarn('plum', { metres: 190, grams: 60 }, '#6b2d5c')],
  ['first', 'plum, 60 g, 85 m/50 g', yarn('plum', { metres: 170, grams: 60 })],
  ['first', 'cream 2 balls of 50 g, 120 m each', yarn('cream', { metres: 240, grams: 100 })],
  ['first', 'cream, 2 balls of 50 g 120 m', yarn('cream', { metres: 240, grams: 100 })],
  ['first', 'plum 2 balls (50 g, 120 m)', yarn('plum', { metres: 240, grams: 100 })],
  ['first', '2 balls of 50 g, 120 m each of plum', yarn('plum', { metres: 240, grams: 100 })],
  ['first', '2 Knäuel von 50 g, je 120 m, von plum', yarn('plum', { metres: 240, grams: 100 })],
  ['first', '2 skeins of 100 g red', yarn('red', { grams: 200 })],
  ['first', 'half a ball of 50 g, 120 m cream', yarn('cream', { metres: 240, grams: 25 })],
  ['first', 'blue 1 1/2 balls of 50 g', yarn('blue', { grams: 75 })],
  ['first', 'red, 3 x 50 g', yarn('red', { grams: 150 })],
  ['first', '1 ball 50 g 125 m olive', yarn('olive', { metres: 250, grams: 50 })],
  ['first', 'a ball of 100 g plum', yarn('plum', { grams: 100 })],
  ['first', 'cream, 4 ply, 1 ball of 50 g', yarn('cream', { metres: 420, usual: true, grams: 50 })],
  ['first', 'worsted', yarn('worsted', { metres: 190, usual: true })],
  ['first', 'cream DK', yarn('cream', { metres: 230, usual: true })],
  ['first', 'teal double knitting 50 g', yarn('teal', { metres: 230, usual: true, grams: 50 })],
  ['first', 'light fingering blue', yarn('blue', { metres: 600, usual: true })],
  ['first', 'fingering weight, mint', yarn('mint', { metres: 420, usual: true })],
  ['first', 'red chunky about 100 g', yarn('red', { metres: 120, usual: true, grams: 100 })],
  ['first', 'navy super bulky 1 skein of 100 g', yarn('navy', { metres: 70, usual: true, grams: 100 })],
  ['first', 'aran grey ~80 g', yarn('grey', { metres: 170, usual: true, grams: 80 })],
  ['first', 'teal lace 25 g', yarn('teal', { metres: 800, usual: true, grams: 25 })],
  ['first', 'cream DK 225 m per 100 g', yarn('cream', { metres: 225 })],
  ['first', 'mint 1120 yards per pound', yarn('mint', { metres: 225.8 })],
  ['first', 'mint 70 yds/oz 2 oz', yarn('mint', { metres: 225.8, grams: 56.7 })],
  ['first', 'mint 200 yd per 100 g 2 oz', yarn('mint', { metres: 182.9, grams: 56.7 })],
  ['first', '"cream 4 ply" 60 g', yarn('cream 4 ply', { grams: 60 })],
  ['first', '"cream, no. 4"', yarn('cream, no. 4', {})],
  ['first', 'dunno', yarn('plum', {})],
  ['first', 'Pflaume 2 Knäuel à 50 g, je 120 m', yarn('Pflaume', { metres: 240, grams: 100 })],
  ['first', 'Pflaume, 2 Knäuel zu 50 g', yarn('Pflaume', { grams: 100 })],
  ['first', 'ein halbes Knäuel zu 50 g Minze', yarn('Minze', { grams: 25 })],
  ['first', 'rot, 3 mal 50 g', yarn('rot', { grams: 150 })],
  ['first', 'grau 4-fädig 50 g', yarn('grau', { metres: 420, usual: true, grams: 50 })],
  ['first', 'Sockenwolle grün 100 g', yarn('grün', { metres: 420, usual: true, grams: 100 })],
  ['first', 'Pflaume 95 m auf 50 g, 1,5 oz', yarn('Pflaume', { metres: 190, grams: 42.5 })],
  ['first', 'blau etwa 80 g', yarn('blau', { grams: 80 })],
  ['first', 'keine Ahnung', yarn('plum', {})],
];

const stripes: readonly Case[] = [
  ['stripes', '2', { stripes: [2, 2] }],
  ['stripes', '2 rows', { stripes: [2, 2] }],
  ['stripes', '4 and 2', { stripes: [4, 2] }],
  ['stripes', '4 rows then 2 rows', { stripes: [4, 2] }],
  ['stripes', '4, 2', { stripes: [4, 2] }],
  ['stripes', 'about 4', { stripes: [4, 4] }],
  ['stripes', '2 rows each', { stripes: [2, 2] }],
  ['stripes', 'usual', { stripes: [2, 2] }],
  ['stripes', '4 und 2', { stripes: [4, 2] }],
  ['stripes', 'je 2 Reihen', { stripes: [2, 2] }],
  ['stripes', '4 Reihen, dann 2 Reihen', { stripes: [4, 2] }],
  ['stripes', 'egal', { stripes: [2, 2] }],
  ['stripes', '20 and 2', { stripes: [20, 2] }],
  ['stripes', '1.5 cm', { stripes: { widthsCm: [1.5] } }],
  ['stripes', '1 cm und 5 mm', { stripes: { widthsCm: [1, 0.5] } }],
  ['stripes', 'zufällig', { stripes: 'random' }],
  ['stripes', 'gradient', { stripes: 'gradient' }],
  ['slant', '60', { slant: { angleDeg: 60 } }],
  ['slant', '72.5 degrees', { slant: { angleDeg: 72.5 } }],
  ['slant', 'every 4 rows', { slant: { everyRows: 4 } }],
  ['slant', 'alle 6 Reihen', { slant: { everyRows: 6 } }],
  ['slant', '65°', { slant: { angleDeg: 65 } }],
  ['slant', 'usual', { slant: { everyRows: 2 } }],
  ['size', '46 stitches 64 rows', { size: { stitches: 46, rows: 64 } }],
  ['size', '46 Maschen und 64 Reihen', { size: { stitches: 46, rows: 64 } }],
  ['size', '14 wide, as deep as the bed', { size: { widthCm: 14, deepAsBed: true } }],
  ['size', '14 breit, so tief wie das Bett', { size: { widthCm: 14, deepAsBed: true } }],
  ['size', '14 by 18 boxed 5', { size: { widthCm: 14, depthCm: 18, boxedCm: 5 } }],
  ['size', '14 by 18 cm, bottom 2 in', { size: { widthCm: 14, depthCm: 18, boxedCm: 5.08 } }],
  ['size', '26 round 12 high, Boden 5 cm', { size: { girthCm: 26, heightCm: 12, boxedCm: 5 } }],
];

/** Facts that belong to other questions, or to several. */
const elsewhere: readonly Case[] = [
  ['name', 'Dice bag, 14 by 18 cm', { name: 'Dice bag', ...flat(14, 18) }],
  ['name', 'Dice bag, game night', { name: 'Dice bag, game night' }],
  ['name', 'Würfelbeutel, 14 mal 18 cm', { name: 'Würfelbeutel', ...flat(14, 18) }],
  ['size', '14 by 18 cm, 120 needles 6 mm', { ...flat(14, 18), ...bed(120, 6) }],
  ['size', '14 mal 18 cm, 120 Nadeln 6 mm', { ...flat(14, 18), ...bed(120, 6) }],
  [
    'size',
    '14 by 18 cm, 120 needles 6 mm, 40 stitches 19.2 cm, 60 rows 21.6 cm',
    { ...flat(14, 18), ...bed(120, 6), ...swatch(40, 60, 19.2, 21.6) },
  ],
  ['bed', '120 needles 6 mm, 28 sts 40 rows = 10 cm', { ...bed(120, 6), ...swatch(28, 40, 10) }],
  ['first', '30 stitches over 10 cm, 42 rows over 10 cm', swatch(30, 42, 10)],
  ['first', '30 Maschen auf 10 cm, 42 Reihen auf 10 cm', swatch(30, 42, 10)],
  ['swatch', '120 needles 6 mm', bed(120, 6)],
  ['swatch', '120 Nadeln 6 mm', bed(120, 6)],
  ['first', '200 needles, 4.5 mm', bed(200, 4.5)],
];

describe('an answer as people give it', () => {
  it.each([...sizes, ...beds, ...swatches, ...yarns, ...stripes, ...elsewhere])(
    '%s: %s',
    (id, line, meant) => {
      expect(understood(id, line)).toEqual(meant);
    },
  );

  it.each([
    ['first', 'cream half a ball', 'Is the yarn called "cream half a ball"?'],
    ['first', 'mint, 220 yd a skein', 'Is the yarn called "mint, a skein"?'],
    ['first', '2 of them', 'Is the yarn called "2 of them"?'],
    ['bed', 'standard', 'the number of needles'],
    ['swatch', '28 40 10 10', 'which number is which'],
  ] as const)('%s: %s is asked about, and nothing is taken', (id, line, asks) => {
    expect(understood(id, line)).toEqual({});
    const { lines } = updateInterview(
      { answers: {}, at: id, words: metricWords, shelf: emptyShelf, guide: null },
      line,
    );
    expect(lines.map(({ text }) => text).join(' ')).toContain(asks);
  });
});

/** Every number of an answer that is taken is a number of what was understood, or else the line is asked about. */
it('never crashes, ends or swallows a number, whatever is typed', () => {
  const word = fc.constantFrom(
    ...[
      'about',
      '14',
      '2',
      '40',
      '6.5',
      '1/2',
      'by',
      'x',
      'cm',
      'in',
      'mm',
      'g',
      'm',
      'needles',
      'st',
      'rows',
      '/',
      ',',
    ],
    ...[
      '=',
      'balls',
      'of',
      'each',
      'plum',
      'DK',
      '#6b2d5c',
      'per',
      '100',
      'round',
      'high',
      'dunno',
      'none',
      '"',
      '~',
      '-3',
    ],
  );
  const line = fc.array(word, { minLength: 1, maxLength: 8 }).map((words) => words.join(' '));
  fc.assert(
    fc.property(fc.constantFrom(...questionIds), line, (id, typed) => {
      const update = updateInterview(
        { answers: {}, at: id, words: metricWords, shelf: emptyShelf, guide: null },
        typed,
      );
      expect(update.lines.length + (update.effect ? 1 : 0)).toBeGreaterThan(0);
      const { first } = valuesOf(update.interview.answers, metricWords);
      // What is left of a yarn's line is its name, and no number may hide in it.
      const isNamed = id === 'first' && update.interview.answers.first && !typed.includes('"');
      expect(isNamed ? first.name : '').not.toMatch(/[\d,;]/);
    }),
    { numRuns: 2000 },
  );
});
