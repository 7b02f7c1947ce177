/**
 * One word for one thing: a name that is exported stands for one thing in the whole program. Topics of words are named after
 * what they speak of, and stand once in each language: they do not count.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const modules = readdirSync('source', { recursive: true, encoding: 'utf8' })
  .filter((path) => /\.tsx?$/.test(path) && !/\.test\.tsx?$/.test(path))
  .map((path) => `source/${path}`);

const declaration = /^(export )?(?:async )?(interface|type|class|function\*?|const) (\w+)/gm;

const declared = modules.flatMap((path) =>
  [...readFileSync(path, 'utf8').matchAll(declaration)].map(([, exported, kind, name = '']) => ({
    path,
    name,
    isExported: exported !== undefined,
    isTopic: /\.(?:en|de)\.ts$/.test(path),
    isType: kind === 'interface' || kind === 'type' || kind === 'class',
  })),
);

type Declared = (typeof declared)[number];

/** Names of which one is exported and another stands in some other module. */
function sharedNames(among: readonly Declared[]): readonly string[] {
  const byName = new Map<string, Declared[]>();
  for (const one of among) byName.set(one.name, [...(byName.get(one.name) ?? []), one]);
  return [...byName]
    .filter(([, all]) => all.length > 1 && all.some(({ isExported }) => isExported))
    .map(([name, all]) => `${name}: ${all.map(({ path }) => path).join(', ')}`);
}

describe('a name', () => {
  it('is read from every module', () => {
    expect(declared.map(({ name }) => name)).toEqual(
      expect.arrayContaining(['Bed', 'applyMove', 'BenchApp']),
    );
  });

  it('of a type that is exported is given to no other type', () => {
    expect(sharedNames(declared.filter(({ isType }) => isType))).toEqual([]);
  });

  it('of a function or a value that is exported is exported by no other module', () => {
    expect(
      sharedNames(declared.filter(({ isType, isExported, isTopic }) => !isType && isExported && !isTopic)),
    ).toEqual([]);
  });
});
