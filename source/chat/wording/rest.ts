import type { Words } from '../../wording/words.ts';

export const sayRestYourHands = (words: Words): string => words.prompt.rest.rest;

/** Said once, at the first press after half an hour. */
export const sayRest = (words: Words): string => `${words.prompt.rest.halfHour} ${sayRestYourHands(words)}`;

export const speakRest = (words: Words): string => words.prompt.rest.aloud;
