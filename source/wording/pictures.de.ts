import type { Amounts } from './amounts.ts';
import { counted } from './counted.de.ts';
import { atEnd, sideWord, timesWord } from './forms.de.ts';
import type { PicturesWords } from './pictures.en.ts';

export const pictures = ({ length }: Amounts): PicturesWords => ({
  wideBelowTheCord: (width, depthBelowCordCm, angle) =>
    `${width} breit, ${length(depthBelowCordCm)} unter der Kordel, Streifen mit ${angle}`,
  andMoreHungOn: (left) => `und noch ${timesWord(left)}, auf dieselben Nadeln eingehängt`,
  rowsToHungTo: (fromRow, throughRow, leftName, rightName, endLeft, endRight) =>
    `Reihen ${fromRow} bis ${throughRow}: ${leftName} bis ${rightName}, wandert nach ${endLeft} bis ${endRight}`,
  stripOnTheLeft: [
    'Bahn links: Zunahmerand oben, an den Punktlinien falten',
    'Beutel rechts: letzte Kante A trifft erste Kante B',
  ],
  theStripLeansTo: (crawl, size, rows) =>
    `Die Bahn neigt sich beim Wachsen nach ${sideWord(crawl)}: ${counted.stripe(size)}, ${rows} Reihen, die letzte im Maschenstich.`,
  ofRowsAreKnitted: (rowsDone, rows, done, size) =>
    `${rowsDone} von ${rows} Reihen sind gestrickt, ${done} von ${counted.stripe(size)} ganz.`,
  theStripIsWhole: 'Die Bahn ist fertig.',
  beingKnittedStripeRows: (number, plainText, firstRow, lastRow) =>
    `In Arbeit: Streifen ${number}, ${plainText}, Reihen ${firstRow} bis ${lastRow}.`,
  nextStripeRowsTo: (number, plainText, firstRow, lastRow) =>
    `Als Nächstes: Streifen ${number}, ${plainText}, Reihen ${firstRow} bis ${lastRow}.`,
  theFinishedBagIs: (widthCm, depthCm, depthBelowCordCm) =>
    `Der fertige Beutel ist ${length(widthCm)} breit und ${length(depthCm)} tief, davon ${length(depthBelowCordCm)} unter der Kordel.`,
  itsStripesClimbTo: (yarns, up, angle) =>
    `Seine Streifen (${yarns}) steigen nach ${sideWord(up)} an, im Winkel von ${angle} zum Boden, die glatte Seite außen.`,
  theCordRunsThrough: (size, made, which) =>
    `Die Kordel läuft durch ${size} von ${counted.eyelet(made)}; beide Enden kommen an der Verbindung heraus, ${which === 'front' ? 'vorn' : 'hinten'}.`,
  theBottomIsSewn: 'Der Boden ist genäht.',
  turnTheStripSo:
    'Dreh die Bahn so, dass der Zunahmerand oben liegt: er wird zur Öffnung, der andere zum Boden.',
  foldItEveryAlong: (widthCm) =>
    `Falte sie entlang der Öffnung alle ${length(widthCm)}, eine Hälfte hinter die andere.`,
  theLastEdgeA: (start, stitches, end) =>
    `Die letzte Kante, A, kommt an die erste Kante, B, zu liegen. Masche 1 liegt bei beiden ${atEnd(start)}, Masche ${stitches} ${atEnd(end)}; verbinde sie dort im Maschenstich.`,
  atRowTheWork: (rowsDone, leftName, rightName) =>
    `Bei Reihe ${rowsDone} hängt das Gestrick auf ${leftName} bis ${rightName}.`,
  theBedHasNeedles: (needles, crawl) =>
    `Das Nadelbett hat ${needles} Nadeln; das Gestrick wandert nach ${sideWord(crawl)}.`,
  rowsToHungFrom: (fromRow, throughRow, leftName, rightName, endLeft, endRight) =>
    `Reihen ${fromRow} bis ${throughRow}: eingehängt auf ${leftName} bis ${rightName}, wandert auf ${endLeft} bis ${endRight}.`,
});
