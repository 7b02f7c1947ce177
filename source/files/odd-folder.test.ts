/** Anything may lie among the logs: it stops no start and is told as unreadable. */
import { execFileSync } from 'node:child_process';
import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { scratchFolder } from '../../test/fixtures/disk/scratch.ts';
import { findLog, listLogs } from './log-list.ts';

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
