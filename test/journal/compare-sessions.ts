import type { Places, Session, Standing } from '../../source/session/session.ts';

/** All that can be seen of a session, as plain data. */
export const seenOf = (session: Session): unknown => ({
  ...standingOf(session),
  takeBack: placesOf(session.takeBack),
  redo: placesOf(session.redo),
  notes: session.notes,
  marks: [...session.marks],
  weighed: [...session.weighed],
  measured: session.measured,
});

const standingOf = ({ done, job, mends }: Standing) => ({
  done,
  rows: job.plan.rows,
  steps: job.stepCount,
  mends,
});

function placesOf(places: Places | null): readonly unknown[] {
  const all: unknown[] = [];
  for (let place = places; place; place = place.earlier) all.push(standingOf(place));
  return all;
}
