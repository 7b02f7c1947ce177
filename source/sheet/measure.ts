export const formatAngle = (degrees: number): string => `${Math.round(degrees)}°`;

/** `5` or `5–8`. */
export const span = (from: number, through: number): string =>
  from === through ? `${from}` : `${from}–${through}`;
