/**
 * What could be made of what lies on the shelf: the largest bag of each two yarns that are about as thick, and of all of them a
 * bag of scraps, in the proportion of the dice bag. Yarns go together up to a fifth of difference (rule of thumb).
 */
import { planFromYarn } from './from-yarn.ts';
import { readBrief } from './parse-brief.ts';
import { type KeptYarn, type Shelf, yarnOf } from './shelf.ts';
import { usualSwatch } from './usual.ts';

export interface CouldMake {
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
