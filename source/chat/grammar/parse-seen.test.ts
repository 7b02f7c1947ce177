import { describe, expect, it } from 'vitest';
import { englishWords } from '../../wording/words.ts';
import { formatChatFault } from '../chat-faults.ts';
import { parseLine } from '../parse-line.ts';
import type { ReplanWish } from './intent.ts';

/** An invented bag of 63 rows in stripes of two, one of its yarns with a name of two words. */
const known = { yarns: ['plum', 'mint', 'dark mint', 'waste'], marks: [], knittedRows: 63, stripeRows: 2 };

const read = (line: string): unknown => {
  const parsed = parseLine(line, englishWords, known);
  return parsed.ok ? parsed.value : formatChatFault(parsed.fault, englishWords);
};
const find = (seen: object, more = false, unsure = false) => ({
  kind: 'find',
  more,
  told: { seen, moment: null, askRow: null, ladder: false, bareYarn: expect.any(Boolean), leftOut: [] },
  unsure,
});

describe('what is seen', () => {
  it.each([
    [
      'find L24 R21 mint carriage right',
      { left: 'L24', right: 'R21', lastColour: 'mint', carriage: 'right' },
    ],
    [
      'find carriage on the right, mint, r21 l24',
      { left: 'L24', right: 'R21', lastColour: 'mint', carriage: 'right' },
    ],
    ['find R21 R66', { left: 'R21', right: 'R66' }],
    ['find L9 L40', { left: 'L40', right: 'L9' }],
    ['find left edge R21', { left: 'R21' }],
    ['find right R66 R21', { left: 'R21', right: 'R66' }],
    ['find row 34', { rowCounter: 34 }],
    ['find row counter 34', { rowCounter: 34 }],
    ['find 34 rows', { rowCounter: 34 }],
    ['find 9 stripes 37 stitches', { stripesCounted: 9, stitches: 37 }],
    ['find stripes 9 stitches 37', { stripesCounted: 9, stitches: 37 }],
    ['find feeder mint', { feeder: 'mint' }],
    ['find feeder empty', { feeder: null }],
    ['find waste', { lastColour: 'waste' }],
    ['find waste rows 6', { wasteRows: 6 }],
    ['find 6 waste rows', { wasteRows: 6 }],
    ['find ravel cord', { lastColour: 'ravel cord' }],
    ['find dark mint carriage left', { lastColour: 'dark mint', carriage: 'left' }],
    ['find empty', { left: null, right: null }],
    ['find loose', { looseEdgeLoop: true }],
    ['find firm', { looseEdgeLoop: false }],
  ])('%j', (line, seen) => {
    expect(read(line)).toEqual(find(seen));
  });

  it('is added to with and, and a question is passed by with unsure', () => {
    expect(read('find and carriage left')).toEqual(find({ carriage: 'left' }, true));
    expect(read('find unsure')).toEqual(find({}, true, true));
    expect(read('find and unsure')).toEqual(find({}, true, true));
  });

  it.each([
    ['find left', /^Say carriage left, or left and the needle/],
    ['find carriage', /^Something is missing: choose left or right/],
    ['find carriage up', /^up is not one of left or right/],
    ['find L1 L2 L3', /more than two edges/],
    ['find 37', /^37 of what\?/],
    ['find row x', /^x is not a whole number/],
    ['find feeder', /For example: find feeder mint/],
  ])('%j is answered with what to type instead', (line, sentence) => {
    expect(read(line)).toMatch(sentence);
  });
});

const nothing: ReplanWish = {
  stitches: null,
  rows: null,
  weighed: [],
  recolour: null,
  cord: null,
  want: 'any',
};
const amount = (value: number, unit: string | null) => ({ value, unit });

describe('what has changed', () => {
  it.each([
    ['replan', {}],
    ['replan shorter', { want: 'shorter' }],
    ['replan stop early', { want: 'shorter' }],
    ['replan longer', { want: 'longer' }],
    ['replan rows 60', { want: 60 }],
    ['replan 60 rows', { want: 60 }],
    ['replan 20 stitches 9,8 cm', { stitches: { count: 20, length: amount(9.8, 'cm') } }],
    [
      'replan 30 rows 105 mm 20 stitches 9.8',
      { stitches: { count: 20, length: amount(9.8, null) }, rows: { count: 30, length: amount(105, 'mm') } },
    ],
    [
      'replan 20 stitches 3.9in longer',
      { stitches: { count: 20, length: amount(3.9, 'in') }, want: 'longer' },
    ],
    [
      'replan weigh mint 12 g weighed dark plum 0.5 oz',
      {
        weighed: [
          { yarn: 'mint', amount: amount(12, 'g') },
          { yarn: 'dark plum', amount: amount(0.5, 'oz') },
        ],
      },
    ],
    [
      'replan colour mint to sand',
      { recolour: { from: 'mint', to: 'sand', colour: null, metresPer100g: null } },
    ],
    [
      'replan rows 60 colour mint to pale sand #D8C49A 190',
      {
        recolour: { from: 'mint', to: 'pale sand', colour: '#d8c49a', metresPer100g: 190 },
        want: 60,
      },
    ],
  ])('%j', (line, wish) => {
    expect(read(line)).toEqual({ kind: 'replan', wish: { ...nothing, ...wish } });
  });

  it.each(['replan weird', 'replan colour mint', 'replan 20 stitches wide', 'replan weigh mint'])(
    '%j is answered with an example that works',
    (line) => {
      const sentence = String(read(line));
      const example = /For example: (.+?);/.exec(sentence)?.[1] ?? '';
      expect(sentence).toMatch(/is not understood here/);
      expect(parseLine(example, englishWords).ok).toBe(true);
    },
  );
});
