/** The store and the screen let go of lines said long ago: none may be lost or drawn twice for that. */
import { expect, it } from 'vitest';
import { openMemoryBench } from '../../../test/fixtures/bench-in-memory.ts';
import { mountScreen, type Screen } from '../../../test/terminal/rig/in-process.tsx';
import { answer } from '../../chat/talk.ts';
import { silentInput } from '../parts/hold-screen.ts';
import { BenchApp } from './bench-app.tsx';
import type { BenchStore } from './bench-state.ts';

function mountBench(): { readonly store: BenchStore; readonly screen: Screen } {
  const { store } = openMemoryBench();
  return { store, screen: mountScreen(<BenchApp store={store} />, { stdin: silentInput() }) };
}

/** Numbers of the lines `note …` that the terminal has, from the top down. */
const notes = ({ transcript }: Screen): readonly number[] =>
  [...transcript().matchAll(/note (\d+)$/gm)].map(([, number]) => Number(number));

const counting = (from: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => from + i);

/** Says notes up to `count`, a few at a time, so that each few is drawn by itself. */
async function sayNotes({ store, screen }: ReturnType<typeof mountBench>, count: number): Promise<void> {
  const few = 10;
  for (let from = 0; from < count; from += few) {
    store.send({ is: 'told', lines: answer(...counting(from, few).map((i) => `note ${i}`)) });
    await screen.waitFor(`note ${from + few - 1}\n`);
  }
}

it('every line of a long day is on the screen once', async () => {
  const bench = mountBench();
  const { store, screen } = bench;
  await sayNotes(bench, 1200);
  expect(store.get().lines.length).toBeLessThan(1200);
  expect(notes(screen)).toEqual(counting(0, 1200));
  store.send({ is: 'told', lines: answer(...counting(1200, 1100).map((i) => `note ${i}`)) });
  await screen.waitFor('note 2299\n');
  expect(notes(screen)).toEqual(counting(0, 2300));
  screen.unmount();
});

it('a window that changes its size shows the last lines again, though old ones are gone', async () => {
  const bench = mountBench();
  const { screen } = bench;
  await sayNotes(bench, 1200);
  screen.resize(70, 24);
  await screen.waitFor(() => notes(screen).length > 1200);
  expect(notes(screen)).toEqual([...counting(0, 1200), ...counting(1176, 24)]);
  screen.unmount();
});
