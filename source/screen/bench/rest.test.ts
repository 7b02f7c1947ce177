/** The bench tells of a rest once each half hour, by a clock that the test holds. Rule of thumb, no source. */
import { expect, it } from 'vitest';
import { type MemoryBench, openMemoryBench } from '../../../test/fixtures/bench-in-memory.ts';
import { createAnnouncer } from './speech.ts';

const told =
  'That was half an hour of work. Rest your hands and shoulders for a few minutes (rule of thumb).';

/** Confirms a step each so many minutes; the minutes at which a rest was told. */
function workFor(
  bench: MemoryBench,
  clock: { minute: number },
  through: number,
  every = 1,
): readonly number[] {
  const at: number[] = [];
  for (; clock.minute <= through; clock.minute += every) {
    const before = bench.store.get().lines.length;
    bench.perform({ do: 'confirm', count: 1 });
    const lines = bench.store.get().lines.slice(before);
    if (lines.some(({ text, tone }) => text === told && tone === 'caution')) at.push(clock.minute);
  }
  return at;
}

function open() {
  const clock = { minute: 0 };
  const heard: string[] = [];
  const bench = openMemoryBench({
    nowMs: () => clock.minute * 60_000,
    announce: (_, why) => void heard.push(why),
  });
  return { clock, bench, heard };
}

it('is told at the next press after each half hour, and the work goes on', () => {
  const { clock, bench, heard } = open();
  expect(workFor(bench, clock, 90)).toEqual([30, 60, 90]);
  expect(bench.done()).toBe(91);
  expect(heard.filter((why) => why === 'rest')).toHaveLength(3);
});

it('waits for a press', () => {
  const { clock, bench } = open();
  expect(workFor(bench, clock, 28, 4)).toEqual([]);
  clock.minute = 33;
  expect(workFor(bench, clock, 33)).toEqual([33]);
});

it('begins the half hour again after a longer rest', () => {
  const { clock, bench } = open();
  workFor(bench, clock, 25);
  clock.minute = 31;
  expect(workFor(bench, clock, 62)).toEqual([61]);
});

it('is not told where nobody has a clock', () => {
  const bench = openMemoryBench();
  workFor(bench, { minute: 0 }, 95);
  expect(bench.said(500)).not.toContain('half an hour');
});

it('is spoken before the instruction, and rings no bell of its own', () => {
  const clock = { minute: 0 };
  const heard: string[] = [];
  let bells = 0;
  const announce = createAnnouncer({
    speech: { say: (text) => void heard.push(text), stop: () => undefined },
    write: () => {
      bells++;
    },
  });
  const settings = { speech: true, bell: true };
  const bench = openMemoryBench({ nowMs: () => clock.minute * 60_000, settings, announce });
  workFor(bench, clock, 29);
  const rungBefore = bells;
  workFor(bench, clock, 30);
  expect(heard.at(-1)).toBe(`half an hour, rest your hands: ${heard.at(-2)}`);
  expect(bells).toBe(rungBefore + 1);
});
