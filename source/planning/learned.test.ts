/** What finished bags tell of the next: sums by hand; Student's factors from JCGM 100:2008, table G.2. */
import { describe, expect, it } from 'vitest';
import { learn, nextBagDoubt } from './learned.ts';

const came = (...widths: readonly number[]) => widths.map((width) => ({ width, depth: 1 }));

describe('what bags have taught', () => {
  it('is nothing before there are three that agree', () => {
    expect(learn([])).toBeNull();
    expect(learn(came(1.1, 1.1))).toBeNull();
    expect(learn(came(1.1, 1.1, 1.3))).toBeNull();
  });

  it('is the mean of each side, and how far they lie apart', () => {
    const depths = [0.9, 1, 1.1].map((depth) => ({ width: 1.2, depth }));
    expect(learn(depths)).toMatchObject({ bags: 3, setAside: 0, widthFactor: 1.2, depthFactor: 1 });
    // Squares 0.0004, 0 and 0.0004 over 2 · (3 − 1).
    expect(learn(came(0.98, 1, 1.02))?.spread).toBeCloseTo(Math.sqrt(0.0008 / 4), 12);
    expect(learn(came(1.1, 1.1, 1.1))?.spread).toBeCloseTo(0, 12);
  });

  it('leaves out a bag that lies more than a twentieth off where the others agree', () => {
    expect(learn(came(1, 1, 1, 1.049))).toMatchObject({ bags: 4, setAside: 0 });
    expect(learn(came(1, 1, 1, 1.051))).toMatchObject({ bags: 3, setAside: 1, widthFactor: 1 });
    expect(learn(came(1, 1, 1, 0.949))).toMatchObject({ bags: 3, setAside: 1, widthFactor: 1 });
    expect(learn(came(1, 1, 1, 1).map((one, i) => ({ ...one, depth: i === 3 ? 1.2 : 1 })))?.setAside).toBe(1);
  });

  it('keeps what lies as far apart as the bags do', () => {
    // Off the middle by 0.03 at the median: 3 · 1.4826 · 0.03 is 0.133.
    expect(learn(came(0.94, 0.97, 1, 1.03, 1.06, 1.13))?.setAside).toBe(0);
    expect(learn(came(0.94, 0.97, 1, 1.03, 1.06, 1.3))?.setAside).toBe(1);
  });
});

describe('the doubt about the next bag', () => {
  it.each([
    [2, 2],
    [3, 2.87],
    [4, 2.52],
    [5, 2.37],
    [9, 2.17],
    [26, 2.05],
    [100, 2.05],
  ])('of %d bags takes the factor %d', (bags, factor) => {
    expect(nextBagDoubt({ bags, spread: 0.02 })).toBeCloseTo(
      (factor / 2) * 0.02 * Math.sqrt(1 + 1 / bags),
      12,
    );
  });
});
