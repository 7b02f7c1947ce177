/** First what to do now, then how the program helps. */
import { endTailCm } from '../planning/tails.ts';
import type { Amounts } from './amounts.ts';

/** Where the work is when it happens. */
interface TroubleAt {
  /** Edge needles by the plan; null where nothing hangs. */
  readonly edges: readonly [left: string, right: string] | null;
  readonly row: number;
}

interface TroubleWords {
  readonly title: string;
  /** What makers say of it; each word counts, in any order. */
  readonly says: readonly string[];
  readonly now: (at: TroubleAt) => string;
  readonly help: (at: TroubleAt) => string;
}

export type TroubleTopic = {
  readonly [T in
    | 'dropped-stitch'
    | 'yarn'
    | 'jam'
    | 'fallen-work'
    | 'split-loop'
    | 'doubled-stitch'
    | 'fallen-weight'
    | 'knitted-on']: TroubleWords;
} & {
  readonly list: (titles: readonly string[]) => string;
};

const ripTo = (row: number): string => (row > 0 ? `rip row ${row}` : 'rip step 1');

export const trouble = ({ tail }: Amounts): TroubleTopic => ({
  'dropped-stitch': {
    title: 'dropped stitch',
    says: [
      'dropped stitch',
      'dropped loop',
      'lost stitch',
      'lost loop',
      'ladder',
      'stitch ran',
      'stitch fell',
      'stitch slipped off',
    ],
    now: () =>
      'Stop before the next pass. Catch the loop with the latch tool, ladder it up bar by bar to the row that hangs, and set it back on its needle.',
    help: () =>
      'Count the needles that hold a loop and type find with it, as find 45 stitches: it tells what is missing where.',
  },
  yarn: {
    title: 'broken or knotted yarn',
    says: [
      'yarn broke',
      'yarn broken',
      'yarn tore',
      'yarn torn',
      'yarn snapped',
      'thread broke',
      'knot',
      'knotted yarn',
      'yarn ran out',
      'yarn ends here',
      'yarn just ended',
    ],
    now: () =>
      `Go back to the nearest edge and begin again there, ${tail(endTailCm)} left of both ends; never knot within a row. A knot that comes near the feeder: stop, cut it out, begin again at an edge.`,
    help: ({ row }) =>
      `${ripTo(row)} guides you back to the edge, loop by loop. If the yarn runs short, replan weigh and its grams shows what is enough.`,
  },
  jam: {
    title: 'jam',
    says: ['jam', 'jammed', 'carriage stuck', 'carriage blocked', 'stuck', 'will not move', 'carriage hangs'],
    now: () =>
      'Do not force the carriage. Look for a needle half out, a loop outside its hook, the yarn round the brush. Free it as the manual of your machine says.',
    help: () =>
      'Then look along the row: type find and the edges, the yarn and the side of the carriage; rip takes a spoilt row out.',
  },
  'fallen-work': {
    title: 'work fallen',
    says: [
      'work fell',
      'work fallen',
      'work dropped',
      'everything fell',
      'all dropped',
      'fell off',
      'all loops off',
      'feeder was empty',
      'empty feeder',
    ],
    now: ({ edges }) =>
      `Weights off, a hand under the work, and do not pull. The open loops are those of the last row: hang them back one by one${edges ? ` on ${edges[0]} to ${edges[1]}` : ''}, purl side towards you, then the weights.`,
    help: () => 'Then type find and what hangs there: edges, yarn, carriage, how many stitches.',
  },
  'split-loop': {
    title: 'split loop',
    says: ['split loop', 'split stitch', 'split yarn', 'hook split', 'half loop'],
    now: () =>
      'Before the next pass: lift the loop off with the latch tool, let that one stitch down by a row, and latch it up again with all its strands in the hook.',
    help: () =>
      'Seen rows later: rip row and its number goes back to it, or keep it and type note, so that you find it when you sew in the ends.',
  },
  'doubled-stitch': {
    title: 'doubled stitch that did not knit off',
    says: [
      'not knit off',
      "didn't knit off",
      'doubled stitch',
      'double stitch',
      'two loops on',
      'old loops',
      'did not knit',
    ],
    now: () =>
      'Pull the old loops over the new one by hand, both of them, with the transfer tool or the latch tool, before the next pass.',
    help: () =>
      'It is a needle that a decrease has left with two loops. Where it comes again, hang the weight at that edge closer to it.',
  },
  'fallen-weight': {
    title: 'weight fallen',
    says: [
      'weight fell',
      'weight fallen',
      'weight dropped',
      'weight came off',
      'comb fell',
      'comb fallen',
      'comb came off',
    ],
    now: ({ edges }) =>
      `Hands and feet clear first. Then look at the loops above where it hung, for one that was pulled long or dropped, and hang it again with a hand under it${edges ? `: under ${edges[0]} or under ${edges[1]}` : ''}.`,
    help: () =>
      'A loop gone: type trouble dropped stitch. The row before it knitted loosely: rip and its row.',
  },
  'knitted-on': {
    title: 'knitted on past a stop',
    says: [
      'knitted on',
      'knit on',
      'knitted too far',
      'rows too many',
      'row too many',
      "didn't stop",
      'did not stop',
      'missed the stop',
      'forgot to stop',
      'forgot the move',
      'forgot to change',
    ],
    now: () =>
      'Stop, and leave the edges as they are. Count the rows of this colour that hang there, and look at the side of the carriage and at the row counter.',
    help: ({ row }) =>
      `Type find with them, as find row ${row + 2} carriage right: it tells how many rows are too many, and takes you back.`,
  },
  list: (titles: readonly string[]) =>
    `Type trouble and one of them, or what happened: ${titles.join('; ')}.`,
});
