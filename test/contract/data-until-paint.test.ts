/** Data until the paint: words come last, and nothing is decided by them. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { chatCommands } from '../../source/chat/commands/chat-commands.ts';
import { parseLine } from '../../source/chat/parse-line.ts';
import { metric } from '../../source/shared/units.ts';
import { englishWords, wordsIn } from '../../source/wording/words.ts';
import { german } from '../fixtures/spoken.ts';

const modules = readdirSync('source', { recursive: true, encoding: 'utf8' })
  .filter((path) => /\.tsx?$/.test(path) && !/\.test\.tsx?$/.test(path))
  .map((path) => ({ path, code: readFileSync(`source/${path}`, 'utf8') }));

const linesWith = (pattern: RegExp): readonly string[] =>
  modules.flatMap(({ path, code }) =>
    code
      .split('\n')
      .filter((line) => pattern.test(line))
      .map((line) => `${path}: ${line.trim()}`),
  );

it('no module keeps a language for the whole program', () => {
  expect(linesWith(/^(?:export )?let \w+\b.*(?:[wW]ords|Language)/)).toEqual([]);
});

it('no text is compared with what is said', () => {
  const saying = String.raw`(?:words|say)\.(?!language\b|units\b|length\b|at\b)\w+|(?:say|format|speak)[A-Z]\w*\(`;
  expect(
    linesWith(new RegExp(`(?:===|!==) (?:${saying})|(?:${saying})[\\w.]*(?:\\([^()]*\\))? (?:===|!==)`)),
  ).toEqual([]);
});

describe('why a line is not understood', () => {
  const inGerman = wordsIn(german, metric);
  const lines = chatCommands.flatMap(({ name }) =>
    ['', ' nothing', ' 7', ' 0 0', ' @', ' left', ' mint'].map((rest) => name + rest),
  );

  it.each([...lines, '@', 'zz', 'go', 'R5', '7', 'find 7', 'rip 3'])(
    '%j is the same in both languages',
    (line) => {
      expect(parseLine(line, inGerman)).toEqual(parseLine(line, englishWords));
    },
  );
});
