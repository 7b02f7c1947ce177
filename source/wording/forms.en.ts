/** English words for values that several topics say. */
import { ravelCord, unnamedWaste } from '../planning/brief.ts';
import type { YarnClass } from '../planning/gauge.ts';

/** A yarn by the name that the maker gave it; two have names of ours. */
export const yarnName = (yarn: string): string =>
  yarn === unnamedWaste ? 'waste yarn' : yarn === ravelCord ? 'ravel cord' : yarn;
/** As what something is done with. */
export const theYarn = (yarn: string): string =>
  yarn === unnamedWaste || yarn === ravelCord ? `the ${yarnName(yarn)}` : yarn;

/** `light (3)` */
export const yarnClass = ({ name, number }: YarnClass): string => `${name} (${number})`;

/** Things that are counted: `1 row`, `3 rows`. */
export const several =
  (one: string, many: string) =>
  (howMany: number): string =>
    `${howMany} ${howMany === 1 ? one : many}`;

export const counted = {
  row: several('row', 'rows'),
  stitch: several('stitch', 'stitches'),
  needle: several('needle', 'needles'),
  loop: several('loop', 'loops'),
  stripe: several('stripe', 'stripes'),
  step: several('step', 'steps'),
  move: several('move', 'moves'),
  wasteRow: several('waste row', 'waste rows'),
  time: several('time', 'times'),
  log: several('log', 'logs'),
  bag: several('bag', 'bags'),
  bar: several('bar', 'bars'),
  round: several('round', 'rounds'),
  hole: several('hole', 'holes'),
  eyelet: several('eyelet', 'eyelets'),
  character: several('character', 'characters'),
  event: several('event', 'events'),
  pass: several('pass', 'passes'),
  moreStep: several('more step', 'more steps'),
  repeat: several('repeat', 'repeats'),
  sitting: several('sitting', 'sittings'),
  line: several('line', 'lines'),
  shapingMove: several('shaping move', 'shaping moves'),
};

export const plurals = () => counted;
