import { jamTightness, labelTightness } from '../planning/fabric.ts';
import type { Amounts } from './amounts.ts';
import { counted, stateWord, toTheYarn, yarnClass, yarnName } from './forms.de.ts';
import { mostListed } from './plan.en.ts';
import type { Words } from './words.ts';

export const plan = ({ length, time, decimal, list }: Amounts): Words['plan'] => {
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

export const warnings = ({
  choice,
  decimal,
  length,
  list,
  massNeeded,
  small,
  fixed,
}: Amounts): Words['warnings'] => ({
  'plan/yarn-short': ({ yarn, shortGrams, reservePercent }) =>
    `${massNeeded(shortGrams)} ${yarn} zu wenig, ${decimal(reservePercent)} % Reserve eingerechnet: besorg mehr oder strick einen kleineren Beutel.`,
  'plan/scraps-unused': ({ yarns }) =>
    `${list(yarns)} ${yarns.length === 1 ? 'bleibt' : 'bleiben'} übrig: zu wenig für einen Streifen, oder es ist kein Streifen mehr frei.`,
  'plan/many-yarns-at-once': ({ yarns }) =>
    `${yarns} Garne sind zugleich in Arbeit, und ein Fadenspanner hat höchstens vier Arme: schneide ab, was lange wartet, und knüpf es später wieder an.`,
  'plan/width-far-off': ({ gotCm, wantedCm }) =>
    `Mit ganzen Streifenrapporten wird er ${length(gotCm)} breit, gewünscht waren ${length(wantedCm)}: ein kürzerer Rapport kommt näher heran.`,
  'plan/depth-far-off': ({ gotCm, wantedCm }) =>
    `Mit ganzen Maschen wird er ${length(gotCm)} tief, gewünscht waren ${length(wantedCm)}.`,
  'plan/base-too-narrow': ({ thicknessCm, boxedCm }) =>
    `Was hineinkommt, ist ${length(thicknessCm)} dick und kann auf einem ${length(boxedCm)} tiefen Boden nicht stehen: näh die Ecken so tief ab, wie es dick ist.`,
  'plan/eyelets-too-few': () =>
    'Es gibt zu wenige Lochmaschen für eine Kordel mit beiden Enden außen: nimm mehr Reihen.',
  'plan/rehang-needed': ({ afterRows }) =>
    `Das Nadelbett ist zu kurz, um den ganzen Weg zu wandern: setz das Gestrick um, ${afterSome(afterRows, list)}.`,
  'plan/swatch-guessed': () =>
    'Die Maschenprobe ist nach dem Nadelbett geschätzt (Faustregel), Größe und Garn also auch: strick eine und miss sie.',
  'plan/swatch-to-be-washed': ({ finishState }) =>
    `Die Maschenprobe wurde trocken gemessen, und der Beutel wird ${stateWord(finishState)} gebraucht: seine Größe in diesem Zustand ist ausgerechnet, aber eine wie der Beutel gewaschene Maschenprobe sagt mehr.`,
  'plan/swatch-turned': () =>
    'Die Reihen sind höher, als die Maschen breit sind: vielleicht ist die Maschenprobe falsch herum gemessen.',
  'plan/stitch-shape-odd': ({ aspect }) =>
    `Eine Masche, die ${fixed(aspect, 2)}-mal so breit wie hoch ist, ist für glatt rechts unüblich (etwa 1,3): miss die Maschenprobe noch einmal.`,
  'plan/loop-length-odd': ({ measuredMm, modelMm }) =>
    `Die gemessene Maschenlänge von ${small(measuredMm)} liegt weit von den ${small(modelMm)}, die zur Maschenprobe passen: miss noch einmal, alle Garnmengen hängen davon ab.`,
  'plan/fabric-limp': ({ tightness }) =>
    `Der Dichtefaktor ${fixed(tightness, 2)} ist klein (Handstrickgarne haben nach ihrer Banderole ${labelTightness.least} bis ${labelTightness.most}): das Gestrick wird schlaff und durchsichtig.`,
  'plan/fabric-jams': ({ tightness }) =>
    `Der Dichtefaktor ${fixed(tightness, 2)} ist groß (Maschen aus Wolle klemmen um ${fixed(jamTightness, 2)}): der Schlitten kann klemmen; nimm ein dünneres Garn oder eine größere Maschenweite.`,
  'plan/stitch-wider-than-pitch': ({ stitchMm, pitchMm }) =>
    `Eine Masche von ${fixed(stitchMm, 1)} mm ist breiter als der Nadelabstand von ${decimal(pitchMm)} mm: miss die Maschenprobe noch einmal, oder nimm ein gröberes Nadelbett.`,
  'plan/yarn-unusual-for-bed': ({ than, pitchMm, usual }) =>
    `Das Garn ist ${than === 'finer' ? 'feiner' : 'dicker'}, als es bei ${decimal(pitchMm)} mm Nadelabstand üblich ist (${choice(usual.map(yarnClass))}; Faustregel): prüf die Maschenprobe, oder nimm ein ${than === 'finer' ? 'feineres' : 'gröberes'} Nadelbett.`,
  'plan/stripes-alike': ({ first, second, yarn }) =>
    `Die Streifen ${first} und ${second} treffen sich in derselben Farbe, ${yarn}, und wirken wie ein breiter Streifen.`,
  'plan/shades-alike': ({ first, second, to }) =>
    `Streifen in ${first} und ${second} liegen nebeneinander und sehen ${to === 'everybody' ? '' : `für manche Augen (${to.join(' oder ')}) `}fast gleich aus: wähle eine der Farben heller oder dunkler.`,
});

const afterSome = (rows: readonly number[], list: Amounts['list']): string => {
  if (rows.length === 1) return `nach Reihe ${rows[0]}`;
  return rows.length <= mostListed
    ? `nach den Reihen ${list(rows.map(String))}`
    : `${counted.time(rows.length)}, zum ersten Mal nach Reihe ${rows[0]}`;
};

export const kit = ({ list, yarnNeeded, massNeeded, lengthNeeded }: Amounts): Words['kit'] => ({
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

export const replan = ({ decimal, length, list, massNeeded }: Amounts): Words['replan'] => ({
  asPlannedItCannot: 'Wie geplant lässt er sich nicht fertigstricken.',
  asPlanned: (choice) => `Wie geplant ${choice}.`,
  noOther: 'Eine andere Länge steht nicht zur Wahl.',
  toTakeIt: 'Um so weiterzustricken, tippe choose.',
  toTakeOne: 'Um so weiterzustricken, tippe choose und die Nummer.',
  lastsForNone:
    'Das gewogene Garn reicht für keinen solchen Beutel: nimm mit replan colour ein anderes dazu, für die Kordel mit replan cord, oder trenn auf.',
  lastsFor: (aimCm, named) => `Mit dem Garn, das da ist, am nächsten an ${length(aimCm)} Breite: ${named}.`,
  planIsNearest: (aimCm) => `Der Plan selbst kommt ${length(aimCm)} Breite am nächsten.`,
  choiceNumber: (rows, number) => `${rows} Reihen, Nummer ${number}`,
  choiceTyped: (rows) => `replan rows ${rows}`,
  isShort: (yarn, shortGrams, parts) =>
    `${massNeeded(shortGrams)} ${yarnName(yarn)} zu wenig${parts.length === 0 ? '' : ` bei ${list(parts)}`}`,
  forStripes: (grams) => `${massNeeded(grams)} für Streifen`,
  forTails: (grams) => `${massNeeded(grams)} für Maschenstich und Naht`,
  forCord: (grams) => `${massNeeded(grams)} für die Kordel`,
  rows: (rows) => `${rows} Reihen`,
  more: (howMany) => `${howMany} mehr`,
  fewer: (howMany) => `${howMany} weniger`,
  size: (widthCm, depthCm, rowsLeft) =>
    `${length(widthCm)} breit, ${length(depthCm)} tief, noch ${counted.row(rowsLeft)}`,
  rehangsMore: (times) => `${counted.time(times)} öfter umgehängt`,
  rehangsFewer: (times) => `${counted.time(times)} weniger umgehängt`,
  cordIn: (yarn, neededGrams) =>
    `mit der Kordel in ${toTheYarn(yarn)}, alles zusammen braucht davon ${massNeeded(neededGrams)}`,
  but: (short) => `, aber ${list(short)}`,
  whichUnit: (size, sizeMm, dueMm, again) =>
    `Bei ${size} wäre eine ${decimal(sizeMm)} mm groß, im Plan sind es ${decimal(dueMm)} mm. Sag die Einheit dazu: ${again.join(' oder ')}.`,
  faults: {
    'replan/rows-not-whole-repeats': ({ rows, rowMultiple, least }) =>
      `${rows} Reihen sind keine ganzen Streifenrapporte: wähle ein Vielfaches von ${rowMultiple}, mindestens ${least}.`,
    'replan/rows-too-few': ({ rows, least }) =>
      `${rows} Reihen sind weniger, als das Gestrick von hier an braucht: wähle mindestens ${least}.`,
    'replan/rows-too-many': ({ rows, most }) =>
      `${rows} Reihen sind mehr, als ein Beutel haben darf: wähle höchstens ${most}.`,
    'replan/unknown-yarn': ({ yarn, known }) =>
      `${yarn} ist kein Garn dieses Beutels (${list(known)}): nenn auch seine Farbe und die Meter je 100 g, wie in ${yarn} #c2a878 210.`,
    'replan/yarn-not-to-come': ({ yarn }) =>
      `${yarn} strickt von hier an keinen Streifen mehr: nenn ein Garn, das noch drankommt.`,
    'replan/colours-meet': ({ first, second, yarn }) =>
      `Die Streifen ${first} und ${second} lägen beide in ${yarn} aneinander und sähen aus wie einer: wähle ein anderes Garn.`,
    'replan/measure-impossible': ({ sizeMm }) =>
      `Eine Masche oder Reihe von ${decimal(sizeMm)} mm kann nicht sein: miss das Stück noch einmal.`,
    'replan/boxed-too-deep': ({ boxedCm, belowCm }) =>
      `Ein ${length(boxedCm)} tiefer Boden braucht einen größeren Beutel, bei so vielen Reihen muss er unter ${length(belowCm)} bleiben: wähle mehr Reihen.`,
    'replan/too-late': () =>
      'Die Schlussreihe ist begonnen, damit steht die Größe fest: trenn bis davor auf, um den Plan zu ändern.',
    'replan/cord-begun': () =>
      'Die Kordel ist begonnen, damit steht ihr Garn fest: trenn bis vor ihren Anschlag auf, um es zu ändern.',
  },
});
