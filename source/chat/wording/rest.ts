import type { Words } from '../../wording/words.ts';

export const sayRestYourHands = (words: Words): string =>
  words.say`Rest your hands and shoulders for a few minutes (rule of thumb).`;

/** Said once, at the first press after half an hour. */
export const sayRest = (words: Words): string =>
  `${words.say`That was half an hour of work.`} ${sayRestYourHands(words)}`;

export const speakRest = (words: Words): string => words.say`half an hour, rest your hands`;
