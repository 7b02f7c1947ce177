/** The side of a `JournalThread` that the disk may keep waiting. */
import type { MessagePort } from 'node:worker_threads';
import type { FileFault, SaveStatus } from '../journal/fault.ts';
import { type Result, succeed } from '../shared/result.ts';
import { type Disk, systemDisk } from './disk.ts';
import { JournalFile, writeCopy } from './journal-file.ts';
import type { Lock } from './lock.ts';
import type { HeldLog } from './log-file.ts';

/** What the thread begins with: a log to go on with, or the whole of one to write to a new file. */
export type ThreadBeginning =
  | ({ readonly as: 'held' } & HeldLog)
  | { readonly as: 'copy'; readonly path: string; readonly lock: Lock; readonly content: Uint8Array };

export type Request =
  | { readonly ask: 'append'; readonly line: string }
  | { readonly ask: 'save' }
  | { readonly ask: 'close' };

/** How things stand after a request. */
export interface Report {
  readonly status: SaveStatus;
  readonly tornPath: string | null;
}

/** A fault where a copy could not be begun. */
export type ThreadAnswer = Result<Report, FileFault>;

export interface ThreadData {
  readonly port: MessagePort;
  /** Counts the answers, so that the other side can wait for one without an event loop. */
  readonly answered: Int32Array;
  readonly beginning: ThreadBeginning;
}

/** Does what is asked, in order, and answers each request and the beginning. */
export function serveJournal({ port, answered, beginning }: ThreadData, disk: Disk = systemDisk): void {
  const file = begin(beginning, disk);
  const answer = (): void => {
    port.postMessage(reportOf(file));
    Atomics.add(answered, 0, 1);
    Atomics.notify(answered, 0);
  };
  port.on('message', (request: Request) => {
    if (file.ok) perform(file.value, request);
    answer();
    if (request.ask === 'close') port.close();
  });
  answer();
}

function perform(file: JournalFile, request: Request): void {
  switch (request.ask) {
    case 'append':
      file.append(request.line);
      return;
    case 'save':
      file.save();
      return;
    case 'close':
      file.close();
  }
}

const reportOf = (file: Result<JournalFile, FileFault>): ThreadAnswer =>
  file.ok ? succeed({ status: file.value.status, tornPath: file.value.tornPath }) : file;

function begin(beginning: ThreadBeginning, disk: Disk): Result<JournalFile, FileFault> {
  const { path, ...held } = beginning;
  if (beginning.as === 'copy') return writeCopy(path, beginning.content, { lock: beginning.lock, disk });
  const file = new JournalFile(path, { ...held, disk });
  file.save();
  return succeed(file);
}
