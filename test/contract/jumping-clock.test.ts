/** The built program, with a wall clock that says another year whenever it is asked. */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { readLog } from '../../source/journal/read-log.ts';
import { emptyFolder, slantwise } from '../tools/slantwise.ts';

/** Years before 0 and beyond 9999, and small steps back and forth. */
const jumpingClock = `
const { Date: Sound } = globalThis;
const jumps = [0, 253402300800000, -62198755200000, 8.64e15, -8.64e15, 5e11, 5e11 + 3600000, 5e11 - 3600000];
let at = 0;
const now = () => jumps[at++ % jumps.length];
globalThis.Date = class extends Sound {
  constructor(...given) { super(...(given.length === 0 ? [now()] : given)); }
  static now() { return now(); }
};
`;

it('keeps the log in order, knits, rests, prints a sheet and reckons all the same', () => {
  const home = emptyFolder();
  const clock = join(home, 'clock.cjs');
  writeFileSync(clock, jumpingClock);
  const run = (args: readonly string[], input = '') =>
    slantwise(args, { home, input, env: { NODE_OPTIONS: `--require ${clock}` } });
  const presses = 'next\nnext 3\nback\nredo\nnote tight\nwhere\n'.repeat(10);
  for (let sitting = 1; sitting <= 2; sitting++) {
    const { status, stderr } = run(['demo/token-pouch.json'], presses);
    expect([status, stderr]).toEqual([0, '']);
  }
  const bags = join(home, 'data', 'slantwise', 'bags');
  const names = readdirSync(bags);
  expect(names).toHaveLength(1);
  const log = join(bags, names.join());
  const { state, fault } = readLog(readFileSync(log));
  expect([fault, state?.sittings, state?.session.done]).toEqual([null, 2, 80]);
  // Time that passed is no matter of the wall clock.
  expect(state?.durationMs).toBeLessThan(60_000);
  for (const args of [
    ['check', log],
    ['record', log],
    ['bags'],
    ['sheet', 'demo/token-pouch.json', '--out', join(home, 's.html')],
  ]) {
    const { status, stderr } = run(args);
    expect([args[0], status, stderr]).toEqual([args[0], 0, '']);
  }
});
