import type { Side } from './bed.ts';

/** What the hands do at the bed. Needles and yarns are named as the maker names them. */
export type BedMove =
  | { readonly move: 'work' | 'rest'; readonly needles: readonly string[] }
  | { readonly move: 'stand'; readonly side: Side }
  /** The row counter, set by hand. */
  | { readonly move: 'counter'; readonly rows: number }
  | { readonly move: 'feed' | 'cut'; readonly yarn: string }
  /** A loop on every needle in work, wound from one edge needle to the other, where it ends beside the carriage. */
  | { readonly move: 'cast-on'; readonly yarn: string; readonly from: string; readonly to: string }
  | { readonly move: 'park'; readonly yarn: string; readonly end: Side }
  | { readonly move: 'knit' | 'slip'; readonly to: Side }
  | { readonly move: 'transfer'; readonly from: readonly string[]; readonly to: readonly string[] }
  /** All loops off and all needles out of work; with `to` by a pass of the carriage with nothing in the feeder. */
  | { readonly move: 'take-off'; readonly to?: Side }
  | { readonly move: 'rehang'; readonly left: string; readonly right: string }
  /** A loop more on each needle: of the mouth edge, on needles that hold none; or of the first row picked up so, beside what they hold. */
  | {
      readonly move: 'pick-up';
      readonly of: 'edge' | 'first-row';
      readonly left: string;
      readonly right: string;
    }
  /** The loops chained off one through the next, from needle to needle; all needles out of work. */
  | { readonly move: 'bind-off'; readonly from: string; readonly to: string };

/** What the hands do away from the bed, with the work in the lap. */
export type HandMove =
  | { readonly move: 'release'; readonly what: 'ravel cord' | 'waste' }
  /** One movement of the blunt needle on one edge: down through a loop, up through the next; null at start and end. */
  | {
      readonly move: 'graft';
      readonly edge: 'A' | 'B';
      readonly down: number | null;
      readonly up: number | null;
    }
  /** Brought to a state and a size: soaked and dried flat, say. */
  | {
      readonly move: 'wash';
      readonly state: string;
      readonly widthCm: number;
      readonly depthCm: number;
    }
  | { readonly move: 'bars'; readonly side: 'front' | 'back'; readonly count: number }
  | { readonly move: 'draw-up' }
  /** At the end of a thread; `corner` where it has sewn a corner of the bottom across. */
  | { readonly move: 'fasten'; readonly corner?: 1 | 2 }
  | { readonly move: 'thread'; readonly eyelet: number; readonly towards: 'inside' | 'outside' }
  | { readonly move: 'measure'; readonly lengthCm: number };

export type Move = BedMove | HandMove;

const handMoves: ReadonlySet<string> = new Set([
  'release',
  'graft',
  'wash',
  'bars',
  'draw-up',
  'fasten',
  'thread',
  'measure',
] satisfies HandMove['move'][]);

export const isHandMove = (move: Move): move is HandMove => handMoves.has(move.move);

/** Neighbouring working needles that hold alike: `loops` of `yarn` each; none where the needle stays empty. */
export interface LoopRun {
  readonly first: string;
  readonly last: string;
  readonly loops: number;
  readonly yarn: string | null;
}

/** A move taken back with the hands; it names what it restores. */
export type ReverseMove =
  | { readonly undo: 'work' | 'rest'; readonly needles: readonly string[] }
  | { readonly undo: 'stand' | 'slip'; readonly back: Side }
  | { readonly undo: 'counter'; readonly rows: number }
  | { readonly undo: 'cast-on' }
  /** The yarn leaves the feeder again, for its parking place or the ball. */
  | { readonly undo: 'feed'; readonly yarn: string; readonly parkedAt: Side | null }
  | { readonly undo: 'park'; readonly yarn: string }
  | { readonly undo: 'cut'; readonly yarn: string; readonly joinedAt: Side | 'feeder' }
  | {
      readonly undo: 'knit';
      readonly yarn: string;
      readonly back: Side;
      readonly catches: readonly LoopRun[];
    }
  /** `lifts` loops from each needle of `from`; then the needles in `rests` are pushed out of work. */
  | {
      readonly undo: 'transfer';
      readonly from: readonly string[];
      readonly to: readonly string[];
      readonly lifts: readonly number[];
      /** A stitch shares its needle with another, and they are parted. */
      readonly parts: boolean;
      readonly rests: readonly string[];
    }
  /** `back` is where the carriage stood that dropped the work. */
  | {
      readonly undo: 'take-off';
      readonly hangs: readonly LoopRun[];
      readonly offBefore: number;
      readonly back?: Side;
    }
  | { readonly undo: 'rehang'; readonly left: string; readonly right: string }
  /** The loops that were picked up drop off again, one from each needle. */
  | {
      readonly undo: 'pick-up';
      readonly of: 'edge' | 'first-row';
      readonly left: string;
      readonly right: string;
    }
  /** The chain is drawn out, and its loops hang again. */
  | { readonly undo: 'bind-off'; readonly hangs: readonly LoopRun[] }
  /** A loop with nothing below it is dropped off its needle, which goes out of work. */
  | { readonly undo: 'stray'; readonly needle: string }
  | { readonly undo: 'hand'; readonly what: HandMove };
