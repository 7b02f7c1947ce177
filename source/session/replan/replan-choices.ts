/**
 * What finishing would give, as planned and at the other whole repeats, once the piece has been measured or a yarn
 * weighed again.
 */
import type { Yarn } from '../../planning/brief.ts';
import { stepRowsOf } from '../../planning/choose-size.ts';
import type { Plan } from '../../planning/plan.ts';
import {
  type Knitted,
  leastRowsFrom,
  mostRows,
  type PlanChanges,
  planFrom,
  type ReplanFault,
} from '../../planning/plan-from.ts';
import { metresFor, shareOf, weigh } from '../../planning/yarn-needs.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import type { Job } from '../../steps/job.ts';
import { knittedAt } from './replan.ts';

export interface Measurement {
  /** The piece as it measures, rested; null where the swatch holds. */
  readonly measured: PlanChanges['measured'];
  /** Grams left of a yarn, by name, as weighed now. */
  readonly weighed: ReadonlyMap<string, number>;
  readonly recolour: PlanChanges['recolour'];
}

/** What the rows still to knit, the tails and the cord take of one yarn. */
export interface YarnLeft {
  readonly yarn: string;
  readonly metres: number;
  readonly grams: number;
  readonly withReserveGrams: number;
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
  readonly yarn: readonly YarnLeft[];
  /** False where a weighed yarn does not last. */
  readonly enough: boolean;
}

export interface ReplanChoices {
  /** The width worked towards: the wish, or what the plan promised. */
  readonly aimCm: number;
  readonly asPlanned: ReplanChoice | null;
  /** From the shortest to the longest, the planned one among them. */
  readonly choices: readonly ReplanChoice[];
  /** The nearest in width for which the weighed yarn lasts; null where there is none. */
  readonly best: ReplanChoice | null;
}

/** Choices on either side of the best that are worth showing. */
const neighbours = 3;

export function replanChoices(
  job: Job,
  done: number,
  measurement: Measurement,
): Result<ReplanChoices, ReplanFault> {
  const knitted = knittedAt(job, done);
  if (!knitted) return fail({ code: 'replan/too-late' });
  const { plan } = job;
  const aimCm = plan.size.wantedWidthCm ?? plan.size.widthCm;
  const tried = tryRows(plan, knitted, measurement, aimCm);
  if (!tried.ok) return tried;
  const choices = tried.value;
  const lasting = choices.filter((choice) => choice.enough);
  const best = lasting.toSorted((a, b) => missBy(a, aimCm) - missBy(b, aimCm))[0] ?? null;
  const middle = choices.indexOf(best ?? choices[0] ?? ({} as ReplanChoice));
  const asPlanned = choices.find(({ rows }) => rows === plan.rows) ?? null;
  const shown = choices.filter((choice, i) => Math.abs(i - middle) <= neighbours || choice === asPlanned);
  return succeed({ aimCm, asPlanned, choices: shown, best });
}

/** What finishing at just this many rows would give. */
export function replanChoice(
  job: Job,
  done: number,
  { measured, weighed, recolour }: Measurement,
  rows: number,
): Result<ReplanChoice, ReplanFault> {
  const knitted = knittedAt(job, done);
  if (!knitted) return fail({ code: 'replan/too-late' });
  const next = planFrom(job.plan, knitted, { rows, measured, recolour });
  return next.ok ? succeed(choiceOf(job.plan, next.value, knitted, weighed)) : next;
}

const missBy = ({ widthCm }: ReplanChoice, aimCm: number): number => Math.abs(widthCm - aimCm);

/** What more rows may do away with. */
const mayPass: ReadonlySet<ReplanFault['code']> = new Set(['replan/colours-meet', 'replan/boxed-too-deep']);

/** Whole repeats from the fewest possible until both the aim and the plan are passed. */
function tryRows(
  plan: Plan,
  knitted: Knitted,
  { measured, weighed, recolour }: Measurement,
  aimCm: number,
): Result<readonly ReplanChoice[], ReplanFault> {
  const stepRows = stepRowsOf(plan.brief);
  const choices: ReplanChoice[] = [];
  let fault: ReplanFault | null = null;
  let beyond = 0;
  for (let rows = leastRowsFrom(plan.brief, knitted.row); rows <= mostRows; rows += stepRows) {
    const next = planFrom(plan, knitted, { rows, measured, recolour });
    if (!next.ok && !mayPass.has(next.fault.code)) return next;
    if (next.ok) {
      choices.push(choiceOf(plan, next.value, knitted, weighed));
      if (rows > plan.rows && next.value.size.widthCm > aimCm) beyond++;
    } else {
      fault ??= next.fault;
      if (next.fault.code === 'replan/colours-meet' && next.fault.second > 1) break;
    }
    if (beyond >= neighbours || rows > farthest(plan, stepRows, choices.length)) break;
  }
  return choices.length === 0 && fault ? fail(fault) : succeed(choices);
}

/** Where no choice can be made at all, a search beyond this finds none either. */
const farthest = (plan: Plan, stepRows: number, found: number): number =>
  found > 0 ? mostRows : plan.rows + neighbours * stepRows;

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
    repeatsMore: (rows - before.rows) / stepRowsOf(before.brief),
    widthCm: size.widthCm,
    depthCm: size.depthCm,
    depthBelowCordCm: size.depthBelowCordCm,
    rowsLeft: rows - 1 - knitted.row,
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
  const metres = metresFor(name, shareOf(name, plan.stripes, row), plan.gauge, plan);
  const left = { ...yarn, grams: weighed.get(name) ?? null };
  const { grams, withReserveGrams, haveGrams, enough } = weigh(metres, left, plan.gauge);
  return { yarn: name, metres, grams, withReserveGrams, haveGrams, enough };
}
