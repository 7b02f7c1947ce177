/**
 * What finishing would give, as planned and at the other whole repeats, once the piece has been measured or a yarn
 * weighed again. Where a weighed yarn runs short that the cord is to be made of, the cord in another yarn may save the bag.
 */
import type { Yarn } from '../../planning/brief.ts';
import { rowMultipleOf } from '../../planning/choose-size.ts';
import type { Plan } from '../../planning/plan.ts';
import {
  type Knitted,
  leastRowsFrom,
  mostRows,
  type PlanChanges,
  planFrom,
  type ReplanFault,
} from '../../planning/plan-from.ts';
import { shareOf, weigh, type YarnParts, yarnParts } from '../../planning/yarn-needs.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import type { Job } from '../../steps/job.ts';
import { knittedAt, replan } from './replan.ts';

export interface Measurement {
  /** The piece as it measures, rested; null where the swatch holds. */
  readonly measured: PlanChanges['measured'];
  /** Grams left of a yarn, by name, as weighed now. */
  readonly weighed: ReadonlyMap<string, number>;
  readonly recolour: PlanChanges['recolour'];
  readonly cordYarn: PlanChanges['cordYarn'];
}

/** What the rows still to knit, the tails and the cord take of one yarn. */
export interface YarnLeft {
  readonly yarn: string;
  readonly metres: number;
  readonly grams: number;
  readonly withReserveGrams: number;
  /** What of the metres is for stripes, for graft and seam, and for the cord. */
  readonly parts: YarnParts;
  /** Weighed now; null where it was not. */
  readonly haveGrams: number | null;
  readonly enough: boolean | null;
}

export interface ReplanChoice {
  readonly rows: number;
  /** Whole repeats more than planned; negative for fewer. */
  readonly repeatsMore: number;
  readonly widthCm: number;
  readonly depthCm: number;
  readonly depthBelowCordCm: number;
  readonly rowsLeft: number;
  /** Times more that the work is hung again; negative for fewer. */
  readonly rehangsMore: number;
  /** The yarn of the cord where it is to be another; null where it stays. */
  readonly cordIn: string | null;
  readonly yarn: readonly YarnLeft[];
  /** False where a weighed yarn does not last. */
  readonly enough: boolean;
}

export interface ReplanChoices {
  /** The width worked towards: the wish, or what the plan promised. */
  readonly aimCm: number;
  readonly asPlanned: ReplanChoice | null;
  /** The nearest to that width first, those for which the weighed yarn lasts before the others. */
  readonly choices: readonly ReplanChoice[];
  /** The nearest for which the weighed yarn lasts; null where there is none that is still such a bag. */
  readonly best: ReplanChoice | null;
}

/** Choices on either side of the best that are worth showing. */
const neighbours = 3;

/** Narrower than this part of the width worked towards it is another bag, a toy of the planned one (rule of thumb). */
const leastShare = 0.5;

export function replanChoices(
  job: Job,
  done: number,
  measurement: Measurement,
): Result<ReplanChoices, ReplanFault> {
  const knitted = knittedAt(job, done);
  if (!knitted) return fail({ code: 'replan/too-late' });
  const { plan } = job;
  const aimCm = aimOf(job);
  const tried = tryRows(plan, knitted, measurement, aimCm);
  if (!tried.ok) return tried;
  const asPlanned = tried.value.find(({ rows }) => rows === plan.rows) ?? null;
  const others = cordChoices(plan, knitted, measurement, { aimCm, asPlanned, tried: tried.value });
  const choices = nearestFirst([...others, ...tried.value], aimCm);
  const best = choices.find(({ enough, widthCm }) => enough && !isToy(widthCm, aimCm)) ?? null;
  return succeed({ aimCm, asPlanned, choices, best });
}

export const aimOf = ({ plan: { size } }: Job): number => size.wantedWidthCm ?? size.widthCm;

export const isToy = (widthCm: number, aimCm: number): boolean => widthCm < leastShare * aimCm;

const nearestFirst = (choices: readonly ReplanChoice[], aimCm: number): readonly ReplanChoice[] =>
  choices.toSorted((a, b) => Number(b.enough) - Number(a.enough) || missBy(a, aimCm) - missBy(b, aimCm));

