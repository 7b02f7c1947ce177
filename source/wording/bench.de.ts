import type { Side } from '../bed/bed.ts';
import type { Amounts } from './amounts.ts';
import { atEnd, counted, sideWord, timesWord } from './forms.de.ts';
import type { Words } from './words.ts';

const towards = (side: Side): string => (side === 'left' ? 'links' : 'rechts');
const edgeOf = (side: Side): string => (side === 'left' ? 'linker Rand' : 'rechter Rand');

export const bench = ({ length, time }: Amounts): Words['bench'] => ({
  knit: (to) => `nach ${towards(to)} stricken`,
  out: (edge, needle) => `${edgeOf(edge)}, eine nach außen: ${needle}`,
  in: (edge, needle) => `${edgeOf(edge)}, eine nach innen: ${needle}`,
  park: (yarn, side) => `${yarn} ${towards(side)} parken`,
  cut: (yarn) => `${yarn} abschneiden`,
  thread: (yarn) => `${yarn} einfädeln`,
  graft: (edge, down, up) =>
    [
      ...(down === null ? [] : [`hinein ${edge}${down}`]),
      ...(up === null ? [] : [`heraus ${edge}${up}`]),
    ].join(' '),
  bars: (from, through) => (from === through ? `Querfaden ${from}` : `Querfäden ${from} bis ${through}`),
  rowsOf: (of, from, through) => {
    const rows = `${{ waste: 'Hilfsgarn', hem: 'Saum', cord: 'Kordel' }[of]}reihe`;
    return from === through ? `${rows} ${from}` : `${rows}n ${from} bis ${through}`;
  },
  rounds: (from, through) => (from === through ? `Runde ${from}` : `Runden ${from} bis ${through}`),
  holes: (inThrough, outThrough) => `hinein ${inThrough}, heraus ${outThrough}`,
  back: 'auftrennen',
  mend: 'Korrektur',
  finished: 'fertig',

  pass: (at, of) => `Gang ${at} von ${of}`,
  row: (at, of) => `Reihe ${at} von ${of}`,
  move: (at, of) => `Formung ${at} von ${of}`,
  of: (at, of) => `${at} von ${of}`,
  step: (at, of) => `Schritt ${at} von ${of}`,
  wayStep: (at, of) => `${at} von ${of}`,

  rowComes: (row, of) => `Reihe ${row} von ${of} kommt`,
  rowsDone: (done, of) => `${done} von ${of} Reihen gestrickt`,
  stripe: (at, of) => `Streifen ${at} von ${of}`,

  done: (at, of) => `${at} von ${of} geschafft`,

  timeLeft: (phaseS, bagS) => `Teil ${time(phaseS)}, Beutel ${time(bagS)}`,
  bagTimeLeft: (bagS) => `Beutel ${time(bagS)}`,
  now: 'jetzt',
  make: 'wird',
  eyelet: (needle) => `${needle} bleibt leer in Arbeit: das Loch`,
  two: (needle) => `${needle} hält zwei Maschen`,
  outOfWork: (needle) => `${needle} außer Arbeit`,
  graftPath: ['hinein: nach hinten', 'heraus: zu dir', 'über die Maschenköpfe'],
  barPath: 'unter jedem Querfaden durch, eine Seite und dann die andere',
  slip: (to) => `nach ${towards(to)} gleiten`,
  front: 'vorn',
  behind: 'hinten',

  afterwards: 'dann',
  bagWide: (widthCm) => `${length(widthCm)} breit`,
  bagDeep: (depthCm) => `${length(depthCm)} tief`,
  bagDone: 'Der Beutel ist fertig.',
  tooSmall: (columns, rows) => `zu klein: mindestens ${columns} × ${rows}`,
  reading: (at, of) =>
    at === of
      ? `Seite ${at} von ${of}: Enter geht zur Maschine zurück`
      : `Seite ${at} von ${of}: Enter geht weiter, Escape zurück zur Maschine`,
  typeToLeave: 'Der Beutel ist fertig: quit beendet',
  keysShort: 'Enter bestätigt; help zeigt mehr',
  keys: 'Enter bestätigt, ← nimmt zurück; oder tippe einen Befehl, etwa help',
  keysAscii: 'Enter bestätigt, <- nimmt zurück; oder tippe einen Befehl, etwa help',
  drawOff: 'draw off: zurück',
});

