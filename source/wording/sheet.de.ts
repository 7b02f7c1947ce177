import type { Amounts } from './amounts.ts';
import { sideWord, stateWord, whichCord } from './forms.de.ts';
import type { Words } from './words.ts';

const rows = (count: number): string => (count === 1 ? '1 Reihe' : `${count} Reihen`);
const stitches = (count: number): string => (count === 1 ? '1 Masche' : `${count} Maschen`);

export const sheet = ({ length, small, list }: Amounts): Words['sheet'] => ({
  places: { desk: 'am Tisch', machine: 'an der Maschine', lap: 'im Schoß' },
  leftAndRight: 'links und rechts: deine, zum Bett hin',
  pageOf: (place, [at, of]) => (of === 1 ? place : `${place}, ${at} von ${of}`),
  page: (at, of) => `Seite ${at} von ${of}`,
  mind: 'Achtung:',
  leadingTo: (first, last) => `${first} … ${last}.`.trim(),

  lead: (widthCm, depthCm) =>
    `Ein Zugbeutel mit schrägen Streifen, ${length(widthCm)} breit und ${length(depthCm)} tief`,
  bag: 'Der Beutel',
  flatAndSewn: 'Flach, genäht',
  give: (size, doubt) => `${size} ± ${doubt}`,
  by: (one, other) => `${one} × ${other}`,
  askedFor: 'Gewünscht',
  inside: 'Innen',
  boxedBottom: 'Boden',
  baseText: (widthCm, depthCm, sideCm) =>
    `${length(widthCm)} × ${length(depthCm)}, Seiten ${length(sideCm)} hoch`,
  stitchesAndRows: 'Maschen, Reihen',
  stitchesAndRowsText: (across, all, knitted) =>
    `${across} in der Breite; ${all}: ${knitted} gestrickt, 1 im Maschenstich`,
  shaping: 'Formen',
  shapingText: (moves, everyRows, edgeStitches) =>
    `${moves === 1 ? '1 Formschritt' : `${moves} Formschritte`}, alle ${everyRows} Reihen einer, ${edgeStitches === 1 ? '1 Randmasche' : `${edgeStitches} Randmaschen`}`,
  crawls: 'Wandert',
  crawlsText: (crawl, home) => `nach ${sideWord(crawl)}; Ausgangsseite ${sideWord(home)}`,
  stripesLabel: 'Streifen',
  stripesText: (count, angle) => `${count}, im Winkel von ${angle} zum Boden`,
  swatchMeasured: 'Probe gemessen',
  pieceMeasured: 'Stück gemessen',
  swatchGuessed: 'Probe geschätzt',
  swatchText: (across, high, size, state) =>
    `${across} Maschen, ${high} Reihen: ${size}, ${stateWord(state)}`,
  stitchSize: 'Maschenweite',
  stitchSizeText: (dial) => dial ?? 'wie bei der Maschenprobe: ______',
  usedAs: 'Gebraucht, gemessen',
  usedAsText: stateWord,
  yarnInAStitch: (mm, measured) =>
    `${small(mm)} Garn je Masche, ${measured ? 'gemessen' : 'aus der Maschenprobe (Modell)'}`,
  bedLabel: 'Nadelbett',
  bedText: (needles, pitchMm, times) =>
    `${needles} Nadeln im Abstand ${small(pitchMm)}; ${times === 1 ? 'einmal eingehängt' : `${times}-mal eingehängt`}`,

  yarn: 'Garn',
  sign: 'Zeichen',
  forWhat: 'Für',
  needs: 'Bedarf',
  withReserve: (percent) => `mit ${percent} % mehr`,
  youHave: 'Du hast',
  wasteRows: 'Hilfsgarnreihen',
  stripesUse: 'Streifen',
  graftAndSeam: 'Nähte',
  hemUse: 'Saum',
  cordUse: 'Kordel',
  notUsed: 'nicht verwendet',
  enough: (have) => `${have}, genug`,
  short: (have, lacking) => `${have}, ${lacking} zu wenig`,

  theStrip: 'Die Bahn',
  words: 'Wörter',
  onSide: (edge, side) => `${edge}, ${sideWord(side)}`,
  notes: 'Notizen',
  mySwatch: 'Meine Maschenprobe',
  mySwatchNote: 'Maschen und Reihen bleiben wie auf diesem Blatt; die Größe folgt der Maschenprobe',
  classList: 'Die Klasse',
  classListTitles: ['Name', 'Maschenprobe: w, h', 'Beutel: Breite, Tiefe', 'Fertig'],
  blanks: {
    name: 'Name',
    stitches: 'Gezählte Maschen',
    over: 'auf der Breite',
    rows: 'Gezählte Reihen',
    overHeight: 'auf der Höhe',
    stitchWidth: 'Maschenbreite w',
    widthByStitches: 'Breite ÷ Maschen =',
    rowHeight: 'Reihenhöhe h',
    heightByRows: 'Höhe ÷ Reihen =',
    acrossA: 'Quer a',
    alongB: 'Längs b',
    mouthC: 'Öffnung c',
    wide: 'Beutel, Breite',
    deep: 'Beutel, Tiefe',
  },

  numbers: {
    stitches: 'Maschen',
    hang: (ends) => `hier; am Ende ${ends}`,
    hangAgain: (times) => `hier; ${times}-mal eingehängt`,
    rows: 'Reihen, 1 Naht',
    every: (everyRows) => `alle ${everyRows}`,
    shape: (times) => `Reihen, ${times}-mal`,
  },
  needles: {
    empty: 'Loch',
    doubled: 'doppelt',
    outOfWork: 'außer Arbeit',
  },
  castOn: 'Anschlag',
  perStripe: 'Jeder Streifen',
  hangAgain: 'Umsetzen',
  close: 'Abschluss',
  hem: 'Saum',
  hemText: (stitches, rows, heightCm) =>
    `${stitches} Maschen aufgefasst, ${rows} Reihen je Lage, ${length(heightCm)} der Tiefe`,
  hemSections: (counts) => `Maschen der Abschnitte: ${counts.join(', ')}.`,
  hemFold: 'Umbruch',
  hemChain: 'Kette, alter Rand',
  hemCord: 'Lochmaschen',
  hemInside: 'innen',
  stripeByStripe: 'Streifen',
  stripesNote: (yarns) => `${yarns.join(', ')}. • Ränder formen, dann stehen sie hier.`,
  goesOn: 'Streifen, weiter',
  afterRows: (rows, what) =>
    `Nach ${rows.length === 1 ? 'Reihe' : 'Reihen'} ${
      rows.length > 3 ? `${rows.slice(0, 2).join(', ')} … ${rows.at(-1)}` : list(rows.map(String))
    }: ${what}`,
  inTurn: (back) => `Dann nach ${sideWord(back)}.`,
  weightsUp: 'beide Krallengewichte hoch.',
  whereListed: (text) => `Wo die Liste es sagt: ${text}`,
  crossing: (row, marks) => `vor Reihe ${row}: ${marks.join(', ')} darüber`,
  graftRow: (row) => `${row}: Naht`,
  thenCut: (yarn) => `${yarn} abschneiden`,
  rehang: (row, first, last) =>
    `Nach Reihe ${row} auf Hilfsgarn abwerfen, auf ${first} bis ${last} einhängen, Zähler auf ${row}, dann formen.`,
  ticksKept: 'Die Häkchen bleiben in diesem Browser.',
  ticksNotKept: 'Die Häkchen bleiben nicht, wenn die Seite zugeht: druck sie aus.',

  foldIt: 'Umdrehen und falten',
  graft: 'Verbinden',
  sew: 'Boden nähen und fertig machen',
  makeCord: 'Die Kordel stricken',
  lineIt: 'Füttern, falls du magst',
  boxCorners: 'Die Ecken quer abnähen',
  bottomSeam: 'Bodennaht',
  threadIt: 'Die Kordel einziehen und binden',
  trouble: 'Wenn etwas schiefgeht',

  purlSide: 'linke Seite zu dir',
  knitSide: 'rechte Seite zu dir',
  mouth: 'Öffnung',
  bottom: 'Boden',
  needleBed: 'Nadelbett',
  hanging: 'wie sie hängt',
  laidOut: 'ausgelegt',
  grafted: 'A an B',
  turnOver: 'umdrehen, Öffnung nach oben',
  bring: 'Enden nach hinten falten: A trifft B',
  foldBack: 'nach hinten',
  sewHere: 'Boden nähen',
  firstRow: 'B: Anfang, offen auf Hilfsgarn',
  crawlsTo: (crawl) => `wandert nach ${sideWord(crawl)}`,
  rowsSize: (count, cm) => `${rows(count)}, ${length(cm)}`,
  stitchesSize: (count, cm) => `${stitches(count)}, ${length(cm)}`,
  tail: 'Fadenende',
  graftLine: 'Verbindung',
  front: 'vorn',
  back: 'hinten',
  wayOfCord: (draw, eyelets) =>
    `Die ${whichCord[draw]}Kordel, abwechselnd hinein und heraus: ${eyelets.join(' ')}`,
  cordOutside: 'durchgezogen: außen; gestrichelt: innen; leerer Ring: ausgelassen',
  secondCord: (eyelet) =>
    `die zweite Kordel beginnt vor Lochmasche ${eyelet} und geht hinein, wo die erste herauskommt`,
  hungForRow: 'Reihe 1',
  hungAfter: (row) => `nach Reihe ${row}`,
  atRow: (row) => `Reihe ${row}`,
  morePlaces: (count) => `und noch ${count}-mal, auf dieselben Nadeln; die Streifenliste sagt, wann`,
  belowCord: (cm) => `${length(cm)} unter der Kordel`,

  shows: {
    bag: (widthCm, depthCm) =>
      `Der fertige Beutel, rechte Seite außen, ${length(widthCm)} breit und ${length(depthCm)} tief, mit schrägen Streifen und einer Kordel nahe der Öffnung`,
    strip: (across, high, crawl) =>
      `Die Bahn, wie sie hängt, linke Seite zu dir: ${stitches(across)} breit, ${rows(high)}, nach ${sideWord(crawl)} geneigt`,
    bed: (needles) => `Das Nadelbett mit seinen ${needles} Nadeln, und wo das Gestrick hängt`,
    shaping: 'Ein Formschritt.',
    fold: 'Drei Ansichten: die Bahn, wie sie hängt, linke Seite zu dir; umgedreht und ausgelegt, die Öffnung oben; gefaltet, ihre letzte Reihe A an ihrer ersten Reihe B',
    graft:
      'Das Verbinden, rechte Seite zu dir: der Faden läuft über den Kopf jeder Masche und hinter ihren Schenkeln, herauf durch A1, hinab durch B1, herauf durch B2, hinab durch A1, herauf durch A2 und so weiter',
    seam: 'Die Naht: der Faden läuft abwechselnd unter einem Querfaden vorn und einem hinten durch; dann wird er angezogen',
    cord: (across) =>
      `Die Kordel auf ihren Nadeln, linke Seite zu dir: Runden aus ${stitches(across)}, alle in gleicher Richtung gestrickt; vom Ende jeder Runde läuft der Faden quer zurück zum Anfang der nächsten`,
    flatCord: (across) =>
      `Die Kordel auf ihren Nadeln als flacher Streifen, linke Seite zu dir: Reihen aus ${stitches(across)}, hin und her`,
    hem: (heightCm) =>
      `Der Saum von der Seite: vom alten Rand geht die äußere Lage ${length(heightCm)} hinauf bis zum Umbruch, die innere wieder hinab bis zur Abkettkante innen; darunter liegen die Lochmaschen`,
    corner:
      'Eine flach gelegte Ecke, auf links: die Bodennaht läuft in der Mitte zur Spitze, und rechtwinklig dazu wird quer genäht',
    threadingOfTwo: (used, made) =>
      `Zwei Kordeln laufen durch ${used} von ${made} Lochmaschen, die eine hinein, wo die andere herauskommt; die Enden der einen hängen an der Verbindung, die der anderen gegenüber`,
    threading: (used, made) =>
      `Die Kordel läuft durch ${used} von ${made} Lochmaschen, hinein und heraus, von der Verbindung rundum bis zur Verbindung`,
    band: 'Die Streifen der Reihe nach',
    hero: 'Eine gestreifte Bahn hängt schräg am Nadelbett, daneben der Zugbeutel, der daraus wird: die Streifen winden sich um ihn, eine gebundene Kordel rafft die Öffnung',
  },

  heroStrip: (count, crawl, everyRows) =>
    `${stitches(count)}, nach jeder ${everyRows === 2 ? 'zweiten' : `${everyRows}.`} Reihe eine Nadel nach ${sideWord(crawl)}`,
  heroBag: (size, angle) => `${size}, Streifen im Winkel von ${angle}`,

  tag: {
    title: 'Geschenkanhänger',
    cut: 'an der Linie ausschneiden',
    size: (widthCm, depthCm) => `${length(widthCm)} × ${length(depthCm)}`,
    fibre: 'Faser',
    care: 'Pflege',
    made: 'Gestrickt',
    giver: 'Für alle, die ihn verschenken',
    noToy:
      'Dieser Beutel ist kein Spielzeug. Frag nach den örtlichen Regeln, bevor er verkauft oder einem Kind geschenkt wird.',
  },
});
