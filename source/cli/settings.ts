/** The maker's settings, and the language by them: both before anything is said. */

import { settingsFolder } from '../files/data-folders.ts';
import { type LoadedSettings, loadSettings } from '../files/settings-file.ts';
import { languageChoices, type Settings } from '../settings/settings.ts';
import { unitsFor } from '../shared/units.ts';
import { formatFileFault } from '../wording/file-faults.ts';
import { loadWords, wantedLanguage } from '../wording/language.ts';
import { englishWords, type Language, type Words, wordsIn } from '../wording/words.ts';
import { complain } from './outcome.ts';

interface Settled {
  readonly settings: LoadedSettings;
  readonly words: Words;
}

/** JSON is the same for everybody, so its language is left English. */
export async function settle(json: boolean): Promise<Settled> {
  const settings = loadSettings(settingsFolder());
  return { settings, words: json ? englishWords : await wordsFor(settings.settings) };
}

/** What is said, in the language and the units of these settings. */
export const wordsFor = async ({ language, units }: Settings): Promise<Words> =>
  wordsIn(await speakIn(language), unitsFor(units));

/** The language that this setting asks for. */
export const speakIn = (setting: string): Promise<Language> =>
  loadWords(wantedLanguage(setting, process.env));

/** Says on standard error what is wrong with the settings. */
export function complainOfSettings(loaded: LoadedSettings, words: Words): void {
  for (const sentence of sayOfSettings(loaded, words)) complain(sentence);
}

/** What is wrong with the settings, and what is done instead. */
export function sayOfSettings(
  { settings, setAsideAs, fault, refused }: LoadedSettings,
  words: Words,
): readonly string[] {
  const { settings: say } = words;
  return [
    ...(setAsideAs === null ? [] : [say.setAside(setAsideAs)]),
    ...(fault ? [formatFileFault(fault, words)] : []),
    ...(refused.length > 0 ? [say.refused(refused)] : []),
    ...(languageChoices.includes(settings.language)
      ? []
      : [say.noSuchLanguage(settings.language, languageChoices)]),
  ];
}
