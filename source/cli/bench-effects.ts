/** All that a bench wants done, and how: the log, the settings, files, bell and voice. */

import { answer } from '../chat/talk.ts';
import { systemClock } from '../files/clock.ts';
import { logFolder, settingsFolder } from '../files/data-folders.ts';
import { bagToOpen, folderFault, listLogs } from '../files/log-list.ts';
import type { SessionLog } from '../files/session-log.ts';
import { saveSetting } from '../files/settings-file.ts';
import { type MatchWish, matchBrief, nextName } from '../journal/match.ts';
import { recordOf } from '../journal/record.ts';
import type { BriefFile } from '../planning/brief.ts';
import type { BriefFault, PlanFault } from '../planning/fault.ts';
import { readBriefFile } from '../planning/parse-brief.ts';
import type { Plan } from '../planning/plan.ts';
import { planBag } from '../planning/plan-bag.ts';
import type {
  Another,
  BenchMessage,
  BenchState,
  BenchStore,
  ShelfWish,
} from '../screen/bench/bench-state.ts';
import type { Announce } from '../screen/bench/speech.ts';
import type { BenchEffects } from '../screen/bench/update-bench.ts';
import type { BeforeShown } from '../screen/parts/screen-output.ts';
import type { Command } from '../session/command.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { formatFault } from '../wording/faults.ts';
import { formatFileFault } from '../wording/file-faults.ts';
import { notesLike, sayBags, sayState } from '../wording/logs.ts';
import { sayBagEnd } from '../wording/record.ts';
import type { Words } from '../wording/words.ts';
import { discardNamed, restore } from './bags-in-hand.ts';
import { workIsKeptIn } from './outcome.ts';
import { nextOfParty, planParty, tellParty } from './own-party.ts';
import { forgetOnShelf, keepOnShelf, tellShelf } from './own-shelf.ts';
import { openRecording, ownPace, withLearned } from './read-input.ts';
import { speakIn } from './settings.ts';

const told = (...texts: readonly string[]): BenchMessage => ({ is: 'told', lines: answer(...texts) });

function useShelf(log: SessionLog, wish: ShelfWish, words: Words): Result<readonly string[], string> {
  switch (wish.kind) {
    case 'keep':
      return keepOnShelf(log, wish.what, wish.text, words);
    case 'forget': {
      const done = forgetOnShelf(wish.what, wish.name, words);
      return done.ok ? succeed([done.value]) : done;
    }
    case 'shelf':
      return tellShelf(words);
  }
}

const tellOf = (result: Result<string | readonly string[], string>): BenchMessage =>
  told(...[result.ok ? result.value : result.fault].flat());

/** The log that was worked in has become something else's: where it all is now, said once. */
export function sayTakenOver(log: SessionLog, words: Words): string | null {
  const from = log.tellTakenOver();
  if (from === null) return null;
  workIsKeptIn(log.path);
  return words.logs.takenOver(from, log.path);
}

function tellTakenOver(log: SessionLog, send: Send, words: Words): void {
  const text = sayTakenOver(log, words);
  if (text !== null) send({ is: 'told', lines: [{ tone: 'caution', text }] });
}

export const benchEffects = (
  log: SessionLog,
  announce: Announce,
  beforeShown: BeforeShown,
): BenchEffects => ({
  record: ({ command }, send, state) => record(log, command, send, state, beforeShown),
  // Nor is it heard before it is on disk.
  announce: ({ why }, _, state) => beforeShown.later(() => announce(state, why)),
  'save-and-leave': ({ how }, send) => send({ is: 'tried-to-save', how, saving: log.retry() }),
  'load-language': async ({ setting }, send) =>
    send({ is: 'language', setting, language: await speakIn(setting) }),
  keep: async ({ change: { name, value } }, send, { words }) => {
    const saved = await saveSetting(settingsFolder(), name, value);
    if (!saved.ok) send(told(formatFileFault(saved.fault, words)));
  },
  'write-sheet': async ({ session: { job, name }, out }, send, { words }) => {
    const { saveSheet } = await import('./sheet.ts');
    send(tellOf(saveSheet(job.plan, { name, out, words })));
  },
  'write-tag': async ({ session: { job, name }, out }, send, { words }) => {
    const { saveSheet } = await import('./sheet.ts');
    send(tellOf(saveSheet(job.plan, { name, out, words, tag: { fibre: null, care: null } })));
  },
  'tell-record': (_, send, { words, session }) => {
    const recording = openRecording(log.path, words);
    send(told(...sayBagEnd(session, recording.ok ? recordOf(recording.value) : null, words)));
  },
  'plan-another': ({ wish }, send, { words }) => {
    const planned = planAnother(log, wish, words);
    send(planned.ok ? { is: 'another', another: planned.value } : told(planned.fault));
  },
  'use-shelf': ({ wish }, send, { words }) => send(tellOf(useShelf(log, wish, words))),
  'use-party': ({ what }, send, { words }) => send(useParty(log, what, words)),
  'save-elsewhere': ({ out }, send, { words }) => {
    const saved = log.saveElsewhere(out);
    send(told(saved.ok ? words.files.savedElsewhere(log.path) : formatFileFault(saved.fault, words)));
    send({ is: 'saving', saving: log.status });
  },
  'list-bags': (_, send, { words }) => {
    const fault = folderFault(logFolder());
    send(told(...(fault ? [formatFileFault(fault, words)] : sayBags(listLogs(logFolder()), words))));
  },
  'find-bag': ({ bag }, send, { words }) => {
    const found = bagToOpen(bag, log.path, words);
    send(found.ok ? { is: 'found-bag', path: found.value } : told(found.fault));
  },
  'discard-bag': ({ bag, sure }, send, { words }) => send(discardFrom(log, bag, sure, words)),
  'restore-bag': (_, send, { words }) => send(tellOf(restore(words))),
  'read-pace': ({ asked }, send) => send({ is: 'pace', pace: ownPace(), asked }),
});

