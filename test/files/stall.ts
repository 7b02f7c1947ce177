import { spawnSync } from 'node:child_process';
import { closeSync, constants, openSync, rmSync } from 'node:fs';
import { join } from 'node:path';

/** From now on the disk of a folder does not answer; gives how to release it. */
export function stall(folder: string): () => void {
  const gate = join(folder, 'stalled');
  const { status, stderr } = spawnSync('mkfifo', [gate]);
  if (status !== 0) throw new Error(String(stderr));
  return () => {
    const reader = openSync(gate, constants.O_RDONLY | constants.O_NONBLOCK);
    rmSync(gate);
    closeSync(reader);
  };
}
