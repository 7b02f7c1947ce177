/** Words for what is sewn and made once the work is off the bed. */
import type { Words } from '../../wording/words.ts';
import type { Word } from '../word.ts';

export const handWords: readonly Word[] = [
  {
    id: 'closing-row',
    names: (words: Words) => words.say`closing row, last row`,
    means: (words: Words) =>
      words.say`The last row that is knitted. The graft makes the second row of its stripe, so the stripe comes out as high as the others.`,
  },
  {
    id: 'graft',
    names: (words: Words) => words.say`graft, grafting seam`,
    means: (words: Words) =>
      words.say`To sew open loops to open loops along the path that a knitted row would take. The seam is then a row of knitting, and does not show.`,
  },
  {
    id: 'movement',
    names: (words: Words) => words.say`movement, needle movement`,
    means: (words: Words) =>
      words.say`What the blunt needle does on one edge of the graft: down through one loop and up through the next, drawn to the size of a stitch.`,
  },
  {
    id: 'edges',
    names: (words: Words) => words.say`edges A and B, edge A, edge B`,
    means: (words: Words) =>
      words.say`The two rows of open loops that are grafted. Edge A is where the tail hangs, edge B is the start. On both, the loops count from the tail: A1 is across from B1.`,
  },
  {
    id: 'mattress-seam',
    names: (words: Words) => words.say`mattress seam, seam, mattress`,
    means: (words: Words) =>
      words.say`To sew edge to edge under the bars one stitch in: one from this side, one from the other, in turn. It closes the bottom of the bag.`,
  },
  {
    id: 'bar',
    names: (words: Words) => words.say`bar, seam bar`,
    means: (words: Words) =>
      words.say`The short strand between two stitches that lie side by side. Each row has one, one stitch in from the edge.`,
  },
  {
    id: 'draw-up',
    names: (words: Words) => words.say`draw up`,
    means: (words: Words) =>
      words.say`To pull the seam's thread until the two edges meet, after every 6 to 8 bars, and no tighter.`,
  },
  {
    id: 'eyelet',
    names: (words: Words) => words.say`eyelet, hole`,
    means: (words: Words) =>
      words.say`The small hole where an increase has left a working needle empty. The cord runs through the eyelets below the mouth.`,
  },
  {
    id: 'cord',
    names: (words: Words) => words.say`cord, tubular cord`,
    means: (words: Words) =>
      words.say`A narrow tube, knitted on a few needles by slipping one way and knitting the other. It draws the bag shut.`,
  },
  {
    id: 'slip',
    names: (words: Words) => words.say`slip, slipping`,
    means: (words: Words) =>
      words.say`The carriage passes over the needles and knits nothing; the yarn lies behind them.`,
  },
  {
    id: 'round',
    names: (words: Words) => words.say`round, rows round`,
    means: (words: Words) =>
      words.say`For the cord: two passes, slip one way and knit the other, which make it one row longer. For the bag: the rows once round the tube.`,
  },
  {
    id: 'tie',
    names: (words: Words) => words.say`tie, bow`,
    means: (words: Words) => words.say`The length of cord that hangs out at each end, to tie a bow with.`,
  },
  {
    id: 'tail',
    names: (words: Words) => words.say`tail, yarn end`,
    means: (words: Words) =>
      words.say`The end of yarn left hanging where a yarn begins or is cut. Some are cut long on purpose, to graft and to sew with.`,
  },
];
