// Tries to open a log, says what came of it, and holds on until it is told by its standard input to leave.
import { writeSync } from 'node:fs';
import { openSessionLog } from '../../source/files/open-log.ts';

const log = openSessionLog({ path: process.argv[2] as string });
writeSync(1, log.ok ? `open ${log.value.status.state}\n` : `refused ${log.fault.code}\n`);
if (log.ok) setInterval(() => {}, 1000);
