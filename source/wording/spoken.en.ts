/** A step in the fewest words: those that are heard with the screen out of sight, and those that are read from afar. */
import { unnamedWaste } from '../planning/brief.ts';
import type { Aside } from '../steps/act.ts';
import type { Amounts } from './amounts.ts';
import type { ActWords } from './by-kind.ts';
import { theYarn } from './forms.en.ts';

const rowsFrom = (from: number, through: number): string =>
  from === through ? `${from}` : `${from} to ${through}`;
/** Units in full, for a voice. */
const spelt = (length: string): string => length.replace(/ cm$/, ' centimetres').replace(/ in$/, ' inches');
const aside = (aside: Aside | null): string => {
  if (!aside) return '';
  return aside.how === 'park' ? `park ${theYarn(aside.yarn)} ${aside.end}, ` : `cut ${theYarn(aside.yarn)}, `;
};
const counter = (sets: boolean, rows: number): string => (sets ? `, counter to ${rows}` : '');

export const spoken = ({ length, lengthNeeded, tail, list }: Amounts): ActWords => ({
  'set-needles': ({ count, first, last, carriage }) =>
    `${count} needles, ${first} to ${last}. Carriage ${carriage}`,
  'set-needles-again': ({ count, first, last, carriage }) =>
    `carriage back to the ${carriage}, ${count} needles, ${first} to ${last}`,
  'set-cord-needles': ({ draw, count, first, last, carriage }) =>
    `${draw === 'only' ? '' : `${draw} cord: `}${count} needles, ${first} to ${last}. Carriage ${carriage}`,
  'cast-on': ({ yarn, from, to }) => `wrap with ${theYarn(yarn)}, ${from} to ${to}`,
  'cast-on-cord': ({ count, yarn, from, to }) => `wrap ${count} needles with ${yarn}, ${from} to ${to}`,
  'hang-comb': () => 'hang the comb',
  'thread-waste': (act) => `${aside(act.aside)}thread ${theYarn(act.yarn)}`,
  thread: (act) =>
    `${aside(act.aside)}thread ${act.yarn}${act.aside?.how === 'park' ? ` under ${act.aside.yarn}` : ''}`,
  'thread-cord': ({ yarn }) => `thread ${yarn}`,
  'waste-rows': ({ from, through, to, first }) =>
    `waste ${rowsFrom(from, through)}, ending ${to}${first === null ? '' : ', slowly'}`,
  'lay-ravel-cord': ({ ravel, clipSide }) =>
    ravel === 'cord' ? 'cut the waste yarn, lay the ravel cord' : `draw out a loop, ${clipSide}, and clip it`,
  'ravel-pass': ({ to }) => `knit ${to}`,
  'cord-first-row': ({ to }) => `knit ${to}`,
  'trim-ravel-cord': ({ ravel, setsCounter }) =>
    `cut the ${ravel === 'cord' ? 'ravel cord' : 'waste yarn'}${counter(setsCounter, 0)}`,
  'hang-weights': ({ left, right }) => `weights, ${left} and ${right}`,
  'comb-off': ({ left, right }) => `comb off, weights under ${left} and ${right}`,
  'move-weights': ({ left, right }) => `move the weights up, ${left} and ${right}`,
  pass: ({ to, rowInStripe, stripeRows, crosses }) =>
    `${crosses.length === 0 ? '' : `cross ${list(crosses)}, `}knit ${to}, row ${rowInStripe} of ${stripeRows}`,
  'closing-pass': ({ to }) => `closing row, knit ${to}, one row only`,
  increase: ({ side, outer, uncovered }) => `${side} edge, one out, to ${outer}, ${uncovered} stays empty`,
  decrease: ({ side, emptied }) => `${side} edge, one in, ${emptied} out of work`,
  'weights-off': ({ comb }) => `cut the waste yarn, ${comb ? 'comb' : 'weights'} off`,
  'take-off': ({ to }) => `feeder empty, hold the work, one pass ${to}: it drops`,
  rehang: ({ count, first, last }) => `hang ${count} loops, ${first} to ${last}`,
  'release-waste': ({ row }) => `unpick the waste${row === null ? '' : `, counter back to ${row}`}`,
  'cut-graft-tail': ({ lengthCm, yarn }) => `measure ${spelt(tail(lengthCm))} of ${yarn} and cut`,
  'lay-graft': ({ mouthSide }) => `lay it knit side up, A above, B below, mouth ${mouthSide}`,
  'graft-start': () => 'thread the tail. A up 1',
  'graft-pair': ({ down, up }) => `B down ${down}, up ${up}. A down ${down}, up ${up}`,
  'graft-end': ({ down }) => `B down ${down}, the last`,
  'fasten-graft': () => 'fasten the thread',
  'fasten-seam': () => 'fasten the thread',
  'fold-corner': ({ corner }) => `corner ${corner}: seam on the fold, mark across`,
  'sew-corner': ({ corner }) => `sew corner ${corner} across, fasten`,
  'set-hem-needles': ({ section, of, count, first, last, carriage, setsCounter }) =>
    `${of === 1 ? 'hem' : `hem, section ${section}`}: ${count} needles, ${first} to ${last}. Carriage ${carriage}${counter(setsCounter, 0)}`,
  'pick-up': ({ count, rows, first, last, startAt }) =>
    `mouth edge, start ${startAt}: pick up ${count} from ${rows} rows, ${first} to ${last}`,
  'thread-hem': ({ yarn }) => `thread ${yarn}`,
  'hem-rows': ({ layer, from, through, to }) =>
    `${layer === 'inner' ? 'stitch size back, ' : ''}hem rows ${rowsFrom(from, through)}, ending ${to}`,
  'fold-row': ({ to }) => `two sizes larger, knit ${to}`,
  'hang-fold': ({ first, last }) => `fold up, hang the first row on ${first} to ${last}`,
  'hem-close': ({ to }) => `two sizes larger, knit ${to}`,
  'bind-off': ({ yarn, from, to }) => `cut ${yarn}, weights off, chain off from ${from} to ${to}`,
  'join-hem': () => 'sew the ends of the hem together, fasten',
  'pull-ravel-cord': () => 'pull the ravel row out',
  'fold-seam': () => 'knit side out, fold for the seam',
  bars: ({ from, through }) => `bar${from === through ? '' : 's'} ${rowsFrom(from, through)}, draw up`,
  'hide-ends': () => 'sew the ends in',
  wash: ({ state }) =>
    state === 'dry-relaxed'
      ? 'lay it flat, to rest'
      : `${state === 'wet-relaxed' ? 'soak' : 'wash'} it, lay it flat`,
  'measure-bag': () => 'measure the bag',
  'set-slip': ({ slipTo, knitTo, setsCounter }) => `slip ${slipTo}, knit ${knitTo}${counter(setsCounter, 0)}`,
  'weigh-flat-cord': ({ setsCounter }) => `small weight on the cord${counter(setsCounter, 0)}`,
  rounds: ({ from, through }) => `round${from === through ? '' : 's'} ${rowsFrom(from, through)}`,
  'flat-rows': ({ from, through, to }) => `cord rows ${rowsFrom(from, through)}, ending ${to}`,
  'measure-rounds': ({ rounds, lengthCm }) => `measure, ${spelt(length(lengthCm))} at ${rounds} rounds`,
  'measure-cord': ({ lengthCm }) => `measure the cord, ${spelt(lengthNeeded(lengthCm))}`,
  'draw-through': () => 'cut, draw through, take off',
  'sew-cord': () => 'sew the cord together',
  'thread-eyelets': ({ inThrough, outThrough }) => `in through ${inThrough}, out through ${outThrough}`,
  tie: ({ draw }) => (draw === 'only' ? 'tie a bow' : `knot the ends of the ${draw} cord`),
});

