import { describe, expect, it } from 'vitest';
import { bedAfter, bedOf, draw, faultOf } from '../../test/fixtures/drawn-bed.ts';
import { edgesOf } from './bed.ts';

describe('a transfer', () => {
  // Needles L4 L3 L2 L1 R1 R2 R3 R4; the work hangs on L2 to R3, and L3 has come into work.
  const work = bedOf('.o11111.');

  it('sets the leading edge one needle out and leaves the uncovered needle working', () => {
    const bed = bedAfter(work, { move: 'transfer', from: ['L2', 'L1'], to: ['L3', 'L2'] });
    expect(draw(bed)).toBe('.11o111.');
    expect(edgesOf(bed)).toEqual({ left: 1, right: 6, stitchCount: 5 });
    expect(draw(bedAfter(bed, { move: 'knit', to: 'left' }))).toBe('.111111.');
  });

  it('sets the trailing edge one needle in and doubles the stitch it lands on', () => {
    const transfer = { move: 'transfer', from: ['R3', 'R2'], to: ['R2', 'R1'] } as const;
    expect(draw(bedAfter(work, transfer))).toBe('.o1121o.');
    const bed = bedAfter(work, transfer, { move: 'rest', needles: ['R3'] });
    expect(draw(bed)).toBe('.o1121..');
    expect(edgesOf(bed)).toEqual({ left: 2, right: 5, stitchCount: 4 });
  });

  it('starts a stray stitch where the emptied needle is not put to rest', () => {
    const bed = bedAfter(
      bedOf('..11111.'),
      { move: 'transfer', from: ['R3', 'R2'], to: ['R2', 'R1'] },
      { move: 'knit', to: 'left' },
    );
    expect(draw(bed)).toBe('..11111.');
    expect(bed.eyeletCount).toBe(0);
  });

  it('crawls one needle and keeps the count of stitches, with an eyelet third from the new edge', () => {
    const bed = bedAfter(
      work,
      { move: 'transfer', from: ['L2', 'L1'], to: ['L3', 'L2'] },
      { move: 'transfer', from: ['R3', 'R2'], to: ['R2', 'R1'] },
      { move: 'rest', needles: ['R3'] },
    );
    expect(draw(bed)).toBe('.11o21..');
    const next = bedAfter(bed, { move: 'knit', to: 'left' });
    expect(draw(next)).toBe('.11111..');
    expect(next.eyeletCount).toBe(1);
  });

  it('lifts all loops before it sets any down, whatever the order they are named in', () => {
    const outermostFirst = bedAfter(work, { move: 'transfer', from: ['L2', 'L1'], to: ['L3', 'L2'] });
    const outermostLast = bedAfter(work, { move: 'transfer', from: ['L1', 'L2'], to: ['L2', 'L3'] });
    expect(outermostLast).toEqual(outermostFirst);
  });

  it('carries every loop of a doubled needle, with its yarn', () => {
    const bed = bedAfter(bedOf('.2o'), { move: 'transfer', from: ['R1'], to: ['R2'] });
    expect(draw(bed)).toBe('.o2');
    expect(bed.needles[2]).toEqual({ working: true, loopCount: 2, yarn: 'plum' });
  });

  it('cannot set down on a needle that is out of work', () => {
    expect(faultOf(bedOf('..11111.'), { move: 'transfer', from: ['L2', 'L1'], to: ['L3', 'L2'] })).toEqual({
      code: 'bed/needle-out-of-work',
      needle: 'L3',
    });
  });

  it('cannot lift from a needle without a loop', () => {
    expect(faultOf(work, { move: 'transfer', from: ['L3'], to: ['L2'] })).toEqual({
      code: 'bed/needle-empty',
      needle: 'L3',
    });
  });

  it('cannot lift the same loop twice', () => {
    expect(faultOf(work, { move: 'transfer', from: ['R3', 'R3'], to: ['R2', 'R1'] })).toEqual({
      code: 'bed/needle-empty',
      needle: 'R3',
    });
  });

  it('cannot lift off the bed', () => {
    expect(faultOf(work, { move: 'transfer', from: ['R9'], to: ['R2'] })).toMatchObject({ needle: 'R9' });
  });

  it('cannot set down off the bed', () => {
    expect(faultOf(bedOf('1...'), { move: 'transfer', from: ['L2'], to: ['L3'] })).toEqual({
      code: 'bed/needle-off-bed',
      needle: 'L3',
      needleCount: 4,
    });
  });

  it('needs a needle to set down on for each that it lifts from', () => {
    expect(faultOf(work, { move: 'transfer', from: ['R3', 'R2'], to: ['R2'] })).toEqual({
      code: 'bed/transfer-uneven',
      fromCount: 2,
      toCount: 1,
    });
  });
});
