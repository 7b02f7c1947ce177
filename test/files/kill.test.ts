/** A process that appends as fast as it can, killed at random moments: what it said was saved is there. */
import { randomInt } from 'node:crypto';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { namesIn, readingOf, scratchFolder } from './scratch.ts';
import { buildScript, run } from './scripts.ts';

const kills = 60;

it('a log survives SIGKILL at any moment: all that was reported is there, and at most one line more', async () => {
  const folder = scratchFolder();
  const script = buildScript('press-for-ever.ts');
  const path = join(folder, 'bag.jsonl');
  let events = 0;
  for (let kill = 0; kill < kills; kill++) {
    const child = run(script, [path]);
    // Some are killed in the middle of starting, some after hundreds of presses.
    const timer = setTimeout(() => child.process.kill('SIGKILL'), randomInt(30, 400));
    await child.ended;
    clearTimeout(timer);
    if (!existsSync(path)) continue;
    const last = child.lines().at(-1)?.split(' ') ?? [];
    expect(last[0] ?? 'saved').toBe('saved');
    const reading = readingOf(path);
    const headerTorn = reading.fault?.code === 'journal/no-header';
    expect([headerTorn && events === 0 ? null : reading.fault]).toEqual([null]);
    if (headerTorn) continue;
    const reached = reading.state?.events ?? 0;
    if (last.length > 0) {
      const reported = Number(last[1]);
      expect(reached).toBeGreaterThanOrEqual(reported);
      expect(reached).toBeLessThanOrEqual(reported + 1);
      if (reached === reported) expect(reading.state?.session.done).toBe(Number(last[2]));
    }
    expect(reached).toBeGreaterThanOrEqual(events);
    events = reached;
  }
  expect(events).toBeGreaterThan(kills);
  expect(namesIn(folder).filter((name) => !/^bag\.jsonl(\.lock.*|\.torn-\d+)?$/.test(name))).toEqual([]);
}, 120_000);
