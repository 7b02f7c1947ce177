import type { Side } from '../bed/bed.ts';
import type { Amounts } from './amounts.ts';
import { counted } from './forms.en.ts';

export const bench = ({ length, time }: Amounts) => ({
  knit: (to: Side) => `knit ${to}`,
  out: (edge: Side, needle: string) => `${edge} edge, one out: ${needle}`,
  in: (edge: Side, needle: string) => `${edge} edge, one in: ${needle}`,
  park: (yarn: string, side: Side) => `park ${yarn} ${side}`,
  cut: (yarn: string) => `cut ${yarn}`,
  thread: (yarn: string) => `thread ${yarn}`,
  graft: (edge: 'A' | 'B', down: number | null, up: number | null) =>
    [...(down === null ? [] : [`down ${edge}${down}`]), ...(up === null ? [] : [`up ${edge}${up}`])].join(
      ' ',
    ),
  bars: (from: number, through: number) => (from === through ? `bar ${from}` : `bars ${from} to ${through}`),
  rowsOf: (of: 'waste' | 'hem' | 'cord', from: number, through: number) =>
    from === through ? `${of} row ${from}` : `${of} rows ${from} to ${through}`,
  rounds: (from: number, through: number) =>
    from === through ? `round ${from}` : `rounds ${from} to ${through}`,
  holes: (inThrough: number, outThrough: number) => `in ${inThrough}, out ${outThrough}`,
  back: 'rip back',
  mend: 'repair',
  finished: 'finished',

  pass: (at: number, of: number) => `pass ${at} of ${of}`,
  row: (at: number, of: number) => `row ${at} of ${of}`,
  move: (at: number, of: number) => `move ${at} of ${of}`,
  of: (at: number, of: number) => `${at} of ${of}`,
  step: (at: number, of: number) => `step ${at} of ${of}`,
  wayStep: (at: number, of: number) => `${at} of ${of}`,

  rowComes: (row: number, of: number) => `row ${row} of ${of} comes`,
  rowsDone: (done: number, of: number) => `${done} of ${of} rows done`,
  stripe: (at: number, of: number) => `stripe ${at} of ${of}`,

  done: (at: number, of: number) => `${at} of ${of} done`,

  timeLeft: (phaseS: number, bagS: number) => `part ${time(phaseS)}, bag ${time(bagS)}`,
  bagTimeLeft: (bagS: number) => `bag ${time(bagS)}`,
  now: 'now',
  make: 'make',
  eyelet: (needle: string) => `${needle} stays in work and empty: the eyelet`,
  two: (needle: string) => `${needle} holds two loops`,
  outOfWork: (needle: string) => `${needle} out of work`,
  graftPath: ['down: to the back', 'up: to you', 'over the ends of the loops'],
  barPath: 'under each bar, one side and then the other',
  slip: (to: Side) => `slip ${to}`,
  front: 'front',
  behind: 'back',

  afterwards: 'then',
  bagWide: (widthCm: number) => `${length(widthCm)} wide`,
  bagDeep: (depthCm: number) => `${length(depthCm)} deep`,
  bagDone: 'The bag is finished.',
  tooSmall: (columns: number, rows: number) => `too small: ${columns} × ${rows} at least`,
  reading: (at: number, of: number): string =>
    at === of
      ? `page ${at} of ${of}: Enter goes back to the bench`
      : `page ${at} of ${of}: Enter goes on, Escape back to the bench`,
  typeToLeave: 'The bag is finished: type quit to leave',
  keysShort: 'Enter confirms; help shows more',
  keys: 'Enter confirms, ← takes back; or type a command, such as help',
  keysAscii: 'Enter confirms, <- takes back; or type a command, such as help',
  drawOff: 'draw off: back',
});

interface EdgeNames {
  readonly leftName: string;
  readonly rightName: string;
}

