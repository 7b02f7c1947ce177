// Goes on with a log, or begins it, and presses as fast as it can. Says after each press how many events are saved.
import { writeSync } from 'node:fs';
import { openSessionLog, startSessionLog } from '../../source/files/open-log.ts';
import { briefOf } from '../fixtures/plan-of.ts';
import { smallBrief } from '../journal/sample-log.ts';

const path = process.argv[2] as string;
const opened = openSessionLog({ path });
// Killed just after the file was made, it is there and empty.
const isNew = !opened.ok && ['files/missing', 'journal/no-header'].includes(opened.fault.code);
const log = isNew ? startSessionLog({ path, brief: briefOf(smallBrief), program: '0.1.0' }) : opened;

if (!log.ok) {
  writeSync(1, `refused ${log.fault.code}\n`);
} else {
  for (;;) {
    const { session } = log.value;
    const command =
      session.done < 200 ? ({ do: 'confirm', count: 1 } as const) : ({ do: 'go', done: 3 } as const);
    log.value.append(command);
    const { session: after, state, status } = log.value;
    if (status.state === 'saved') writeSync(1, `saved ${state.events} ${after.done}\n`);
  }
}
