import type { PlanChanges } from '../planning/plan-from.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import type { Command, SessionFault } from './command.ts';
import { sameBed } from './diagnose/settle.ts';
import { measureBag, measureCord, weighYarn } from './measured.ts';
import { replan } from './replan/replan.ts';
import { bedReally, detoursBy } from './rip-back/history.ts';
import { addPlace, isFinished, type Session, type Standing, standingAt, stepsStanding } from './session.ts';
import { goesBack, mendWay, onWay, ripWay, type Way } from './way.ts';

/**
 * The one state machine: the session after `command`, or why it cannot be done. Opening, resuming and replaying a log
 * go through this function command by command, and its cost does not depend on what went before.
 */
export function updateSession(session: Session, command: Command): Result<Session, SessionFault> {
  switch (command.do) {
    case 'confirm':
      return confirm(session, command.count);
    case 'back':
      return takeBack(session);
    case 'redo':
      return redo(session);
    case 'go':
      return jump(session, command.done);
    case 'note':
      return note(session, command.text);
    case 'mark':
      return mark(session, command.name);
    case 'rename':
      return rename(session, command.name);
    case 'weigh':
      return weighYarn(session, command.yarn, command.grams);
    case 'measured':
      return measureBag(session, command.widthCm, command.depthCm);
    case 'cord': {
      const measured = measureCord(session, command.lengthCm);
      return measured.ok ? goTo(session, measured.value) : measured;
    }
    case 'rip':
      return beginRip(session, command.done);
    case 'mend':
      return beginMend(session, command);
    case 'on-the-way':
      return goOnWay(session);
    case 'stop':
      return leaveWay(session);
    case 'replan':
      return planAnew(session, command);
  }
}

type Outcome = Result<Session, SessionFault>;

/** What moves the place waits until the hands are off the way. */
function busy({ way }: Session): Extract<Outcome, { readonly ok: false }> | null {
  return way && fail({ code: 'way/on-the-way', back: goesBack(way), at: way.at + 1, of: way.steps.length });
}

const goTo = (session: Session, to: Partial<Standing>): Outcome =>
  succeed({
    ...session,
    ...to,
    takeBack: addPlace(session, session.takeBack),
    redo: null,
  });

function confirm(session: Session, count: number): Outcome {
  const held = busy(session);
  if (held) return held;
  if (session.adrift) return fail({ code: 'way/between-places' });
  const left = session.job.stepCount - session.done;
  if (isFinished(session)) return fail({ code: 'session/nothing-to-confirm' });
  if (!Number.isInteger(count) || count < 1 || count > left) {
    return fail({ code: 'session/too-many-steps', count, left });
  }
  return goTo(session, { done: session.done + count });
}

function takeBack(session: Session): Outcome {
  const { takeBack: place } = session;
  if (!place) return fail({ code: 'session/nothing-to-take-back' });
  return succeed({
    ...session,
    ...standingAt(place),
    takeBack: place.earlier,
    redo: addPlace(session, session.redo),
  });
}

function redo(session: Session): Outcome {
  const { redo: place } = session;
  if (!place) return fail({ code: 'session/nothing-to-redo' });
  return succeed({
    ...session,
    ...standingAt(place),
    redo: place.earlier,
    takeBack: addPlace(session, session.takeBack),
  });
}

function noSuchStep({ job: { stepCount } }: Session, done: number): SessionFault | null {
  if (Number.isInteger(done) && done >= 0 && done <= stepCount) return null;
  return { code: 'session/no-such-step', step: done + 1, stepCount };
}

function jump(session: Session, done: number): Outcome {
  const fault = noSuchStep(session, done);
  const held = fault ? fail(fault) : busy(session);
  if (held) return held;
  const isThere = done === session.done && !session.adrift;
  return isThere ? fail({ code: 'session/already-there', done }) : goTo(session, { done, adrift: null });
}

function beginRip(session: Session, done: number): Outcome {
  const held = busy(session) ?? (session.adrift && fail({ code: 'way/between-places' }));
  const way = held ?? ripWay(session, done);
  return way.ok ? setOut(session, way.value) : way;
}

function beginMend(session: Session, name: CommandOf<'mend'>): Outcome {
  const way = busy(session) ?? mendWay(session.job, name);
  return way.ok ? setOut(session, way.value) : way;
}

/** A way of no steps is gone at once. */
function setOut(session: Session, way: Way): Outcome {
  return way.steps.length > 0 ? goTo(session, { way, adrift: null }) : arrive(session, way);
}

function goOnWay(session: Session): Outcome {
  const { way, job, done } = session;
  if (!way) return fail({ code: 'way/not-on-one' });
  const next = onWay(way, job.plan.stitches);
  return next.way ? goTo(session, { way: next.way, done: next.done ?? done }) : arrive(session, way);
}

/** What lay behind the place is as it was; a kept slip that was undone is gone, and a new one is kept. */
function arrive(session: Session, { thenDone, mend, kind }: Way): Outcome {
  const left = session.mends.filter(
    ({ detour }) => kind === 'mend' || detour === null || detour.through <= thenDone,
  );
  return goTo(session, { way: null, adrift: null, done: thenDone, mends: mend ? [...left, mend] : left });
}

/** Before its first step, or where the bed is the plan's, nothing is left half done. */
function leaveWay(session: Session): Outcome {
  const { way, job, done } = session;
  if (!way) return fail({ code: 'way/not-on-one' });
  const stands = bedReally(job, detoursBy(session, done), done);
  const isSound = sameBed(way.bed, stands) || way.at === 0;
  return isSound
    ? goTo(session, { way: null, adrift: null })
    : goTo(session, { way: null, adrift: way.bed, done: stepsStanding(session) });
}

type CommandOf<D extends Command['do']> = Extract<Command, { readonly do: D }>;

function planAnew(session: Session, command: CommandOf<'replan'>): Outcome {
  const held = busy(session);
  if (held) return held;
  const job = replan(session.job, session.done, changesOf(command));
  return job.ok ? goTo(session, { job: job.value }) : job;
}

function changesOf(command: CommandOf<'replan'>): PlanChanges {
  const { rows, stitchMm, rowMm, from, to, cord, colour, metresPer100g } = command;
  const measured = stitchMm === null || rowMm === null ? null : { stitchMm, rowMm };
  const yarn =
    colour === null || metresPer100g === null
      ? null
      : { colour, metresPer100g, grams: null, pricePer100g: null };
  return {
    rows,
    measured,
    recolour: from === null || to === null ? null : { from, to, yarn },
    cordYarn: cord === null ? null : { to: cord, yarn: to === null ? yarn : null },
  };
}

function note(session: Session, text: string): Outcome {
  if (text.trim() === '') return fail({ code: 'session/nothing-to-say', what: 'note' });
  return succeed({ ...session, notes: session.notes.add({ done: session.done, text }) });
}

/** As long as a brief's name may be. */
const longestName = 200;

function rename(session: Session, typed: string): Outcome {
  const name = typed.trim();
  return name === '' || name.length > longestName
    ? fail({ code: 'session/not-a-name', most: longestName })
    : succeed({ ...session, name });
}

function mark(session: Session, name: string): Outcome {
  if (name.trim() === '') return fail({ code: 'session/nothing-to-say', what: 'mark' });
  return succeed({ ...session, marks: session.marks.add({ name, done: session.done, job: session.job }) });
}
