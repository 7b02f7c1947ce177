/** Where the maker is, and what the bed should look like there. */
import { type Pace, timeLeft } from '../../journal/pace.ts';
import type { Session } from '../../session/session.ts';
import { currentStep } from '../../session/session.ts';
import { count, formatList, say } from '../../shared/say.ts';
import { formatLength, metric, type Units } from '../../shared/units.ts';
import { rowAt, stepAt } from '../../steps/job.ts';
import type { BedAfter } from '../../steps/step.ts';
import { currentWords } from '../../wording/current.ts';
import { cautionOf } from './cautions.ts';
import { sayPhase, sayStep } from './steps.ts';
import { sayYarn } from './yarns.ts';

/** The bed before the step to do now; null before the first. */
export const bedNow = ({ job, done }: Session): BedAfter | null =>
  done === 0 ? null : stepAt(job, done).after;

/** One line: `step 35 of 550, stripes, row 7 of 63.` */
export function sayPlace(session: Session): string {
  const step = currentStep(session);
  if (!step) return say`the bag is finished.`;
  const row = rowAt(session.job, session.done);
  return say`step ${step.step} of ${session.job.stepCount} comes next, ${sayPhase(step.phase)}, ${count(row, 'row')} of ${session.job.plan.knittedRows} knitted.`;
}

/** The first lines on opening a session: a new bag in short, or where it was left. */
export function sayWelcome(session: Session, units: Units = metric): readonly string[] {
  const { plan } = session.job;
  if (session.done > 0) return [say`${plan.brief.name} again.`, ...sayWhere(session)];
  const { widthCm, depthCm } = plan.size;
  return [
    say`${plan.brief.name}: ${plan.stitches} stitches, ${plan.rows} rows round, ${formatLength(widthCm, units)} wide and ${formatLength(depthCm, units)} deep.`,
    say`Left and right are yours, facing the bed. Type plan for the whole plan, help for all that can be typed.`,
  ];
}

/** One line for a reader without a screen: the place, the instruction, and its caution. */
export function sayNow(session: Session, units: Units = metric): string {
  const step = currentStep(session);
  if (!step) return say`The bag is finished.`;
  const { plan, stepCount } = session.job;
  const caution = cautionOf(plan, step);
  const now = say`Step ${step.step} of ${stepCount}, ${sayPhase(step.phase)}: ${sayStep(plan, step, units)}`;
  return caution === null ? now : `${now} ${say`Caution: ${caution}`}`;
}

/** The place, and the bed as it should be: edges, carriage, feeder, parked yarns. */
export function sayWhere(session: Session): readonly string[] {
  const place = say`You are here: ${sayPlace(session)}`;
  const bed = bedNow(session);
  if (!bed) return [place, say`The bed is empty.`];
  return [place, sayEdges(session, bed), sayYarns(bed)];
}

/** How long it still takes; nothing once the bag is finished. */
export function sayTimeLeft({ job, done }: Session, pace: Pace, units: Units): readonly string[] {
  const phase = done === job.stepCount ? null : stepAt(job, done + 1).phase;
  if (phase === null) return [];
  const { phaseS, bagS } = timeLeft(job, done, pace);
  return [currentWords(units).plan.timeLeft(sayPhase(phase), phaseS, bagS, pace.bags)];
}

function sayEdges({ job }: Session, bed: BedAfter): string {
  const carriage = say`Carriage on the ${bed.carriage}.`;
  if (bed.left === null || bed.right === null) return say`No loops on the bed. ${carriage}`;
  const moves = say`${bed.shapings} of ${job.plan.shapings} shaping moves done.`;
  return say`Edges ${bed.left} and ${bed.right}, ${count(bed.stitches, 'needle')} with loops. ${carriage} ${moves}`;
}

function sayYarns({ feeder, parked }: BedAfter): string {
  const waiting = [...parked].map(([yarn, end]) => say`${sayYarn(yarn)} at the ${end} end`);
  const inFeeder = feeder === null ? say`Nothing in the feeder.` : say`In the feeder: ${sayYarn(feeder)}.`;
  return waiting.length === 0 ? inFeeder : `${inFeeder} ${say`Parked: ${formatList(waiting)}.`}`;
}

export const sayNotes = ({ notes }: Session): readonly string[] =>
  notes.length === 0
    ? [say`No notes yet. Type note and a remark.`]
    : notes.map(({ done, text }) => say`After step ${done}: ${text}`);

export const sayMarks = ({ marks }: Session): readonly string[] =>
  marks.size === 0
    ? [say`No marks yet. Type mark and a name.`]
    : [...marks].map(([name, done]) => say`${name}: step ${done + 1} comes next there`);
