import { describe, expect, it } from 'vitest';
import type { PlayerView } from '../../journal/player.ts';
import { englishWords } from '../../wording/words.ts';
import { formatBar, formatClock, progressRow } from './player-app.tsx';

describe("the player's bar and clock", () => {
  it('is full at the very end alone', () => {
    expect([0, 0.5, 0.999, 1].map((part) => formatBar(part, 12))).toEqual([
      '[----------]',
      '[#####-----]',
      '[#########-]',
      '[##########]',
    ]);
  });

  it('has a bar of one width, whatever is said beside it', () => {
    const view = { elapsedMs: 9_000, totalMs: 60_000, speed: 1, ended: false, playing: true, last: null };
    const widths = [
      view,
      { ...view, playing: false },
      { ...view, elapsedMs: 3_850_000, totalMs: 7_000_000, speed: 0.25 },
      { ...view, ended: true, playing: false },
    ].map((one) => /\[.*\]/.exec(progressRow(one as unknown as PlayerView, 72, englishWords))?.[0].length);
    expect(new Set(widths)).toEqual(new Set([30]));
  });

  it('shows hours from the first on', () => {
    expect([0, 7_999, 750_000, 3_850_000].map(formatClock)).toEqual(['0:00', '0:07', '12:30', '1:04:10']);
  });
});
