/** A program that stands in for the system's speech program: records what it was asked to say, and can be slow or fail. */
import { chmodSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach } from 'vitest';

export interface StandIn {
  /** The folder to put on the path. */
  readonly folder: string;
  /** What it was asked to say, and the process that was to say it. */
  readonly asked: () => readonly { readonly text: string; readonly pid: number }[];
}

const endings = {
  quick: 'exit 0',
  slow: 'exec sleep 60',
  failing: 'exit 3',
} as const;

export function useStandIn(): (how: keyof typeof endings, name?: string) => StandIn {
  const folders: string[] = [];
  afterEach(() => {
    for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
  });
  return (how, name = 'espeak-ng') => {
    const top = mkdtempSync(join(tmpdir(), 'slantwise-speech-'));
    folders.push(top);
    const folder = join(top, 'bin');
    const record = join(top, 'asked');
    mkdirSync(folder);
    const file = join(folder, name);
    const line = `printf '%s\\t%s\\n' "$$" "\${SLANTWISE_TO_SAY}|$*" >> '${record}'`;
    writeFileSync(file, `#!/bin/sh\n${line}\n${endings[how]}\n`);
    chmodSync(file, 0o755);
    const asked = () => {
      const lines = existsSync(record) ? readFileSync(record, 'utf8').split('\n') : [];
      return lines.slice(0, -1).map((each) => {
        const [pid = '', text = ''] = each.split('\t');
        return { pid: Number(pid), text: text.slice(text.indexOf('|') + 1) };
      });
    };
    return { folder, asked };
  };
}

/** Whether a process does anything still. One that has ended may wait for its parent to ask how; that is not running. */
export function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return !/^\d+ \(.*\) Z/.test(readFileSync(`/proc/${pid}/stat`, 'utf8'));
  } catch (error) {
    // Not every system has /proc.
    return (error as NodeJS.ErrnoException).code === 'ENOENT' && !existsSync('/proc/self');
  }
}
