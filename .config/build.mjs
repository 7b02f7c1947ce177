// Bundles the program for Node into dist/. React reads NODE_ENV when its module loads, so only a
// definition at build time gives its production build; `splitting` keeps what the first screen does not need apart.
import { chmod, readFile, rm } from 'node:fs/promises';
import { build } from 'esbuild';

const readJson = async (path) => JSON.parse(await readFile(path, 'utf8'));
const [{ version }, options] = [await readJson('package.json'), await readJson('.config/bundle.json')];
await rm('dist', { recursive: true, force: true });
await build({
  ...options,
  entryPoints: ['source/cli.tsx'],
  outdir: 'dist',
  define: { ...options.define, SLANTWISE_VERSION: JSON.stringify(version) },
});
await chmod('dist/cli.js', 0o755);
