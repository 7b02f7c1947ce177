/** Which language is spoken, and where its words come from: each but English is loaded when it is first wanted. */
import { inEnglish, type Language, type LanguageCode } from './words.ts';

const loaders: Readonly<Record<LanguageCode, () => Promise<Language>>> = {
  en: async () => inEnglish,
  de: async () => ({
    code: 'de',
    writing: { decimalMark: ',', and: 'und', or: 'oder' },
    topics: (await import('./german.ts')).german,
  }),
};

/** English for whatever code is not here. */
export const loadWords = (code: string): Promise<Language> =>
  code in loaders ? loaders[code as LanguageCode]() : loaders.en();
