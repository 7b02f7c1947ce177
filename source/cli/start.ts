#!/usr/bin/env node
/**
 * Starts the program from what the build kept of it compiled, which takes half as long. V8 compiles it anew where that
 * is missing or is not for it: what was kept is for one version of Node on one kind of machine.
 */
import { readFileSync } from 'node:fs';
import Module, { createRequire } from 'node:module';
import { join } from 'node:path';
import { Script } from 'node:vm';

const path = join(__dirname, 'program.js');
const machine = [process.version, process.platform, process.arch].join('-');

export const compiledPath = join(__dirname, `compiled-${machine}.bin`);

export const program = new Script(Module.wrap(readFileSync(path, 'utf8')), {
  // Not its path: what is kept compiled would hold that of the machine it was built on.
  filename: 'program.js',
  cachedData: readIfThere(compiledPath),
});

function readIfThere(file: string): Buffer | undefined {
  try {
    return readFileSync(file);
  } catch {
    return undefined;
  }
}

const module = { exports: {} };
program.runInThisContext()(module.exports, createRequire(path), module, path, __dirname);
