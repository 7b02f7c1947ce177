/**
 * Starts the program where it and Node are one file: its parts are in that file, and what V8 compiled of it by the same
 * Node. Node lets such a program load only what Node itself brings, so the parts are put together here.
 */
import Module from 'node:module';
import { dirname, join } from 'node:path';
import { getAsset, getRawAsset } from 'node:sea';
import { Script } from 'node:vm';

const folder = dirname(process.execPath);
const loaded = new Map<string, object>();

function load(name: string, kept?: Buffer): object {
  const known = loaded.get(name);
  if (known) return known;
  const its = { exports: {} };
  loaded.set(name, its.exports);
  const script = new Script(Module.wrap(getAsset(name, 'utf8')), {
    filename: name,
    ...(kept ? { cachedData: kept } : {}),
  });
  script.runInThisContext()(its.exports, requirePart, its, join(folder, name), folder);
  loaded.set(name, its.exports);
  return its.exports;
}

const requirePart = (name: string): unknown => (name.startsWith('./') ? load(name.slice(2)) : require(name));

/** Missing where the file was made on another system. */
function readKept(): Buffer | undefined {
  try {
    return Buffer.from(getRawAsset('compiled.bin') as ArrayBuffer);
  } catch {
    return undefined;
  }
}

load('program.js', readKept());
