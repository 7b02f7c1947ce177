/** Numbers as the rest of the program compares and writes them. */

/** What is left of a comparison when rounding errors are taken out of it. */
export const hair = 1e-9;

/** The middle value, or the mean of the two in the middle; null of nothing. */
export function medianOf(values: readonly number[]): number | null {
  const sorted = [...values].sort((a, b) => a - b);
  const [low, high] = [sorted[(sorted.length - 1) >> 1], sorted[sorted.length >> 1]];
  return low === undefined || high === undefined ? null : (low + high) / 2;
}

/** The years that ISO 8601 writes with four digits: clocks and logs may say anything. */
const earliestMs = Date.parse('0000-01-01T00:00:00.000Z');
const latestMs = Date.parse('9999-12-31T23:59:59.999Z');

/** As `2031-03-04T18:00:00.000Z`, in UTC; the nearest such instant where the year has more digits or there is none. */
export const instantOf = (ms: number): string =>
  new Date(Math.min(latestMs, Math.max(earliestMs, ms || 0))).toISOString();
