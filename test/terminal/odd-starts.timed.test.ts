/** Starts with damaged logs, closed folders and odd files about: each is answered in a line, and nothing hangs or is begun again in silence. */
import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  cpSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  symlinkSync,
  truncateSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { confirm, writeLog } from '../fixtures/sample-log.ts';
import { hermetic } from '../tools/hermetic.ts';
import { emptyFolder, slantwise, slantwiseMeanwhile } from '../tools/slantwise.ts';

const pouch = 'demo/token-pouch.json';
const brief = JSON.parse(readFileSync(pouch, 'utf8'));

/** Where logs are kept of whoever has this home. */
function logsIn(home: string): string {
  const folder = join(home, 'data', 'slantwise', 'bags');
  mkdirSync(folder, { recursive: true });
  return folder;
}

/** A home with an older bag, and one of these lines that was used last. */
function homeWith(last: string): { readonly home: string; readonly path: string } {
  const home = emptyFolder();
  const folder = logsIn(home);
  writeFileSync(join(folder, 'old.jsonl'), writeLog([confirm(2)]).bytes);
  utimesSync(join(folder, 'old.jsonl'), 1000, 1000);
  const path = join(folder, 'pouch.jsonl');
  writeFileSync(path, last);
  return { home, path };
}

const { text } = writeLog([confirm(3), { event: { do: 'note', text: 'blue clip' } }, confirm(4)], brief);
const inTheMiddle = text.replace('blue clip', 'blue clap');
const inTheFirst = text.replace('"format":"', '"farmat":"');

describe('the bag in hand, its log damaged', () => {
  it('in the middle: that is said first, and its sound part is gone on with', () => {
    const { home, path } = homeWith(inTheMiddle);
    for (const args of [[], [pouch]]) {
      const { stdout, status } = slantwise(args, { home, input: 'quit\n' });
      const [first = '', second = ''] = stdout.split('\n');
      expect([status, first]).toEqual([
        0,
        `${path}: Line 3 does not fit its checksum: it was changed, or a line before it is missing. Lines 1 to 2 are sound. Later lines say that 7 steps were done.`,
      ]);
      expect(second).toContain(path.replace('.jsonl', '-sound-1.jsonl'));
      expect(stdout).toContain('Step 4 of');
      // Damaged again, it is the one used last.
      writeFileSync(path, inTheMiddle);
    }
    expect(readFileSync(path, 'utf8')).toBe(inTheMiddle);
  });

  it('in its first line: with the brief all of it comes back, without it the way on is told', () => {
    const { home, path } = homeWith(inTheFirst);
    const without = slantwise([], { home });
    expect(without.stdout).toContain(`${path}: Line 1 does not fit its checksum`);
    expect(without.stdout).toContain('slantwise BRIEF --log LOG');
    expect(without.stdout).toContain('Later lines say that 7 steps were done.');
    writeFileSync(path, inTheFirst);
    const { stdout } = slantwise([pouch], { home, input: 'notes\nquit\n' });
    expect(stdout).toContain('Step 8 of');
    expect(stdout).toContain('blue clip');
    const refused = slantwise([pouch, '--log', path], { home });
    expect([refused.status, refused.stderr]).toEqual([
      1,
      expect.stringMatching(/To go on from step 8: slantwise --log \S+-sound-1\.jsonl\n$/),
    ]);
  });

  it('of another bag than the one asked for: is not meant, and nothing is said', () => {
    const { home } = homeWith(inTheMiddle);
    const { stdout, stderr } = slantwise(['demo/dice-bag.json'], { home });
    expect(`${stdout}${stderr}`).not.toContain('checksum');
    expect(stdout).toContain('Step 1 of');
  });

  it('by Windows line ends and a byte order mark alone: reads as it is, and that is said', () => {
    const { home, path } = homeWith(`\ufeff${text.replaceAll('\n', '\r\n')}`);
    const { stdout } = slantwise([], { home, input: 'next\nquit\n' });
    expect(stdout).toMatch(/byte order mark[^\n]*no harm[\s\S]*line ends[^\n]*Windows[\s\S]*Step 9 of/);
    const checked = slantwise(['check', path, '--json'], { home });
    expect([checked.status, JSON.parse(checked.stdout)]).toMatchObject([
      0,
      { step: 8, foreign: ['byte-order-mark', 'windows-line-ends'] },
    ]);
  });
});

