import type { Side } from '../bed/bed.ts';
import type { Move } from '../bed/move.ts';
import type { RelaxedState } from '../planning/brief.ts';
import type { Draw } from '../planning/eyelets.ts';

/** The parts of the job, in order; the hem is there only where the mouth has one. */
export const phases = ['cast-on', 'stripes', 'closing-row', 'hem', 'graft', 'seam', 'cord'] as const;
export type Phase = (typeof phases)[number];

/** The bed when a step is done. Edges are the outermost needles that hold loops; null when the bed is empty. */
export interface BedAfter {
  readonly left: string | null;
  readonly right: string | null;
  /** Needles that hold a loop; a doubled needle counts once. */
  readonly stitches: number;
  readonly carriage: Side;
  readonly feeder: string | null;
  readonly parked: ReadonlyMap<string, Side>;
  /** What the row counter shows; null on a bed that has none. */
  readonly counter: number | null;
  readonly shapings: number;
}

/** What a step is about, with the facts that its sentence needs beyond the moves and the plan. */
export type Act =
  | {
      readonly kind: 'set-needles';
      readonly first: string;
      readonly last: string;
      readonly count: number;
      readonly carriage: Side;
      /** What the dial showed for the swatch; null where it was not said. */
      readonly stitchSize: string | null;
    }
  | {
      readonly kind: 'cast-on';
      readonly yarn: string;
      /** From the far edge to the edge beside the carriage. */
      readonly from: string;
      readonly to: string;
      readonly count: number;
    }
  | { readonly kind: 'thread-waste'; readonly yarn: string; readonly aside: Aside | null }
  /** Waste rows knitted one after the other, the last of them to the side `to`. */
  | {
      readonly kind: 'waste-rows';
      readonly yarn: string;
      readonly from: number;
      readonly through: number;
      readonly of: number;
      readonly to: Side;
      /** The first rows of a cast-on: slowly, and where nothing can be hung on them yet by hand. */
      readonly first: 'for the comb' | 'held down' | null;
    }
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
  | {
      readonly kind: 'increase';
      readonly side: Side;
      readonly number: number;
      /** The needles whose loops are lifted, outermost first, and those they are set on. */
      readonly from: readonly string[];
      readonly to: readonly string[];
      readonly outer: string;
      readonly uncovered: string;
    }
  | {
      readonly kind: 'decrease';
      readonly side: Side;
      readonly number: number;
      readonly from: readonly string[];
      readonly to: readonly string[];
      readonly emptied: string;
      readonly doubled: string;
    }
  | {
      readonly kind: 'weights-off';
      readonly wasteYarn: string;
      readonly comb: boolean;
      readonly rehangs: boolean;
    }
  | { readonly kind: 'take-off'; readonly to: Side; readonly rehangs: boolean }
  | {
      readonly kind: 'set-needles-again';
      readonly first: string;
      readonly last: string;
      readonly count: number;
      readonly carriage: Side;
    }
  | {
      readonly kind: 'rehang';
      readonly first: string;
      readonly last: string;
      readonly count: number;
      /** What the last row of the bag was knitted with, to tell it from the waste. */
      readonly yarn: string;
    }
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
  /** The mouth lies on the side that the work crawled to; the tail hangs at one end of edge A. */
  | {
      readonly kind: 'lay-graft';
      readonly mouthSide: Side;
      readonly tailAt: 'mouth' | 'bottom';
      readonly ravel: 'loop' | 'cord';
    }
  | { readonly kind: 'graft-start'; readonly loops: number }
  /** Two movements of the needle, on B and on A, each down through one loop and up through the next. */
  | { readonly kind: 'graft-pair'; readonly down: number; readonly up: number }
  | { readonly kind: 'graft-end'; readonly down: number }
  | { readonly kind: 'fasten-graft' }
  | { readonly kind: 'pull-ravel-cord'; readonly ravel: 'loop' | 'cord' }
  | {
      readonly kind: 'fold-seam';
      readonly rowsPerSide: number;
      readonly tailCm: number | null;
      readonly yarn: string;
    }
  | { readonly kind: 'bars'; readonly from: number; readonly through: number; readonly of: number }
  | { readonly kind: 'fasten-seam' }
  | { readonly kind: 'hide-ends' }
  /** A corner laid flat, the bottom seam on the side's fold, so that the bottom is boxed; the first turns the bag inside out. */
  | {
      readonly kind: 'fold-corner';
      readonly corner: 1 | 2;
      readonly fromTipCm: number;
      readonly acrossCm: number;
      readonly tailCm: number;
      readonly yarn: string;
    }
  /** Both layers sewn through, at right angles to the bottom seam; after the second the bag is turned back. */
  | { readonly kind: 'sew-corner'; readonly corner: 1 | 2; readonly acrossCm: number }
  /** Brought to the state in which it will be used, and laid out to the size of the plan. */
  | {
      readonly kind: 'wash';
      readonly state: RelaxedState;
      /** Without a hem the mouth edge rolls inwards. */
      readonly rolls: boolean;
      readonly widthCm: number;
      readonly depthCm: number;
    }
  | { readonly kind: 'measure-bag'; readonly widthCm: number; readonly depthCm: number }
  /** A section of the hem begins, of so many. */
  | {
      readonly kind: 'set-hem-needles';
      readonly section: number;
      readonly of: number;
      readonly first: string;
      readonly last: string;
      readonly count: number;
      readonly carriage: Side;
      readonly setsCounter: boolean;
    }
  /** The mouth edge of the strip along the needles: so many loops of it from so many rows, the start of the strip on the side `startAt`. */
  | {
      readonly kind: 'pick-up';
      readonly section: number;
      readonly of: number;
      readonly first: string;
      readonly last: string;
      readonly count: number;
      readonly rows: number;
      readonly startAt: Side;
    }
  | { readonly kind: 'thread-hem'; readonly yarn: string }
  /** Plain rows of a layer, counted through the hem; the second begins with the stitch size set back. */
  | {
      readonly kind: 'hem-rows';
      readonly layer: 'outer' | 'inner';
      readonly from: number;
      readonly through: number;
      readonly of: number;
      readonly to: Side;
    }
  /** The loose row that the hem folds on, and the loose one that closes it. */
  | {
      readonly kind: 'fold-row' | 'hem-close';
      readonly number: number;
      readonly of: number;
      readonly to: Side;
    }
  | { readonly kind: 'hang-fold'; readonly first: string; readonly last: string; readonly count: number }
  | {
      readonly kind: 'bind-off';
      readonly yarn: string;
      readonly from: string;
      readonly to: string;
      readonly count: number;
    }
  /** The ends of the hem's sections, sewn together once the strip is a tube. */
  | { readonly kind: 'join-hem'; readonly joins: number }
  | {
      readonly kind: 'set-cord-needles';
      readonly draw: Draw;
      readonly first: string;
      readonly last: string;
      readonly count: number;
      readonly carriage: Side;
    }
  | {
      readonly kind: 'cast-on-cord';
      readonly yarn: string;
      readonly count: number;
      readonly from: string;
      readonly to: string;
    }
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
  | {
      readonly kind: 'flat-rows';
      readonly from: number;
      readonly through: number;
      readonly of: number;
      readonly to: Side;
    }
  | { readonly kind: 'sew-cord' }
  | {
      readonly kind: 'rounds';
      readonly from: number;
      readonly through: number;
      readonly of: number;
      /** What the row counter shows at the end; null where there is none. */
      readonly counter: number | null;
      readonly slipTo: Side;
      readonly knitTo: Side;
    }
  /** So many rounds should be so long by the plan. */
  | {
      readonly kind: 'measure-rounds';
      readonly rounds: number;
      readonly lengthCm: number;
    }
  | { readonly kind: 'measure-cord'; readonly draw: Draw; readonly lengthCm: number }
  /** The end is hidden inside the tube; or so much of it is left to sew a flat cord with. */
  | {
      readonly kind: 'draw-through';
      readonly yarn: string;
      readonly count: number;
      readonly sewsWithCm: number | null;
    }
  /** In through one eyelet and out through the next; holes are counted among those in use, from where the cord goes in first. */
  | {
      readonly kind: 'thread-eyelets';
      readonly draw: Draw;
      readonly inThrough: number;
      readonly outThrough: number;
      readonly hole: number;
      readonly of: number;
    }
  /** The two ends of a cord; a bow, or where there are two cords a knot that each is pulled by. */
  | { readonly kind: 'tie'; readonly draw: Draw };

/** What becomes of the yarn that leaves the feeder: parked, or cut because it is not needed again. */
export type Aside =
  /** `across`: the end is not on the side where the carriage stands, so the strand is led there below the needles. */
  | { readonly how: 'park'; readonly yarn: string; readonly end: Side; readonly across: boolean }
  | { readonly how: 'cut'; readonly yarn: string };

/** One instruction: what a single key press confirms. */
export interface Step {
  /** Counted from 1. */
  readonly step: number;
  readonly phase: Phase;
  /** Main-yarn rows knitted when the step is done. */
  readonly row: number;
  /** The stripe being worked, from 1; null outside stripes and closing row. */
  readonly stripe: number | null;
  readonly act: Act;
  readonly moves: readonly Move[];
  readonly after: BedAfter;
}

/** A step before it is given its number and phase. */
export type StepBody = Omit<Step, 'step' | 'phase'>;
