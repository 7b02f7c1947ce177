import type { BoxedBottom } from './boxed.ts';
import type { Brief, RelaxedState } from './brief.ts';
import type { CordPlan } from './cord.ts';
import type { EyeletChoice } from './eyelets.ts';
import type { GaugeAim } from './fabric.ts';
import type { Neighbour } from './fault.ts';
import type { Gauge, StitchSize } from './gauge.ts';
import type { Hanging } from './hangings.ts';
import type { Hem } from './hem.ts';
import type { Saving } from './savings.ts';
import type { AlikeTo } from './shades.ts';
import type { KnittedStripe } from './stripe-sequence.ts';
import type { GraftTail, Lining, SeamTail } from './tails.ts';
import type { YarnClass } from './yarn-class.ts';
import type { YarnNeed } from './yarn-needs.ts';

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

export type { Neighbour };

export interface Size {
  readonly widthCm: number;
  readonly depthCm: number;
  readonly depthBelowCordCm: number;
  readonly mouthCm: number;
  readonly stripeAngleDeg: number;
  readonly wantedWidthCm: number | null;
  readonly wantedDepthCm: number | null;
  readonly wantedDepthBelowCordCm: number | null;
  /** Expanded uncertainties, k = 2. */
  readonly widthUncertaintyCm: number;
  readonly depthUncertaintyCm: number;
}

/** A bag worked out in full. Only `planBag` makes one, so whoever holds a plan may trust it. */
export interface Plan {
  readonly brief: Brief;
  readonly gauge: Gauge;
  readonly stitches: number;
  /** Rows round the tube, the grafted row included. */
  readonly rows: number;
  readonly knittedRows: number;
  readonly shapings: number;
  /** In the state in which the bag is used. */
  readonly size: Size;
  /** In the swatch's own state; null where the bag is used in that. */
  readonly asKnitted: (StitchSize & { readonly widthCm: number; readonly depthCm: number }) | null;
  readonly neighbours: readonly Neighbour[];
  readonly stripes: readonly KnittedStripe[];
  readonly hangings: readonly Hanging[];
  /** What would save a hanging; empty where there is one only, and once work has begun. */
  readonly savings: readonly Saving[];
  readonly needlesUsed: number;
  readonly yarn: readonly YarnNeed[];
  readonly tightness: number;
  /** Grams of a square metre of the fabric as the swatch measures it. */
  readonly fabricGramsPerM2: number;
  readonly aim: GaugeAim;
  /** What holds the start open until the graft: the yarn of a row with a tenth more, and an end at each side. */
  readonly ravelCordCm: number;
  readonly graft: GraftTail;
  readonly seam: SeamTail;
  /** Null for a flat bag. */
  readonly boxed: BoxedBottom | null;
  /** Null where the mouth edge stays as it is. */
  readonly hem: Hem | null;
  /** What a lining would be cut to. */
  readonly lining: Lining;
  readonly cord: CordPlan;
  readonly eyelets: EyeletChoice;
  /** Work has begun: the size has been chosen, and nothing is advised that would change what hangs. */
  readonly begun: boolean;
}
