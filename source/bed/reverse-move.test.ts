/** Moves taken back on a bed of ten needles, L5 to R5, each case followed by hand. */
import { describe, expect, it } from 'vitest';
import { valueIn } from '../../test/tools/result.ts';
import { applyMove } from './apply-move.ts';
import { type Bed, emptyBed } from './bed.ts';
import type { BedMove, ReverseMove } from './move.ts';
import { applyReverse } from './reverse-move.ts';
import { reverseOf } from './reverse-of.ts';

const make = (bed: Bed, ...moves: readonly BedMove[]): Bed =>
  moves.reduce((now, move) => {
    return valueIn(applyMove(now, move));
  }, bed);

const faultOf = (bed: Bed, move: ReverseMove): unknown => {
  const outcome = applyReverse(bed, move);
  return outcome.ok ? null : outcome.fault;
};

/** Five stitches of plum, L2 to R3; the carriage is home on the right. */
const five = make(
  emptyBed(10, 'right'),
  { move: 'work', needles: ['L2', 'L1', 'R1', 'R2', 'R3'] },
  { move: 'cast-on', yarn: 'grey', from: 'L2', to: 'R3' },
  { move: 'feed', yarn: 'plum' },
  { move: 'knit', to: 'left' },
  { move: 'knit', to: 'right' },
);
const decrease: BedMove = { move: 'transfer', from: ['R3', 'R2'], to: ['R2', 'R1'] };
const increase: BedMove = { move: 'transfer', from: ['L2', 'L1'], to: ['L3', 'L2'] };
const wider = make(five, { move: 'work', needles: ['L3'] });
const shaped = make(wider, increase, decrease, { move: 'rest', needles: ['R3'] });

describe('a move taken back', () => {
  it('parts the doubled stitch of a decrease: R1 holds two, and gives one back to R2', () => {
    const doubled = make(five, decrease);
    expect(doubled.needles[5]).toEqual({ working: true, loopCount: 2, yarn: 'plum' });
    const back = reverseOf(five, decrease);
    expect(back).toEqual({
      undo: 'transfer',
      from: ['R2', 'R1'],
      to: ['R3', 'R2'],
      lifts: [1, 1],
      parts: true,
      rests: [],
    });
    expect(back && applyReverse(doubled, back)).toEqual({ ok: true, value: five });
  });

  it('sets the loops of an increase back in, and L3, which had come into work for it, stays there', () => {
    const back = reverseOf(wider, increase);
    expect(back).toMatchObject({ from: ['L3', 'L2'], to: ['L2', 'L1'], rests: [] });
    expect(back && applyReverse(make(wider, increase), back)).toEqual({ ok: true, value: wider });
    expect(applyReverse(wider, { undo: 'work', needles: ['L3'] })).toEqual({ ok: true, value: five });
  });

  it('hangs again what a pass with an empty feeder dropped, the carriage and the counter where they were', () => {
    const bare = make(five, { move: 'cut', yarn: 'plum' });
    const drop: BedMove = { move: 'take-off', to: 'left' };
    const back = reverseOf(bare, drop);
    expect(back).toMatchObject({ undo: 'take-off', back: 'right', offBefore: 0 });
    expect(back && applyReverse(make(bare, drop), back)).toEqual({ ok: true, value: bare });
  });

  it('turns the row counter back to what it showed: 2', () => {
    const set: BedMove = { move: 'counter', rows: 0 };
    expect(reverseOf(five, set)).toEqual({ undo: 'counter', rows: 2 });
    expect(applyReverse(make(five, set), { undo: 'counter', rows: 2 })).toEqual({ ok: true, value: five });
  });

  it('pulls a row out to two loops on R1 and none on L1, the eyelet', () => {
    const back = reverseOf(shaped, { move: 'knit', to: 'left' });
    expect(back).toEqual({
      undo: 'knit',
      yarn: 'plum',
      back: 'right',
      catches: [
        { first: 'L3', last: 'L2', loops: 1, yarn: 'plum' },
        { first: 'L1', last: 'L1', loops: 0, yarn: null },
        { first: 'R1', last: 'R1', loops: 2, yarn: 'plum' },
        { first: 'R2', last: 'R2', loops: 1, yarn: 'plum' },
      ],
    });
    const knitted = make(shaped, { move: 'knit', to: 'left' });
    expect(knitted.eyeletCount).toBe(1);
    expect(back && applyReverse(knitted, back)).toEqual({ ok: true, value: shaped });
  });

  it('leaves nothing to undo of a measuring, and unpicks the rest of what the hands did', () => {
    expect(reverseOf(five, { move: 'measure', lengthCm: 30 })).toBeNull();
    const movement = { move: 'graft', edge: 'B', down: 1, up: 2 } as const;
    expect(reverseOf(five, movement)).toEqual({ undo: 'hand', what: movement });
  });
});

