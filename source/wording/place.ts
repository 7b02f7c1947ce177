/** Where the maker is, and what the bed should look like there. */
import { type Pace, timeLeft } from '../journal/pace.ts';
import { marksOf } from '../session/marks.ts';
import { bedNow, currentStep, type Session } from '../session/session.ts';
import { goesBack } from '../session/way.ts';
import { rowAt, stepAt } from '../steps/job.ts';
import type { BedAfter } from '../steps/step.ts';
import { cautionOf, sayStep } from './steps.ts';
import type { Words } from './words.ts';

/** One line: `step 35 of 550, stripes, row 7 of 63.` */
export function sayPlace(session: Session, words: Words): string {
  const step = currentStep(session);
  if (!step) return words.prompt.place.finished;
  const row = rowAt(session.job, session.done);
  return words.prompt.place.next(
    step.step,
    session.job.stepCount,
    words.prompt.phases[step.phase],
    row,
    session.job.plan.knittedRows,
  );
}

/** The first lines on opening a session: a new bag in short, or where it was left. */
export function sayWelcome(session: Session, words: Words): readonly string[] {
  const { plan } = session.job;
  if (session.done > 0) return [words.prompt.welcome.again(session.name), ...sayWhere(session, words)];
  const { widthCm, depthCm } = plan.size;
  return [
    words.prompt.welcome.bag(session.name, plan.stitches, plan.rows, widthCm, depthCm),
    words.prompt.welcome.sides,
  ];
}

/** One line for a reader without a screen: the place, the instruction, and its caution. */
export function sayNow(session: Session, words: Words): string {
  const step = currentStep(session);
  if (!step) return words.prompt.bagFinished;
  const { plan, stepCount } = session.job;
  const caution = cautionOf(plan, step, words);
  const now = words.prompt.stepNow(
    step.step,
    stepCount,
    words.prompt.phases[step.phase],
    sayStep(step, words),
  );
  return caution === null ? now : `${now} ${words.prompt.caution(caution)}`;
}

/** The place, and the bed as it should be: edges, carriage, feeder, parked yarns. */
export function sayWhere(session: Session, words: Words): readonly string[] {
  const place = session.adrift ? words.slips.betweenPlaces : sayWhereOnWay(session, words);
  const bed = bedNow(session);
  if (!bed) return [place, words.prompt.bed.empty];
  return [place, sayEdges(session, bed, words), sayYarns(bed, words)];
}

/** The place, or how far the hands are on the way that they are on. */
export const sayPlaceOrWay = (session: Session, words: Words): string =>
  session.way ? sayWhereOnWay(session, words) : sayPlace(session, words);

function sayWhereOnWay(session: Session, words: Words): string {
  const { way } = session;
  if (!way) return words.prompt.place.here(sayPlace(session, words));
  return words.slips.onTheWay(goesBack(way), way.at + 1, way.steps.length);
}

/** How long it still takes; nothing once the bag is finished. */
export function sayTimeLeft({ job, done }: Session, pace: Pace, words: Words): readonly string[] {
  const phase = done === job.stepCount ? null : stepAt(job, done + 1).phase;
  if (phase === null) return [];
  const { phaseS, bagS } = timeLeft(job, done, pace);
  return [words.plan.timeLeft(words.prompt.phases[phase], phaseS, bagS, pace.bags)];
}

function sayEdges({ job }: Session, bed: BedAfter, words: Words): string {
  const carriage = words.prompt.bed.carriage(bed.carriage);
  if (bed.left === null || bed.right === null) return words.prompt.bed.noLoops(carriage);
  const moves = words.prompt.bed.moves(bed.shapings, job.plan.shapings);
  return words.prompt.bed.edges(bed.left, bed.right, bed.stitches, carriage, moves);
}

function sayYarns({ feeder, parked }: BedAfter, words: Words): string {
  const waiting = [...parked].map(([yarn, end]) => words.prompt.bed.parkedAt(yarn, end));
  const inFeeder = feeder === null ? words.prompt.bed.feederEmpty : words.prompt.bed.feeder(feeder);
  return waiting.length === 0 ? inFeeder : `${inFeeder} ${words.prompt.bed.parked(waiting)}`;
}

export const sayNotes = ({ notes }: Session, words: Words): readonly string[] =>
  notes.length === 0
    ? words.prompt.notes.none
    : [...notes].map(({ done, text }) => words.prompt.notes.after(done, text));

export const sayMarks = (session: Session, words: Words): readonly string[] =>
  session.marks.length === 0
    ? words.prompt.marks.none
    : [...marksOf(session)].map(([name, done]) => words.prompt.marks.next(name, done + 1));
