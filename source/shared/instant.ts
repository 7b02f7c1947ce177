/** The years that ISO 8601 writes with four digits: clocks and logs may say anything. */
const earliestMs = Date.parse('0000-01-01T00:00:00.000Z');
const latestMs = Date.parse('9999-12-31T23:59:59.999Z');

/** As `2031-03-04T18:00:00.000Z`, in UTC; the nearest such instant where the year has more digits or there is none. */
export const instantOf = (ms: number): string =>
  new Date(Math.min(latestMs, Math.max(earliestMs, ms || 0))).toISOString();
