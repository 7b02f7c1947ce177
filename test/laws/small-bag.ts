/**
 * A small bag worked out by closed formulas alone, from the rules of the craft (common practice, no source): T rows round,
 * a move every e rows, K = T/e − 1 moves, 2N movements of the graft's needle, T/2 bars a side. Stripes have 2 rows, so every even row ends one.
 */
type Side = 'left' | 'right';

export interface SmallBag {
  readonly stitches: number;
  readonly rows: number;
  readonly shapeEveryRows: number;
  readonly edgeStitches: number;
  readonly crawl: Side;
  readonly homeSide: Side;
  readonly colours: 1 | 2;
  /** Needles that the bed has for the crawl beyond the stitches: all K of them, or a single one. */
  readonly bed: 'roomy' | 'tight';
}

const sides = ['left', 'right'] as const;

/** Every bag of up to 12 stitches and 24 rows. */
export function* smallBags(edgeStitches: number, shapeEveryRows: number): Generator<SmallBag> {
  for (const colours of [1, 2] as const)
    for (let stitches = 2 * edgeStitches + 2; stitches <= 12; stitches++)
      for (let rows = 2 * shapeEveryRows; rows <= 24; rows += shapeEveryRows)
        if (rows % (2 * colours) === 0)
          for (const crawl of sides)
            for (const homeSide of sides)
              for (const bed of ['roomy', 'tight'] as const)
                yield { stitches, rows, shapeEveryRows, edgeStitches, crawl, homeSide, colours, bed };
}

const stitchMm = 5;
const rowMm = 4.5;
const tieMm = 10;
const wasteRows = 2;
const opposite = (side: Side): Side => (side === 'left' ? 'right' : 'left');

export const movesOf = (bag: SmallBag): number => bag.rows / bag.shapeEveryRows - 1;
const marginOf = (bag: SmallBag): number => Math.max(2, Math.ceil((9 - bag.stitches) / 2));
const needlesOf = (bag: SmallBag): number =>
  bag.stitches + (bag.bed === 'tight' ? 1 : movesOf(bag) + 1) + 2 * marginOf(bag);

/** The bag as a brief file. */
export const briefOf = (bag: SmallBag) => ({
  name: 'Small bag',
  bed: { needles: needlesOf(bag), pitchMm: 6, marginNeedles: marginOf(bag) },
  swatch: { stitches: 20, rows: 20, widthCm: stitchMm * 2, heightCm: rowMm * 2 },
  bag: { stitches: bag.stitches, rows: bag.rows },
  crawl: bag.crawl,
  homeSide: bag.homeSide,
  edgeStitches: bag.edgeStitches,
  shapeEveryRows: bag.shapeEveryRows,
  yarns: {
    plum: { colour: '#6b2d5c', metresPer100g: 190 },
    mint: { colour: '#9fd8c2', metresPer100g: 190 },
  },
  stripes: ['plum', 'mint'].slice(0, bag.colours).map((yarn) => ({ yarn, rows: 2 })),
  waste: { yarn: 'grey', rows: wasteRows },
  cord: { stitches: 3, yarn: 'plum', tieCm: tieMm / 10 },
});

/** Needle names outward from the middle; the extra needle of an odd bed is on the right. */
function nameOf(bag: SmallBag, place: number): string {
  const leftCount = Math.floor(needlesOf(bag) / 2);
  return place < leftCount ? `L${leftCount - place}` : `R${place - leftCount + 1}`;
}

/** With a single needle of room, each stay on the bed has one move: off again before the moves of rows 2e, 3e … Ke. */
export const rehangRows = (bag: SmallBag): readonly number[] =>
  bag.bed === 'roomy' ? [] : Array.from({ length: movesOf(bag) - 1 }, (_, i) => (i + 2) * bag.shapeEveryRows);

/** The needles that one hanging covers stand about the middle of the bed. */
function hungLeftOf(bag: SmallBag): number {
  const moves = bag.bed === 'tight' ? 1 : movesOf(bag);
  const leftmost = Math.floor((needlesOf(bag) - bag.stitches - moves) / 2);
  return bag.crawl === 'left' ? leftmost + moves : leftmost;
}

/** Edges while `row` is knitted, or before the move that follows it on a fresh hanging (`shift` 0). */
function edges(bag: SmallBag, shift: number): string {
  const crawled = shift * (bag.crawl === 'left' ? -1 : 1);
  const left = hungLeftOf(bag) + crawled;
  return `${nameOf(bag, left)} ${nameOf(bag, left + bag.stitches - 1)}`;
}

function shiftAt(bag: SmallBag, row: number): number {
  const moves = Math.floor((row - 1) / bag.shapeEveryRows);
  return bag.bed === 'roomy' ? moves : Math.min(moves, 1);
}

