import { join } from 'node:path';
import { afterEach, expect, it, vi } from 'vitest';
import { emptyFolder } from '../../test/tools/slantwise.ts';
import { findOddShape } from '../planning/explain-issue.ts';
import { metric } from '../shared/units.ts';
import { inEnglish, wordsIn } from '../wording/words.ts';
import { openWork, type WorkOptions } from './open-work.ts';

/** Asked once whenever a brief is checked. */
vi.mock(import('../planning/explain-issue.ts'), async (importOriginal) => {
  const actual = await importOriginal();
  return { ...actual, findOddShape: vi.fn(actual.findOddShape) };
});

afterEach(() => vi.unstubAllEnvs());

const work = (options: Partial<WorkOptions>): number => {
  vi.stubEnv('HOME', emptyFolder());
  vi.stubEnv('XDG_DATA_HOME', emptyFolder());
  vi.mocked(findOddShape).mockClear();
  const opened = openWork({
    brief: null,
    log: join(emptyFolder(), 'bag.jsonl'),
    like: undefined,
    fresh: false,
    mayAsk: false,
    program: '0.1.0',
    words: wordsIn(inEnglish, metric),
    commands: [],
    ...options,
  });
  if (opened.ok) opened.value.log?.close();
  expect(opened.ok).toBe(true);
  return vi.mocked(findOddShape).mock.calls.length;
};

it('checks a brief once, from its file to the first line of its log', () => {
  expect(work({ brief: 'demo/token-pouch.json' })).toBe(1);
});

it('checks the brief of a log once, and the one made like it once', () => {
  expect(work({ like: 'demo/token-pouch.jsonl' })).toBe(2);
});
