/** What the hands do so that a bed is as another one: beds of twelve needles, L6 to R6, drawn and worked out by hand. */
import { describe, expect, it } from 'vitest';
import { briefOf, stripedBrief } from '../../../test/fixtures/plan-of.ts';
import { type Bed, emptyBed, type Side } from '../../bed/bed.ts';
import type { BedMove } from '../../bed/move.ts';
import { applyMends } from '../mend/mend.ts';
import { hangAgain, sameBed, setIn, setOut, settleEdges, settleYarns } from './settle.ts';

interface Around {
  readonly carriage?: Side;
  readonly feeder?: string | null;
  readonly parked?: Record<string, Side>;
}

/** `.` out of work, `o` in work and empty, else so many loops. */
function drawn(picture: string, { carriage = 'right', feeder = 'plum', parked = {} }: Around = {}): Bed {
  const needles = [...picture].map((sign) => ({
    working: sign !== '.',
    loopCount: Number(sign) || 0,
    yarn: Number(sign) ? 'plum' : null,
  }));
  const around = { carriage, feeder, parked: new Map(Object.entries(parked)) };
  return { ...emptyBed(picture.length, 'right', true), needles, ...around };
}

const picture = ({ needles }: Bed): string =>
  needles.map(({ working, loopCount }) => (working ? (loopCount === 0 ? 'o' : loopCount) : '.')).join('');

function madeOn(bed: Bed, moves: readonly BedMove[] | null): string | null {
  const made = moves && applyMends(bed, moves);
  return made?.ok ? picture(made.value) : null;
}

describe('the outermost loops', () => {
  it.each([
    ['left', '..11111111..', '.11o111111..'],
    ['right', '..11111111..', '..111111o11.'],
    ['right', '..1111112o..', '..11111o12..'],
  ] as const)('go one needle out on the %s: %s', (side, bed, then) =>
    expect(madeOn(drawn(bed), setOut(drawn(bed), side, 2))).toBe(then),
  );

  it.each([
    ['left', '..11111111..', '...1211111..'],
    ['right', '..11111111..', '..1111121...'],
  ] as const)('go one needle in on the %s: %s', (side, bed, then) =>
    expect(madeOn(drawn(bed), setIn(drawn(bed), side, 2))).toBe(then),
  );

  it('have to have room, and loops on each of them', () => {
    expect(setOut(drawn('111111111111'), 'left', 2)).toBeNull();
    expect(setOut(drawn('111111111111'), 'right', 2)).toBeNull();
    expect(setOut(drawn('.11111111111'), 'left', 2)).not.toBeNull();
    expect(setOut(drawn('11111111111.'), 'right', 2)).not.toBeNull();
    expect(setOut(drawn('..1o111111..'), 'left', 2)).toBeNull();
    expect(setOut(drawn('............'), 'left', 2)).toBeNull();
    expect(setIn(drawn('............'), 'right', 2)).toBeNull();
  });
});

describe('carriage and yarns', () => {
  const told = (bed: Around, planned: Around) =>
    settleYarns(drawn('..11111111..', bed), drawn('..11111111..', planned)).map(
      (move) =>
        `${move.move} ${'yarn' in move ? move.yarn : ''}${'to' in move ? move.to : ''}${'end' in move ? ` ${move.end}` : ''}`,
    );

  it.each<[string, Around, Around, readonly string[]]>([
    ['are right', {}, {}, []],
    ['are right, with a yarn parked', { parked: { mint: 'right' } }, { parked: { mint: 'right' } }, []],
    ['the feeder is empty', { feeder: null }, {}, ['feed plum']],
    ['the feeder should be empty', {}, { feeder: null }, ['cut plum']],
    [
      'another yarn is in the feeder',
      { feeder: 'mint', parked: { plum: 'right' } },
      { parked: { mint: 'right' } },
      ['park mint right', 'feed plum'],
    ],
    ['a yarn is in the feeder that is done with', { feeder: 'sand' }, {}, ['cut sand', 'feed plum']],
    [
      'the carriage stands on the other side',
      { carriage: 'left' },
      {},
      ['park plum left', 'slip right', 'feed plum'],
    ],
    [
      'it does, with nothing in the feeder',
      { carriage: 'left', feeder: null },
      { feeder: null },
      ['slip right'],
    ],
    [
      'a parked yarn waits at the wrong end',
      { feeder: null, parked: { mint: 'left' } },
      { parked: { mint: 'right' } },
      ['feed mint', 'park mint right', 'feed plum'],
    ],
    ['a parked yarn is done with', { feeder: null, parked: { mint: 'left' } }, {}, ['cut mint', 'feed plum']],
  ])('%s', (_, bed, planned, moves) => expect(told(bed, planned)).toEqual(moves));
});

