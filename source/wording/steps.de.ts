import type { Side } from '../bed/bed.ts';
import { type RelaxedState, unnamedWaste } from '../planning/brief.ts';
import { endTailCm } from '../planning/tails.ts';
import type { Aside } from '../steps/act.ts';
import type { Amounts } from './amounts.ts';
import type { ActWords } from './by-kind.ts';
import { theYarn, toTheYarn, whichCord } from './forms.de.ts';

const at: Readonly<Record<Side, string>> = { left: 'links', right: 'rechts' };
const edge: Readonly<Record<Side, string>> = { left: 'Linker Rand', right: 'Rechter Rand' };
const wasteName = (yarn: string): string =>
  yarn === unnamedWaste ? 'das Hilfsgarn' : `${yarn}, das Hilfsgarn,`;
const rowsFrom = (rows: readonly [one: string, several: string], from: number, through: number): string => {
  if (from === through) return `${rows[0]} ${from}`;
  return `${rows[1]} ${from} ${through === from + 1 ? 'und' : 'bis'} ${through}`;
};

const washing: Readonly<Record<RelaxedState, string>> = {
  'dry-relaxed': 'Leg den Beutel',
  'wet-relaxed': 'Weich den Beutel ein, drück das Wasser heraus und wring ihn nicht. Leg ihn',
  'fully-relaxed': 'Wasch und trockne den Beutel, wie er gewaschen werden wird. Leg ihn',
};