describe('a move that cannot be taken back so', () => {
  const pull: ReverseMove = { undo: 'knit', yarn: 'plum', back: 'left', catches: [] };

  it('names what stands in the way', () => {
    expect(faultOf(five, { ...pull, back: 'right' })).toEqual({
      code: 'bed/carriage-already-there',
      side: 'right',
    });
    expect(faultOf(five, { ...pull, yarn: 'mint' })).toMatchObject({ code: 'bed/yarn-not-in-feeder' });
    const mixed: Bed = {
      ...five,
      needles: five.needles.map((needle, i) => (i === 4 ? { ...needle, yarn: 'mint' } : needle)),
    };
    expect(faultOf(mixed, pull)).toEqual({
      code: 'reverse/other-yarn',
      needle: 'L1',
      yarn: 'plum',
      held: 'mint',
    });
    const part: ReverseMove = {
      undo: 'transfer',
      from: ['R1'],
      to: ['R2'],
      lifts: [2],
      parts: false,
      rests: [],
    };
    expect(faultOf(five, part)).toEqual({ code: 'reverse/too-few-loops', needle: 'R1', loops: 2 });
    expect(faultOf(five, { undo: 'work', needles: ['R1'] })).toMatchObject({ code: 'bed/needle-holds-loop' });
    expect(faultOf(five, { undo: 'stray', needle: 'R9' })).toMatchObject({ code: 'bed/needle-off-bed' });
    expect(faultOf(five, { undo: 'park', yarn: 'mint' })).toMatchObject({ code: 'bed/feeder-full' });
    expect(faultOf(five, { undo: 'cut', yarn: 'mint', joinedAt: 'feeder' })).toMatchObject({
      code: 'bed/feeder-full',
    });
    expect(faultOf(five, { undo: 'feed', yarn: 'mint', parkedAt: null })).toMatchObject({
      code: 'bed/yarn-not-in-feeder',
    });
    expect(faultOf(five, { undo: 'take-off', hangs: [], offBefore: 0 })).toMatchObject({
      code: 'bed/bed-not-empty',
    });
    expect(faultOf(emptyBed(10, 'left'), { undo: 'rehang', left: 'L2', right: 'R2' })).toEqual({
      code: 'bed/nothing-to-take-off',
    });
    const off = make(five, { move: 'take-off' });
    expect(
      faultOf(off, {
        undo: 'take-off',
        hangs: [{ first: 'L1', last: 'R1', loops: 1, yarn: null }],
        offBefore: 0,
      }),
    ).toEqual({
      code: 'bed/loops-differ',
      loopsOff: 5,
      needleCount: 2,
    });
    expect(faultOf(make(five, { move: 'cut', yarn: 'plum' }), { undo: 'park', yarn: 'mint' })).toMatchObject({
      code: 'bed/yarn-not-here',
    });
  });
});

