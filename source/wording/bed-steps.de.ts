/** Am Bett: ein Satz je Handlung, wie in `bed-steps.en.ts`. */
import type { Side } from '../bed/side.ts';
import { endTailCm } from '../planning/tails.ts';
import type { Aside } from '../steps/step.ts';
import type { ActWords, BedKind } from './act-words.ts';
import type { Amounts } from './amounts.ts';

const at: Readonly<Record<Side, string>> = { left: 'links', right: 'rechts' };
const edge: Readonly<Record<Side, string>> = { left: 'Linker Rand', right: 'Rechter Rand' };
const yarnName = (yarn: string): string =>
  yarn === 'waste' ? 'das Hilfsgarn' : yarn === 'ravel cord' ? 'den Trennfaden' : yarn;
const underName = (yarn: string): string =>
  yarn === 'waste' ? 'dem Hilfsgarn' : yarn === 'ravel cord' ? 'dem Trennfaden' : yarn;
const wasteName = (yarn: string): string => (yarn === 'waste' ? 'das Hilfsgarn' : `${yarn}, das Hilfsgarn,`);
const rowsFrom = (rows: readonly [one: string, several: string], from: number, through: number): string => {
  if (from === through) return `${rows[0]} ${from}`;
  return `${rows[1]} ${from} ${through === from + 1 ? 'und' : 'bis'} ${through}`;
};

