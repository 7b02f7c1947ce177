/**
 * On paper in front of the bed: an act at the bed in few words that still tell it whole, and what is measured without a
 * command to type.
 */
import { endTailCm } from '../planning/tails.ts';
import type { Aside } from '../steps/act.ts';
import type { Amounts } from './amounts.ts';
import type { ActWords, ShortKind } from './by-kind.ts';
import { yarnName } from './forms.en.ts';

const rowsFrom = (from: number, through: number): string =>
  from === through ? `row ${from}` : `rows ${from} to ${through}`;
const counterTo = (sets: boolean, rows: number): string => (sets ? ` Counter to ${rows}.` : '');

export const inShort = ({ length, lengthNeeded, tail, list }: Amounts): ActWords<ShortKind> => {
  const endTail = tail(endTailCm);
  const setAside = (aside: Aside | null): string => {
    if (!aside) return '';
    const yarn = yarnName(aside.yarn);
    if (aside.how === 'cut') return `Cut ${yarn}, ${endTail} tail. `;
    return aside.across
      ? `Clip ${yarn} on the ${aside.end}, led below the needles. `
      : `Clip ${yarn} straight back on the ${aside.end}. `;
  };
  return {
    'set-needles': ({ stitchSize, carriage, count, first, last }) =>
      `Stitch size ${stitchSize ?? 'as for the swatch'}, carriage ${carriage}. ${count} needles into work, ${first} to ${last}.`,
    'cast-on': ({ yarn, from, to }) =>
      `E-wrap ${yarnName(yarn)} from ${from} to ${to}, ending beside the carriage.`,
    'thread-waste': ({ yarn, aside }) => `${setAside(aside)}Thread ${yarnName(yarn)}.`,
    'waste-rows': ({ from, through, to, first }) =>
      `Waste ${rowsFrom(from, through)}, ending ${to}${
        first === null ? '' : first === 'held down' ? ', slowly, loops held down' : ', slowly'
      }.`,
    'hang-comb': () => 'Hang the comb.',
    'hang-weights': ({ left, right }) => `Claw weights under ${left} and ${right}.`,
    'lay-ravel-cord': ({ ravel, wasteYarn, clipSide }) =>
      ravel === 'cord'
        ? `Cut ${yarnName(wasteYarn)}. Ravel cord into the feeder, its end clipped on the ${clipSide}.`
        : `Draw out a hand-long loop at the ${clipSide} edge, clip it.`,
    'ravel-pass': ({ to }) => `Ravel row: one pass ${to}.`,
    'trim-ravel-cord': ({ ravel, wasteYarn, setsCounter }) =>
      `${ravel === 'cord' ? 'Cut the ravel cord, an end at each side.' : `Cut ${yarnName(wasteYarn)}.`}${counterTo(setsCounter, 0)}`,
    thread: ({ yarn, aside, waitsAt }) => {
      const isBeside = aside?.how === 'park' && aside.end === waitsAt;
      const from = waitsAt === null || isBeside ? '' : ` from the ${waitsAt}`;
      const under = aside?.how === 'park' ? ` under ${aside.yarn}` : '';
      return `${setAside(aside)}Thread ${yarn}${from}${under}, ${waitsAt === null ? `${endTail} tail` : 'strand loose'}.`;
    },
    pass: ({ to, yarn, crosses }) =>
      `${crosses.length === 0 ? '' : `Lay ${list(crosses)} loosely over ${yarn}. `}Knit ${to} with ${yarn}.`,
    'closing-pass': ({ to, yarn }) => `Closing row: one row ${to} with ${yarn}.`,
    increase: ({ side, outer, from, to, uncovered }) =>
      `${titled[side]} edge out: ${outer} into work, ${list(from)} to ${list(to)}; ${uncovered} stays in work, empty.`,
    decrease: ({ side, from, to, emptied }) =>
      `${titled[side]} edge in: ${list(from)} to ${list(to)}; ${emptied} out of work.`,
    'comb-off': ({ left, right }) => `Comb off, claw weights under ${left} and ${right}.`,
    'move-weights': ({ left, right }) => `Claw weights up, under ${left} and ${right}.`,
    'weights-off': ({ wasteYarn, comb }) =>
      `Cut ${yarnName(wasteYarn)}. ${comb ? 'Comb off, a hand under it.' : 'Weights off, a hand under each.'}`,
    'take-off': ({ to }) => `Hold the work; feeder empty, one pass ${to}: it drops. All needles out of work.`,
    'set-needles-again': ({ carriage, count, first, last }) =>
      `Carriage back to the ${carriage}. ${count} needles into work, ${first} to ${last}.`,
    rehang: ({ count, first, last, yarn }) =>
      `Waste folded back, purl side towards you: hang the ${count} loops of the last ${yarn} row on ${first} to ${last}.`,
    'release-waste': ({ rehangs, row }) =>
      `Unpick the waste rows${rehangs ? '' : ' from edge A'}.${row === null ? '' : ` Counter back to ${row}.`}`,
    'cut-graft-tail': ({ lengthCm, yarn, throughSeam, alsoCut }) =>
      `Cut ${yarn} at ${tail(lengthCm)}, for graft${throughSeam ? ' and seam' : ''}.${
        alsoCut.length === 0 ? '' : ` Cut ${list(alsoCut)} too.`
      }`,
    'set-hem-needles': ({ section, of, carriage, count, first, last, setsCounter }) =>
      `${of === 1 ? 'Stitch' : `Section ${section} of ${of}: stitch`} size as for the bag, carriage ${carriage}. ${count} needles into work, ${first} to ${last}.${counterTo(setsCounter, 0)}`,
    'pick-up': ({ first, last, count, rows, startAt }) =>
      `Purl side towards you, the strip's start ${startAt}: ${count} loops of the mouth edge from ${rows} rows on ${first} to ${last}. Weights at both ends.`,
    'thread-hem': ({ yarn }) => `Thread ${yarn}, ${endTail} tail.`,
    'hem-rows': ({ layer, from, through, of, to }) =>
      `${layer === 'inner' ? 'Size back, hem' : 'Hem'} ${rowsFrom(from, through)} of ${of}, ending ${to}.`,
    'fold-row': ({ number, of, to }) => `Two sizes larger, row ${number} of ${of} to the ${to}: the fold.`,
    'hang-fold': ({ count, first, last }) =>
      `Fold it up, purl sides together: the ${count} loops of its first row beside those on ${first} to ${last}.`,
    'hem-close': ({ number, of, to }) =>
      `Two sizes larger, row ${number} of ${of} to the ${to} through both.`,
    'bind-off': ({ yarn, from, to }) =>
      `Cut ${yarn}, ${endTail} tail. Weights off, a hand under each. Chain off loosely from ${from} to ${to}.`,
    'set-cord-needles': ({ draw, carriage, count, first, last }) =>
      `${draw === 'only' ? 'Stitch' : `For the ${draw} cord: stitch`} size as for the bag, carriage ${carriage}. ${count} needles into work, ${first} to ${last}.`,
    'cast-on-cord': ({ count, yarn, from, to }) =>
      `E-wrap the ${count} needles with ${yarn}, ${from} to ${to}, ${endTail} tail.`,
    'thread-cord': ({ yarn }) => `Thread ${yarn}.`,
    'cord-first-row': ({ to }) => `Knit one row to the ${to}.`,
    'set-slip': ({ slipTo, knitTo, setsCounter }) =>
      `Small weight on the cord. Carriage: slip to the ${slipTo}, knit to the ${knitTo}.${counterTo(setsCounter, 0)}`,
    'weigh-flat-cord': ({ setsCounter }) =>
      `Small weight on the cord. No slip here: knit it flat, sew it together later.${counterTo(setsCounter, 0)}`,
    rounds: ({ from, through, of, slipTo, knitTo, counter }) =>
      `${from === through ? `Round ${from}` : `Rounds ${from} to ${through}`} of ${of}, slip ${slipTo}, knit ${knitTo}${counter === null ? '' : `, counter ${counter}`}.`,
    'flat-rows': ({ from, through, of, to }) => `Cord ${rowsFrom(from, through)} of ${of}, ending ${to}.`,
    'measure-rounds': ({ rounds, lengthCm }) =>
      `Measure it at rest: ${rounds} rounds should be ${length(lengthCm)}.`,
    'measure-cord': ({ draw, lengthCm }) =>
      `Measure ${draw === 'only' ? 'it' : `the ${draw} cord`} at rest: ${lengthNeeded(lengthCm)}. Knit more rounds if it is shorter.`,
    'measure-bag': ({ widthCm, depthCm }) =>
      `Measure the bag, dry and flat: ${length(widthCm)} wide, ${length(depthCm)} deep.`,
    'draw-through': ({ yarn, count, sewsWithCm }) =>
      `Cut ${yarn}, leaving ${tail(sewsWithCm ?? endTailCm)}. Draw it through the ${count} loops, take them off${
        sewsWithCm === null ? ', hide it inside' : ''
      }.`,
  };
};

const titled = { left: 'Left', right: 'Right' } as const;
