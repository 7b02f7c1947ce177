import { answer } from '../chat/line.ts';
import {
  formatFileFault,
  formatLoss,
  formatLost,
  formatSaveStatus,
  saySavedElsewhere,
} from '../chat/wording/file-faults.ts';
import { formatTornTail } from '../chat/wording/journal-faults.ts';
import { sayBags } from '../chat/wording/logs.ts';
import { sayNotes, sayWelcome } from '../chat/wording/place.ts';
import { sayHowToLook } from '../chat/wording/player.ts';
import { saySettingsRefused, saySettingsSetAside, saySpeechTrouble } from '../chat/wording/settings.ts';
import { logFolder, settingsFolder } from '../files/data-folders.ts';
import { listLogs } from '../files/log-list.ts';
import type { SessionLog } from '../files/session-log.ts';
import { type LoadedSettings, loadSettings, saveSetting } from '../files/settings-file.ts';
import type { InUse } from '../journal/file-fault.ts';
import { createAnnouncer } from '../screen/announce.ts';
import { type BenchStore, createBenchStore } from '../screen/bench-store.ts';
import { runPlain } from '../screen/plain.ts';
import { tellOfSlowDisk } from '../screen/slow-disk.ts';
import { createSpeech } from '../screen/speech.ts';
import type { SettingChange } from '../settings/settings.ts';
import { unitsFor } from '../shared/units.ts';
import { shadeWarnings } from '../sheet/colour/shades.ts';
import { formatShadeWarning } from '../sheet/page/content.ts';
import { openWork, type WorkOptions } from './open-work.ts';
import { complain, exitCodes } from './outcome.ts';
import { ownRowMinutes } from './pace.ts';
import { hasScreen, prepareScreen } from './terminal.ts';

/** Knits a bag: opens or begins its log, and guides until the maker leaves. */
export async function work(options: WorkOptions & { readonly plain: boolean }): Promise<number> {
  const opened = openWork(options);
  if (!opened.ok) return refuse(opened.fault, options.plain);
  const log = opened.value;
  const loaded = loadSettings(settingsFolder());
  const units = unitsFor(loaded.settings.units);
  const speech = createSpeech({
    onTrouble: (trouble, program) => store.say(answer(saySpeechTrouble(trouble, program))),
  });
  const announce = createAnnouncer({ speech, write: (text) => process.stdout.write(text) });
  const store = createBenchStore({
    session: log.session,
    record: log.append,
    settings: loaded.settings,
    lines: answer(
      ...settingsNotice(loaded),
      ...tornNotice(log),
      ...sayWelcome(log.session, units),
      ...(log.session.done === 0 ? shadeWarnings(log.session.job.plan).map(formatShadeWarning) : []),
      ...notesBefore(log, options),
    ),
    trouble: () => formatSaveStatus(log.status),
    keep: (change) => void keep(change).then((trouble) => trouble && store.say(answer(trouble))),
    writeSheet: async (plan, out) => {
      const { saveSheet } = await import('./sheet.ts');
      const written = saveSheet(plan, { out, forClass: false });
      return written.ok ? written.value : written.fault;
    },
    saveElsewhere: (out) => {
      const saved = log.saveElsewhere(out);
      return saved.ok ? saySavedElsewhere(log.path) : formatFileFault(saved.fault);
    },
    lossOnLeaving: () => formatLoss(log.retry()),
    minutesPerRow: ownRowMinutes,
    bags: () => sayBags(listLogs(logFolder())),
    announce,
  });
  tellOfSlowDisk(() => log.status, store);
  announce(store.get(), 'again');
  let lost: string | null = null;
  let end: number = exitCodes.input;
  try {
    end = await guide(store, options.plain);
  } finally {
    speech.stop();
    lost = formatLost(log.leave());
  }
  return lost === null ? end : complain(lost);
}

/** Why there is nothing to work on; a bag that is open elsewhere may be looked at. */
async function refuse(fault: string | InUse, plain: boolean): Promise<number> {
  if (typeof fault === 'string') return complain(fault);
  if (plain || !hasScreen()) return complain(`${formatFileFault(fault)} ${sayHowToLook(fault.path)}`);
  const { look } = await import('./replay.ts');
  return look(fault);
}

const tornNotice = ({ tornKeptAs }: SessionLog): readonly string[] =>
  tornKeptAs === null ? [] : [formatTornTail(tornKeptAs)];

/** What was noted on the bag that this one is to match. */
const notesBefore = ({ session }: SessionLog, { like }: WorkOptions): readonly string[] =>
  like === undefined || session.notes.length === 0 ? [] : sayNotes(session);

const settingsNotice = ({ setAsideAs, fault, refused }: LoadedSettings): readonly string[] => [
  ...(setAsideAs === null ? [] : [saySettingsSetAside(setAsideAs)]),
  ...(fault ? [formatFileFault(fault)] : []),
  ...(refused.length > 0 ? [saySettingsRefused(refused)] : []),
];

/** Keeps a setting for the next time; what went wrong, or null. */
async function keep({ name, value }: SettingChange): Promise<string | null> {
  const saved = await saveSetting(settingsFolder(), name, value);
  return saved.ok ? null : formatFileFault(saved.fault);
}

async function guide(store: BenchStore, plain: boolean): Promise<number> {
  if (plain || !hasScreen()) {
    await runPlain(store, process.stdin, (text) => process.stdout.write(`${text}\n`));
    return exitCodes.done;
  }
  prepareScreen();
  const { runBench } = await import('../screen/run-bench.tsx');
  return (await runBench(store)) === 'interrupted' ? exitCodes.interrupted : exitCodes.done;
}
