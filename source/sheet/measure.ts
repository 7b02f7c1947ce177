export const formatAngle = (degrees: number): string => `${Math.round(degrees)}°`;

/** `1 row`, `3 rows`. */
export const counted = (howMany: number, one: string, many = `${one}s`): string =>
  `${howMany} ${howMany === 1 ? one : many}`;

/** `5` or `5–8`. */
export const span = (from: number, through: number): string =>
  from === through ? `${from}` : `${from}–${through}`;
