/** What is left of a yarn by the scales, and what the bag has taken. Bags and weights are invented, sums made by hand. */
import { beforeEach, describe, expect, it } from 'vitest';
import { answersTo, openMemoryBench } from '../../../test/fixtures/bench-in-memory.ts';
import { briefOf, jobOf, planOf } from '../../../test/fixtures/plan-of.ts';
import { smallBrief, writeLog } from '../../../test/fixtures/sample-log.ts';
import { valueIn } from '../../../test/tools/result.ts';
import { recordJson } from '../../cli/record.ts';
import { briefLike } from '../../journal/match.ts';
import { readRecording } from '../../journal/read-log.ts';
import { recordOf } from '../../journal/record.ts';
import type { BenchStore } from '../../screen/bench/bench-state.ts';
import type { Command } from '../../session/command.ts';
import { updateSession } from '../../session/update-session.ts';
import { notesLike } from '../../wording/logs.ts';
import { formatRecord } from '../../wording/record.ts';
import { englishWords } from '../../wording/words.ts';

/** 60 g of plum are there; mint was not weighed. */
const brief = {
  ...smallBrief,
  yarns: { plum: { ...smallBrief.yarns.plum, grams: 60 }, mint: smallBrief.yarns.mint },
};
const { stepCount } = jobOf(brief);

let store: BenchStore;
let log: readonly Command[];
const session = () => store.get().session;

beforeEach(() => {
  const bench = openMemoryBench({ brief: brief });
  store = bench.store;
  log = bench.commands;
});

const type = (line: string): readonly string[] => answersTo(store, line);

describe('weighing what is left', () => {
  it('is kept in the log, and says what was used where that is known', () => {
    expect(type('weigh Plum 22')).toEqual(['Weighed plum: 38 g used, 22 g of 60 g left.']);
    expect(type('weigh mint 15.5 g')).toEqual(['Weighed mint: 16 g left.']);
    expect(log).toEqual([
      { do: 'weigh', yarn: 'plum', grams: 22 },
      { do: 'weigh', yarn: 'mint', grams: 15.5 },
    ]);
  });

  it('is in ounces where the maker says so, or uses them', () => {
    type('weigh plum 1 oz');
    type('units in');
    expect(type('weigh plum 2')).toEqual(['Weighed plum: 0.1 oz used, 2 oz of 2.1 oz left.']);
    // The avoirdupois ounce is 28.349523125 g (international yard and pound agreement, 1959).
    expect(log).toEqual([
      { do: 'weigh', yarn: 'plum', grams: 28.349523125 },
      { do: 'weigh', yarn: 'plum', grams: 56.69904625 },
    ]);
  });

  it('may be set right by weighing once more, up or down', () => {
    type('weigh plum 2');
    expect(type('weigh plum 22')).toEqual(['Weighed plum: 38 g used, 22 g of 60 g left.']);
    expect([...session().weighed]).toEqual([['plum', { grams: 22, done: 0 }]]);
  });

  it('refuses a yarn that is not there and more than there was, and keeps neither', () => {
    expect(type('weigh gold 5')).toEqual(['gold is not a yarn of this bag: it has plum and mint.']);
    expect(type('weigh plum 61')).toEqual([
      'There were 60 g of plum before the work, so 61 g cannot be left: weigh it once more.',
    ]);
    type('units in');
    expect(type('weigh plum 2.2')).toEqual([
      'There were 2.12 oz of plum before the work, so 2.2 oz cannot be left: weigh it once more.',
    ]);
    expect(log).toEqual([]);
    expect(updateSession(session(), { do: 'weigh', yarn: 'plum', grams: -1 })).toMatchObject({
      fault: { code: 'weigh/not-a-weight' },
    });
  });

  it('may be all that there was', () => {
    type('weigh plum 60');
    expect(log).toEqual([{ do: 'weigh', yarn: 'plum', grams: 60 }]);
  });

  it('stays when a step is taken back, like a note', () => {
    type('next 3');
    type('weigh plum 22');
    type('back');
    expect([session().done, session().weighed.get('plum')]).toEqual([0, { grams: 22, done: 3 }]);
  });

  it('is kept too when it is said with replan, and what is offered can still be taken', () => {
    expect(type('replan weigh plum 40 longer')[0]).toBe('Weighed plum: 20 g used, 40 g of 60 g left.');
    expect(log).toEqual([{ do: 'weigh', yarn: 'plum', grams: 40 }]);
    expect(type('choose 1')[0]).toMatch(/^Replanned: 12 rows round/);
    // A ball was bought: that says nothing of what was used.
    type('replan weigh plum 90');
    expect(log.map(({ do: kind }) => kind)).toEqual(['weigh', 'replan']);
  });
});

