/** From one bag to another without a path, in the chat and outside. */
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { emptyFolder, slantwise } from '../tools/slantwise.ts';

let home = '';
const at = (args: readonly string[], ...lines: readonly string[]) =>
  slantwise(args, { home, input: `${lines.join('\n')}\n` });

/** A home with two bags on the go; each test has a copy of it. */
const begun = mkdtempSync(join(tmpdir(), 'slantwise-begun-'));
beforeAll(() => {
  home = begun;
  at(['demo/token-pouch.json'], 'next 3', 'quit');
  at(['demo/marble-bag.json'], 'next 5', 'quit');
});
afterAll(() => rmSync(begun, { recursive: true, force: true }));

beforeEach(() => {
  home = emptyFolder();
  cpSync(begun, home, { recursive: true, preserveTimestamps: true });
});

describe('a bag in hand', () => {
  it('has a number in the list, the one used last first', () => {
    expect(at(['bags']).stdout).toMatch(
      /^ 1 {2}\S+ {2}Marble bag, step 6 of .*\n 2 {2}\S+ {2}Token pouch, step 4 of /,
    );
  });

  it.each([
    ['a number', '2', 'Back to Token pouch.'],
    ['its name', 'token-pouch', 'Back to Token pouch.'],
    ['a part of its name', 'Marb', 'Back to Marble bag.'],
  ])('is opened by %s from outside', (_, bag, told) => {
    expect(at(['open', bag], 'quit')).toMatchObject({
      status: 0,
      stdout: expect.stringContaining(told),
    });
  });

  it('is gone on with from another, which waits', () => {
    const { status, stdout } = at([], 'next', 'open token pouch', 'next', 'open 2', 'where', 'quit');
    expect(status).toBe(0);
    expect(stdout).toMatch(
      /Back to Marble bag[\s\S]*Marble bag is saved[\s\S]*Back to Token pouch[\s\S]*Token pouch is saved[\s\S]*Back to Marble bag[\s\S]*step 7 of/,
    );
  });

  it('is left for the practice bag by a word', () => {
    expect(at([], 'practice', 'quit').stdout).toMatch(/Marble bag is saved[\s\S]*This is the practice bag/);
  });

  it('is come back to where questions are cancelled', () => {
    expect(at([], 'new', 'cancel', 'quit').stdout).toMatch(/Marble bag is saved[\s\S]*Back to Marble bag/);
  });

  it.each([
    ['9', 'No bag here is 9: type bags, and open one by its number, 1 to 2, or by its name.'],
    ['marble', 'Marble bag is the bag that is open here.'],
  ])('is not opened as %s', (bag, told) => {
    expect(at([], `open ${bag}`, 'quit').stdout).toContain(told);
  });

  it('is named, where a part of a name fits several', () => {
    at(['demo/card-box-bag.json'], 'next', 'quit');
    expect(at([], 'open bag', 'quit').stdout).toMatch(/bag could be .*Marble bag/);
    expect(at(['open', 'nothing'])).toMatchObject({
      status: 1,
      stderr: expect.stringContaining('No bag here is nothing'),
    });
  });
});

describe('a bag called something else', () => {
  it('has its new name in the list, when it is opened, and in its record', () => {
    at([], 'rename Bag for the blue dice', 'quit');
    expect(at(['bags']).stdout).toMatch(/^ 1 {2}\S+ {2}Bag for the blue dice, step 6 of/);
    at(['rename', 'token', 'Coin pouch']);
    expect(at(['open', 'coin'], 'quit').stdout).toContain('Back to Coin pouch.');
    expect(at(['rename', '1', ' ']).stderr).toContain('Type what the bag shall be called');
  });
});

describe('a bag thrown away', () => {
  it('is asked about first, gone then, and can be brought back', () => {
    const asked = at(['discard', 'token']);
    expect(asked.stdout).toContain('Throw away Token pouch, step 4 of');
    expect(at(['bags']).stdout).toContain('Token pouch');
    expect(at(['discard', 'token', '--yes']).stdout).toContain('Thrown away: Token pouch, step 4 of');
    expect(at(['bags']).stdout).not.toContain('Token pouch');
    expect(at(['restore']).stdout).toContain('Back again: Token pouch, step 4 of');
    expect(at(['bags']).stdout).toContain('Token pouch');
    expect(at(['restore'])).toMatchObject({
      status: 1,
      stderr: expect.stringContaining('No bag was thrown away'),
    });
  });

  it('may be the one that is open: the other is gone on with', () => {
    const { stdout } = at([], 'discard', 'discard yes', 'where', 'quit');
    expect(stdout).toMatch(
      /Throw away Marble bag, step 6[\s\S]*type: discard yes[\s\S]*Thrown away: Marble bag[\s\S]*Back to Token pouch/,
    );
    expect(at(['bags']).stdout).not.toContain('Marble bag');
  });

  it('is kept only until the next', () => {
    at(['discard', 'token', '--yes']);
    at(['discard', 'marble', '--yes']);
    expect(at(['restore']).stdout).toContain('Marble bag');
    expect(at(['restore']).status).toBe(1);
  });
});
