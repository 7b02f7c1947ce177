/**
 * Settings on disk. They are read by hand, since loading conf takes about as long as all else before the first screen;
 * conf writes them, and is loaded when that is first asked for. A file that cannot be read is set aside, never replaced.
 */
import { existsSync, renameSync } from 'node:fs';
import { join } from 'node:path';
import type { FileFault } from '../journal/fault.ts';
import { type ReadSettings, readSettings, type SettingName, type Settings } from '../settings/settings.ts';
import { fail, isGroup, jsonIn, type Result, succeed } from '../shared/result.ts';
import { fileFault, systemDisk, writeFault } from './disk.ts';
import { readBytes } from './read-file.ts';

export interface LoadedSettings extends ReadSettings {
  /** Where a file that could not be read was moved to; null where there was none. */
  readonly setAsideAs: string | null;
  /** Why the file can neither be read nor moved; saving is refused as long as that is so. */
  readonly fault: FileFault | null;
}

const fileName = 'settings.json';
const mostBytes = 1024 * 1024;

export function loadSettings(folder: string): LoadedSettings {
  const path = join(folder, fileName);
  const bytes = readBytes(path, mostBytes);
  const stored = bytes.ok ? jsonIn(bytes.value) : null;
  if (isGroup(stored)) return { ...readSettings(stored), setAsideAs: null, fault: null };
  if (!bytes.ok && bytes.fault.code === 'files/missing')
    return { ...nothingStored, setAsideAs: null, fault: null };
  const aside = setAside(path);
  return aside.ok
    ? { ...nothingStored, setAsideAs: aside.value, fault: null }
    : { ...nothingStored, setAsideAs: null, fault: aside.fault };
}

/** Stores one setting, the others as they are. Its value must be one that the table allows. */
export async function saveSetting<Name extends SettingName>(
  folder: string,
  name: Name,
  value: Settings[Name],
): Promise<Result<null, FileFault>> {
  const { fault } = loadSettings(folder);
  if (fault) return fail(fault);
  try {
    systemDisk.makeFolder(folder);
    const { Conf } = await import('./conf.ts');
    const conf = new Conf({
      cwd: folder,
      configName: 'settings',
      configFileMode: 0o600,
      accessPropertiesByDotNotation: false,
      deserialize: (text) => JSON.parse(text.replace(/^\uFEFF/, '')),
    });
    conf.set(name, value);
    return succeed(null);
  } catch (error) {
    return fail(writeFault(join(folder, fileName), error));
  }
}

const nothingStored = readSettings({});

function setAside(path: string): Result<string, FileFault> {
  let number = 1;
  while (existsSync(`${path}.unreadable-${number}`)) number++;
  const aside = `${path}.unreadable-${number}`;
  try {
    renameSync(path, aside);
    return succeed(aside);
  } catch (error) {
    return fail(fileFault(path, error));
  }
}