describe('among the logs', () => {
  it('loops, pipes, devices, folders and names that are no text stop no start, and are told in bags', () => {
    const home = emptyFolder();
    const folder = logsIn(home);
    symlinkSync('loop.jsonl', join(folder, 'loop.jsonl'));
    symlinkSync('/dev/zero', join(folder, 'zero.jsonl'));
    execFileSync('mkfifo', [join(folder, 'pipe.jsonl')]);
    mkdirSync(join(folder, 'folder.jsonl'));
    writeFileSync(
      Buffer.concat([Buffer.from(`${folder}/`), Buffer.of(0xff, 0xfe), Buffer.from('.jsonl')]),
      '',
    );
    writeFileSync(join(folder, `${'n'.repeat(244)}.jsonl`), text);
    const { status, stdout } = slantwise([], { home });
    expect([status, stdout]).toEqual([0, expect.stringContaining('Step 8 of')]);
    const { stdout: listed } = slantwise(['bags'], { home });
    expect(listed.match(/cannot be read/g)).toHaveLength(5);
  });

  it('a pipe that is named and in which nobody writes is given up', async () => {
    const pipe = join(emptyFolder(), 'pipe');
    execFileSync('mkfifo', [pipe]);
    const all = [
      ['check', pipe],
      ['plan', pipe],
      ['--log', pipe],
    ];
    for (const { status, stderr } of await Promise.all(all.map(slantwiseMeanwhile)))
      expect([status, stderr]).toEqual([1, expect.stringMatching(/^slantwise: [^\n]*pipe[^\n]*\n$/)]);
  });

  it('a pipe in which somebody writes is read', () => {
    const { stdout } = spawnShell(`dist/cli.js plan <(sleep 0.2; cat ${pouch}) --json`);
    expect(JSON.parse(stdout)).toMatchObject({ stitches: expect.any(Number) });
  });
});

/** In bash, for what another program writes. */
function spawnShell(command: string): { readonly stdout: string } {
  const env = hermetic(emptyFolder());
  return {
    stdout: execFileSync('bash', ['-c', `${process.execPath} ${command}`], { encoding: 'utf8', env }),
  };
}

/** Nobody; those who are not root take away their own right. */
const user = process.getuid?.() === 0 ? 65_534 : undefined;

/** A copy that everybody may run. */
function openProgram(): string {
  const folder = emptyFolder();
  for (const part of ['dist', 'demo']) cpSync(part, join(folder, part), { recursive: true });
  chmodSync(folder, 0o755);
  return join(folder, 'dist', 'cli.js');
}

describe.skipIf(process.platform === 'win32')('a folder that is closed', () => {
  it('of logs: bags and a start say so', () => {
    const program = openProgram();
    for (const mode of [0o000, 0o444]) {
      const { home } = homeWith(text);
      for (const path of [home, join(home, 'data'), join(home, 'data', 'slantwise')]) chmodSync(path, 0o777);
      chmodSync(logsIn(home), mode);
      const listed = slantwise(['bags'], { home, user, program });
      expect([listed.status, listed.stderr]).toEqual([1, expect.stringContaining('there is no permission')]);
      const { stdout, status } = slantwise(['--practice'], { home, user, program });
      expect([status, stdout]).toEqual([1, expect.stringMatching(/^[^\n]*bags: there is no permission/)]);
      chmodSync(logsIn(home), 0o755);
    }
  });

  it('about a log that is named: the log does not count as absent', () => {
    const program = openProgram();
    const folder = emptyFolder();
    const path = join(folder, 'bag.jsonl');
    writeFileSync(path, text);
    chmodSync(folder, 0o444);
    const { status, stderr } = slantwise(['--log', path], { user, program });
    expect([status, stderr]).toEqual([1, `slantwise: ${path}: there is no permission (EACCES).\n`]);
    chmodSync(folder, 0o755);
    expect(readdirSync(folder)).toEqual(['bag.jsonl']);
  });

  it('by a file in its place: the sentence names that', () => {
    const home = emptyFolder();
    writeFileSync(join(home, 'config'), '');
    const { stdout } = slantwise(['--practice'], { home, input: 'units in\nquit\n' });
    expect(stdout).toContain('A file stands where the folder of');
  });
});

describe('too much', () => {
  it('in a file: is refused by its size, unread', () => {
    const path = join(emptyFolder(), 'bag.jsonl');
    writeFileSync(path, text);
    truncateSync(path, 300 * 1024 * 1024);
    const begun = performance.now();
    slantwise(['--version']);
    const from = performance.now();
    const { status, stderr } = slantwise(['check', path]);
    expect([status, stderr]).toEqual([1, expect.stringContaining('is larger than')]);
    // A start alone takes long on a busy machine.
    expect(performance.now() - from).toBeLessThan(1000 + 2 * (from - begun));
  });

  it('in a device or on the input, without end: is given up', () => {
    expect(slantwise(['check', '/dev/zero'])).toMatchObject({
      status: 1,
      stderr: expect.stringContaining('larger'),
    });
    const { status, stderr } = slantwise(['--practice'], { input: '\0'.repeat(3_000_000) });
    expect([status, stderr]).toEqual([1, expect.stringMatching(/^slantwise: [^\n]*1,000 KiB[^\n]*\n$/)]);
  });
});
