import type { Side } from '../bed/bed.ts';
import type { BedMove, HandMove } from '../bed/move.ts';
import { endTailCm } from '../planning/tails.ts';
import type { Amounts } from './amounts.ts';
import type { SayingsBy } from './by-kind.ts';
import { counted, theYarn, yarnName } from './forms.en.ts';

/** Trade practice: with loops in work a carriage knits, or drops them; so it slips across. */
const acrossTo = (side: Side): string =>
  `Take the yarn out of the feeder, slip the carriage back to the ${side}, set it to knit and put the yarn back in.`;

/** `L25, L24 and L23`; a longer row of neighbours is told by its ends. */
const spanOf = (names: readonly string[], list: Amounts['list']): string =>
  names.length > 4 ? `${names[0]} to ${names.at(-1)}` : list(names);

export const finding = ({ choice, length, list, tail }: Amounts) => ({
  stepComesNext: (done: number) => `step ${done} comes next`,
  knitted: (rowCounter: number) => `${counted.row(rowCounter)} knitted`,
  below: (wasteRows: number) => `${counted.wasteRow(wasteRows)} below`,
  noLoops: 'no loops on the bed',
  edgesSeen: (left: string, right: string) => `edges ${left} and ${right}`,
  carriageSeen: (carriage: Side) => `carriage on the ${carriage}`,
  feederEmpty: 'nothing in the feeder',
  feederHolds: (yarn: string) => `${theYarn(yarn)} in the feeder`,
  asks: {
    carriage: 'Which side does the carriage stand on?',
    lastColour: 'Which yarn are the loops on the needles made of?',
    feeder: 'Which yarn is in the feeder, if any?',
    left: 'Which needle is the outermost on the left that holds a loop?',
    right: 'Which needle is the outermost on the right that holds a loop?',
    stitches: 'How many needles hold a loop?',
    piecesDone: 'How many cords are off the needles, finished; or at the hem, how many sections of it?',
    wasteRows: 'How many waste rows hang below the needles?',
    stripesCounted: 'How many stripes can you count on the work, with the one on the needles?',
    rowCounter: 'What does the row counter show?',
    rowsOfColour: 'How many rows of the newest colour hang there, with the one on the needles?',
  },
  needleOffBed: (needle: string, needleCount: number) =>
    `There is no needle ${needle} on a bed of ${needleCount}: read its name again.`,
  unknownYarn: (yarn: string, known: readonly string[]) =>
    `${yarn} is not a yarn of this bag: it has ${list(known.map(yarnName))}.`,
  notACount: (value: number) => `${value} cannot be counted: give a whole number, 0 or more.`,
  rowsBack: (size: number, row: number) =>
    `${counted.step(size)} back, to ${counted.row(row)} on the counter.`,
  notAsDone: (marked: number) => `${marked} of them cannot simply be undone.`,
  cut: (yarn: string) =>
    `This yarn has been cut: join ${theYarn(yarn)} at the edge and sew both ends in later.`,
  offTheNeedles:
    'The work is off the needles: hang each loop again from its waste rows, weights off until all hang.',
  released: (what: 'ravel cord' | 'waste') =>
    `The ${what === 'waste' ? what : 'ravel row'} is out: catch every open loop on a spare strand before anything else.`,
  drawnThrough: (yarn: string) =>
    `The cord has been drawn closed: where its loops cannot be caught again, knit a new one with ${theYarn(yarn)}.`,
  noSuchPlace: (done: number, stepCount: number) =>
    `There is no place after ${done} steps: the bag has ${stepCount}.`,
  notBehind: (fromDone: number) => `Ripping back goes backwards: choose a place before step ${fromDone}.`,
  hereNow: (place: string) => `That is where you are now: ${place}`,
  hereToo: (place: string) => `The place where you are now looks like that too: ${place}`,
  here: (look: string) => `The work is here: ${look}.`,
  maybe: (look: string) => `The work may be here, and nothing is wrong: ${look}.`,
  goThere: (number: number, done: number) => `To go there type choose ${number}, or go step ${done}.`,
  many: (howMany: number) => `${howMany} places look like that.`,
  apartBy: (facts: string[]) => `They differ in ${choice(facts)}.`,
  stepNext: (step: number) => `step ${step} next`,
  several: (size: number) => `${size} places look like that; to go to one, type choose and its number:`,
  facts: {
    carriage: 'carriage',
    lastColour: 'last row',
    feeder: 'feeder',
    left: 'left edge',
    right: 'right edge',
    stitches: 'needles with loops',
    wasteRows: 'waste rows',
    stripesCounted: 'stripes',
    rowCounter: 'row counter',
    piecesDone: 'finished pieces',
    rowsOfColour: 'rows of that colour',
  },
  carriageAt: (carriage: Side) => `carriage ${carriage}`,
  nothingIn: 'empty',
  answers: {
    carriage: 'carriage left',
    lastColour: 'the yarn',
    feeder: 'feeder and the yarn',
    left: 'left and the needle',
    right: 'right and the needle',
    stitches: 'stitches and the count',
    wasteRows: 'waste and the count',
    stripesCounted: 'stripes and the count',
    rowCounter: 'counter and the count',
    rowsOfColour: 'the count in this stripe',
    piecesDone: 'finished and the count',
  },
  orUnsure: (question: string, value: string) => `${question} Type find and ${value}; or find unsure.`,
  noSlip: 'No place in this bag looks like that, even with a mistake or two.',
  readAgain: 'Look again, and leave out what you are least sure of.',
  oneAmiss: 'One thing may be read wrong. It would fit:',
  without: (name: string, done: number) => `  without ${name}: step ${done} comes next`,
  guided: (number: number) => `To be guided through it, type choose ${number}.`,
  guidedOne: 'To be guided through one of them, type choose and its number.',
  more: (more: number) => `and ${counted.moreStep(more)}.`,
  guideBack: 'Type choose to be guided back. Enter confirms each step, ← takes it back.',
  swapped: (look: string) =>
    `It fits when left and right change places: ${look}. Read the needle names again.`,
  unravelRows: (rows: number, yarn: string, caughtOn: string, back: Side) =>
    `Pull out ${rows} rows of ${yarnName(yarn)} one by one, catching every loop: in the end ${caughtOn}. ${acrossTo(back)}`,
  unsewBarsOfBoth: (bars: number) => `Draw the thread out from under the last ${bars} bars on each side.`,
  moves: {
    work: ({ needles }) => `Bring ${spanOf(needles, list)} into work.`,
    rest: ({ needles }) => `Push ${spanOf(needles, list)} out of work.`,
    stand: ({ side }) => `Put the carriage on the ${side}.`,
    counter: ({ rows }) => `Row counter to ${rows}.`,
    'cast-on': ({ yarn }) => `Cast on with ${theYarn(yarn)}.`,
    feed: ({ yarn }) => `Thread ${theYarn(yarn)} into the feeder.`,
    park: ({ yarn, end }) => `Take ${theYarn(yarn)} out of the feeder and clip it on the ${end}.`,
    cut: ({ yarn }) => `Cut ${theYarn(yarn)}, leaving ${tail(endTailCm)}.`,
    knit: ({ to }) => `Knit one row to the ${to}.`,
    slip: ({ to }) => `Set the carriage to slip and bring it across to the ${to}: nothing knits.`,
    transfer: ({ from, to }) =>
      `With the tool, lift the loops of ${spanOf(from, list)} and set them on ${spanOf(to, list)}.`,
    'take-off': ({ to }) =>
      to === undefined
        ? 'Take the work off the needles.'
        : `Hold the work and pass the carriage once to the ${to} with nothing in the feeder: the work drops.`,
    rehang: ({ left, right }) => `Rehang the loops from ${left} to ${right}.`,
    'pick-up': ({ of, left, right }) =>
      of === 'edge'
        ? `Pick up the mouth edge, a loop on each needle from ${left} to ${right}.`
        : `Fold the hem up and hang the loops of its first row from ${left} to ${right}.`,
    'bind-off': ({ from, to }) => `Chain the loops off from ${from} to ${to}.`,
  } satisfies SayingsBy<'move', BedMove>,
  handsBack: {
    graft: ({ edge, up, down }) =>
      `${edge}: draw the thread back out${up === null ? '' : `, up through ${up}`}${down === null ? '' : `, down through ${down}`}.`,
    wash: () => 'Washing cannot be undone.',
    bars: ({ count, side }) =>
      count === 1
        ? `Draw the thread out from under the last bar on the ${side}.`
        : `Draw the thread out from under the last ${count} bars on the ${side}.`,
    'draw-up': () => 'Ease the drawn-up thread.',
    fasten: ({ corner }) => (corner ? `Unpick the seam across corner ${corner}.` : 'Undo the fastening.'),
    thread: ({ eyelet }) => `Draw the cord back out of eyelet ${eyelet}.`,
    release: ({ what }): string =>
      what === 'waste'
        ? 'The waste rows stay out: catch every loop that comes free on a spare strand, before anything else.'
        : 'The ravel row stays out: catch every loop that comes free on a spare strand, before anything else.',
    measure: ({ lengthCm }) => `Measure ${length(lengthCm)} again.`,
  } satisfies SayingsBy<'move', HandMove>,
  undoPickUp: (of: 'edge' | 'first-row', left: string, right: string) =>
    of === 'edge'
      ? `Take the mouth edge off the needles again, from ${left} to ${right}.`
      : `Take the loops of the hem's first row off again, one from each needle from ${left} to ${right}, and let the fold down.`,
  undoBindOff: (hungOn: string) =>
    `Draw the tail out of the last loop and undo the chain, hanging its loops again: ${hungOn}.`,
  outOfWorkAgain: (needleList: string) => `Push ${needleList} back out of work.`,
  intoWorkAgain: (needleList: string) => `Bring ${needleList} back into work.`,
  carriageStood: (back: Side) => `The carriage stood on the ${back}.`,
  carriageBack: acrossTo,
  counterBack: (rows: number) => `Turn the row counter back to ${rows}.`,
  undoCastOn: 'Take the cast-on loops off the needles.',
  undoFeed: (yarn: string) => `Take ${theYarn(yarn)} out of the feeder.`,
  parkAgain: (yarn: string, parkedAt: Side) =>
    `Take ${theYarn(yarn)} out of the feeder, back into its clip on the ${parkedAt}.`,
  feedAgain: (yarn: string) => `Put ${theYarn(yarn)} back into the feeder.`,
  joinAgain: (yarn: string, endTailCm: number, joinedPlace: string) =>
    `Join ${theYarn(yarn)} again, leaving ${tail(endTailCm)} to sew in; ${joinedPlace}.`,
  hangOpenLoops: (hungOn: string, back: Side | null) =>
    `${back === null ? '' : `Bring the carriage back to the ${back}, over the empty needles. `}Hang the open loops again, purl side towards you: ${hungOn}, each needle in work.`,
  undoRehang: (left: string, right: string) =>
    `Take the loops from ${left} to ${right} off again, a strand run through them.`,
  stray: (needle: string) => `Drop the loose loop off ${needle} and push the needle out of work.`,
  strandGoesToFeeder: 'it goes back into the feeder',
  strandWaitsAt: (place: Side) => `it waits in its clip on the ${place}`,
  needles: (names: readonly string[]) => spanOf(names, list),
  oneOnEach: (first: string, last: string) => `one on each needle from ${first} to ${last}`,
  unravelRow: (yarn: string, caughtOn: string, back: Side) =>
    `Pull out the row of ${yarnName(yarn)} gently, catching every loop: ${caughtOn}. ${acrossTo(back)}`,
  eachOf: (first: string, last: string) => `each from ${first} to ${last}`,
  noneOn: (where: string) => `none on ${where}, which stays in work`,
  togetherOn: (loops: number, where: string) => `${loops} together on ${where}`,
  oneLoopEach: (left: string, right: string) => `one loop on each needle from ${left} to ${right}`,
  partLoops: (first: string, to: string, at: string) =>
    `Set the loops of ${first} out again on ${to}, parting the stitches that share ${at}.`,
  loopsBack: (first: string, to: string) => `Set the loops of ${first} back on ${to}.`,
  loopsBackAndNeedlesOut: (first: string, to: string, needleList: string) =>
    `Set the loops of ${first} back on ${to}. Push ${needleList} out of work.`,
  and: (more: number) => `and ${counted.moreStep(more)}.`,
  planSize: (rows: number, widthCm: number, depthCm: number) =>
    `${rows} rows round, ${length(widthCm)} wide and ${length(depthCm)} deep`,
  oneDoneAgain: (first: number) => `Step ${first} counts as done again.`,
  oneUndoneAgain: (first: number) => `Step ${first} counts as still to do.`,
  manyDoneAgain: (first: number, last: number) => `Steps ${first} to ${last} count as done again.`,
  manyUndoneAgain: (first: number, last: number) => `Steps ${first} to ${last} count as still to do.`,
  planNow: (planned: string) => `The plan is now: ${planned}.`,
  mendTakenBack: 'The repair was removed from the record.',
  mendRedone: 'The repair is back in the record.',
  irreversibleStep: (number: number, irreversible: string) => `If step ${number} was done: ${irreversible}`,
  irreversibleBefore: (more: number) => `The same goes for ${counted.step(more)} before that.`,
});
