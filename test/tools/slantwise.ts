/** Runs the built program with an empty home, and nothing of whoever runs the tests but the way to programs. */
import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { text as textOf } from 'node:stream/consumers';
import { onTestFinished } from 'vitest';
import { hermetic } from './hermetic.ts';

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
  /** A home to go on with; without one it is empty and new. */
  readonly home?: string;
  /** Where it prints to; without one it is read. */
  readonly stdout?: number;
  /** Added to the environment. */
  readonly env?: Readonly<Record<string, string>>;
  /** Who runs it, where the tests run as root: to root no folder is closed. */
  readonly user?: number | undefined;
}

/** A folder that is gone when the test is over. */
export function emptyFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'slantwise-test-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

export function slantwise(
  args: readonly string[],
  {
    program = 'dist/cli.js',
    input = 'quit\n',
    locale = 'C.UTF-8',
    home = emptyFolder(),
    stdout: printsTo,
    env,
    user,
  }: RunOptions = {},
): Ran {
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...args], {
    encoding: 'utf8',
    input,
    ...(user === undefined ? {} : { uid: user, gid: user }),
    stdio: ['pipe', printsTo ?? 'pipe', 'pipe'],
    env: { ...hermetic(home), LANG: locale, ...env },
  });
  return { status, stdout, stderr };
}

/** The same for a start that mostly waits, so that others can wait meanwhile; it is given nothing to read. */
export async function slantwiseMeanwhile(args: readonly string[]): Promise<Ran> {
  const child = spawn(process.execPath, ['dist/cli.js', ...args], {
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { ...hermetic(emptyFolder()), LANG: 'C.UTF-8' },
  });
  const [stdout, stderr, [status]] = await Promise.all([
    textOf(child.stdout),
    textOf(child.stderr),
    once(child, 'close'),
  ]);
  return { status, stdout, stderr };
}
