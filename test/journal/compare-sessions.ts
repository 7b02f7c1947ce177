import type { Places, Session } from '../../source/session/session.ts';

/** All that can be seen of a session, as plain data. */
export const seenOf = (session: Session): unknown => ({
  done: session.done,
  stepCount: session.job.stepCount,
  takeBack: placesOf(session.takeBack),
  redo: placesOf(session.redo),
  notes: session.notes,
  marks: [...session.marks],
});

function placesOf(places: Places | null): readonly number[] {
  const all: number[] = [];
  for (let place = places; place; place = place.earlier) all.push(place.done);
  return all;
}
