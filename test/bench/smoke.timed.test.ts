/** A few runs of each benchmark, so that all of them go on running; no figure is judged here. Counting instructions takes too long for that. */
import { readFileSync } from 'node:fs';
import { describe, expect, it, vi } from 'vitest';
import { measureCore } from './core.ts';
import { type Figure, formatTable, median, meets, percentile, sayWorse, withFigures } from './figure.ts';
import { measureInstall } from './install.ts';
import { measureMemory } from './memory.ts';
import { measurePress } from './press.ts';
import { measureStart } from './start.ts';

vi.setConfig({ testTimeout: 60_000 });

const expectMeasured = (figures: readonly Figure[]): void => {
  expect(figures.length).toBeGreaterThan(0);
  for (const { what, ours, bare } of figures) {
    expect({ what, is: ours > 0 && (bare === null || bare > 0) }).toEqual({ what, is: true });
  }
};

describe('each benchmark runs', () => {
  it('start', async () => expectMeasured(await measureStart(1, 20)));
  it('press to paint', async () => expectMeasured(await measurePress(8, 20)));
  it.runIf(process.platform === 'linux')('memory', async () => expectMeasured(await measureMemory(2, 4)));
  it('the pure core', async () => expectMeasured(await measureCore(0.05)));
  it('installation', () => {
    const figures = measureInstall();
    const [shipped, ...brought] = figures;
    expectMeasured(shipped ? [shipped] : []);
    expect(brought.map(({ ours }) => ours)).toEqual([0, 0]);
  });
});

describe('figures', () => {
  const press: Figure = {
    what: 'press',
    unit: 'ms',
    ours: 6,
    bare: 5,
    target: { of: 'ratio', is: 'at most', value: 1.25 },
  };
  const plans: Figure = {
    what: 'plans',
    unit: 'a second',
    ours: 20_000,
    bare: null,
    target: { of: 'ours', is: 'at least', value: 20_000 },
  };

  it('are set against the bare program and their target', () => {
    expect(formatTable([press, plans]).split('\n')).toEqual([
      '| what            | ours   | bare | ratio | target             |     |',
      '| --------------- | ------ | ---- | ----- | ------------------ | --- |',
      '| press, ms       | 6      | 5    | 1.20  | ratio at most 1.25 | met |',
      '| plans, a second | 20,000 |      |       | at least 20,000    | met |',
    ]);
    expect(meets({ ...press, ours: 7 })).toBe(false);
  });

  it('are told when they got worse by more than noise, the ratio where there is one', () => {
    const slowMachine = { ...press, ours: 12, bare: 10 };
    expect(sayWorse([press, plans], [slowMachine, { ...plans, ours: 19_000 }])).toEqual([]);
    expect(
      sayWorse(
        [press, plans],
        [
          { ...press, ours: 9 },
          { ...plans, ours: 10_000 },
        ],
      ),
    ).toEqual(['press: 1.2, now 1.8 of the bare program', 'plans: 20,000, now 10,000 a second']);
  });

  it('take the place of those on the page of results, and nothing else of it', () => {
    const page = '# Results\n\n<!-- figures -->\n\nold\n\n<!-- end of figures -->\n\nby hand\n';
    expect(withFigures(page, 'new')).toBe(page.replace('old', 'new'));
    expect(() => withFigures('# Results\n', 'new')).toThrow('marks');
    expect(withFigures(readFileSync('test/bench/RESULTS.md', 'utf8'), 'new')).toContain('\n\nnew\n\n');
  });

  it('are medians and percentiles by nearest rank, counted by hand', () => {
    expect(median([5, 1, 4])).toBe(4);
    expect(percentile([1, 2, 3, 4], 0.5)).toBe(2);
    expect(percentile([1, 2, 3, 4], 0.99)).toBe(4);
  });
});
