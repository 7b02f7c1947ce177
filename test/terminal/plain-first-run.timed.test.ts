/** The questions without a screen: the built program reads lines and prints lines. */
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { slantwise } from '../tools/slantwise.ts';
import { firstAnswers } from './home.ts';
import { openTerminal } from './rig/pseudo-terminal.ts';

let home = '';
beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'slantwise-plain-'));
});
afterEach(() => rmSync(home, { recursive: true, force: true }));

const run = (lines: readonly string[], ...args: readonly string[]) =>
  slantwise(args, { home, input: lines.map((line) => `${line}\n`).join('') });

const answers = [...firstAnswers, '2'];

it('asks line by line, begins the bag, and goes on with its commands', () => {
  const { status, stdout, stderr } = run([...answers, '', 'next 2', 'where', 'quit'], 'new');
  expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
  expect(stdout).toContain(
    'question 1 of 8: What shall the bag be called?\nFor example: Dice bag\nAn empty line takes My bag.',
  );
  expect(stdout).toContain('the plan: Is this the bag you want?\nAn empty line keeps the brief and begins.');
  expect(stdout).toMatch(/The brief is kept in \S+dice-bag\.json\n/);
  expect(stdout).toMatch(/You are here: step 3 of \d+/);
  expect(run([]).stdout).toContain('Back to Dice bag.');
});

it('answers a wrong line with one sentence and the question again, and loses nothing when the lines end', () => {
  const { status, stdout } = run(['Dice bag', 'so big'], 'new');
  expect(status).toBe(0);
  expect(stdout.match(/question 2 of 8/g)).toHaveLength(2);
  expect(stdout).toContain('I do not know what "so" means here: answer as in "14 by 18 cm".\n');
  expect(stdout).toContain('Your answers are kept: slantwise new goes on with them.');
  expect(run([], 'new').stdout).toContain('1 name: Dice bag\n');
});

it('is come to from the bench, and comes to it, within one stream of lines', () => {
  const { stdout } = run([
    'next 2',
    'new',
    'Pouch',
    'practice',
    'where',
    'new',
    '',
    '',
    '',
    '',
    '',
    '',
    '',
    // The swatch is a guess: begun at the second Enter.
    '',
    '',
    'where',
  ]);
  expect(stdout).toContain('This is the practice bag; the word new plans a bag of your own.');
  expect(stdout).toMatch(/You are here: step 3 of \d+/);
  expect(stdout).toContain('Pouch: ');
  expect(stdout.trim().split('\n').slice(-2)).toContain('The bed is empty.');
  expect(readdirSync(join(home, 'data/slantwise/briefs'))).toEqual(['pouch.json']);
});

it('begins the practice bag and asks nothing where nobody sits at a terminal', () => {
  const { status, stdout } = run(['where']);
  expect(status).toBe(0);
  expect(stdout).toMatch(/You are here: step 1 of \d+/);
  expect(stdout).not.toContain('question');
});

it('asks somebody who has the screen read aloud', async () => {
  const terminal = openTerminal({ home, args: ['--plain'] });
  await terminal.waitFor('question 1 of 8: What shall the bag be called?');
  terminal.send('Dice bag\r');
  await terminal.waitFor('question 2 of 8');
  terminal.send('quit\r');
  expect((await terminal.exited).code).toBe(0);
  await terminal.close();
});
