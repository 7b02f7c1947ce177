/** What a bench makes of messages, without a screen, a disk or a clock. */
import { describe, expect, it } from 'vitest';
import { openMemoryBench } from '../../../test/fixtures/bench-in-memory.ts';
import { answer } from '../../chat/talk.ts';
import type { SaveStatus } from '../../journal/fault.ts';
import { formatLoss } from '../../wording/file-faults.ts';
import { englishWords } from '../../wording/words.ts';
import { pagesOf } from '../parts/reading.ts';
import { updateBench } from './update-bench.ts';

const unsaved: SaveStatus = { state: 'unsaved', waiting: 2, trouble: 'disk-full', slowFlushMs: null };

it('says once that the disk is slow', () => {
  const bench = openMemoryBench();
  for (let press = 0; press < 3; press++) {
    bench.store.send({ is: 'saving', saving: { state: 'saved', slowFlushMs: 320 } });
  }
  const said = bench.store.get().lines.filter(({ text }) => text === englishWords.files.slow(320));
  expect(said).toHaveLength(1);
});

it('asks for a press to be recorded before it is shown, and changes nothing by itself', () => {
  const { store } = openMemoryBench();
  const before = store.get();
  const [after, effects] = updateBench(before, { is: 'command', command: { do: 'confirm', count: 1 } });
  expect(effects[0]).toEqual({ do: 'record', command: { do: 'confirm', count: 1 }, first: true });
  expect([before.session.done, after.session.done, store.get().session.done]).toEqual([0, 1, 0]);
});

it('tells of a loss before it is left, and is left when asked again', () => {
  const bench = openMemoryBench({
    effects: { 'save-and-leave': ({ how }, send) => send({ is: 'tried-to-save', how, saving: unsaved }) },
  });
  bench.store.send({ is: 'quit', how: 'interrupted' });
  expect(bench.store.get().end).toBeNull();
  expect(bench.said(1)).toBe(formatLoss(unsaved, englishWords));
  bench.store.send({ is: 'quit', how: 'interrupted' });
  expect(bench.store.get().end).toBe('interrupted');
});

it('changes language and units of all its words at once', async () => {
  const bench = openMemoryBench();
  const tail = (): string => bench.store.get().words.amounts.tail(30);
  expect([bench.store.get().words.bench.now, tail()]).toEqual(['now', '30 cm']);
  bench.submit('units in');
  bench.submit('language de');
  await bench.store.settled();
  expect([bench.store.get().words.bench.now, tail()]).toEqual(['jetzt', '12 in']);
});

it('goes to a mark by its name alone, or by a part of it', () => {
  const bench = openMemoryBench();
  for (const line of ['next 4', 'mark before dinner', 'next 3', 'go Before Dinner']) bench.submit(line);
  expect(bench.done()).toBe(4);
  for (const line of ['next 3', 'go dinner']) bench.submit(line);
  expect(bench.done()).toBe(4);
  bench.submit('go breakfast');
  expect([bench.done(), bench.said(1)]).toEqual([4, expect.stringContaining('not a place to go to')]);
});

it('says how a setting stands when it is typed alone, and how all of them do', () => {
  const bench = openMemoryBench();
  bench.submit('bell on');
  for (const [line, told] of [
    ['bell', 'bell: The bell is on'],
    ['pause', 'pause: The pause is usual'],
    ['pedal gap', 'pedal gap: Presses of one switch less than 100 ms apart'],
    ['language', 'language: as the system has it, now English.'],
  ] as const) {
    bench.submit(line);
    expect(bench.said(1)).toContain(told);
  }
  expect(bench.kept).toHaveLength(1);
  bench.submit('settings');
  expect(bench.said(8)).toMatch(/^units: Centimetres[\s\S]*speech: [\s\S]*large: Large letters off\.$/);
});

it('shows a bag that has just been finished, and tells what it took, once', () => {
  let told = 0;
  const bench = openMemoryBench({ effects: { 'tell-record': () => void told++ } });
  const { stepCount } = bench.store.get().session.job;
  bench.submit(`next ${stepCount - 1}`);
  expect([bench.store.get().picture, told]).toEqual([null, 0]);
  bench.submit('next');
  bench.submit('note done');
  expect([bench.store.get().picture, told]).toEqual(['bag', 1]);
});

describe('a long answer', () => {
  const window = { is: 'window', columns: 80, rows: 24 } as const;
  const reading = () => {
    const bench = openMemoryBench();
    bench.store.send(window);
    bench.submit('plan');
    return bench;
  };
  const pageOf = ({ store }: ReturnType<typeof reading>): number | null => store.get().reading?.at ?? null;

  it('is read page by page: Enter and a switch turn it and confirm nothing, and then it is in the transcript', () => {
    const bench = reading();
    const { reading: read } = bench.store.get();
    const pages = read ? pagesOf(read, window) : [];
    expect(pages.length).toBeGreaterThan(2);
    expect(pages.flat()).toEqual(read?.lines);
    for (const page of pages) expect(page.length).toBeLessThanOrEqual(20);
    // So far the line that was typed, and no more.
    expect([pageOf(bench), bench.store.get().lines.length]).toEqual([0, 1]);
    bench.key('enter', 0);
    bench.key('left', 1000);
    bench.key('left', 2000);
    expect(pageOf(bench)).toBe(0);
    pages.forEach((_, i) => {
      bench.key('space', 3000 + 1000 * i);
    });
    expect([pageOf(bench), bench.done()]).toEqual([null, 0]);
    expect(bench.store.get().lines.slice(1)).toEqual(read?.lines);
    bench.key('enter', 20_000);
    expect(bench.done()).toBe(1);
  });

  it('is put away by Escape, and by the next line, which is answered', () => {
    const bench = reading();
    bench.key('escape', 0);
    expect(pageOf(bench)).toBe(null);
    bench.submit('plan');
    bench.submit('next');
    expect([pageOf(bench), bench.done()]).toEqual([null, 1]);
    expect(bench.said(1)).toContain('Stitch size');
  });

  it('is not held back where it leads on, in the lowest window', () => {
    const bench = openMemoryBench();
    bench.store.send({ is: 'window', columns: 40, rows: 15 });
    bench.submit('go stripe 2');
    expect([pageOf(bench), bench.done() > 0]).toEqual([null, true]);
  });

  it('is what a finished bag took, too, and its picture comes behind it', () => {
    const bench = openMemoryBench();
    bench.store.send(window);
    const { job, done } = bench.store.get().session;
    bench.perform({ do: 'confirm', count: job.stepCount - done });
    expect([pageOf(bench), bench.store.get().picture]).toEqual([null, 'bag']);
    bench.store.send({ is: 'told', lines: answer(...Array(20).fill('What the bag took.')) });
    expect(pageOf(bench)).toBe(0);
    bench.key('escape', 0);
    expect([pageOf(bench), bench.store.get().picture]).toEqual([null, 'bag']);
  });

  it('is not held back where it is short, or where there is no window', () => {
    const short = openMemoryBench();
    short.store.send(window);
    short.submit('note done');
    expect(pageOf(short)).toBe(null);
    const plain = openMemoryBench();
    plain.submit('plan');
    expect([pageOf(plain), plain.store.get().lines.length > 30]).toEqual([null, true]);
  });
});
