/** What the thread of a `JournalThread` runs. */
import { workerData } from 'node:worker_threads';
import { serveJournal } from './serve-journal.ts';

serveJournal(workerData);
