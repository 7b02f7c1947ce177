import type { Side } from '../../bed/bed.ts';
import type { ColourDepth } from '../../shared/shown-colour.ts';
import type { GraftMovement } from './graft-rows.ts';
import type { BarsAtHand } from './seam-rows.ts';

/** What a drawing may use. It is never wider than `columns` cells nor higher than `rows` lines. */
export interface DrawOptions {
  readonly columns: number;
  readonly rows: number;
  readonly colour: ColourDepth;
  readonly glyphs: 'unicode' | 'ascii';
  /** Plain sentences in place of a picture, for screen readers. */
  readonly words?: boolean;
  /** Rows knitted so far, 0 to T; row T is the grafted one. Left out: the job has not begun. */
  readonly rowsDone?: number;
  /** Where the carriage stands, for the drawing of the bed; null where nothing hangs there any more. */
  readonly carriage?: Side | null;
  /** What the needle does now, for the drawing of the graft. */
  readonly grafting?: readonly GraftMovement[];
  /** The bars at hand, for the drawing of the seam. */
  readonly sewing?: BarsAtHand;
  /** The corner at hand, in place of the seam: where it is sewn across. */
  readonly corner?: Corner;
}

/** A corner laid flat: how long the seam across it is, and how far from its tip. */
export interface Corner {
  readonly fromTipCm: number;
  readonly acrossCm: number;
}

/** Half-block characters give two pixels a cell; letters and ASCII give one. */
export const pixelsPerCell = ({ colour, glyphs }: DrawOptions): 1 | 2 =>
  colour === 'none' || glyphs === 'ascii' ? 1 : 2;
