import * as topics from './topics.de.ts';
import { typed } from './typed.de.ts';
import type { Language } from './words.ts';

export const inGerman: Language = {
  code: 'de',
  writing: { decimalMark: ',', and: 'und', or: 'oder' },
  topics,
  typed,
};
