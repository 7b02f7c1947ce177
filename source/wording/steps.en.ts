/**
 * What the hands do, one instruction an act, at most 240 letters. Every move can be read from its sentence alone; needles
 * and yarns are called by their names.
 */

import { type RelaxedState, unnamedWaste } from '../planning/brief.ts';
import { endTailCm } from '../planning/tails.ts';
import type { Aside } from '../steps/act.ts';
import type { Amounts } from './amounts.ts';
import type { ActWords } from './by-kind.ts';
import { theYarn } from './forms.en.ts';

const wasteName = (yarn: string): string =>
  yarn === unnamedWaste ? 'the waste yarn' : `${yarn}, the waste yarn,`;
const rowsFrom = (from: number, through: number): string =>
  from === through
    ? `row ${from}`
    : through === from + 1
      ? `rows ${from} and ${through}`
      : `rows ${from} to ${through}`;

const washing: Readonly<Record<RelaxedState, string>> = {
  'dry-relaxed': 'Lay the bag',
  'wet-relaxed': 'Soak the bag and press the water out, do not wring it. Lay it',
  'fully-relaxed': 'Wash and tumble the bag as it will be washed. Lay it',
};

export const steps = ({ decimal, length, lengthNeeded, list, tail, units }: Amounts): ActWords => {
  const size = (widthCm: number, depthCm: number): string =>
    `${length(widthCm)} wide and ${length(depthCm)} deep`;
  const endTail = tail(endTailCm);
  const setAside = (aside: Aside | null): string => {
    if (!aside) return '';
    const yarn = theYarn(aside.yarn);
    if (aside.how === 'cut') return `Cut ${yarn}, leaving a ${endTail} tail. `;
    return aside.across
      ? `Take ${yarn} out of the feeder, lead it down, below the needles and under the front edge of the bed, and clip it on the ${aside.end}. `
      : `Take ${yarn} out of the feeder and clip it straight back on the ${aside.end}. `;
  };
  const under = (aside: Aside | null): string =>
    aside?.how === 'park' ? ` under ${theYarn(aside.yarn)}` : '';
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
        ? `Cut ${theYarn(wasteYarn)}. Lay the ravel cord in the feeder, its end held slack by a clip on the ${clipSide}.`
        : `At the ${clipSide} edge draw out a loop of ${theYarn(wasteYarn)} as long as your hand, and hold it slack with a clip: it marks the row that is pulled out later.`,
    'ravel-pass': ({ to }) => `Ravel row: one pass to the ${to}.`,
    'trim-ravel-cord': ({ ravel, wasteYarn, setsCounter }) =>
      (ravel === 'cord'
        ? 'Cut the ravel cord, leaving an end at each side to pull later.'
        : `Cut ${theYarn(wasteYarn)} here; the loop in its clip stays.`) + counterTo(setsCounter, 0),
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
      `Cut ${theYarn(wasteYarn)}. Take the ${comb ? 'comb off, a hand under it' : 'claw weights off, a hand under each'}.`,
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
    'set-hem-needles': ({ section, of, carriage, count, first, last, setsCounter }) =>
      `For ${of === 1 ? 'the hem' : `section ${section} of ${of} of the hem`}, stitch size as for the bag: carriage on the ${carriage}. Bring ${count} needles into work: ${first} to ${last}.${counterTo(setsCounter, 0)}`,
    'pick-up': ({ section, of, first, last, count, rows, startAt }) =>
      `Purl side towards you, ${of === 1 ? '' : section === 1 ? 'from its start on, ' : 'next to the last section, '}pick up the mouth edge, the strip's start on the ${startAt}: ${count} loops from ${rows} rows, spread evenly, one on each needle from ${first} to ${last}. A claw weight at each end.`,
    'thread-hem': ({ yarn }) => `Thread ${yarn} into the feeder, leaving a ${endTail} tail.`,
    'hem-rows': ({ layer, from, through, of, to }) =>
      `${layer === 'inner' ? 'Stitch size back. ' : ''}Hem ${rowsFrom(from, through)} of ${of}: knit to and fro, the last to the ${to}.`,
    'fold-row': ({ number, of, to }) =>
      `Stitch size two numbers larger. Hem row ${number} of ${of}, to fold on: knit one row to the ${to}.`,
    'hang-fold': ({ count, first, last }) =>
      `Fold the hem up in front of the needles, purl sides together, and hang the ${count} loops of its first row beside those on the needles, one each, from ${first} to ${last}.`,
    'hem-close': ({ number, of, to }) =>
      `Stitch size two numbers larger. Hem row ${number} of ${of}, through both loops on each needle: knit one row to the ${to}.`,
    'bind-off': ({ yarn, from, to }) =>
      `Cut ${yarn}, leaving a ${endTail} tail. Weights off, a hand under each. Chain the loops off loosely from ${from} to ${to}, each drawn through the one before with the latch tool, the tail through the last.`,
    'join-hem': ({ joins }) =>
      joins === 1
        ? 'Sew the two ends of the hem together over the graft, edge to edge through both layers, with its tail. Fasten it.'
        : `Sew the ends of the hem together in ${joins} places, edge to edge through both layers, with their tails. Fasten each.`,
    'set-cord-needles': ({ draw, carriage, count, first, last }) =>
      `For the ${draw === 'only' ? '' : `${draw} `}cord, stitch size as for the bag: carriage on the ${carriage}. Bring ${count} needles into work: ${first} to ${last}.`,
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
    'fold-corner': ({ corner, fromTipCm, acrossCm, tailCm, yarn }) =>
      `${corner === 1 ? 'Turn the bag inside out. ' : ''}Corner ${corner} of 2: lay it flat, the bottom seam on the side's fold. Mark ${length(fromTipCm)} from the tip along the seam: the line across it there is ${length(acrossCm)} long. Measure ${tail(tailCm)} of ${yarn} for it.`,
    'sew-corner': ({ corner, acrossCm }) =>
      `Sew corner ${corner} across: ${length(acrossCm)} through both layers, at right angles to the seam, in small back stitches. Fasten the thread and hide its ends.${corner === 2 ? ' Turn the bag knit side out.' : ''}`,
    'hide-ends': () => 'Sew all yarn ends in on the inside.',
    wash: ({ state, rolls, widthCm, depthCm }) =>
      `${washing[state]} flat, ${size(widthCm, depthCm)}, ${rolls ? 'the mouth edge uncurled and pinned since it rolls inwards' : 'the hem pinned straight'}, and let it ${state === 'dry-relaxed' ? 'rest for a day' : 'dry'}.`,
    'measure-bag': ({ widthCm, depthCm }) => {
      const typed = [widthCm, depthCm]
        .map((cm) => decimal(units.length === 'cm' ? cm : cm / 2.54, 1))
        .join(' ');
      return `Measure the bag, dry and flat: it should be ${size(widthCm, depthCm)}. Type measured and what you got, as in measured ${typed}: the next bag is planned from it.`;
    },
    'measure-rounds': ({ rounds, lengthCm }) =>
      `Measure the cord, lying at rest: ${rounds} rounds should be ${length(lengthCm)}. Where yours differ, type cord and your length: the rounds still to knit follow it.`,
    'measure-cord': ({ draw, lengthCm }) =>
      `Measure the ${draw === 'only' ? '' : `${draw} `}cord, lying at rest: it should be ${lengthNeeded(lengthCm)} long. Knit more rounds if it is shorter.`,
    'sew-cord': () =>
      'Fold the strip lengthwise, knit side out, and sew its two long edges together with the end, bar by bar.',
    'thread-eyelets': ({ draw, hole, of, inThrough, outThrough }) =>
      draw === 'second'
        ? `Second cord, holes ${hole} and ${hole + 1} of ${of}, begun across from the graft: where the first comes out, it goes in through eyelet ${inThrough} and comes out through eyelet ${outThrough}.`
        : `Holes ${hole} and ${hole + 1} of ${of}, counted from the graft: the ${draw === 'only' ? '' : 'first '}cord goes in through eyelet ${inThrough} and comes out through eyelet ${outThrough}.`,
    tie: ({ draw }) => {
      if (draw === 'only') return 'Even the two ends, knot each, and tie a bow.';
      const even = `Even the two ends of the ${draw} cord and knot them together`;
      return draw === 'first'
        ? `${even}, outside at the graft, so that it stays while the other goes in.`
        : `${even}, outside across from the graft. Pull both knots away from each other: the mouth closes.`;
    },
  };
};

const titled = { left: 'Left', right: 'Right' } as const;
