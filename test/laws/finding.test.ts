/**
 * Slips at a bench that shares nothing with the program: a maker slips, says what she sees and answers what she is asked; what is
 * then named and offered is held against her bed, loop for loop. `SLANTWISE_BAGS=1000` takes a thousand bags.
 */
import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { workJson } from '../../source/cli/work-json.ts';
import { type Job, stepAt } from '../../source/steps/job.ts';
import { openMemoryBench } from '../fixtures/bench-in-memory.ts';
import { jobOf } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import { CannotBeDone, type LoopBed, type Move } from './loop-bed.ts';
import { Maker, plannedBeds, rehangs, type Slip, shapings } from './maker.ts';

vi.setConfig({ testTimeout: 3_600_000 });

const bags = Number(process.env.SLANTWISE_BAGS ?? 3);

interface Case {
  readonly slips: readonly Slip[];
  /** Steps confirmed when she looks. */
  readonly done: number;
}

/** How each is named in English. */
const nameOf: Readonly<Record<string, RegExp>> = {
  'increase omitted': /The increase of .* missing/,
  'decrease omitted': /The decrease of .* missing/,
  'increase doubled': /The increase of .* twice/,
  'decrease doubled': /The decrease of .* twice/,
  'move omitted': /The whole of .* missing/,
  'move doubled': /The whole of .* twice/,
  'move mirrored': /went the other way/,
  'needle left in work': /stayed in work/,
  'needle left out of work': /is out of work/,
  'rows more': /too many (is|are) in/,
  'rows fewer': /(of this stripe|of stripe .*) (is|are) missing/,
  dropped: /the work has dropped/,
  'stripe yarn': /Stripe \d+ is in/,
  'yarns swapped': /have changed places/,
  'rehang forgotten': /was not rehung/,
  'rehang aside': /the work was hung/,
};

/** Two yarns that changed places show in one stripe alone until the next of them is knitted. */
const names = (slip: Slip, line: string): boolean =>
  nameOf[slip.kind]?.test(line) === true ||
  (slip.kind === 'yarns swapped' && new RegExp(`Stripe ${slip.stripe} is in ${slip.used}`).test(line));

/** Pairs of slips tried in each bag, both up to ten moves old. */
const pairsTried = 1;

/** What else went wrong in the twenty rows before: with the rows, with a yarn, or at another move. */
function otherSlip({ plan, ...job }: Job, done: number, move: number, random: Random): Slip | null {
  const now = done > 0 ? stepAt({ plan, ...job }, done).row : 0;
  const row = now - random(20);
  const stripe = plan.stripes.findIndex(
    (one) => one.firstRow <= row && one.lastRow <= now && row <= one.lastRow,
  );
  const at = plan.stripes[stripe];
  const rows = 1 + random(2);
  const others = [...plan.brief.yarns.keys()].filter((yarn) => yarn !== at?.yarn);
  const used = others[random(others.length)];
  const kind = random(5);
  if (kind === 4) {
    const earlier = move - 1 - random(8);
    return earlier < 1 ? null : { kind: shapings[random(shapings.length)] ?? 'move doubled', move: earlier };
  }
  if (!at || row < 2) return null;
  if (kind === 0) return { kind: 'rows more', row: at.lastRow, rows };
  if (kind === 1) return rows <= at.rows ? { kind: 'rows fewer', row: at.lastRow, rows } : null;
  if (used === undefined) return null;
  return { kind: kind === 2 ? 'stripe yarn' : 'yarns swapped', stripe: stripe + 1, used };
}

/** Every single slip that could be as old as these. */
function singlesBefore({ plan, ...job }: Job, done: number): readonly Slip[] {
  const now = stepAt({ plan, ...job }, done).row;
  const moves = Array.from({ length: plan.shapings }, (_, i) => i + 1).filter(
    (move) => Math.abs(now / plan.brief.shapeEveryRows - move) <= 12,
  );
  const stripes = plan.stripes.flatMap((one, i) =>
    one.firstRow <= now && one.lastRow > now - 30 ? [{ ...one, stripe: i + 1 }] : [],
  );
  return [
    ...moves.flatMap((move) => shapings.map((kind) => ({ kind, move }))),
    ...stripes.flatMap(({ lastRow, stripe, yarn }) => [
      ...[1, 2, 3].flatMap((rows) => [
        { kind: 'rows more', row: lastRow, rows } as const,
        { kind: 'rows fewer', row: lastRow, rows } as const,
      ]),
      ...[...plan.brief.yarns.keys()]
        .filter((used) => used !== yarn)
        .flatMap((used) => [
          { kind: 'stripe yarn', stripe, used } as const,
          { kind: 'yarns swapped', stripe, used } as const,
        ]),
    ]),
  ];
}