/** One line for each row: edges, stitches, where the carriage stops, moves done. */
export const rowLines = (bag: SmallBag): readonly string[] =>
  Array.from({ length: bag.rows - 1 }, (_, i) => {
    const row = i + 1;
    const carriage = row % 2 === 0 ? bag.homeSide : opposite(bag.homeSide);
    const moves = Math.floor((row - 1) / bag.shapeEveryRows);
    return `row ${row}: ${edges(bag, shiftAt(bag, row))} ${bag.stitches} ${carriage} ${moves}`;
  });

/** One line for each stay: rows, and the edges at its first and its last row. */
export function hangingLines(bag: SmallBag): readonly string[] {
  const ends = [...rehangRows(bag), bag.rows - 1];
  return ends.map((last, i) => {
    const first = (ends[i - 1] ?? 0) + 1;
    return `rows ${first} to ${last}: ${edges(bag, shiftAt(bag, first))} to ${edges(bag, shiftAt(bag, last))}`;
  });
}

/** One line for each move: the new edges, and the needle that is left empty for the eyelet. */
export const moveLines = (bag: SmallBag): readonly string[] =>
  Array.from({ length: movesOf(bag) }, (_, i) => {
    const shift = bag.bed === 'roomy' ? i + 1 : 1;
    const [left = '', right = ''] = edges(bag, shift).split(' ');
    const inward = bag.crawl === 'left' ? 1 : -1;
    const hungEdge = hungLeftOf(bag) + (bag.crawl === 'left' ? 0 : bag.stitches - 1);
    const eyelet = hungEdge - shift * inward + bag.edgeStitches * inward;
    return `after row ${(i + 1) * bag.shapeEveryRows}: ${left} ${right}, eyelet ${nameOf(bag, eyelet)}`;
  });

const roundsOf = (bag: SmallBag): number => {
  const mouthMm = Math.sqrt((movesOf(bag) * stitchMm) ** 2 + (bag.rows * rowMm) ** 2);
  return Math.ceil((mouthMm + windingMm(bag) + 2 * tieMm) / rowMm - 1e-9);
};

/** A cord of 3 stitches is 1.2 stitches thick; it winds from hole to hole, the middle one of an odd count passed by. */
function windingMm(bag: SmallBag): number {
  const moves = movesOf(bag);
  const oneMm = Math.hypot(stitchMm, bag.shapeEveryRows * rowMm);
  const winds = (gapMm: number): number => Math.hypot(gapMm, 1.2 * stitchMm) - gapMm;
  if (moves % 2 === 0) return (moves - 1) * winds(oneMm);
  return moves < 3 ? 0 : (moves - 3) * winds(oneMm) + winds(2 * oneMm);
}

/** Steps of each kind in the whole job. */
export function stepCounts(bag: SmallBag): Readonly<Record<string, number>> {
  const moves = movesOf(bag);
  const rehangs = rehangRows(bag).length;
  // With 2 waste rows and the ravel row 20 rows hang after row 17; the next even one is 18, and 28 is beyond every bag.
  const clawRow = 18;
  const handles = clawRow < bag.rows - 1 && !rehangRows(bag).includes(clawRow);
  const isRehung = rehangRows(bag).some((row) => row < clawRow);
  return {
    'set-needles': 1,
    'cast-on': 1,
    'thread-waste': 2 + rehangs,
    'waste-rows': 2 + rehangs,
    'hang-comb': 1,
    'lay-ravel-cord': 1,
    'ravel-pass': 1,
    'trim-ravel-cord': 1,
    thread: bag.colours === 2 ? bag.rows / 2 : 1 + rehangs,
    pass: bag.rows - 2,
    'closing-pass': 1,
    increase: moves,
    decrease: moves,
    'comb-off': handles && !isRehung ? 1 : 0,
    'move-weights': handles && isRehung ? 1 : 0,
    'weights-off': 1 + rehangs,
    'take-off': 1 + rehangs,
    'set-needles-again': rehangs,
    rehang: rehangs,
    'hang-weights': rehangs,
    'release-waste': 1 + rehangs,
    'cut-graft-tail': 1,
    'lay-graft': 1,
    'graft-start': 1,
    'graft-pair': bag.stitches - 1,
    'graft-end': 1,
    'fasten-graft': bag.homeSide === bag.crawl ? 1 : 0,
    'pull-ravel-cord': 1,
    'fold-seam': 1,
    bars: Math.ceil(bag.rows / 8),
    'fasten-seam': 1,
    'hide-ends': 1,
    wash: 1,
    'measure-bag': 1,
    'set-cord-needles': 1,
    'cast-on-cord': 1,
    'thread-cord': 1,
    'cord-first-row': 1,
    'set-slip': 1,
    rounds: Math.ceil(roundsOf(bag) / 10),
    'measure-rounds': roundsOf(bag) > 20 ? 1 : 0,
    'measure-cord': 1,
    'draw-through': 1,
    'thread-eyelets': (moves - (moves % 2)) / 2,
    tie: 1,
  };
}
