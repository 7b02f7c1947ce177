import { say } from '../../shared/say.ts';

export const sayRestYourHands = (): string =>
  say`Rest your hands and shoulders for a few minutes (rule of thumb).`;

/** Said once, at the first press after half an hour. */
export const sayRest = (): string => `${say`That was half an hour of work.`} ${sayRestYourHands()}`;

export const speakRest = (): string => say`half an hour, rest your hands`;
