import type { Brief, RelaxedState } from './brief.ts';
import { jamTightness, limpTightness, plainAspect } from './fabric.ts';
import { classesOfGauge, classesOfPitch, type Gauge, modelLoopLength, type YarnClass } from './gauge.ts';
import type { Plan } from './plan.ts';
import { type AlikeTo, alikeNeighbours } from './shades.ts';
import type { KnittedStripe } from './stripe-sequence.ts';
import { reserveOf } from './yarn-needs.ts';

/** What the maker should know before casting on. The bag can be made all the same. */
export type PlanWarning =
  | {
      readonly code: 'plan/yarn-short';
      readonly yarn: string;
      readonly shortGrams: number;
      readonly reservePercent: number;
    }
  | { readonly code: 'plan/scraps-unused'; readonly yarns: readonly string[] }
  /** Yarns on the mast at once: in the feeder or parked. */
  | { readonly code: 'plan/many-yarns-at-once'; readonly yarns: number }
  | { readonly code: 'plan/width-far-off'; readonly wantedCm: number; readonly gotCm: number }
  | { readonly code: 'plan/depth-far-off'; readonly wantedCm: number; readonly gotCm: number }
  /** What goes in is thicker than the boxed bottom is deep. */
  | { readonly code: 'plan/base-too-narrow'; readonly boxedCm: number; readonly thicknessCm: number }
  | { readonly code: 'plan/eyelets-too-few'; readonly made: number }
  | { readonly code: 'plan/rehang-needed'; readonly afterRows: readonly number[] }
  | { readonly code: 'plan/swatch-guessed' }
  | { readonly code: 'plan/swatch-to-be-washed'; readonly finishState: RelaxedState }
  | { readonly code: 'plan/swatch-turned'; readonly aspect: number }
  | { readonly code: 'plan/stitch-shape-odd'; readonly aspect: number }
  | { readonly code: 'plan/loop-length-odd'; readonly measuredMm: number; readonly modelMm: number }
  | { readonly code: 'plan/fabric-limp'; readonly tightness: number }
  | { readonly code: 'plan/fabric-jams'; readonly tightness: number }
  | { readonly code: 'plan/stitch-wider-than-pitch'; readonly stitchMm: number; readonly pitchMm: number }
  | {
      readonly code: 'plan/yarn-unusual-for-bed';
      readonly pitchMm: number;
      readonly than: 'finer' | 'thicker';
      readonly usual: readonly YarnClass[];
    }
  /** Neighbouring yarns that are hard to tell apart. */
  | {
      readonly code: 'plan/shades-alike';
      readonly first: string;
      readonly second: string;
      readonly to: AlikeTo;
    }
  | {
      readonly code: 'plan/stripes-alike';
      readonly first: number;
      readonly second: number;
      readonly yarn: string;
    };

/** Beyond this share of the wish, one repeat is too coarse to call the size met (rule of thumb). */
const farOff = 0.1;
/** A measured loop this much away from the model was probably measured wrong (rule of thumb). */
const loopFarOff = 0.25;
/** Arms that a tension mast has at the most (common practice). */
const mastArms = 4;

/** Worked out where it is asked for, since few plans are read; what weighs most comes first. */
export const planWarnings = (plan: Plan): readonly PlanWarning[] => [
  ...yarnWarnings(plan),
  ...sizeWarnings(plan),
  ...bedWarnings(plan),
  ...swatchWarnings(plan),
  ...fabricWarnings(plan),
  ...stripeWarnings(plan.stripes),
  ...shadeWarnings(plan),
];

const shadeWarnings = ({ brief, stripes }: Plan): PlanWarning[] =>
  alikeNeighbours(brief, stripes).map((pair) => ({ code: 'plan/shades-alike', ...pair }));

function yarnWarnings({ yarn, brief, stripes, gauge }: Plan): PlanWarning[] {
  const short = yarn
    .filter(({ shortGrams }) => shortGrams)
    .map(
      (need): PlanWarning => ({
        code: 'plan/yarn-short',
        yarn: need.yarn,
        shortGrams: need.shortGrams ?? 0,
        reservePercent: Math.round(100 * reserveOf(gauge)) - 100,
      }),
    );
  const lastRows = new Map(stripes.map((stripe) => [stripe.yarn, stripe.lastRow]));
  const unused = brief.scraps
    ? [...brief.yarns.keys()].filter(
        (name) => !lastRows.has(name) && name !== brief.cord.yarn && name !== brief.hem?.yarn,
      )
    : [];
  const atOnce = lastRows.size > mastArms ? mostAtOnce(stripes, lastRows) : 0;
  return [
    ...short,
    ...(unused.length > 0 ? [{ code: 'plan/scraps-unused', yarns: unused } as const] : []),
    ...(atOnce > mastArms ? [{ code: 'plan/many-yarns-at-once', yarns: atOnce } as const] : []),
  ];
}

