/** Which language is spoken, and where its words come from: each but English is loaded when it is first wanted. */
import type { LanguageCode } from '../settings/settings.ts';
import { inEnglish, type Language } from './words.ts';

const loaders: Readonly<Record<LanguageCode, () => Promise<Language>>> = {
  en: async () => inEnglish,
  de: async () => (await import('./german.ts')).inGerman,
};

/** English for whatever code is not here. */
export const loadWords = (code: string): Promise<Language> =>
  code in loaders ? loaders[code as LanguageCode]() : loaders.en();

type Environment = Readonly<Record<string, string | undefined>>;

/**
 * The language that a setting asks for. What the system asks for stands in the first of these variables that is set and
 * not empty (POSIX.1-2017, 8.2).
 */
export const wantedLanguage = (setting: string, { LC_ALL, LC_MESSAGES, LANG }: Environment): string =>
  setting === 'auto' ? (LC_ALL || LC_MESSAGES || LANG || '').slice(0, 2).toLowerCase() : setting;
