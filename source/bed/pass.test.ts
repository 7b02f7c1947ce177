import { describe, expect, it } from 'vitest';
import { bedAfter, bedOf, draw, faultOf } from '../../test/fixtures/drawn-bed.ts';

describe('a pass', () => {
  it('lays a loop on each working needle and carries the carriage across', () => {
    const bed = bedAfter(bedOf('..o12..'), { move: 'knit', to: 'left' });
    expect(draw(bed)).toBe('..111..');
    expect(bed.carriage).toBe('left');
  });

  it('knits the two loops of a doubled needle into one', () => {
    expect(draw(bedAfter(bedOf('.121.'), { move: 'knit', to: 'left' }))).toBe('.111.');
  });

  it('leaves the yarn in the feeder on each needle it knits', () => {
    const bed = bedAfter(bedOf('.11.', { feeder: 'mint' }), { move: 'knit', to: 'left' });
    expect(bed.needles.map(({ yarn }) => yarn)).toEqual([null, 'mint', 'mint', null]);
  });

  it('makes no eyelet on a bed with nothing on it', () => {
    expect(bedAfter(bedOf('ooo'), { move: 'knit', to: 'left' }).eyeletCount).toBe(0);
  });

  it('makes an eyelet on an empty working needle between the edges, not beyond them', () => {
    expect(bedAfter(bedOf('.1o1o.'), { move: 'knit', to: 'left' }).eyeletCount).toBe(1);
    expect(
      bedAfter(bedOf('.1o1oo'), { move: 'knit', to: 'left' }, { move: 'knit', to: 'right' }).eyeletCount,
    ).toBe(1);
  });

  it('that slips moves the carriage and the row counter, and nothing else', () => {
    const bed = bedOf('.1o2.');
    expect(bedAfter(bed, { move: 'slip', to: 'left' })).toEqual({ ...bed, carriage: 'left', counter: 1 });
  });

  it('needs a yarn in the feeder', () => {
    expect(faultOf(bedOf('.11.', { feeder: null }), { move: 'knit', to: 'left' })).toEqual({
      code: 'bed/feeder-empty',
      to: 'left',
    });
  });

  it.each(['knit', 'slip'] as const)('that %ss starts from the other side', (move) => {
    expect(faultOf(bedOf('.11.'), { move, to: 'right' })).toEqual({
      code: 'bed/carriage-already-there',
      side: 'right',
    });
  });

  it('needs a needle that is working', () => {
    expect(faultOf(bedOf('....'), { move: 'knit', to: 'left' })).toEqual({ code: 'bed/no-working-needles' });
  });

  it('must not meet a loop on a needle out of work', () => {
    const stray = { working: false, loopCount: 1, yarn: 'plum' };
    const bed = bedOf('.11.', { needles: [...bedOf('.11').needles, stray] });
    expect(faultOf(bed, { move: 'knit', to: 'left' })).toEqual({
      code: 'bed/loop-out-of-work',
      needle: 'R2',
    });
    const first = bedOf('.11.', { needles: [stray, ...bedOf('11.').needles] });
    expect(faultOf(first, { move: 'knit', to: 'left' })).toMatchObject({ needle: 'L2' });
  });
});
