/**
 * The largest bag of the wanted shape that the weighed yarns allow. The wish is scaled with the width of each whole
 * repeat; every yarn's need grows with it, so the last repeat for which there is enough is found by halving. Yarns that
 * were not weighed are taken to be enough.
 */
import { fail, type Result, succeed } from '../shared/result.ts';
import type { Brief } from './brief.ts';
import { leastRowsOf, neighbourOf, rowMultipleOf } from './choose-size.ts';
import type { PlanFault } from './fault.ts';
import { type Gauge, gaugeOf } from './gauge.ts';
import { widthCm } from './geometry.ts';
import { usableNeedles } from './hangings.ts';
import {
  countsAt,
  isSound,
  lastHolding,
  mostWidthCm,
  type NearShape,
  nearShapes,
  planCounts,
  type Shaped,
  shapeOf,
} from './near-shapes.ts';
import { readBrief } from './parse-brief.ts';
import type { Plan } from './plan.ts';
import { type KeptYarn, type Shelf, yarnOf } from './shelf.ts';
import { usualSwatch } from './usual.ts';

/** What keeps the bag from being one repeat larger. */
export type BagLimit =
  | { readonly by: 'yarn'; readonly yarn: string }
  | { readonly by: 'scraps' }
  | { readonly by: 'bed'; readonly usable: number }
  | { readonly by: 'width'; readonly mostCm: number };

export interface BagFromYarn {
  /** Planned by its counts; its size has no wish of its own. */
  readonly plan: Plan;
  readonly limit: BagLimit;
  /** Bags of nearly the shape that the yarn makes larger still. */
  readonly nearShapes: readonly NearShape[];
}

/** The bag, or why there is none: nothing is weighed, the smallest takes too much, or a fault of its own. */
export function planFromYarn(brief: Brief): Result<BagFromYarn, PlanFault> {
  if ([...brief.yarns.values()].every(({ grams }) => grams === null)) {
    return fail({ code: 'plan/yarn-not-weighed' });
  }
  const gauge = gaugeOf(brief);
  const shape = shapeOf(brief, gauge);
  if (!shape.ok) return shape;
  const shaped = { ...brief, bag: shape.value };
  const planAt = (repeats: number) =>
    planCounts(shaped, gauge, countsAt(shaped, gauge, rowsAt(brief, repeats)));
  const most = mostRepeats(shaped, gauge);
  const repeats = brief.scraps ? lastSound(most, planAt) : lastSoundByHalving(most, planAt);
  const plan = planAt(Math.max(0, repeats));
  if (!plan.ok) return plan;
  if (repeats < 0) return fail(tooLittleYarn(shaped, gauge, plan.value));
  const limit = repeats < most ? yarnLimit(planAt(repeats + 1)) : roomLimit(shaped, gauge, plan.value.rows);
  return succeed({ plan: plan.value, limit, nearShapes: nearShapes(shaped, gauge, plan.value) });
}

const rowsAt = (brief: Brief, repeats: number): number => leastRowsOf(brief) + repeats * rowMultipleOf(brief);

type PlanAt = (repeats: number) => Result<Plan, PlanFault>;

/** Repeats above the least that neither the bed nor the greatest width forbids; both only ever forbid more. */
function mostRepeats(shaped: Shaped, gauge: Gauge): number {
  const fits = (repeats: number): boolean => {
    const counts = countsAt(shaped, gauge, rowsAt(shaped, repeats));
    return counts.stitches < usableNeedles(shaped) && widthCm(counts, gauge) <= mostWidthCm;
  };
  return Math.max(0, lastHolding(1 << 16, fits));
}

const lastSoundByHalving = (most: number, planAt: PlanAt): number =>
  lastHolding(most, (repeats) => isSound(planAt(repeats)));

/** Scraps may fail at one number of stripes and do at the next, so every one is tried, the largest first. */
function lastSound(most: number, planAt: PlanAt): number {
  for (let repeats = most; repeats >= 0; repeats--) if (isSound(planAt(repeats))) return repeats;
  return -1;
}

function tooLittleYarn(shaped: Shaped, gauge: Gauge, plan: Plan): PlanFault {
  const { yarn, shortGrams } = mostShort(plan);
  const counts = { stitches: plan.stitches, rows: plan.rows, shapeEveryRows: shaped.shapeEveryRows };
  return { code: 'plan/yarn-for-no-bag', yarn, shortGrams, smallest: neighbourOf(shaped, gauge, counts) };
}

