import { mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { inScratch, namesIn, scratchFolder } from '../../test/fixtures/disk/scratch.ts';
import { readSettings, settingNames, settingsTable } from '../settings/settings.ts';
import { loadSettings, saveSetting } from './settings-file.ts';

const stored = (folder: string): unknown => JSON.parse(readFileSync(join(folder, 'settings.json'), 'utf8'));

function folderWith(content: string | Uint8Array): string {
  const folder = scratchFolder();
  writeFileSync(join(folder, 'settings.json'), content);
  return folder;
}

describe('the table of settings', () => {
  it('has a default that it allows itself, for every one', () => {
    for (const name of settingNames) {
      const setting = settingsTable[name];
      expect([name, setting.check(setting.default)]).toEqual([name, true]);
    }
  });

  it('takes what is right, and the default for what is not', () => {
    const given = {
      units: 'in',
      pause: 'reckless',
      pedalGapMs: 5,
      pedals: { b: 'confirm' },
      colour: 'plum',
    };
    const { settings, refused } = readSettings(given);
    expect(settings).toMatchObject({
      units: 'in',
      pause: 'usual',
      pedalGapMs: 100,
      pedals: { b: 'confirm' },
    });
    expect(refused).toEqual(['pause', 'pedalGapMs']);
    expect(settings).not.toHaveProperty('colour');
  });

  it.each([
    ['units', 'inches'],
    ['language', 'English'],
    ['bell', 1],
    ['pedals', { b: 'go' }],
    ['pedals', ['confirm']],
    ['pedals', null],
    ['pedalGapMs', 99.5],
    ['pedalGapMs', '100'],
  ])('refuses %s: %j', (name, value) => {
    expect(readSettings({ [name]: value }).refused).toEqual([name]);
  });
});

describe('the settings file', () => {
  it('need not be there', () => {
    const folder = inScratch('nowhere');
    expect(loadSettings(folder)).toMatchObject({ settings: { units: 'cm' }, setAsideAs: null, fault: null });
  });

  it('keeps what is stored, private to the user, and what other versions stored in it', async () => {
    const folder = inScratch('config', 'slantwise');
    expect(await saveSetting(folder, 'pedals', { '.': 'confirm', 'ctrl+alt+r': 'back' })).toMatchObject({
      ok: true,
    });
    writeFileSync(
      join(folder, 'settings.json'),
      JSON.stringify({ ...(stored(folder) as object), later: 7, bell: 'loud' }),
    );
    await saveSetting(folder, 'units', 'in');
    expect(stored(folder)).toEqual({
      pedals: { '.': 'confirm', 'ctrl+alt+r': 'back' },
      later: 7,
      bell: 'loud',
      units: 'in',
    });
    expect(loadSettings(folder)).toMatchObject({ settings: { units: 'in', bell: false }, refused: ['bell'] });
    expect(statSync(join(folder, 'settings.json')).mode & 0o777).toBe(0o600);
    expect(statSync(folder).mode & 0o777).toBe(0o700);
  });

  it.each([
    ['half a file', '{"units": "in"'],
    ['a list', '[1, 2]'],
    ['an empty file', ''],
    ['bytes that are not text', Uint8Array.of(0xff, 0xfe, 0x7b)],
  ])('that is %s is set aside and never written over', async (_, content) => {
    const folder = folderWith(content);
    const aside = join(folder, 'settings.json.unreadable-1');
    expect(loadSettings(folder)).toMatchObject({ settings: { units: 'cm' }, setAsideAs: aside, fault: null });
    expect(Buffer.compare(readFileSync(aside), Buffer.from(content as string))).toBe(0);
    await saveSetting(folder, 'bell', true);
    expect(stored(folder)).toEqual({ bell: true });
    writeFileSync(join(folder, 'settings.json'), 'broken again');
    await saveSetting(folder, 'bell', false);
    expect(namesIn(folder)).toEqual([
      'settings.json',
      'settings.json.unreadable-1',
      'settings.json.unreadable-2',
    ]);
    expect(Buffer.compare(readFileSync(aside), Buffer.from(content as string))).toBe(0);
  });

  it('may begin with a byte order mark', async () => {
    const folder = folderWith('\uFEFF{"units": "in"}');
    expect(loadSettings(folder)).toMatchObject({ settings: { units: 'in' }, setAsideAs: null });
    await saveSetting(folder, 'bell', true);
    expect(stored(folder)).toEqual({ units: 'in', bell: true });
  });

  it('where a folder stands in its place is set aside like any other', () => {
    const folder = scratchFolder();
    mkdirSync(join(folder, 'settings.json'));
    expect(loadSettings(folder).setAsideAs).toBe(join(folder, 'settings.json.unreadable-1'));
  });
});
