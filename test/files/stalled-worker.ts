// Writes a log like the program's own thread, on a disk that hangs in the system as long as there is a pipe named
// `stalled` beside the log that nobody reads from.
import { closeSync, existsSync, openSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { workerData } from 'node:worker_threads';
import { systemDisk } from '../../source/files/disk.ts';
import { serveJournal, type ThreadData } from '../../source/files/serve-journal.ts';

const given: ThreadData = workerData;
const gate = join(dirname(given.beginning.path), 'stalled');

const wait = (): void => {
  if (existsSync(gate)) closeSync(openSync(gate, 'w'));
};

serveJournal(given, {
  ...systemDisk,
  write: (file, bytes) => {
    wait();
    return systemDisk.write(file, bytes);
  },
  create: (path) => {
    wait();
    return systemDisk.create(path);
  },
});