const yarnLimit = (next: Result<Plan, PlanFault>): BagLimit =>
  next.ok ? { by: 'yarn', yarn: mostShort(next.value).yarn } : { by: 'scraps' };

function roomLimit(shaped: Shaped, gauge: Gauge, rows: number): BagLimit {
  const usable = usableNeedles(shaped);
  const next = countsAt(shaped, gauge, rows + rowMultipleOf(shaped));
  return next.stitches >= usable ? { by: 'bed', usable } : { by: 'width', mostCm: mostWidthCm };
}

function mostShort(plan: Plan): { readonly yarn: string; readonly shortGrams: number } {
  const short = plan.yarn.map(({ yarn, shortGrams }) => ({ yarn, shortGrams: shortGrams ?? 0 }));
  return short.reduce((most, one) => (one.shortGrams > most.shortGrams ? one : most));
}

// What could be made of what lies on the shelf: the largest bag of each two yarns that are about as thick, and of all of them a
// bag of scraps, in the proportion of the dice bag. Yarns go together up to a fifth of difference (rule of thumb).

interface CouldMake {
  readonly yarns: readonly string[];
  readonly scraps: boolean;
  /** Null where they are too little for any. */
  readonly size: { readonly widthCm: number; readonly depthCm: number } | null;
}

export interface Possibilities {
  readonly bed: string;
  /** Null where the swatch is a guess from the bed. */
  readonly swatch: string | null;
  readonly bags: readonly CouldMake[];
}

const thicknessApart = 1.2;
/** More would take long to plan and to read. */
const mostYarns = 6;
const shape = { widthCm: 14, depthCm: 18 };

/** Null where no bed is kept, or fewer than two weighed yarns: then nothing can be said. */
export function couldMake({ beds, swatches, yarns }: Shelf): Possibilities | null {
  const [bed] = Object.entries(beds);
  const [swatch] = Object.entries(swatches);
  const weighed = Object.entries(yarns)
    .filter(([, { grams }]) => grams !== null && grams > 0)
    .toSorted(([, one], [, other]) => (other.grams ?? 0) - (one.grams ?? 0))
    .slice(0, mostYarns);
  if (!bed || weighed.length < 2) return null;
  const frame = {
    name: 'shelf',
    bed: bed[1],
    swatch: swatch?.[1] ?? { ...usualSwatch(bed[1].pitchMm), guess: true },
    bag: shape,
  };
  const alike = mostAlike(weighed);
  return {
    bed: bed[0],
    swatch: swatch?.[0] ?? null,
    bags: [
      ...pairsOf(weighed).map((pair) => largest(frame, pair, false)),
      ...(alike.length > 2 ? [largest(frame, alike, true)] : []),
    ],
  };
}

type NamedYarn = readonly [name: string, yarn: KeptYarn];

const isAsThick = (one: KeptYarn, other: KeptYarn): boolean =>
  Math.max(one.metresPer100g, other.metresPer100g) <=
  thicknessApart * Math.min(one.metresPer100g, other.metresPer100g);

/** As many as go with one of them. */
const mostAlike = (yarns: readonly NamedYarn[]): readonly NamedYarn[] =>
  yarns
    .map(([, one]) => yarns.filter(([, other]) => isAsThick(one, other)))
    .reduce((most, group) => (group.length > most.length ? group : most), []);

const pairsOf = (yarns: readonly NamedYarn[]): readonly (readonly [NamedYarn, NamedYarn])[] =>
  yarns.flatMap((one, i) =>
    yarns.slice(i + 1).flatMap((other) => (isAsThick(one[1], other[1]) ? [[one, other] as const] : [])),
  );

function largest(frame: object, yarns: readonly NamedYarn[], scraps: boolean): CouldMake {
  const names = yarns.map(([name]) => name);
  const brief = readBrief({
    ...frame,
    yarns: Object.fromEntries(yarns.map(([name, yarn]) => [name, yarnOf(yarn)])),
    ...(scraps ? { scraps: { rows: 2 } } : { stripes: names.map((yarn) => ({ yarn, rows: 2 })) }),
  });
  const planned = brief.ok ? planFromYarn(brief.value) : brief;
  const size = planned.ok && 'plan' in planned.value ? planned.value.plan.size : null;
  return { yarns: names, scraps, size: size && { widthCm: size.widthCm, depthCm: size.depthCm } };
}
