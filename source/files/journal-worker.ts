import { workerData } from 'node:worker_threads';
import { serveJournal } from './serve-journal.ts';

serveJournal(workerData);
