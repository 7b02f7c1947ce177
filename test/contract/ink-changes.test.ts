/** The program's own text has each change of Ink in it, and Ink as it comes has none: the check can tell them apart. */
import { readFileSync } from 'node:fs';
import { PassThrough } from 'node:stream';
import { type BuildOptions, build, type Plugin } from 'esbuild';
import fc from 'fast-check';
import stringWidth from 'string-width';
import { expect, it } from 'vitest';
import { changeNames, inkChanges, inkChangesInTests, missingFrom } from '../../.config/ink-changes.mjs';
import { tokenize } from '../../node_modules/@alcalzone/ansi-tokenize/build/tokenize.js';
import logUpdate from '../../node_modules/ink/build/log-update.js';
import { tries } from '../tools/tries.ts';

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

/** What a file of a library gives as it comes, without any change. */
async function asItComes(file: string) {
  const { outputFiles } = await build({
    entryPoints: [file],
    bundle: true,
    platform: 'node',
    format: 'esm',
    write: false,
  });
  return import(`data:text/javascript;base64,${Buffer.from(outputFiles[0]?.text ?? '').toString('base64')}`);
}

it('measure and cut text of all scripts as the libraries do that come', async () => {
  const measured = await asItComes('node_modules/string-width/index.js');
  const cut = await asItComes('node_modules/@alcalzone/ansi-tokenize/build/tokenize.js');
  const rows = fc.constantFrom('\u{100000}', '\u{100005}', '\u001b[31m', '\u001b[0m');
  const hard = fc.constantFrom(
    '…',
    '–',
    '’',
    '●',
    '►',
    'e\u0301',
    '👩‍👩‍👧',
    '日本',
    '\u200b',
    '‼\ufe0f',
    '↔\ufe0f',
  );
  const piece = fc.oneof(rows, hard, fc.string({ unit: 'binary' }), fc.string({ unit: 'grapheme' }));
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 6 }), (pieces) => {
      const text = pieces.join('');
      expect(stringWidth(text)).toBe(measured.default(text));
      expect(tokenize(text)).toEqual(cut.tokenize(text));
    }),
    { numRuns: tries(10_000) },
  );
});
