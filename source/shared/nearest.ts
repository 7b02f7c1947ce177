/**
 * The known word that a misspelt one was probably meant to be. Distance is the fewest letters put in, left out,
 * swapped for another or changed places with a neighbour (Damerau 1964 and Levenshtein 1966, restricted form).
 */

/** The nearest of `known`, the first on a tie; null when none is near. Case does not count. */
export function nearest(word: string, known: readonly string[]): string | null {
  const typed = word.toLowerCase();
  let best: string | null = null;
  let bestDistance = Math.max(1, Math.floor(typed.length / 3)) + 1;
  for (const one of known) {
    const distance = nearness(typed, one.toLowerCase(), bestDistance);
    if (distance < bestDistance) [best, bestDistance] = [one, distance];
  }
  return best;
}

/** A word broken off after three letters or more is as good as one letter wrong. */
function nearness(typed: string, known: string, limit: number): number {
  if (typed.length < 2 && typed !== known) return limit;
  if (typed.length >= 3 && known.startsWith(typed)) return known === typed ? 0 : 1;
  return Math.abs(typed.length - known.length) >= limit ? limit : editDistance(typed, known);
}

export function editDistance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const changed = (last[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      row[j] = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, changed);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) row[j] = Math.min(row[j] ?? 0, (beforeLast[j - 2] ?? 0) + 1);
    }
    [beforeLast, last] = [last, row];
  }
  return last[b.length] ?? 0;
}
