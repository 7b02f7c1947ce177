import type { Amounts } from './amounts.ts';
import type { BriefWords } from './brief.en.ts';

export const brief = ({ choice, list }: Amounts): BriefWords => ({
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
  json: {
    endsEarly: 'die Datei endet zu früh; schließ jede { mit } und jede [ mit ].',
    comment: 'nimm den Kommentar heraus, in JSON gibt es keine.',
    wrongQuotes: (found) => `nimm gerade doppelte Anführungszeichen statt ${found}.`,
    unclosedText: 'schließ diesen Text in derselben Zeile mit einem doppelten Anführungszeichen.',
    oddEscape: 'schreib in einem Text \\\\ für einen Rückwärtsstrich und \\t für einen Tabulator.',
    oddNumber: 'schreib Zahlen in Ziffern, mit Dezimalpunkt und ohne Einheit, etwa 0.5.',
    decimalComma: 'schreib Dezimalzahlen hier mit Punkt, etwa 19.2.',
    extraComma: (found) => `nimm das Komma vor ${found} heraus.`,
    commaMissing: (shown) => `setz ein Komma vor ${shown}.`,
    colonMissing: 'setz einen Doppelpunkt zwischen Schlüssel und Wert.',
    keyUnquoted: (shown) => `setz den Schlüssel ${shown} in doppelte Anführungszeichen.`,
    keyTwice: (shown) =>
      `der Schlüssel ${shown} steht hier zum zweiten Mal; behalte einen, oder benenn ihn um.`,
    wordUnquoted: (shown) => `setz ${shown} in doppelte Anführungszeichen, oder schreib eine Zahl.`,
    valueMissing: (shown) => `schreib einen Wert vor ${shown}.`,
    wrongBracket: (found) =>
      `dieses ${found} passt nicht; schließ { mit } und [ mit ], das zuletzt geöffnete zuerst.`,
    afterTheEnd: (shown) => `die Vorgabe ist davor schon geschlossen; nimm ${shown} und alles danach heraus.`,
    notExpected: (shown) => `nimm ${shown} heraus, oder schreib, was davor fehlt.`,
    thisComma: 'dieses Komma',
    thisColon: 'diesen Doppelpunkt',
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
