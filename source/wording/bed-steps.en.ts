/**
 * At the bed: what the hands do, one instruction an act, at most 240 letters. Every move can be read from its sentence alone;
 * needles and yarns are called by their names.
 */
import { endTailCm } from '../planning/tails.ts';
import type { Aside } from '../steps/step.ts';
import type { ActWords, BedKind } from './act-words.ts';
import type { Amounts } from './amounts.ts';

const yarnName = (yarn: string): string =>
  yarn === 'waste' ? 'the waste yarn' : yarn === 'ravel cord' ? 'the ravel cord' : yarn;
const wasteName = (yarn: string): string =>
  yarn === 'waste' ? 'the waste yarn' : `${yarn}, the waste yarn,`;
const rowsFrom = (from: number, through: number): string =>
  from === through
    ? `row ${from}`
    : through === from + 1
      ? `rows ${from} and ${through}`
      : `rows ${from} to ${through}`;

export const bedSteps = ({ tail, list }: Amounts): ActWords<BedKind> => {
  const endTail = tail(endTailCm);
  const setAside = (aside: Aside | null): string => {
    if (!aside) return '';
    const yarn = yarnName(aside.yarn);
    if (aside.how === 'cut') return `Cut ${yarn}, leaving a ${endTail} tail. `;
    return aside.across
      ? `Take ${yarn} out of the feeder, lead it down, below the needles and under the front edge of the bed, and clip it on the ${aside.end}. `
      : `Take ${yarn} out of the feeder and clip it straight back on the ${aside.end}. `;
  };
  const under = (aside: Aside | null): string =>
    aside?.how === 'park' ? ` under ${yarnName(aside.yarn)}` : '';
  const lift = (from: readonly string[], to: readonly string[]): string =>
    `with the ${from.length}-prong tool lift ${from.length === 1 ? 'loop' : 'loops'} ${list(from)} to ${list(to)}`;
  const counterTo = (sets: boolean, rows: number): string => (sets ? ` Row counter to ${rows}.` : '');
  return {
    'set-needles': ({ stitchSize, carriage, count, first, last }) =>
      `Stitch size ${stitchSize === null ? 'as' : `${stitchSize}, as`} for the swatch. Carriage on the ${carriage}. Bring ${count} needles into work: ${first} to ${last}.`,
    'cast-on': ({ yarn, from, to }) =>
      `E-wrap ${wasteName(yarn)} round each needle from ${from} to ${to}, so that the yarn ends beside the carriage.`,
    'thread-waste': ({ yarn, aside }) => `${setAside(aside)}Thread ${wasteName(yarn)} into the feeder.`,
    'waste-rows': ({ from, through, of, to, first }) =>
      `Knit waste ${rowsFrom(from, through)} of ${of}, ${from === through ? '' : 'the last '}to the ${to}.${
        first === null
          ? ''
          : first === 'held down'
            ? ' Slowly, the loops held down against the bed with your free hand.'
            : ' Slowly: nothing holds the loops down yet.'
      }`,
    'hang-comb': () => 'Hang the cast-on comb on the waste.',
    'hang-weights': ({ left, right }) => `Hang a claw weight at each edge: under ${left} and under ${right}.`,
    'lay-ravel-cord': ({ ravel, wasteYarn, clipSide }) =>
      ravel === 'cord'
        ? `Cut ${yarnName(wasteYarn)}. Lay the ravel cord in the feeder, its end held slack by a clip on the ${clipSide}.`
        : `At the ${clipSide} edge draw out a loop of ${yarnName(wasteYarn)} as long as your hand, and hold it slack with a clip: it marks the row that is pulled out later.`,
    'ravel-pass': ({ to }) => `Ravel row: one pass to the ${to}.`,
    'trim-ravel-cord': ({ ravel, wasteYarn, setsCounter }) =>
      (ravel === 'cord'
        ? 'Cut the ravel cord, leaving an end at each side to pull later.'
        : `Cut ${yarnName(wasteYarn)} here; the loop in its clip stays.`) + counterTo(setsCounter, 0),
    thread: ({ yarn, aside, waitsAt }) => {
      const comes = `${setAside(aside)}Thread ${yarn}`;
      if (waitsAt === null) return `${comes}${under(aside)} into the feeder, leaving a ${endTail} tail.`;
      const beside = aside?.how === 'park' && aside.end === waitsAt;
      return `${comes} from its clip${beside ? '' : ` on the ${waitsAt}`}${under(aside)} into the feeder, its strand loose up the edge.`;
    },
    pass: ({ to, yarn, rowInStripe, stripeRows, crosses, rowInAll }) =>
      (crosses.length === 0 ? '' : `Lay the waiting ${list(crosses)} over ${yarn} at the edge, loosely. `) +
      `Knit one row to the ${to} with ${yarn}: row ${rowInStripe} of ${stripeRows} in this stripe${rowInAll === null ? '' : `, row ${rowInAll} in all`}.`,
    'closing-pass': ({ to, yarn }) =>
      `Closing row: knit one row to the ${to} with ${yarn}. The graft will be the last row of this stripe.`,
    increase: ({ side, outer, from, to, uncovered }) =>
      `${titled[side]} edge, increase, one needle out: bring ${outer} into work, ${lift(from, to)}. Leave ${uncovered} in work and empty: the eyelet.`,
    decrease: ({ side, from, to, emptied }) =>
      `${titled[side]} edge, decrease, one needle in: ${lift(from, to)}. Push ${emptied} out of work.`,
    'comb-off': ({ left, right }) =>
      `Take the comb off, a hand under it. Hang a claw weight at each edge: under ${left} and under ${right}.`,
    'move-weights': ({ left, right }) => `Move the claw weights up: under ${left} and under ${right}.`,
    'weights-off': ({ wasteYarn, comb }) =>
      `Cut ${yarnName(wasteYarn)}. Take the ${comb ? 'comb off, a hand under it' : 'claw weights off, a hand under each'}.`,
    'take-off': ({ to }) =>
      `Hold the work and, with nothing in the feeder, pass the carriage once to the ${to}: it drops, kept by its waste rows. All needles out of work.`,
    'set-needles-again': ({ carriage, count, first, last }) =>
      `Bring the carriage back to the ${carriage} over the empty bed. Bring ${count} needles into work: ${first} to ${last}.`,
    rehang: ({ count, first, last, yarn }) =>
      `Fold the waste back, purl side towards you. Hang the ${count} loops of the last ${yarn} row, not those of the waste, one on each needle from ${first} to ${last}.`,
    'release-waste': ({ rehangs, row }) =>
      rehangs
        ? `Unpick the waste rows.${row === null ? '' : ` Row counter back to ${row}.`}`
        : 'Unpick the waste rows from edge A.',
    'cut-graft-tail': ({ lengthCm, yarn, throughSeam, alsoCut }) =>
      `Measure ${tail(lengthCm)} of ${yarn} and cut it there: the tail for the graft${throughSeam ? ' and the bottom seam' : ''}.${
        alsoCut.length === 0 ? '' : ` Cut ${list(alsoCut)} too.`
      }`,
    'set-cord-needles': ({ carriage, count, first, last }) =>
      `For the cord, stitch size as for the bag: carriage on the ${carriage}. Bring ${count} needles into work: ${first} to ${last}.`,
    'cast-on-cord': ({ count, yarn, from, to }) =>
      `E-wrap the ${count} needles with ${yarn}, from ${from} to ${to} beside the carriage, leaving a ${endTail} tail.`,
    'thread-cord': ({ yarn }) => `Thread ${yarn} into the feeder.`,
    'cord-first-row': ({ to }) => `Knit one row to the ${to}.`,
    'set-slip': ({ slipTo, knitTo, setsCounter }) =>
      `Hang a small weight on the cord. Set the carriage to slip to the ${slipTo} and knit to the ${knitTo}.${counterTo(setsCounter, 0)}`,
    'weigh-flat-cord': ({ setsCounter }) =>
      `Hang a small weight on the cord. This bed cannot slip: knit the cord flat, as a strip, and sew it together later.${counterTo(setsCounter, 0)}`,
    rounds: ({ from, through, of, slipTo, knitTo, counter }) =>
      `${from === through ? `Round ${from} of ${of}: ` : `Rounds ${from} to ${through} of ${of}: each time `}slip to the ${slipTo}, knit to the ${knitTo}.${
        counter === null ? '' : ` The row counter then shows ${counter}.`
      }`,
    'flat-rows': ({ from, through, of, to }) =>
      `Cord ${rowsFrom(from, through)} of ${of}: knit ${from === through ? '' : 'to and fro, the last '}to the ${to}.`,
    'draw-through': ({ yarn, count, sewsWithCm }) =>
      sewsWithCm === null
        ? `Cut ${yarn}, leaving ${endTail}. Draw the end through the ${count} loops, take them off, and hide it inside the cord.`
        : `Cut ${yarn}, leaving ${tail(sewsWithCm)} to sew with. Draw the end through the ${count} loops and take them off.`,
  };
};

const titled = { left: 'Left', right: 'Right' } as const;