export const pictures = ({ length }: Amounts): Words['pictures'] => ({
  sizeBelowCord: (width, depthBelowCordCm, angle) =>
    `${width} breit, ${length(depthBelowCordCm)} unter der Kordel, Streifen mit ${angle}`,
  hangingsLeftOut: (left) => `und noch ${timesWord(left)}, auf dieselben Nadeln eingehängt`,
  hangingLabel: (fromRow, throughRow, hung, last) =>
    `Reihen ${fromRow} bis ${throughRow}: ${hung.leftName} bis ${hung.rightName}, wandert nach ${last.leftName} bis ${last.rightName}`,
  howToRead: [
    'Bahn links: Zunahmerand oben, an den Punktlinien falten',
    'Beutel rechts: letzte Kante A trifft erste Kante B',
  ],
  leaningStrip: (crawl, size, rows) =>
    `Die Bahn neigt sich beim Wachsen nach ${sideWord(crawl)}: ${counted.stripe(size)}, ${rows} Reihen, die letzte im Maschenstich.`,
  rowsKnitted: (rowsDone, rows, done, size) =>
    `${rowsDone} von ${rows} Reihen sind gestrickt, ${done} von ${counted.stripe(size)} ganz.`,
  stripWhole: 'Die Bahn ist fertig.',
  stripeNow: (number, plainText, firstRow, lastRow) =>
    `In Arbeit: Streifen ${number}, ${plainText}, Reihen ${firstRow} bis ${lastRow}.`,
  stripeNext: (number, plainText, firstRow, lastRow) =>
    `Als Nächstes: Streifen ${number}, ${plainText}, Reihen ${firstRow} bis ${lastRow}.`,
  finishedBag: (widthCm, depthCm, depthBelowCordCm) =>
    `Der fertige Beutel ist ${length(widthCm)} breit und ${length(depthCm)} tief, davon ${length(depthBelowCordCm)} unter der Kordel.`,
  climbingStripes: (yarns, up, angle) =>
    `Seine Streifen (${yarns}) steigen nach ${sideWord(up)} an, im Winkel von ${angle} zum Boden, die glatte Seite außen.`,
  cordWay: (size, made, which) =>
    `Die Kordel läuft durch ${size} von ${counted.eyelet(made)}; beide Enden kommen an der Verbindung heraus, ${which === 'front' ? 'vorn' : 'hinten'}.`,
  cordsWay: (size, made, which) =>
    `Zwei Kordeln laufen gegeneinander durch ${size} von ${counted.eyelet(made)}; die Enden der einen kommen an der Verbindung heraus, ${which === 'front' ? 'vorn' : 'hinten'}, die der anderen gegenüber.`,
  bottomSewn: 'Der Boden ist genäht.',
  bottomBoxed: (widthCm, depthCm, sideCm) =>
    `Der Boden ist genäht, seine Ecken sind quer abgenäht: er steht auf ${length(widthCm)} mal ${length(depthCm)}, die Seiten sind ${length(sideCm)} hoch.`,
  turnStrip: 'Dreh die Bahn so, dass der Zunahmerand oben liegt: er wird zur Öffnung, der andere zum Boden.',
  foldStrip: (widthCm) =>
    `Falte sie entlang der Öffnung alle ${length(widthCm)}, eine Hälfte hinter die andere.`,
  joinEdges: (start, stitches, end) =>
    `Die letzte Kante, A, kommt an die erste Kante, B, zu liegen. Masche 1 liegt bei beiden ${atEnd(start)}, Masche ${stitches} ${atEnd(end)}; verbinde sie dort im Maschenstich.`,
  workNow: (rowsDone, leftName, rightName) =>
    `Bei Reihe ${rowsDone} hängt das Gestrick auf ${leftName} bis ${rightName}.`,
  bedAndCrawl: (needles, crawl) =>
    `Das Nadelbett hat ${needles} Nadeln; das Gestrick wandert nach ${sideWord(crawl)}.`,
  hangingCaption: (fromRow, throughRow, hung, last) =>
    `Reihen ${fromRow} bis ${throughRow}: eingehängt auf ${hung.leftName} bis ${hung.rightName}, wandert auf ${last.leftName} bis ${last.rightName}.`,
  bagPart: (depthCm, toCome) =>
    `oben links, im Ganzen ${length(depthCm)} tief${{ pale: '; blass: kommt noch', small: '; klein: kommt noch', none: '' }[toCome ?? 'none']}`,
  mouth: 'Öffnung',
  bottom: 'Boden',
  stripPart: (from, through, of) => `Reihen ${from} bis ${through} von ${of} gezeigt`,
  tooFine: 'zu fein, um jeden Streifen zu zeigen',
  graft: (mouth) => `rechte Seite oben, A oberhalb, B unterhalb, die Öffnung ${sideWord(mouth)}`,
  graftDown: 'hinab: von der rechten Seite nach hinten',
  graftUp: 'herauf: von hinten zur rechten Seite',
  graftPath: 'hinter den Schenkeln, über den Kopf jeder Masche, so groß wie eine Masche',
  graftTurns: 'B: hinab durch eine, herauf durch die nächste; dann A ebenso',
  seamFold: 'rechte Seite außen, der Abnahmerand Hälfte auf Hälfte gefaltet',
  seamBars: 'unter jedem Querfaden durch, eine Masche vom Rand, eine Seite und dann die andere',
  seamDraw: 'alle 6 bis 8 Querfäden den Faden anziehen, bis die Ränder sich treffen',
  cornerTip: (fromTipCm) => `von der Spitze bis zur Quernaht: ${length(fromTipCm)}`,
  cornerFold: 'auf links: die Bodennaht liegt auf dem Falz der Seite',
  cornerAcross: (acrossCm) => `quer abgenäht: ${length(acrossCm)}, durch beide Lagen`,
  cornerSides: 'die andere Ecke ebenso; dazwischen liegt der Boden',
  mouthHemmed: (heightCm) =>
    `Seine Öffnung ist ein Saum aus zwei Lagen, ${length(heightCm)} hoch, der sich nicht rollt.`,
  noHem: 'dieser Beutel hat keinen Saum',
  hemFold: 'der Umbruch, die Öffnung',
  hemLayers: (rows, heightCm) => `zwei Lagen von ${rows} Reihen, ${length(heightCm)} hoch`,
  hemChain: (stitches) => `die Abkettkante, innen, am Rand mit ${stitches} aufgefassten Maschen`,
  hemCord: (foldToCordCm) => `die Lochmaschen, ${length(foldToCordCm)} unter dem Umbruch`,
  hemSides: 'von der Seite: links ist das Innere des Beutels',
  slant: (degrees, everyRows) => `${degrees}°, ${everyRows} Reihen`,
  cordSlip: (to) => `nach ${sideWord(to)}: der Schlitten läuft frei, nichts wird gestrickt`,
  cordKnit: (to) => `nach ${sideWord(to)}: er strickt, und der Faden quer darüber zieht den Schlauch zu`,
  cordRound: 'zwei Schlittengänge sind eine Runde, eine Reihe hoch',
  cordFlat: 'hin und her: jeder Schlittengang strickt eine Reihe',
  cordSewn: 'vom Bett genommen werden ihre langen Ränder zusammengenäht',
});
