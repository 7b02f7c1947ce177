import { plainAspect, workableTightness } from './fabric.ts';
import type { Plan } from './plan.ts';
import type { KnittedStripe } from './stripe-sequence.ts';

/** What the maker should know before casting on. The bag can be made all the same. */
export type PlanWarning =
  | { readonly code: 'plan/reseat-needed'; readonly afterRows: readonly number[] }
  | { readonly code: 'plan/width-far-off'; readonly wantedCm: number; readonly gotCm: number }
  | { readonly code: 'plan/depth-far-off'; readonly wantedCm: number; readonly gotCm: number }
  | { readonly code: 'plan/yarn-short'; readonly yarn: string; readonly shortGrams: number }
  | { readonly code: 'plan/fabric-limp'; readonly tightness: number }
  | { readonly code: 'plan/fabric-jams'; readonly tightness: number }
  | { readonly code: 'plan/stitch-wider-than-pitch'; readonly stitchMm: number; readonly pitchMm: number }
  | { readonly code: 'plan/swatch-turned'; readonly aspect: number }
  | { readonly code: 'plan/stitch-shape-odd'; readonly aspect: number }
  | {
      readonly code: 'plan/stripes-alike';
      readonly first: number;
      readonly second: number;
      readonly yarn: string;
    }
  | { readonly code: 'plan/eyelets-too-few'; readonly made: number };

/** Beyond this share of the wish, one repeat is too coarse to call the size met (rule of thumb). */
const farOff = 0.1;

export const planWarnings = (plan: Omit<Plan, 'warnings'>): readonly PlanWarning[] => [
  ...sizeWarnings(plan),
  ...bedWarnings(plan),
  ...yarnWarnings(plan),
  ...fabricWarnings(plan),
  ...stripeWarnings(plan.stripes, plan.brief.yarns.size),
];

type Unwarned = Omit<Plan, 'warnings'>;

function sizeWarnings({ size, eyelets }: Unwarned): PlanWarning[] {
  const { widthCm, depthCm, wantedWidthCm, wantedDepthCm } = size;
  const off = (got: number, wanted: number | null): wanted is number =>
    wanted !== null && Math.abs(got - wanted) > farOff * wanted;
  return [
    ...(off(widthCm, wantedWidthCm)
      ? [{ code: 'plan/width-far-off', wantedCm: wantedWidthCm, gotCm: widthCm } as const]
      : []),
    ...(off(depthCm, wantedDepthCm)
      ? [{ code: 'plan/depth-far-off', wantedCm: wantedDepthCm, gotCm: depthCm } as const]
      : []),
    ...(eyelets.used.length < 2 ? [{ code: 'plan/eyelets-too-few', made: eyelets.made } as const] : []),
  ];
}

function bedWarnings({ seatings }: Unwarned): PlanWarning[] {
  const afterRows = seatings.slice(0, -1).map((seating) => seating.throughRow);
  return afterRows.length > 0 ? [{ code: 'plan/reseat-needed', afterRows }] : [];
}

const yarnWarnings = ({ yarn }: Unwarned): PlanWarning[] =>
  yarn
    .filter((need) => need.enough === false)
    .map((need) => ({
      code: 'plan/yarn-short',
      yarn: need.yarn,
      shortGrams: (need.withReserveGrams ?? 0) - (need.haveGrams ?? 0),
    }));

function fabricWarnings({ brief, gauge, tightness }: Unwarned): PlanWarning[] {
  const aspect = gauge.stitchMm / gauge.rowMm;
  const { pitchMm } = brief.bed;
  return [
    ...(tightness < workableTightness.least ? [{ code: 'plan/fabric-limp', tightness } as const] : []),
    ...(tightness > workableTightness.most ? [{ code: 'plan/fabric-jams', tightness } as const] : []),
    ...(gauge.stitchMm > pitchMm
      ? [{ code: 'plan/stitch-wider-than-pitch', stitchMm: gauge.stitchMm, pitchMm } as const]
      : []),
    ...aspectWarnings(aspect),
  ];
}

function aspectWarnings(aspect: number): PlanWarning[] {
  if (aspect >= plainAspect.least && aspect <= plainAspect.most) return [];
  const turned = 1 / aspect >= plainAspect.least && 1 / aspect <= plainAspect.most;
  return [{ code: turned ? 'plan/swatch-turned' : 'plan/stitch-shape-odd', aspect }];
}

/** Neighbours of one yarn read as one wide stripe; the graft makes the last and the first neighbours too. */
function stripeWarnings(stripes: readonly KnittedStripe[], yarnCount: number): PlanWarning[] {
  const only = stripes.every((stripe) => stripe.yarn === stripes[0]?.yarn);
  if (only || yarnCount === 1) return [];
  const second = stripes.findIndex((stripe, i) => stripe.yarn === stripes.at(i - 1)?.yarn);
  if (second < 0) return [];
  const yarn = stripes[second]?.yarn ?? '';
  return [
    { code: 'plan/stripes-alike', first: stripes.at(second - 1)?.number ?? 0, second: second + 1, yarn },
  ];
}
