import type { Amounts } from './amounts.ts';
import type { Words } from './words.ts';

export const brief = ({ choice, list }: Amounts): Words['brief'] => ({
  empty: 'Die Vorgabe ist leer: schreib mindestens name, bed, swatch, bag, yarns und stripes hinein.',
  tooBig: (characterCount, most) =>
    `Die Datei hat ${characterCount} Zeichen, eine Vorgabe höchstens ${most}: schau, ob es die richtige Datei ist.`,
  notJson: (line, column, mendJson) =>
    `Die Vorgabe ist in Zeile ${line}, Spalte ${column} nicht zu lesen: ${mendJson}`,
  notWhole: (field, value) => `${field} ist ${value}: gib eine ganze Zahl an.`,
  notEven: (field, value) =>
    `${field} ist ${value}: gib eine gerade Zahl an, damit das Garn auf der Ausgangsseite endet.`,
  tooSmall: (field, value, amountOf) => `${field} ist ${value}: gib mindestens ${amountOf} an.`,
  tooLarge: (field, value, amountOf) => `${field} ist ${value}: gib höchstens ${amountOf} an.`,
  tooLong: (field, mostOf) => `${field} ist zu lang: höchstens ${mostOf}.`,
  notOneOf: (field, value, choices) => `${field} ist ${value}: wähle ${choices}.`,
  notAColour: (field, value) =>
    `${field} ist ${value}: schreib # und sechs Zeichen aus 0-9 und a-f, etwa "#6b2d5c".`,
  notAName: (field, value) =>
    `${field} ist ${value}: schreib einen Namen auf eine Zeile, ohne Leerzeichen an den Enden.`,
  noSize: (toWrite) => `bag ist leer: ergänze ${toWrite}.`,
  twoSizes: (keys, toWrite) => `bag hat ${list(keys)}, was nicht zusammenpasst: behalte ${toWrite}.`,
  noYarns: (toWrite) => `yarns ist leer: ergänze ${toWrite}.`,
  reservedYarn: (quote) =>
    `Kein Garn kann ${quote} heißen, der Name ist schon vergeben: gib ihm einen anderen.`,
  wasteIsAYarn: (quote) =>
    `waste.yarn ist ${quote}, ein Garn des Beutels: gib dem Hilfsgarn einen eigenen Namen.`,
  stripesAndScraps:
    'stripes und scraps sind beide da: behalte stripes für einen Rapport oder scraps für Reste.',
  scrapNotWeighed: (quote) =>
    `Das Garn ${quote} hat keine grams: wieg jeden Rest, damit jeder Streifen genug bekommt.`,
  twoUnits: (field, other) => `${field} und ${other} sind beide da: behalte eines davon.`,
  twoLoopLengths: 'swatch.loopLengthMm und swatch.rowYarnCm sind beide da: behalte eines davon.',
  unknownKeyBut: (field, near) => `In einer Vorgabe gibt es kein ${field}: meinst du ${near}?`,
  unknownKey: (field, known) =>
    `In einer Vorgabe gibt es kein ${field}: nimm es heraus, oder nimm ${choice(known)}.`,
  missing: (field, content) => `${field} fehlt: ergänze ${content}.`,
  missingThing: 'es',
  yarnWithoutName: 'Ein Garn hat keinen Namen: schreib einen vor den Doppelpunkt.',
  emptyName: (field, content) => `${field} ist leer: ergänze ${content}.`,
  aName: 'einen Namen',
  types: {
    number: 'eine Zahl',
    text: 'Text in doppelten Anführungszeichen',
    group: 'eine Gruppe in geschweiften Klammern { }',
    list: 'eine Liste in eckigen Klammern [ ]',
  },
  theBrief: 'Die Vorgabe',
  theText: (text) => `der Text ${text}`,
  numberInQuotes: (where, kind) =>
    `${where} ist ${kind}: nimm die Anführungszeichen weg, es muss eine Zahl sein.`,
  wrongType: (where, kind, value) => `${where} ist ${kind}: es muss ${value} sein.`,
  didYouMean: (quote) => `meinst du ${quote}?`,
  chooseYarn: (yarns) => `wähle ${choice(yarns)}.`,
  notAYarn: (field, quote, hint) => `${field} ist ${quote}, das ist keines der Garne: ${hint}`,
  another: 'ein anderes',
  stitchOutside: (mm) =>
    `Die Maschenprobe ergibt eine Masche von ${mm} mm Breite, nicht 0,2 bis 60 mm: prüf Breite und Maschenzahl.`,
  rowOutside: (mm) =>
    `Die Maschenprobe ergibt eine Reihe von ${mm} mm Höhe, nicht 0,2 bis 60 mm: prüf Höhe und Reihenzahl.`,
  thisComma: 'dieses Komma',
  thisColon: 'diesen Doppelpunkt',
  json: {
    'ends-early': () => 'die Datei endet zu früh; schließ jede { mit } und jede [ mit ].',
    comment: () => 'nimm den Kommentar heraus, in JSON gibt es keine.',
    'wrong-quotes': (found) => `nimm gerade doppelte Anführungszeichen statt ${found}.`,
    'unclosed-text': () => 'schließ diesen Text in derselben Zeile mit einem doppelten Anführungszeichen.',
    'odd-escape': () => 'schreib in einem Text \\\\ für einen Rückwärtsstrich und \\t für einen Tabulator.',
    'odd-number': () => 'schreib Zahlen in Ziffern, mit Dezimalpunkt und ohne Einheit, etwa 0.5.',
    'decimal-comma': () => 'schreib Dezimalzahlen hier mit Punkt, etwa 19.2.',
    'extra-comma': (found) => `nimm das Komma vor ${found} heraus.`,
    'comma-missing': (shown) => `setz ein Komma vor ${shown}.`,
    'colon-missing': () => 'setz einen Doppelpunkt zwischen Schlüssel und Wert.',
    'key-unquoted': (shown) => `setz den Schlüssel ${shown} in doppelte Anführungszeichen.`,
    'key-twice': (shown) =>
      `der Schlüssel ${shown} steht hier zum zweiten Mal; behalte einen, oder benenn ihn um.`,
    'word-unquoted': (shown) => `setz ${shown} in doppelte Anführungszeichen, oder schreib eine Zahl.`,
    'value-missing': (shown) => `schreib einen Wert vor ${shown}.`,
    'wrong-bracket': (found) =>
      `dieses ${found} passt nicht; schließ { mit } und [ mit ], das zuletzt geöffnete zuerst.`,
    'after-the-end': (shown) =>
      `die Vorgabe ist davor schon geschlossen; nimm ${shown} und alles danach heraus.`,
    'not-expected': (shown) => `nimm ${shown} heraus, oder schreib, was davor fehlt.`,
  },
  fields: {
    name: 'den Namen des Beutels',
    bed: 'needles und pitchMm deines Nadelbetts',
    needles: 'die Zahl der Nadeln des Nadelbetts',
    pitchMm: 'den Abstand von Nadel zu Nadel in mm',
    swatch: 'stitches, rows, widthCm und heightCm',
    stitches: 'die Zahl der Maschen',
    rows: 'die Zahl der Reihen',
    widthCm: 'die Breite in cm',
    heightCm: 'die Höhe in cm',
    bag: 'widthCm und depthCm, oder contents, oder stitches und rows',
    depthCm: 'die Tiefe in cm',
    girthCm: 'den Umfang des Inhalts in cm',
    yarns: 'jedes Garn mit seinem Namen, mit colour und metresPer100g',
    colour: 'eine Farbe wie "#6b2d5c"',
    metresPer100g: 'die Meter auf 100 g',
    stripes: 'einen Rapport, jeden Streifen mit yarn und rows',
    yarn: 'den Namen eines der Garne',
  },
  values: {
    tooLarge: 'eine zu große Zahl',
    list: 'eine Liste',
    group: 'eine Gruppe',
  },
});

