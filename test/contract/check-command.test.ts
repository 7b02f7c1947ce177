/** `slantwise check` on logs that are sound, cut off, and damaged: exit status, and what is said. */
import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { hermetic } from '../tools/hermetic.ts';
import { emptyFolder, slantwise } from '../tools/slantwise.ts';

const folder = mkdtempSync(join(tmpdir(), 'slantwise-check-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const log = readFileSync('demo/token-pouch.jsonl');
const lineCount = log.toString().split('\n').length - 1;

function check(name: string, bytes: Uint8Array) {
  const path = join(folder, name);
  writeFileSync(path, bytes);
  const { status, stdout, stderr } = slantwise(['check', path, '--json']);
  return { status, tally: stdout === '' ? null : JSON.parse(stdout), stderr };
}

describe('check', () => {
  it('is content with a sound log', () => {
    const { status, tally, stderr } = check('sound.jsonl', log);
    expect([status, tally.events, tally.finished, stderr]).toEqual([0, lineCount - 1, true, '']);
  });

  it('names a last line that was cut off, and counts what is sound', () => {
    const { status, tally, stderr } = check('cut.jsonl', log.subarray(0, -9));
    expect([status, tally.events]).toEqual([1, lineCount - 2]);
    expect(stderr).toContain(`Line ${lineCount}, the last, was cut off`);
  });

  it.each(['replay', 'record'])('says of it what %s says, which shows what is sound', (command) => {
    const path = join(folder, 'cut.jsonl');
    const { stderr } = check('cut.jsonl', log.subarray(0, -9));
    for (const more of [[], ['--json']]) {
      const run = slantwise([command, path, ...more]);
      expect([run.status, run.stderr]).toEqual([0, stderr]);
      expect(run.stdout.length).toBeGreaterThan(1000);
    }
    writeFileSync(path, log);
    expect(slantwise([command, path]).stderr).toBe('');
  });

  it('names a damaged line, and saves what is sound', () => {
    const lines = log.toString().split('\n');
    const { status, tally, stderr } = check('damaged.jsonl', Buffer.from(lines.toSpliced(9, 1).join('\n')));
    expect([status, tally]).toEqual([1, null]);
    expect(stderr).toMatch(/Line 10 .*The sound part is saved as/);
    const saved = readdirSync(folder).find((name) => /^damaged.*sound/.test(name)) ?? '';
    expect(readFileSync(join(folder, saved), 'utf8').split('\n')).toHaveLength(10);
  });

  it.skipIf(process.platform === 'win32')(
    'tells a way on that can be pasted into a shell, whatever the folder is called',
    () => {
      const home = emptyFolder();
      const odd = join(home, 'Application Support; touch X; $(touch X) \'and "more');
      mkdirSync(odd);
      const path = join(odd, 'bag.jsonl');
      writeFileSync(path, log.toString().split('\n').toSpliced(9, 1).join('\n'));
      const { stderr } = slantwise(['--log', path], { home });
      const [, way = ''] = /: (slantwise --log .*)\n$/.exec(stderr) ?? [];
      const script = `slantwise() { '${process.execPath}' dist/cli.js "$@" </dev/null; }; ${way}`;
      const env = { ...hermetic(home), LANG: 'C.UTF-8' };
      expect(execFileSync('bash', ['-c', script], { encoding: 'utf8', env })).toContain(
        'Back to Token pouch.',
      );
      expect(readdirSync('.')).not.toContain('X');
    },
  );
});
