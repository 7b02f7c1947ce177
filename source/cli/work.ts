import { isDeepStrictEqual } from 'node:util';
import { answer } from '../chat/talk.ts';
import { journalWorker } from '../files/data-folders.ts';
import type { SessionLog } from '../files/session-log.ts';
import type { Plan } from '../planning/plan.ts';
import { planWarnings } from '../planning/warnings.ts';
import { type BenchState, type BenchStore, type Leaving, startBench } from '../screen/bench/bench-state.ts';
import { runPlain } from '../screen/bench/run-plain.ts';
import { type Announce, createAnnouncer, createSpeech, type SpeechTrouble } from '../screen/bench/speech.ts';
import { createBenchStore } from '../screen/bench/update-bench.ts';
import type { LineSource } from '../screen/parts/line-source.ts';
import { atOnce, type BeforeShown, createBeforeShown } from '../screen/parts/screen-output.ts';
import type { Settings } from '../settings/settings.ts';
import { unitsFor } from '../shared/units.ts';
import { sayBy } from '../wording/by-kind.ts';
import { formatLost } from '../wording/file-faults.ts';
import { sayNotes, sayWelcome } from '../wording/place.ts';
import { sayTools } from '../wording/steps.ts';
import { type Words, wordsIn } from '../wording/words.ts';
import { benchEffects, keepSaving, sayTakenOver } from './bench-effects.ts';
import { practiceBrief, type WorkOptions } from './open-work.ts';
import { complain, endByForce, exitCodes, prepareScreen, print, workIsKeptIn } from './outcome.ts';
import { speakIn } from './settings.ts';

interface BenchOptions extends WorkOptions {
  readonly settings: Settings;
  /** Said first. */
  readonly told: readonly string[];
  /** Lines to read from; null where there is a screen. */
  readonly source: LineSource | null;
  /** Answers as JSON, one object a line. */
  readonly json: boolean;
}

/** Where a maker goes from a bag without leaving the program. */
export type Onward = Exclude<Leaving, 'left' | 'interrupted'>;

/** Guides until the maker leaves, or wants another bag. */
export async function workIn(log: SessionLog, options: BenchOptions): Promise<number | Onward> {
  workIsKeptIn(log.path);
  const speech = createSpeech({
    onTrouble: (trouble) => store.send({ is: 'told', lines: answer(saySpeechTrouble(trouble, store.get())) }),
  });
  const announce: Announce = options.json
    ? () => undefined
    : createAnnouncer({ speech, write: (text) => process.stdout.write(text) });
  const beforeShown = options.source === null ? createBeforeShown() : atOnce;
  const store = await benchFor(log, options, announce, beforeShown);
  const stopSaving = keepSaving(log, store);
  let hangs = (): boolean => false;
  const onShown = (): void =>
    void saveInThread(log).then((hasStuckThread) => {
      hangs = hasStuckThread;
    });
  announce(store.get(), 'again');
  let lost: string | null = null;
  let end: number | Onward = exitCodes.input;
  try {
    end = await guide(store, options, beforeShown.now, onShown);
  } finally {
    speech.stop();
    stopSaving();
    const { words } = store.get();
    lost = formatLost(log.leave(), words) ?? sayTakenOver(log, words);
  }
  if (lost !== null) {
    const status = complain(lost);
    if (typeof end === 'number') end = status;
  }
  if (!hangs()) return end;
  complain(store.get().words.files.holds);
  endByForce();
  return end;
}

async function benchFor(
  log: SessionLog,
  options: BenchOptions,
  announce: Announce,
  beforeShown: BeforeShown,
): Promise<BenchStore> {
  const { settings } = options;
  const language = await speakIn(settings.language);
  const words = wordsIn(language, unitsFor(settings.units));
  const { session, status: saving } = log;
  const lines = answer(...welcome(log, options, words));
  return createBenchStore(
    startBench({ session, settings, language, words, saving, lines }),
    benchEffects(log, announce, beforeShown),
  );
}

const saySpeechTrouble = (trouble: SpeechTrouble, { words }: BenchState): string =>
  trouble.code === 'no-program'
    ? words.settings.noSpeechProgram(trouble.lookedFor)
    : words.settings.speechFailed(trouble.program);

/** What is said before the first step. */
const welcome = (log: SessionLog, options: BenchOptions, words: Words): readonly string[] => [
  ...options.told,
  ...tornNotice(log, words),
  ...log.foreign.map((sign) => words.logs.foreign[sign]),
  ...sayWelcome(log.session, words),
  ...(log.session.done === 0
    ? [...sayTools(log.session.job.plan, words), ...shadesAtStart(log.session.job.plan, words)]
    : []),
  ...(isPracticeBegun(log) ? [words.firstRun.practice] : []),
  ...notesBefore(log, options),
];

/** Yarns that look alike are best changed before the first of them is cast on. */
const shadesAtStart = (plan: Plan, words: Words): readonly string[] =>
  planWarnings(plan)
    .filter(({ code }) => code === 'plan/shades-alike')
    .map((warning) => sayBy('code', words.warnings, warning));

const isPracticeBegun = ({ session, state }: SessionLog): boolean =>
  session.done === 0 && isDeepStrictEqual(state.header.brief, practiceBrief().json);

const tornNotice = ({ tornKeptAs }: SessionLog, words: Words): readonly string[] =>
  tornKeptAs === null ? [] : [words.files.tornTail(tornKeptAs)];

/** What was noted on the bag that this one is to match. */
const notesBefore = ({ session }: SessionLog, { like, words }: BenchOptions): readonly string[] =>
  like === undefined || session.notes.length === 0 ? [] : sayNotes(session, words);

async function guide(
  store: BenchStore,
  { source, json }: BenchOptions,
  beforeShown: () => void,
  onShown: () => void,
): Promise<number | Onward> {
  if (source !== null) {
    const run = json ? (await import('./work-json.ts')).runJson : runPlain;
    const plainly = run(store, source, print);
    onShown();
    return endOf(await plainly);
  }
  prepareScreen();
  const { runBench } = await import('../screen/bench/bench-app.tsx');
  const bench = runBench(store, beforeShown);
  setImmediate(onShown);
  return endOf(await bench);
}

function endOf(leaving: Leaving): number | Onward {
  if (leaving === 'left') return exitCodes.done;
  return leaving === 'interrupted' ? exitCodes.interrupted : leaving;
}

/**
 * Leaves a log's file to another thread. Gives what tells whether a thread hangs in the system. Called once the first
 * screen stands, which starting a thread would hold up.
 */
async function saveInThread(log: SessionLog): Promise<() => boolean> {
  const { JournalThread, hasStuckThread } = await import('../files/journal-thread.ts');
  log.saveIn((file) => JournalThread.goOn(file, { script: journalWorker() }));
  return hasStuckThread;
}
