/** Fern vom Bett: ein Satz je Handlung, wie in `hand-steps.en.ts`. */
import type { RelaxedState } from '../planning/brief.ts';
import type { ActWords, HandKind } from './act-words.ts';
import type { Amounts } from './amounts.ts';

const washing: Readonly<Record<RelaxedState, string>> = {
  'dry-relaxed': 'Lass den Beutel einen Tag ruhen',
  'wet-relaxed': 'Weich den Beutel ein, drück das Wasser heraus und wring ihn nicht',
  'fully-relaxed': 'Wasch und trockne den Beutel, wie er gewaschen werden wird',
};

export const handSteps = (say: Amounts): ActWords<HandKind> => {
  const { length, lengthNeeded, tail, decimal, units } = say;
  const size = (widthCm: number, depthCm: number): string =>
    `${length(widthCm)} breit und ${length(depthCm)} tief`;
  return {
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
    'hide-ends': () => 'Vernäh alle Fadenenden auf der Innenseite.',
    wash: ({ state, widthCm, depthCm }) =>
      `${washing[state]}. Leg ihn flach hin, ${size(widthCm, depthCm)}, steck die Öffnung ausgerollt fest, denn sie rollt sich nach innen, und lass ihn trocknen.`,
    'measure-bag': ({ widthCm, depthCm }) => {
      const typed = [widthCm, depthCm]
        .map((cm) => decimal(units.length === 'cm' ? cm : cm / 2.54, 1))
        .join(' ');
      return `Miss den Beutel, trocken und flach: er soll ${size(widthCm, depthCm)} sein. Tippe measured und was herauskam, etwa measured ${typed}: danach wird der nächste geplant.`;
    },
    'measure-rounds': ({ rounds, lengthCm }) =>
      `Miss die Kordel, locker liegend: ${rounds} Runden sollen ${length(lengthCm)} sein. Wo deine abweichen, tippe cord und deine Länge: danach richten sich die übrigen Runden.`,
    'measure-cord': ({ lengthCm }) =>
      `Miss die Kordel, ohne sie zu dehnen: sie soll ${lengthNeeded(lengthCm)} lang sein. Ist sie kürzer, strick weitere Runden.`,
    'sew-cord': () =>
      'Falte das Band der Länge nach, rechte Seite außen, und näh mit dem Ende seine langen Ränder zusammen, Querfaden für Querfaden.',
    'thread-eyelets': ({ hole, of, inThrough, outThrough }) =>
      `Löcher ${hole} und ${hole + 1} von ${of}, von der Verbindung aus gezählt: die Kordel geht durch Lochmasche ${inThrough} hinein und kommt durch Lochmasche ${outThrough} heraus.`,
    tie: () => 'Mach beide Enden gleich lang, knote jedes ab und binde eine Schleife.',
  };
};