describe('any move, taken back at once,', () => {
  const bare = make(five, { move: 'cut', yarn: 'plum' });
  const parked = make(five, { move: 'park', yarn: 'plum', end: 'left' });
  const free = make(
    five,
    { move: 'take-off' },
    { move: 'work', needles: ['L3', 'L2', 'L1', 'R1', 'R2', 'R3'] },
  );
  const ready = make(emptyBed(10, 'right'), { move: 'work', needles: ['L1', 'R1'] });
  const moves: readonly (readonly [name: string, bed: Bed, move: BedMove])[] = [
    ['needles brought into work', five, { move: 'work', needles: ['L3', 'L2', 'R4'] }],
    ['a needle put out of work', wider, { move: 'rest', needles: ['L3', 'L4'] }],
    ['the carriage stood elsewhere', ready, { move: 'stand', side: 'left' }],
    ['a cast-on', ready, { move: 'cast-on', yarn: 'grey', from: 'L1', to: 'R1' }],
    ['a yarn threaded from the ball', bare, { move: 'feed', yarn: 'mint' }],
    ['a yarn threaded from where it was parked', parked, { move: 'feed', yarn: 'plum' }],
    ['a yarn parked', five, { move: 'park', yarn: 'plum', end: 'right' }],
    ['a yarn cut in the feeder', five, { move: 'cut', yarn: 'plum' }],
    ['a yarn cut where it was parked', parked, { move: 'cut', yarn: 'plum' }],
    ['a row over an eyelet to be', make(five, decrease), { move: 'knit', to: 'left' }],
    ['work taken off by hand', five, { move: 'take-off' }],
    ['work dropped by a pass', bare, { move: 'take-off', to: 'left' }],
    ['work hung on some of the needles in work', free, { move: 'rehang', left: 'L3', right: 'R2' }],
  ];

  it.each(moves)('leaves the bed as it was: %s', (_, bed, move) => {
    const back = reverseOf(bed, move);
    expect(back && applyReverse(make(bed, move), back)).toEqual({ ok: true, value: bed });
  });

  it('is refused where the bench is not as it left it', () => {
    expect(faultOf(bare, { undo: 'feed', yarn: 'plum', parkedAt: null })).toMatchObject({ held: null });
    expect(faultOf(five, { undo: 'park', yarn: 'mint' })).toMatchObject({ code: 'bed/feeder-full' });
    expect(faultOf(bare, { undo: 'park', yarn: 'mint' })).toMatchObject({ code: 'bed/yarn-not-here' });
    expect(faultOf(five, { undo: 'cut', yarn: 'mint', joinedAt: 'feeder' })).toMatchObject({ held: 'plum' });
    expect(faultOf(five, { undo: 'work', needles: ['L3', 'R1'] })).toMatchObject({ needle: 'R1' });
    expect(faultOf(free, { undo: 'rehang', left: 'L3', right: 'R2' })).toMatchObject({
      code: 'bed/nothing-to-take-off',
    });
  });

  it('is refused on needles that the bed does not have', () => {
    const away = { first: 'R9', last: 'R9', loops: 1, yarn: 'plum' };
    const moves: readonly ReverseMove[] = [
      { undo: 'work', needles: ['R9'] },
      { undo: 'stray', needle: 'R9' },
      { undo: 'transfer', from: ['R9'], to: ['R1'], lifts: [1], parts: false, rests: [] },
      { undo: 'transfer', from: ['R1'], to: ['R9'], lifts: [1], parts: false, rests: [] },
      { undo: 'rehang', left: 'L1', right: 'R9' },
      { undo: 'knit', yarn: 'plum', back: 'left', catches: [away] },
    ];
    for (const move of moves) expect(faultOf(five, move)).toMatchObject({ needle: 'R9' });
    expect(faultOf(free, { undo: 'take-off', hangs: [away], offBefore: 0 })).toMatchObject({ needle: 'R9' });
  });

  it('drops a stray loop, and its needle goes out of work', () => {
    const back = applyReverse(five, { undo: 'stray', needle: 'R3' });
    expect(back.ok && back.value.needles[7]).toEqual({ working: false, loopCount: 0, yarn: null });
  });
});
