/** What every drawing is given, and how it becomes rows of text: the picture, the words, and which yarn is which. */
import type { Side } from '../../bed/bed.ts';
import type { Plan } from '../../planning/plan.ts';
import type { ColourDepth } from '../../shared/colour.ts';
import { cellsOf } from '../../shared/plain-text.ts';
import type { GraftMovement } from '../../steps/graft.ts';
import { cutToCells, plainText } from '../text.ts';
import { yarnSigns } from '../yarn-signs.ts';
import { formatLine, type Line, type Span, sampleOf } from './ansi.ts';
import type { BarsAtHand } from './sewing-rows.ts';

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

/** `P plum  M mint`, the letter on the yarn's colour; as many as fit. */
export function legend(plan: Plan, { columns, glyphs, colour: depth }: DrawOptions): Line {
  const knitted = new Set(plan.stripes.map((stripe) => stripe.yarn));
  const spans: Span[] = [];
  let left = columns;
  for (const sign of yarnSigns(plan, depth).values()) {
    const { yarn } = sign;
    if (!knitted.has(yarn)) continue;
    const gap = spans.length > 0 ? '  ' : '';
    const room = left - gap.length - 4;
    const name = cutToCells(plainText(yarn), Math.min(20, room), glyphs === 'ascii' ? '..' : '…');
    if (room < 3 || name === '') break;
    spans.push({ text: gap }, ...sampleOf(sign, depth, glyphs === 'ascii'), { text: ` ${name}` });
    left -= gap.length + 4 + cellsOf(name);
  }
  return spans;
}

/** Sentences broken at spaces into lines of at most `columns` cells, and no more than `rows` of them. */
export function wrapWords(sentences: readonly string[], { columns, rows }: DrawOptions): readonly string[] {
  const lines: string[] = [];
  for (const sentence of sentences) {
    let line = '';
    for (const word of sentence.split(' ')) {
      const longer = line === '' ? word : `${line} ${word}`;
      if (cellsOf(longer) <= columns) {
        line = longer;
        continue;
      }
      if (line !== '') lines.push(line);
      line = cutToCells(word, columns, '');
    }
    lines.push(line);
  }
  return lines.slice(0, rows);
}

/** The whole picture as strings, cut to the room there is. */
export function formatPicture(lines: readonly Line[], options: DrawOptions): readonly string[] {
  return lines.slice(0, options.rows).map((line) => formatLine(line, options.colour));
}
