/** Slips that are injected: one of each kind at a random moment, up to ten moves ago, and two at once. */
import { type Job, stepAt } from '../../source/steps/job.ts';
import { rehangs, type Slip, shapings } from './maker.ts';

export interface Case {
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
export const names = (slip: Slip, line: string): boolean =>
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
export function singlesBefore({ plan, ...job }: Job, done: number): readonly Slip[] {
  const now = stepAt({ plan, ...job }, done).row;
  const moves = Array.from({ length: plan.shapings }, (_, i) => i + 1).filter(
    (move) => Math.abs(now / plan.brief.shapeEveryRows - move) <= 12,
  );
  const stripes = plan.stripes.flatMap((one, i) =>
    one.firstRow <= now && one.lastRow > now - 30 ? [{ ...one, stripe: i + 1 }] : [],
  );
  return [
    ...moves.flatMap((move) => shapings.map((kind) => ({ kind, move }))),
    ...[...new Set([now, ...stripes.map(({ lastRow }) => lastRow)])].flatMap((row) =>
      [1, 2, 3].flatMap((rows) => [
        { kind: 'rows more', row, rows } as const,
        { kind: 'rows fewer', row, rows } as const,
      ]),
    ),
    ...stripes.flatMap(({ stripe, yarn }) =>
      [...plan.brief.yarns.keys()]
        .filter((used) => used !== yarn)
        .flatMap((used) => [
          { kind: 'stripe yarn', stripe, used } as const,
          { kind: 'yarns swapped', stripe, used } as const,
        ]),
    ),
  ];
}

type Random = (below: number) => number;

/** One slip of each kind that this bag has room for, at a random moment, and how far she has gone on. */
export function casesIn(job: Job, random: Random): readonly Case[] {
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

/** Mulberry32, as it is published: small and even enough to choose slips by. */
export function randomFrom(seed: number): Random {
  let state = seed;
  return (below) => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) % Math.max(1, below);
  };
}
