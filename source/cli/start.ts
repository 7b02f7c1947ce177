#!/usr/bin/env node
/**
 * Starts the program from what the build kept of it compiled, which takes two thirds of the time. What was kept is for one
 * version of Node on one kind of machine. Any other Node keeps for itself what it compiled, from 22.1 on; what it keeps is
 * less, since it does so before anything ran.
 */
import { readFileSync } from 'node:fs';
import Module, { createRequire } from 'node:module';
import { join } from 'node:path';
import { Script } from 'node:vm';
import { crc32 } from 'node:zlib';
import { cacheFolder } from '../files/data-folders.ts';

const path = join(__dirname, 'program.js');
const machine = [process.version, process.platform, process.arch].join('-');

export const compiledPath = join(__dirname, `compiled-${machine}.bin`);

/** Runs the program; what this gives knows what V8 compiled for that, and whether it took what was kept. */
export function run(kept?: Buffer): Script {
  // Not its path: what is kept compiled would hold that of the machine it was built on.
  const options = { filename: 'program.js', ...(kept ? { cachedData: kept } : {}) };
  const program = new Script(Module.wrap(readFileSync(path, 'utf8')), options);
  const its = { exports: {} };
  program.runInThisContext()(its.exports, createRequire(path), its, path, __dirname);
  return program;
}

/** Its sum goes before what was kept: V8 does not look whether a disk gave it back as it was, and a wrong bit ends it. */
export const seal = (kept: Buffer): Buffer => Buffer.concat([sumOf(kept), kept]);

/** CRC-32. Node has it from 20.15 on; one before that keeps nothing, and reads nothing that was kept. */
function sumOf(bytes: Uint8Array): Buffer {
  const sum = Buffer.alloc(sumLength);
  sum.writeUInt32LE(crc32(bytes));
  return sum;
}
/** Four bytes more than the sum: V8 copies what does not begin at a multiple of eight. */
const sumLength = 8;

/** What the build kept, if it is as the build left it. */
export function readCompiled(): Buffer | undefined {
  try {
    const sealed = readFileSync(compiledPath);
    const kept = sealed.subarray(sumLength);
    return sumOf(kept).equals(sealed.subarray(0, sumLength)) ? kept : undefined;
  } catch {
    return undefined;
  }
}

interface KeepingModule {
  /** The name of a function that Node 20 does not have. */
  readonly enableCompileCache?: (folder: string) => void;
}

function start(): void {
  const kept = readCompiled();
  if (kept) return void run(kept);
  (Module as KeepingModule).enableCompileCache?.(cacheFolder());
  createRequire(path)(path);
}

if (require.main === module) start();
