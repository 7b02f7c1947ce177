/** Where the maker is, and what the bed should look like there. */
import { type Pace, timeLeft } from '../../journal/pace.ts';
import { bedNow } from '../../session/bed-now.ts';
import { currentStep, marksOf, type Session } from '../../session/session.ts';
import { rowAt, stepAt } from '../../steps/job.ts';
import type { BedAfter } from '../../steps/step.ts';
import type { Words } from '../../wording/words.ts';
import { cautionOf } from './cautions.ts';
import { sayPhase, sayStep } from './steps.ts';
import { sayYarn } from './yarns.ts';

/** One line: `step 35 of 550, stripes, row 7 of 63.` */
export function sayPlace(session: Session, words: Words): string {
  const step = currentStep(session);
  if (!step) return words.say`the bag is finished.`;
  const row = rowAt(session.job, session.done);
  return words.say`step ${step.step} of ${session.job.stepCount} comes next, ${sayPhase(step.phase, words)}, ${words.count(row, 'row')} of ${session.job.plan.knittedRows} knitted.`;
}

/** The first lines on opening a session: a new bag in short, or where it was left. */
export function sayWelcome(session: Session, words: Words): readonly string[] {
  const { plan } = session.job;
  if (session.done > 0) return [words.say`${plan.brief.name} again.`, ...sayWhere(session, words)];
  const { widthCm, depthCm } = plan.size;
  return [
    words.say`${plan.brief.name}: ${plan.stitches} stitches, ${plan.rows} rows round, ${words.amounts.length(widthCm)} wide and ${words.amounts.length(depthCm)} deep.`,
    words.say`Left and right are yours, facing the bed. Type plan for the whole plan, help for all that can be typed.`,
  ];
}

/** One line for a reader without a screen: the place, the instruction, and its caution. */
export function sayNow(session: Session, words: Words): string {
  const step = currentStep(session);
  if (!step) return words.say`The bag is finished.`;
  const { plan, stepCount } = session.job;
  const caution = cautionOf(plan, step, words);
  const now = words.say`Step ${step.step} of ${stepCount}, ${sayPhase(step.phase, words)}: ${sayStep(step, words)}`;
  return caution === null ? now : `${now} ${words.say`Caution: ${caution}`}`;
}

/** The place, and the bed as it should be: edges, carriage, feeder, parked yarns. */
export function sayWhere(session: Session, words: Words): readonly string[] {
  const place = session.adrift ? words.slips.betweenPlaces : sayWhereOnWay(session, words);
  const bed = bedNow(session);
  if (!bed) return [place, words.say`The bed is empty.`];
  return [place, sayEdges(session, bed, words), sayYarns(bed, words)];
}

function sayWhereOnWay(session: Session, words: Words): string {
  const { way } = session;
  if (!way) return words.say`You are here: ${sayPlace(session, words)}`;
  return words.slips.onTheWay(way.kind, way.at + 1, way.steps.length);
}

/** How long it still takes; nothing once the bag is finished. */
export function sayTimeLeft({ job, done }: Session, pace: Pace, words: Words): readonly string[] {
  const phase = done === job.stepCount ? null : stepAt(job, done + 1).phase;
  if (phase === null) return [];
  const { phaseS, bagS } = timeLeft(job, done, pace);
  return [words.plan.timeLeft(sayPhase(phase, words), phaseS, bagS, pace.bags)];
}

function sayEdges({ job }: Session, bed: BedAfter, words: Words): string {
  const carriage = words.say`Carriage on the ${bed.carriage}.`;
  if (bed.left === null || bed.right === null) return words.say`No loops on the bed. ${carriage}`;
  const moves = words.say`${bed.shapings} of ${job.plan.shapings} shaping moves done.`;
  return words.say`Edges ${bed.left} and ${bed.right}, ${words.count(bed.stitches, 'needle')} with loops. ${carriage} ${moves}`;
}

function sayYarns({ feeder, parked }: BedAfter, words: Words): string {
  const waiting = [...parked].map(([yarn, end]) => words.say`${sayYarn(yarn, words)} at the ${end} end`);
  const inFeeder =
    feeder === null
      ? words.say`Nothing in the feeder.`
      : words.say`In the feeder: ${sayYarn(feeder, words)}.`;
  return waiting.length === 0
    ? inFeeder
    : `${inFeeder} ${words.say`Parked: ${words.amounts.list(waiting)}.`}`;
}

export const sayNotes = ({ notes }: Session, words: Words): readonly string[] =>
  notes.length === 0
    ? [words.say`No notes yet. Type note and a remark.`]
    : [...notes].map(({ done, text }) => words.say`After step ${done}: ${text}`);

export const sayMarks = (session: Session, words: Words): readonly string[] =>
  session.marks.length === 0
    ? [words.say`No marks yet. Type mark and a name.`]
    : [...marksOf(session)].map(([name, done]) => words.say`${name}: step ${done + 1} comes next there`);
