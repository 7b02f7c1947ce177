/** A process that appends as fast as it can, killed at random moments: what it said was saved is there. */
import { randomInt } from 'node:crypto';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { expect, it } from 'vitest';
import { namesIn, readingOf, scratchFolder } from '../../test/fixtures/disk/scratch.ts';
import { buildScript, type Child, run } from '../../test/fixtures/disk/scripts.ts';

const kills = Number(process.env.SLANTWISE_KILLS ?? 25);
const script = buildScript('press-for-ever.ts');

/** Every other one while it starts and opens the log, the rest while it presses. */
async function killAtRandom(child: Child, kill: number, startMs: number): Promise<void> {
  const whilePressing = kill % 2 === 0;
  if (whilePressing) await child.said('saved');
  await pause(randomInt(0, whilePressing ? 60 : Math.ceil(startMs) + 60));
  child.process.kill('SIGKILL');
  await child.ended;
}

it('a log survives SIGKILL at any moment: all that was reported is there, and at most one line more', async () => {
  const folder = scratchFolder();
  const path = join(folder, 'bag.jsonl');
  let events = 0;
  let startMs = 0;
  for (let kill = 0; kill < kills; kill++) {
    const from = performance.now();
    const child = run(script, [path]);
    if (kill === 0) startMs = await child.said('saved').then(() => performance.now() - from);
    await killAtRandom(child, kill, startMs);
    const [word = 'saved', reported, done] = child.lines().at(-1)?.split(' ') ?? [];
    expect(word).toBe('saved');
    const { fault, state } = readingOf(path);
    expect(fault).toBeNull();
    const reached = state?.events ?? 0;
    if (reported !== undefined) {
      expect([0, 1]).toContain(reached - Number(reported));
      if (reached === Number(reported)) expect(state?.session.done).toBe(Number(done));
    }
    expect(reached).toBeGreaterThanOrEqual(events);
    events = reached;
  }
  expect(events).toBeGreaterThan(kills);
  expect(namesIn(folder).filter((name) => !/^bag\.jsonl(\.lock.*|\.torn-\d+)?$/.test(name))).toEqual([]);
}, 300_000);
