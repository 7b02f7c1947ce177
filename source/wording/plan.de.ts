import type { Amounts } from './amounts.ts';
import { stateWord } from './forms.de.ts';
import type { KitWords, PlanWords, WarningsWords } from './plan.en.ts';
import { counted } from './plurals.de.ts';

export const plan = ({ length, time, decimal, list }: Amounts): PlanWords => {
  const percentOff = (factor: number, more: string, less: string): string =>
    `${decimal(100 * Math.abs(factor - 1), 1)} % ${factor < 1 ? less : more}`;
  return {
    learned: 'gelernt',
    toldByBags: ({ bags, setAside, widthFactor, depthFactor, spread }) => {
      const width = percentOff(widthFactor, 'breiter', 'schmaler');
      const depth = percentOff(depthFactor, 'tiefer', 'flacher');
      const aside =
        setAside === 0
          ? ''
          : `; ${setAside === 1 ? 'einer, der weit abliegt, zählt' : `${setAside}, die weit abliegen, zählen`} nicht`;
      return `${bags} Beutel dieser Maschenprobe wurden ${width} und ${depth}, als sie vorhersagt, ± ${decimal(100 * spread, 1)} % von Beutel zu Beutel${aside}; das ist eingerechnet`;
    },

    repeat: 'Rapport',
    repeatBesideDoubt: (repeatCm, doubtCm) =>
      `einer macht ${length(repeatCm)} Breite; die Unsicherheit ist ± ${length(doubtCm)}`,

    saves: 'spart eins',
    saving: ({ by, stitches, rows, shapeEveryRows, hangings, widthCm, depthCm }) => {
      const counts = `${rows} Reihen zu ${stitches} Maschen`;
      const choice = by === 'rarer-moves' ? `Formung alle ${shapeEveryRows} Reihen, ${counts}` : counts;
      return `${choice}: ${hangings}-mal eingehängt, ${length(widthCm)} mal ${length(depthCm)}`;
    },

    time: 'Zeit',
    onTheBench: (totalS, parts, bags) => {
      const each = parts.map(([phase, seconds]) => `${phase} ${time(seconds)}`).join(', ');
      const pace =
        bags === 0
          ? 'eine Faustregel für jeden Handgriff'
          : `im Tempo ${bags === 1 ? 'deines fertigen Beutels' : `deiner ${bags} fertigen Beutel`}`;
      return `etwa ${time(totalS)} an der Maschine: ${each}; ${pace}`;
    },
    timeLeft: (phase, phaseS, bagS, bags) =>
      `Etwa ${time(phaseS)} bis zum Ende dieses Teils (${phase}), ${time(bagS)} bis zum Ende des Beutels (${
        bags === 0 ? 'Faustregel' : 'im Tempo deiner fertigen Beutel'
      }).`,

    cost: 'Kosten',
    costs: ({ yarn, unpriced, hours, work, total, currency }) => {
      const money = (amount: number): string =>
        `${amount.toFixed(2).replace('.', ',')}${currency === null ? '' : ` ${currency}`}`;
      const parts = [
        ...yarn.map((one) => `${one.yarn} ${money(one.cost)}`),
        ...(work === null ? [] : [`${time(3600 * hours)} ${money(work)}`]),
      ];
      const without = unpriced.length === 0 ? '' : `; ohne Preis: ${list(unpriced)}`;
      return `${money(total)}: ${parts.join(', ')}${without}`;
    },

    orElse: 'oder',
    nearShape: ({ stitches, rows, widthCm, depthCm, shapeShare, areaShare }) => {
      const off = Math.max(1, Math.round(100 * Math.abs(shapeShare - 1)));
      const shape = `${off} % ${shapeShare < 1 ? 'flacher' : 'tiefer'} in der Form`;
      const more = `${Math.round(100 * (areaShare - 1))} % mehr Beutel`;
      return `${stitches} Maschen und ${rows} Reihen, ${length(widthCm)} mal ${length(depthCm)}: ${shape}, ${more}`;
    },
  };
};

