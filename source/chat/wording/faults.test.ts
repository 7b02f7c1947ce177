import { describe, expect, it } from 'vitest';
import { englishWords } from '../../wording/words.ts';
import { type Fault, formatFault } from './faults.ts';

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

const sentences: readonly (readonly [Fault, string])[] = [
  [
    { code: 'bed/needle-off-bed', needle: 'L76', needleCount: 150 },
    'There is no needle L76: the bed runs from L75 to L1 and from R1 to R75.',
  ],
  [
    { code: 'bed/needle-holds-loop', needle: 'R8' },
    'Needle R8 still holds a loop: move the loop before you push the needle out of work.',
  ],
  [
    { code: 'bed/needle-empty', needle: 'R8' },
    'Needle R8 has no loop to lift: look again where the edge of the work is.',
  ],
  [
    { code: 'bed/loop-on-resting-needle', needle: 'R8' },
    'Needle R8 rests but holds a loop: bring it into work before the pass.',
  ],
  [
    { code: 'bed/feeder-empty', to: 'left' },
    'The feeder is empty, so a pass to the left would drop every stitch: thread a yarn first.',
  ],
  [
    { code: 'bed/feeder-full', yarn: 'mint', held: 'plum' },
    'The feeder holds plum: take plum out before you thread mint.',
  ],
  [
    { code: 'bed/yarn-not-in-feeder', yarn: 'mint', held: 'plum' },
    'The feeder holds plum, not mint: park plum instead.',
  ],
  [
    { code: 'bed/yarn-not-in-feeder', yarn: 'mint', held: null },
    'The feeder is empty, so mint cannot be parked from it: thread mint first.',
  ],
  [
    { code: 'bed/yarn-not-here', yarn: 'mint' },
    'There is no mint to cut, in the feeder or parked: thread mint first.',
  ],
  [
    { code: 'bed/carriage-already-there', side: 'left' },
    'The carriage is already on the left: make this pass to the right.',
  ],
  [
    { code: 'bed/no-working-needles' },
    'No needle is working: bring the needles you want to knit on into work first.',
  ],
  [
    { code: 'bed/transfer-uneven', fromCount: 2, toCount: 1 },
    'A transfer from 2 needles cannot go to 1 needle: name as many to set down on as to lift from.',
  ],
  [
    { code: 'bed/nothing-to-take-off' },
    'The bed holds no loops, so there is nothing to take off: go on to the next step.',
  ],
  [{ code: 'bed/bed-not-empty', stitchCount: 1 }, 'The bed still holds 1 stitch: take the work off first.'],
  [{ code: 'bed/bed-not-empty', stitchCount: 8 }, 'The bed still holds 8 stitches: take the work off first.'],
  [
    { code: 'bed/loops-differ', loopsOff: 8, needleCount: 1 },
    '8 loops came off but 1 needle would take them: choose as many needles as loops.',
  ],
  [
    { code: 'plan/bed-too-short', stitches: 40, usable: 1, nearest: null },
    'The bag is 40 stitches deep, but the bed has 1 needle within its margins, too few for any bag: take a longer bed, or narrower margins.',
  ],
  [
    { code: 'plan/bed-too-short', stitches: 40, usable: 20, nearest: smaller },
    'The bag is 40 stitches deep, but the bed has 20 needles within its margins: the nearest that can crawl is 19 stitches, 5.5 cm wide and 7.9 cm deep.',
  ],
  [
    { code: 'plan/scraps-cord-short', yarn: 'mint', shortGrams: 1.2 },
    'mint is 2 g too little for the cord alone: name a longer yarn in cord.yarn, or shorten cord.tieCm.',
  ],
  [
    { code: 'plan/scraps-no-closer', scraps: ['plum', 'mint'] },
    'None of plum and mint is enough for the last stripe, which also grafts and sews: add a longer leftover.',
  ],
  [
    { code: 'plan/scraps-too-little', ...scraps, largest: null },
    'The bag has 20 stripes of 2 rows, and the scraps knit 12 of them (plum 7 and mint 5): add a yarn, or make the bag smaller.',
  ],
  [
    { code: 'plan/scraps-too-little', ...scraps, everyOther: 7, largest: smaller },
    'The bag has 20 stripes of 2 rows, and the scraps knit 12 of them (plum 7 and mint 5; no yarn can knit more than every other stripe): the largest they make is 5.5 cm wide and 7.9 cm deep, with bag.stitches 19 and bag.rows 24; or add a yarn.',
  ],
  [
    { code: 'plan/yarn-not-weighed' },
    'No yarn of the brief has been weighed: give its grams, or leave out --from-yarn.',
  ],
  [
    { code: 'plan/yarn-for-no-bag', yarn: 'mint', shortGrams: 1.2, smallest: smaller },
    'mint is 2 g short even for the smallest bag of this shape, 5.5 cm wide and 7.9 cm deep: weigh it again, or take another yarn.',
  ],
  [{ code: 'session/nothing-to-confirm' }, 'The bag is finished: there is no step left to confirm.'],
  [
    { code: 'session/too-many-steps', count: 9, left: 4 },
    '9 steps cannot be confirmed: 4 are left, so give a whole number from 1 to 4.',
  ],
  [
    { code: 'session/too-many-steps', count: 9, left: 1 },
    'Only the last step is left, so 9 cannot be confirmed at once: confirm 1.',
  ],
  [{ code: 'session/nothing-to-take-back' }, 'There is nothing to take back: this is where the work began.'],
  [
    { code: 'session/nothing-to-redo' },
    'There is nothing to do again: nothing was taken back since the last step.',
  ],
  [
    { code: 'session/no-such-step', step: 81, stepCount: 79 },
    'There is no step 81: this bag has steps 1 to 79.',
  ],
  [{ code: 'session/already-there', done: 0 }, 'You are there already: no step confirmed so far.'],
  [{ code: 'session/already-there', done: 1 }, 'You are there already: 1 step confirmed so far.'],
  [
    { code: 'session/nothing-to-say', what: 'note' },
    'The note is empty: type what you want to remember after the word note.',
  ],
  [
    { code: 'session/nothing-to-say', what: 'mark' },
    'The mark has no name: type a name for this place after the word mark.',
  ],
  [
    { code: 'weigh/no-such-yarn', yarn: 'gold', known: ['plum', 'mint'] },
    'gold is not a yarn of this bag: it has plum and mint.',
  ],
  [
    { code: 'weigh/not-a-weight', yarn: 'plum', grams: -1 },
    '-1 g of plum cannot be weighed: give 0 or more.',
  ],
  [
    { code: 'weigh/more-than-before', yarn: 'plum', grams: 62.04, haveGrams: 60 },
    'There were 60 g of plum before the work, so 62 g cannot be left: weigh it once more.',
  ],
  [
    { code: 'measured/not-a-size', widthCm: 0, depthCm: 18 },
    'No bag is 0 cm by 18 cm: type its width and then its depth, as in measured 13.6 18.',
  ],
  [
    { code: 'cord/not-asked' },
    'The cord is measured at the step that asks for it, when 20 rounds of it are knitted.',
  ],
  [
    { code: 'cord/not-a-length', lengthCm: 0 },
    'Rounds of cord are not 0 cm long: type their length, as in cord 7.4.',
  ],
];

describe('the sentence for a fault', () => {
  it.each(sentences)('%j', (fault, sentence) => {
    expect(formatFault(fault, englishWords)).toBe(sentence);
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
