import { describe, expect, it } from 'vitest';
import { bedAfter, bedOf, faultOf } from '../../test/fixtures/drawn-bed.ts';

describe('the feeder', () => {
  const empty = bedOf('.11.', { feeder: null });

  it('takes one yarn, which is then parked no longer', () => {
    const bed = bedAfter({ ...empty, parked: new Map([['mint', 'left']]) }, { move: 'feed', yarn: 'mint' });
    expect([bed.feeder, [...bed.parked]]).toEqual(['mint', []]);
  });

  it('gives its yarn to the mast arm at one end of the bed', () => {
    const bed = bedAfter(bedOf('.11.'), { move: 'park', yarn: 'plum', end: 'right' });
    expect([bed.feeder, [...bed.parked]]).toEqual([null, [['plum', 'right']]]);
  });

  it('is empty once its yarn is cut', () => {
    expect(bedAfter(bedOf('.11.'), { move: 'cut', yarn: 'plum' }).feeder).toBeNull();
  });

  it('keeps its yarn when a parked one is cut', () => {
    const bed = bedAfter(bedOf('.11.', { parked: new Map([['mint', 'left']]) }), {
      move: 'cut',
      yarn: 'mint',
    });
    expect([bed.feeder, [...bed.parked]]).toEqual(['plum', []]);
  });

  it('does not take a second yarn', () => {
    expect(faultOf(bedOf('.11.'), { move: 'feed', yarn: 'mint' })).toEqual({
      code: 'bed/feeder-full',
      yarn: 'mint',
      held: 'plum',
    });
  });

  it.each([['plum'], [null]])('does not give what it does not hold: %s', (held) => {
    expect(faultOf(bedOf('.11.', { feeder: held }), { move: 'park', yarn: 'mint', end: 'left' })).toEqual({
      code: 'bed/yarn-not-in-feeder',
      yarn: 'mint',
      held,
    });
  });

  it('or a mast arm must hold the yarn that is cut', () => {
    expect(faultOf(bedOf('.11.'), { move: 'cut', yarn: 'mint' })).toEqual({
      code: 'bed/yarn-not-here',
      yarn: 'mint',
    });
  });
});
