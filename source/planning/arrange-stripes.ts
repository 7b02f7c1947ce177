/**
 * Stripes of scraps in an order in which neighbours differ, the last and the first too, each yarn spread as evenly as
 * that allows. Round a tube, that can be done for any counts of which none is more than half of all the stripes.
 */

/** How many stripes each yarn knits. */
export type StripeCounts = ReadonlyMap<string, number>;

/** Yarn by stripe; `closing` knits the last one. Needs counts of which none exceeds half their sum. */
export function arrangeStripes(counts: StripeCounts, closing: string): readonly string[] {
  const total = [...counts.values()].reduce((sum, one) => sum + one, 0);
  const left = new Map(counts).set(closing, (counts.get(closing) ?? 0) - 1);
  const laid: string[] = [];
  for (let gap = total - 1; gap > 0; gap--) {
    const yarn = mostOverdue(left, counts, laid.at(-1) ?? closing, closing, gap);
    left.set(yarn, (left.get(yarn) ?? 0) - 1);
    laid.push(yarn);
  }
  return [...laid, closing];
}

/** Of the yarns that leave the rest of the gap fillable, the one whose next stripe should have come first. */
function mostOverdue(
  left: StripeCounts,
  counts: StripeCounts,
  before: string,
  closing: string,
  gap: number,
): string {
  let best = { yarn: '', due: Number.POSITIVE_INFINITY };
  for (const [yarn, stillLeft] of left) {
    if (stillLeft === 0 || yarn === before) continue;
    const count = counts.get(yarn) ?? 0;
    const due = (count - stillLeft + 0.5) / count;
    if (due < best.due && fillable(left, yarn, closing, gap - 1)) best = { yarn, due };
  }
  if (best.yarn === '') throw new Error(`no yarn can follow ${before} with ${gap} stripes to go`);
  return best.yarn;
}

/** Whether what is left, less one stripe of `before`, fills `gap` stripes between `before` and `closing`. */
function fillable(left: StripeCounts, before: string, closing: string, gap: number): boolean {
  if (gap === 0) return before !== closing;
  for (const [yarn, count] of left) {
    const next = yarn === before ? 1 : 0;
    const free = Math.max(0, gap - next - (yarn === closing ? 1 : 0));
    if (count - next > Math.ceil(free / 2)) return false;
  }
  return true;
}
