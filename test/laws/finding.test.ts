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
import { wrongWith } from './judge-mend.ts';
import { CannotBeDone, type LoopBed, type Move } from './loop-bed.ts';
import { Maker, plannedBeds } from './maker.ts';
import { type Case, casesIn, names, randomFrom, singlesBefore } from './slips-injected.ts';

vi.setConfig({ testTimeout: 3_600_000 });

const bags = Number(process.env.SLANTWISE_BAGS ?? 3);

/** The stripes and the closing row, as far as the strip hangs. */
const lastSeen = (job: Job): number => Math.min((job.phaseStarts[2] ?? 0) + 3, job.stepCount);

/** Whether a place of the plan, or one slip alone, leaves the same to see: then the facts do not fix two. */
function isOneToSee(job: Job, done: number, seen: Maker, facts: readonly string[]): boolean {
  const told = (maker: Maker): string => facts.map((fact) => maker.see(fact)).join();
  const wanted = told(seen);
  const sound = new Maker(job);
  for (let number = 1; number <= lastSeen(job); number++) {
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

const wrongOf = (job: Job, offer: Json['offers'][number], bed: LoopBed, planned: readonly LoopBed[]) =>
  wrongWith(
    job,
    { moves: offer.moves ?? [], done: (offer.step ?? 1) - 1, tellsTrace: offer.trace !== null },
    bed,
    planned,
  );

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
      const wrong = wrongOf(job, offer, bed, planned);
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
    if (!['moment', 'row', 'which-edge'].includes(asked)) askedFor.push(asked);
    const said = answerTo(maker, asked, told, job);
    json = type(said === '' || said === 'unsure' ? 'find unsure' : `find and ${said}`);
  }
  const hidden = answers.join(' ').includes('That is where you are');
  const lastAnswer = answers.slice(answers.findLastIndex((line) => line.startsWith('> ')));
  const named = slips.every((slip) => lastAnswer.some((line) => names(slip, line)));
  const mended = json.offers.some((offer) => wrongOf(job, offer, bed, planned) === null);
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
        const planned = plannedBeds(job, lastSeen(job));
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
