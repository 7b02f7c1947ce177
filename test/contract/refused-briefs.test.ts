import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { briefWith, type Edits, refusalOf } from './broken-brief.ts';

interface Case {
  readonly edits: string;
  readonly code: string;
  readonly sentence: string;
}

function readCases(): readonly Case[] {
  const text = readFileSync(new URL('broken-briefs.txt', import.meta.url), 'utf8');
  return text
    .split(/^== /m)
    .slice(1)
    .flatMap((part) => {
      const [code = '', ...lines] = part.trimEnd().split('\n');
      const pairs = lines.join('\n').matchAll(/^(\S.*)\n {4}(.*)$/gm);
      return [...pairs].map(([, edits = '', sentence = '']) => ({ edits, code, sentence }));
    });
}

const parseEdits = (edits: string): Edits =>
  Object.fromEntries(
    edits.split(' ; ').map((edit) => {
      const colon = edit.indexOf(': ');
      return colon < 0 ? [edit.replace('no ', ''), undefined] : [edit.slice(0, colon), edit.slice(colon + 2)];
    }),
  );

describe('a broken brief', () => {
  const cases = readCases();

  it.each(cases)('$edits', ({ edits, code, sentence }) => {
    expect(refusalOf(briefWith(parseEdits(edits)))).toEqual([code, sentence]);
  });

  it('is refused for a name as long as a page', () => {
    expect(refusalOf(briefWith({ name: `"${'bag'.repeat(99)}"` }))).toEqual([
      'brief/too-long',
      'name is too long: 200 characters at most.',
    ]);
  });

  it('is refused for more stripes than a repeat can have', () => {
    const stripes = `[${Array(201).fill('{"yarn": "plum", "rows": 2}')}]`;
    expect(refusalOf(briefWith({ stripes }))).toEqual([
      'brief/too-long',
      'stripes is too long: 200 stripes at most.',
    ]);
  });

  it('is accepted once nothing in it is broken', () => {
    expect(() => refusalOf(briefWith({}))).toThrow('the brief was accepted');
  });
});
