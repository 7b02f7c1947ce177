// Opens a log, presses once and says how that went. Run as a user who may not write there.
import { writeSync } from 'node:fs';
import { openSessionLog } from '../../source/files/open-log.ts';
import { loadSettings, saveSetting } from '../../source/files/settings-file.ts';

const [path, settings] = process.argv.slice(2) as [string, string];
const log = openSessionLog({ path });
if (!log.ok) {
  writeSync(1, `log ${log.fault.code}\n`);
} else {
  log.value.append({ do: 'confirm', count: 1 });
  writeSync(1, `log ${JSON.stringify(log.value.status)} ${log.value.session.done}\n`);
}
const { fault, setAsideAs } = loadSettings(settings);
const saved = await saveSetting(settings, 'bell', true);
writeSync(1, `settings ${JSON.stringify({ fault, setAsideAs, saved })}\n`);
