import { describe, expect, it } from 'vitest';
import { openMemoryBench } from '../../test/fixtures/bench-in-memory.ts';
import { languageChoices } from '../settings/settings.ts';
import { loadWords, wantedLanguage } from './language.ts';
import { inEnglish } from './words.ts';

describe('the language that is wanted', () => {
  // POSIX.1-2017, 8.2: LC_ALL, else the variable of the category, else LANG; an empty one counts as not set.
  it.each([
    [{ LANG: 'de_DE.UTF-8' }, 'de'],
    [{ LANG: 'en_GB.UTF-8', LC_MESSAGES: 'de_AT.UTF-8' }, 'de'],
    [{ LANG: 'de_DE.UTF-8', LC_MESSAGES: 'de_DE.UTF-8', LC_ALL: 'en_GB.UTF-8' }, 'en'],
    [{ LANG: 'de_DE.UTF-8', LC_MESSAGES: '', LC_ALL: '' }, 'de'],
    [{ LANG: 'DE' }, 'de'],
  ])('is by the system, %j, %s', (environment, code) => {
    expect(wantedLanguage('auto', environment)).toBe(code);
  });

  it('is by the setting, whatever the system', () => {
    expect(wantedLanguage('en', { LC_ALL: 'de_DE.UTF-8' })).toBe('en');
    expect(wantedLanguage('de', {})).toBe('de');
  });

  it.each(['C.UTF-8', 'POSIX', 'fr_FR.UTF-8', ''])(
    'is English where the system asks for %j',
    async (LANG) => {
      expect(await loadWords(wantedLanguage('auto', { LANG }))).toBe(inEnglish);
    },
  );

  it.each(languageChoices.filter((code) => code !== 'auto'))('%s can be had', async (code) => {
    expect((await loadWords(code)).code).toBe(code);
  });
});

describe('at the bench', () => {
  it('another language takes effect with the answer, and is kept', async () => {
    const bench = openMemoryBench();
    bench.type('language de', 0);
    await bench.store.settled();
    expect(bench.said(1)).toBe('Ab hier auf Deutsch.');
    expect(bench.kept).toEqual([{ name: 'language', value: 'de' }]);
    expect(bench.store.get().words.amounts.length(13.7)).toBe('13,7 cm');
    bench.type('language en', 10_000);
    await bench.store.settled();
    expect(bench.said(1)).toBe('From here on in English.');
  });

  it('one that is not here is refused', () => {
    const bench = openMemoryBench();
    bench.type('language fr', 0);
    expect(bench.said(1)).toContain('auto, en or de');
    expect(bench.kept).toEqual([]);
  });
});