const { brief } = briefOf(stripedBrief(8, 8, 60));

describe('edges', () => {
  const settled = (bed: string, planned: string, of = brief) => {
    const parts = settleEdges(drawn(bed), drawn(planned), of);
    return parts && [parts.length, madeOn(drawn(bed), parts.flat())];
  };

  it.each([
    ['are right', '..11111111..', '..11111111..', [0, '..11111111..']],
    ['leading edge one short', '...1111111..', '..11o11111..', [1, '..11o11111..']],
    ['trailing edge one too far', '..111111111.', '..11111121..', [1, '..11111121..']],
    ['both', '...11111111.', '..11o11121..', [2, '..11o11121..']],
    ['leading edge too far', '.111111111..', '..1111111...', [2, '..1211121...']],
    ['a needle out of work between them', '..11.11111..', '..11o11111..', [1, '..11o11111..']],
    ['four needles', '......111111', '..11ooo11111', [4, '..11oooo1111']],
  ] as const)('%s', (_, bed, planned, result) => expect(settled(bed, planned)).toEqual(result));

  it('are none that lie five needles off, or beyond the bed', () => {
    expect(settled('.......11111', '..1111111111')).toBeNull();
    expect(settled('.....1111111', '..1111111111')).not.toBeNull();
    expect(settled('..11.11111..', '..11.11111..')).toEqual([0, '..11.11111..']);
  });

  it('are led by the side that the bag crawls to', () => {
    const right = briefOf({ ...stripedBrief(8, 8, 60), crawl: 'right' }).brief;
    const [first] = settleEdges(drawn('..1111111...'), drawn('...1111111..'), right) ?? [];
    expect(first?.[0]).toEqual({ move: 'work', needles: ['R4'] });
  });
});

describe('work that hangs aside', () => {
  const again = (bed: string, planned: string) => madeOn(drawn(bed), hangAgain(drawn(bed), drawn(planned)));

  it('is taken off and hung again', () => {
    expect(again('..111111....', '...111111...')).toBe('...111111...');
    expect(again('..111111....', '111111......')).toBe('111111......');
  });

  it.each([
    ['hangs right', '..111111....', '..111111....'],
    ['is narrower', '..111111....', '...11111....'],
    ['is wider', '..111111....', '...1111111..'],
    ['holds two on a needle', '..112111....', '...111111...'],
    ['has an eyelet', '..11o111....', '...111111...'],
    ['is off the bed', '............', '...111111...'],
    ['should be off the bed', '..111111....', '............'],
  ])('is left where it %s', (_, bed, planned) => expect(hangAgain(drawn(bed), drawn(planned))).toBeNull());
});

describe('two beds', () => {
  const one = drawn('..11o12.....', { parked: { mint: 'left' } });

  it('are the same but for the counter', () => {
    expect(sameBed(one, { ...one, counter: 99 })).toBe(true);
  });

  it.each<[string, Partial<Bed>]>([
    ['the carriage', { carriage: 'left' }],
    ['the feeder', { feeder: null }],
    ['loops that are off', { loopsOff: 3 }],
    ['one parked yarn', { parked: new Map() }],
    ['where it waits', { parked: new Map([['mint', 'right']]) }],
    ['which it is', { parked: new Map([['sand', 'left']]) }],
    ['a needle', { needles: drawn('..11.12.....').needles }],
    ['loops', { needles: drawn('..11o11.....').needles }],
    ['a yarn', { needles: one.needles.map((needle) => ({ ...needle, yarn: needle.yarn && 'mint' })) }],
  ])('differ by %s', (_, change) => {
    expect(sameBed(one, { ...one, ...change })).toBe(false);
  });
});
