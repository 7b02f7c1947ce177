/** The size of the finished bag, beside the plan's. Sizes are invented; differences made by hand from the plan's own figures. */

import { beforeEach, describe, expect, it } from 'vitest';
import { answersTo, openMemoryBench } from '../../test/fixtures/bench-in-memory.ts';
import { smallBrief, writeLog } from '../../test/fixtures/sample-log.ts';
import { valueIn } from '../../test/tools/result.ts';
import { recordJson } from '../cli/record.ts';
import { readRecording } from '../journal/read-log.ts';
import { recordOf } from '../journal/record.ts';
import type { BenchStore } from '../screen/bench/bench-state.ts';
import { formatRecord } from '../wording/record.ts';
import { englishWords } from '../wording/words.ts';
import type { Command } from './command.ts';

let store: BenchStore;
let log: readonly Command[];

beforeEach(() => {
  const bench = openMemoryBench({ brief: smallBrief });
  store = bench.store;
  log = bench.commands;
});

const type = (line: string): readonly string[] => answersTo(store, line);
const planned = () => store.get().session.job.plan.size;

describe('measuring the bag', () => {
  it.each([
    ['measured 13.6 18', 13.6, 18],
    ['measured 13,6 cm x 18 cm', 13.6, 18],
    ['measured 136 x 180 mm', 13.6, 18],
    // The international inch is 25.4 mm exactly (1959 agreement).
    ['measured 5.5 by 7in', 13.97, 17.78],
  ])('%s is kept in centimetres', (line, widthCm, depthCm) => {
    type(line);
    const [kept] = log;
    if (kept?.do !== 'measured') throw new Error(`kept ${kept?.do}`);
    expect(kept.widthCm).toBeCloseTo(widthCm, 9);
    expect(kept.depthCm).toBeCloseTo(depthCm, 9);
  });

  it('is in inches where the maker uses them', () => {
    type('units in');
    type('measured 5.5 7');
    const [kept] = log;
    expect(kept).toMatchObject({ widthCm: expect.closeTo(13.97, 9), depthCm: expect.closeTo(17.78, 9) });
  });

  it('says how far that is from the plan, and whether the plan had room for it', () => {
    const { widthCm, depthCm, widthUncertaintyCm } = planned();
    expect(type(`measured ${widthCm} ${depthCm}`).slice(1)).toEqual([
      'Width as planned.',
      'Depth as planned.',
    ]);
    const far = type(`measured ${widthCm + widthUncertaintyCm + 1} ${depthCm - 0.1}`);
    expect(far[1]).toMatch(/^Width \S+ cm more than planned, beyond the ± \S+ cm of the plan\.$/);
    expect(far[2]).toMatch(/^Depth 0\.1 cm less than planned, within the ± \S+ cm of the plan\.$/);
  });

  it('stays when a step is taken back, moves no step, and may be said again', () => {
    type('next 3');
    type('measured 9 9');
    type('measured 10 11');
    type('back');
    const { done, measured } = store.get().session;
    expect([done, measured]).toEqual([0, { widthCm: 10, depthCm: 11, done: 3 }]);
  });

  it('refuses a size that no bag has, and keeps nothing', () => {
    expect(type('measured 0 18')).toEqual([
      'No bag is 0 cm by 18 cm: type its width and then its depth, as in measured 13.6 18.',
    ]);
    expect(type('measured 18 801')).toEqual([expect.stringMatching(/^No bag is 18 cm by 801 cm: /)]);
    expect(log).toEqual([]);
  });

  it('is in the record, on the page and as JSON', () => {
    const lines = [{ event: { do: 'measured', widthCm: 9.5, depthCm: 11 } as const }];
    const recording = valueIn(readRecording(writeLog(lines, smallBrief).bytes));
    const record = recordOf(recording);
    expect(formatRecord(recording, record, englishWords)).toMatch(
      /SIZE, MEASURED\n +Measured: 9\.5 cm wide, 11 cm deep\./,
    );
    expect(recordJson(recording, record, englishWords).measured).toEqual({
      widthCm: 9.5,
      depthCm: 11,
      stepsDone: 0,
    });
  });
});
