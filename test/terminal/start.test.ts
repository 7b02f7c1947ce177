/** The built program starts from what the build kept compiled of it, and as well where that is missing or spoilt. */
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';

let folder = '';
let compiled = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'slantwise-dist-'));
  cpSync('dist', folder, { recursive: true });
  const [name = ''] = readdirSync(folder).filter((file) => file.endsWith('.bin'));
  compiled = join(folder, name);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** What `slantwise --version` prints, and whether V8 refused what was kept. */
const start = (): string =>
  execFileSync(
    process.execPath,
    [
      '-e',
      `process.argv.splice(1, 0, 'slantwise', '--version');
      const { program } = require(${JSON.stringify(join(folder, 'cli.js'))});
      console.log(program.cachedDataRejected);`,
    ],
    { encoding: 'utf8' },
  );

test('what was kept is taken by the Node that it was built with', () => {
  expect(start()).toMatch(/^false$/m);
});

test.each([
  ['was cut off', () => writeFileSync(compiled, ''), 'true'],
  ['is missing', () => rmSync(compiled), 'undefined'],
])('the program starts where it %s', (_, spoil, refused) => {
  spoil();
  const said = start().trim().split('\n').toSorted();
  expect(said).toEqual([expect.stringMatching(/^\d+\.\d+\.\d+$/), refused]);
});
