/** The end of a bag: what it came to beside its plan, and what can be done with it now. */
import type { BagRecord } from '../journal/record.ts';
import { isFinished, type Session } from '../session/session.ts';
import { usedYarn } from '../session/used-yarn.ts';
import { formatDuration } from './logs.ts';
import { sayMeasured, sayWeighed } from './measured.ts';
import type { Words } from './words.ts';

/** `record` null where the log cannot be read for its times. What is still to be measured or weighed is asked for. */
export function sayBagEnd(session: Session, record: BagRecord | null, words: Words): readonly string[] {
  const { bagEnd: say } = words;
  return [
    ...(record ? [sayTime(session, record, words)] : []),
    ...sizeLines(session, words),
    ...yarnLines(session, words),
    ...(isFinished(session) ? say.next : []),
  ];
}

function sayTime(session: Session, { benchMs, restMs, sittings }: BagRecord, { bagEnd: say }: Words): string {
  const bench = formatDuration(benchMs / 1000);
  const rests = restMs === 0 ? null : formatDuration(restMs / 1000);
  return isFinished(session)
    ? say.finished(session.name, bench, sittings, rests)
    : say.soFar(session.name, bench, sittings, rests);
}

function sizeLines(session: Session, words: Words): readonly string[] {
  const { widthCm, depthCm } = session.job.plan.size;
  const planned = words.bagEnd.planned(widthCm, depthCm);
  return session.measured ? [planned, ...sayMeasured(session, words)] : [words.bagEnd.measureIt(planned)];
}

/** Each yarn that the plan weighs: what it took by the scales, or what it should have taken. */
function yarnLines(session: Session, words: Words): readonly string[] {
  const weighed = new Set(usedYarn(session).map(({ yarn }) => yarn));
  const needs = session.job.plan.yarn.filter(({ grams, metres }) => grams !== null && metres > 0);
  const open = needs.filter(({ yarn }) => !weighed.has(yarn));
  return [
    ...needs.filter(({ yarn }) => weighed.has(yarn)).map(({ yarn }) => sayWeighed(session, yarn, words)),
    ...(open.length === 0
      ? []
      : [words.bagEnd.weighIt(open.map(({ yarn, grams }) => ({ yarn, grams: grams ?? 0 })))]),
  ];
}
