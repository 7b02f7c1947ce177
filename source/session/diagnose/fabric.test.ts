/** Rows of fabric by the bed they are knitted on, and what is seen of a difference: beds drawn and read by hand. */
import { describe, expect, it } from 'vitest';
import { type Bed, emptyBed } from '../../bed/bed.ts';
import { type FabricRow, fabricRow, sameFabric, tracesIn } from './fabric.ts';

/** `.` out of work, `o` in work and empty, else so many loops. */
function drawn(picture: string): Bed {
  const bed = emptyBed(picture.length, 'right', true);
  const needles = [...picture].map((sign) => ({
    working: sign !== '.',
    loopCount: Number(sign) || 0,
    yarn: Number(sign) ? 'plum' : null,
  }));
  return { ...bed, needles };
}

const row = (picture: string, yarn = 'plum'): FabricRow => fabricRow(drawn(picture), yarn);

describe('the row that a pass knits', () => {
  it.each([
    ['..1111..', { left: 2, right: 5, holes: [], gaps: 0, thick: 0, strays: 0 }],
    ['11111111', { left: 0, right: 7, holes: [], gaps: 0, thick: 0, strays: 0 }],
    ['..11o121', { left: 2, right: 7, holes: [4], gaps: 0, thick: 0, strays: 0 }],
    ['..1.o131', { left: 2, right: 7, holes: [4], gaps: 1, thick: 1, strays: 0 }],
    ['.o1..1o.', { left: 2, right: 5, holes: [], gaps: 2, thick: 0, strays: 2 }],
    ['..1oo14.', { left: 2, right: 6, holes: [3, 4], gaps: 0, thick: 1, strays: 0 }],
  ])('%s', (picture, seen) => expect(row(picture)).toEqual({ yarn: 'plum', ...seen }));
});

describe('two fabrics', () => {
  const plain = [row('..11o11.'), row('..11111.')];

  it('are the same where nothing differs that shows', () => {
    expect(sameFabric(plain, [row('..12o11.'), row('..11111.')])).toBe(true);
    for (const other of ['.111111.', '..111111', '..11o11.', '..11.11.', '..11311.', '..11111o'])
      expect(sameFabric(plain, [row('..11o11.'), row(other)])).toBe(false);
    expect(sameFabric(plain, [row('..11o11.'), row('..11111.', 'mint')])).toBe(false);
    expect(sameFabric(plain, plain.slice(0, 1))).toBe(false);
  });

  const shows = (made: readonly FabricRow[], crawl: 'left' | 'right' = 'left') =>
    [...tracesIn(made, plain, crawl)].sort();

  it.each([
    ['nothing', ['..11o11.', '..11111.'], []],
    ['a step at the leading edge', ['..11o11.', '.111111.'], ['step-in-leading-edge']],
    ['a step at the trailing edge', ['..11o11.', '..1111..'], ['step-in-trailing-edge']],
    ['three in one', ['..11o11.', '..11311.'], ['three-in-one']],
    ['a loop at the edge', ['..11o11.', '..11111o'], ['loop-at-edge']],
    ['a ladder', ['..11o11.', '..11.11.'], ['ladder']],
    ['one eyelet less', ['..11111.', '..11111.'], ['eyelet-missing']],
    ['an eyelet a row later', ['..11111.', '..11o11.'], ['eyelet-out-of-line']],
    ['an eyelet one needle aside', ['..1o111.', '..11111.'], ['eyelet-out-of-line']],
    [
      'one eyelet more, near the trailing edge',
      ['..11o11.', '..111o1.'],
      ['extra-eyelet', 'hole-at-trailing-edge'],
    ],
    ['two side by side', ['..1oo11.', '..11111.'], ['extra-eyelet', 'wide-hole']],
  ] as const)('%s', (_, made, traces) => {
    expect(shows(made.map((picture) => row(picture)))).toEqual([...traces]);
  });

  it('show steps and holes by the side that the bag crawls to', () => {
    expect(shows([row('..11o11.'), row('.111111.')], 'right')).toEqual(['step-in-trailing-edge']);
    expect(shows([row('..11o11.'), row('..1o111.')], 'right')).toEqual([
      'extra-eyelet',
      'hole-at-trailing-edge',
    ]);
    expect(shows([row('..11o11.'), row('..1o111.')], 'left')).toEqual(['extra-eyelet']);
  });

  it('of more rows or fewer, or in another colour, say only that of the rows', () => {
    expect(shows([...plain, row('..11111.')])).toEqual(['stripe-too-high']);
    expect(shows(plain.slice(0, 1))).toEqual(['stripe-too-low']);
    expect(shows([row('..11o11.'), row('..11111.', 'mint')])).toEqual(['wrong-colour']);
    // Its edges lie elsewhere since rows are missing, and not by a slip.
    expect(shows([row('.11o11..')])).toEqual(['stripe-too-low']);
  });
});
