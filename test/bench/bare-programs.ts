import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type BuildOptions, build } from 'esbuild';

/** Everything that a run leaves behind is here; git does not see it. */
export const cacheFolder = join('node_modules', '.cache', 'slantwise-bench');

const options = (): BuildOptions => JSON.parse(readFileSync('.config/bundle.json', 'utf8'));

/** Bundles a program beside this file by the very options of the built program; gives the path to run. */
export async function bundleLikeOurs(name: string, source: string): Promise<string> {
  const outdir = join(cacheFolder, name);
  mkdirSync(outdir, { recursive: true });
  await build({
    ...options(),
    entryPoints: { [name]: join('test', 'bench', source) },
    outdir,
    outExtension: { '.js': '.mjs' },
  });
  return join(outdir, `${name}.mjs`);
}
