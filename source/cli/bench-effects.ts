/** All that a bench wants done, and how: the log, the settings, files, bell and voice. */
import { answer } from '../chat/line.ts';
import { formatFileFault, saySavedElsewhere } from '../chat/wording/file-faults.ts';
import { sayBags } from '../chat/wording/logs.ts';
import { systemClock } from '../files/clock.ts';
import { logFolder, settingsFolder } from '../files/data-folders.ts';
import { listLogs } from '../files/log-list.ts';
import type { SessionLog } from '../files/session-log.ts';
import { saveSetting } from '../files/settings-file.ts';
import type { Announce } from '../screen/bench/announce.ts';
import type { BenchMessage, BenchStore } from '../screen/bench/bench-state.ts';
import type { BenchEffects } from '../screen/bench/bench-store.ts';
import { ownRowMinutes } from './pace.ts';
import { speakIn } from './settings.ts';

const told = (...texts: readonly string[]): BenchMessage => ({ is: 'told', lines: answer(...texts) });

export const benchEffects = (log: SessionLog, announce: Announce): BenchEffects => ({
  record: ({ command }, send) => {
    const recorded = log.append(command);
    // The bench has carried the same command out on the same session.
    if (!recorded.ok) throw new Error(`the log refuses what the bench has done: ${recorded.fault.code}`);
    send({ is: 'recorded', atMs: systemClock.now().getTime(), saving: log.status });
  },
  announce: ({ why }, _, state) => announce(state, why),
  'save-and-leave': ({ how }, send) => send({ is: 'tried-to-save', how, saving: log.retry() }),
  'load-language': async ({ setting }, send) =>
    send({ is: 'language', setting, language: await speakIn(setting) }),
  keep: async ({ change: { name, value } }, send) => {
    const saved = await saveSetting(settingsFolder(), name, value);
    if (!saved.ok) send(told(formatFileFault(saved.fault)));
  },
  'write-sheet': async ({ plan, out }, send, { words }) => {
    const { saveSheet } = await import('./sheet.ts');
    const written = saveSheet(plan, { out, forClass: false, words });
    send(told(written.ok ? written.value : written.fault));
  },
  'save-elsewhere': ({ out }, send) => {
    const saved = log.saveElsewhere(out);
    send(told(saved.ok ? saySavedElsewhere(log.path) : formatFileFault(saved.fault)));
    send({ is: 'saving', saving: log.status });
  },
  'list-bags': (_, send) => send(told(...sayBags(listLogs(logFolder())))),
  'read-pace': (_, send) => send({ is: 'pace', minutesPerRow: ownRowMinutes() }),
});

/** Often enough that a drive which is back is noticed, seldom enough to cost nothing (a rule of thumb). */
const retryMs = 2000;

/** While something is not on disk, tries again every few seconds and says how it stands. Gives how to stop. */
export function keepSaving(log: SessionLog, { send }: Pick<BenchStore, 'send'>): () => void {
  const timer = setInterval(() => {
    if (log.status.state !== 'saved') send({ is: 'saving', saving: log.retry() });
  }, retryMs);
  timer.unref();
  return () => clearInterval(timer);
}
