/** Ein Wort oder zwei für einen Blick aus der Ferne. */
import type { Side } from '../bed/bed.ts';
import type { ActWords } from './act-words.ts';
import type { Amounts } from './amounts.ts';
import { yarnName } from './forms.de.ts';

const at: Readonly<Record<Side, string>> = { left: 'links', right: 'rechts' };

export const shouted = (_: Amounts): ActWords => ({
  'set-needles': () => 'Nadeln',
  'set-needles-again': () => 'Nadeln',
  'set-cord-needles': () => 'Nadeln',
  'cast-on': () => 'anschlagen',
  'cast-on-cord': () => 'anschlagen',
  'hang-comb': () => 'Kamm',
  'comb-off': () => 'Kamm ab',
  pass: ({ to }) => `nach ${at[to]}`,
  'closing-pass': ({ to }) => `nach ${at[to]}`,
  'ravel-pass': ({ to }) => `nach ${at[to]}`,
  'cord-first-row': ({ to }) => `nach ${at[to]}`,
  'waste-rows': ({ from, through }) =>
    from === through ? `Hilfsgarn ${from}` : `Hilfsgarn ${from}-${through}`,
  'lay-ravel-cord': () => 'Trennreihe',
  'trim-ravel-cord': () => 'abschneiden',
  'pull-ravel-cord': () => 'herausziehen',
  increase: ({ side }) => `${at[side]} hinaus`,
  decrease: ({ side }) => `${at[side]} hinein`,
  thread: ({ yarn }) => `nun ${yarn}`,
  'thread-waste': ({ yarn }) => `nun ${yarnName(yarn)}`,
  'thread-cord': ({ yarn }) => `nun ${yarn}`,
  'graft-start': () => 'Masche 1',
  'graft-pair': ({ down }) => `Masche ${down}`,
  'graft-end': ({ down }) => `Masche ${down}`,
  rounds: ({ through }) => `Runde ${through}`,
  'flat-rows': ({ through }) => `Reihe ${through}`,
  'thread-eyelets': ({ inThrough }) => `Loch ${inThrough}`,
  wash: () => 'waschen',
  'measure-bag': () => 'messen',
  'measure-rounds': () => 'messen',
  'measure-cord': () => 'messen',
  rehang: () => 'aufnadeln',
  'move-weights': () => 'Gewichte',
  'hang-weights': () => 'Gewichte',
  'weights-off': ({ comb }) => (comb ? 'Kamm ab' : 'Gewichte ab'),
  'take-off': () => 'abwerfen',
  'release-waste': () => 'auftrennen',
  'cut-graft-tail': () => 'Faden messen',
  'lay-graft': () => 'hinlegen',
  'fold-seam': () => 'falten',
  'fasten-graft': () => 'festmachen',
  'fasten-seam': () => 'festmachen',
  bars: ({ from, through }) => (from === through ? `Faden ${from}` : `Faden ${from}-${through}`),
  'hide-ends': () => 'Fadenenden',
  'set-slip': () => 'Freilauf',
  'weigh-flat-cord': () => 'Gewicht',
  'draw-through': () => 'durchziehen',
  'sew-cord': () => 'nähen',
  tie: () => 'Schleife',
});