/** Titles, captions and labels of the drawings. */
export const pictures = ({ length }: Amounts) => ({
  sizeBelowCord: (width: string, depthBelowCordCm: number, angle: string) =>
    `${width} wide, ${length(depthBelowCordCm)} below the cord, stripes at ${angle}`,
  hangingsLeftOut: (left: number) => `and ${left} more, hung on the same needles`,
  hangingLabel: (fromRow: number, throughRow: number, hung: EdgeNames, last: EdgeNames) =>
    `rows ${fromRow} to ${throughRow}: hung ${hung.leftName} to ${hung.rightName}, crawling to ${last.leftName} to ${last.rightName}`,
  howToRead: [
    'strip on the left: growing edge up, fold at the dotted lines',
    'bag on the right: last edge A meets first edge B',
  ],
  leaningStrip: (crawl: Side, size: number, rows: number) =>
    `The strip leans to the ${crawl} as it grows: ${counted.stripe(size)}, ${rows} rows, the last one grafted.`,
  rowsKnitted: (rowsDone: number, rows: number, done: number, size: number) =>
    `${rowsDone} of ${rows} rows are knitted, ${done} of ${counted.stripe(size)} whole.`,
  stripWhole: 'The strip is whole.',
  stripeNow: (number: number, plainText: string, firstRow: number, lastRow: number) =>
    `Being knitted: stripe ${number}, ${plainText}, rows ${firstRow} to ${lastRow}.`,
  stripeNext: (number: number, plainText: string, firstRow: number, lastRow: number) =>
    `Next: stripe ${number}, ${plainText}, rows ${firstRow} to ${lastRow}.`,
  finishedBag: (widthCm: number, depthCm: number, depthBelowCordCm: number) =>
    `The finished bag is ${length(widthCm)} wide and ${length(depthCm)} deep, ${length(depthBelowCordCm)} of that below the cord.`,
  climbingStripes: (yarns: string, up: Side, angle: string) =>
    `Its stripes (${yarns}) climb to the ${up} at ${angle} to the bottom, seen with the knit side out.`,
  cordWay: (size: number, made: number, which: 'front' | 'back') =>
    `The cord runs through ${size} of ${counted.eyelet(made)}; both its ends come out at the graft, on the ${which}.`,
  cordsWay: (size: number, made: number, which: 'front' | 'back') =>
    `Two cords run through ${size} of ${counted.eyelet(made)}, one against the other; the ends of one come out at the graft, on the ${which}, those of the other across from it.`,
  bottomSewn: 'The bottom is sewn.',
  bottomBoxed: (widthCm: number, depthCm: number, sideCm: number) =>
    `The bottom is sewn and its corners are boxed: it stands on ${length(widthCm)} by ${length(depthCm)}, with sides ${length(sideCm)} high.`,
  turnStrip:
    'Turn the strip so that its growing edge is up: that edge becomes the mouth, the other the bottom.',
  foldStrip: (widthCm: number) => `Fold it every ${length(widthCm)} along the mouth, half behind half.`,
  joinEdges: (start: string, stitches: number, end: string) =>
    `The last edge, A, comes to lie along the first edge, B. Loop 1 of both is at the ${start}, loop ${stitches} at the ${end}; graft them there.`,
  workNow: (rowsDone: number, leftName: string, rightName: string) =>
    `At row ${rowsDone} the work hangs from ${leftName} to ${rightName}.`,
  bedAndCrawl: (needles: number, crawl: Side) =>
    `The bed has ${needles} needles; the work crawls to the ${crawl}.`,
  hangingCaption: (fromRow: number, throughRow: number, hung: EdgeNames, last: EdgeNames) =>
    `Rows ${fromRow} to ${throughRow}: hung from ${hung.leftName} to ${hung.rightName}, crawling to ${last.leftName} to ${last.rightName}.`,
  bagPart: (depthCm: number, toCome: 'pale' | 'small' | null) =>
    `upper left part, ${length(depthCm)} deep as a whole${{ pale: '; stripes to come are pale', small: '; stripes to come in small letters', none: '' }[toCome ?? 'none']}`,
  mouth: 'mouth',
  bottom: 'bottom',
  stripPart: (from: number, through: number, of: number) => `rows ${from} to ${through} of ${of} shown`,
  tooFine: 'too fine to show every stripe',
  graft: (mouth: Side) => `knit side up, A above, B below, the mouth at the ${mouth}`,
  graftDown: 'down: from the knit side to the back',
  graftUp: 'up: from the back to the knit side',
  graftPath: 'behind the legs, over the end of each loop, the size of a stitch',
  graftTurns: 'B down one, up the next; then A down one, up the next',
  seamFold: 'knit side out, the trailing edge folded half on half',
  seamBars: 'under each bar, one stitch in from the edge, one side and then the other',
  seamDraw: 'every 6 to 8 bars draw the thread up until the edges meet',
  cornerTip: (fromTipCm: number) => `from the tip to the seam across: ${length(fromTipCm)}`,
  cornerFold: 'inside out: the bottom seam lies on the fold of the side',
  cornerAcross: (acrossCm: number) => `sewn across: ${length(acrossCm)}, through both layers`,
  cornerSides: 'the other corner the same way; the bottom lies between',
  mouthHemmed: (heightCm: number) =>
    `Its mouth is a hem of two layers, ${length(heightCm)} high, that does not roll.`,
  noHem: 'this bag has no hem',
  hemFold: 'the fold, which is the mouth',
  hemLayers: (rows: number, heightCm: number) => `two layers of ${rows} rows, ${length(heightCm)} high`,
  hemChain: (stitches: number) => `the chain, inside, at the edge of ${stitches} loops picked up`,
  hemCord: (foldToCordCm: number) => `the eyelets, ${length(foldToCordCm)} below the fold`,
  hemSides: 'from the side: the inside of the bag is to the left',
  slant: (degrees: number, everyRows: number) => `${degrees}°, ${everyRows} rows`,
  cordSlip: (to: Side) => `${to}: the carriage slips, nothing knits`,
  cordKnit: (to: Side) => `${to}: it knits, and the strand across pulls the tube shut`,
  cordRound: 'two passes make one round, one row high',
  cordFlat: 'to and fro: every pass knits a row',
  cordSewn: 'off the bed its two long edges are sewn together',
});
