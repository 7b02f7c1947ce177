// Works on a new log whose disk stops to answer, and leaves all the same, as the program does.
import { writeSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { endByForce } from '../../source/cli/save-in-thread.ts';
import { hasStuckThread, JournalThread } from '../../source/files/journal-thread.ts';
import { startSessionLog } from '../../source/files/open-log.ts';
import { briefOf } from '../fixtures/plan-of.ts';
import { smallBrief } from '../journal/sample-log.ts';
import { stall } from './stall.ts';

const [, , folder = '', worker = ''] = process.argv;
const log = startSessionLog({ path: `${folder}/bag.jsonl`, brief: briefOf(smallBrief), program: '0.1.0' });
if (!log.ok) throw new Error(log.fault.code);
log.value.saveIn((file) => JournalThread.goOn(file, { script: pathToFileURL(worker), patienceMs: 500 }));
log.value.append({ do: 'confirm', count: 1 });
stall(folder);
log.value.append({ do: 'confirm', count: 1 });
const { state } = log.value.leave();
writeSync(1, `left ${state} ${hasStuckThread()}\n`);
endByForce();
