import type { Side } from '../bed/bed.ts';
import type { Aside } from '../steps/act.ts';
import type { Amounts } from './amounts.ts';
import type { ActWords } from './by-kind.ts';
import { whichCord, yarnName } from './forms.de.ts';

const at: Readonly<Record<Side, string>> = { left: 'links', right: 'rechts' };
const edge: Readonly<Record<Side, string>> = { left: 'linker Rand', right: 'rechter Rand' };
const rowsFrom = (from: number, through: number): string =>
  from === through ? `${from}` : `${from} bis ${through}`;
const spelt = (length: string): string => length.replace(/ cm$/, ' Zentimeter').replace(/ in$/, ' Zoll');
const aside = (aside: Aside | null): string => {
  if (!aside) return '';
  const yarn = yarnName(aside.yarn);
  return aside.how === 'park' ? `${yarn} ${at[aside.end]} ablegen, ` : `${yarn} abschneiden, `;
};
const counter = (sets: boolean, rows: number): string => (sets ? `, Zähler auf ${rows}` : '');

export const spoken = ({ length, lengthNeeded, tail, list }: Amounts): ActWords => ({
  'set-needles': ({ count, first, last, carriage }) =>
    `${count} Nadeln, ${first} bis ${last}. Schlitten ${at[carriage]}`,
  'set-needles-again': ({ count, first, last, carriage }) =>
    `Schlitten zurück nach ${at[carriage]}, ${count} Nadeln, ${first} bis ${last}`,
  'set-cord-needles': ({ draw, count, first, last, carriage }) =>
    `${draw === 'only' ? '' : `${whichCord[draw]}Kordel: `}${count} Nadeln, ${first} bis ${last}. Schlitten ${at[carriage]}`,
  'cast-on': ({ yarn, from, to }) => `mit ${yarnName(yarn)} umwickeln, ${from} bis ${to}`,
  'cast-on-cord': ({ count, yarn, from, to }) => `${count} Nadeln mit ${yarn} umwickeln, ${from} bis ${to}`,
  'hang-comb': () => 'Anschlagkamm einhängen',
  'thread-waste': (act) => `${aside(act.aside)}${yarnName(act.yarn)} einfädeln`,
  thread: (act) =>
    `${aside(act.aside)}${act.yarn}${act.aside?.how === 'park' ? ` unter ${act.aside.yarn}` : ''} einfädeln`,
  'thread-cord': ({ yarn }) => `${yarn} einfädeln`,
  'waste-rows': ({ from, through, to, first }) =>
    `Hilfsgarn ${rowsFrom(from, through)}, zuletzt nach ${at[to]}${first === null ? '' : ', langsam'}`,
  'lay-ravel-cord': ({ ravel, clipSide }) =>
    ravel === 'cord'
      ? 'Hilfsgarn abschneiden, Trennfaden einlegen'
      : `Schlinge herausziehen, ${at[clipSide]}, und klammern`,
  'ravel-pass': ({ to }) => `nach ${at[to]}`,
  'cord-first-row': ({ to }) => `nach ${at[to]}`,
  'trim-ravel-cord': ({ ravel, setsCounter }) =>
    `${ravel === 'cord' ? 'Trennfaden' : 'Hilfsgarn'} abschneiden${counter(setsCounter, 0)}`,
  'hang-weights': ({ left, right }) => `Gewichte, ${left} und ${right}`,
  'comb-off': ({ left, right }) => `Kamm ab, Gewichte unter ${left} und ${right}`,
  'move-weights': ({ left, right }) => `Gewichte höher hängen, ${left} und ${right}`,
  pass: ({ to, rowInStripe, stripeRows, crosses }) =>
    `${crosses.length === 0 ? '' : `${list(crosses)} kreuzen, `}nach ${at[to]}, Reihe ${rowInStripe} von ${stripeRows}`,
  'closing-pass': ({ to }) => `Schlussreihe, nach ${at[to]}, nur eine Reihe`,
  increase: ({ side, outer, uncovered }) =>
    `${edge[side]}, eine hinaus, auf ${outer}, ${uncovered} bleibt leer`,
  decrease: ({ side, emptied }) => `${edge[side]}, eine hinein, ${emptied} außer Arbeit`,
  'weights-off': ({ comb }) => `Hilfsgarn abschneiden, ${comb ? 'Kamm' : 'Gewichte'} ab`,
  'take-off': ({ to }) => `Fadenführer leer, Gestrick halten, einmal nach ${at[to]}: es fällt ab`,
  rehang: ({ count, first, last }) => `${count} Maschen einhängen, ${first} bis ${last}`,
  'release-waste': ({ row }) => `Hilfsgarn auftrennen${row === null ? '' : `, Zähler zurück auf ${row}`}`,
  'cut-graft-tail': ({ lengthCm, yarn }) => `${spelt(tail(lengthCm))} ${yarn} abmessen und abschneiden`,
  'lay-graft': ({ mouthSide }) => `rechte Seite oben, A oben, B unten, Öffnung ${at[mouthSide]}`,
  'graft-start': () => 'Faden einfädeln. A herauf 1',
  'graft-pair': ({ down, up }) => `B hinab ${down}, herauf ${up}. A hinab ${down}, herauf ${up}`,
  'graft-end': ({ down }) => `B hinab ${down}, die letzte`,
  'fasten-graft': () => 'Faden vernähen',
  'fasten-seam': () => 'Faden vernähen',
  'fold-corner': ({ corner }) => `Ecke ${corner}: Naht auf den Falz, quer markieren`,
  'sew-corner': ({ corner }) => `Ecke ${corner} quer abnähen, vernähen`,
  'set-hem-needles': ({ section, of, count, first, last, carriage, setsCounter }) =>
    `${of === 1 ? 'Saum' : `Saum, Abschnitt ${section}`}: ${count} Nadeln, ${first} bis ${last}. Schlitten ${at[carriage]}${counter(setsCounter, 0)}`,
  'pick-up': ({ count, rows, first, last, startAt }) =>
    `Öffnungsrand, Anfang ${at[startAt]}: ${count} aus ${rows} Reihen auffassen, ${first} bis ${last}`,
  'thread-hem': ({ yarn }) => `${yarn} einfädeln`,
  'hem-rows': ({ layer, from, through, to }) =>
    `${layer === 'inner' ? 'Maschenweite zurück, ' : ''}Saumreihen ${rowsFrom(from, through)}, zuletzt nach ${at[to]}`,
  'fold-row': ({ to }) => `zwei Zahlen größer, nach ${at[to]}`,
  'hang-fold': ({ first, last }) => `hochschlagen, erste Reihe einhängen, ${first} bis ${last}`,
  'hem-close': ({ to }) => `zwei Zahlen größer, nach ${at[to]}`,
  'bind-off': ({ yarn, from, to }) => `${yarn} abschneiden, Gewichte ab, abketten von ${from} bis ${to}`,
  'join-hem': () => 'Enden des Saums zusammennähen, vernähen',
  'pull-ravel-cord': () => 'Trennreihe herausziehen',
  'fold-seam': () => 'rechte Seite außen, für die Naht falten',
  bars: ({ from, through }) =>
    `${from === through ? 'Querfaden' : 'Querfäden'} ${rowsFrom(from, through)}, anziehen`,
  'hide-ends': () => 'Enden vernähen',
  wash: ({ state }) =>
    state === 'dry-relaxed'
      ? 'flach legen und ruhen lassen'
      : `${state === 'wet-relaxed' ? 'einweichen' : 'waschen'}, flach legen`,
  'measure-bag': () => 'Beutel messen',
  'set-slip': ({ slipTo, knitTo, setsCounter }) =>
    `nach ${at[slipTo]} Freilauf, nach ${at[knitTo]} stricken${counter(setsCounter, 0)}`,
  'weigh-flat-cord': ({ setsCounter }) => `kleines Gewicht an die Kordel${counter(setsCounter, 0)}`,
  rounds: ({ from, through }) => `${from === through ? 'Runde' : 'Runden'} ${rowsFrom(from, through)}`,
  'flat-rows': ({ from, through, to }) => `Kordelreihen ${rowsFrom(from, through)}, zuletzt nach ${at[to]}`,
  'measure-rounds': ({ rounds, lengthCm }) => `messen, ${spelt(length(lengthCm))} bei ${rounds} Runden`,
  'measure-cord': ({ lengthCm }) => `Kordel messen, ${spelt(lengthNeeded(lengthCm))}`,
  'draw-through': () => 'abschneiden, durchziehen, abnehmen',
  'sew-cord': () => 'Kordel zusammennähen',
  'thread-eyelets': ({ inThrough, outThrough }) => `hinein durch ${inThrough}, heraus durch ${outThrough}`,
  tie: ({ draw }) =>
    draw === 'only'
      ? 'Schleife binden'
      : `Enden der ${draw === 'first' ? 'ersten' : 'zweiten'} Kordel verknoten`,
});

/** Ein Wort oder zwei für einen Blick aus der Ferne. */
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
  'fold-corner': ({ corner }) => `Ecke ${corner}`,
  'sew-corner': ({ corner }) => `Naht ${corner}`,
  bars: ({ from, through }) => (from === through ? `Faden ${from}` : `Faden ${from}-${through}`),
  'hide-ends': () => 'Fadenenden',
  'set-hem-needles': () => 'Nadeln',
  'pick-up': () => 'auffassen',
  'thread-hem': ({ yarn }) => `nun ${yarn}`,
  'hem-rows': ({ from, through }) => `Saum ${from}-${through}`,
  'fold-row': ({ to }) => `locker ${at[to]}`,
  'hang-fold': () => 'umschlagen',
  'hem-close': ({ to }) => `locker ${at[to]}`,
  'bind-off': () => 'abketten',
  'join-hem': () => 'Saum nähen',
  'set-slip': () => 'Freilauf',
  'weigh-flat-cord': () => 'Gewicht',
  'draw-through': () => 'durchziehen',
  'sew-cord': () => 'nähen',
  tie: ({ draw }) => (draw === 'only' ? 'Schleife' : 'knoten'),
});
