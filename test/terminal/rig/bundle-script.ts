import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';

/** Bundles TypeScript source, as written in a test, into a file that Node can run; imports start at `from`. */
export async function bundleScript(source: string, from: string): Promise<string> {
  const outdir = mkdtempSync(join(tmpdir(), 'slantwise-script-'));
  await build({
    stdin: { contents: source, resolveDir: from, loader: 'tsx', sourcefile: 'script.tsx' },
    outdir,
    entryNames: 'script',
    outExtension: { '.js': '.mjs' },
    bundle: true,
    // As for the program itself: what Ink loads only for its developers stays apart.
    splitting: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    jsx: 'automatic',
    define: { 'process.env.NODE_ENV': '"production"', 'process.env.DEV': '"false"' },
    external: ['react-devtools-core'],
    banner: {
      js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);",
    },
  });
  return join(outdir, 'script.mjs');
}
