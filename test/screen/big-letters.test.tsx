/** The large view on a terminal emulator: letters that can be made out, nothing cut off, never as high as the window. */
import { afterEach, describe, expect, it } from 'vitest';
import { german } from '../../source/languages/german.ts';
import { bigHeight, bigLetters } from '../../source/screen/bench/big-letters.ts';
import { LargeView } from '../../source/screen/bench/large-view.tsx';
import { wrappedRows } from '../../source/screen/bench/wrapped.tsx';
import { speak } from '../../source/shared/say.ts';
import { mountScreen, type Screen } from '../terminal/rig/in-process.tsx';
import { stepsOfAllKinds } from './steps-of-all-kinds.ts';

describe('big letters', () => {
  const all = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZÄÖÜ0123456789/- '];

  it('are five rows of one width each, no two alike', () => {
    const pictures = all.map((letter) => bigLetters(letter, 80));
    for (const picture of pictures) {
      expect(picture).toHaveLength(bigHeight);
      expect(new Set(picture?.map((row) => row.length)).size).toBe(1);
    }
    // O and 0 are told apart by what stands beside them.
    expect(new Set(pictures.map((picture) => picture?.join('\n'))).size).toBe(all.length - 1);
  });

  it('are drawn as they read', () => {
    expect(bigLetters('Hi', 80)?.map((row) => row.trimEnd())).toEqual([
      ...['#  # ###', '#  #  #', '####  #', '#  #  #', '#  # ###'],
    ]);
  });

  it('are none where a letter has no picture or the width is too small', () => {
    expect(bigLetters('to ŝuo', 80)).toBeNull();
    expect(bigLetters('knit left', 20)).toBeNull();
  });
});

describe('rows of a wrapped text', () => {
  it.each([
    ['knit left', 20, 1],
    ['knit left', 9, 1],
    ['knit left', 8, 2],
    ['one two three four', 8, 3],
    ['m'.repeat(45), 20, 3],
  ])('%j at %i: %i', (text, width, rows) => {
    expect(wrappedRows(text, width)).toBe(rows);
  });
});

describe('the large view', () => {
  let screen: Screen | null = null;
  afterEach(() => {
    screen?.unmount();
    speak(null);
  });

  it.each([
    ['English', null, 80, 24],
    ['English', null, 60, 20],
    ['German', german, 80, 24],
    ['German', german, 60, 20],
  ])('shows each instruction and caution whole: %s, %#', async (_, language, columns, rows) => {
    speak(language);
    const room = rows - 4;
    for (const view of stepsOfAllKinds()) {
      screen = mountScreen(<LargeView view={view} columns={columns} room={room} ascii />, { columns, rows });
      const words = [view.now, view.caution ?? ''].join(' ').split(/\s+/).filter(Boolean);
      const shown = await screen.waitFor((text) => text.includes(words.at(-1) ?? ''));
      const asOneLine = shown.replace(/\s+/g, ' ');
      for (const word of words) expect(asOneLine).toContain(word);
      expect(shown.split('\n').length).toBeLessThanOrEqual(room);
      screen.unmount();
    }
  });
});
