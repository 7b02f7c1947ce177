import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildSync } from 'esbuild';
import { afterAll, afterEach } from 'vitest';

const here = fileURLToPath(new URL('.', import.meta.url));

const built: string[] = [];
const running: ChildProcess[] = [];

afterEach(() => {
  for (const child of running.splice(0)) child.kill('SIGKILL');
});

afterAll(() => {
  for (const folder of built.splice(0)) rmSync(folder, { recursive: true, force: true });
});

/** Bundles a script that stands beside the tests so that plain Node can run it; gives its path. */
export function buildScript(name: string): string {
  const folder = mkdtempSync(join(tmpdir(), 'slantwise-script-'));
  built.push(folder);
  const outfile = join(folder, name.replace(/\.ts$/, '.mjs'));
  buildSync({
    entryPoints: [join(here, name)],
    outfile,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'esm',
    logLevel: 'error',
  });
  return outfile;
}

export interface Child {
  readonly process: ChildProcess;
  /** All lines so far. */
  readonly lines: () => readonly string[];
  /** Resolves when a line was said that begins like this. */
  readonly said: (start: string) => Promise<string>;
  readonly ended: Promise<unknown>;
}

/** Runs a script; its standard output is read line by line, a last half line left out. */
export function run(
  script: string,
  given: readonly string[],
  options: { readonly uid?: number } = {},
): Child {
  const child = spawn(process.execPath, [script, ...given], {
    stdio: ['ignore', 'pipe', 'inherit'],
    ...options,
  });
  running.push(child);
  let text = '';
  child.stdout.setEncoding('utf8').on('data', (more: string) => {
    text += more;
  });
  const lines = (): readonly string[] => text.split('\n').slice(0, -1);
  const ended = once(child, 'close');
  const said = async (start: string): Promise<string> => {
    for (;;) {
      const found = lines().find((line) => line.startsWith(start));
      if (found !== undefined) return found;
      const more = await Promise.race([once(child.stdout, 'data'), ended.then(() => null)]);
      if (more === null && !lines().some((line) => line.startsWith(start))) {
        throw new Error(`ended without saying ${start}: ${text}`);
      }
    }
  };
  return { process: child, lines, said, ended };
}
