/** Where text goes out: a few places, each of which makes it harmless. Nothing else writes to the terminal. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const modules = readdirSync('source', { recursive: true, encoding: 'utf8' })
  .filter((path) => /(?<!\.test)\.tsx?$/.test(path))
  .map((path) => join('source', path).replaceAll('\\', '/'))
  .toSorted();

const saying = (pattern: RegExp): readonly string[] =>
  modules.filter((path) =>
    pattern.test(readFileSync(path, 'utf8').replaceAll(/^\s*(?:\/?\*|\/\/).*$/gm, '')),
  );

it('writes to standard output and error in one file, and for the modes of a screen and the bell', () => {
  expect(saying(/std(?:out|err)\.write\(|console\.|writeSync\((?:1|2)\b/)).toEqual(
    [
      // The bell.
      'source/cli/work.ts',
      'source/cli/outcome.ts',
    ].toSorted(),
  );
});

it('gives Ink its texts in one file', () => {
  expect(saying(/\bText\b[^;]*from 'ink'/)).toEqual(['source/screen/parts/text.tsx']);
});
