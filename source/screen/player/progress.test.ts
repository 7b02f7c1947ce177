import { describe, expect, it } from 'vitest';
import { formatBar, formatClock } from './progress.ts';

describe("the player's bar and clock", () => {
  it('is full at the very end alone', () => {
    expect([0, 0.5, 0.999, 1].map((part) => formatBar(part, 12))).toEqual([
      '[----------]',
      '[#####-----]',
      '[#########-]',
      '[##########]',
    ]);
  });

  it('shows hours from the first on', () => {
    expect([0, 7_999, 750_000, 3_850_000].map(formatClock)).toEqual(['0:00', '0:07', '12:30', '1:04:10']);
  });
});
