import type { Move } from '../bed/move.ts';
import type { Side } from '../bed/side.ts';
import type { RelaxedState } from '../planning/brief.ts';

/** The six parts of the job, in order. */
export const phases = ['cast-on', 'stripes', 'closing-row', 'graft', 'seam', 'cord'] as const;
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
  | { readonly kind: 'hang-comb'; readonly hasComb: boolean }
  | { readonly kind: 'thread-waste'; readonly yarn: string; readonly aside: Aside | null }
  | {
      readonly kind: 'waste-pass';
      readonly yarn: string;
      readonly number: number;
      readonly count: number;
      readonly to: Side;
    }
  | {
      readonly kind: 'lay-ravel-cord';
      readonly ravel: 'loop' | 'cord';
      readonly wasteYarn: string;
      readonly clipSide: Side;
    }
  | { readonly kind: 'ravel-pass'; readonly to: Side }
  | { readonly kind: 'trim-ravel-cord'; readonly ravel: 'loop' | 'cord'; readonly wasteYarn: string }
  | { readonly kind: 'hang-weights'; readonly left: string; readonly right: string }
  | { readonly kind: 'thread'; readonly yarn: string; readonly aside: Aside | null; readonly first: boolean }
  | {
      readonly kind: 'pass';
      readonly yarn: string;
      readonly rowInStripe: number;
      readonly stripeRows: number;
      readonly to: Side;
    }
  | { readonly kind: 'closing-pass'; readonly yarn: string; readonly to: Side }
  | {
      readonly kind: 'increase';
      readonly side: Side;
      readonly number: number;
      readonly outer: string;
      readonly uncovered: string;
    }
  | {
      readonly kind: 'decrease';
      readonly side: Side;
      readonly number: number;
      readonly emptied: string;
      readonly doubled: string;
    }
  | { readonly kind: 'move-weights'; readonly left: string; readonly right: string }
  | { readonly kind: 'weights-off'; readonly wasteYarn: string; readonly rehang: boolean }
  | { readonly kind: 'take-off'; readonly rehang: boolean }
  | { readonly kind: 'rehang'; readonly first: string; readonly last: string; readonly count: number }
  | {
      readonly kind: 'release-waste';
      readonly rehang: boolean;
      readonly left: string | null;
      readonly right: string | null;
    }
  | {
      readonly kind: 'cut-graft-tail';
      readonly yarn: string;
      readonly lengthCm: number;
      readonly throughSeam: boolean;
      /** Yarns that wait parked and are not needed again. */
      readonly alsoCut: readonly string[];
    }
  /** The mouth lies on the side that the work crawled to; the tail hangs at one end of edge A. */
  | { readonly kind: 'lay-graft'; readonly mouthSide: Side; readonly tailAt: 'mouth' | 'bottom' }
  | { readonly kind: 'graft-start' }
  /** Two movements of the needle, on B and on A, each down through one loop and up through the next. */
  | { readonly kind: 'graft-pair'; readonly down: number; readonly up: number }
  | { readonly kind: 'graft-end'; readonly down: number }
  | { readonly kind: 'fasten-graft' }
  | { readonly kind: 'pull-ravel-cord' }
  | {
      readonly kind: 'fold-seam';
      readonly rowsPerSide: number;
      readonly tailCm: number | null;
      readonly yarn: string;
    }
  | { readonly kind: 'bars'; readonly from: number; readonly through: number; readonly of: number }
  | { readonly kind: 'fasten-seam' }
  | { readonly kind: 'hide-ends' }
  /** Brought to the state in which it will be used, and laid out to the size of the plan. */
  | {
      readonly kind: 'wash';
      readonly state: RelaxedState;
      readonly widthCm: number;
      readonly depthCm: number;
    }
  | { readonly kind: 'measure-bag'; readonly widthCm: number; readonly depthCm: number }
  | {
      readonly kind: 'set-cord-needles';
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
  | { readonly kind: 'set-slip'; readonly slipTo: Side; readonly knitTo: Side }
  | {
      readonly kind: 'rounds';
      readonly from: number;
      readonly through: number;
      readonly slipTo: Side;
      readonly knitTo: Side;
    }
  /** So many rounds should be so long by the plan. */
  | { readonly kind: 'measure-rounds'; readonly rounds: number; readonly lengthCm: number }
  | { readonly kind: 'measure-cord'; readonly lengthCm: number }
  | { readonly kind: 'draw-through'; readonly yarn: string; readonly count: number }
  /** In through one eyelet and out through the next; holes are counted among those in use. */
  | {
      readonly kind: 'thread-eyelets';
      readonly inThrough: number;
      readonly outThrough: number;
      readonly hole: number;
      readonly of: number;
    }
  | { readonly kind: 'tie' };

/** What becomes of the yarn that leaves the feeder: parked at its own end, or cut because it is not needed again. */
export type Aside =
  | { readonly how: 'park'; readonly yarn: string; readonly end: Side }
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
