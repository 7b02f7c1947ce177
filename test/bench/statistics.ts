/** The value that a share of all values does not exceed: nearest rank (common practice, no source). */
export function percentile(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)] ?? Number.NaN;
}

export const median = (values: readonly number[]): number => percentile(values, 0.5);
