import { readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
  inScratch,
  namesIn,
  open,
  press,
  readingOf,
  scratchFolder,
  start,
  stepIn,
} from '../../test/fixtures/disk/scratch.ts';
import { buildScript, type Child, run } from '../../test/fixtures/disk/scripts.ts';
import { troubledDisk } from '../../test/fixtures/disk/troubled-disk.ts';
import { systemDisk } from './disk.ts';
import { mayBeAlive, thisProcess } from './lock.ts';
import { openSessionLog } from './open-log.ts';

const script = buildScript('hold-lock.ts');
const dying = buildScript('die-holding.ts');

/** A log of two presses that nobody has open. */
function idleLog(): string {
  const path = inScratch();
  const log = start(path);
  press(log, 2);
  log.leave();
  return path;
}

async function killed(child: Child): Promise<void> {
  child.process.kill('SIGKILL');
  await child.ended;
}

const outcomeOf = (child: Child): Promise<string> =>
  Promise.race([child.said('open'), child.said('refused')]);

describe('of two processes that open a log', () => {
  it('the second may look and not write', async () => {
    const path = idleLog();
    const first = run(script, [path]);
    await first.said('open saved');
    expect(openSessionLog({ path })).toEqual({
      ok: false,
      fault: { code: 'files/in-use', path, pid: first.process.pid, host: null },
    });
    expect(stepIn(path)).toBe(2);
    await killed(first);
  });

  it('the second may write once the first is dead, its lock left behind', async () => {
    const path = idleLog();
    const first = run(script, [path]);
    await first.said('open saved');
    await killed(first);
    expect(namesIn(join(path, '..'))).toEqual(['bag.jsonl', 'bag.jsonl.lock']);
    const log = open(path);
    press(log);
    expect([log.status.state, stepIn(path)]).toEqual(['saved', 3]);
  });

  it('the second is refused by any other name of the file too', () => {
    const path = idleLog();
    const otherName = inScratch('other.jsonl');
    symlinkSync(path, otherName);
    open(path);
    expect(openSessionLog({ path: otherName })).toMatchObject({ fault: { code: 'files/in-use', path } });
  });

  it.each(['ENOSPC', 'EROFS'])('the second is refused too where no lock can be made: %s', (code) => {
    const path = idleLog();
    open(path);
    const { disk, fail } = troubledDisk();
    fail(code, 'create', 'link', 'write');
    expect(openSessionLog({ path, disk })).toMatchObject({ fault: { code: 'files/in-use', path } });
  });

  it('one wins when many find a dead lock at the same moment', async () => {
    for (let round = 0; round < 5; round++) {
      const path = idleLog();
      const dead = run(script, [path]);
      await dead.said('open');
      await killed(dead);
      const racers = Array.from({ length: 6 }, () => run(script, [path]));
      const outcomes = await Promise.all(racers.map(outcomeOf));
      expect(outcomes.toSorted()).toEqual(['open saved', ...Array(5).fill('refused files/in-use')]);
      await Promise.all(racers.map(killed));
      expect(readingOf(path)).toMatchObject({ fault: null, tornBytes: 0 });
    }
  }, 60_000);
});

/** A few here; more by hand: SLANTWISE_LOCKS=10000. */
const takings = Number(process.env.SLANTWISE_LOCKS ?? 300);

it(`never has two holders, in ${takings} takings by eight processes that die with it and begin again`, async () => {
  const folder = scratchFolder();
  const [log, ledger] = [join(folder, 'bag.jsonl'), join(folder, 'ledger')];
  writeFileSync(ledger, '');
  let deaths = 0;
  const said = { took: 0, twice: 0 };
  const dieAndBeginAgain = async (): Promise<void> => {
    while (said.took + said.twice < takings) {
      const child = run(dying, [log, ledger]);
      const stop = setInterval(() => {
        if (child.lines().length >= takings) child.process.kill('SIGKILL');
      }, 50);
      await child.ended;
      clearInterval(stop);
      deaths++;
      for (const line of child.lines()) said[line as keyof typeof said]++;
    }
  };
  await Promise.all(Array.from({ length: 8 }, dieAndBeginAgain));
  console.info(`${said.took} takings, ${deaths} deaths, ${said.twice} times two holders`);
  expect(said.twice).toBe(0);
  expect(deaths).toBeGreaterThan(8);
}, 600_000);

