/** The record of a bag: the time it took, what it was made of, and what another one needs. */

import { workedCost } from '../../journal/bag-cost.ts';
import { type BagRecord, typicalRowMinutes } from '../../journal/record.ts';
import type { Recording } from '../../journal/recording.ts';
import type { Session } from '../../session/session.ts';
import { forShell } from '../../shared/for-shell.ts';
import { instantOf } from '../../shared/instant.ts';
import type { Words } from '../../wording/words.ts';
import { formatDuration } from './logs.ts';
import { measuredLines } from './measured.ts';
import { labelled, pageWidth, table, wrap } from './page.ts';
import { bedLines } from './page-bed.ts';
import { costLines } from './page-cost.ts';
import { sizeLines, stripeLines } from './page-size.ts';
import { yarnLines } from './page-yarn.ts';
import { sayPhase } from './steps.ts';
import { weighedLines } from './weighed.ts';

/** The session as the recording leaves it. */
export const lastSession = ({ moments, start }: Recording): Session => moments.at(-1)?.session ?? start;

/** When the last thing recorded happened; ISO 8601 in UTC. */
export function lastInstant({ header, moments }: Recording): string {
  let ms = Date.parse(header.startedAt);
  for (const { entry } of moments) {
    ms = entry.event.do === 'resume' ? Date.parse(entry.event.at) : ms + entry.afterMs;
  }
  return instantOf(ms);
}

/** At most `pageWidth` columns wide. */
export function formatRecord(recording: Recording, record: BagRecord, words: Words): string {
  const session = lastSession(recording);
  const { plan } = session.job;
  const sections: readonly (readonly [title: string, lines: readonly string[]])[] = [
    [
      words.say`TIME`,
      [...timeLines(record, words), ...costLines(workedCost(session, record.benchMs), words)],
    ],
    [words.say`BY PHASE`, phaseLines(record, words)],
    [words.say`BY STRIPE`, stripeTimeLines(session, record)],
    [words.say`SLOW PLACES`, slowLines(record, words)],
    [words.say`SIZE`, sizeLines(plan, words, null)],
    [words.say`SIZE, MEASURED`, measuredLines(session, words)],
    [words.say`STRIPES`, stripeLines(plan, words)],
    [words.say`YARN, BY THE PLAN`, yarnLines(plan, words)],
    [words.say`YARN, WEIGHED`, weighedLines(session, words)],
    [words.say`BED`, bedLines(plan, words)],
    [words.say`NOTES`, noteLines(session, words)],
  ];
  const shown = sections.filter(([, lines]) => lines.length > 0);
  const blocks = [headLines(recording, words), ...shown.map(([title, lines]) => [title, ...lines])];
  return blocks.map((lines) => lines.join('\n')).join('\n\n');
}

function headLines(recording: Recording, words: Words): readonly string[] {
  const { header, finished } = recording;
  const begun = words.say`begun ${header.startedAt.slice(0, 10)}`;
  const { done, job } = lastSession(recording);
  const last = lastInstant(recording).slice(0, 10);
  const state = finished
    ? words.say`finished ${last}`
    : words.say`last worked on ${last}, ${done} of ${job.stepCount} steps done`;
  return [...wrap(header.name, pageWidth), ...wrap(`${begun}, ${state}`, pageWidth)];
}

function timeLines(record: BagRecord, words: Words): readonly string[] {
  const { benchMs, restMs, sittings, takenBack } = record;
  const perRow = typicalRowMinutes([record]);
  const bench = words.say`${formatDuration(benchMs / 1000)} in ${words.count(sittings, 'sitting')}`;
  const rests = restMs === 0 ? '' : words.say`, and rests of ${formatDuration(restMs / 1000)}`;
  return [
    ...labelled(words.say`bench`, `${bench}${rests}`),
    ...(perRow === null
      ? []
      : labelled(words.say`a row`, words.say`${formatDuration(perRow * 60)}, shaping moves included`)),
    // With a space: `back` alone is the far side of the work.
    ...labelled(words.say`back `, words.say`${words.count(takenBack, 'time')} something was taken back`),
  ];
}

const phaseLines = ({ byPhase }: BagRecord, words: Words): readonly string[] =>
  rows([...byPhase].map(([phase, ms]) => [sayPhase(phase, words), formatDuration(ms / 1000)]));

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
      words.say`step ${step}, row ${row}`,
      formatDuration(ms / 1000),
      words.say`usually ${formatDuration(usualMs / 1000)}`,
    ]),
  );

const noteLines = ({ notes }: Session, words: Words): readonly string[] =>
  [...notes].flatMap(({ done, text }) => labelled(words.say`step ${done + 1}`, text));

const rows = (cells: readonly (readonly string[])[]): readonly string[] =>
  table(cells).map((line) => `  ${line}`);

/** What another one needs besides yarn and bed. */
export const sayAnother = (path: string, words: Words): string =>
  words.say`To make another, with this brief, its changes and these notes: slantwise work --like ${forShell(path)}`;
