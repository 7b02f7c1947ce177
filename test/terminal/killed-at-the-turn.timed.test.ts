/** Killed at the turn from the questions to the bag, or while a sheet is written: the answers or the log, the whole sheet or none. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { readLog } from '../../source/journal/read-log.ts';
import { hermetic } from '../tools/hermetic.ts';
import { emptyFolder } from '../tools/slantwise.ts';
import { firstAnswers } from './home.ts';

const answers = [...firstAnswers, '', ''];
const kills = 12;

const jsonlIn = (folder: string): readonly string[] =>
  existsSync(folder) ? readdirSync(folder).filter((name) => name.endsWith('.jsonl')) : [];

/** Runs until `isDue`, then kills; a program that ends before is let be. */
async function killWhen(
  args: readonly string[],
  home: string,
  input: string,
  isDue: () => boolean,
): Promise<void> {
  const child = spawn(process.execPath, ['dist/cli.js', ...args], {
    env: hermetic(home),
    stdio: ['pipe', 'ignore', 'ignore'],
  });
  const ended = once(child, 'exit');
  child.stdin.on('error', () => undefined);
  child.stdin.write(input);
  while (child.exitCode === null && !isDue()) await new Promise((next) => setImmediate(next));
  child.kill('SIGKILL');
  await ended;
}

it('a bag that is begun is either still asked about, with all that was answered, or on disk', async () => {
  const found = { asked: 0, begun: 0 };
  for (let kill = 0; kill < kills; kill++) {
    const home = emptyFolder();
    const data = join(home, 'data', 'slantwise');
    const briefs = join(data, 'briefs');
    const bags = join(data, 'bags');
    const input = answers.map((line) => `${line}\n`).join('');
    // In turns as soon as the brief is there, and as soon as the log is.
    const due = kill % 2 === 0 ? () => existsSync(briefs) : () => jsonlIn(bags).length > 0;
    await killWhen(['new', '--plain'], home, input, due);
    const draft = join(data, 'new-bag.json');
    const isAsked = existsSync(draft) && readFileSync(draft, 'utf8').includes('Dice bag');
    const isBegun = jsonlIn(bags).some((name) => readLog(readFileSync(join(bags, name))).state !== null);
    expect(isAsked || isBegun, `kill ${kill + 1}`).toBe(true);
    found[isBegun ? 'begun' : 'asked']++;
  }
  console.info(`${kills} kills: ${found.asked} still asked, ${found.begun} begun`);
}, 60_000);

it('a sheet is there whole or not at all, and the next try is not refused', async () => {
  for (let kill = 0; kill < kills / 2; kill++) {
    const home = emptyFolder();
    const folder = join(home, 'sheets');
    mkdirSync(folder);
    const sheet = join(folder, 'bag.html');
    const args = ['sheet', 'demo/dice-bag.json', '--out', sheet];
    await killWhen(args, home, '', () => readdirSync(folder).length > 0);
    // Refused where it is whole already; what the kill left aside goes in any case.
    await killWhen(args, home, '', () => false);
    expect(readFileSync(sheet, 'utf8')).toMatch(/<\/html>\s*$/);
    expect(readdirSync(folder)).toEqual(['bag.html']);
  }
}, 60_000);
