import { isDeepStrictEqual } from 'node:util';
import { answer } from '../chat/line.ts';
import {
  formatFileFault,
  formatLoss,
  formatLost,
  formatSaveStatus,
  sayDiskHolds,
  saySavedElsewhere,
} from '../chat/wording/file-faults.ts';
import { sayPractice } from '../chat/wording/first-run.ts';
import { formatTornTail } from '../chat/wording/journal-faults.ts';
import { sayBags } from '../chat/wording/logs.ts';
import { sayNotes, sayWelcome } from '../chat/wording/place.ts';
import { saySpeechTrouble } from '../chat/wording/settings.ts';
import { formatWarning } from '../chat/wording/warnings.ts';
import { systemClock } from '../files/clock.ts';
import { logFolder, settingsFolder } from '../files/data-folders.ts';
import { listLogs } from '../files/log-list.ts';
import type { SessionLog } from '../files/session-log.ts';
import { saveSetting } from '../files/settings-file.ts';
import type { Plan } from '../planning/plan.ts';
import { createAnnouncer } from '../screen/bench/announce.ts';
import type { Leaving } from '../screen/bench/bench-keys.ts';
import type { Announce, BenchStore } from '../screen/bench/bench-state.ts';
import { createBenchStore } from '../screen/bench/bench-store.ts';
import { keepSaving } from '../screen/bench/keep-saving.ts';
import { runPlain } from '../screen/bench/plain.ts';
import { tellOfSlowDisk } from '../screen/bench/slow-disk.ts';
import { createSpeech } from '../screen/bench/speech.ts';
import type { LineSource } from '../screen/parts/line-source.ts';
import type { SettingChange, Settings } from '../settings/settings.ts';
import { unitsFor } from '../shared/units.ts';
import { currentWords } from '../wording/current.ts';
import { practiceBrief, type WorkOptions } from './open-work.ts';
import { complain, exitCodes, prepareScreen, workIsKeptIn } from './outcome.ts';
import { ownRowMinutes } from './pace.ts';
import { endByForce, saveInThread } from './save-in-thread.ts';
import { speakIn } from './settings.ts';

export interface BenchOptions extends WorkOptions {
  readonly settings: Settings;
  /** Said first. */
  readonly told: readonly string[];
  /** Lines to read from; null where there is a screen. */
  readonly source: LineSource | null;
}

/** Guides until the maker leaves, or wants to plan another bag. */
export async function workIn(log: SessionLog, options: BenchOptions): Promise<number | 'new'> {
  workIsKeptIn(log.path);
  const speech = createSpeech({
    onTrouble: (trouble, program) => store.say(answer(saySpeechTrouble(trouble, program))),
  });
  const announce = createAnnouncer({ speech, write: (text) => process.stdout.write(text) });
  const store = benchFor(log, options, announce);
  tellOfSlowDisk(() => log.status, store);
  const stopSaving = keepSaving({ status: () => log.status, retry: () => log.retry() }, store);
  let hangs = (): boolean => false;
  const onShown = (): void =>
    void saveInThread(log).then((hasStuckThread) => {
      hangs = hasStuckThread;
    });
  announce(store.get(), 'again');
  let lost: string | null = null;
  let end: number | 'new' = exitCodes.input;
  try {
    end = await guide(store, options.source, onShown);
  } finally {
    speech.stop();
    stopSaving();
    lost = formatLost(log.leave());
  }
  if (lost !== null) {
    const status = complain(lost);
    if (end !== 'new') end = status;
  }
  if (!hangs()) return end;
  complain(sayDiskHolds());
  endByForce();
  return end;
}

/** The bench, with all that it needs of the machine. */
function benchFor(log: SessionLog, options: BenchOptions, announce: Announce): BenchStore {
  const store = createBenchStore({
    session: log.session,
    record: log.append,
    settings: options.settings,
    lines: answer(...welcome(log, options)),
    trouble: () => formatSaveStatus(log.status),
    keep: (change) => void keep(change).then((trouble) => trouble && store.say(answer(trouble))),
    speakIn: async (setting) => void (await speakIn(setting)),
    writeSheet: async (plan, out) => {
      const { saveSheet } = await import('./sheet.ts');
      const words = currentWords(unitsFor(store.get().settings.units));
      const written = saveSheet(plan, { out, forClass: false, words });
      return written.ok ? written.value : written.fault;
    },
    saveElsewhere: (out) => {
      const saved = log.saveElsewhere(out);
      return saved.ok ? saySavedElsewhere(log.path) : formatFileFault(saved.fault);
    },
    lossOnLeaving: () => formatLoss(log.retry()),
    minutesPerRow: ownRowMinutes,
    nowMs: () => systemClock.now().getTime(),
    bags: () => sayBags(listLogs(logFolder())),
    announce,
  });
  return store;
}

/** What is said before the first step. */
const welcome = (log: SessionLog, options: BenchOptions): readonly string[] => [
  ...options.told,
  ...tornNotice(log),
  ...sayWelcome(log.session, unitsFor(options.settings.units)),
  ...(isPracticeBegun(log, options) ? [sayPractice()] : []),
  ...(log.session.done === 0 ? shadesAtStart(log.session.job.plan) : []),
  ...notesBefore(log, options),
];

/** Yarns that look alike are best changed before the first of them is cast on. */
const shadesAtStart = ({ warnings }: Plan): readonly string[] =>
  warnings.filter(({ code }) => code === 'plan/shades-alike').map((warning) => formatWarning(warning));

const isPracticeBegun = ({ session, state }: SessionLog, options: WorkOptions): boolean =>
  session.done === 0 && isDeepStrictEqual(state.header.brief, practiceBrief(options).json);

const tornNotice = ({ tornKeptAs }: SessionLog): readonly string[] =>
  tornKeptAs === null ? [] : [formatTornTail(tornKeptAs)];

/** What was noted on the bag that this one is to match. */
const notesBefore = ({ session }: SessionLog, { like }: BenchOptions): readonly string[] =>
  like === undefined || session.notes.length === 0 ? [] : sayNotes(session);

/** Keeps a setting for the next time; what went wrong, or null. */
async function keep({ name, value }: SettingChange): Promise<string | null> {
  const saved = await saveSetting(settingsFolder(), name, value);
  return saved.ok ? null : formatFileFault(saved.fault);
}

async function guide(
  store: BenchStore,
  source: LineSource | null,
  onShown: () => void,
): Promise<number | 'new'> {
  if (source !== null) {
    const plainly = runPlain(store, source, (text) => process.stdout.write(`${text}\n`));
    onShown();
    return endOf(await plainly);
  }
  prepareScreen();
  const { runBench } = await import('../screen/bench/run-bench.tsx');
  const bench = runBench(store);
  setImmediate(onShown);
  return endOf(await bench);
}

function endOf(leaving: Leaving): number | 'new' {
  if (leaving === 'new') return leaving;
  return leaving === 'interrupted' ? exitCodes.interrupted : exitCodes.done;
}