export const steps = ({ decimal, length, lengthNeeded, list, tail, units }: Amounts): ActWords => {
  const size = (widthCm: number, depthCm: number): string =>
    `${length(widthCm)} breit und ${length(depthCm)} tief`;
  const endTail = tail(endTailCm);
  const setAside = (aside: Aside | null): string => {
    if (!aside) return '';
    const yarn = theYarn(aside.yarn);
    if (aside.how === 'cut') return `Schneide ${yarn} ab und lass ${endTail} hängen. `;
    return aside.across
      ? `Nimm ${yarn} aus dem Fadenführer, führ es nach unten, unter den Nadeln und der Vorderkante des Betts durch, und klammere es ${at[aside.end]} fest. `
      : `Nimm ${yarn} aus dem Fadenführer und klammere es gerade zurück ${at[aside.end]} fest. `;
  };
  const under = (aside: Aside | null): string =>
    aside?.how === 'park' ? ` unter ${toTheYarn(aside.yarn)} hindurch` : '';
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
        ? `Schneide ${theYarn(wasteYarn)} ab. Leg den Trennfaden in den Fadenführer; ${at[clipSide]} hält eine Klammer sein Ende locker fest.`
        : `Zieh ${at[clipSide]} am Rand eine handlange Schlinge aus ${toTheYarn(wasteYarn)} heraus und halt sie locker mit einer Klammer: sie zeigt die Reihe, die später herausgezogen wird.`,
    'ravel-pass': ({ to }) => `Trennreihe: ein Schlittengang nach ${at[to]}.`,
    'trim-ravel-cord': ({ ravel, wasteYarn, setsCounter }) =>
      (ravel === 'cord'
        ? 'Schneide den Trennfaden ab; an jeder Seite bleibt ein Ende, um ihn später zu ziehen.'
        : `Schneide hier ${theYarn(wasteYarn)} ab; die Schlinge in der Klammer bleibt.`) +
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
      `Schneide ${theYarn(wasteYarn)} ab. Nimm ${comb ? 'den Kamm ab, eine Hand darunter' : 'die Krallengewichte ab, unter jedem eine Hand'}.`,
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
    'set-hem-needles': ({ section, of, carriage, count, first, last, setsCounter }) =>
      `Für ${of === 1 ? 'den Saum' : `Abschnitt ${section} von ${of} des Saums`}, Maschenweite wie beim Beutel: Schlitten ${at[carriage]}. Bring ${count} Nadeln in Arbeit: ${first} bis ${last}.${counterTo(setsCounter, 0)}`,
    'pick-up': ({ section, of, first, last, count, rows, startAt }) =>
      `Linke Seite zu dir, ${of === 1 ? '' : section === 1 ? 'von ihrem Anfang an, ' : 'neben dem letzten Abschnitt, '}fass den Öffnungsrand der Bahn auf, ihr Anfang ${at[startAt]}: ${count} Maschen aus ${rows} Reihen, gleichmäßig, einzeln auf die Nadeln von ${first} bis ${last}. An jedes Ende ein Krallengewicht.`,
    'thread-hem': ({ yarn }) => `Fädle ${yarn} in den Fadenführer ein und lass ${endTail} hängen.`,
    'hem-rows': ({ layer, from, through, of, to }) =>
      `${layer === 'inner' ? 'Maschenweite zurück. ' : ''}${rowsFrom(['Saumreihe', 'Saumreihen'], from, through)} von ${of}: strick hin und her, die letzte nach ${at[to]}.`,
    'fold-row': ({ number, of, to }) =>
      `Maschenweite zwei Zahlen größer. Saumreihe ${number} von ${of}, der Umbruch: strick eine Reihe nach ${at[to]}.`,
    'hang-fold': ({ count, first, last }) =>
      `Schlag den Saum vor den Nadeln hoch, linke Seiten aufeinander, und häng die ${count} Maschen seiner ersten Reihe zu denen auf den Nadeln, je eine, von ${first} bis ${last}.`,
    'hem-close': ({ number, of, to }) =>
      `Maschenweite zwei Zahlen größer. Saumreihe ${number} von ${of}, durch beide Maschen jeder Nadel: strick eine Reihe nach ${at[to]}.`,
    'bind-off': ({ yarn, from, to }) =>
      `Schneide ${yarn} ab und lass ${endTail} hängen. Nimm die Gewichte ab, unter jedem eine Hand. Kette locker ab, von ${from} bis ${to}, jede Masche mit der Zungennadel durch die vorige, das Ende durch die letzte.`,
    'join-hem': ({ joins }) =>
      joins === 1
        ? 'Näh die beiden Enden des Saums über der Verbindung zusammen, Rand an Rand durch beide Lagen, mit seinem Fadenende. Vernäh es.'
        : `Näh die Enden des Saums an ${joins} Stellen zusammen, Rand an Rand durch beide Lagen, mit ihren Fadenenden. Vernäh jedes.`,
    'set-cord-needles': ({ draw, carriage, count, first, last }) =>
      `Für die ${whichCord[draw]}Kordel, Maschenweite wie beim Beutel: Schlitten ${at[carriage]}. Bring ${count} Nadeln in Arbeit: ${first} bis ${last}.`,
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
    'lay-graft': ({ mouthSide, tailAt, ravel }) =>
      `Leg das Gestrick mit der rechten Seite nach oben: Kante A, das Ende, über dem Spalt, B, der Anfang, darunter; die Öffnung ${mouthSide === 'left' ? 'links' : 'rechts'}, ${
        tailAt === 'mouth' ? 'wo der Faden hängt' : 'dem Faden gegenüber'
      }. Schlag das Hilfsgarn unter: offene Maschen zeigen sich. ${ravel === 'cord' ? 'Der Trennfaden' : 'Die Trennreihe'} bleibt drin.`,
    'graft-start': ({ loops }) =>
      `Fädle den Faden in die stumpfe Nadel. Zähl die Maschen beider Kanten von ihm aus: B1 ist ein halber Bogen, A${loops} endet an der Naht, beide nur ein Stich. A: herauf durch 1, von hinten.`,
    'graft-pair': ({ down, up }) =>
      `B: hinab durch ${down}, herauf durch ${up}. A: hinab durch ${down}, herauf durch ${up}.${
        down === 1
          ? ' Zieh jede Bewegung auf die Größe einer Masche an, nie fest.'
          : down % 10 === 0
            ? ' Schau die Reihe entlang.'
            : ''
      }`,
    'graft-end': ({ down }) =>
      `B: hinab durch ${down}, die letzte. Schau die Reihe entlang: jede Masche so groß wie die daneben.`,
    'fasten-graft': () => 'Vernäh den Faden der Verbindung am Rand.',
    'pull-ravel-cord': ({ ravel }) =>
      ravel === 'cord'
        ? 'Zieh den Trennfaden heraus: das Hilfsgarn löst sich von Kante B.'
        : 'Such die Schlinge in der Klammer, schneide einen Faden ihrer Reihe durch und zieh ihn heraus: das Hilfsgarn löst sich von Kante B.',
    'fold-seam': ({ rowsPerSide, tailCm, yarn }) =>
      `Rechte Seite außen: leg den Schlauch am Abnahmerand flach, ${rowsPerSide} Reihen auf ${rowsPerSide}. ${
        tailCm === null
          ? 'Näh mit dem Faden vom Verbinden weiter.'
          : `Miss für die Naht ${tail(tailCm)} ${yarn} ab.`
      }`,
    bars: ({ from, through, of }) =>
      `Naht, ${from === through ? `Querfaden ${from}` : `Querfäden ${from} bis ${through}`} von ${of}, eine Masche vom Rand: die Nadel abwechselnd unter einen vorn, unter einen hinten. Zieh an, bis die Ränder sich treffen.`,
    'fasten-seam': () => 'Vernäh den Nahtfaden.',
    'fold-corner': ({ corner, fromTipCm, acrossCm, tailCm, yarn }) =>
      `${corner === 1 ? 'Wende den Beutel auf links. ' : ''}Ecke ${corner} von 2: leg sie flach, die Bodennaht auf den Seitenfalz. Markiere auf der Naht ${length(fromTipCm)} von der Spitze: quer ist die Linie dort ${length(acrossCm)} lang. Miss dafür ${tail(tailCm)} ${yarn} ab.`,
    'sew-corner': ({ corner, acrossCm }) =>
      `Näh Ecke ${corner} quer ab: ${length(acrossCm)} durch beide Lagen, rechtwinklig zur Naht, mit kleinen Rückstichen. Vernäh die Enden.${corner === 2 ? ' Wende den Beutel zurück.' : ''}`,
    'hide-ends': () => 'Vernäh alle Fadenenden auf der Innenseite.',
    wash: ({ state, rolls, widthCm, depthCm }) =>
      `${washing[state]} flach hin, ${size(widthCm, depthCm)}, steck ${rolls ? 'die Öffnung ausgerollt fest, denn sie rollt sich nach innen' : 'den Saum gerade fest'}, und lass ihn ${state === 'dry-relaxed' ? 'einen Tag ruhen' : 'trocknen'}.`,
    'measure-bag': ({ widthCm, depthCm }) => {
      const typed = [widthCm, depthCm]
        .map((cm) => decimal(units.length === 'cm' ? cm : cm / 2.54, 1))
        .join(' ');
      return `Miss den Beutel, trocken und flach: er soll ${size(widthCm, depthCm)} sein. Tippe measured und was herauskam, etwa measured ${typed}: danach wird der nächste geplant.`;
    },
    'measure-rounds': ({ rounds, lengthCm }) =>
      `Miss die Kordel, locker liegend: ${rounds} Runden sollen ${length(lengthCm)} sein. Wo deine abweichen, tippe cord und deine Länge: danach richten sich die übrigen Runden.`,
    'measure-cord': ({ draw, lengthCm }) =>
      `Miss die ${whichCord[draw]}Kordel, ohne sie zu dehnen: sie soll ${lengthNeeded(lengthCm)} lang sein. Ist sie kürzer, strick weitere Runden.`,
    'sew-cord': () =>
      'Falte das Band der Länge nach, rechte Seite außen, und näh mit dem Ende seine langen Ränder zusammen, Querfaden für Querfaden.',
    'thread-eyelets': ({ draw, hole, of, inThrough, outThrough }) =>
      draw === 'second'
        ? `Zweite Kordel, Löcher ${hole} und ${hole + 1} von ${of}, der Verbindung gegenüber begonnen: hinein, wo die erste herauskommt, durch Lochmasche ${inThrough}, und heraus durch Lochmasche ${outThrough}.`
        : `Löcher ${hole} und ${hole + 1} von ${of}, von der Verbindung aus gezählt: die ${whichCord[draw]}Kordel geht durch Lochmasche ${inThrough} hinein und kommt durch Lochmasche ${outThrough} heraus.`,
    tie: ({ draw }) => {
      if (draw === 'only') return 'Mach beide Enden gleich lang, knote jedes ab und binde eine Schleife.';
      const even = `Mach beide Enden der ${draw === 'first' ? 'ersten' : 'zweiten'} Kordel gleich lang und knote sie zusammen`;
      return draw === 'first'
        ? `${even}, außen an der Verbindung, damit sie bleibt, während die andere einläuft.`
        : `${even}, außen der Verbindung gegenüber. Zieh beide Knoten auseinander: die Öffnung schließt sich.`;
    },
  };
};