/** One or two words for a glance from afar. */
export const shouted = (_: Amounts): ActWords => ({
  'set-needles': () => 'needles',
  'set-needles-again': () => 'needles',
  'set-cord-needles': () => 'needles',
  'cast-on': () => 'cast on',
  'cast-on-cord': () => 'cast on',
  'hang-comb': () => 'comb',
  'comb-off': () => 'comb off',
  pass: ({ to }) => `knit ${to}`,
  'closing-pass': ({ to }) => `knit ${to}`,
  'ravel-pass': ({ to }) => `knit ${to}`,
  'cord-first-row': ({ to }) => `knit ${to}`,
  'waste-rows': ({ from, through }) => (from === through ? `waste ${from}` : `waste ${from}-${through}`),
  'lay-ravel-cord': () => 'ravel row',
  'trim-ravel-cord': () => 'cut',
  'pull-ravel-cord': () => 'pull out',
  increase: ({ side }) => `${side} out`,
  decrease: ({ side }) => `${side} in`,
  thread: ({ yarn }) => `to ${yarn}`,
  'thread-waste': ({ yarn }) => `to ${yarn === unnamedWaste ? 'waste' : yarn}`,
  'thread-cord': ({ yarn }) => `to ${yarn}`,
  'graft-start': () => 'graft 1',
  'graft-pair': ({ down }) => `graft ${down}`,
  'graft-end': ({ down }) => `graft ${down}`,
  rounds: ({ through }) => `round ${through}`,
  'flat-rows': ({ through }) => `row ${through}`,
  'thread-eyelets': ({ inThrough }) => `hole ${inThrough}`,
  wash: () => 'wash',
  'measure-bag': () => 'measure',
  'measure-rounds': () => 'measure',
  'measure-cord': () => 'measure',
  rehang: () => 'hang again',
  'move-weights': () => 'weights',
  'hang-weights': () => 'weights',
  'weights-off': ({ comb }) => (comb ? 'comb off' : 'weights off'),
  'take-off': () => 'drop',
  'release-waste': () => 'unpick',
  'cut-graft-tail': () => 'cut tail',
  'lay-graft': () => 'lay flat',
  'fold-seam': () => 'fold',
  'fasten-graft': () => 'fasten',
  'fasten-seam': () => 'fasten',
  'fold-corner': ({ corner }) => `corner ${corner}`,
  'sew-corner': ({ corner }) => `sew ${corner}`,
  bars: ({ from, through }) => (from === through ? `bar ${from}` : `bar ${from}-${through}`),
  'hide-ends': () => 'sew ends',
  'set-hem-needles': () => 'needles',
  'pick-up': () => 'pick up',
  'thread-hem': ({ yarn }) => `to ${yarn}`,
  'hem-rows': ({ from, through }) => `hem ${from}-${through}`,
  'fold-row': ({ to }) => `loose ${to}`,
  'hang-fold': () => 'fold up',
  'hem-close': ({ to }) => `loose ${to}`,
  'bind-off': () => 'chain off',
  'join-hem': () => 'sew hem',
  'set-slip': () => 'set slip',
  'weigh-flat-cord': () => 'weight',
  'draw-through': () => 'draw off',
  'sew-cord': () => 'sew',
  tie: () => 'tie',
});
