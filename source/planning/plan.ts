import type { BoxedBottom } from './boxed.ts';
import type { Brief } from './brief.ts';
import type { CordPlan } from './cord.ts';
import type { EyeletChoice } from './eyelets.ts';
import type { GaugeAim } from './fabric.ts';
import type { Neighbour } from './fault.ts';
import type { Gauge, StitchSize } from './gauge.ts';
import type { Hanging } from './hangings.ts';
import type { Hem } from './hem.ts';
import type { Saving } from './savings.ts';
import type { KnittedStripe } from './stripe-sequence.ts';
import type { GraftTail, Lining, SeamTail } from './tails.ts';
import type { YarnNeed } from './yarn-needs.ts';

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

/** A bag worked out in full. `planBag` makes one, and `planFrom` another out of it: whoever holds a plan may trust it. */
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

/** Tools and materials that lie ready before the first needle comes into work, each with its number (common practice). */
export interface Kit {
  /** Of the transfer tool. */
  readonly prongs: number;
  readonly hasComb: boolean;
  /** One for each yarn that can wait, and one for the loop or the end of the ravel row. */
  readonly clips: number;
  /** Null where a loop of the waste yarn marks the ravel row. */
  readonly ravelCordCm: number | null;
  readonly yarns: readonly Portion[];
}

interface Portion {
  readonly yarn: string;
  readonly metres: number;
  /** With what is kept in hand; null for a yarn that nobody weighs. */
  readonly grams: number | null;
}

export function kitOf({ brief, ravelCordCm, yarn }: Plan): Kit {
  const used = yarn.filter(({ metres }) => metres > 0);
  return {
    prongs: brief.edgeStitches,
    hasComb: !brief.bed.without.includes('comb'),
    clips: Math.max(1, new Set(brief.stripes.map((stripe) => stripe.yarn)).size - 1) + 1,
    ravelCordCm: brief.waste.ravel === 'cord' ? ravelCordCm : null,
    yarns: used.map(({ yarn: name, metres, withReserveGrams }) => ({
      yarn: name,
      metres,
      grams: withReserveGrams,
    })),
  };
}
