import { XMLValidator } from 'fast-xml-parser';
import { expect, it } from 'vitest';
import { benchRows } from '../../source/screen/bench/rows/bench-rows.ts';
import { brushFor } from '../../source/screen/bench/rows/row.ts';
import { englishWords } from '../../source/wording/words.ts';
import { allViews, demoJob } from '../fixtures/steps-of-all-kinds.ts';
import { linesAsSvg } from '../tools/lines-as-svg.ts';

/** The README's picture of the bench: a row, and the increase that follows it. `npx vitest run -u` on this file draws it again. */
it('is the bench as the program draws it', async () => {
  const columns = 80;
  const views = allViews(demoJob('dice-bag'));
  const at = views.findIndex(({ step, rows }) => step?.act.kind === 'pass' && rows.at === 25);
  const lines = [views[at], views[at + 1]].flatMap((view, i) => {
    if (!view) throw new Error('no view');
    const window = { columns, room: 18, large: false };
    const { above, below } = benchRows(view, window, brushFor(view.plan, 'true', false), englishWords);
    return i === 0 ? [...above, ...below] : [[], ...above, ...below];
  });
  const svg = linesAsSvg(lines, columns, 'The bench at a row and at a shaping move');
  expect(XMLValidator.validate(svg)).toBe(true);
  await expect(svg).toMatchFileSnapshot('../../demo/bench.svg');
});
