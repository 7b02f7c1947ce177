/**
 * Builds the program into dist/: all of it in one file, what starts it, the thread that writes logs, and what V8 compiled of
 * it. React reads NODE_ENV when its module loads, so only a definition at build time gives its production build. A benchmark
 * builds another program the same way: `node .config/build.mjs FILE FOLDER TEXT`, where TEXT is what its screen shows.
 */
import { execFileSync } from 'node:child_process';
import { chmod, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { build } from 'esbuild';
import { inkChanges, missingFrom } from './ink-changes.mjs';
import { loadedApart } from './loaded-apart.mjs';
import { noticesOf } from './notices.mjs';

const [program = 'source/main.ts', outdir = 'dist', ...shown] = process.argv.slice(2);
const readJson = async (path) => JSON.parse(await readFile(path, 'utf8'));
const [{ version }, options] = [await readJson('package.json'), await readJson('.config/bundle.json')];
// What runs from the folder meanwhile finds the old program or the new one, and never half of each.
const fresh = `${outdir}.new`;
await rm(fresh, { recursive: true, force: true });
const { metafile } = await build({
  ...options,
  entryPoints: {
    cli: 'source/cli/start.ts',
    program,
    'start-executable': 'source/cli/start-executable.ts',
    'journal-worker': 'source/files/journal-worker.ts',
    german: 'source/wording/german.ts',
    conf: 'source/files/conf.ts',
  },
  outdir: fresh,
  metafile: true,
  format: 'cjs',
  plugins: [inkChanges, loadedApart],
  // What is loaded later is loaded by the program's own `require`.
  supported: { 'dynamic-import': false },
  banner: { js: "const thisFile = require('node:url').pathToFileURL(__filename).href;" },
  define: {
    ...options.define,
    'import.meta.url': 'thisFile',
    SLANTWISE_VERSION: JSON.stringify(version),
  },
});
// Were there one character that takes more than a byte, V8 would hold all of them in two. Those that esbuild leaves as they stand
// are in patterns, which know the same escapes.
const path = join(fresh, 'program.js');
const escaped = (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`;
const text = (await readFile(path, 'utf8')).replace(/[^\0-\x7f]/g, escaped);
await writeFile(path, text);
const missing = missingFrom(text);
if (missing.length > 0) throw new Error(`the program lacks changes of Ink: ${missing.join(', ')}`);
await writeFile(join(fresh, 'NOTICES.txt'), noticesOf(metafile));
await writeFile(join(fresh, 'package.json'), '{ "type": "commonjs" }\n');
await chmod(join(fresh, 'cli.js'), 0o755);
try {
  execFileSync(process.execPath, ['.config/keep-compiled.mjs', fresh, ...shown], { stdio: 'pipe' });
} catch (error) {
  console.warn(
    `The program will start more slowly, since nothing of it could be kept compiled: ${error.message}`,
  );
}
if (program === 'source/main.ts') await writeFile(join(fresh, 'slantwise.1'), manualOf(fresh));
await rm(outdir, { recursive: true, force: true });
await rename(fresh, outdir);

/** For those who install it; `slantwise manual` gives the same in the maker's language. */
function manualOf(folder) {
  const env = {
    PATH: process.env.PATH,
    HOME: folder,
    XDG_CONFIG_HOME: folder,
    LANG: 'C',
    NODE_DISABLE_COMPILE_CACHE: '1',
  };
  return execFileSync(process.execPath, [join(folder, 'cli.js'), 'manual'], { env });
}