/** The nearest with the cord in each other yarn, where that is nearer than all that its own yarn lasts for. */
function cordChoices(
  plan: Plan,
  knitted: Knitted,
  measurement: Measurement,
  {
    aimCm,
    asPlanned,
    tried,
  }: Pick<ReplanChoices, 'aimCm' | 'asPlanned'> & { tried: readonly ReplanChoice[] },
): readonly ReplanChoice[] {
  const { yarn: cord } = plan.brief.cord;
  const known = (asPlanned ?? tried[0])?.yarn ?? [];
  const runsShort = known.some(({ yarn, enough }) => yarn === cord && enough === false);
  if (measurement.cordYarn !== null || !runsShort) return [];
  const best = nearestFirst(tried, aimCm).find(({ enough }) => enough);
  return known.flatMap(({ yarn: to }): readonly ReplanChoice[] => {
    const inOther = tryRows(plan, knitted, { ...measurement, cordYarn: { to, yarn: null } }, aimCm);
    const [nearest] = inOther.ok ? nearestFirst(inOther.value, aimCm) : [];
    const isNearer =
      nearest?.enough &&
      (!best || missBy(nearest, aimCm) < missBy(best, aimCm)) &&
      !isToy(nearest.widthCm, aimCm);
    return nearest && isNearer ? [nearest] : [];
  });
}

/** What finishing at just this many rows would give. */
export function replanChoice(
  job: Job,
  done: number,
  { weighed, ...changes }: Measurement,
  rows: number,
): Result<ReplanChoice, ReplanFault> {
  const next = replan(job, done, { ...changes, rows });
  return next.ok ? succeed(choiceOf(job.plan, next.value.plan, knittedBy(job, done), weighed)) : next;
}

/** What finishing as planned takes. */
export const plannedChoice = (job: Job, done: number, weighed: Measurement['weighed']): ReplanChoice =>
  choiceOf(job.plan, job.plan, knittedBy(job, done), weighed);

const knittedBy = (job: Job, done: number): Knitted =>
  knittedAt(job, done) ?? { row: job.plan.rows, colouredThrough: job.plan.rows };

const missBy = ({ widthCm }: ReplanChoice, aimCm: number): number => Math.abs(widthCm - aimCm);

/** What more rows may do away with. */
const mayPass: ReadonlySet<ReplanFault['code']> = new Set(['replan/colours-meet', 'replan/boxed-too-deep']);

/** Whole repeats from the fewest possible until both the aim and the plan are passed. */
function tryRows(
  plan: Plan,
  knitted: Knitted,
  { weighed, ...changes }: Measurement,
  aimCm: number,
): Result<readonly ReplanChoice[], ReplanFault> {
  const rowMultiple = rowMultipleOf(plan.brief);
  const choices: ReplanChoice[] = [];
  let fault: ReplanFault | null = null;
  let beyond = 0;
  for (let rows = leastRowsFrom(plan.brief, knitted.row); rows <= mostRows; rows += rowMultiple) {
    const next = planFrom(plan, knitted, { ...changes, rows });
    if (!next.ok && !mayPass.has(next.fault.code)) return next;
    if (next.ok) {
      choices.push(choiceOf(plan, next.value, knitted, weighed));
      if (rows > plan.rows && next.value.size.widthCm > aimCm) beyond++;
    } else {
      if (fault === null || rows <= plan.rows) fault = next.fault;
      if (next.fault.code === 'replan/colours-meet' && next.fault.second > 1) break;
    }
    if (beyond >= neighbours || rows > farthest(plan, rowMultiple, choices.length)) break;
  }
  return choices.length === 0 && fault ? fail(fault) : succeed(choices);
}

/** Where no choice can be made at all, a search beyond this finds none either. */
const farthest = (plan: Plan, rowMultiple: number, found: number): number =>
  found > 0 ? mostRows : plan.rows + neighbours * rowMultiple;

function choiceOf(
  before: Plan,
  plan: Plan,
  knitted: Knitted,
  weighed: ReadonlyMap<string, number>,
): ReplanChoice {
  const { size, rows, brief } = plan;
  const yarn = [...brief.yarns].map(([name, one]) => yarnLeft(plan, knitted, name, one, weighed));
  return {
    rows,
    repeatsMore: (rows - before.rows) / rowMultipleOf(before.brief),
    widthCm: size.widthCm,
    depthCm: size.depthCm,
    depthBelowCordCm: size.depthBelowCordCm,
    rowsLeft: Math.max(0, rows - 1 - knitted.row),
    rehangsMore: plan.hangings.length - before.hangings.length,
    cordIn: brief.cord.yarn === before.brief.cord.yarn ? null : brief.cord.yarn,
    yarn,
    enough: yarn.every((one) => one.enough !== false),
  };
}

function yarnLeft(
  plan: Plan,
  { row }: Knitted,
  name: string,
  yarn: Yarn,
  weighed: ReadonlyMap<string, number>,
): YarnLeft {
  const parts = yarnParts(name, shareOf(name, plan.stripes, row), plan.gauge, plan);
  const metres = parts.stripes + parts.tails + parts.hem + parts.cord;
  const left = { ...yarn, grams: weighed.get(name) ?? null };
  const { grams, withReserveGrams, haveGrams, enough } = weigh(metres, left, plan.gauge);
  return { yarn: name, metres, grams, withReserveGrams, parts, haveGrams, enough };
}
