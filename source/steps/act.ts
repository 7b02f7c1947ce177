import type { Side } from '../bed/bed.ts';
import type { Draw } from '../planning/eyelets.ts';
import type { ActByHand } from './act-by-hand.ts';

/** All needles between these, both included. */
interface NeedleSpan {
  readonly first: string;
  readonly last: string;
  readonly count: number;
}

/** A loop on each needle, one after the other: from the far edge to the edge beside the carriage. */
interface Wound {
  readonly yarn: string;
  readonly from: string;
  readonly to: string;
  readonly count: number;
}

/** Some of what is counted up to `of`. */
interface Counted {
  readonly from: number;
  readonly through: number;
  readonly of: number;
}

/** The needles whose loops are lifted, outermost first, and those they are set on. */
interface EdgeMoved {
  readonly side: Side;
  readonly number: number;
  readonly from: readonly string[];
  readonly to: readonly string[];
}

/** What a step is about, with the facts that its sentence needs beyond the moves and the plan. */
export type Act =
  | ActByHand
  | (NeedleSpan & {
      readonly kind: 'set-needles';
      readonly carriage: Side;
      /** What the dial showed for the swatch; null where it was not said. */
      readonly stitchSize: string | null;
    })
  | (Wound & { readonly kind: 'cast-on' })
  | { readonly kind: 'thread-waste'; readonly yarn: string; readonly aside: Aside | null }
  /** Waste rows knitted one after the other, the last of them to the side `to`. */
  | (Counted & {
      readonly kind: 'waste-rows';
      readonly yarn: string;
      readonly to: Side;
      /** The first rows of a cast-on: slowly, and where nothing can be hung on them yet by hand. */
      readonly first: 'for the comb' | 'held down' | null;
    })
  | { readonly kind: 'hang-comb' }
  | {
      readonly kind: 'lay-ravel-cord';
      readonly ravel: 'loop' | 'cord';
      readonly wasteYarn: string;
      readonly clipSide: Side;
    }
  | { readonly kind: 'ravel-pass'; readonly to: Side }
  | {
      readonly kind: 'trim-ravel-cord';
      readonly ravel: 'loop' | 'cord';
      readonly wasteYarn: string;
      readonly setsCounter: boolean;
    }
  | {
      readonly kind: 'hang-weights' | 'comb-off' | 'move-weights';
      readonly left: string;
      readonly right: string;
    }
  /** `waitsAt` is the side where the yarn was parked; null where it comes from its ball. */
  | {
      readonly kind: 'thread';
      readonly yarn: string;
      readonly aside: Aside | null;
      readonly waitsAt: Side | null;
    }
  | {
      readonly kind: 'pass';
      readonly yarn: string;
      readonly rowInStripe: number;
      readonly stripeRows: number;
      readonly to: Side;
      /** Yarns that have waited long: each strand is laid over the working yarn before the pass. */
      readonly crosses: readonly string[];
      /** Rows of the bag, where no row counter shows them. */
      readonly rowInAll: number | null;
    }
  | { readonly kind: 'closing-pass'; readonly yarn: string; readonly to: Side }
  | (EdgeMoved & { readonly kind: 'increase'; readonly outer: string; readonly uncovered: string })
  | (EdgeMoved & { readonly kind: 'decrease'; readonly emptied: string; readonly doubled: string })
  | {
      readonly kind: 'weights-off';
      readonly wasteYarn: string;
      readonly comb: boolean;
      readonly rehangs: boolean;
    }
  | { readonly kind: 'take-off'; readonly to: Side; readonly rehangs: boolean }
  | (NeedleSpan & { readonly kind: 'set-needles-again'; readonly carriage: Side })
  | (NeedleSpan & {
      readonly kind: 'rehang';
      /** What the last row of the bag was knitted with, to tell it from the waste. */
      readonly yarn: string;
    })
  /** At a rehang the row counter goes back to the bag's `row`; null after the graft, and where there is no counter. */
  | { readonly kind: 'release-waste'; readonly rehangs: boolean; readonly row: number | null }
  | {
      readonly kind: 'cut-graft-tail';
      readonly yarn: string;
      readonly lengthCm: number;
      readonly throughSeam: boolean;
      /** Yarns that wait parked and are not needed again. */
      readonly alsoCut: readonly string[];
    }
  /** A section of the hem begins, of so many. */
  | (NeedleSpan & {
      readonly kind: 'set-hem-needles';
      readonly section: number;
      readonly of: number;
      readonly carriage: Side;
      readonly setsCounter: boolean;
    })
  /** The mouth edge of the strip along the needles: so many loops of it from so many rows, the start of the strip on the side `startAt`. */
  | (NeedleSpan & {
      readonly kind: 'pick-up';
      readonly section: number;
      readonly of: number;
      readonly rows: number;
      readonly startAt: Side;
    })
  | { readonly kind: 'thread-hem'; readonly yarn: string }
  /** Plain rows of a layer, counted through the hem; the second begins with the stitch size set back. */
  | (Counted & { readonly kind: 'hem-rows'; readonly layer: 'outer' | 'inner'; readonly to: Side })
  /** The loose row that the hem folds on, and the loose one that closes it. */
  | {
      readonly kind: 'fold-row' | 'hem-close';
      readonly number: number;
      readonly of: number;
      readonly to: Side;
    }
  | (NeedleSpan & { readonly kind: 'hang-fold' })
  | (Wound & { readonly kind: 'bind-off' })
  | (NeedleSpan & { readonly kind: 'set-cord-needles'; readonly draw: Draw; readonly carriage: Side })
  | (Wound & { readonly kind: 'cast-on-cord' })
  | { readonly kind: 'thread-cord'; readonly yarn: string }
  | { readonly kind: 'cord-first-row'; readonly to: Side }
  | {
      readonly kind: 'set-slip';
      readonly slipTo: Side;
      readonly knitTo: Side;
      readonly setsCounter: boolean;
    }
  /** A bed that cannot slip knits the cord flat, to and fro, and its edges are sewn together. */
  | { readonly kind: 'weigh-flat-cord'; readonly setsCounter: boolean }
  | (Counted & { readonly kind: 'flat-rows'; readonly to: Side })
  | (Counted & {
      readonly kind: 'rounds';
      /** What the row counter shows at the end; null where there is none. */
      readonly counter: number | null;
      readonly slipTo: Side;
      readonly knitTo: Side;
    })
  /** The end is hidden inside the tube; or so much of it is left to sew a flat cord with. */
  | {
      readonly kind: 'draw-through';
      readonly yarn: string;
      readonly count: number;
      readonly sewsWithCm: number | null;
    };

/** What becomes of the yarn that leaves the feeder: parked, or cut because it is not needed again. */
export type Aside =
  /** `across`: the end is not on the side where the carriage stands, so the strand is led there below the needles. */
  | { readonly how: 'park'; readonly yarn: string; readonly end: Side; readonly across: boolean }
  | { readonly how: 'cut'; readonly yarn: string };