describe('the record of a bag that was weighed', () => {
  const workedTo = (done: number) => {
    const lines = [
      { event: { do: 'confirm', count: done } as const },
      { event: { do: 'weigh', yarn: 'plum', grams: 22 } as const },
      { event: { do: 'weigh', yarn: 'mint', grams: 15 } as const },
    ];
    return valueIn(readRecording(writeLog(lines, brief).bytes));
  };

  it('has what was used beside what was planned', () => {
    const recording = workedTo(stepCount);
    const page = formatRecord(recording, recordOf(recording), englishWords);
    expect(page).toMatch(
      /YARN, WEIGHED\n {2}plum {6}38 g used, 22 g of 60 g left; planned \d+ g\n {2}mint {6}15 g left;/,
    );
    const { yarnUsed, plan } = recordJson(recording, recordOf(recording), englishWords) as {
      yarnUsed: readonly unknown[];
      plan: { yarn: readonly { grams: number }[] };
    };
    expect(yarnUsed).toEqual([
      {
        yarn: 'plum',
        plannedGrams: plan.yarn[0]?.grams,
        haveGrams: 60,
        leftGrams: 22,
        usedGrams: 38,
        stepsDone: stepCount,
      },
      {
        yarn: 'mint',
        plannedGrams: plan.yarn[1]?.grams,
        haveGrams: null,
        leftGrams: 15,
        usedGrams: null,
        stepsDone: stepCount,
      },
    ]);
  });

  it('says where it was weighed before the end', () => {
    const recording = workedTo(40);
    expect(formatRecord(recording, recordOf(recording), englishWords)).toMatch(
      /plum {6}38 g used.*weighed after\s+step 40/,
    );
  });

  it('says nothing of it where nothing was weighed', () => {
    const recording = valueIn(readRecording(writeLog([], brief).bytes));
    expect(formatRecord(recording, recordOf(recording), englishWords)).not.toContain('WEIGHED');
    expect(recordJson(recording, recordOf(recording), englishWords)).toMatchObject({
      yarnUsed: [],
    });
  });
});

describe('another bag like it', () => {
  const another = () => briefLike(briefOf(brief), session());
  const yarnsAfter = () => another().yarns;

  it('is planned with what is left, and notes what was used', () => {
    type(`next ${stepCount}`);
    type('weigh plum 22');
    type('weigh mint 0');
    expect(yarnsAfter()).toMatchObject({ plum: { grams: 22 }, mint: { grams: 0 } });
    expect(planOf(another()).stitches).toBe(smallBrief.bag.stitches);
    expect(notesLike(session(), englishWords)).toEqual([
      'Last time 38 g of plum were used and 22 g left: this bag is planned with what is left.',
      'Last time 0 g of mint were left: this bag is planned with that.',
    ]);
  });

  it('has the weights of the brief where the bag took more after it was weighed', () => {
    type('next 3');
    type('weigh plum 50');
    type(`next ${stepCount - 3}`);
    expect(yarnsAfter()).toMatchObject({ plum: { grams: 60 } });
    expect(notesLike(session(), englishWords)).toEqual([]);
  });
});
