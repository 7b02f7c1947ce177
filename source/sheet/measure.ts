import { say } from '../shared/say.ts';

export const formatAngle = (degrees: number): string => `${Math.round(degrees)}°`;

/** After every `second`, `4th` row. */
export const formatEvery = (rows: number): string => (rows === 2 ? say`second` : say`${rows}th`);

/** `5` or `5–8`. */
export const span = (from: number, through: number): string =>
  from === through ? `${from}` : `${from}–${through}`;