/** The most yarns that have been begun and are not done with at any one stripe. */
function mostAtOnce(stripes: readonly KnittedStripe[], lastRows: ReadonlyMap<string, number>): number {
  const onMast = new Set<string>();
  let most = 0;
  for (const { yarn, lastRow } of stripes) {
    onMast.add(yarn);
    most = Math.max(most, onMast.size);
    if (lastRows.get(yarn) === lastRow) onMast.delete(yarn);
  }
  return most;
}

function sizeWarnings({ size, eyelets, brief, begun }: Plan): PlanWarning[] {
  const { widthCm, depthCm, wantedWidthCm, wantedDepthCm } = size;
  const off = (got: number, wanted: number | null): wanted is number =>
    !begun && wanted !== null && Math.abs(got - wanted) > farOff * wanted;
  return [
    ...(off(widthCm, wantedWidthCm)
      ? [{ code: 'plan/width-far-off', wantedCm: wantedWidthCm, gotCm: widthCm } as const]
      : []),
    ...(off(depthCm, wantedDepthCm)
      ? [{ code: 'plan/depth-far-off', wantedCm: wantedDepthCm, gotCm: depthCm } as const]
      : []),
    ...baseWarnings(brief),
    ...(eyelets.used.length < 2 ? [{ code: 'plan/eyelets-too-few', made: eyelets.made } as const] : []),
  ];
}

function baseWarnings({ bag, boxedCm }: Brief): PlanWarning[] {
  if (bag.by !== 'contents' || boxedCm === 0 || bag.thicknessCm <= boxedCm) return [];
  return [{ code: 'plan/base-too-narrow', boxedCm, thicknessCm: bag.thicknessCm }];
}

function bedWarnings({ hangings }: Plan): PlanWarning[] {
  const afterRows = hangings.slice(0, -1).map((hanging) => hanging.throughRow);
  return afterRows.length > 0 ? [{ code: 'plan/rehang-needed', afterRows }] : [];
}

function swatchWarnings({ brief, gauge }: Plan): PlanWarning[] {
  const { loopLengthMm } = gauge;
  const { stitchMm, rowMm } = gauge.asKnitted;
  const { state } = brief.swatch;
  const aspect = stitchMm / rowMm;
  const modelMm = modelLoopLength(stitchMm, rowMm, state);
  const loopOdd = Math.abs(loopLengthMm / modelMm - 1) > loopFarOff;
  const washed = state === 'dry-relaxed' && brief.finishState !== state;
  return [
    ...(brief.swatch.guess ? [{ code: 'plan/swatch-guessed' } as const] : []),
    ...(washed ? [{ code: 'plan/swatch-to-be-washed', finishState: brief.finishState } as const] : []),
    ...aspectWarnings(aspect),
    ...(loopOdd ? [{ code: 'plan/loop-length-odd', measuredMm: loopLengthMm, modelMm } as const] : []),
  ];
}

function aspectWarnings(aspect: number): PlanWarning[] {
  if (aspect >= plainAspect.least && aspect <= plainAspect.most) return [];
  const turned = 1 / aspect >= plainAspect.least && 1 / aspect <= plainAspect.most;
  return [{ code: turned ? 'plan/swatch-turned' : 'plan/stitch-shape-odd', aspect }];
}

function fabricWarnings({ brief, gauge, tightness }: Plan): PlanWarning[] {
  return [
    ...(tightness < limpTightness ? [{ code: 'plan/fabric-limp', tightness } as const] : []),
    ...(tightness > jamTightness ? [{ code: 'plan/fabric-jams', tightness } as const] : []),
    ...pitchWarnings(brief, gauge),
  ];
}

/** The stitch against the bed: wider than its needles stand, or of a class that the bed does not usually knit. */
function pitchWarnings({ bed: { pitchMm } }: Brief, { asKnitted: { stitchMm } }: Gauge): PlanWarning[] {
  if (stitchMm > pitchMm) return [{ code: 'plan/stitch-wider-than-pitch', stitchMm, pitchMm }];
  const usual = classesOfPitch(pitchMm);
  const own = classesOfGauge(stitchMm);
  const [finest, coarsest] = [usual[0], usual.at(-1)];
  if (!finest || !coarsest || own.some((one) => usual.includes(one))) return [];
  const than = (own[0]?.number ?? -1) < finest.number ? 'finer' : 'thicker';
  return [{ code: 'plan/yarn-unusual-for-bed', pitchMm, than, usual }];
}

/** Neighbours of one yarn read as one wide stripe; the graft makes the last and the first neighbours too. */
function stripeWarnings(stripes: readonly KnittedStripe[]): PlanWarning[] {
  if (stripes.every(({ yarn }) => yarn === stripes[0]?.yarn)) return [];
  const second = stripes.findIndex((stripe, i) => stripe.yarn === stripes.at(i - 1)?.yarn);
  if (second < 0) return [];
  const yarn = stripes[second]?.yarn ?? '';
  return [
    { code: 'plan/stripes-alike', first: stripes.at(second - 1)?.number ?? 0, second: second + 1, yarn },
  ];
}
