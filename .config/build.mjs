// Bundles the program for Node into dist/. React reads NODE_ENV when its module loads, so only a
// definition at build time gives its production build; `splitting` keeps what the first screen does not need apart.
import { chmod, readFile, rm } from 'node:fs/promises';
import { build } from 'esbuild';

const { version } = JSON.parse(await readFile('package.json', 'utf8'));
await rm('dist', { recursive: true, force: true });
await build({
  entryPoints: ['source/cli.tsx'],
  outdir: 'dist',
  bundle: true,
  splitting: true,
  format: 'esm',
  platform: 'node',
  target: 'node20',
  jsx: 'automatic',
  minify: true,
  legalComments: 'none',
  define: {
    'process.env.NODE_ENV': '"production"',
    'process.env.DEV': '"false"',
    SLANTWISE_VERSION: JSON.stringify(version),
  },
  external: ['react-devtools-core'],
  banner: {
    js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);",
  },
});
await chmod('dist/cli.js', 0o755);
