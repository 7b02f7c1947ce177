/** Planning on from the middle of the work, as it is typed. The bag is invented; sums that are not the program's are by hand. */
import { beforeEach, describe, expect, it } from 'vitest';
import { answersTo, openMemoryBench } from '../../test/fixtures/bench-in-memory.ts';
import { stripedBrief } from '../../test/fixtures/plan-of.ts';
import { workJson } from '../cli/work-json.ts';
import type { BenchStore } from '../screen/bench/bench-state.ts';
import type { Command } from '../session/command.ts';
import { marksOf } from '../session/marks.ts';
import { allSteps, type Job, stepAt } from '../steps/job.ts';

let store: BenchStore;
let log: readonly Command[];

beforeEach(() => {
  const brief = { ...stripedBrief(46, 64), name: 'Dice bag', cord: { stitches: 3, yarn: 'mint', tieCm: 25 } };
  const bench = openMemoryBench({ brief });
  store = bench.store;
  log = bench.commands;
});

const type = (line: string): readonly string[] => answersTo(store, line);
const job = (): Job => store.get().session.job;
const offered = () =>
  workJson(null, store.get(), []).offers as readonly { readonly n: number; readonly say: string }[];
const rowsOffered = (): readonly number[] => offered().map(({ say }) => Number.parseInt(say, 10));
const goToRow = (row: number): readonly string[] => type(`go row ${row}`);

describe('lengths to choose from', () => {
  it.each([
    ['replan shorter', [60, 56, 52, 48, 16]],
    ['replan longer', [68, 72, 76, 80]],
    ['replan', [60, 68, 56, 72, 52]],
  ])('%s begins with the nearest, and never with a toy of the bag', (line, rows) => {
    goToRow(14);
    type(line);
    expect(rowsOffered()).toEqual(rows);
  });

  it('are none that the yarn does not last for while there is one for which it does', () => {
    goToRow(14);
    type('replan weigh plum 10.5');
    const said = offered().map(({ say }) => say);
    expect(said.length).toBeGreaterThan(0);
    expect(said.filter((say) => say.includes('short'))).toEqual([]);
  });

  it('say how often more or less the work is hung again', () => {
    // 52 needles of use for 36 stitches: 16 moves hang once, and 60 rows take 29.
    const brief = stripedBrief(36, 60);
    store = openMemoryBench({ brief: { ...brief, bed: { ...brief.bed, needles: 56 } } }).store;
    const before = job().plan.hangings.length;
    goToRow(6);
    type('replan longer');
    const told = offered().map(({ say }) => /hung again (\d) times? more/.exec(say)?.[1] ?? '0');
    for (const [i, times] of told.entries()) {
      type('replan longer');
      type(`choose ${i + 1}`);
      expect(String(job().plan.hangings.length - before)).toBe(times);
      type('back');
    }
    expect(new Set(told).size).toBeGreaterThan(1);
  });
});

describe('the cord in another yarn', () => {
  it('is offered first where it saves the bag, and what is short is told by what it is for', () => {
    goToRow(14);
    const [, planned = ''] = type('replan weigh mint 20');
    expect(planned).toMatch(
      /^As planned, 64 rows: .* mint is \d+ g short of \d+ g for stripes, \d+ g for graft and seam and \d+ g for the cord\.$/,
    );
    expect(offered()[0]?.say).toMatch(/^64 rows: .* with the cord in plum/);
    type('choose 1');
    const casts = [...allSteps(job())].find(({ act }) => act.kind === 'cast-on-cord');
    expect(casts?.act).toMatchObject({ yarn: 'plum' });
    const need = (yarn: string) => job().plan.yarn.find((one) => one.yarn === yarn)?.metres ?? 0;
    const all = need('plum') + need('mint');
    type('back');
    expect(need('plum') + need('mint')).toBeCloseTo(all, 9);
  });

  it('is chosen by its name until it is begun, new yarn with its colour and thickness', () => {
    type('go seam');
    type('replan cord sand #d8c49a 200 m');
    type('choose');
    expect(log.at(-1)).toMatchObject({ do: 'replan', cord: 'sand', colour: '#d8c49a', metresPer100g: 200 });
    expect(job().plan.brief.yarns.get('sand')?.metresPer100g).toBe(200);
    type('go cord');
    type('next 2');
    expect(type('replan cord plum')).toEqual([
      'The cord is begun, so its yarn is settled: rip back to before its cast-on to change it.',
    ]);
  });
});

describe('what was measured', () => {
  it.each(['0 stitches 9.8 cm', '0 stitches 0 cm', '20 stitches 0', '0 rows 10'])('is not %s', (size) => {
    goToRow(14);
    expect(type(`replan ${size}`).join()).toMatch(/is not understood here/);
  });

  it('is asked about where its unit was not said and seems another', () => {
    goToRow(14);
    // 98 mm over 20 stitches are 4.9 mm each, 98 cm ten times that; the plan has 4.8 mm.
    expect(type('replan 20 stitches 98')).toEqual([
      '20 stitches 98 cm would make one 49 mm, and the plan has 4.8 mm. Say the unit too: replan 20 stitches 98 mm or replan 20 stitches 98 cm.',
    ]);
    type('replan 20 stitches 98 mm');
    type('choose 1');
    expect(log.at(-1)).toMatchObject({ stitchMm: 4.9 });
  });
});

describe('what was offered', () => {
  it.each(['find', 'replan 3 sheep', 'replan colour mint to plum', 'rip row 63'])(
    'is off the table once %j could not be answered',
    (line) => {
      goToRow(14);
      type('replan longer');
      expect(offered().length).toBeGreaterThan(1);
      type(line);
      expect(offered()).toEqual([]);
    },
  );
});

describe('a mark', () => {
  it('keeps its meaning when the plan changes, and when that is taken back', () => {
    const here = () => marksOf(store.get().session).get('here') ?? -1;
    const next = () => {
      const { act, phase, row } = stepAt(job(), here() + 1);
      return { phase, act, row };
    };
    for (const place of ['row 8', 'row 20', 'row 63', 'closing-row', 'graft', 'bar 7', 'cord']) {
      type(`go ${place}`);
      type('mark here');
      const before = { done: here(), next: next() };
      goToRow(14);
      type('replan rows 48');
      type('choose 1');
      const now = next();
      expect([place, now.phase, now.act.kind]).toEqual([
        place,
        before.next.row === 63 && before.next.phase === 'stripes' ? 'closing-row' : before.next.phase,
        before.next.act.kind,
      ]);
      if (before.next.row < 48) expect(now.row).toBe(before.next.row);
      type('back');
      expect(here()).toBe(before.done);
    }
  });
});
