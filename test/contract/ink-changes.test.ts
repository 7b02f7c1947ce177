/** The program's own text has each change of Ink in it, and Ink as it comes has none: the check can tell them apart. */
import { readFileSync } from 'node:fs';
import { PassThrough } from 'node:stream';
import { type BuildOptions, build, type Plugin } from 'esbuild';
import { expect, it } from 'vitest';
import { changeNames, inkChanges, inkChangesInTests, missingFrom } from '../../.config/ink-changes.mjs';
import logUpdate from '../../node_modules/ink/build/log-update.js';

async function bundled(...plugins: readonly Plugin[]): Promise<string> {
  const options: BuildOptions = JSON.parse(readFileSync('.config/bundle.json', 'utf8'));
  const { outputFiles } = await build({
    ...options,
    entryPoints: ['test/bench/bare/hello.tsx'],
    external: ['react-devtools-core'],
    format: 'esm',
    write: false,
    logLevel: 'silent',
    plugins: [...plugins],
  });
  return outputFiles[0]?.text ?? '';
}

/** Gives another text for one of Ink's files before a change can. */
const withOther = (file: RegExp): Plugin => ({
  name: 'another Ink',
  setup: ({ onLoad }) => void onLoad({ filter: file }, () => ({ contents: 'export default () => ({})' })),
});

it('are all in the program', () => {
  expect(missingFrom(readFileSync('dist/program.js', 'utf8'))).toEqual([]);
});

it('are all missed where Ink is bundled as it comes', async () => {
  expect(missingFrom(await bundled())).toEqual(changeNames);
});

it('stop the build by their names where one of them finds nothing to change', async () => {
  await expect(bundled(inkChanges)).resolves.toContain('stdout');
  await expect(bundled(withOther(/[\\/]ink[\\/]build[\\/]measure-text\.js$/), inkChanges)).rejects.toThrow(
    '"few measured texts are kept" was made 0 times',
  );
});

it.each([0, 2])('stop the tests by their names where what they change is there %i times', (times) => {
  const path = 'node_modules/ink/build/measure-text.js';
  const changed = '    cache.set(text, dimensions);\n'.repeat(times);
  expect(() => inkChangesInTests.transform(changed, path)).toThrow(
    `"few measured texts are kept" fits ${times} times`,
  );
});

it('are in the Ink that tests draw with', () => {
  const drawing = logUpdate.create(new PassThrough() as unknown as NodeJS.WriteStream);
  expect(drawing).toHaveProperty('say');
});
