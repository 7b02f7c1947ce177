/** Answers to a measurement or a wish in the middle of the work: what finishing would give, and what could be instead. */
import { rowMultipleOf } from '../planning/choose-size.ts';
import { leastRowsFrom, type ReplanFault } from '../planning/plan-from.ts';
import type { Command } from '../session/command.ts';
import type { SeenFault } from '../session/locate/seen.ts';
import { knittedAt } from '../session/replan/replan.ts';
import {
  aimOf,
  isToy,
  type Measurement,
  plannedChoice,
  type ReplanChoice,
  type ReplanChoices,
  replanChoice,
  replanChoices,
} from '../session/replan/replan-choices.ts';
import type { Session } from '../session/session.ts';
import { updateSession } from '../session/update-session.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { mmPerInch, type Units } from '../shared/units.ts';
import type { Job } from '../steps/job.ts';
import { formatReplanChoices } from '../wording/replan.ts';
import type { Words } from '../wording/words.ts';
import type { ChatFault, MeasuredAmount, ReplanWish } from './grammar/intent.ts';
import { spellYarn, weighCommand } from './grammar/parse-measured.ts';
import { answer, type Offer, offer, type Reply } from './talk.ts';

/** More lines than this push the question off the screen. */
const choicesListed = 6;

export function replyToReplan(
  session: Session,
  wish: ReplanWish,
  words: Words,
): Result<Reply, ReplanFault | SeenFault | ChatFault> {
  const measurement = measurementOf(session, wish, words.units);
  if (!measurement.ok) return measurement;
  const found = choicesFor(session, wish, measurement.value);
  if (!found.ok) return found;
  const { measured, recolour, cordYarn } = measurement.value;
  const changes = measured !== null || recolour !== null || cordYarn !== null;
  const isPlan = ({ rows, cordIn }: ReplanChoice) => rows === session.job.plan.rows && cordIn === null;
  const offered = found.value.choices.filter((choice) => changes || !isPlan(choice));
  const lines = formatReplanChoices({ ...found.value, choices: offered }, words);
  const offers = offered.map((choice): Offer => {
    const command = replanCommand(choice, measurement.value);
    return { is: 'choice', choice, takes: { kind: 'do', command } };
  });
  return succeed(offer(session, answer(...lines), { offers }, kept(session, wish, words.units)));
}

/** What the scales showed, for the log. More than there was is yarn that was bought since, and tells nothing of what was used. */
const kept = (session: Session, { weighed }: ReplanWish, units: Units): readonly Command[] =>
  weighed
    .map((one) => weighCommand(session, one, units))
    .filter((command) => updateSession(session, command).ok);

function replanCommand(
  { rows, cordIn }: ReplanChoice,
  { measured, recolour, cordYarn }: Measurement,
): Command {
  const yarn = recolour?.yarn ?? cordYarn?.yarn ?? null;
  return {
    do: 'replan',
    rows,
    stitchMm: measured?.stitchMm ?? null,
    rowMm: measured?.rowMm ?? null,
    from: recolour?.from ?? null,
    to: recolour?.to ?? null,
    cord: cordIn,
    colour: yarn?.colour ?? null,
    metresPer100g: yarn?.metresPer100g ?? null,
  };
}

function choicesFor(
  { job, done }: Session,
  { want, cord, ...others }: ReplanWish,
  measurement: Measurement,
): Result<ReplanChoices, ReplanFault> {
  const isCordAlone =
    cord !== null &&
    want === 'any' &&
    !(others.stitches || others.rows || others.recolour || others.weighed.length > 0);
  if (isCordAlone) return otherCord(job, done, measurement);
  const all = replanChoices(job, done, measurement);
  if (!all.ok) return all;
  const planned = job.plan.rows;
  const chosen = (choices: readonly ReplanChoice[]) => succeed({ ...all.value, choices });
  if (want === 'any') return chosen(fewest(all.value, planned));
  if (typeof want === 'number') {
    const one = replanChoice(job, done, measurement, want);
    return one.ok ? chosen([one.value]) : one;
  }
  const multiple = rowMultipleOf(job.plan.brief);
  const least = leastRowsFrom(job.plan.brief, knittedAt(job, done)?.row ?? 0);
  const wanted = repeats.map((more) => planned + (want === 'longer' ? more : -more) * multiple);
  const rows = [...new Set([...(want === 'shorter' ? [least] : []), ...wanted])];
  const nearest = rows.toSorted((a, b) => Math.abs(a - planned) - Math.abs(b - planned));
  const tried = nearest.map((one) => replanChoice(job, done, measurement, one));
  return chosen(tried.flatMap((one) => (one.ok && one.value.rows !== planned ? [one.value] : [])));
}

