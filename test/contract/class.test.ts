/** How a class stands by the logs in a folder (invented pupils). */
import { mkdirSync, readdirSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { emptyFolder, slantwise } from '../tools/slantwise.ts';

it('tells how far each pupil is, the furthest on first, and which log cannot be read', () => {
  const folder = emptyFolder();
  for (const [pupil, lines] of [
    ['Kim', ['next 3', 'back']],
    ['Robin', ['next 20']],
  ] as const) {
    const home = join(folder, `home-${pupil}`);
    mkdirSync(home);
    slantwise(['demo/token-pouch.json'], { home, input: `${[...lines, 'quit'].join('\n')}\n` });
    const bags = join(home, 'data/slantwise/bags');
    const [log = ''] = readdirSync(bags).filter((name) => name.endsWith('.jsonl'));
    renameSync(join(bags, log), join(folder, `${pupil}.jsonl`));
  }
  writeFileSync(join(folder, 'Sam.jsonl'), 'no log\n');
  const { status, stdout } = slantwise(['class', folder]);
  expect([status, stdout]).toEqual([
    0,
    expect.stringMatching(/^2 logs, 0 finished; .*\nRobin +Token pouch +step 21 of/),
  ]);
  expect(stdout).toMatch(
    /\nKim +Token pouch +step 1 of \d+ next +cast-on .*1 time taken back\nSam {2}cannot be read\n/,
  );
  const { pupils, unreadable } = JSON.parse(slantwise(['class', folder, '--json']).stdout);
  expect(pupils.map(({ log }: { log: string }) => log)).toEqual(['Robin', 'Kim']);
  expect(unreadable).toEqual([join(folder, 'Sam.jsonl')]);
  expect(slantwise(['class', join(folder, 'home-Kim')])).toMatchObject({
    status: 1,
    stderr: expect.stringContaining('There are no logs in'),
  });
});
