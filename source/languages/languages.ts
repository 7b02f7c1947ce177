import type { Language } from '../shared/say.ts';

/** Languages besides English, by ISO 639-1; each is loaded when it is first wanted. */
const languages: Readonly<Record<string, () => Promise<Language>>> = {
  de: async () => (await import('./german.ts')).german,
};

/** What the setting may be: `auto` follows the system. */
export const languageChoices: readonly string[] = ['auto', 'en', ...Object.keys(languages)];

/** Null is English, and whatever is not here. */
export const loadLanguage = async (code: string): Promise<Language | null> =>
  (await languages[code]?.()) ?? null;

type Environment = Readonly<Record<string, string | undefined>>;

/**
 * The language that a setting asks for. What the system asks for stands in the first of these variables that is set and
 * not empty (POSIX.1-2017, 8.2).
 */
export const wantedLanguage = (setting: string, { LC_ALL, LC_MESSAGES, LANG }: Environment): string =>
  setting === 'auto' ? (LC_ALL || LC_MESSAGES || LANG || '').slice(0, 2).toLowerCase() : setting;
