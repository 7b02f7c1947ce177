/** Why the work on the bed goes as it does. */

import { usableNeedles } from '../../planning/hangings.ts';
import { closingWasteRows } from '../../planning/yarn-needs.ts';
import type { Words } from '../../wording/words.ts';
import type { Reason } from '../reason.ts';
import { formatFine } from './figures.ts';
import { commonPractice } from './sources.ts';

export const benchReasons: readonly Reason[] = [
  {
    id: 'swatch',
    names: (words: Words) => words.say`swatch, gauge, stitch width, row height, let it rest`,
    rule: (words: Words) =>
      words.say`On the needles the work is stretched. Only a piece that has rested tells how wide a stitch and how high a row will be.`,
    formula: (words: Words) => words.say`stitch width = width / stitches; row height = height / rows`,
    here: ({ brief: { swatch }, gauge }, words) =>
      `${words.amounts.length(swatch.widthMm / 10)} / ${swatch.stitches} = ${formatFine(gauge.stitchMm, words)}; ${words.amounts.length(swatch.heightMm / 10)} / ${swatch.rows} = ${formatFine(gauge.rowMm, words)}`,
    source: commonPractice,
  },
  {
    id: 'rehang',
    names: (words: Words) => words.say`rehang, hanging, hang again, needles, bed too short, margin`,
    rule: (words: Words) =>
      words.say`The work needs a needle more with each move. Where the bed is too short for that, it is taken off and hung again where it began. The margin lets the carriage clear the work.`,
    formula: (words: Words) =>
      words.say`needles = stitches + moves; times on the bed ≥ moves / (usable needles − stitches)`,
    here: ({ brief, stitches, shapings, needlesUsed, hangings }, words: Words) => {
      const sum = `${stitches} + ${shapings} = ${needlesUsed}`;
      const usable = usableNeedles(brief);
      return hangings.length === 1
        ? words.say`${sum}, and ${usable} are within the margins: no rehang`
        : words.say`${sum}, and ${usable} are within the margins: hung ${hangings.length} times`;
    },
    source: commonPractice,
  },
  {
    id: 'two-rows',
    names: (words: Words) =>
      words.say`two rows, even rows, second row, every second row, every two rows, even number of rows`,
    rule: (words: Words) =>
      words.say`After an even number of rows the carriage is home again: its needles are free for the tool, and each yarn waits on the side where it is needed next.`,
    here: ({ brief }, words: Words) =>
      words.say`a shaping move after every ${words.count(brief.shapeEveryRows, 'row')}`,
    source: commonPractice,
  },
  {
    id: 'home-side',
    names: (words: Words) => words.say`home side, home, trailing side`,
    rule: (words: Words) =>
      words.say`Between stripes the yarn is carried up along the side where the carriage waits. Home on the trailing side puts these strands into the bottom seam, which hides them.`,
    here: ({ brief }, words: Words) =>
      brief.crawl === 'left'
        ? brief.homeSide === 'right'
          ? words.say`the work crawls to the left, home is on the right`
          : words.say`the work crawls to the left and home is on the left: the strands lie along the mouth`
        : brief.homeSide === 'left'
          ? words.say`the work crawls to the right, home is on the left`
          : words.say`the work crawls to the right and home is on the right: the strands lie along the mouth`,
    source: commonPractice,
  },
  {
    id: 'park',
    names: (words: Words) => words.say`parked yarn, park, own end`,
    rule: (words: Words) =>
      words.say`Each waiting yarn has its own end of the bed, so that the two do not twist round each other.`,
    source: commonPractice,
  },
  {
    id: 'resting',
    names: (words: Words) => words.say`resting, push out of work, one in, decrease, loss`,
    rule: (words: Words) =>
      words.say`The needle that a decrease has emptied goes out of work. Left working, the next pass would begin a stray stitch on it.`,
    source: commonPractice,
  },
  {
    id: 'edge-stitches',
    names: (words: Words) => words.say`edge stitches, prongs, two edge stitches, transfer tool`,
    rule: (words: Words) =>
      words.say`The tool moves as many stitches as it has prongs. They make a firm edge above the eyelets: the hole comes on the needle behind them.`,
    formula: (words: Words) => words.say`eyelet = needle number (edge stitches + 1) from the new edge`,
    here: ({ brief }) => `${brief.edgeStitches} + 1 = ${brief.edgeStitches + 1}`,
    source: commonPractice,
  },
  {
    id: 'feeder',
    names: (words: Words) => words.say`feeder, empty feeder, nothing in the feeder`,
    rule: (words: Words) =>
      words.say`A pass with nothing in the feeder lets every stitch go: the old loops slip off and no new ones come.`,
    source: commonPractice,
  },
  {
    id: 'weights',
    names: (words: Words) => words.say`weights, claw weights, comb, move the weights`,
    rule: (words: Words) =>
      words.say`Loops knit off well only where something draws them down. The work grows away from its weights, and fastest at the growing edge: so they are moved up every 10 to 20 rows.`,
    source: commonPractice,
  },
  {
    id: 'waste',
    names: (words: Words) => words.say`waste yarn, waste, waste rows, ravel cord`,
    rule: (words: Words) =>
      words.say`Start and end are grafted to each other, so both must stay open. Waste rows hold the loops until then, and the ravel cord lets go of the whole start with one pull.`,
    here: ({ brief }, words: Words) =>
      words.say`${words.count(brief.waste.rows, 'row')} before the start, ${closingWasteRows(brief)} after the closing row`,
    source: commonPractice,
  },
  {
    id: 'closing-row',
    names: (words: Words) => words.say`closing row, one row less, last row`,
    rule: (words: Words) =>
      words.say`The graft is a row itself, the second of the last stripe. So that stripe is knitted one row short. Knitted in full, the join would show a stripe too high.`,
    formula: (words: Words) => words.say`rows knitted = rows round − 1`,
    here: ({ rows, knittedRows }) => `${rows} − 1 = ${knittedRows}`,
    source: commonPractice,
  },
  {
    id: 'stripes',
    names: (words: Words) => words.say`stripes, colours, colour of the last stripe`,
    rule: (words: Words) =>
      words.say`Neighbours differ in colour, the last stripe and the first too: they meet at the graft, and alike they would read as one wide stripe.`,
    here: ({ stripes }, words: Words) => {
      const [first, last] = [stripes[0], stripes.at(-1)];
      return first && last ? words.say`the first is ${first.yarn}, the last ${last.yarn}` : null;
    },
    source: commonPractice,
  },
];
