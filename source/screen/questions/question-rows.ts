/** How many rows a question takes, over the prompt, and what is seen above it of what was said. */
import type { interviewView } from '../../chat/first-run/view.ts';
import { wrap } from '../../wording/page.ts';
import type { Window } from '../parts/reading.ts';

/** Rows beside the texts: the choices, the prompt, and one to stay lower than the window. */
const otherRows = 3;
/** The place, and a blank row on both sides of it. */
const placeRows = 3;
/** The picture leaves what was said last in sight, and is not drawn where a bag could not be seen in it. */
const saidRows = 4;
const picture = { most: 12, least: 8, columns: 50 } as const;
/** Width of the labels before the texts. */
const labels = 7;

export interface QuestionRows {
  readonly width: number;
  /** There is room for the place too. */
  readonly roomy: boolean;
  /** Each text has all its rows; else one. */
  readonly isWhole: boolean;
  /** Rows of the bag's picture over it; 0 where none is drawn. */
  readonly picture: number;
  /** Rows that are left above it all. */
  readonly left: number;
}

export function questionRows(
  { ask, asIn, enter }: Pick<ReturnType<typeof interviewView>, 'ask' | 'asIn' | 'enter'>,
  { columns, rows }: Window,
): QuestionRows {
  const width = columns - labels;
  const texts = [ask, asIn, enter].filter((text) => text !== null);
  const textRows = texts.reduce((sum, text) => sum + wrap(text, width).length, 0);
  const roomy = textRows + otherRows + placeRows <= rows;
  const isWhole = textRows + otherRows <= rows;
  const own = isWhole ? textRows + (roomy ? placeRows : 0) : texts.length;
  const above = Math.max(0, rows - own - otherRows);
  const room = above - saidRows;
  const drawn = roomy && room >= picture.least && columns >= picture.columns;
  const pictureRows = drawn ? Math.min(room, picture.most) : 0;
  return { width, roomy, isWhole, picture: pictureRows, left: above - pictureRows };
}
