import type { Side } from '../bed/side.ts';
import type { Amounts } from './amounts.ts';

export const drawings = ({ length }: Amounts) => ({
  bagPart: (depthCm: number, isPale: boolean) =>
    `upper left part, ${length(depthCm)} deep as a whole${isPale ? '; stripes to come are pale' : ''}`,
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
  cordSlip: (to: Side) => `${to}: the carriage slips, nothing knits`,
  cordKnit: (to: Side) => `${to}: it knits, and the strand behind pulls the tube shut`,
  cordRound: 'two passes make one round, one row high',
});

export type DrawingsWords = ReturnType<typeof drawings>;
