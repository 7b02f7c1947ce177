import { execFileSync } from 'node:child_process';
import { mkdirSync, symlinkSync, utimesSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { inScratch, press, scratchFolder, start } from '../../test/fixtures/disk/scratch.ts';
import { valueIn } from '../../test/tools/result.ts';
import { logFolder, namedLog, settingsFolder } from './data-folders.ts';
import { findLog, listLogs, newLogPath } from './log-list.ts';
import { openSessionLog } from './open-log.ts';

// Anything may lie among the logs: it stops no start and is told as unreadable.
it('passes over loops of links, pipes, folders and dead links', () => {
  const folder = scratchFolder();
  symlinkSync('loop.jsonl', join(folder, 'loop.jsonl'));
  symlinkSync('nowhere', join(folder, 'dead.jsonl'));
  execFileSync('mkfifo', [join(folder, 'pipe.jsonl')]);
  mkdirSync(join(folder, 'folder.jsonl'));
  writeFileSync(join(folder, 'brief.jsonl'), '{"name": 1}\n');
  const listed = listLogs(folder);
  expect(listed.map(({ path }) => path.slice(folder.length + 1)).toSorted()).toEqual([
    'brief.jsonl',
    'dead.jsonl',
    'folder.jsonl',
    'loop.jsonl',
    'pipe.jsonl',
  ]);
  expect(listed.filter(({ tally }) => tally.ok)).toEqual([]);
  expect(findLog(folder, () => true)).toEqual({ found: null, damaged: null });
});

afterEach(() => vi.unstubAllEnvs());

describe('the list of bags', () => {
  it('has the one used last first, and names what cannot be read', () => {
    const folder = scratchFolder();
    const made = ['old.jsonl', 'new.jsonl', 'broken.jsonl'].map((name) => join(folder, name));
    for (const [i, path] of made.entries()) {
      const log = start(path);
      press(log, i + 1);
      log.leave();
    }
    writeFileSync(join(folder, 'broken.jsonl'), 'Dear diary\n');
    writeFileSync(join(folder, 'notes.txt'), '');
    mkdirSync(join(folder, 'folder.jsonl'));
    const days = { 'old.jsonl': 1, 'broken.jsonl': 2, 'folder.jsonl': 3, 'new.jsonl': 4 };
    for (const [name, day] of Object.entries(days)) utimesSync(join(folder, name), day, day * 86_400);
    const list = listLogs(folder);
    expect(list.map(({ path }) => basename(path))).toEqual(Object.keys(days).reverse());
    expect(list.map(({ lastUsed }) => lastUsed.toISOString().slice(0, 10)).at(-1)).toBe('1970-01-02');
    expect(list.map(({ tally }) => (tally.ok ? tally.value.stepsDone : tally.fault.code))).toEqual([
      2,
      'files/is-folder',
      'journal/not-a-log',
      1,
    ]);
  });

  it('is empty where there is no folder', () => {
    const nowhere = inScratch('nowhere');
    expect(listLogs(nowhere)).toEqual([]);
    expect(findLog(nowhere, () => true)).toEqual({ found: null, damaged: null });
  });

  it('gives the sound log used last that is wanted, and reads none used before it', () => {
    const folder = scratchFolder();
    for (const [i, name] of ['older', 'old', 'new', 'broken'].entries()) {
      const path = join(folder, `${name}.jsonl`);
      const log = start(path);
      press(log, 4 - i);
      log.leave();
      if (name === 'broken') writeFileSync(path, 'Dear diary\n');
      utimesSync(path, i, i);
    }
    const asked: number[] = [];
    const { found, damaged } = findLog(
      folder,
      ({ stepsDone }) => asked.push(stepsDone) > 0 && stepsDone === 3,
    );
    expect(found && basename(found.path)).toBe('old.jsonl');
    expect(asked).toEqual([2, 3]);
    expect(damaged).toBeNull();
  });

  it('gives a log that is opened as it was read, unless it has changed since', () => {
    const path = inScratch();
    const log = start(path);
    press(log, 1);
    log.leave();
    const asRead = findLog(dirname(path), () => true).found ?? undefined;
    const opened = valueIn(openSessionLog({ path, asRead }));
    expect(opened.session.done).toBe(1);
    press(opened, 2);
    opened.leave();
    const again = openSessionLog({ path, asRead });
    expect(again.ok && again.value.session.done).toBe(3);
  });
});

describe('the name of a new log', () => {
  const day = new Date('2031-03-04T18:00:00Z');

  it.each([
    ['Dice bag', 'dice-bag-2031-03-04.jsonl'],
    ['  ../../etc: "Würfel" & Ösen/ ', 'etc-würfel-ösen-2031-03-04.jsonl'],
    ['🧶', 'bag-2031-03-04.jsonl'],
    ['x'.repeat(200), `${'x'.repeat(40)}-2031-03-04.jsonl`],
  ])('for %j', (name, file) => {
    const folder = scratchFolder();
    expect(newLogPath(folder, name, day)).toBe(join(folder, file));
  });

  it('is one that is free', () => {
    const folder = scratchFolder();
    const first = newLogPath(folder, 'Dice bag', day);
    writeFileSync(first, '');
    expect(newLogPath(folder, 'Dice bag', day)).toBe(join(folder, 'dice-bag-2031-03-04-2.jsonl'));
  });
});

describe('where things are kept', () => {
  it.runIf(process.platform === 'linux')('follows the XDG base directory specification', () => {
    // freedesktop.org, XDG Base Directory Specification 0.8: $XDG_DATA_HOME and $XDG_CONFIG_HOME.
    vi.stubEnv('XDG_DATA_HOME', '/somewhere/data');
    vi.stubEnv('XDG_CONFIG_HOME', '/somewhere/config');
    expect(logFolder()).toBe('/somewhere/data/slantwise/bags');
    expect(settingsFolder()).toBe('/somewhere/config/slantwise');
  });

  it('is what the maker says, by option before environment', () => {
    expect(namedLog('a.jsonl', { SLANTWISE_LOG: 'b.jsonl' })).toBe('a.jsonl');
    expect(namedLog(undefined, { SLANTWISE_LOG: 'b.jsonl' })).toBe('b.jsonl');
    expect(namedLog(undefined, { SLANTWISE_LOG: '' })).toBeNull();
  });
});
