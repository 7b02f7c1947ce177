/**
 * A stripe sequence out of leftovers: whole stripes only, no yarn runs out. Each scrap is allowed the strand that climbs the
 * whole bag, though it may climb less, and the reserve; the one that knits the last stripe also grafts and sews. Stripes
 * are shared out in proportion to the scraps' lengths, and laid so that neighbours differ, the last and the first too, each
 * yarn spread as evenly as that allows. Round a tube, that can be done for any counts of which none is more than half.
 */
import { fail, type Result, succeed } from '../shared/result.ts';
import type { Brief, Stripe } from './brief.ts';
import type { PlanFault } from './fault.ts';
import type { Gauge } from './gauge.ts';
import type { Counts } from './geometry.ts';
import { type HandWork, metresFor, weigh } from './yarn-needs.ts';

/** How many stripes each yarn knits. */
type StripeCounts = ReadonlyMap<string, number>;

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

/** A leftover and the stripes it can knit. */
interface Scrap {
  readonly yarn: string;
  readonly metres: number;
  readonly stripes: number;
  /** Stripes where it also closes the bag. */
  readonly stripesClosing: number;
}

type Capacities = ReadonlyMap<string, number>;

/** One stripe for every `scraps.rows` rows of the bag. */
export function sequenceScraps(
  brief: Brief,
  gauge: Gauge,
  counts: Counts,
  work: HandWork,
): Result<readonly Stripe[], PlanFault> {
  const stripeRows = brief.scraps?.rows ?? 0;
  const total = counts.rows / stripeRows;
  const cordShort = checkCord(brief, gauge, work);
  if (cordShort) return fail(cordShort);
  const scraps = [...brief.yarns].map(([name, yarn]): Scrap => {
    const stripes = (closes: boolean) =>
      countStripes(total, (count) => {
        const rows = count * stripeRows;
        const share = { rows, carriedRows: counts.rows - rows, closes };
        return weigh(metresFor(name, share, gauge, work), yarn, gauge).enough !== false;
      });
    const metres = ((yarn.grams ?? 0) * yarn.metresPer100g) / 100;
    return { yarn: name, metres, stripes: stripes(false), stripesClosing: stripes(true) };
  });
  return sequence(scraps, total, stripeRows);
}

/** The greatest count up to `most` for which there is enough. */
function countStripes(most: number, enough: (count: number) => boolean): number {
  let count = 0;
  while (count < most && enough(count + 1)) count++;
  return count;
}

function checkCord(brief: Brief, gauge: Gauge, work: HandWork): PlanFault | null {
  const yarn = brief.yarns.get(brief.cord.yarn);
  if (!yarn) return null;
  const metres = metresFor(brief.cord.yarn, { rows: 0, carriedRows: 0, closes: false }, gauge, work);
  const { shortGrams } = weigh(metres, yarn, gauge);
  return shortGrams ? { code: 'plan/scraps-cord-short', yarn: brief.cord.yarn, shortGrams } : null;
}

function sequence(
  scraps: readonly Scrap[],
  total: number,
  stripeRows: number,
): Result<readonly Stripe[], PlanFault> {
  const everyOther = Math.floor(total / 2);
  const longestFirst = scraps.toSorted((a, b) => b.metres - a.metres);
  const choices = longestFirst
    .filter(({ stripesClosing }) => stripesClosing > 0)
    .map(({ yarn: closing }) => ({ closing, capacities: capacitiesOf(longestFirst, closing, everyOther) }));
  const choice = choices.find(({ capacities }) => sumOf(capacities) >= total);
  if (choice) {
    const counts = shareOut(longestFirst, choice.capacities, choice.closing, total);
    const yarns = arrangeStripes(counts, choice.closing);
    return succeed(yarns.map((yarn) => ({ yarn, rows: stripeRows })));
  }
  const most = choices.toSorted((a, b) => sumOf(b.capacities) - sumOf(a.capacities))[0];
  if (!most) return fail({ code: 'plan/scraps-no-closer', scraps: longestFirst.map(({ yarn }) => yarn) });
  const canKnit = [...most.capacities].map(([yarn, stripes]) => ({ yarn, stripes }));
  return fail({
    code: 'plan/scraps-too-little',
    stripes: total,
    stripeRows,
    possible: sumOf(most.capacities),
    everyOther,
    scraps: canKnit,
    largest: null,
  });
}

/** Stripes that each scrap can knit, `closing` the last of them; none can knit more than every other stripe. */
const capacitiesOf = (scraps: readonly Scrap[], closing: string, everyOther: number): Capacities =>
  new Map(
    scraps.map(({ yarn, stripes, stripesClosing }) => [
      yarn,
      Math.min(everyOther, yarn === closing ? stripesClosing : stripes),
    ]),
  );

const sumOf = (capacities: Capacities): number =>
  [...capacities.values()].reduce((sum, stripes) => sum + stripes, 0);

/** One stripe for each yarn while there are any, then each next one to the yarn with most metres for every stripe. */
function shareOut(
  scraps: readonly Scrap[],
  capacities: Capacities,
  closing: string,
  total: number,
): StripeCounts {
  const counts = new Map([[closing, 1]]);
  const countOf = (yarn: string): number => counts.get(yarn) ?? 0;
  const claim = ({ yarn, metres }: Scrap): number =>
    countOf(yarn) < (capacities.get(yarn) ?? 0) ? metres / countOf(yarn) : 0;
  for (let given = 1; given < total; given++) {
    const { yarn } = scraps.reduce((best, one) => (claim(one) > claim(best) ? one : best));
    counts.set(yarn, countOf(yarn) + 1);
  }
  return counts;
}
