/**
 * Which piece of the bench stands on which row. The band and all above it depend on the window alone, so nothing that is
 * said or drawn below moves it. Where words need more rows, the pieces below the band give way, the least needed first.
 */

export interface BenchWindow {
  readonly columns: number;
  /** Rows that the bench may fill. */
  readonly room: number;
  readonly large: boolean;
}

/** What a step asks for. */
export interface Needs {
  /** Rows of the instruction with its caution, by the width they have. */
  readonly words: (width: number) => number;
}

export interface BenchPiece {
  readonly row: number;
  readonly height: number;
}

export interface Layout {
  readonly height: number;
  /** Columns left of the strip. */
  readonly width: number;
  readonly phases: BenchPiece | null;
  readonly band: BenchPiece;
  readonly closeUp: BenchPiece | null;
  readonly ruler: BenchPiece | null;
  readonly bed: BenchPiece | null;
  readonly words: BenchPiece;
  /** The growing strip at the right of all that is below the band. */
  readonly strip: { readonly columns: number; readonly rows: number } | null;
}

type Name = 'phases' | 'band' | 'gap1' | 'closeUp' | 'gap2' | 'ruler' | 'bed' | 'gap3' | 'words';
type Heights = Record<Name, number>;

/** From top to bottom. */
const order: readonly Name[] = ['phases', 'band', 'gap1', 'closeUp', 'gap2', 'ruler', 'bed', 'gap3', 'words'];

/** Words of a usual step take so many rows, so that nothing jumps from one to the next. */
const usualWords = (columns: number): number => (columns >= 76 ? 4 : columns >= 56 ? 5 : 6);

/** The strip wants to be seen as a whole, and what is left of it to have room for eight needles. */
const leastStripColumns = 44;
const besideStrip = 66;
const mostStripColumns = 110;
const leastStripRoom = 16;

/** A higher bench would only pull its pieces apart; beside a broad strip it may be as high as that. */
const highest = { plain: 22, withStrip: 26, withBroadStrip: 42 } as const;
const broadStripColumns = 72;

const mostRows = (stripColumns: number): number => {
  if (stripColumns === 0) return highest.plain;
  return stripColumns < broadStripColumns ? highest.withStrip : highest.withBroadStrip;
};

const stripColumnsIn = (columns: number, room: number): number => {
  const free = Math.min(mostStripColumns, columns - besideStrip - 2);
  return free >= leastStripColumns && room >= leastStripRoom ? free : 0;
};

/** Rows that the bench fills of those it may. */
export const highestBench = (columns: number, room: number): number =>
  Math.max(2, Math.min(room, mostRows(stripColumnsIn(columns, room))));

export function layOutBench(needs: Needs, { columns, room, large }: BenchWindow): Layout {
  const stripColumns = stripColumnsIn(columns, room);
  const hasStrip = stripColumns > 0;
  const width = hasStrip ? columns - stripColumns - 2 : columns;
  const height = highestBench(columns, room);
  const heights = makeWay(usualHeights(height, width, large), height, needs.words(width));
  const rowOf = (name: Name): number =>
    order.slice(0, order.indexOf(name)).reduce((sum, before) => sum + heights[before], 0);
  const piece = (name: Name): BenchPiece | null =>
    heights[name] === 0 ? null : { row: rowOf(name), height: heights[name] };
  const band = { row: rowOf('band'), height: heights.band };
  return {
    height,
    width,
    phases: piece('phases'),
    band,
    closeUp: piece('closeUp'),
    ruler: piece('ruler'),
    bed: piece('bed'),
    words: { row: rowOf('words'), height: heights.words },
    strip: hasStrip ? { columns: stripColumns, rows: height - band.row - band.height - 1 } : null,
  };
}

/** Rows are given out in the order in which they are needed; what is left goes to the words, which stand last. */
function usualHeights(height: number, columns: number, large: boolean): Heights {
  const heights: Heights = {
    phases: 0,
    band: 1,
    gap1: 0,
    closeUp: 0,
    gap2: 0,
    ruler: 0,
    bed: 0,
    gap3: 0,
    words: Math.min(usualWords(columns), Math.max(1, height - 3)),
  };
  let left = height - heights.band - heights.words;
  const give = (name: Name, rows: number): void => {
    if (left < rows) return;
    heights[name] += rows;
    left -= rows;
  };
  if (large) giveLargeBand();
  give('closeUp', 3);
  give('ruler', 2);
  if (!large) give('band', 2);
  give('phases', 1);
  give('bed', 1);
  give('closeUp', 1);
  give('gap1', 1);
  give('gap3', 1);
  give('gap2', 1);
  return { ...heights, words: heights.words + left };

  /** Big letters five rows high for each size, a line of small ones, and a border. */
  function giveLargeBand(): void {
    const size = Math.max(1, Math.min(Math.floor((left - 8) / 5), Math.floor(columns / 60)));
    give('band', 5 * size + 2);
  }
}

/** Lower than this, long words take the band's row too: an instruction is never cut off for a colour. */
const lowest = 10;

/** What gives way to words, the first first; nothing does that stands above them and the band. */
const givesWay: readonly (readonly [Name, number])[] = [
  ['gap2', 0],
  ['gap3', 0],
  ['gap1', 0],
  ['closeUp', 3],
  ['bed', 0],
  ['ruler', 0],
  ['closeUp', 0],
];

function makeWay(usual: Heights, height: number, wanted: number): Heights {
  const heights = { ...usual };
  for (const [name, least] of givesWay) {
    if (heights.words >= wanted) break;
    const taken = Math.max(0, heights[name] - least);
    heights[name] -= taken;
    heights.words += taken;
  }
  if (height < lowest && heights.words < wanted) return { ...heights, band: 0, phases: 0, words: height };
  return heights;
}

/** Rows that are not the bench's: the choices, the prompt, and one to stay lower than the window. */
export const belowBench = 3;
/** What was said last stays in sight, as long as the window has the rows. */
const transcriptRows = 3;
const lowWindow = 22;

/** Rows that the bench may have; low windows keep one row of what was said. */
export const benchRoom = (rows: number): number =>
  rows - belowBench - (rows >= lowWindow ? transcriptRows : rows >= lowWindow - 6 ? 1 : 0);
