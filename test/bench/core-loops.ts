/** One loop of the pure core, by name: so many turns, or as many as go into so many seconds. Run by `core.ts`. */
import { readFileSync } from 'node:fs';
import { readLog } from '../../source/journal/read-log.ts';
import { readBrief } from '../../source/planning/parse-brief.ts';
import { planBag } from '../../source/planning/plan-bag.ts';
import { locate } from '../../source/session/locate/locate.ts';
import { looksAt } from '../../source/session/locate/looks-of.ts';
import { placeIndex } from '../../source/session/locate/place-index.ts';
import type { Result } from '../../source/shared/result.ts';
import { type Job, layOutJob, stepAt } from '../../source/steps/job.ts';
import { countedEvents, longLog } from './long-log.ts';

/** `seconds` or `turns`: where instructions are counted one by one, everything is a hundred times slower and is kept small. */
const [name = '', mode, amount = '1'] = process.argv.slice(2);
const isCounted = mode === 'turns';

/** What the last turn gave, so that the compiler cannot leave it out. */
let kept: unknown = null;

const must = <T>(result: Result<T, unknown>): T => {
  if (!result.ok) throw new Error(JSON.stringify(result.fault));
  return result.value;
};
const diceBrief: object = JSON.parse(readFileSync('demo/dice-bag.json', 'utf8'));
const jobOf = (brief: unknown): Job => layOutJob(must(planBag(must(readBrief(brief)))));

/** The most rows and needles that a brief may have, rehung again and again. */
const largest = (): Job =>
  isCounted
    ? jobOf(diceBrief)
    : jobOf({ ...diceBrief, bed: { needles: 400, pitchMm: 6.5 }, bag: { stitches: 60, rows: 20_000 } });

/** An order that jumps about and repeats itself: a linear congruential generator (constants of Numerical Recipes, 1992). */
function* jumping(below: number): Generator<number> {
  for (let state = 7; ; ) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    yield Math.floor((state / 2 ** 32) * below);
  }
}

const take = (count: number, below: number): readonly number[] => {
  const numbers = jumping(below);
  return Array.from({ length: count }, () => numbers.next().value ?? 0);
};

/** A loop's preparation gives what one turn does, and how many things are done in it. */
type Prepare = () => { readonly turn: (i: number) => unknown; readonly each: number };

/** Steps picked by chance from a stretch: of all the bag, or of its stripes alone. */
const steps = (stretch: (job: Job) => readonly [from: number, count: number]): ReturnType<Prepare> => {
  const job = largest();
  const [from, count] = stretch(job);
  const numbers = take(4096, count).map((offset) => from + offset);
  return {
    turn: (i) => stepAt(job, numbers[i % numbers.length] ?? 1),
    each: 1,
  };
};

const logEvents = isCounted ? countedEvents : 5000;

const loops: Readonly<Record<string, Prepare>> = {
  plan: () => {
    const brief = must(readBrief(diceBrief));
    return { turn: () => planBag(brief), each: 1 };
  },
  'brief-to-job': () => ({ turn: () => jobOf(diceBrief), each: 1 }),
  'step-anywhere': () => steps(({ stepCount }) => [1, stepCount]),
  'step-early': () => steps(({ phaseStarts: [, stripes = 0] }) => [stripes + 1, 1000]),
  'step-late': () => steps(({ phaseStarts: [, , closingRow = 0] }) => [closingRow - 1000, 1000]),
  fold: () => {
    const bytes = new TextEncoder().encode(longLog(logEvents));
    return { turn: () => readLog(bytes), each: logEvents };
  },
  locate: () => {
    const job = largest();
    placeIndex(job);
    const seen = take(512, job.stepCount).map((done) => {
      const { left, right, lastColour, carriage } = looksAt(job, done);
      return { left, right, lastColour, carriage };
    });
    return { turn: (i) => locate(job, seen[i % seen.length] ?? {}), each: 1 };
  },
};

/** Seconds of processor that this process has had: others on the machine do not count, its own collector does. */
function processorSeconds(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}

/** Things done in a second of processor: the median of rounds, the first of which warms up. */
function perSecond({ turn, each }: ReturnType<Prepare>, seconds: number): number {
  const rounds = 5;
  const rates: number[] = [];
  let i = 0;
  for (let round = 0; round <= rounds; round++) {
    const [from, first] = [processorSeconds(), i];
    const until = from + seconds / (rounds + 1);
    do for (let n = 0; n < 64; n += each) kept = turn(i++);
    while (processorSeconds() < until);
    if (round > 0) rates.push(((i - first) * each) / (processorSeconds() - from));
  }
  return rates.toSorted((a, b) => a - b)[Math.floor(rounds / 2)] ?? 0;
}

const prepare = loops[name];
if (!prepare) throw new Error(`no loop ${name}: ${Object.keys(loops).join(', ')}`);
const loop = prepare();
if (isCounted) for (let i = 0; i < Number(amount); i++) kept = loop.turn(i);
else process.stdout.write(String(perSecond(loop, Number(amount))));
if (kept === null) throw new Error('nothing was done');