export const bedSteps = ({ tail, list }: Amounts): ActWords<BedKind> => {
  const endTail = tail(endTailCm);
  const setAside = (aside: Aside | null): string => {
    if (!aside) return '';
    const yarn = yarnName(aside.yarn);
    if (aside.how === 'cut') return `Schneide ${yarn} ab und lass ${endTail} hängen. `;
    return aside.across
      ? `Nimm ${yarn} aus dem Fadenführer, führ es nach unten, unter den Nadeln und der Vorderkante des Betts durch, und klammere es ${at[aside.end]} fest. `
      : `Nimm ${yarn} aus dem Fadenführer und klammere es gerade zurück ${at[aside.end]} fest. `;
  };
  const under = (aside: Aside | null): string =>
    aside?.how === 'park' ? ` unter ${underName(aside.yarn)} hindurch` : '';
  const lift = (from: readonly string[], to: readonly string[]): string =>
    `häng mit dem ${from.length}er-Decker ${list(from)} auf ${list(to)}`;
  const counterTo = (sets: boolean, rows: number): string => (sets ? ` Reihenzähler auf ${rows}.` : '');
  return {
    'set-needles': ({ stitchSize, carriage, count, first, last }) =>
      `Maschenweite ${stitchSize === null ? 'wie' : `${stitchSize}, wie`} bei der Maschenprobe. Schlitten ${at[carriage]}. Bring ${count} Nadeln in Arbeit: ${first} bis ${last}.`,
    'cast-on': ({ yarn, from, to }) =>
      `Wickle ${wasteName(yarn)} um jede Nadel von ${from} bis ${to}, so dass das Garn neben dem Schlitten endet.`,
    'thread-waste': ({ yarn, aside }) => `${setAside(aside)}Fädle ${wasteName(yarn)} in den Fadenführer ein.`,
    'waste-rows': ({ from, through, of, to, first }) =>
      `Strick ${rowsFrom(['Hilfsgarnreihe', 'Hilfsgarnreihen'], from, through)} von ${of}, ${from === through ? '' : 'die letzte '}nach ${at[to]}.${
        first === null
          ? ''
          : first === 'held down'
            ? ' Langsam, die Maschen mit der freien Hand am Bett niedergehalten.'
            : ' Langsam: noch hält nichts die Maschen nieder.'
      }`,
    'hang-comb': () => 'Häng den Anschlagkamm in das Hilfsgarn.',
    'hang-weights': ({ left, right }) =>
      `Häng an jeden Rand ein Krallengewicht: unter ${left} und unter ${right}.`,
    'lay-ravel-cord': ({ ravel, wasteYarn, clipSide }) =>
      ravel === 'cord'
        ? `Schneide ${yarnName(wasteYarn)} ab. Leg den Trennfaden in den Fadenführer; ${at[clipSide]} hält eine Klammer sein Ende locker fest.`
        : `Zieh ${at[clipSide]} am Rand eine handlange Schlinge aus ${underName(wasteYarn)} heraus und halt sie locker mit einer Klammer: sie zeigt die Reihe, die später herausgezogen wird.`,
    'ravel-pass': ({ to }) => `Trennreihe: ein Schlittengang nach ${at[to]}.`,
    'trim-ravel-cord': ({ ravel, wasteYarn, setsCounter }) =>
      (ravel === 'cord'
        ? 'Schneide den Trennfaden ab; an jeder Seite bleibt ein Ende, um ihn später zu ziehen.'
        : `Schneide hier ${yarnName(wasteYarn)} ab; die Schlinge in der Klammer bleibt.`) +
      counterTo(setsCounter, 0),
    thread: ({ yarn, aside, waitsAt }) => {
      const comes = `${setAside(aside)}Fädle ${yarn}`;
      if (waitsAt === null)
        return `${comes}${under(aside)} in den Fadenführer ein und lass ${endTail} hängen.`;
      const beside = aside?.how === 'park' && aside.end === waitsAt;
      return `${comes} von seiner Klammer${beside ? '' : ` ${at[waitsAt]}`}${under(aside)} ein, den Faden am Rand locker.`;
    },
    pass: ({ to, yarn, rowInStripe, stripeRows, crosses, rowInAll }) =>
      (crosses.length === 0 ? '' : `Leg am Rand ${list(crosses)} locker über ${yarn}. `) +
      `Strick eine Reihe nach ${at[to]} mit ${yarn}: Reihe ${rowInStripe} von ${stripeRows} in diesem Streifen${rowInAll === null ? '' : `, Reihe ${rowInAll} im Ganzen`}.`,
    'closing-pass': ({ to, yarn }) =>
      `Schlussreihe: strick eine Reihe nach ${at[to]} mit ${yarn}. Die Verbindung wird die letzte Reihe dieses Streifens.`,
    increase: ({ side, outer, from, to, uncovered }) =>
      `${edge[side]}, Zunahme, eine hinaus: bring ${outer} in Arbeit, ${lift(from, to)}. ${uncovered} bleibt leer in Arbeit: die Lochmasche.`,
    decrease: ({ side, from, to, emptied }) =>
      `${edge[side]}, Abnahme, eine hinein: ${lift(from, to)}. Schieb ${emptied} außer Arbeit.`,
    'comb-off': ({ left, right }) =>
      `Nimm den Kamm ab, eine Hand darunter. Häng an jeden Rand ein Krallengewicht: unter ${left} und unter ${right}.`,
    'move-weights': ({ left, right }) => `Häng die Krallengewichte höher: unter ${left} und unter ${right}.`,
    'weights-off': ({ wasteYarn, comb }) =>
      `Schneide ${yarnName(wasteYarn)} ab. Nimm ${comb ? 'den Kamm ab, eine Hand darunter' : 'die Krallengewichte ab, unter jedem eine Hand'}.`,
    'take-off': ({ to }) =>
      `Halt das Gestrick und fahr den Schlitten mit leerem Fadenführer einmal nach ${at[to]}: es fällt ab, vom Hilfsgarn gehalten. Alle Nadeln außer Arbeit.`,
    'set-needles-again': ({ carriage, count, first, last }) =>
      `Bring den Schlitten über das leere Bett zurück nach ${at[carriage]}. Bring ${count} Nadeln in Arbeit: ${first} bis ${last}.`,
    rehang: ({ count, first, last, yarn }) =>
      `Schlag das Hilfsgarn zurück, linke Seite zu dir. Häng die ${count} Maschen der letzten Reihe ${yarn}, nicht die des Hilfsgarns, einzeln auf die Nadeln von ${first} bis ${last}.`,
    'release-waste': ({ rehangs, row }) =>
      rehangs
        ? `Trenn die Hilfsgarnreihen auf.${row === null ? '' : ` Reihenzähler zurück auf ${row}.`}`
        : 'Trenn die Hilfsgarnreihen von Kante A ab.',
    'cut-graft-tail': ({ lengthCm, yarn, throughSeam, alsoCut }) =>
      `Miss ${tail(lengthCm)} ${yarn} ab und schneide dort: der Faden zum Verbinden${throughSeam ? ' und für die Bodennaht' : ''}.${
        alsoCut.length === 0 ? '' : ` Schneide auch ${list(alsoCut)} ab.`
      }`,
    'set-cord-needles': ({ carriage, count, first, last }) =>
      `Für die Kordel, Maschenweite wie beim Beutel: Schlitten ${at[carriage]}. Bring ${count} Nadeln in Arbeit: ${first} bis ${last}.`,
    'cast-on-cord': ({ count, yarn, from, to }) =>
      `Wickle ${yarn} um die ${count} Nadeln, von ${from} bis ${to} neben dem Schlitten, und lass ${endTail} hängen.`,
    'thread-cord': ({ yarn }) => `Fädle ${yarn} in den Fadenführer ein.`,
    'cord-first-row': ({ to }) => `Strick eine Reihe nach ${at[to]}.`,
    'set-slip': ({ slipTo, knitTo, setsCounter }) =>
      `Häng ein kleines Gewicht an die Kordel. Stell den Schlitten so ein: nach ${at[slipTo]} Freilauf, nach ${at[knitTo]} stricken.${counterTo(setsCounter, 0)}`,
    'weigh-flat-cord': ({ setsCounter }) =>
      `Häng ein kleines Gewicht an die Kordel. Dieses Bett hat keinen Freilauf: strick sie flach, als Band, und näh es später zusammen.${counterTo(setsCounter, 0)}`,
    rounds: ({ from, through, of, slipTo, knitTo, counter }) =>
      `${from === through ? `Runde ${from} von ${of}: ` : `Runden ${from} bis ${through} von ${of}: jedes Mal `}nach ${at[slipTo]} im Freilauf, nach ${at[knitTo]} stricken.${
        counter === null ? '' : ` Der Reihenzähler zeigt dann ${counter}.`
      }`,
    'flat-rows': ({ from, through, of, to }) =>
      `${rowsFrom(['Kordelreihe', 'Kordelreihen'], from, through)} von ${of}: strick ${from === through ? '' : 'hin und her, die letzte '}nach ${at[to]}.`,
    'draw-through': ({ yarn, count, sewsWithCm }) =>
      sewsWithCm === null
        ? `Schneide ${yarn} ab, lass ${endTail} stehen. Zieh das Ende durch die ${count} Maschen, nimm sie ab und verbirg es in der Kordel.`
        : `Schneide ${yarn} ab, lass ${tail(sewsWithCm)} zum Nähen stehen. Zieh das Ende durch die ${count} Maschen und nimm sie ab.`,
  };
};
