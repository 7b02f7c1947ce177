import type { SessionLog } from '../files/session-log.ts';
import { journalWorker } from '../files/shipped.ts';

/**
 * Leaves a log's file to another thread. Gives what tells whether a thread hangs in the system. Called once the first
 * screen stands, which starting a thread would hold up.
 */
export async function saveInThread(log: SessionLog): Promise<() => boolean> {
  const { JournalThread, hasStuckThread } = await import('../files/journal-thread.ts');
  log.saveIn((file) => JournalThread.goOn(file, { script: journalWorker() }));
  return hasStuckThread;
}

/**
 * Ends the process although a thread of it hangs: nothing but a signal that nobody listens to does that. Some disks hold
 * even that up until they answer.
 */
export function endByForce(): void {
  process.removeAllListeners('SIGINT');
  process.kill(process.pid, 'SIGINT');
}
