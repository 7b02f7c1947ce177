/** Answers to a measurement or a wish in the middle of the work: what finishing would give, and what could be instead. */
import { stepRowsOf } from '../planning/choose-size.ts';
import { leastRowsFrom, type PlanChanges, type ReplanFault } from '../planning/plan-from.ts';
import type { Command } from '../session/command.ts';
import type { SeenFault } from '../session/locate/seen.ts';
import { knittedAt } from '../session/replan/replan.ts';
import {
  type Measurement,
  type ReplanChoice,
  type ReplanChoices,
  replanChoice,
  replanChoices,
} from '../session/replan/replan-choices.ts';
import type { Session } from '../session/session.ts';
import { updateSession } from '../session/update-session.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { mmPerInch, type Units } from '../shared/units.ts';
import { formatReplanChoices } from '../wording/finding-replan.ts';
import type { Words } from '../wording/words.ts';
import type { Amount, ReplanWish } from './grammar/intent.ts';
import { spellYarn, weighCommand } from './grammar/parse-measured.ts';
import { type Offer, offer, type Reply } from './talk.ts';
import { answer } from './transcript.ts';

/** More lines than this push the question off the screen. */
const choicesListed = 6;

export function replyToReplan(
  session: Session,
  wish: ReplanWish,
  words: Words,
): Result<Reply, ReplanFault | SeenFault> {
  const measurement = measurementOf(session, wish, words.units);
  if (!measurement.ok) return measurement;
  const found = choicesFor(session, wish.want, measurement.value);
  if (!found.ok) return found;
  const { asPlanned, choices, best } = found.value;
  const { measured, recolour } = measurement.value;
  const changes = measured !== null || recolour !== null;
  const offered = choices.filter((choice) => changes || choice.rows !== asPlanned?.rows);
  const lines = formatReplanChoices({ ...found.value, choices: offered, best }, words);
  const offers = offered.map((choice): Offer => {
    const command = replanCommand(choice.rows, measured, recolour);
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
  rows: number,
  measured: PlanChanges['measured'],
  recolour: PlanChanges['recolour'],
): Command {
  return {
    do: 'replan',
    rows,
    stitchMm: measured?.stitchMm ?? null,
    rowMm: measured?.rowMm ?? null,
    from: recolour?.from ?? null,
    to: recolour?.to ?? null,
    colour: recolour?.yarn?.colour ?? null,
    metresPer100g: recolour?.yarn?.metresPer100g ?? null,
  };
}

function choicesFor(
  { job, done }: Session,
  want: ReplanWish['want'],
  measurement: Measurement,
): Result<ReplanChoices, ReplanFault> {
  const all = replanChoices(job, done, measurement);
  if (!all.ok) return all;
  const planned = job.plan.rows;
  const chosen = (choices: readonly ReplanChoice[]) => succeed({ ...all.value, choices });
  if (want === 'any') return chosen(fewest(all.value));
  if (typeof want === 'number') {
    const one = replanChoice(job, done, measurement, want);
    return one.ok ? chosen([one.value]) : one;
  }
  const step = stepRowsOf(job.plan.brief);
  const least = leastRowsFrom(job.plan.brief, knittedAt(job, done)?.row ?? 0);
  const wanted = repeats.map((more) => planned + (want === 'longer' ? more : -more) * step);
  const rows = [...new Set([...(want === 'shorter' ? [least] : []), ...wanted])];
  const tried = rows.toSorted((a, b) => a - b).map((one) => replanChoice(job, done, measurement, one));
  return chosen(tried.flatMap((one) => (one.ok && one.value.rows !== planned ? [one.value] : [])));
}

/** Whole repeats added or left out that are listed. */
const repeats = [1, 2, 3, 4];

/** Those nearest to the best, and the planned one. */
function fewest({ choices, best, asPlanned }: ReplanChoices): readonly ReplanChoice[] {
  const from = (best ?? asPlanned)?.rows ?? 0;
  const nearest = choices.toSorted((a, b) => Math.abs(a.rows - from) - Math.abs(b.rows - from));
  const kept = new Set(nearest.slice(0, choicesListed));
  return choices.filter((choice) => kept.has(choice) || choice === asPlanned);
}

function measurementOf(
  session: Session,
  { stitches, rows, weighed, recolour }: ReplanWish,
  units: Units,
): Result<Measurement, SeenFault> {
  const { plan } = session.job;
  const known = [...plan.brief.yarns.keys()];
  const spell = (yarn: string): string => spellYarn(session, yarn);
  const scales = weighed.map((one) => weighCommand(session, one, units));
  const stranger = scales.find(({ yarn }) => !known.includes(yarn));
  if (stranger) return fail({ code: 'seen/unknown-yarn', yarn: stranger.yarn, known });
  const measured =
    stitches || rows
      ? {
          stitchMm: stitches ? millimetres(stitches.length, units) / stitches.count : plan.gauge.stitchMm,
          rowMm: rows ? millimetres(rows.length, units) / rows.count : plan.gauge.rowMm,
        }
      : null;
  return succeed({
    measured,
    weighed: new Map(scales.map(({ yarn, grams }) => [yarn, grams])),
    recolour: recolour && {
      from: spell(recolour.from),
      to: spell(recolour.to),
      yarn: newYarn(recolour),
    },
  });
}

const newYarn = ({ colour, metresPer100g }: NonNullable<ReplanWish['recolour']>) =>
  colour === null || metresPer100g === null
    ? null
    : { colour, metresPer100g, grams: null, pricePer100g: null };

function millimetres({ value, unit }: Amount, units: Units): number {
  switch (unit ?? units.length) {
    case 'mm':
      return value;
    case 'in':
      return value * mmPerInch;
    default:
      return value * 10;
  }
}
