import { describe, expect, it } from 'vitest';
import { type Fault, formatFault } from './faults.ts';
import { englishWords } from './words.ts';

/** Sizes are rounded down in a sentence: what it names must fit. */
const smaller = { stitches: 19, rows: 24, widthCm: 5.55, depthCm: 7.99, fitsBed: true };
const scraps = {
  stripes: 20,
  stripeRows: 2,
  possible: 12,
  everyOther: 10,
  scraps: [
    { yarn: 'plum', stripes: 7 },
    { yarn: 'mint', stripes: 5 },
  ],
};

const faults: readonly Fault[] = [
  { code: 'bed/needle-off-bed', needle: 'L76', needleCount: 150 },
  { code: 'bed/needle-holds-loop', needle: 'R8' },
  { code: 'bed/needle-empty', needle: 'R8' },
  { code: 'bed/loop-out-of-work', needle: 'R8' },
  { code: 'bed/feeder-empty', to: 'left' },
  { code: 'bed/feeder-full', yarn: 'mint', held: 'plum' },
  { code: 'bed/yarn-not-in-feeder', yarn: 'mint', held: 'plum' },
  { code: 'bed/yarn-not-in-feeder', yarn: 'mint', held: null },
  { code: 'bed/yarn-not-here', yarn: 'mint' },
  { code: 'bed/carriage-already-there', side: 'left' },
  { code: 'bed/no-working-needles' },
  { code: 'bed/transfer-uneven', fromCount: 2, toCount: 1 },
  { code: 'bed/nothing-to-take-off' },
  { code: 'bed/bed-not-empty', stitchCount: 1 },
  { code: 'bed/bed-not-empty', stitchCount: 8 },
  { code: 'bed/loops-differ', loopsOff: 8, needleCount: 1 },
  { code: 'plan/bed-too-short', stitches: 40, usable: 1, nearest: null },
  { code: 'plan/bed-too-short', stitches: 40, usable: 20, nearest: smaller },
  { code: 'plan/boxed-too-deep', boxedCm: 12, belowCm: 10.26 },
  { code: 'plan/scraps-cord-short', yarn: 'mint', shortGrams: 1.2 },
  { code: 'plan/scraps-no-closer', scraps: ['plum', 'mint'] },
  { code: 'plan/scraps-too-little', ...scraps, largest: null },
  { code: 'plan/scraps-too-little', ...scraps, everyOther: 7, largest: smaller },
  { code: 'plan/yarn-not-weighed' },
  { code: 'plan/yarn-for-no-bag', yarn: 'mint', shortGrams: 1.2, smallest: smaller },
  { code: 'session/nothing-to-confirm' },
  { code: 'session/too-many-steps', count: 9, left: 4 },
  { code: 'session/too-many-steps', count: 9, left: 1 },
  { code: 'session/nothing-to-take-back' },
  { code: 'session/nothing-to-redo' },
  { code: 'session/no-such-step', step: 81, stepCount: 79 },
  { code: 'session/already-there', done: 0 },
  { code: 'session/already-there', done: 1 },
  { code: 'session/nothing-to-say', what: 'note' },
  { code: 'session/nothing-to-say', what: 'mark' },
  { code: 'session/not-a-name', most: 200 },
  { code: 'weigh/no-such-yarn', yarn: 'gold', known: ['plum', 'mint'] },
  { code: 'weigh/not-a-weight', yarn: 'plum', grams: -1 },
  { code: 'weigh/more-than-before', yarn: 'plum', grams: 62.04, haveGrams: 60 },
  { code: 'measured/not-a-size', widthCm: 0, depthCm: 18 },
  { code: 'cord/not-asked' },
  { code: 'cord/not-a-length', lengthCm: 0 },
];

describe('the sentence for a fault', () => {
  it('is the one that was approved', async () => {
    const said = faults.map((fault) => `${JSON.stringify(fault)}\n    ${formatFault(fault, englishWords)}\n`);
    await expect(said.join('')).toMatchFileSnapshot('faults.approved.txt');
  });

  it('cuts a long text short and shows its control characters', () => {
    const long = {
      code: 'brief/not-one-of',
      field: 'crawl',
      value: 'x'.repeat(99),
      choices: ['left'],
    } as const;
    expect(formatFault(long, englishWords)).toBe(`crawl is "${'x'.repeat(39)}…": choose "left".`);
    const steering = {
      code: 'brief/unknown-yarn',
      field: 'cord.yarn',
      yarn: '\u001b[2J\u202e',
      known: ['mint'],
    } as const;
    expect(formatFault(steering, englishWords)).toBe(
      'cord.yarn is "\\u001b[2J\\u202e", which is none of the yarns: choose "mint".',
    );
  });

  it('names no more than a handful of yarns', () => {
    const known = ['plum', 'mint', 'sand', 'slate', 'rust', 'moss', 'clay'];
    expect(
      formatFault({ code: 'brief/unknown-yarn', field: 'cord.yarn', yarn: 'x', known }, englishWords),
    ).toBe(
      'cord.yarn is "x", which is none of the yarns: choose "plum", "mint", "sand", "slate", "rust" or another.',
    );
  });
});
