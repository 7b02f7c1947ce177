/** The maker's settings, and the language by them: both before anything is said. */
import { settingsFolder } from '../files/data-folders.ts';
import { type LoadedSettings, loadSettings } from '../files/settings-file.ts';
import type { Settings } from '../settings/settings.ts';
import { languageChoices } from '../settings/settings.ts';
import { unitsFor } from '../shared/units.ts';
import { loadWords, wantedLanguage } from '../wording/language.ts';
import { englishWords, type Language, type Words, wordsIn } from '../wording/words.ts';
import { complain } from './outcome.ts';

export interface Settled {
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

/** Says on standard error what is wrong with the settings. The words for it are loaded only where something is. */
export async function complainOfSettings(loaded: LoadedSettings, words: Words): Promise<void> {
  if (areSound(loaded)) return;
  const { sayOfSettings } = await import('./say-of-settings.ts');
  for (const sentence of sayOfSettings(loaded, words)) complain(sentence);
}

const areSound = ({ settings: { language }, setAsideAs, fault, refused }: LoadedSettings): boolean =>
  setAsideAs === null && fault === null && refused.length === 0 && languageChoices.includes(language);
