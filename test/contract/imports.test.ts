/** The layout keeps itself: imports point one way, none runs in a circle, and the core knows no machine. */
import { readdirSync, readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';

/** From the bottom up; folders on one line stand side by side and may not import each other. */
const layers = [
  ['shared'],
  ['bed'],
  ['planning'],
  ['steps'],
  ['session'],
  ['journal'],
  ['settings'],
  ['wording'],
  ['chat', 'sheet'],
  ['files', 'screen'],
  ['cli'],
  ['main'],
];

const impureFolders = ['files', 'screen', 'cli', 'main'];

/** Ways to the machine: its modules, the screen libraries, clock, chance, console, network. */
const machine =
  /(?:from|import)\s*\(?\s*'(?:node:|react\b|ink\b|ink-|conf\b)[^']*'|\b(?:Date\.now|new Date\(\)|performance\.|Math\.random|crypto\.|console\.|process\.|globalThis|setTimeout|setInterval|setImmediate|fetch\()/;

/** `main.ts` stands on top of all folders. */
const folderOf = (path: string): string => /^source\/([^/.]+)/.exec(path)?.[1] ?? '';
const levelOf = (path: string): number => layers.findIndex((names) => names.includes(folderOf(path)));

/** Code without its comments; strings stay, since imports are strings. */
const codeOf = (path: string): string =>
  readFileSync(path, 'utf8').replace(/\/\*[\s\S]*?\*\/|^\s*\/\/.*$|\s\/\/ .*$/gm, '');

const modules = readdirSync('source', { recursive: true, encoding: 'utf8' })
  .map((path) => `source/${path}`)
  .filter((path) => /\.tsx?$/.test(path) && !/\.test\.tsx?$/.test(path))
  .toSorted();

function importsOf(path: string): readonly string[] {
  const relative = codeOf(path).matchAll(/(?:from|import)\s*\(?\s*'(\.[^']*)'/g);
  return [...relative].map(([, target = '']) => join(dirname(path), target));
}

const graph = new Map(modules.map((path) => [path, importsOf(path)]));
const lines = [...graph].flatMap(([path, targets]) => targets.map((target) => ({ path, target })));

/** Circles met on the way down from `path`, each as a chain of modules; modules in `done` are not gone through again. */
function circlesFrom(path: string, chain: readonly string[], done: Set<string>): readonly string[] {
  if (chain.includes(path)) return [[...chain.slice(chain.indexOf(path)), path].join(' > ')];
  if (done.has(path)) return [];
  const circles = (graph.get(path) ?? []).flatMap((target) => circlesFrom(target, [...chain, path], done));
  done.add(path);
  return circles;
}

describe('the imports of the program', () => {
  it('are read from every module', () => {
    expect(modules).toContain('source/bed/apply-move.ts');
    expect(graph.get('source/bed/apply-move.ts')).toContain('source/bed/needles.ts');
    expect(lines.length).toBeGreaterThan(modules.length);
  });

  it('lead to modules that are there', () => {
    expect(lines.filter(({ target }) => !graph.has(target))).toEqual([]);
  });

  it('come from folders that have a place in the order', () => {
    expect(modules.filter((path) => levelOf(path) < 0)).toEqual([]);
  });

  it('point down, or stay in their folder', () => {
    const wrong = lines.filter(
      ({ path, target }) => folderOf(path) !== folderOf(target) && levelOf(target) >= levelOf(path),
    );
    expect(wrong).toEqual([]);
  });

  it('of two folders inside a folder point one way', () => {
    const between = new Map<string, string>();
    for (const { path, target } of lines)
      between.set(`${dirname(path)} > ${dirname(target)}`, `${path} > ${target}`);
    const bothWays = [...between].flatMap(([pair, line]) => {
      const [from = '', to = ''] = pair.split(' > ');
      const back = from < to ? between.get(`${to} > ${from}`) : undefined;
      return back ? [[line, back]] : [];
    });
    expect(bothWays).toEqual([]);
  });

  it('never run in a circle', () => {
    const done = new Set<string>();
    expect(modules.flatMap((path) => circlesFrom(path, [], done))).toEqual([]);
  });
});

describe('the pure folders', () => {
  const pure = modules.filter((path) => !impureFolders.includes(folderOf(path)));

  it('do not touch disk, screen, clock, chance or console', () => {
    const touching = pure.flatMap((path) => {
      const match = machine.exec(codeOf(path));
      return match ? [`${path}: ${match[0]}`] : [];
    });
    expect(touching).toEqual([]);
  });

  it('would be caught at it', () => {
    for (const line of [
      "import { readFileSync } from 'node:fs';",
      "import React from 'react';",
      "import { Box } from 'ink';",
      "const ink = await import('ink');",
      'const now = Date.now();',
      'const now = new Date();',
      'const chance = Math.random();',
      'console.log(1);',
      'process.exit(1);',
    ])
      expect(line).toMatch(machine);
  });
});

describe('what a message makes of a screen', () => {
  const below = (path: string, seen: Set<string>): void => {
    if (seen.has(path)) return;
    seen.add(path);
    for (const target of graph.get(path) ?? []) below(target, seen);
  };
  const updates = modules.filter((path) => /^source\/screen\/.*\/update-[^/]*$/.test(path));

  it('is worked out for each of the three screens by modules that do nothing themselves', () => {
    expect(updates.map((path) => basename(path))).toEqual([
      'update-bench.ts',
      'update-player.ts',
      'update-questions.ts',
    ]);
    const all = new Set<string>();
    for (const path of updates) below(path, all);
    expect([...all]).toContain('source/screen/bench/press-switch.ts');
    expect([...all].filter((path) => machine.test(codeOf(path)) || path.startsWith('source/files/'))).toEqual(
      [],
    );
  });
});

describe('text goes out by a few places, each of which makes it harmless', () => {
  const saying = (pattern: RegExp): readonly string[] => modules.filter((path) => pattern.test(codeOf(path)));

  it('to standard output and error in one file; the bell rings in another', () => {
    expect(saying(/std(?:out|err)\.write\(|console\.|writeSync\((?:1|2)\b/)).toEqual([
      'source/cli/outcome.ts',
      'source/cli/work.ts',
    ]);
  });

  it('to Ink in one file', () => {
    expect(saying(/\bText\b[^;]*from 'ink'/)).toEqual(['source/screen/parts/rows.tsx']);
  });
});
