/** The maker's settings, and the language by them: both before anything is said. */
import { settingsFolder } from '../files/data-folders.ts';
import { type LoadedSettings, loadSettings } from '../files/settings-file.ts';
import { languageChoices, loadLanguage, wantedLanguage } from '../languages/languages.ts';
import { speak } from '../shared/say.ts';
import { unitsFor } from '../shared/units.ts';
import { speakNow } from '../wording/current.ts';
import { loadWords } from '../wording/language.ts';
import { inEnglish, type Language, type Words, wordsIn } from '../wording/words.ts';
import { complain } from './outcome.ts';

export interface Settled {
  readonly settings: LoadedSettings;
  readonly words: Words;
}

/** JSON is the same for everybody, so its language is left English. */
export async function settle(json: boolean): Promise<Settled> {
  const settings = loadSettings(settingsFolder());
  const { language, units } = settings.settings;
  const spoken = json ? inEnglish : await speakIn(language);
  return { settings, words: wordsIn(spoken, unitsFor(units)) };
}

/** From here on all is said in the language that this setting asks for. */
export async function speakIn(setting: string): Promise<Language> {
  const code = wantedLanguage(setting, process.env);
  const spoken = await loadWords(code);
  speak(await loadLanguage(code));
  speakNow(spoken);
  return spoken;
}

/** Says on standard error what is wrong with the settings. The words for it are loaded only where something is. */
export async function complainOfSettings(loaded: LoadedSettings): Promise<void> {
  if (areSound(loaded)) return;
  const { sayOfSettings } = await import('./say-of-settings.ts');
  for (const sentence of sayOfSettings(loaded)) complain(sentence);
}

const areSound = ({ settings: { language }, setAsideAs, fault, refused }: LoadedSettings): boolean =>
  setAsideAs === null && fault === null && refused.length === 0 && languageChoices.includes(language);