/** Whether a place of the plan, or one slip alone, leaves the same to see: then the facts do not fix two. */
function isOneToSee(job: Job, done: number, seen: Maker, facts: readonly string[]): boolean {
  const told = (maker: Maker): string => facts.map((fact) => maker.see(fact)).join();
  const wanted = told(seen);
  const sound = new Maker(job);
  const last = Math.min(job.stepCount, done + 60);
  for (let number = 1; number <= last; number++) {
    sound.follow(stepAt(job, number));
    if (sound.see('left') === seen.see('left') && told(sound) === wanted) return true;
  }
  return singlesBefore(job, done).some((slip) => {
    const maker = new Maker(job, [slip]);
    try {
      for (let number = 1; number <= done; number++) if (!maker.follow(stepAt(job, number))) return false;
    } catch {
      return false;
    }
    return told(maker) === wanted;
  });
}

type Random = (below: number) => number;

/** One slip of each kind that this bag has room for, at a random moment, and how far she has gone on. */
function casesIn(job: Job, random: Random): readonly Case[] {
  const { plan } = job;
  const stripesStart = job.phaseStarts[1] ?? 0;
  const closing = (job.phaseStarts[2] ?? 0) - 1;
  const stepOf = (fits: (number: number) => boolean): number => {
    for (let number = stripesStart + 1; number <= closing; number++) if (fits(number)) return number;
    return -1;
  };
  const passOf = (row: number): number =>
    stepOf((number) => stepAt(job, number).act.kind === 'pass' && stepAt(job, number).row === row);
  const later = (step: number, most: number): number => Math.min(closing, step + random(most));
  /** Up to ten moves on, or one. */
  const movesOn = (step: number, move: number): number => {
    const on = random(2) ? 0 : 10;
    let most = step;
    for (let number = step; number <= closing; number++) {
      const { act } = stepAt(job, number);
      if (
        (act.kind === 'increase' || act.kind === 'rehang') &&
        (act.kind === 'rehang' || act.number > move + on)
      )
        break;
      most = number;
    }
    return step + random(most - step + 1);
  };
  const cases: Case[] = [];
  const add = (slips: readonly Slip[], done: number): void => {
    const isWaste = done > 0 && rehangs.has(stepAt(job, done).act.kind);
    if (done > stripesStart && done <= closing && !isWaste) cases.push({ slips, done });
  };
  for (const kind of shapings) {
    const move = 1 + random(plan.shapings);
    const step = stepOf((number) => {
      const { act } = stepAt(job, number);
      return act.kind === 'decrease' && act.number === move;
    });
    if (step > 0) add([{ kind, move }], movesOn(step, move));
  }
  for (const rows of [1, 2, 3]) {
    const row = 2 + random(Math.max(1, plan.knittedRows - 3));
    const stripe = plan.stripes.find((one) => one.firstRow <= row && row <= one.lastRow);
    const end = stripe?.lastRow ?? row;
    if (passOf(end) > 0)
      add([{ kind: 'rows more', row: end, rows }], random(2) ? passOf(end) : later(passOf(end), 30));
    if (stripe && rows <= stripe.rows && passOf(end) > 0)
      add([{ kind: 'rows fewer', row: end, rows }], random(2) ? passOf(end) : later(passOf(end), 30));
  }
  const fallen = 1 + random(plan.knittedRows - 1);
  if (passOf(fallen) > 0) add([{ kind: 'dropped', row: fallen }], passOf(fallen) - 1);
  const stripe = 1 + random(Math.max(1, plan.stripes.length - 1));
  const due = plan.stripes[stripe - 1];
  const others = [...plan.brief.yarns.keys()].filter((yarn) => yarn !== due?.yarn);
  const used = others[random(others.length)];
  if (due && used !== undefined && passOf(due.lastRow) > 0) {
    add(
      [{ kind: 'stripe yarn', stripe, used }],
      random(2) ? passOf(due.lastRow) : later(passOf(due.lastRow), 12),
    );
    add([{ kind: 'yarns swapped', stripe, used }], later(passOf(due.lastRow), 20));
  }
  const rehang = stepOf((number) => stepAt(job, number).act.kind === 'rehang');
  if (rehang > 0) {
    const { row } = stepAt(job, rehang);
    add([{ kind: 'rehang forgotten', row }], later(rehang + 1, 12));
    add([{ kind: 'rehang aside', row, by: [-2, -1, 1, 2][random(4)] ?? 1 }], later(rehang, 12));
  }
  for (let pair = 0; pair < pairsTried; pair++) {
    const move = 1 + random(plan.shapings);
    const step = stepOf((number) => {
      const { act } = stepAt(job, number);
      return act.kind === 'decrease' && act.number === move;
    });
    const done = step > 0 ? movesOn(step, move) : 0;
    const other = otherSlip(job, done, move, random);
    if (other) add([{ kind: shapings[random(shapings.length)] ?? 'move omitted', move }, other], done);
  }
  return cases;
}