/** Whole repeats added or left out that are listed. */
const repeats = [1, 2, 3, 4];

/** The nearest that are such a bag still and for which the yarn lasts; where it lasts for none, those that need no more. */
function fewest({ choices, best, aimCm }: ReplanChoices, planned: number): readonly ReplanChoice[] {
  const isWorth = ({ widthCm, rows, enough }: ReplanChoice): boolean =>
    rows === planned || (!isToy(widthCm, aimCm) && (enough || (best === null && rows < planned)));
  return choices.filter(isWorth).slice(0, choicesListed);
}

/** Only the cord changes, which can be chosen as long as it is not begun. */
function otherCord(job: Job, done: number, measurement: Measurement): Result<ReplanChoices, ReplanFault> {
  const one = replanChoice(job, done, measurement, job.plan.rows);
  if (!one.ok) return one;
  const asPlanned = plannedChoice(job, done, measurement.weighed);
  return succeed({ aimCm: aimOf(job), asPlanned, choices: [one.value], best: one.value });
}

function measurementOf(
  session: Session,
  { stitches, rows, weighed, recolour, cord }: ReplanWish,
  units: Units,
): Result<Measurement, SeenFault | ChatFault> {
  const { plan } = session.job;
  const known = [...plan.brief.yarns.keys()];
  const spell = (yarn: string): string => spellYarn(session, yarn);
  const scales = weighed.map((one) => weighCommand(session, one, units));
  const stranger = scales.find(({ yarn }) => !known.includes(yarn));
  if (stranger) return fail({ code: 'seen/unknown-yarn', yarn: stranger.yarn, known });
  const { stitchMm, rowMm } = plan.gauge;
  const odd = whichUnit('stitches', stitches, stitchMm, units) ?? whichUnit('rows', rows, rowMm, units);
  if (odd) return fail(odd);
  const sizeMm = (told: ReplanWish['rows'], dueMm: number): number =>
    told ? millimetres(told.length, units) / told.count : dueMm;
  return succeed({
    measured: stitches || rows ? { stitchMm: sizeMm(stitches, stitchMm), rowMm: sizeMm(rows, rowMm) } : null,
    weighed: new Map(scales.map(({ yarn, grams }) => [yarn, grams])),
    recolour: recolour && { from: spell(recolour.from), to: spell(recolour.to), yarn: newYarn(recolour) },
    cordYarn: cord && { to: spell(cord.to), yarn: newYarn(cord) },
  });
}

/** No piece is so far from its swatch: a ruler was read in another unit than the maker's own. */
const farFromPlan = 2;

/** Asks for the unit where none was written and the size would be far from the plan's. */
function whichUnit(
  of: 'stitches' | 'rows',
  told: ReplanWish['rows'],
  dueMm: number,
  units: Units,
): ChatFault | null {
  if (!told || told.length.unit !== null) return null;
  const { count, length } = told;
  const sizeIn = (unit: 'mm' | 'cm' | 'in'): number => millimetres({ ...length, unit }, units) / count;
  const isNear = (sizeMm: number): boolean => sizeMm / dueMm <= farFromPlan && dueMm / sizeMm <= farFromPlan;
  const taken = units.length;
  if (isNear(sizeIn(taken))) return null;
  const fits = (['mm', 'cm', 'in'] as const).filter((unit) => unit !== taken && isNear(sizeIn(unit)));
  return {
    code: 'chat/which-unit',
    of,
    count,
    value: length.value,
    sizeMm: sizeIn(taken),
    dueMm,
    fits,
    taken,
  };
}

const newYarn = ({
  colour,
  metresPer100g,
}: Pick<NonNullable<ReplanWish['cord']>, 'colour' | 'metresPer100g'>) =>
  colour === null || metresPer100g === null
    ? null
    : { colour, metresPer100g, grams: null, pricePer100g: null };

function millimetres({ value, unit }: MeasuredAmount, units: Units): number {
  switch (unit ?? units.length) {
    case 'mm':
      return value;
    case 'in':
      return value * mmPerInch;
    default:
      return value * 10;
  }
}
