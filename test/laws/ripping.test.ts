/**
 * Ripping back from anywhere to anywhere, slips that were kept and made up for in between, changes of plan too: carried out on
 * the loop bed, the work is what it was, loop for loop, and the rest of the job can be done to its end.
 * `SLANTWISE_RIPS=2000` takes two thousand places.
 */
import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { rowMultipleOf } from '../../source/planning/choose-size.ts';
import { storyOf } from '../../source/session/diagnose/story.ts';
import { waysOut } from '../../source/session/diagnose/ways-out.ts';
import type { HandStep } from '../../source/session/mend/mend.ts';
import { type Session, startSession } from '../../source/session/session.ts';
import { updateSession } from '../../source/session/update-session.ts';
import { type Job, stepAt } from '../../source/steps/job.ts';
import { jobOf, noChange } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import { valueIn } from '../tools/result.ts';
import { LoopBed, type Move } from './loop-bed.ts';
import { Maker, type Shaping, type Slip, shapings } from './maker.ts';
import { handMoves, slipTold } from './slips-told.ts';

vi.setConfig({ testTimeout: 3_600_000 });

const runs = Number(process.env.SLANTWISE_RIPS ?? 20);

/** The session and the loop bed side by side; `beds` holds the work at each place on the way here. */
interface Bench {
  session: Session;
  bed: LoopBed;
  readonly beds: Map<number, LoopBed>;
}

function command(session: Session, one: Parameters<typeof updateSession>[1]): Session {
  const after = updateSession(session, one);
  if (!after.ok) throw new Error(JSON.stringify([one, after.fault]));
  return after.value;
}

function goOn(bench: Bench, through: number): void {
  const { job } = bench.session;
  for (let number = bench.session.done + 1; number <= through; number++) {
    bench.bed.do(stepAt(job, number).moves as readonly Move[]);
    bench.session = command(bench.session, { do: 'confirm', count: 1 });
    bench.beds.set(number, bench.bed.copy());
  }
}

/** The slip at a move, and the two rows before it left out beside it where that is wanted. */
function slipsAt({ plan }: Job, { kind, alone }: SlipPicked, move: number): readonly Slip[] {
  const row = move * plan.brief.shapeEveryRows;
  return [{ kind, move }, ...(alone ? [] : [{ kind: 'rows fewer', row, rows: 2 } as const])];
}

interface SlipPicked {
  readonly kind: Shaping;
  readonly later: number;
  readonly alone: boolean;
}

/** Slips of the maker's at a move, and a mend of them that is kept, if the bag has room for one; false where it has not. */
function slipAndKeep(bench: Bench, picked: SlipPicked, move: number): boolean {
  const { job } = bench.session;
  const made = slipsAt(job, picked, move);
  const slips = made.map((slip) => slipTold(job, slip));
  let place = 0;
  for (let number = 1; number <= job.stepCount && place === 0; number++) {
    const { act } = stepAt(job, number);
    if (act.kind === 'decrease' && act.number === move) place = number + picked.later;
  }
  const story = place > 0 && place < (job.phaseStarts[2] ?? 0) ? storyOf(job, slips, place) : null;
  const mend = story && waysOut(job, story).find(({ how }) => how === 'make-up');
  if (!story || !mend || story.baseDone < bench.session.done) return false;
  goOn(bench, story.baseDone);
  const maker = new Maker(job, made);
  Object.assign(maker, { bed: bench.bed });
  for (let number = story.baseDone + 1; number <= place; number++) maker.follow(stepAt(job, number));
  bench.session = command(bench.session, { do: 'go', done: place });
  bench.session = command(bench.session, {
    do: 'mend',
    mistakes: slips,
    place,
    how: 'make-up',
    thenDone: mend.thenDone,
  });
  for (let way = bench.session.way; way; way = bench.session.way) {
    bench.bed.do(handMoves(way.steps[way.at] as HandStep));
    bench.session = command(bench.session, { do: 'on-the-way' });
  }
  for (let number = story.baseDone + 1; number < bench.session.done; number++) bench.beds.delete(number);
  bench.beds.set(bench.session.done, bench.bed.copy());
  return true;
}

function replanLonger(bench: Bench): void {
  const { job } = bench.session;
  const rows = job.plan.rows + rowMultipleOf(job.plan.brief);
  const after = updateSession(bench.session, { do: 'replan', rows, ...noChange });
  if (after.ok) bench.session = after.value;
}

function ripTo(bench: Bench, asked: number): void {
  const began = valueIn(updateSession(bench.session, { do: 'rip', done: asked }));
  bench.session = began;
  for (let way = bench.session.way; way; way = bench.session.way) {
    const step = way.steps[way.at] as HandStep;
    bench.bed.do(handMoves(step));
    if (step.care?.is === 'cord-aside') bench.bed.layAside();
    bench.session = command(bench.session, { do: 'on-the-way' });
  }
}

const startOf = (job: Job): Bench => {
  const { bed, waste } = job.plan.brief;
  const loops = new LoopBed(bed.needles, new Set([waste.yarn, 'ravel cord']));
  return { session: startSession(job), bed: loops, beds: new Map([[0, loops.copy()]]) };
};

describe('ripping back on a bed of loops', () => {
  it('leads to the work as it was, and on to the end of the job', () => {
    const seen = { kept: 0, replanned: 0, rehung: 0, byHand: 0 };
    fc.assert(
      fc.property(
        briefFile(),
        fc.record({
          kind: fc.constantFrom(...shapings),
          move: fc.nat(),
          later: fc.nat({ max: 12 }),
          alone: fc.boolean(),
        }),
        fc.record({ slips: fc.boolean(), replans: fc.boolean(), from: fc.nat(), to: fc.nat() }),
        (file, slip, pick) => {
          const job = jobOf(file);
          const bench = startOf(job);
          if (pick.replans) {
            goOn(bench, pick.from % ((job.phaseStarts[2] ?? 1) - 1));
            replanLonger(bench);
            seen.replanned++;
          }
          const move = 1 + (slip.move % bench.session.job.plan.shapings);
          if (pick.slips && slipAndKeep(bench, slip, move)) seen.kept++;
          const { stepCount } = bench.session.job;
          goOn(bench, Math.max(bench.session.done, 1 + (pick.from % stepCount)));
          const from = bench.session.done;
          if (from > (bench.session.job.phaseStarts[3] ?? 0)) seen.byHand++;
          if (from === 0) return;
          ripTo(bench, pick.to % from);
          const { done } = bench.session;
          if (bench.session.job.plan.hangings.length > 1) seen.rehung++;
          expect({ from, done, work: bench.bed.held() }).toEqual({
            from,
            done,
            work: bench.beds.get(done)?.held(),
          });
          goOn(bench, stepCount);
        },
      ),
      { numRuns: runs, endOnFailure: true, seed: Number(process.env.SLANTWISE_SEED ?? 1) },
    );
    for (const count of Object.values(seen)) expect(count).toBeGreaterThan(runs / 20);
  });
});