interface Outcome {
  readonly result: 'nothing to see' | 'one to see' | 'named' | 'mended' | 'failed' | 'cannot slip so';
  /** Offers that cannot be carried out, or do not lead to the plan, or do not tell their trace. */
  readonly wrongOffers: readonly string[];
  readonly answers: readonly string[];
}

interface Json {
  readonly say: readonly string[];
  readonly offers: readonly {
    readonly kind: string;
    readonly say: string;
    readonly moves: readonly Move[] | null;
    readonly trace: string | null;
    readonly step: number | null;
  }[];
  readonly questions: readonly string[];
}

/** Why an offer is wrong on the true bed; null where it is right. */
function judge(
  job: Job,
  offer: Json['offers'][number],
  bed: LoopBed,
  planned: readonly LoopBed[],
): string | null {
  const done = (offer.step ?? 1) - 1;
  const due = planned[done];
  if (!due) return 'leads nowhere';
  try {
    const now = bed.copy().do(offer.moves ?? []);
    if (offer.trace === null)
      return now.work() === due.work() ? null : 'says without a trace, and is not the plan';
    if (now.fabric().join() === due.fabric().join()) return null;
    const [one, other] = [now, due.copy()].map((each) => {
      const maker = new Maker(job);
      Object.assign(maker, { bed: each });
      for (let number = done + 1; number <= job.stepCount; number++) {
        const step = stepAt(job, number);
        if (step.act.kind === 'take-off') break;
        maker.bed.do(step.moves as readonly Move[]);
        if (step.act.kind === 'pass' || step.act.kind === 'closing-pass') break;
      }
      return maker.bed.state();
    });
    return one === other ? null : 'does not lead to the plan';
  } catch (error) {
    if (error instanceof CannotBeDone) return `cannot be done: ${error.message}`;
    throw error;
  }
}

/** Of two slips the one that she has not told of yet. */
function answerTo(maker: Maker, asked: string, told: { moments: number }, job: Job): string {
  const { slips } = maker;
  if (asked === 'row') {
    const last = slips[told.moments - 1];
    return last && 'row' in last ? `since row ${last.row}` : 'unsure';
  }
  if (asked !== 'moment') return maker.see(asked);
  const slip = slips[told.moments++];
  if (!slip) return 'unsure';
  if ('move' in slip) return `move ${slip.move}`;
  if ('stripe' in slip) return `in stripe ${slip.stripe}`;
  if (slip.kind === 'rows more' || slip.kind === 'rows fewer') {
    const stripe =
      job.plan.stripes.findIndex((one) => one.firstRow <= slip.row && slip.row <= one.lastRow) + 1;
    return `in stripe ${stripe}`;
  }
  return `since row ${slip.row}`;
}

