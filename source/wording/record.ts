/** The record of a bag: the time it took, what it was made of, and what another one needs; the gist of it once the bag ends. */
import { workedCost } from '../journal/bag-cost.ts';
import { lastInstant, lastSession, type Recording } from '../journal/read-log.ts';
import { type BagRecord, typicalRowMinutes } from '../journal/record.ts';
import { usedYarn } from '../session/measured.ts';
import { isFinished, type Session } from '../session/session.ts';
import { formatDuration } from './logs.ts';
import { measuredLines, sayMeasured, sayWeighed, weighedLines } from './measured.ts';
import { labelled, pageWidth, table, wrap } from './page.ts';
import { sizeLines, stripeLines } from './page-size.ts';
import { costLines, yarnLines } from './page-yarn.ts';
import { bedLines } from './plan-page.ts';
import type { Words } from './words.ts';

/** At most `pageWidth` columns wide. */
export function formatRecord(recording: Recording, record: BagRecord, words: Words): string {
  const session = lastSession(recording);
  const { plan } = session.job;
  const sections: readonly (readonly [title: string, lines: readonly string[]])[] = [
    [
      words.record.titles.time,
      [...timeLines(record, words), ...costLines(workedCost(session, record.benchMs), words)],
    ],
    [words.record.titles.byPhase, phaseLines(record, words)],
    [words.record.titles.byStripe, stripeTimeLines(session, record)],
    [words.record.titles.slowPlaces, slowLines(record, words)],
    [words.record.titles.size, sizeLines(plan, words, null)],
    [words.record.titles.sizeMeasured, measuredLines(session, words)],
    [words.record.titles.stripes, stripeLines(plan, words)],
    [words.record.titles.yarnByPlan, yarnLines(plan, words)],
    [words.record.titles.yarnWeighed, weighedLines(session, words)],
    [words.record.titles.bed, bedLines(plan, words)],
    [words.record.titles.notes, noteLines(session, words)],
  ];
  const shown = sections.filter(([, lines]) => lines.length > 0);
  const blocks = [headLines(recording, words), ...shown.map(([title, lines]) => [title, ...lines])];
  return blocks.map((lines) => lines.join('\n')).join('\n\n');
}

function headLines(recording: Recording, words: Words): readonly string[] {
  const { header, finished } = recording;
  const begun = words.record.begun(header.startedAt.slice(0, 10));
  const { done, job } = lastSession(recording);
  const last = lastInstant(recording).slice(0, 10);
  const state = finished
    ? words.record.finishedOn(last)
    : words.record.lastWorkedOn(last, done, job.stepCount);
  return [...wrap(lastSession(recording).name, pageWidth), ...wrap(`${begun}, ${state}`, pageWidth)];
}

function timeLines(record: BagRecord, words: Words): readonly string[] {
  const { benchMs, restMs, sittings, takenBack } = record;
  const perRow = typicalRowMinutes([record]);
  const bench = words.record.inSittings(formatDuration(benchMs / 1000), sittings);
  const rests = restMs === 0 ? '' : words.record.rests(formatDuration(restMs / 1000));
  return [
    ...labelled(words.record.bench, `${bench}${rests}`),
    ...(perRow === null
      ? []
      : labelled(words.record.row, words.record.withMoves(formatDuration(perRow * 60)))),
    // With a space: `back` alone is the far side of the work.
    ...labelled(words.record.backLabel, words.record.takenBack(takenBack)),
  ];
}

const phaseLines = ({ byPhase }: BagRecord, words: Words): readonly string[] =>
  rows([...byPhase].map(([phase, ms]) => [words.prompt.phases[phase], formatDuration(ms / 1000)]));

const stripeTimeLines = ({ job }: Session, { byStripe }: BagRecord): readonly string[] =>
  rows(
    [...byStripe].map(([stripe, ms]) => [
      `${stripe} ${job.plan.stripes[stripe - 1]?.yarn ?? ''}`,
      formatDuration(ms / 1000),
    ]),
  );

const slowLines = ({ slowPlaces }: BagRecord, words: Words): readonly string[] =>
  rows(
    slowPlaces.map(({ step, row, ms, usualMs }) => [
      words.record.stepAndRow(step, row),
      formatDuration(ms / 1000),
      words.record.usually(formatDuration(usualMs / 1000)),
    ]),
  );

const noteLines = ({ notes }: Session, words: Words): readonly string[] =>
  [...notes].flatMap(({ done, text }) => labelled(words.record.step(done + 1), text));

const rows = (cells: readonly (readonly string[])[]): readonly string[] =>
  table(cells).map((line) => `  ${line}`);

/** `record` null where the log cannot be read for its times. What is still to be measured or weighed is asked for. */
export function sayBagEnd(session: Session, record: BagRecord | null, words: Words): readonly string[] {
  const { bagEnd: say } = words;
  return [
    ...(record ? [sayTime(session, record, words)] : []),
    ...sizeBeside(session, words),
    ...yarnsBeside(session, words),
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

function sizeBeside(session: Session, words: Words): readonly string[] {
  const { widthCm, depthCm } = session.job.plan.size;
  const planned = words.bagEnd.planned(widthCm, depthCm);
  return session.measured ? [planned, ...sayMeasured(session, words)] : [words.bagEnd.measureIt(planned)];
}

/** Each yarn that the plan weighs: what it took by the scales, or what it should have taken. */
function yarnsBeside(session: Session, words: Words): readonly string[] {
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
