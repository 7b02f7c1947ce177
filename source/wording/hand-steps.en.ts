/** Away from the bed: graft, seam, finish and cord, one instruction an act, at most 240 letters. */
import type { RelaxedState } from '../planning/brief.ts';
import type { ActWords, HandKind } from './act-words.ts';
import type { Amounts } from './amounts.ts';

const washing: Readonly<Record<RelaxedState, string>> = {
  'dry-relaxed': 'Let the bag rest for a day',
  'wet-relaxed': 'Soak the bag and press the water out, do not wring it',
  'fully-relaxed': 'Wash and tumble the bag as it will be washed',
};

export const handSteps = (say: Amounts): ActWords<HandKind> => {
  const { length, lengthNeeded, tail, decimal, units } = say;
  const size = (widthCm: number, depthCm: number): string =>
    `${length(widthCm)} wide and ${length(depthCm)} deep`;
  return {
    'lay-graft': ({ mouthSide, tailAt, ravel }) =>
      `Lay the work knit side up: edge A, the end, above the gap; B, the start, below; the mouth on the ${mouthSide}, ${
        tailAt === 'mouth' ? 'where' : 'away from where'
      } the tail hangs. Fold the waste under: open loops show. The ravel ${ravel === 'cord' ? 'cord' : 'row'} stays in.`,
    'graft-start': ({ loops }) =>
      `Thread the tail into the blunt needle. Count the loops of both edges from it: B1 is half an arch and A${loops} ends at the seam, so both are entered once. A: up through 1, from behind.`,
    'graft-pair': ({ down, up }) =>
      `B: down through ${down}, up through ${up}. A: down through ${down}, up through ${up}.${
        down === 1
          ? ' Draw each movement to the size of a stitch, never tight.'
          : down % 10 === 0
            ? ' Look along the row.'
            : ''
      }`,
    'graft-end': ({ down }) =>
      `B: down through ${down}, the last. Look along the row: every stitch as big as the ones beside it.`,
    'fasten-graft': () => 'Fasten the graft thread at the edge.',
    'pull-ravel-cord': ({ ravel }) =>
      ravel === 'cord'
        ? 'Pull the ravel cord out: the waste comes away from edge B.'
        : 'Find the loop in its clip, cut one strand of that ravel row and pull it out: the waste comes away from edge B.',
    'fold-seam': ({ rowsPerSide, tailCm, yarn }) =>
      `Knit side out, fold the tube flat along the trailing edge: ${rowsPerSide} rows facing ${rowsPerSide}. ${
        tailCm === null ? 'The graft tail sews on.' : `Measure ${tail(tailCm)} of ${yarn} for the seam.`
      }`,
    bars: ({ from, through, of }) =>
      `Seam, bar${from === through ? ` ${from}` : `s ${from} to ${through}`} of ${of}, one stitch in: the needle under one of the front, under one of the back, in turn. Draw up until the edges meet.`,
    'fasten-seam': () => 'Fasten the seam thread.',
    'hide-ends': () => 'Sew all yarn ends in on the inside.',
    wash: ({ state, widthCm, depthCm }) =>
      `${washing[state]}. Lay it flat, ${size(widthCm, depthCm)}, the mouth edge uncurled and pinned since it rolls inwards, and let it dry.`,
    'measure-bag': ({ widthCm, depthCm }) => {
      const typed = [widthCm, depthCm]
        .map((cm) => decimal(units.length === 'cm' ? cm : cm / 2.54, 1))
        .join(' ');
      return `Measure the bag, dry and flat: it should be ${size(widthCm, depthCm)}. Type measured and what you got, as in measured ${typed}: the next bag is planned from it.`;
    },
    'measure-rounds': ({ rounds, lengthCm }) =>
      `Measure the cord, lying at rest: ${rounds} rounds should be ${length(lengthCm)}. Where yours differ, type cord and your length: the rounds still to knit follow it.`,
    'measure-cord': ({ lengthCm }) =>
      `Measure the cord, lying at rest: it should be ${lengthNeeded(lengthCm)} long. Knit more rounds if it is shorter.`,
    'sew-cord': () =>
      'Fold the strip lengthwise, knit side out, and sew its two long edges together with the end, bar by bar.',
    'thread-eyelets': ({ hole, of, inThrough, outThrough }) =>
      `Holes ${hole} and ${hole + 1} of ${of}, counted from the graft: the cord goes in through eyelet ${inThrough} and comes out through eyelet ${outThrough}.`,
    tie: () => 'Even the two ends, knot each, and tie a bow.',
  };
};
