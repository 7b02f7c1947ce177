import { ravelCord } from '../../planning/brief.ts';
import type { Words } from '../../wording/words.ts';

/** A yarn by the name the maker gave it; two have names of ours. */
export function sayYarn(yarn: string, words: Words): string {
  if (yarn === ravelCord) return words.prompt.yarns.ravelCord;
  return yarn === 'waste' ? words.prompt.yarns.waste : yarn;
}
