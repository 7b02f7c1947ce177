import { toyCordLimits } from '../planning/cord.ts';
import { firmTightness, labelTightness } from '../planning/fabric.ts';
import { loopConstants } from '../planning/gauge.ts';
import { endTailCm } from '../planning/tails.ts';
import type { Amounts } from './amounts.ts';
import { counted } from './forms.de.ts';
import type { Words } from './words.ts';

export const reasons = ({ decimal, fabricMass, fixed, length, list, small }: Amounts): Words['reasons'] => ({
  swatch: {
    names: 'Maschenprobe, Maschendichte, Maschenbreite, Reihenhöhe, ruhen',
    guessed: 'nach dem Nadelbett geschätzt (Faustregel): ',
    rule: 'Auf den Nadeln ist das Gestrick gedehnt. Erst ein Stück, das geruht hat, zeigt, wie breit eine Masche und wie hoch eine Reihe wird.',
    formula: 'Maschenbreite = Breite / Maschen; Reihenhöhe = Höhe / Reihen',
  },
  rehang: {
    names: 'neu aufnadeln, Neuaufnadeln, umsetzen, Nadeln, Bett zu kurz, freier Rand',
    rule: 'Mit jedem Formschritt braucht das Gestrick eine Nadel mehr. Reicht das Nadelbett nicht, kommt es ab und wird am Anfang neu eingehängt. Am freien Rand fährt der Schlitten ganz über das Gestrick hinaus.',
    formula:
      'Nadeln = Maschen + Formschritte; Male auf dem Nadelbett ≥ Formschritte / (nutzbare Nadeln − Maschen)',
    notHere: (sum, usable) => `${sum}, und ${usable} liegen innerhalb der freien Ränder: kein Neuaufnadeln`,
    here: (sum, usable, hangings) =>
      `${sum}, und ${usable} liegen innerhalb der freien Ränder: ${hangings}-mal eingehängt`,
  },
  'two-rows': {
    names: 'zwei Reihen, gerade Reihenzahl, alle zwei Reihen, jede zweite Reihe, zweite Reihe',
    rule: 'Nach einer geraden Zahl von Reihen ist der Schlitten wieder auf der Ausgangsseite: die Nadeln sind frei für den Decker, und jedes Garn wartet dort, wo es gebraucht wird.',
    here: (everyRows) => `ein Formschritt nach je ${counted.row(everyRows)}`,
  },
  'home-side': {
    names: 'Ausgangsseite, Heimseite',
    rule: 'Zwischen den Streifen läuft das Garn an der Seite hoch, an der der Schlitten wartet. Liegt sie am Abnahmerand, verschwinden diese Fäden in der Bodennaht.',
    leftToRight: 'das Gestrick wandert nach links, die Ausgangsseite ist rechts',
    leftToLeft:
      'das Gestrick wandert nach links, und die Ausgangsseite ist links: die Fäden liegen an der Öffnung',
    rightToLeft: 'das Gestrick wandert nach rechts, die Ausgangsseite ist links',
    rightToRight:
      'das Gestrick wandert nach rechts, und die Ausgangsseite ist rechts: die Fäden liegen an der Öffnung',
  },
  park: {
    names: 'abgelegtes Garn, ablegen, eigenes Ende',
    rule: 'Jedes wartende Garn hat sein eigenes Ende des Nadelbetts, damit sich die Garne nicht verdrehen.',
  },
  'out-of-work': {
    names: 'außer Arbeit, eine nach innen, Abnahme, abnehmen',
    rule: 'Die Nadel, die bei der Abnahme leer wird, kommt außer Arbeit. Sonst beginnt der nächste Schlittengang dort eine Masche, die nicht hingehört.',
  },
  'edge-stitches': {
    names: 'Randmaschen, Öffnung rollt sich, Ösen, zwei Randmaschen, Decker, Umhängewerkzeug',
    rule: 'Der Decker hängt so viele Maschen um, wie er Ösen hat. Sie geben über den Lochmaschen einen festen Rand: das Loch kommt auf die Nadel dahinter. Der Rand der Öffnung rollt sich nach innen; drei rollen sich weniger in die Lochmaschen als zwei, ein gedämpfter Rand noch weniger, und ein Saum gar nicht.',
    formula: 'Lochmasche = Nadel Nummer (Randmaschen + 1) vom neuen Rand',
  },
  feeder: {
    names: 'Fadenführer, leerer Fadenführer',
    rule: 'Ein Schlittengang mit leerem Fadenführer lässt alle Maschen los: die alten gleiten ab, und neue kommen nicht.',
  },
  weights: {
    names: 'Gewichte, Krallengewichte, Anschlagkamm, Gewichte höher hängen',
    rule: 'Maschen stricken nur gut ab, wo etwas nach unten zieht. Das Gestrick wächst von seinen Gewichten weg, am Zunahmerand am schnellsten: darum kommen sie alle 10 bis 20 Reihen höher.',
  },
  waste: {
    names: 'Hilfsgarn, Hilfsgarnreihen, Trennfaden',
    rule: 'Anfang und Ende werden miteinander verbunden, also müssen beide offen bleiben. Hilfsgarnreihen halten die Maschen so lange, und der Trennfaden gibt mit einem Zug den ganzen Anfang frei.',
    here: (rows, closingRows) => `${counted.row(rows)} vor dem Anfang, ${closingRows} nach der Schlussreihe`,
  },
  'closing-row': {
    names: 'Schlussreihe, eine Reihe weniger, letzte Reihe',
    rule: 'Die Verbindung ist selbst eine Reihe, die zweite des letzten Streifens. Darum wird er um eine Reihe kürzer gestrickt. Ganz gestrickt wäre er an der Verbindung zu hoch.',
    formula: 'gestrickte Reihen = Reihen rundum − 1',
  },
  stripes: {
    names: 'Streifen, Farben, Farbe des letzten Streifens',
    rule: 'Nachbarn haben verschiedene Farben, auch der letzte Streifen und der erste: an der Verbindung liegen sie nebeneinander und sähen bei gleicher Farbe wie ein breiter aus.',
    here: (first, last) => `der erste ist ${first}, der letzte ${last}`,
  },
  steam: {
    names: 'Dampf, dämpfen, bügeln',
    rule: 'Dampf verbrüht und drückt Kunstfasern platt.',
  },
  children: {
    names: 'Kinder, Spielzeug, EN 71, kleine Kinder, Gefahr',
    rule: 'Eine Kordel kann sich um einen Hals legen. Dieser Beutel ist kein Spielzeug; wo er verkauft oder einem Kind gegeben wird, gelten die örtlichen Regeln.',
    formula: `Spielzeug der Kleinsten: keine freie Kordel über ${toyCordLimits.freeCordCm * 10} mm, keine Schlinge über ${toyCordLimits.loopCm * 10} mm Umfang, mit 25 N gedehnt`,
    here: (tieCm, lengthCm) => `freies Ende ${length(tieCm)}, gebundene Schlinge ${length(lengthCm)} Umfang`,
    source: 'EN 71-1:2005+A8:2009, 5.4 b und c; es gilt die aktuelle Ausgabe',
  },
  pause: {
    names: 'eine Pause für die Hände, Pause, Hände, halbe Stunde',
    rule: 'Dieselben Handgriffe eine Stunde lang ermüden Hände und Schultern. Etwa jede halbe Stunde eine Pause hält sie frisch.',
  },
  tail: {
    names:
      'Fadenende zum Verbinden, Fadenende, 3 mal die Breite, dreimal die Breite, 3 mal, dreimal, dreifache Breite, langes Fadenende',
    rule: 'Der Faden läuft beim Verbinden durch eine ganze Reihe Maschen. Dreimal die Breite auf den Nadeln ist die Regel, das Garn einer Reihe und 10 % das Modell. Das Größere zählt, und etwas zum Festhalten.',
    formula: `Fadenende = das Größere von 3 × Maschen × Nadelabstand und 1,1 × Maschen × Maschenlänge, + ${length(endTailCm)}`,
  },
  graft: {
    names: 'Verbinden, Einstiche, Bewegungen, Zahl der Bewegungen',
    rule: 'Der Faden nimmt den Weg einer gestrickten Reihe, darum sieht man keine Naht. Die Nadel sticht in jede Masche zweimal; nur in die erste Masche von Kante B und die letzte von Kante A einmal.',
    formula: 'Paare von Einstichen = 2 × Maschen − 1',
  },
  seam: {
    names: 'Naht, Nahtfaden, Matratzenstich, Querfäden, Boden, zusammenziehen',
    rule: 'Die Hälfte der Reihen liegt der anderen gegenüber, ein Querfaden je Reihe. Der Faden geht zwischen den Rändern hin und her: zweimal die Naht, und etwas zum Festhalten. Alle 6 bis 8 Querfäden zusammengezogen liegt sie gleichmäßig.',
    formula: `Querfäden = Reihen rundum / 2; Fadenende = 2 × Breite + ${length(endTailCm)}`,
  },
  boxed: {
    names: 'abgenähte Ecken, Ecken, Boden mit Ecken, Standboden',
    rule: 'Jede Ecke wird flach gelegt, die Bodennaht auf dem Falz der Seite, und quer abgenäht. Das nimmt ringsum die halbe Tiefe des Bodens von der Höhe, und die ganze von der Breite.',
    formula: 'Boden = Breite − Bodentiefe; Seite = Tiefe − die Hälfte davon',
    here: (widthCm, depthCm, baseDepthCm, baseWidthCm, sideCm) =>
      `${length(widthCm)} − ${length(baseDepthCm)} = ${length(baseWidthCm)}; ${length(depthCm)} − ${length(baseDepthCm)} / 2 = ${length(sideCm)}`,
    flat: 'flach, ohne abgenähte Ecken: bag.boxedCm in der Vorgabe gibt ihm einen Boden',
  },
  hem: {
    names: 'Saum, umgeschlagener Saum, auffassen, Saumreihen',
    rule: 'Glattes Gestrick rollt sich am Rand; zwei Lagen davon, am Umbruch gefaltet, halten einander flach. Der Öffnungsrand wird aufgefasst, solange die Bahn offen liegt, eine Masche für jede, die an ihm entlang Platz hat. Eine lockere Reihe gibt den Umbruch, und die Abkettkante liegt innen.',
    formula:
      'Maschen = Öffnung / Maschenbreite, höchstens eine je Reihe; Höhe = (Reihen einer Lage + ½) × Reihenhöhe',
    here: (mouthCm, stitch, stitches, rows, row, heightCm) =>
      `${length(mouthCm)} / ${stitch} = ${stitches}; ${rows} × ${row} = ${length(heightCm)}`,
    asManyAsRows: (stitches, rows, row, heightCm) =>
      `eine Masche aus jeder von ${stitches} Reihen; ${rows} × ${row} = ${length(heightCm)}`,
    none: 'kein Saum: hem in der Vorgabe, etwa "hem": {"rows": 4}, gibt ihm einen',
  },
  'two-cords': {
    names: 'zwei Kordeln, zweite Kordel, beide Seiten',
    rule: 'Die zweite Kordel läuft durch dieselben Löcher, hinein, wo die erste herauskommt, und beginnt und endet gegenüber. Eine allein lässt die Lücke bei ihren Enden offen und zieht den Beutel zur Seite; zwei schließen ihn von beiden Seiten.',
    here: (draws, secondFrom) =>
      draws === 2
        ? `zwei, die zweite zuerst durch Lochmasche ${secondFrom ?? ''} hinein`
        : 'eine Kordel; cord.draws 2 in der Vorgabe macht zwei daraus',
  },
  eyelets: {
    names: 'Lochmaschen, Löcher, gerade Zahl von Löchern, leer lassen, eine nach außen, Zunahme, zunehmen',
    rule: 'Jede Zunahme lässt eine Nadel leer in Arbeit, und der nächste Schlittengang legt eine Masche darauf: ein Loch für die Kordel. Nach einer geraden Zahl von Löchern kommen beide Kordelenden außen heraus.',
    formula: 'Lochmaschen = Formschritte; die Kordel nutzt eine gerade Zahl davon',
    here: (made, used) => `${made}, und die Kordel nutzt ${used}`,
    onePassedBy: (made, used, passedBy) =>
      `${made}, die Kordel nutzt ${used} und lässt Nummer ${list(passedBy)} aus, der Verbindung gegenüber`,
  },
  spacing: {
    names: 'größere Lücke, Lücke, Abstand',
    rule: 'Von Lochmasche zu Lochmasche ist es eine Masche quer und die Reihen eines Formschritts hoch. An der Verbindung gab es keinen Formschritt, darum ist die Lücke dort größer.',
    formula: 'Abstand = √(Maschenbreite² + (Reihen je Formschritt × Reihenhöhe)²)',
    here: (spacingCm, graftGapCm) => `${length(spacingCm)}, und ${length(graftGapCm)} an der Verbindung`,
  },
  cord: {
    names: 'Kordel, Kordellänge, Runden, Schleife',
    rule: 'Die Kordel geht einmal um die Öffnung, durch die Löcher hinein und hinaus, und hängt an beiden Enden heraus, zum Binden. Jede Runde macht sie um eine Reihe länger; miss sie, und strick weiter, wenn sie zu kurz ist.',
    formula:
      'Länge = Öffnung + Weg hinein und hinaus + 2 × Ende; Runden = Länge / Höhe einer Runde, aufgerundet',
    here: (mouthCm, takeUpCm, tieCm, lengthCm, rounds) =>
      `${length(mouthCm)} + ${length(takeUpCm)} + 2 × ${length(tieCm)} = ${length(lengthCm)}; ${counted.round(rounds)}`,
  },
  width: {
    names: 'Breite, breit, Öffnung, Umfang, Größe',
    rule: 'Einmal um den Schlauch wandern die Ränder zur Seite, während die Reihen steigen: die Öffnung ist so lang wie die Schräge dazwischen. Flach liegt der Beutel halb so breit.',
    formula:
      'Öffnung = √(a² + b² + 2·a·b·sin Schräge), a = Formschritte × Maschenbreite, b = Reihen rundum × Reihenhöhe; Breite = die Hälfte',
    here: (across, up, lean, learned, mouthCm, widthCm) =>
      `√((${across})² + (${up})²${lean})${learned} = ${length(mouthCm)}; die Hälfte ist ${length(widthCm)}`,
  },
  depth: {
    names: 'Tiefe, tief, Höhe',
    rule: 'Die Fläche der Bahn, auf die Öffnung verteilt, gibt die Tiefe. Die Bodennaht liegt eine Masche weiter innen und nimmt eine Masche weg.',
    formula:
      'Tiefe = (Maschen − 1) × Maschenbreite × Reihen rundum × Reihenhöhe × cos Schräge / Öffnung, und die Höhe eines Saums',
    here: (each, stitches, hemCm, depthCm) =>
      `jede Masche gibt ${each} Tiefe${hemCm === 0 ? '' : `, der Saum ${length(hemCm)}`}: ${stitches} × ${each}${hemCm === 0 ? '' : ` + ${length(hemCm)}`} = ${length(depthCm)}`,
  },
  inside: {
    names: 'Tiefe unter der Kordel, unter der Kordel, innen',
    rule: 'Die Lochmaschen liegen eine halbe Masche unter den Randmaschen. Was über der Kordel ist, zählt nicht als Platz.',
    formula: 'Tiefe unter der Kordel = Tiefe ohne Saum − (Randmaschen + ½) × Tiefe einer Masche',
  },
  angle: {
    names: 'Winkel, Schräge, Grad, schräg',
    rule: 'Die Streifen steigen mit den Reihen, während die Ränder zur Seite wandern. Mehr Formschritte bei gleicher Reihenzahl machen sie flacher.',
    formula: 'Winkel = arctan(b × cos Schräge / (a + b × sin Schräge)), vom Bodenrand aus',
    withLean: (up, cos, across, sin, degrees) =>
      `arctan(${up} × ${cos} / (${across} + ${up} × ${sin})) = ${degrees} Grad`,
    here: (up, across, degrees) => `arctan(${up} / (${across})) = ${degrees} Grad`,
  },
  rows: {
    names: 'ganze Rapporte, Rapport, Reihen, kleiner, nicht so breit wie gewünscht',
    rule: 'Die letzte Reihe trifft an der Verbindung auf die erste. Die Farben passen dort nur nach ganzen Rapporten, darum wächst die Breite in Stufen.',
    formula: 'Reihen rundum = eine ganze Zahl von Rapporten und von Reihen je Formschritt',
  },
  moves: {
    names: 'Formschritte, Zahl der Formschritte, wandern',
    rule: 'Eine nach außen am einen Rand und eine nach innen am anderen halten die Maschenzahl gleich und machen die Bahn schräg. Nach der letzten Reihe kommt kein Formschritt: sie wird verbunden.',
    formula: 'Formschritte = Reihen rundum / Reihen je Formschritt − 1',
  },
  ease: {
    names: 'Mehrweite, Zugabe, Inhalt',
    rule: 'Der Beutel muss um das herumreichen, was hineinkommt, und sich darüber schließen: vom flachen Boden über die halbe Dicke, hinauf und wieder über die halbe. Darum ist die Breite der halbe Umfang und etwas mehr.',
    formula: 'Breite = Umfang / 2 × (1 + Mehrweite); Tiefe unter der Kordel = Höhe × (1 + Mehrweite) + Dicke',
    here: (girthCm, easePercent, wantedWidthCm) =>
      `${length(girthCm)} / 2 und ${decimal(easePercent)} %: mindestens ${length(wantedWidthCm)} breit`,
    notAsked: 'kein Umfang angegeben',
  },
  yarn: {
    names: 'Garn, wie viel Garn, Gramm, Meter, Gewicht des Garns, tex, Garnmenge',
    rule: `Jedes Garn: seine Maschen mal die Maschenlänge, sein Faden an anderen Streifen hoch, ${length(endTailCm)} an jedem Ende, und Verbindung, Naht und Kordel, wo sie aus ihm sind.`,
    formula: 'Gramm = Meter × tex / 1000; tex = 100 000 / (Meter auf 100 g)',
    source: 'die Definition von tex; Fadenenden nach allgemeinem Brauch',
  },
  reserve: {
    names: 'Reserve, 10 %, 15 %, zehn Prozent, mehr Garn',
    rule: 'Ein Beutel, dem in der letzten Reihe das Garn ausgeht, ist kein Beutel. Darum kommen 10 % dazu, bevor deine Waage gefragt wird, oder 15 %, wo die Masche nicht gemessen ist.',
    formula: 'Gramm mit Reserve = 1,1 × Gramm mit gemessener Masche, 1,15 × Gramm ohne',
  },
  'loop-length': {
    names: 'Maschenlänge, Garn in einer Masche, ks, Konstanten, relaxiert',
    rule: 'Glatt gestrickt folgt die Größe einer Masche aus dem Garn in ihr, je nachdem, wie sie geruht hat. Gemessen gilt mehr als das Modell: zieh eine Reihe der Maschenprobe auf und teile durch ihre Maschen.',
    formula: `Maschenlänge = √(ks × Maschenbreite × Reihenhöhe); ks ${fixed(loopConstants['dry-relaxed'].ks, 1)} trocken, ${fixed(loopConstants['wet-relaxed'].ks, 1)} nass, ${fixed(loopConstants['fully-relaxed'].ks, 1)} voll relaxiert`,
    here: (model, loopLengthMm) => `${model}; gemessen und verwendet: ${small(loopLengthMm)}`,
    source:
      'Munden 1959, Journal of the Textile Institute 50, T448, für Wolle; voll relaxiert nach Knapton und anderen 1968 (aus dem Gedächtnis)',
  },
  tightness: {
    names: 'Dichtefaktor, Dichtefaktor, lappig, klemmt',
    rule: 'Dickes Garn in kurzen Maschen ist fest, dünnes in langen locker. Zu locker wird das Gestrick schlaff; zu fest klemmen die Maschen und mit ihnen der Schlitten.',
    formula: `Dichtefaktor = √tex / Maschenlänge in mm; Handstrickgarne ${labelTightness.least} bis ${labelTightness.most}, ein Beutel, der die Form hält, ${firmTightness.least} bis ${firmTightness.most}`,
    source:
      'Bereiche: Faustregel, nach üblichen Banderolen; Klemmen: Texcoms Textile Technical Handbook 2023, S. 147',
  },
  fabric: {
    names: 'Gewicht des Gestricks, Quadratmeter, schwer, Gestrick',
    rule: 'Alle Maschen eines Quadratmeters, mal das Garn in jeder, mal was das Garn wiegt.',
    formula: 'Gramm je Quadratmeter = Maschen je Quadratmeter × Maschenlänge in m × tex / 1000',
    source: 'Texcoms Textile Technical Handbook 2023, S. 147',
  },
  class: {
    names: 'Garnklasse, Garnstärke, Klasse',
    rule: 'Die Klasse eines Garns folgt daraus, wie viele ganze Maschen es auf 10 cm gibt, was die Tabelle auch 4 Zoll nennt. Die Bereiche haben Lücken und überlappen, darum kann ein Garn zwischen zweien liegen.',
    formula: 'Maschen auf 10 cm = 100 mm / Maschenbreite, auf ganze Maschen gerundet',
    source: 'Craft Yarn Council, Standard Yarn Weight System',
  },
  said: {
    whatIs: 'Frag, was eines davon bedeutet, zum Beispiel: was ist eine Maschenprobe?',
    noWord: (asked) => `${asked} ist nicht unter den Wörtern hier. Tippe words, um sie alle zu sehen.`,
    noWordBut: (asked, near) => `${asked} ist nicht unter den Wörtern hier. Meinst du ${near}?`,
    whyOf: 'Frag warum, zum Beispiel: warum 3 mal die Breite? Themen:',
    onlyAWord: (topics) => `Warum das so ist, steht hier nicht. Du kannst fragen nach: ${topics}`,
    noReason: (topics) => `Dazu steht hier nichts. Du kannst fragen nach: ${topics}`,
    thisBag: (numbers) => `Dieser Beutel: ${numbers}.`,
    source: (source) => `Quelle: ${source}.`,
  },
  sources: {
    commonPractice: 'allgemeiner Brauch, nicht belegt',
    ruleOfThumb: 'Faustregel',
    planeGeometry: 'ebene Geometrie',
    gramsToSquareMetre: (gsm) => `${fabricMass(gsm)} g je Quadratmeter`,
    ouncesToSquareYard: (gsm) => `${fabricMass(gsm)} oz je Quadratyard`,
  },
});
