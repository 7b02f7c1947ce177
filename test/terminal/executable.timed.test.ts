/**
 * The one file that needs no Node, in an empty root as of a container: nothing but it, the system's C libraries, and a home.
 * `npm run executable` makes it; SLANTWISE_EXECUTABLE names it. Taking another root is for root alone.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { copyFileSync, cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openTerminal } from './rig/pseudo-terminal.ts';

const executable = process.env.SLANTWISE_EXECUTABLE;
const canTry = executable !== undefined && process.platform === 'linux' && process.getuid?.() === 0;
if (!canTry)
  console.warn('Not tried: the executable, which SLANTWISE_EXECUTABLE names, in a root of its own.');

describe.runIf(canTry)('the executable in an empty root', () => {
  let root = '';
  beforeAll(() => {
    root = mkdtempSync(join(tmpdir(), 'slantwise-root-'));
    const file = executable ?? '';
    copyFileSync(file, join(root, 'slantwise'));
    // What the system's loader names, in the places where it looks.
    const needed = execFileSync('ldd', [file], { encoding: 'utf8' }).matchAll(/(\/\S+\.so\S*)/g);
    for (const [, path = ''] of needed) {
      mkdirSync(join(root, dirname(path)), { recursive: true });
      copyFileSync(path, join(root, path));
    }
    for (const folder of ['home', 'tmp']) mkdirSync(join(root, folder));
    cpSync('demo', join(root, 'briefs'), { recursive: true });
  });
  afterAll(() => rmSync(root, { recursive: true, force: true }));

  const chroot = (...args: readonly string[]) => [root, '/slantwise', ...args];
  const env = { HOME: '/home', XDG_CONFIG_HOME: undefined, XDG_DATA_HOME: undefined, TMPDIR: '/tmp' };
  const open = (...args: readonly string[]) =>
    openTerminal({ command: 'chroot', args: chroot(...args), env });
  const run = (...args: readonly string[]) =>
    spawnSync('chroot', chroot(...args), {
      encoding: 'utf8',
      env: { PATH: process.env.PATH, HOME: '/home', LANG: 'C.UTF-8' },
    });

  it('starts with nothing there but itself', () => {
    const names = execFileSync('find', [root, '-type', 'f', '-not', '-path', '*/briefs/*'], {
      encoding: 'utf8',
    });
    const others = names
      .trim()
      .split('\n')
      .map((path) => basename(path));
    expect(others.filter((name) => !/\.so(\.|$)/.test(name))).toEqual(['slantwise']);
    const { stdout, status } = run('--version');
    expect([status, stdout]).toEqual([0, expect.stringMatching(/^\d+\.\d+\.\d+\n$/)]);
  });

  it('knits on its screen, keeps each press in a thread, and goes on at the very step', async () => {
    const first = open();
    await first.waitFor('What shall the bag');
    first.send('practice\r');
    await first.waitFor('step 1 of');
    for (let step = 2; step <= 6; step++) {
      first.send('next\r');
      await first.waitFor(`step ${step} of`);
    }
    first.send('language de\r');
    await first.waitFor('Schritt 6 von');
    first.send('quit\r');
    expect((await first.exited).code).toBe(0);
    const second = open();
    await second.waitFor('Schritt 6 von');
    second.kill('SIGKILL');
    await second.exited;
    const third = open();
    await third.waitFor('Schritt 6 von');
    third.send('quit\r');
    expect((await third.exited).code).toBe(0);
    for (const terminal of [first, second, third]) await terminal.close();
  }, 60_000);

  it('plans, and prints a sheet', () => {
    const plan = run('plan', '/briefs/token-pouch.json', '--json');
    expect(JSON.parse(plan.stdout)).toMatchObject({ stitches: 10, rows: 16 });
    expect(run('sheet', '/briefs/token-pouch.json', '--out', '/home/sheet.html').status).toBe(0);
    expect(readFileSync(join(root, 'home', 'sheet.html'), 'utf8')).toContain('</html>');
    expect(existsSync(join(root, 'home', '.local', 'share', 'slantwise', 'bags'))).toBe(true);
  });
});
