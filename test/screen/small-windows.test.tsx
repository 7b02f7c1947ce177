/** The bench in windows of all sizes: the instruction and its caution whole, and never as high as the window. */
import { afterEach, expect, it } from 'vitest';
import { german } from '../../source/languages/german.ts';
import { Bench } from '../../source/screen/bench/bench.tsx';
import { speak } from '../../source/shared/say.ts';
import { mountScreen, type Screen } from '../terminal/rig/in-process.tsx';
import { stepsOfAllKinds } from './steps-of-all-kinds.ts';

let screen: Screen | null = null;
afterEach(() => {
  screen?.unmount();
  speak(null);
});

const sizes = [
  [40, 12],
  [40, 13],
  [40, 20],
  [60, 20],
  [80, 24],
] as const;

it.each(sizes.flatMap(([columns, rows]) => [null, german].map((language) => ({ columns, rows, language }))))(
  '$columns columns, $rows rows, %#',
  async ({ columns, rows, language }) => {
    speak(language);
    const room = rows - 4;
    for (const view of stepsOfAllKinds()) {
      screen = mountScreen(<Bench view={view} columns={columns} rows={rows} room={room} />, {
        columns,
        rows,
      });
      const words = [view.now, view.caution ?? ''].join(' ').split(/\s+/).filter(Boolean);
      const shown = await screen.waitFor((text) => text.includes(words.at(-1) ?? ''));
      const asOneLine = shown.replace(/\s+/g, ' ');
      for (const word of words) expect(asOneLine).toContain(word);
      expect(shown.trimEnd().split('\n').length).toBeLessThanOrEqual(room);
      screen.unmount();
    }
  },
);
