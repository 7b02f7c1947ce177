import type { Words } from '../wording/words.ts';

export const formatAngle = (degrees: number): string => `${Math.round(degrees)}°`;

/** After every `second`, `4th` row. */
export const formatEvery = (rows: number, words: Words): string =>
  rows === 2 ? words.say`second` : words.say`${rows}th`;

/** `5` or `5–8`. */
export const span = (from: number, through: number): string =>
  from === through ? `${from}` : `${from}–${through}`;