describe('a lock', () => {
  it.each([
    [
      'a process number that is in use again',
      JSON.stringify({ ...thisProcess(), started: 'another boot/17' }),
    ],
    ['a process that has ended', JSON.stringify({ pid: 2 ** 22 + 1, host: hostname(), started: null })],
    ['nothing, emptied by a power cut', ''],
    ['half a line', '{"pid":'],
    ['no holder', 'null'],
  ])('that names %s is broken', (_, lock) => {
    const path = idleLog();
    writeFileSync(`${path}.lock`, lock);
    expect(open(path).status.state).toBe('saved');
  });

  it('that somebody else has broken and taken a moment before is respected', () => {
    const path = idleLog();
    const lockPath = `${path}.lock`;
    writeFileSync(lockPath, '');
    const taken = JSON.stringify({ pid: process.ppid, host: hostname(), started: null });
    const disk = {
      ...systemDisk,
      link: (draft: string, name: string): void => {
        if (name !== lockPath) writeFileSync(lockPath, taken);
        systemDisk.link(draft, name);
      },
    };
    expect(openSessionLog({ path, disk })).toMatchObject({
      fault: { code: 'files/in-use', pid: process.ppid },
    });
    expect([readFileSync(lockPath, 'utf8'), namesIn(join(path, '..')).length]).toEqual([taken, 2]);
  });

  it('that somebody made where a broken one was is respected', () => {
    const path = idleLog();
    const lockPath = `${path}.lock`;
    writeFileSync(lockPath, JSON.stringify({ pid: 2 ** 22 + 1, host: hostname(), started: null }));
    const taken = JSON.stringify({ pid: process.ppid, host: hostname(), started: null });
    const disk = {
      ...systemDisk,
      link: (draft: string, name: string): void => {
        if (name !== lockPath) rmSync(lockPath);
        systemDisk.link(draft, name);
        if (name !== lockPath) writeFileSync(lockPath, taken);
      },
    };
    expect(openSessionLog({ path, disk })).toMatchObject({
      fault: { code: 'files/in-use', pid: process.ppid },
    });
    expect(readFileSync(lockPath, 'utf8')).toBe(taken);
  });

  it('is broken though whoever began to break it has died of it', () => {
    const path = idleLog();
    const dead = JSON.stringify({ pid: 2 ** 22 + 1, host: hostname(), started: null });
    writeFileSync(`${path}.lock`, dead);
    const disk = {
      ...systemDisk,
      link: (draft: string, name: string): void => {
        if (name !== `${path}.lock` && guards.size === 0) writeFileSync(name, dead);
        if (name !== `${path}.lock`) guards.add(name);
        systemDisk.link(draft, name);
      },
    };
    const guards = new Set<string>();
    const log = open(path, { disk });
    press(log);
    expect([log.status.state, guards.size]).toEqual(['saved', 2]);
    log.leave();
    expect(namesIn(join(path, '..'))).toEqual(['bag.jsonl']);
  });

  it('of another computer is respected, since nobody can know', () => {
    const path = idleLog();
    writeFileSync(`${path}.lock`, JSON.stringify({ pid: 2 ** 22 + 1, host: 'attic', started: null }));
    expect(openSessionLog({ path })).toMatchObject({ fault: { code: 'files/in-use', host: 'attic' } });
  });

  it('is given back after a file that turns out not to be a log', () => {
    const path = inScratch('diary.txt');
    writeFileSync(path, 'Dear diary\n');
    openSessionLog({ path });
    expect(namesIn(join(path, '..'))).toEqual(['diary.txt']);
  });

  it('is made without links on a drive that has none', () => {
    const path = idleLog();
    const { disk, fail } = troubledDisk();
    fail('EPERM', 'link');
    const log = open(path, { disk });
    press(log);
    expect([log.status.state, stepIn(path)]).toEqual(['saved', 3]);
    expect(openSessionLog({ path, disk })).toMatchObject({
      fault: { code: 'files/in-use', pid: process.pid },
    });
    expect(JSON.parse(readFileSync(`${path}.lock`, 'utf8'))).toMatchObject(thisProcess());
  });

  it('knows this process to be alive', () => {
    expect(mayBeAlive(thisProcess())).toBe(true);
    expect(mayBeAlive({ ...thisProcess(), started: null })).toBe(true);
  });
});
