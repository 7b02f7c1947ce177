/** Auf Papier vor dem Bett: in wenig Worten, wie in `in-short.en.ts`. */
import type { Side } from '../bed/bed.ts';
import { endTailCm } from '../planning/tails.ts';
import type { Aside } from '../steps/act.ts';
import type { Amounts } from './amounts.ts';
import type { ActWords, ShortKind } from './by-kind.ts';
import { whichCord, yarnName } from './forms.de.ts';

const at: Readonly<Record<Side, string>> = { left: 'links', right: 'rechts' };
const rowsFrom = (from: number, through: number): string =>
  from === through ? `${from}` : `${from} bis ${through}`;
const counterTo = (sets: boolean, rows: number): string => (sets ? ` Zähler auf ${rows}.` : '');

export const inShort = ({ length, lengthNeeded, tail, list }: Amounts): ActWords<ShortKind> => {
  const endTail = tail(endTailCm);
  const setAside = (aside: Aside | null): string => {
    if (!aside) return '';
    const yarn = yarnName(aside.yarn);
    if (aside.how === 'cut') return `${yarn} abschneiden, ${endTail} Ende. `;
    return aside.across
      ? `${yarn} unter den Nadeln durch ${at[aside.end]} klammern. `
      : `${yarn} gerade zurück ${at[aside.end]} klammern. `;
  };
  return {
    'set-needles': ({ stitchSize, carriage, count, first, last }) =>
      `Maschenweite ${stitchSize ?? 'der Probe'}, Schlitten ${at[carriage]}. ${count} Nadeln in Arbeit, ${first} bis ${last}.`,
    'cast-on': ({ yarn, from, to }) => `${yarnName(yarn)} um ${from} bis ${to} wickeln, hin zum Schlitten.`,
    'thread-waste': ({ yarn, aside }) => `${setAside(aside)}${yarnName(yarn)} einfädeln.`,
    'waste-rows': ({ from, through, to, first }) =>
      `${from === through ? 'Hilfsgarnreihe' : 'Hilfsgarnreihen'} ${rowsFrom(from, through)}, Ende ${at[to]}${
        first === null ? '' : first === 'held down' ? ', langsam, Maschen niederhalten' : ', langsam'
      }.`,
    'hang-comb': () => 'Kamm einhängen.',
    'hang-weights': ({ left, right }) => `Krallengewichte unter ${left} und ${right}.`,
    'lay-ravel-cord': ({ ravel, wasteYarn, clipSide }) =>
      ravel === 'cord'
        ? `${yarnName(wasteYarn)} abschneiden. Trennfaden einlegen, Ende ${at[clipSide]} klammern.`
        : `${titled[clipSide]} handlange Schlinge ziehen, klammern.`,
    'ravel-pass': ({ to }) => `Trennreihe: einmal nach ${at[to]}.`,
    'trim-ravel-cord': ({ ravel, wasteYarn, setsCounter }) =>
      `${ravel === 'cord' ? 'Trennfaden abschneiden, an jeder Seite ein Ende.' : `${yarnName(wasteYarn)} abschneiden.`}${counterTo(setsCounter, 0)}`,
    thread: ({ yarn, aside, waitsAt }) => {
      const isBeside = aside?.how === 'park' && aside.end === waitsAt;
      const from = waitsAt === null || isBeside ? '' : ` von ${at[waitsAt]}`;
      const under = aside?.how === 'park' ? ` unter ${aside.yarn}` : '';
      return `${setAside(aside)}${yarn}${from}${under} einfädeln, ${waitsAt === null ? `${endTail} Ende` : 'Strang locker'}.`;
    },
    pass: ({ to, yarn, crosses }) =>
      `${crosses.length === 0 ? '' : `${list(crosses)} locker über ${yarn} legen. `}Mit ${yarn} nach ${at[to]}.`,
    'closing-pass': ({ to, yarn }) => `Schlussreihe: eine Reihe nach ${at[to]} mit ${yarn}.`,
    increase: ({ side, outer, from, to, uncovered }) =>
      `${titled[side]} hinaus: ${outer} in Arbeit, ${list(from)} auf ${list(to)}; ${uncovered} bleibt leer in Arbeit.`,
    decrease: ({ side, from, to, emptied }) =>
      `${titled[side]} hinein: ${list(from)} auf ${list(to)}; ${emptied} außer Arbeit.`,
    'comb-off': ({ left, right }) => `Kamm ab, Krallengewichte unter ${left} und ${right}.`,
    'move-weights': ({ left, right }) => `Krallengewichte höher, unter ${left} und ${right}.`,
    'weights-off': ({ wasteYarn, comb }) =>
      `${yarnName(wasteYarn)} abschneiden. ${comb ? 'Kamm ab, eine Hand darunter.' : 'Gewichte ab, unter jedem eine Hand.'}`,
    'take-off': ({ to }) =>
      `Gestrick halten; Fadenführer leer, einmal nach ${at[to]}: es fällt ab. Alle Nadeln außer Arbeit.`,
    'set-needles-again': ({ carriage, count, first, last }) =>
      `Schlitten zurück nach ${at[carriage]}. ${count} Nadeln in Arbeit, ${first} bis ${last}.`,
    rehang: ({ count, first, last, yarn }) =>
      `Hilfsgarn zurückgeschlagen, linke Seite zu dir: die ${count} Maschen der letzten Reihe in ${yarn} auf ${first} bis ${last}.`,
    'release-waste': ({ rehangs, row }) =>
      `Hilfsgarnreihen auftrennen${rehangs ? '' : ', ab Rand A'}.${row === null ? '' : ` Zähler zurück auf ${row}.`}`,
    'cut-graft-tail': ({ lengthCm, yarn, throughSeam, alsoCut }) =>
      `${yarn} bei ${tail(lengthCm)} abschneiden: für Verbindung${throughSeam ? ' und Naht' : ''}.${
        alsoCut.length === 0 ? '' : ` Auch ${list(alsoCut)} abschneiden.`
      }`,
    'set-hem-needles': ({ section, of, carriage, count, first, last, setsCounter }) =>
      `${of === 1 ? '' : `Abschnitt ${section} von ${of}: `}Maschenweite wie beim Beutel, Schlitten ${at[carriage]}. ${count} Nadeln in Arbeit, ${first} bis ${last}.${counterTo(setsCounter, 0)}`,
    'pick-up': ({ first, last, count, rows, startAt }) =>
      `Linke Seite zu dir, Anfang der Bahn ${at[startAt]}: ${count} Maschen des Öffnungsrands aus ${rows} Reihen auf ${first} bis ${last}. Gewichte an beide Enden.`,
    'thread-hem': ({ yarn }) => `${yarn} einfädeln, ${endTail} Ende.`,
    'hem-rows': ({ layer, from, through, of, to }) =>
      `${layer === 'inner' ? 'Maschenweite zurück, ' : ''}Saumreihen ${rowsFrom(from, through)} von ${of}, Ende ${at[to]}.`,
    'fold-row': ({ number, of, to }) =>
      `Zwei Zahlen größer, Reihe ${number} von ${of} nach ${at[to]}: der Umbruch.`,
    'hang-fold': ({ count, first, last }) =>
      `Hochschlagen, linke Seiten aufeinander: die ${count} Maschen der ersten Reihe zu denen auf ${first} bis ${last}.`,
    'hem-close': ({ number, of, to }) =>
      `Zwei Zahlen größer, Reihe ${number} von ${of} nach ${at[to]} durch beide.`,
    'bind-off': ({ yarn, from, to }) =>
      `${yarn} abschneiden, ${endTail} Ende. Gewichte ab, eine Hand darunter. Locker abketten, ${from} bis ${to}.`,
    'set-cord-needles': ({ draw, carriage, count, first, last }) =>
      `${draw === 'only' ? '' : `Für die ${whichCord[draw]}Kordel: `}Maschenweite des Beutels, Schlitten ${at[carriage]}. ${count} Nadeln in Arbeit, ${first} bis ${last}.`,
    'cast-on-cord': ({ count, yarn, from, to }) =>
      `${yarn} um die ${count} Nadeln wickeln, ${from} bis ${to}, ${endTail} Ende.`,
    'thread-cord': ({ yarn }) => `${yarn} einfädeln.`,
    'cord-first-row': ({ to }) => `Eine Reihe nach ${at[to]}.`,
    'set-slip': ({ slipTo, knitTo, setsCounter }) =>
      `Kleines Gewicht an die Kordel. Schlitten: nach ${at[slipTo]} Freilauf, nach ${at[knitTo]} stricken.${counterTo(setsCounter, 0)}`,
    'weigh-flat-cord': ({ setsCounter }) =>
      `Kleines Gewicht an die Kordel. Kein Freilauf: flach stricken, später zusammennähen.${counterTo(setsCounter, 0)}`,
    rounds: ({ from, through, of, slipTo, knitTo, counter }) =>
      `${from === through ? 'Runde' : 'Runden'} ${rowsFrom(from, through)} von ${of}, nach ${at[slipTo]} Freilauf, nach ${at[knitTo]} stricken${counter === null ? '' : `, Zähler ${counter}`}.`,
    'flat-rows': ({ from, through, of, to }) =>
      `${from === through ? 'Kordelreihe' : 'Kordelreihen'} ${rowsFrom(from, through)} von ${of}, zuletzt nach ${at[to]}.`,
    'measure-rounds': ({ rounds, lengthCm }) =>
      `In Ruhe messen: ${rounds} Runden sollen ${length(lengthCm)} sein.`,
    'measure-cord': ({ draw, lengthCm }) =>
      `Die ${whichCord[draw]}Kordel in Ruhe messen: ${lengthNeeded(lengthCm)}. Ist sie kürzer, weitere Runden stricken.`,
    'measure-bag': ({ widthCm, depthCm }) =>
      `Den Beutel trocken und flach messen: ${length(widthCm)} breit, ${length(depthCm)} tief.`,
    'draw-through': ({ yarn, count, sewsWithCm }) =>
      `${yarn} abschneiden, ${tail(sewsWithCm ?? endTailCm)} lassen. Durch die ${count} Maschen ziehen, abnehmen${
        sewsWithCm === null ? ', innen verbergen' : ''
      }.`,
  };
};

const titled = { left: 'Links', right: 'Rechts' } as const;