function tryCase(
  job: Job,
  file: unknown,
  { slips, done }: Case,
  planned: readonly LoopBed[],
  facts: readonly string[],
): Outcome {
  const maker = new Maker(job, slips);
  const failed: string[] = [];
  try {
    for (let number = 1; number <= done + 1; number++) {
      if (number === done + 1 && slips[0]?.kind !== 'dropped') break;
      if (!maker.follow(stepAt(job, number))) break;
    }
  } catch (error) {
    if (error instanceof CannotBeDone) return { result: 'cannot slip so', wrongOffers: [], answers: [] };
    throw error;
  }
  const { bed } = maker;
  const bench = openMemoryBench({ brief: file });
  const answers: string[] = [];
  const type = (line: string): Json => {
    const before = bench.store.get();
    bench.submit(line);
    const json = workJson(before, bench.store.get(), []) as unknown as Json;
    const after = bench.store.get();
    answers.push(`> ${line}`, ...after.lines.slice(before.lines.length).map(({ text }) => text));
    const isList = after.lines
      .slice(before.lines.length)
      .some(({ text }) => text.includes('places look like that'));
    for (const offer of json.offers) {
      if (isList && offer.kind === 'go') continue;
      const wrong = judge(job, offer, bed, planned);
      if (wrong) failed.push(`${offer.say.slice(0, 160)} [to step ${offer.step}]: ${wrong}`);
    }
    return json;
  };
  const hasCounter = !job.plan.brief.bed.without.includes('counter');
  const seen: Readonly<Record<string, string>> = {
    ...maker.sees(),
    ...(hasCounter ? {} : { rowCounter: '' }),
  };
  if (done > 0) bench.submit(`go step ${done + 1}`);
  const told = { moments: 0 };
  const askedFor: string[] = [];
  let json = type(
    `find ${facts
      .map((fact) => seen[fact])
      .filter((said) => said !== '')
      .join(', ')}`,
  );
  for (let i = 0; i < 8; i++) {
    const { asked, question } = bench.store.get().talk;
    if (question?.about === 'yarn-where') {
      json = type(`find and newest row ${seen.lastColour}`);
      continue;
    }
    if (asked === null) break;
    if (asked !== 'moment' && asked !== 'row') askedFor.push(asked);
    const said = answerTo(maker, asked, told, job);
    json = type(said === '' || said === 'unsure' ? 'find unsure' : `find and ${said}`);
  }
  const hidden = answers.join(' ').includes('That is where you are');
  const lastAnswer = answers.slice(answers.findLastIndex((line) => line.startsWith('> ')));
  const named = slips.every((slip) => lastAnswer.some((line) => names(slip, line)));
  const mended = json.offers.some((offer) => judge(job, offer, bed, planned) === null);
  const isOpen = !hidden && slips.length > 1 && (failed.length > 0 || !(mended || named));
  if (
    isOpen &&
    isOneToSee(
      job,
      done,
      maker,
      [...facts, ...askedFor].filter((fact) => hasCounter || fact !== 'rowCounter'),
    )
  )
    return { result: 'one to see', wrongOffers: [], answers };
  const result = hidden ? 'nothing to see' : mended ? 'mended' : named ? 'named' : 'failed';
  return { result, wrongOffers: failed, answers };
}

describe('a slip that is seen', () => {
  it('is named, and every mend offered leads to the plan and tells its trace', () => {
    const tally = new Map<string, Record<string, number>>();
    const examples: string[] = [];
    let [asked, right, wrongOffers] = [0, 0, 0];
    fc.assert(
      fc.property(briefFile(), fc.integer({ min: 1, max: 2 ** 30 }), (file, seed) => {
        const job = jobOf(file);
        const random = randomFrom(seed);
        const last = (job.phaseStarts[2] ?? 0) + 3;
        const planned = plannedBeds(job, Math.min(last, job.stepCount));
        for (const one of casesIn(job, random)) {
          const facts = [
            'left',
            'right',
            'lastColour',
            'carriage',
            ...['stitches', 'feeder', 'rowCounter'].filter(() => random(2)),
          ];
          const outcome = tryCase(job, file, one, planned, facts);
          const kind = one.slips.map((slip) => slip.kind).join(' + ');
          const counts = tally.get(kind) ?? {};
          counts[outcome.result] = (counts[outcome.result] ?? 0) + 1;
          if (outcome.wrongOffers.length > 0) counts['wrong offer'] = (counts['wrong offer'] ?? 0) + 1;
          tally.set(kind, counts);
          if (['cannot slip so', 'nothing to see', 'one to see'].includes(outcome.result)) continue;
          asked++;
          if (outcome.result !== 'failed') right++;
          if (outcome.wrongOffers.length > 0) wrongOffers++;
          if ((outcome.result === 'failed' || outcome.wrongOffers.length > 0) && examples.length < 400)
            examples.push(
              [
                JSON.stringify(one),
                JSON.stringify(file),
                ...outcome.answers,
                ...outcome.wrongOffers.map((text) => `WRONG ${text}`),
              ].join('\n'),
            );
        }
      }),
      { numRuns: bags, seed: Number(process.env.SLANTWISE_SEED ?? 1) },
    );
    if (process.env.SLANTWISE_TELL)
      console.log(
        Object.fromEntries(tally),
        examples.slice(0, Number(process.env.SLANTWISE_TELL)).join('\n\n'),
        { asked, right, wrongOffers },
      );
    expect(wrongOffers).toBe(0);
    expect(asked).toBeGreaterThan(5 * bags);
    expect(right / asked).toBeGreaterThanOrEqual(0.99);
  });
});

/** Mulberry32, as it is published: small and even enough to choose slips by. */
function randomFrom(seed: number): Random {
  let state = seed;
  return (below) => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) % Math.max(1, below);
  };
}
