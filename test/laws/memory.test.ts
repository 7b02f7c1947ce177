/** However long a sitting is, it keeps in memory what its log holds, and little more. */
import { readFileSync } from 'node:fs';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import fc from 'fast-check';
import { expect, it, vi } from 'vitest';
import { systemDisk } from '../../source/files/disk.ts';
import { leastPlaces } from '../../source/session/session.ts';
import { openMemoryBench } from '../fixtures/bench-in-memory.ts';
import { inScratch, start } from '../fixtures/disk/scratch.ts';
import { briefOf } from '../fixtures/plan-of.ts';

/** `SLANTWISE_COMMANDS=100000` types so many. */
const typed = Number(process.env.SLANTWISE_COMMANDS ?? 1600);
vi.setConfig({ testTimeout: 60_000 + typed * 20 });

const whole = (min: number, max: number) => fc.integer({ min, max });
const always = (line: string) => fc.constant(line);
const lineTyped = (): fc.Arbitrary<string> =>
  fc.oneof(
    { weight: 30, arbitrary: always('next') },
    { weight: 12, arbitrary: whole(2, 12).map((count) => `next ${count}`) },
    { weight: 14, arbitrary: always('back') },
    { weight: 8, arbitrary: always('redo') },
    { weight: 6, arbitrary: whole(1, 270).map((step) => `go step ${step}`) },
    { weight: 3, arbitrary: whole(1, 60).map((row) => `rip row ${row}`) },
    { weight: 3, arbitrary: always('stop') },
    { weight: 3, arbitrary: always('choose 1') },
    { weight: 1, arbitrary: whole(13, 16).map((fours) => `replan rows ${4 * fours}`) },
    { weight: 2, arbitrary: whole(1, 9).map((name) => `mark m${name}`) },
    { weight: 2, arbitrary: always('note mint is tighter here') },
    { weight: 2, arbitrary: always('weigh plum 20 g') },
    {
      weight: 6,
      arbitrary: fc.constantFrom('where', 'notes', 'marks', 'tools', 'why tail', 'draw bed', 'qwerty'),
    },
  );

setFlagsFromString('--expose-gc');
const collect = runInNewContext('gc') as () => void;

/** Bytes that are still wanted. */
function heldBytes(): number {
  collect();
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return heapUsed + arrayBuffers;
}

/**
 * While fewer commands have been given than can be taken back, each is kept with what it led to. From then on only the log
 * grows, with its notes and marks.
 */
const mostEach = typed > 4 * leastPlaces ? 300 : 1500;

it(`keeps at most ${mostEach} bytes for each of ${typed} random commands`, () => {
  const brief = readFileSync('demo/dice-bag.json', 'utf8');
  // What is measured is memory: no flush need be waited for.
  const disk = { ...systemDisk, flush: () => undefined };
  const log = start(inScratch(), { brief: briefOf(brief), disk });
  const { submit } = openMemoryBench({
    brief,
    effects: {
      record: ({ command }, send) => {
        if (!log.append(command).ok) throw new Error(JSON.stringify(command));
        send({ is: 'recorded', atMs: 0, saving: log.status });
      },
    },
  });
  const lines = fc.sample(lineTyped(), { numRuns: typed, seed: 1 });
  const half = lines.slice(0, typed / 2);
  half.forEach(submit);
  const before = heldBytes();
  lines.slice(half.length).forEach(submit);
  const each = (heldBytes() - before) / half.length;
  expect(log.state.events).toBeGreaterThan(typed / 2);
  expect(each).toBeLessThan(mostEach);
  log.leave();
});
