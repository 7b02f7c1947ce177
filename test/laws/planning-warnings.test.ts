/** Every warning: a plan that deserves it, one that does not, and the sentence. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planWarnings } from '../../source/planning/warnings.ts';
import { imperial } from '../../source/shared/units.ts';
import { sayBy } from '../../source/wording/by-kind.ts';
import { englishWords, inEnglish, wordsIn } from '../../source/wording/words.ts';
import { planOf } from '../fixtures/plan-of.ts';
import { tries } from '../tools/tries.ts';

const yarn = { colour: '#6b2d5c', metresPer100g: 190 };

const sound = {
  name: 'Sound bag',
  bed: { needles: 150, pitchMm: 6.5 },
  swatch: { stitches: 40, rows: 60, widthCm: 19.2, heightCm: 21.6, loopLengthMm: 17.1 },
  bag: { widthCm: 14, depthCm: 18 } as object,
  yarns: { plum: yarn, mint: { ...yarn, colour: '#9fd8c2' } } as Record<string, object>,
  stripes: [
    { yarn: 'plum', rows: 2 },
    { yarn: 'mint', rows: 2 },
  ],
};

const swatch = (change: object): object => ({ ...sound, swatch: { ...sound.swatch, ...change } });
const counts = (stitches: number, rows: number): object => ({ ...sound, bag: { stitches, rows } });
const six = Object.fromEntries(['plum', 'mint', 'sand', 'slate', 'rust', 'moss'].map((name) => [name, yarn]));
const { stripes: _, ...unstriped } = sound;

const cases: readonly (readonly [code: string, file: object, sentence: string])[] = [
  [
    'plan/yarn-short',
    { ...sound, yarns: { plum: { ...yarn, grams: 10 }, mint: { ...yarn, grams: 60 } } },
    'plum is 13 g short, with a reserve of 10 % counted in: find more, or make a smaller bag.',
  ],
  [
    'plan/scraps-unused',
    {
      ...unstriped,
      bag: { stitches: 46, rows: 64 },
      scraps: {},
      yarns: {
        plum: { ...yarn, grams: 60 },
        mint: { ...yarn, grams: 60 },
        sand: { ...yarn, grams: 0.5 },
      },
    },
    'sand is left over: too little for a stripe, or no stripe is left for it.',
  ],
  [
    'plan/swatch-guessed',
    swatch({ guess: true }),
    'The swatch is a guess from the bed (rule of thumb), and so are the size and the yarn: knit one and measure it.',
  ],
  [
    'plan/many-yarns-at-once',
    { ...sound, yarns: six, stripes: Object.keys(six).map((name) => ({ yarn: name, rows: 2 })) },
    '6 yarns are in use at once, and a mast has four arms at the most: cut a yarn that has to wait long, and tie it on again.',
  ],
  [
    'plan/width-far-off',
    {
      ...sound,
      stripes: [
        { yarn: 'plum', rows: 40 },
        { yarn: 'mint', rows: 10 },
      ],
    },
    'Whole stripe repeats make it 10.7 cm wide, not 14 cm as asked: a shorter repeat comes nearer.',
  ],
  [
    'plan/depth-far-off',
    { ...sound, bag: { widthCm: 14, depthCm: 1 } },
    'Whole stitches make it 2 cm deep, not 1 cm as asked.',
  ],
  [
    'plan/eyelets-too-few',
    counts(10, 4),
    'There are too few eyelets for a cord with both ends outside: choose more rows.',
  ],
  [
    'plan/rehang-needed',
    { ...counts(46, 64), bed: { needles: 70, pitchMm: 6.5 } },
    'The bed is too short to crawl all the way: rehang the work after row 42.',
  ],
  [
    'plan/swatch-turned',
    swatch({ widthCm: 21.6 * (40 / 60), heightCm: 19.2 * (60 / 40) }),
    'Rows come out higher than stitches are wide: the swatch may have been measured the wrong way round.',
  ],
  [
    'plan/stitch-shape-odd',
    swatch({ heightCm: 12 }),
    'A stitch 2.40 times as wide as high is not usual for plain knitting (about 1.3): measure the swatch again.',
  ],
  [
    'plan/loop-length-odd',
    swatch({ loopLengthMm: 10 }),
    'The measured loop of 10 mm is far from the 19.3 mm that the gauge suggests: measure it again, all yarn figures depend on it.',
  ],
  [
    'plan/fabric-limp',
    { ...sound, yarns: { plum: { ...yarn, metresPer100g: 800 }, mint: { ...yarn, metresPer100g: 800 } } },
    'Tightness 0.65 is low (hand yarns have 0.95 to 1.2 by their labels): the fabric will be limp and see-through.',
  ],
  [
    'plan/fabric-jams',
    { ...sound, yarns: { plum: { ...yarn, metresPer100g: 80 }, mint: { ...yarn, metresPer100g: 80 } } },
    'Tightness 2.07 is high (loops of wool jam near 1.54): the carriage may jam; take a thinner yarn or a larger stitch size.',
  ],
  [
    'plan/stitch-wider-than-pitch',
    { ...sound, bed: { needles: 200, pitchMm: 4.5 } },
    'A stitch of 4.8 mm is wider than the needle pitch of 4.5 mm: measure the swatch again, or use a bed of a coarser gauge.',
  ],
  [
    'plan/yarn-unusual-for-bed',
    { ...sound, bed: { needles: 112, pitchMm: 9 } },
    'The yarn is finer than a pitch of 9 mm usually knits (medium (4) or bulky (5); rule of thumb): check the swatch, or use a finer bed.',
  ],
  [
    'plan/swatch-to-be-washed',
    { ...(swatch({ state: 'dry-relaxed' }) as object), finishState: 'fully-relaxed' },
    'The swatch was measured dry, and the bag will be used fully-relaxed: its size in that state is worked out, but a swatch that was washed like the bag tells more.',
  ],
  [
    'plan/shades-alike',
    { ...sound, yarns: { plum: yarn, mint: yarn } },
    'Stripes of plum and mint lie side by side and look much alike: choose one lighter or darker to tell them apart.',
  ],
  [
    'plan/stripes-alike',
    { ...sound, stripes: [...sound.stripes, { yarn: 'plum', rows: 2 }] },
    'Stripes 33 and 1 meet in the same colour, plum, and read as one wide stripe.',
  ],
];

const warningsOf = (file: object) => planWarnings(planOf(file));

describe('a warning', () => {
  it('is not given without a reason', () => {
    expect(warningsOf(sound)).toEqual([]);
  });

  it.each(cases)('%s', (code, file, sentence) => {
    const warning = warningsOf(file).find((one) => one.code === code);
    expect(warning && sayBy('code', englishWords.warnings, warning)).toBe(sentence);
  });

  it('speaks of inches and ounces to those who use them', () => {
    const [code, file] = cases[0] ?? ['', {}];
    const warning = warningsOf(file).find((one) => one.code === code);
    expect(warning && sayBy('code', wordsIn(inEnglish, imperial).warnings, warning)).toContain(
      '0.5 oz short',
    );
  });

  it('does not list more rows than can be read', () => {
    const long = warningsOf({ ...counts(60, 640), bed: { needles: 70, pitchMm: 6.5 } })[0];
    expect(long && sayBy('code', englishWords.warnings, long)).toMatch(
      /rehang the work \d+ times, the first time after row 14\.$/,
    );
  });

  it('is not given for stripes of the one yarn there is', () => {
    const selfStriping = { ...sound, yarns: { plum: yarn }, stripes: [{ yarn: 'plum', rows: 2 }] };
    expect(warningsOf(selfStriping)).toEqual([]);
  });
});

describe('a sound swatch of any class at its label gauge', () => {
  // Stitches to 10 cm by class: Craft Yarn Council, Standard Yarn Weight System; jumbo of 6, since wider ones no
  // bed of 20 mm knits with ease. Tightness of labels 0.95 to 1.2, stitches 1.2 to 1.4 times as wide as high (rules of thumb).
  const classes = [
    [33, 40],
    [27, 32],
    [23, 26],
    [21, 24],
    [16, 20],
    [12, 15],
    [7, 11],
    [6, 6],
  ] as const;
  const swatches = fc.record({
    stitches: fc.constantFrom(...classes).chain(([least, most]) => fc.integer({ min: least, max: most })),
    aspect: fc.double({ min: 1.2, max: 1.4, noNaN: true }),
    tightness: fc.double({ min: 0.95, max: 1.2, noNaN: true }),
    shareOfPitch: fc.double({ min: 0.65, max: 0.88, noNaN: true }),
    state: fc.constantFrom<['dry-relaxed' | 'wet-relaxed' | 'fully-relaxed', number]>(
      ['dry-relaxed', 19],
      ['wet-relaxed', 21.6],
      ['fully-relaxed', 23.1],
    ),
  });

  it('brings no warning at all', () => {
    fc.assert(
      fc.property(swatches, ({ stitches, aspect, tightness, shareOfPitch, state: [state, ks] }) => {
        const stitchMm = 100 / stitches;
        const rowMm = stitchMm / aspect;
        const loopMm = Math.sqrt(ks * stitchMm * rowMm);
        const metresPer100g = 100_000 / (tightness * loopMm) ** 2;
        const plan = planOf({
          ...sound,
          bed: { needles: 250, pitchMm: Math.min(20, stitchMm / shareOfPitch) },
          swatch: { stitches, rows: stitches, widthCm: 10, heightCm: (stitches * rowMm) / 10, state },
          bag: { widthCm: 20, depthCm: 22 },
          yarns: {
            plum: { colour: '#6b2d5c', metresPer100g, grams: 500 },
            mint: { colour: '#9fd8c2', metresPer100g, grams: 500 },
          },
        });
        expect(planWarnings(plan)).toEqual([]);
      }),
      { numRuns: tries(1000) },
    );
  });
});
