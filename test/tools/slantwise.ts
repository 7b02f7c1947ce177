/** Runs the built program with an empty home, and nothing of whoever runs the tests but the way to programs. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';

export interface Ran {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

export interface RunOptions {
  /** Where the program stands. */
  readonly program?: string;
  readonly input?: string;
  readonly locale?: string;
}

/** A folder that is gone when the test is over. */
export function emptyFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'slantwise-test-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

export function slantwise(
  args: readonly string[],
  { program = 'dist/cli.js', input = 'quit\n', locale = 'C.UTF-8' }: RunOptions = {},
): Ran {
  const home = emptyFolder();
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...args], {
    encoding: 'utf8',
    input,
    env: {
      PATH: process.env.PATH,
      HOME: home,
      XDG_CONFIG_HOME: join(home, 'config'),
      XDG_DATA_HOME: join(home, 'data'),
      LANG: locale,
    },
  });
  return { status, stdout, stderr };
}
