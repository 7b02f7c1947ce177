import type { Side } from '../bed/bed.ts';
import type { RelaxedState } from '../planning/brief.ts';
import type { Draw } from '../planning/eyelets.ts';

/** What a step away from the bed is about: grafting, sewing, washing, measuring, threading. */
export type ActByHand =
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
  /** The ends of the hem's sections, sewn together once the strip is a tube. */
  | { readonly kind: 'join-hem'; readonly joins: number }
  | { readonly kind: 'sew-cord' }
  /** So many rounds should be so long by the plan. */
  | {
      readonly kind: 'measure-rounds';
      readonly rounds: number;
      readonly lengthCm: number;
    }
  | { readonly kind: 'measure-cord'; readonly draw: Draw; readonly lengthCm: number }
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