type Send = BenchStore['send'];

function record(
  log: SessionLog,
  command: Command,
  send: Send,
  { words, saving }: BenchState,
  beforeShown: BeforeShown,
): void {
  const recorded = log.begin(command);
  // The bench has carried the same command out on the same session.
  if (!recorded.ok) throw new Error(`the log refuses what the bench has done: ${recorded.fault.code}`);
  // What came of it is told before any of it is shown.
  send({ is: 'recorded', atMs: systemClock.now().getTime(), saving });
  beforeShown.later(() => {
    send({ is: 'saving', saving: log.settle() });
    tellTakenOver(log, send, words);
  });
}

function useParty(log: SessionLog, what: 'tally' | 'next' | number, words: Words): BenchMessage {
  if (what !== 'next') return tellOf(what === 'tally' ? tellParty(words) : planParty(log, what, words));
  const next = nextOfParty(log.path, words);
  if (!next.ok) return told(next.fault);
  return typeof next.value === 'string'
    ? { is: 'found-bag', path: next.value }
    : { is: 'another', another: next.value };
}

/** Of the bag that is open nothing is thrown away before it is left. */
function discardFrom(log: SessionLog, bag: string | null, sure: boolean, words: Words): BenchMessage {
  const named = bag === null ? null : bagToOpen(bag, null, words);
  if (bag !== null && !(named?.ok && named.value === log.path))
    return tellOf(discardNamed(bag, sure, (what) => words.logs.askDiscard(what, bag), words));
  const { job, done, name } = log.session;
  const finished = done === job.stepCount;
  const called = sayState({ name, finished, stepsDone: done, stepCount: job.stepCount }, words);
  return sure ? { is: 'discard-this', called } : told(words.logs.askDiscard(called, ''));
}

/** Often enough that a drive which is back is noticed, seldom enough to cost nothing (a rule of thumb). */
const retryMs = 2000;

/** While something is not on disk, tries again every few seconds and says how it stands. Gives how to stop. */
export function keepSaving(log: SessionLog, { send, get }: Pick<BenchStore, 'send' | 'get'>): () => void {
  const timer = setInterval(() => {
    if (log.status.state === 'saved') return;
    send({ is: 'saving', saving: log.retry() });
    tellTakenOver(log, send, get().words);
  }, retryMs);
  timer.unref();
  return () => clearInterval(timer);
}

/** A bag to match the one that is open, ready to be begun; or why none can be made, in a sentence. */
function planAnother(log: SessionLog, wish: MatchWish, words: Words): Result<Another, string> {
  const matching = matchingBag(log, wish);
  if (!matching.ok) return fail(words.bagEnd.cannotMatch(formatFault(matching.fault, words)));
  const { file, plan } = matching.value;
  const { widthCm, depthCm } = plan.size;
  return succeed({
    another: file,
    notes: notesLike(log.session, words),
    told: words.bagEnd.another(file.brief.name, log.session.name, wish.is, widthCm, depthCm),
  });
}

interface Matching {
  readonly file: BriefFile;
  readonly plan: Plan;
}

function matchingBag(
  { session, state }: SessionLog,
  wish: MatchWish,
): Result<Matching, BriefFault | PlanFault> {
  const { json, brief } = state.begun;
  const isLearned = withLearned({ json, brief: { ...brief, learned: null } }).brief.learned !== null;
  const name = nextName(session.name, takenNames());
  const file = readBriefFile(matchBrief(state.begun, session, wish, { name, isLearned }));
  if (!file.ok) return file;
  const matching = withLearned(file.value);
  const plan = planBag(matching.brief);
  return plan.ok ? succeed({ file: matching, plan: plan.value }) : plan;
}

const takenNames = (): readonly string[] =>
  listLogs(logFolder()).flatMap(({ tally }) => (tally.ok ? [tally.value.name] : []));