export const fields = (_: Amounts): Words['fields'] => ({
  brief:
    'Ein Beutel, wie du ihn willst. Speichere die Datei als my-bag.json; slantwise plan my-bag.json druckt dann den Plan.',
  name: 'Wie der Beutel heißt. Der Name steht über dem Plan und dem Blatt.',
  bed: 'Dein Nadelbett.',
  'bed.needles': 'Wie viele Nadeln das Bett hat.',
  'bed.pitchMm':
    'Wie weit die Nadeln auseinander liegen, von Mitte zu Mitte: fein 3.6, normal 4.5, mittel 6.5, grob 9.',
  'bed.marginNeedles':
    'Nadeln, die an jedem Ende frei bleiben, damit der Schlitten am Gestrick vorbeikommt. Meist 2.',
  'bed.place': 'Wo das Gestrick hängt: um die Mitte des Betts (centre, üblich) oder vom Ende an (end).',
  'bed.park':
    'Wo ein Garn wartet: auf der Seite des Schlittens (home, üblich), oder die beiden Garne an je einem Ende (ends).',
  'bed.without':
    'Was deinem Bett fehlt: Anschlagkamm (comb), Freilauf (slip), Reihenzähler (counter). Meist nichts.',
  'bed.without[]': 'Ein Ding, das ihm fehlt.',
  swatch: 'Deine Maschenprobe, glatt gestrickt und in Ruhe gemessen. Aus ihr wird jede Größe berechnet.',
  'swatch.stitches': 'Maschen, über ihre Breite gezählt.',
  'swatch.rows': 'Reihen, über ihre Höhe gezählt.',
  'swatch.widthCm': 'Wie breit diese Maschen sind, in cm.',
  'swatch.heightCm': 'Wie hoch diese Reihen sind, in cm.',
  'swatch.widthIn': 'Wie breit diese Maschen sind, in Zoll, anstelle von widthCm.',
  'swatch.heightIn': 'Wie hoch diese Reihen sind, in Zoll, anstelle von heightCm.',
  'swatch.state':
    'Wie sie geruht hat: wie abgenommen (dry-relaxed), eingeweicht und flach getrocknet (wet-relaxed, üblich), oder gewaschen und im Trockner (fully-relaxed).',
  'swatch.loopLengthMm':
    'Garn in einer Masche: trenn eine Reihe auf, miss sie, teil durch ihre Maschen. Meist aus der Maschendichte berechnet.',
  'swatch.rowYarnCm': 'Garn in einer ganzen Reihe der Probe, anstelle von loopLengthMm.',
  'swatch.asideCm':
    'Wie weit die obere Kante rechts von der unteren steht, rechte Seite zu dir; nach links unter 0. Meist 0.',
  'swatch.stitchSize': 'Was der Knopf am Schlitten zeigte, etwa "6".',
  'swatch.guess': 'Ob niemand sie gemessen hat und sie nach dem Nadelbett geschätzt ist. Üblich nicht.',
  finishState: 'Der Zustand, in dem der Beutel benutzt wird und seine Größe haben soll. Meist der der Probe.',
  bag: 'Wie groß er sein soll, auf eine von drei Arten: widthCm und depthCm, oder contents, oder stitches und rows.',
  'bag.widthCm': 'Seine Breite, genäht und flach liegend.',
  'bag.depthCm': 'Seine Tiefe, genäht und flach liegend.',
  'bag.boxedCm': 'Wie tief sein Boden ist, wenn die Ecken abgenäht sind. Meist 0, ein flacher Beutel.',
  'bag.contents': 'Was hineinkommt. Der Beutel wird der kleinste, in den es passt.',
  'bag.contents.girthCm': 'Einmal rundherum, an der dicksten Stelle.',
  'bag.contents.heightCm': 'Wie hoch es ist.',
  'bag.contents.thicknessCm': 'Wie dick es ist, von vorn nach hinten. Meist wie bei etwas Rundem.',
  'bag.contents.easePercent': 'Luft ringsum, in Prozent. Meist 10.',
  'bag.stitches': 'Maschen auf den Nadeln.',
  'bag.rows': 'Reihen rund um den Beutel, die im Maschenstich mitgezählt.',
  crawl: 'Die Seite, nach der das Gestrick auf dem Bett wandert. Meist links (left).',
  homeSide:
    'Die Seite, auf der der Schlitten zwischen den Streifen wartet. Meist die, von der das Gestrick weg wandert.',
  edgeStitches: 'Wie viele Maschen an jedem Rand umgehängt werden: die Ösen deines Deckers. Meist 2.',
  shapeEveryRows: 'Reihen von einem Formschritt zum nächsten. Meist 2; mehr machen die Streifen flacher.',
  hem: 'Ein Saum, an die Öffnung gestrickt und umgeschlagen, damit sie sich nicht rollt. Fehlt er, gibt es keinen.',
  'hem.rows': 'Glatte Reihen jeder seiner zwei Lagen: eine gerade Zahl, etwa 4.',
  'hem.yarn': 'Der Name seines Garns. Meist das des ersten Streifens.',
  yarns: 'Deine Garne, jedes unter einem Namen von dir.',
  'yarns.NAME': 'Ein Garn.',
  'yarns.NAME.colour': 'Seine Farbe auf dem Bildschirm und auf Papier, etwa "#6b2d5c".',
  'yarns.NAME.metresPer100g':
    'Wie viele Meter 100 g davon sind. Das steht auf der Banderole; bei 50 g nimm es doppelt.',
  'yarns.NAME.grams': 'Wie viel du davon hast, nach der Waage. Fehlt es, weiß der Plan nicht, ob es reicht.',
  'yarns.NAME.pricePer100g': 'Was 100 g davon kosten.',
  'yarns.NAME.run': 'Bei Garn, das von selbst Streifen macht: seine Farben der Reihe nach, ab seinem Anfang.',
  'yarns.NAME.run[]': 'Eine seiner Farben.',
  'yarns.NAME.run[].colour': 'Diese Farbe, etwa "#2f5fa8".',
  'yarns.NAME.run[].metres': 'Wie viele Meter davon kommen, bis die nächste folgt.',
  stripes: 'Ein Rapport der Streifen, in der Reihenfolge des Strickens.',
  'stripes[]': 'Ein Streifen.',
  'stripes[].yarn': 'Der Name seines Garns.',
  'stripes[].rows': 'Wie viele Reihen er hoch ist: eine gerade Zahl.',
  scraps: 'Anstelle von stripes: die Garne sind Reste, und der Plan bringt sie in eine Reihenfolge.',
  'scraps.rows': 'Wie viele Reihen jeder Streifen hoch ist. Meist 2.',
  waste: 'Das Hilfsgarn.',
  'waste.yarn': 'Wie du es nennst. Meist waste.',
  'waste.rows': 'Reihen davon am Anfang. Meist 8.',
  'waste.ravel':
    'Was den Anfang am Ende löst: die letzte Hilfsgarnreihe, an einer Schlinge zu finden (loop, üblich), oder ein glatter Faden (cord).',
  cord: 'Die Kordel, die den Beutel zuzieht.',
  'cord.stitches': 'Wie viele Maschen sie hat. Meist 3.',
  'cord.yarn': 'Der Name ihres Garns. Meist das des ersten Streifens.',
  'cord.tieCm': 'Wie lang jedes Ende heraushängt, zum Binden. Meist 25.',
  'cord.draws': 'Kordeln: 1, oder 2, die von beiden Seiten ziehen. Meist 1.',
  'cord.roundsPer10Cm':
    'Runden, die du in 10 cm einer solchen Kordel gezählt hast. Meist aus der Reihenhöhe.',
  cost: 'Was du für einen Beutel rechnest; fehlt es, nennt der Plan keine Kosten.',
  'cost.perHour': 'Was eine Stunde deiner Arbeit wert ist.',
  'cost.currency': 'Wie du das Geld schreibst, etwa "EUR".',
  learned: 'Was fertige Beutel dieser Probe gezeigt haben. Das schreibt das Programm selbst.',
  'learned.bags': 'Beutel, die zählen.',
  'learned.setAside': 'Beutel, die nicht zählen, weil sie weit daneben lagen.',
  'learned.widthFactor': 'Breite, wie sie herauskam, durch die geplante.',
  'learned.depthFactor': 'Tiefe, wie sie herauskam, durch die geplante.',
  'learned.spread': 'Wie sehr sich die Beutel unterscheiden, als Anteil.',
});
