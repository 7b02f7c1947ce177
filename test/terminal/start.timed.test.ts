/** The built program starts from what the build kept compiled of it, and as well where that is missing or spoilt. */
import { execFileSync } from 'node:child_process';
import { cpSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import Module from 'node:module';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { emptyFolder } from '../tools/slantwise.ts';

/** A copy of the program, and what was kept of it. */
function copy(): { readonly program: string; readonly compiled: string; readonly cache: string } {
  const [folder, cache] = [emptyFolder(), emptyFolder()];
  cpSync('dist', folder, { recursive: true });
  const [name = ''] = readdirSync(folder).filter((file) => file.endsWith('.bin'));
  return { program: join(folder, 'cli.js'), compiled: join(folder, name), cache };
}

const said = (cache: string, ...args: readonly string[]): string =>
  execFileSync(process.execPath, args, {
    encoding: 'utf8',
    env: { HOME: cache, XDG_CACHE_HOME: cache, LOCALAPPDATA: cache },
  });

const version = /^\d+\.\d+\.\d+\n$/;

test('what was kept is taken by the Node that it was built with', () => {
  const { program, cache } = copy();
  const script = `
    process.argv.splice(1, 0, 'slantwise', '--version');
    const { run, readCompiled } = require(${JSON.stringify(program)});
    console.log(run(readCompiled()).cachedDataRejected);`;
  expect(said(cache, '-e', script)).toMatch(/^false$/m);
});

test('a bit that a disk gives back wrong is noticed wherever it is, and the program starts without what was kept', () => {
  const { program, compiled, cache } = copy();
  const script = `
    const { readCompiled, compiledPath } = require(${JSON.stringify(program)});
    const { readFileSync, writeFileSync } = require('node:fs');
    const sound = readFileSync(compiledPath);
    let noticed = 0;
    for (let flip = 0; flip < 200; flip++) {
      const at = flip < 40 ? flip : Math.floor((flip / 200) * sound.length);
      const flipped = Buffer.from(sound);
      flipped[at] ^= 1 << (flip % 8);
      writeFileSync(compiledPath, flipped);
      if (readCompiled() === undefined) noticed++;
    }
    console.log(noticed);`;
  expect(said(cache, '-e', script)).toBe('200\n');
  // The last of them is still there.
  expect(readFileSync(compiled).length).toBeGreaterThan(1000);
  expect(said(cache, program, '--version')).toMatch(version);
});

test('the program starts where it was cut off', () => {
  const { program, compiled, cache } = copy();
  writeFileSync(compiled, '');
  expect(said(cache, program, '--version')).toMatch(version);
});

test('where it is missing, a Node that can keeps for itself what it compiled', () => {
  const { program, compiled, cache } = copy();
  rmSync(compiled);
  expect(said(cache, program, '--version')).toMatch(version);
  const kept = readdirSync(cache, { recursive: true });
  if ('enableCompileCache' in Module) expect(kept).not.toEqual([]);
  else expect(kept).toEqual([]);
});
