import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { mountScreen } from '../../../test/terminal/rig/in-process.tsx';
import type { Answers } from '../../chat/first-run/answers.ts';
import { beginInterview, planIn } from '../../chat/first-run/interview.ts';
import { englishWords } from '../../wording/words.ts';
import GrowingBag from './growing-bag.tsx';

beforeEach(() => {
  vi.stubEnv('COLORTERM', 'truecolor');
  vi.stubEnv('NO_COLOR', '');
  vi.stubEnv('TERM', 'xterm-256color');
});
afterEach(() => void vi.unstubAllEnvs());

/** The picture's rows, and all that was written for it. */
async function drawnFor(answers: Answers) {
  const interview = beginInterview(answers, englishWords);
  const screen = mountScreen(<GrowingBag interview={interview} columns={80} rows={12} />);
  const text = await screen.waitFor('wide');
  screen.unmount();
  return { text, raw: screen.raw() };
}

const given = (line: string) => ({ line, length: 'cm' }) as const;
// As the table of usual colours has plum and navy.
const plum = '107;45;92';
const navy = '39;50;92';

it('grows out of the answers: its size at once, its colours when the yarn is known', async () => {
  const begun = await drawnFor({ name: given('Invented bag') });
  expect(begun.text).toMatch(/1[34](\.\d)? cm wide/);
  expect(begun.raw).not.toContain(`38;2;${plum}m`);
  const sized = await drawnFor({ name: given('Invented bag'), size: given('30 x 20') });
  expect(sized.text).toMatch(/(29|30)(\.\d)? cm wide/);
  const coloured = await drawnFor({ size: given('30 x 20'), first: given('navy 50 g') });
  expect(coloured.raw).toContain(`38;2;${navy}`);
  expect(coloured.text).toContain('navy');
});

it('is nothing where the answers make no bag', () => {
  const answers = { size: given('300 x 200'), bed: given('60 needles 9 mm') };
  expect(planIn(beginInterview(answers, englishWords)).ok).toBe(false);
});
