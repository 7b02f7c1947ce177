import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach } from 'vitest';
import { openSessionLog, startSessionLog } from '../../source/files/open-log.ts';
import type { SessionLog } from '../../source/files/session-log.ts';
import type { LogReading } from '../../source/journal/read-log.ts';
import { readLog } from '../../source/journal/read-log.ts';
import { briefOf } from '../fixtures/plan-of.ts';
import { smallBrief } from '../journal/sample-log.ts';

const made: string[] = [];

afterEach(() => {
  // A thread that a stalled disk let go may still be writing there.
  for (const folder of made.splice(0))
    rmSync(folder, { recursive: true, force: true, maxRetries: 10, retryDelay: 20 });
});

/** An empty folder that is gone after the test. */
export function scratchFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'slantwise-test-'));
  made.push(folder);
  return folder;
}

export const readingOf = (path: string): LogReading => readLog(readFileSync(path));

/** Steps done according to the file. */
export const stepIn = (path: string): number | undefined => readingOf(path).state?.session.done;

export const namesIn = (folder: string): readonly string[] => readdirSync(folder).sort();

export function start(
  path: string,
  options: Partial<Parameters<typeof startSessionLog>[0]> = {},
): SessionLog {
  const log = startSessionLog({ path, brief: briefOf(smallBrief), program: '0.1.0', ...options });
  if (!log.ok) throw new Error(JSON.stringify(log.fault));
  return log.value;
}

export function open(path: string, options: Partial<Parameters<typeof openSessionLog>[0]> = {}): SessionLog {
  const log = openSessionLog({ path, ...options });
  if (!log.ok) throw new Error(JSON.stringify(log.fault));
  return log.value;
}

export function press(log: SessionLog, times = 1): void {
  for (let i = 0; i < times; i++) {
    const pressed = log.append({ do: 'confirm', count: 1 });
    if (!pressed.ok) throw new Error(pressed.fault.code);
  }
}
