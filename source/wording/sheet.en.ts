/** What is printed on the sheet beside the bench's own sentences: headings, figures, names in the drawings. */
import type { Side } from '../bed/bed.ts';
import type { RelaxedState } from '../planning/brief.ts';
import type { Draw } from '../planning/eyelets.ts';
import type { Amounts } from './amounts.ts';

const rows = (count: number): string => (count === 1 ? '1 row' : `${count} rows`);
const stitches = (count: number): string => (count === 1 ? '1 stitch' : `${count} stitches`);

export const sheet = ({ length, small, list }: Amounts) => ({
  places: { desk: 'at the desk', machine: 'at the machine', lap: 'in the lap' },
  leftAndRight: 'left and right: yours, facing the bed',
  /** Which of the pages of a place it is, where there are several, and which of all. */
  pageOf: (place: string, part: readonly [at: number, of: number]) =>
    part[1] === 1 ? place : `${place}, ${part[0]} of ${part[1]}`,
  page: (at: number, of: number) => `page ${at} of ${of}`,
  mind: 'Mind:',
  leadingTo: (first: string, last: string) => `${first} … ${last}.`.trim(),

  lead: (widthCm: number, depthCm: number) =>
    `A drawstring bag of slanting stripes, ${length(widthCm)} wide and ${length(depthCm)} deep`,
  bag: 'The bag',
  flatAndSewn: 'Flat and sewn',
  give: (size: string, doubt: string) => `${size} ± ${doubt}`,
  by: (one: string, other: string) => `${one} × ${other}`,
  askedFor: 'Asked for',
  inside: 'Inside',
  boxedBottom: 'Boxed bottom',
  baseText: (widthCm: number, depthCm: number, sideCm: number) =>
    `${length(widthCm)} × ${length(depthCm)}, sides ${length(sideCm)} high`,
  stitchesAndRows: 'Stitches, rows',
  stitchesAndRowsText: (across: number, all: number, knitted: number) =>
    `${across} across; ${all}: ${knitted} knitted, 1 grafted`,
  shaping: 'Shaping',
  shapingText: (moves: number, everyRows: number, edgeStitches: number) =>
    `${moves === 1 ? '1 move' : `${moves} moves`}, one every ${everyRows} rows, ${edgeStitches === 1 ? '1 edge stitch' : `${edgeStitches} edge stitches`}`,
  crawls: 'Crawls',
  crawlsText: (crawl: Side, home: Side) => `to the ${crawl}; home side ${home}`,
  stripesLabel: 'Stripes',
  stripesText: (count: number, angle: string) => `${count}, at ${angle} to the bottom`,
  swatchMeasured: 'Swatch measured',
  pieceMeasured: 'Piece measured',
  swatchGuessed: 'Swatch, a guess',
  swatchText: (across: number, high: number, size: string, state: RelaxedState) =>
    `${across} stitches, ${high} rows: ${size}, ${state}`,
  stitchSize: 'Stitch size',
  stitchSizeText: (dial: string | null) => dial ?? 'as for the swatch: ______',
  usedAs: 'Used and measured',
  usedAsText: (state: RelaxedState): string => state,
  yarnInAStitch: (mm: number, measured: boolean) =>
    `${small(mm)} of yarn in a stitch, ${measured ? 'measured' : 'from the gauge (model)'}`,
  bedLabel: 'Bed',
  bedText: (needles: number, pitchMm: number, times: number) =>
    `${needles} needles, ${small(pitchMm)} apart; ${times === 1 ? 'hung once' : `hung ${times} times`}`,

  yarn: 'Yarn',
  sign: 'Sign',
  forWhat: 'For',
  needs: 'Needs',
  withReserve: (percent: number) => `with ${percent} % more`,
  youHave: 'You have',
  wasteRows: 'waste rows',
  stripesUse: 'stripes',
  graftAndSeam: 'graft, seam',
  hemUse: 'hem',
  cordUse: 'cord',
  notUsed: 'not used',
  enough: (have: string) => `${have}, enough`,
  short: (have: string, lacking: string) => `${have}, ${lacking} short`,

  theStrip: 'The strip',
  words: 'Words',
  onSide: (edge: string, side: Side) => `${edge}, ${side}`,
  notes: 'Notes',
  mySwatch: 'My own swatch',
  mySwatchNote: 'stitches and rows stay as on this sheet; another swatch gives a bag of another size',
  classList: 'The class',
  classListTitles: ['Name', 'Swatch: w, h', 'Bag: wide, deep', 'Done'],
  blanks: {
    name: 'Name',
    stitches: 'Stitches counted',
    over: 'over a width of',
    rows: 'Rows counted',
    overHeight: 'over a height of',
    stitchWidth: 'Stitch width w',
    widthByStitches: 'width ÷ stitches =',
    rowHeight: 'Row height h',
    heightByRows: 'height ÷ rows =',
    acrossA: 'Across a',
    alongB: 'Along b',
    mouthC: 'Mouth c',
    wide: 'My bag, wide',
    deep: 'My bag, deep',
  },

  numbers: {
    stitches: 'stitches',
    hang: (ends: string) => `hang here; end on ${ends}`,
    hangAgain: (times: number) => `hang here; ${times} hangings in all`,
    rows: 'rows, one graft',
    every: (everyRows: number) => `every ${everyRows}`,
    shape: (times: number) => `rows, ${times === 1 ? 'one move' : `${times} moves`}`,
  },
  needles: {
    empty: 'eyelet',
    doubled: 'two loops',
    outOfWork: 'out of work',
  },
  castOn: 'Cast on',
  perStripe: 'Each stripe',
  hangAgain: 'Hang again',
  close: 'Close',
  hem: 'Hem',
  hemText: (stitches: number, rows: number, heightCm: number) =>
    `${stitches} loops picked up, ${rows} rows a layer, ${length(heightCm)} of the depth`,
  hemSections: (counts: readonly number[]) => `Loops of the sections: ${counts.join(', ')}.`,
  hemFold: 'fold',
  hemChain: 'chain, old edge',
  hemCord: 'eyelets',
  hemInside: 'inside',
  stripeByStripe: 'Stripes',
  stripesNote: (yarns: readonly string[]) => `${yarns.join(', ')}. • shape both edges, then they stand here.`,
  goesOn: 'Stripes, on',
  /** Rows after which something is done: all of a few, else how they begin and end. */
  afterRows: (rows: readonly number[], what: string) =>
    `After ${rows.length === 1 ? 'row' : 'rows'} ${
      rows.length > 3 ? `${rows.slice(0, 2).join(', ')} … ${rows.at(-1)}` : list(rows.map(String))
    }: ${what}`,
  inTurn: (back: Side) => `Then ${back}.`,
  weightsUp: 'both claw weights up, to the edges.',
  whereListed: (text: string) => `Where the list says so: ${text}`,
  crossing: (row: number, marks: readonly string[]) => `before row ${row}: ${marks.join(', ')} over`,
  graftRow: (row: number) => `${row}: graft`,
  thenCut: (yarn: string) => `then cut ${yarn}`,
  rehang: (row: number, first: string, last: string) =>
    `After row ${row} scrap off, hang again on ${first} to ${last}, counter to ${row}, then shape.`,
  ticksKept: 'Ticks are kept in this browser.',
  ticksNotKept: 'Ticks are not kept when the page is closed: print it.',

  foldIt: 'Turn it over and fold it',
  graft: 'Graft',
  sew: 'Sew the bottom and finish',
  lineIt: 'Line it, if you like',
  boxCorners: 'Sew the corners across',
  bottomSeam: 'bottom seam',
  makeCord: 'Make the cord',
  threadIt: 'Thread the cord and tie',
  trouble: 'When something goes wrong',

  purlSide: 'purl side towards you',
  knitSide: 'knit side towards you',
  mouth: 'mouth',
  bottom: 'bottom',
  needleBed: 'needle bed',
  hanging: 'as it hangs',
  laidOut: 'laid out',
  grafted: 'A grafted to B',
  turnOver: 'turn it over, mouth up',
  bring: 'fold both ends back: A meets B',
  foldBack: 'fold back',
  sewHere: 'sew the bottom',
  firstRow: 'B: first row, open on waste yarn',
  crawlsTo: (crawl: Side) => `crawls ${crawl}`,
  rowsSize: (count: number, cm: number) => `${rows(count)}, ${length(cm)}`,
  stitchesSize: (count: number, cm: number) => `${stitches(count)}, ${length(cm)}`,
  tail: 'tail',
  graftLine: 'graft',
  front: 'front',
  back: 'back',
  wayOfCord: (draw: Draw, eyelets: readonly number[]) =>
    `${draw === 'only' ? 'The cord' : `The ${draw} cord`}, in and out in turn: ${eyelets.join(' ')}`,
  cordOutside: 'full line: outside; broken line: inside; open ring: passed by',
  secondCord: (eyelet: number) =>
    `the second cord begins before eyelet ${eyelet}, and goes in where the first comes out`,
  hungForRow: 'row 1',
  hungAfter: (row: number) => `after row ${row}`,
  atRow: (row: number) => `row ${row}`,
  morePlaces: (count: number) => `and ${count} more, each on the same needles; the list of stripes says when`,
  belowCord: (cm: number) => `${length(cm)} below the cord`,

  /** What a picture shows, for those who do not see it. */
  shows: {
    bag: (widthCm: number, depthCm: number) =>
      `The finished bag, knit side out, ${length(widthCm)} wide and ${length(depthCm)} deep, its stripes slanting, a cord near the mouth`,
    strip: (across: number, high: number, crawl: Side) =>
      `The strip as it hangs, purl side towards you: ${stitches(across)} across, ${rows(high)}, leaning to the ${crawl}`,
    bed: (needles: number) => `The bed with its ${needles} needles, and where the work hangs`,
    shaping: 'A shaping move.',
    fold: 'Three views: the strip as it hangs, purl side towards you; turned over and laid out with the mouth up; folded, its last row A grafted to its first row B',
    graft:
      'The graft, knit side towards you: the thread goes over the end of each loop and behind its legs, up through A1, down through B1, up through B2, down through A1, up through A2, and so on',
    seam: 'The seam: the thread goes under one bar of the front, then under one bar of the back, in turn; then it is drawn up',
    cord: (across: number) =>
      `The cord on its needles, purl side towards you: rounds of ${stitches(across)}, all knitted the same way; from the end of each a strand goes back across to the start of the next`,
    flatCord: (across: number) =>
      `The cord on its needles as a flat strip, purl side towards you: rows of ${stitches(across)}, to and fro`,
    hem: (heightCm: number) =>
      `The hem from the side: from the old edge the outer layer goes ${length(heightCm)} up to the fold, the inner one down again to the chain on the inside; the eyelets lie below`,
    corner:
      'A corner laid flat, inside out: the bottom seam runs down its middle to the tip, and a seam at right angles to it is sewn across',
    threadingOfTwo: (used: number, made: number) =>
      `Two cords go through ${used} of ${made} eyelets, one in where the other comes out; the ends of one hang at the graft, those of the other half-way round`,
    threading: (used: number, made: number) =>
      `The cord goes through ${used} of ${made} eyelets, in and out, from the graft round to the graft`,
    band: 'The stripes in order',
    hero: 'A striped strip that leans as it hangs on the needle bed, and the drawstring bag it becomes: its stripes wind round it, and a cord tied in a bow gathers the mouth',
  },

  heroStrip: (count: number, crawl: Side, everyRows: number) =>
    `${stitches(count)}, one needle to the ${crawl} after every ${everyRows === 2 ? 'second' : `${everyRows}th`} row`,
  heroBag: (size: string, angle: string) => `${size}, stripes at ${angle}`,

  tag: {
    title: 'Gift tag',
    cut: 'cut out along the line',
    size: (widthCm: number, depthCm: number) => `${length(widthCm)} × ${length(depthCm)}`,
    fibre: 'Fibre',
    care: 'Care',
    made: 'Made',
    giver: 'For the giver',
    noToy: 'This bag is no toy. Ask the local rules before it is sold, or given to a child.',
  },
});
