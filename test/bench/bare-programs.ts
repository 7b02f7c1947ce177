import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type BuildOptions, build } from 'esbuild';

/** Everything that a run leaves behind is here; git does not see it. */
export const cacheFolder = join('node_modules', '.cache', 'slantwise-bench');

const options = (): BuildOptions => JSON.parse(readFileSync('.config/bundle.json', 'utf8'));

/**
 * Bundles a program beside this file as modules for production, with the options of the built program but with Ink as it
 * comes; gives the path to run.
 */
export async function bundleBare(name: string, source: string): Promise<string> {
  const outdir = join(cacheFolder, name);
  mkdirSync(outdir, { recursive: true });
  await build({
    ...options(),
    entryPoints: { [name]: join('test', 'bench', source) },
    outdir,
    outExtension: { '.js': '.mjs' },
    format: 'esm',
    splitting: true,
    external: ['react-devtools-core'],
    banner: {
      js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);",
    },
  });
  return join(outdir, `${name}.mjs`);
}

/** Builds it as the program itself is built, with all that we changed; `shown` is what its screen then shows. */
export function buildLikeOurs(name: string, source: string, shown: string): string {
  const outdir = join(cacheFolder, `${name}-like-ours`);
  execFileSync(process.execPath, ['.config/build.mjs', join('test', 'bench', source), outdir, shown]);
  return join(outdir, 'cli.js');
}
