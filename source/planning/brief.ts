import type { Side } from '../bed/bed.ts';
import type { JsonGroup } from '../shared/result.ts';

/** How the swatch had rested when it was measured; the loop-length model depends on it. */
export type RelaxedState = 'dry-relaxed' | 'wet-relaxed' | 'fully-relaxed';

export interface Swatch {
  readonly stitches: number;
  readonly rows: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly state: RelaxedState;
  /** Measured yarn in one stitch; null leaves it to the model. */
  readonly loopLengthMm: number | null;
  /** How far the top edge stands to the right of the bottom edge, knit side facing; 0 where nobody looked. */
  readonly asideMm: number;
  /** What the dial on the carriage showed; null where it was not said. */
  readonly stitchSize: string | null;
  /** The width and height are those of the piece on the bed, for as many stitches and rows as the swatch had. */
  readonly onPiece?: true;
  /** Nobody has measured: the bed is taken for a guess (`usualSwatch`). */
  readonly guess?: true;
}

/** The three ways of saying how big the bag should be. Sizes are flat, finished and sewn. */
export type BagWish =
  | { readonly by: 'size'; readonly widthCm: number; readonly depthCm: number }
  | {
      readonly by: 'contents';
      readonly girthCm: number;
      readonly heightCm: number;
      readonly thicknessCm: number;
      readonly easePercent: number;
    }
  | { readonly by: 'counts'; readonly stitches: number; readonly rows: number };

export interface Yarn {
  readonly colour: string;
  readonly metresPer100g: number;
  /** Weighed amount; null where the maker has not said. */
  readonly grams: number | null;
  /** What 100 g cost; null where the maker has not said. */
  readonly pricePer100g: number | null;
  /** Of self-striping yarn: its colours and how long each is, which then begin again. */
  readonly run?: readonly ColourStretch[] | undefined;
}

export interface ColourStretch {
  readonly colour: string;
  readonly metres: number;
}

export interface Stripe {
  readonly yarn: string;
  readonly rows: number;
}

/** What the maker asks for, every default filled in. `readBrief` makes one of what a file holds. */
export interface Brief {
  readonly name: string;
  readonly bed: {
    readonly needles: number;
    readonly pitchMm: number;
    readonly marginNeedles: number;
    /** Where the needles of each hanging stand: about the middle of the bed, or from the trailing end. */
    readonly place: 'centre' | 'end';
    /** Where a yarn waits: on the side where the carriage stands, or at the two ends in turn, led below the needles. */
    readonly park: 'home' | 'ends';
    /** What the bed lacks. */
    readonly without: readonly ('comb' | 'slip' | 'counter')[];
  };
  readonly swatch: Swatch;
  /** The state in which the bag will be used, and in which its size is wanted. */
  readonly finishState: RelaxedState;
  readonly bag: BagWish;
  /** How deep a bottom with boxed corners is; 0 for a flat bag. */
  readonly boxedCm: number;
  readonly crawl: Side;
  readonly homeSide: Side;
  readonly edgeStitches: number;
  readonly shapeEveryRows: number;
  /** Plain rows of each layer of a hem at the mouth, and its yarn; null where the edge stays as it is. */
  readonly hem: { readonly rows: number; readonly yarn: string } | null;
  readonly yarns: ReadonlyMap<string, Yarn>;
  /** One repeat, in knitting order. With scraps it is empty, until `planBag` has found the sequence for a whole bag. */
  readonly stripes: readonly Stripe[];
  /** The yarns are leftovers, to be put in order in stripes of this height; null where the stripes are given. */
  readonly scraps: { readonly rows: number } | null;
  readonly waste: {
    readonly yarn: string;
    readonly rows: number;
    /** What frees the start: the last waste row, found by a loop of it, or a row of smooth cord. */
    readonly ravel: 'loop' | 'cord';
  };
  readonly cord: {
    readonly stitches: number;
    readonly yarn: string;
    readonly tieCm: number;
    /** Cords: two are threaded against each other, and pull from both sides. */
    readonly draws: 1 | 2;
    /** Rounds the maker counted in 10 cm of cord; null takes the swatch's row height. */
    readonly roundsPer10Cm: number | null;
  };
  /** What an hour at the bench is worth, and how the maker writes money; null where nothing was said. */
  readonly cost: { readonly perHour: number | null; readonly currency: string | null };
  /** What finished bags of this swatch told; null where there are none. */
  readonly learned: Learned | null;
}

/**
 * What came out of finished bags over what was foretold: factors of width and depth, and the relative standard deviation from
 * bag to bag.
 */
export interface Learned {
  /** Bags that count, and those that do not. */
  readonly bags: number;
  readonly setAside: number;
  readonly widthFactor: number;
  readonly depthFactor: number;
  readonly spread: number;
}

/** A brief and the JSON it was read from, which a log keeps as it stood. */
export interface BriefFile {
  readonly json: JsonGroup;
  readonly brief: Brief;
}

/** The strand that frees the open start; no yarn may take its name. */
export const ravelCord = 'ravel cord';

/** What the row is knitted with that is pulled out once the graft is done: a cord, or a row more of waste. */
export const ravelStrand = ({ waste }: Brief): string => (waste.ravel === 'loop' ? waste.yarn : ravelCord);

/** The waste yarn of a brief that names none. */
export const unnamedWaste = 'waste';
