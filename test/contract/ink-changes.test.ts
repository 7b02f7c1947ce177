/** The program's own text has each change of Ink in it, and Ink as it comes has none: the check can tell them apart. */
import { readFileSync } from 'node:fs';
import { type BuildOptions, build } from 'esbuild';
import { expect, it } from 'vitest';
import { changeNames, missingFrom } from '../../.config/ink-changes.mjs';

async function bundledAsItComes(): Promise<string> {
  const options: BuildOptions = JSON.parse(readFileSync('.config/bundle.json', 'utf8'));
  const { outputFiles } = await build({
    ...options,
    entryPoints: ['test/bench/bare/hello.tsx'],
    external: ['react-devtools-core'],
    format: 'esm',
    write: false,
  });
  return outputFiles[0]?.text ?? '';
}

it('are all in the program', () => {
  expect(missingFrom(readFileSync('dist/program.js', 'utf8'))).toEqual([]);
});

it('are all missed where Ink is bundled as it comes', async () => {
  expect(missingFrom(await bundledAsItComes())).toEqual(changeNames);
});