export const warnings = ({ decimal, length, list, massNeeded, small, fixed }: Amounts): WarningsWords => ({
  yarnShort: (yarn, shortGrams, reservePercent) =>
    `${massNeeded(shortGrams)} ${yarn} zu wenig, ${decimal(reservePercent)} % Reserve eingerechnet: besorg mehr oder strick einen kleineren Beutel.`,
  scrapUnused: (yarns) =>
    `${list(yarns)} bleibt übrig: zu wenig für einen Streifen, oder es ist kein Streifen mehr frei.`,
  scrapsUnused: (yarns) =>
    `${list(yarns)} bleiben übrig: zu wenig für einen Streifen, oder es ist kein Streifen mehr frei.`,
  manyYarnsAtOnce: (yarns) =>
    `${yarns} Garne sind zugleich in Arbeit, und ein Fadenspanner hat höchstens vier Arme: schneide ab, was lange wartet, und knüpf es später wieder an.`,
  widthFarOff: (gotCm, wantedCm) =>
    `Mit ganzen Streifenrapporten wird er ${length(gotCm)} breit, gewünscht waren ${length(wantedCm)}: ein kürzerer Rapport kommt näher heran.`,
  depthFarOff: (gotCm, wantedCm) =>
    `Mit ganzen Maschen wird er ${length(gotCm)} tief, gewünscht waren ${length(wantedCm)}.`,
  baseTooNarrow: (thicknessCm, boxedCm) =>
    `Was hineinkommt, ist ${length(thicknessCm)} dick und kann auf einem ${length(boxedCm)} tiefen Boden nicht stehen: näh die Ecken so tief ab, wie es dick ist.`,
  eyeletsTooFew: 'Es gibt zu wenige Lochmaschen für eine Kordel mit beiden Enden außen: nimm mehr Reihen.',
  rehangNeeded: (afterRows) =>
    `Das Nadelbett ist zu kurz, um den ganzen Weg zu wandern: setz das Gestrick um, ${afterRows}.`,
  swatchGuessed:
    'Die Maschenprobe ist nach dem Nadelbett geschätzt (Faustregel), Größe und Garn also auch: strick eine und miss sie.',
  swatchToBeWashed: (finishState) =>
    `Die Maschenprobe wurde trocken gemessen, und der Beutel wird ${stateWord(finishState)} gebraucht: seine Größe in diesem Zustand ist ausgerechnet, aber eine wie der Beutel gewaschene Maschenprobe sagt mehr.`,
  swatchTurned:
    'Die Reihen sind höher, als die Maschen breit sind: vielleicht ist die Maschenprobe falsch herum gemessen.',
  stitchShapeOdd: (aspect) =>
    `Eine Masche, die ${fixed(aspect, 2)}-mal so breit wie hoch ist, ist für glatt rechts unüblich (etwa 1,3): miss die Maschenprobe noch einmal.`,
  loopLengthOdd: (measuredMm, modelMm) =>
    `Die gemessene Maschenlänge von ${small(measuredMm)} liegt weit von den ${small(modelMm)}, die zur Maschenprobe passen: miss noch einmal, alle Garnmengen hängen davon ab.`,
  fabricLimp: (tightness, least, most) =>
    `Der Dichtefaktor ${fixed(tightness, 2)} ist klein (Handstrickgarne haben nach ihrer Banderole ${least} bis ${most}): das Gestrick wird schlaff und durchsichtig.`,
  fabricJams: (tightness, jamTightness) =>
    `Der Dichtefaktor ${fixed(tightness, 2)} ist groß (Maschen aus Wolle klemmen um ${fixed(jamTightness, 2)}): der Schlitten kann klemmen; nimm ein dünneres Garn oder eine größere Maschenweite.`,
  stitchWiderThanPitch: (stitchMm, pitchMm) =>
    `Eine Masche von ${fixed(stitchMm, 1)} mm ist breiter als der Nadelabstand von ${decimal(pitchMm)} mm: miss die Maschenprobe noch einmal, oder nimm ein gröberes Nadelbett.`,
  yarnTooFine: (pitchMm, classes) =>
    `Das Garn ist feiner, als es bei ${decimal(pitchMm)} mm Nadelabstand üblich ist (${classes}; Faustregel): prüf die Maschenprobe, oder nimm ein feineres Nadelbett.`,
  yarnTooThick: (pitchMm, classes) =>
    `Das Garn ist dicker, als es bei ${decimal(pitchMm)} mm Nadelabstand üblich ist (${classes}; Faustregel): prüf die Maschenprobe, oder nimm ein gröberes Nadelbett.`,
  stripesAlike: (first, second, yarn) =>
    `Die Streifen ${first} und ${second} treffen sich in derselben Farbe, ${yarn}, und wirken wie ein breiter Streifen.`,
  shadesAlike: (first, second) =>
    `Streifen in ${first} und ${second} liegen nebeneinander und sehen fast gleich aus: wähle eine der Farben heller oder dunkler.`,
  shadesAlikeFor: (first, second, eyes) =>
    `Streifen in ${first} und ${second} liegen nebeneinander und sehen für manche Augen (${eyes}) fast gleich aus: wähle eine der Farben heller oder dunkler.`,
  or: 'oder',
  afterRow: (row) => `nach Reihe ${row}`,
  afterRows: (rows) => `nach den Reihen ${list(rows)}`,
  oftenFrom: (times, first) => `${counted.time(times)}, zum ersten Mal nach Reihe ${first}`,
});

export const kit = ({ list, yarnNeeded, massNeeded, lengthNeeded }: Amounts): KitWords => ({
  tools: ({ prongs, hasComb, clips }) =>
    `Werkzeug: ${list([
      `${prongs}er-Decker`,
      ...(hasComb ? ['Anschlagkamm'] : []),
      '2 Krallengewichte und ein kleines',
      `${clips} Garnklammern`,
      'Zungennadel am Griff',
      'stumpfe Nadel',
      'Schere',
      'Maßband',
    ])}.`,
  ravelCord: ({ ravelCordCm }) =>
    ravelCordCm === null ? '' : `Dazu ${lengthNeeded(ravelCordCm)} glatter Trennfaden.`,
  materials: ({ yarns, ravelCordCm }) =>
    `Material: ${list([
      ...yarns.map(({ yarn, metres, grams }) =>
        grams === null
          ? `${yarnNeeded(metres)} ${yarn === 'waste' ? 'Hilfsgarn' : `${yarn} als Hilfsgarn`}`
          : `${yarnNeeded(metres)} ${yarn} (${massNeeded(grams)} mit Reserve)`,
      ),
      ...(ravelCordCm === null ? [] : [`${lengthNeeded(ravelCordCm)} glatter Trennfaden`]),
    ])}.`,
});
