/** What README.md and DEVELOPERS.md name is there: files and folders, npm scripts, the shell's commands, variables. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { describe, expect, it } from 'vitest';
import { commands } from '../../source/cli/commands.ts';

const guides = ['README.md', 'DEVELOPERS.md'] as const;
const textOf = (guide: string): string => readFileSync(guide, 'utf8');
const { scripts } = JSON.parse(readFileSync('package.json', 'utf8'));

/** Each match of the pattern in a guide, of which there must be some. */
function namedIn(guide: string, pattern: RegExp): readonly string[] {
  const found = [...textOf(guide).matchAll(pattern)].map(([, name = '']) => name);
  expect(found.length).toBeGreaterThan(0);
  return [...new Set(found)];
}

/** A `*` or `…` stands for any letters, and `topic` for one of the topics. */
function isThere(name: string): boolean {
  const [, folder = '.', file = ''] = /^(?:(.*)\/)?([^/]*)$/.exec(name) ?? [];
  const like = new RegExp(`^${file.replaceAll('.', '\\.').replace(/\*|…|^topic\b/g, '.+')}$`);
  return ['.', 'source', 'test', 'source/screen']
    .map((place) => `${place}/${folder}`)
    .filter((place) => existsSync(place))
    .some((place) => file === '' || namesIn(place, file.startsWith('*')).some((there) => like.test(there)));
}

const namesIn = (folder: string, recursive: boolean): readonly string[] =>
  readdirSync(folder, { recursive, encoding: 'utf8' }).map((path) => basename(path));

describe('every path is there', () => {
  it.each([
    ['README.md', /`((?:demo|\.ci|\.config|test|source)\/[\w./-]*|[A-Z]+\.md)`/g],
    ['DEVELOPERS.md', /`((?:[.\w-]+\/)+[\w.*…-]*|[\w*.…-]+\.(?:ts|tsx|mjs|json|md))`/g],
    ['README.md', /(?:src|srcset)="([^"]+)"/g],
  ])('in %s, as %s finds them', (guide, pattern) => {
    expect(namedIn(guide, pattern).filter((name) => !isThere(name))).toEqual([]);
  });

  it('each folder of source stands in the tree of DEVELOPERS.md, and no other', () => {
    const tree = namedIn('DEVELOPERS.md', /^ {2}([\w-]+\/) /gm);
    const folders = readdirSync('source', { withFileTypes: true }).filter((entry) => entry.isDirectory());
    expect(tree.toSorted()).toEqual(folders.map(({ name }) => `${name}/`).toSorted());
  });

  it('the path of a press names modules by their own names', () => {
    const [, path = ''] = /A press:\n\n```\n([\s\S]*?)\n```/.exec(textOf('DEVELOPERS.md')) ?? [];
    const lines = path.split('\n');
    expect(lines).toHaveLength(5);
    for (const line of lines) {
      const [, folder = ''] = /^(\S+)/.exec(line) ?? [];
      const names = [...line.matchAll(/([\w/-]+\.tsx?)/g)].map(([, name = '']) =>
        name.includes('/') ? name : `${folder}/${name}`,
      );
      expect(names.filter((name) => !existsSync(`source/${name}`))).toEqual([]);
    }
  });
});

describe('every command is there', () => {
  it.each(guides)('of npm, in %s', (guide) => {
    const named = namedIn(guide, /npm (?:run )?(start|test|(?<=run )[\w-]+)/g);
    expect(named.filter((name) => !(name in scripts))).toEqual([]);
  });

  it('of the shell, in README.md', () => {
    const named = namedIn('README.md', /`slantwise ([a-z]+)\b(?![.-])/g);
    const known = commands.map(({ name }) => name);
    expect(named.filter((name) => !known.includes(name) && name !== 'my')).toEqual([]);
  });

  it('and each variable of the tests is read by one', () => {
    const files = readdirSync('test', { recursive: true, encoding: 'utf8' }).filter((path) =>
      path.endsWith('.ts'),
    );
    const all = files.map((path) => textOf(`test/${path}`)).join('\n');
    const named = namedIn('DEVELOPERS.md', /\b(SLANTWISE_[A-Z]+)\b/g);
    expect(named.filter((name) => !all.includes(`process.env.${name}`))).toEqual([]);
  });
});
