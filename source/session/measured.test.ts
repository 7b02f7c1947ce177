/** The first rounds of the cord measured, and what follows from it. Lengths are invented, the sums done by hand. */
import { beforeEach, describe, expect, it } from 'vitest';
import { answersTo, openMemoryBench } from '../../test/fixtures/bench-in-memory.ts';
import { stripedBrief } from '../../test/fixtures/plan-of.ts';
import { seenOn, simulate } from '../../test/laws/simulate.ts';
import type { BenchStore } from '../screen/bench/bench-state.ts';
import { allSteps, type Job } from '../steps/job.ts';
import type { Step } from '../steps/step.ts';
import type { Command } from './command.ts';

let store: BenchStore;
let log: readonly Command[];

beforeEach(() => {
  const bench = openMemoryBench({ brief: { ...stripedBrief(46, 64), name: 'Dice bag' } });
  store = bench.store;
  log = bench.commands;
});

const type = (line: string): readonly string[] => answersTo(store, line);
const job = (): Job => store.get().session.job;
const steps = (): readonly Step[] => [...allSteps(job())];
const numberOf = (kind: string): number => steps().find(({ act }) => act.kind === kind)?.step ?? 0;
const roundsKnitted = (): number =>
  steps().reduce((sum, { act }) => (act.kind === 'rounds' ? sum + act.through - act.from + 1 : sum), 0);

describe('twenty rounds of cord', () => {
  it('measured say how many it takes in all, and the steps after them follow', () => {
    const before = steps();
    const asks = numberOf('measure-rounds');
    const { lengthCm, metres } = job().plan.cord;
    type(`go step ${asks}`);
    const said = type('cord 8 cm');
    // A round is 0.4 cm.
    const rounds = Math.ceil(lengthCm / 0.4);
    expect(said).toEqual([
      `${rounds} rounds in all make ${Math.ceil(lengthCm)} cm: ${rounds - 20} more to knit.`,
    ]);
    expect(job().plan.cord).toMatchObject({ rounds, passes: 2 * rounds, lengthCm });
    expect(roundsKnitted()).toBe(rounds);
    expect(job().plan.cord.metres).toBeLessThan(metres);
    const sofar = (all: readonly Step[]) =>
      all.slice(0, asks - 1).map(({ moves, after }) => ({ moves, after }));
    expect(sofar(steps())).toEqual(sofar(before));
    expect(store.get().session.done).toBe(asks - 1);
    expect(log.at(-1)).toEqual({ do: 'cord', lengthCm: 8 });
    for (const { step, bed } of simulate(job())) {
      const { shapings: _, ...after } = step.after;
      expect(seenOn(bed), `step ${step.step}`).toMatchObject(after);
    }
  });

  it('that are as long as a cord already leave nothing to knit', () => {
    type(`go step ${numberOf('measure-rounds')}`);
    expect(type('cord 150 cm')).toEqual([
      `That is long enough for ${Math.ceil(job().plan.cord.lengthCm)} cm of cord.`,
    ]);
    expect(roundsKnitted()).toBe(20);
    expect(steps()[store.get().session.done]?.act.kind).toBe('measure-cord');
  });

  it('can be taken back, and measured again', () => {
    const { rounds } = job().plan.cord;
    type(`go step ${numberOf('measure-rounds')}`);
    type('cord 2.9 in');
    expect(log.at(-1)).toMatchObject({ lengthCm: expect.closeTo(7.366, 9) });
    expect(job().plan.cord.rounds).not.toBe(rounds);
    type('back');
    expect(job().plan.cord.rounds).toBe(rounds);
  });

  it('are not asked for elsewhere', () => {
    expect(type('cord 8')).toEqual([
      'The cord is measured at the step that asks for it, when 20 rounds of it are knitted.',
    ]);
    type(`go step ${numberOf('measure-rounds')}`);
    expect(type('cord long')).toEqual(['long is not a length. For example: cord 7.4.']);
    expect(type('cord 0')).toEqual(['Rounds of cord are not 0 cm long: type their length, as in cord 7.4.']);
    expect(type('cord 201')).toEqual([expect.stringMatching(/^Rounds of cord are not 201 cm long: /)]);
    expect(log.map(({ do: kind }) => kind)).toEqual(['go']);
    type(`next ${steps().length - store.get().session.done}`);
    expect(type('cord 8')).toEqual([
      expect.stringMatching(/^The cord is measured at the step that asks for it/),
    ]);
  });
});
