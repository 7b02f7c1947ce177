import { render } from 'ink-testing-library';
import { beforeEach, expect, it, vi } from 'vitest';
import { TranscriptLine } from './rows.tsx';
import { putIn } from './screen-output.ts';

const shown = (text: string, columns: number): readonly string[] =>
  putIn(render(<TranscriptLine line={{ tone: 'answer', text }} columns={columns} />).lastFrame() ?? '')
    .split('\n')
    .map((line) => line.trimEnd());

beforeEach(() => void vi.stubEnv('NO_COLOR', '1'));

it('keeps the gaps of a table', () => {
  expect(shown('  next     confirm this step', 40)).toEqual(['    next     confirm this step']);
});

it('wraps below its own beginning, and never begins a row with a space', () => {
  expect(shown('  one two three four', 12)).toEqual(['    one two', '    three', '    four']);
});

it('keeps a number with its unit', () => {
  expect(shown('a row is 3.6 mm high', 14)).toEqual(['  a row is', '  3.6 mm high']);
});
