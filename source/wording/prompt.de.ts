import type { Amounts } from './amounts.ts';
import { counted, phaseWords, placeWords, sideWord, yarnClass, yarnName } from './forms.de.ts';
import type { Words } from './words.ts';

export const prompt = ({ choice, length, list }: Amounts): Words['prompt'] => ({
  unknownCommand: (word, nearest) => `Einen Befehl ${word} gibt es nicht. Meinst du ${nearest}?`,
  noCommand: (word) => `Einen Befehl ${word} gibt es nicht. Tippe help, um alle zu sehen.`,
  ambiguous: (word, choices) => `${word} kann ${choice(choices)} sein: tippe einen Buchstaben mehr.`,
  needsMore: (usage) => `Es fehlt noch etwas. Zum Beispiel: ${usage}.`,
  notACount: (word, usage) => `${word} ist keine ganze Zahl über 0. Zum Beispiel: ${usage}.`,
  sides: ['links', 'rechts'],
  notInRange: (word, least, most) => `${word} ist keine ganze Zahl von ${least} bis ${most}.`,
  standsAlone: (command, rest, instead) =>
    `${command} braucht keine weiteren Wörter: tippe ${instead === null ? `es ohne "${rest}"` : `${instead}, wenn du das meinst`}.`,
  unknownPlace: (word, usage, verb) =>
    `${word} ist keine Stelle, zu der es geht. Zum Beispiel: ${usage}; mehr mit help ${verb}.`,
  noSuchMark: (name, known) => `Eine Marke ${name} gibt es nicht. Marken: ${list(known)}.`,
  noMarks: 'Es gibt noch keine Marken. Tippe mark und einen Namen.',
  noSuchPlace: (what, number, most) =>
    `${placeWords[what] ?? what} ${number} gibt es nicht: dieser Beutel hat ${most}.`,
  notSoManyRows: (knitted) =>
    knitted === 0
      ? 'Noch ist keine Reihe des Beutels gestrickt: tippe back, wenn nur die Zählung eins zu weit ist.'
      : `So viele Reihen können nicht heraus: gestrickt ${knitted === 1 ? 'ist eine' : `sind ${knitted}`}.`,
  noSuchPhase: (phase) => `Dieser Beutel hat keinen Teil ${phase}.`,
  leftOfWhat: (word, needle) =>
    `Schreib Schlitten ${sideWord(word)}, oder ${sideWord(word)} und die Nadel an diesem Rand: ${sideWord(word)} ${needle}.`,
  whichEdge: (needle) =>
    `Ist ${needle} der linke Rand oder der rechte? Tippe links ${needle} oder rechts ${needle}, oder nenn beide Ränder.`,
  tooManyNeedles: (needles) =>
    `${list(needles)} sind mehr als zwei Ränder: nenn die äußersten Nadeln mit Maschen.`,
  countOfWhat: (word) => `${word} wovon? Zum Beispiel: row ${word}, stripes ${word}, ${word} stitches.`,
  notAMeasurement: (word, usage) =>
    `${word} ist hier nicht zu verstehen. Zum Beispiel: ${usage}; mehr mit help replan.`,
  notAWeighing: (text, usage) =>
    `Nicht verstanden: ${text}. Nenn ein Garn und sein Gewicht ab 0. Zum Beispiel: ${usage}.`,
  notTwoSizes: (text, usage) =>
    `Nicht verstanden: ${text}. Nenn eine Breite und eine Tiefe. Zum Beispiel: ${usage}.`,
  nothingFoundBefore: 'Es gibt noch nichts zu ergänzen: tippe find und was du siehst, ohne das Wort and.',
  nothingOffered: 'Hier gibt es keinen Vorschlag: tippe erst find, rip oder replan.',
  notOffered: 'Es gibt einen Vorschlag: tippe choose.',
  whichOffer: (most) => `Welcher? Tippe choose und eine Zahl von 1 bis ${most}.`,
  missingChoice: (choices) => `Es fehlt noch etwas: wähle ${choice(choices)}.`,
  notAChoice: (word, choices) => `${word} geht hier nicht: wähle ${choice(choices)}.`,
  done: {
    back: (place) => `Zurückgenommen: ${place}`,
    redo: (place) => `Wieder gemacht: ${place}`,
    go: (place) => `Weiter bei: ${place}`,
    note: (text) => `Notiert: ${text}`,
    setRight: (place) => `Korrigiert: ${place}`,
    stop: 'Abgebrochen. Das Auftrennen oder Korrigieren ist zu Ende; where zeigt die Stelle.',
    replan: (planned) => `Neu geplant: ${planned}.`,
    now: (place) => `Jetzt: ${place}`,
    mark: (name) => `Marke gesetzt: ${name}.`,
    rippedBack: (place) => `Aufgetrennt: ${place}`,
    several: (first, last, all) => `${first} bis ${last}: ${all} Schritte bestätigt`,
  },
  oneAtATime: 'Ein Schritt nach dem anderen: Enter bestätigt, ← nimmt zurück, stop hört damit auf.',
  wayBack: (at, of, text) => `Zurück, ${at} von ${of}: ${text}`,
  wayMend: (at, of, text) => `Korrektur, ${at} von ${of}: ${text}`,
  place: {
    finished: 'der Beutel ist fertig.',
    next: (step, stepCount, phase, row, knittedRows) =>
      `als Nächstes Schritt ${step} von ${stepCount}, ${phase}, ${counted.row(row)} von ${knittedRows} gestrickt.`,
    here: (place) => `Du bist hier: ${place}`,
  },
  welcome: {
    again: (name) => `Weiter mit ${name}.`,
    bag: (name, stitches, rows, widthCm, depthCm) =>
      `${name}: ${stitches} Maschen, ${rows} Reihen rundum, ${length(widthCm)} breit und ${length(depthCm)} tief.`,
    sides:
      'Links und rechts gelten für dich, mit Blick auf das Nadelbett. Tippe plan für den ganzen Plan und help für das, was du tippen kannst.',
  },
  bagFinished: 'Der Beutel ist fertig.',
  stepNow: (step, stepCount, phase, text) => `Schritt ${step} von ${stepCount}, ${phase}: ${text}`,
  caution: (caution) => `Vorsicht: ${caution}`,
  bed: {
    empty: 'Das Nadelbett ist leer.',
    carriage: (carriage) => `Schlitten ${sideWord(carriage)}.`,
    noLoops: (carriage) => `Keine Maschen auf dem Nadelbett. ${carriage}`,
    moves: (done, all) => `${done} von ${all} Formschritten gemacht.`,
    edges: (left, right, stitches, carriage, moves) =>
      `Ränder ${left} und ${right}, ${counted.needle(stitches)} mit Maschen. ${carriage} ${moves}`,
    parkedAt: (yarn, end) => `${yarnName(yarn)} ${sideWord(end)}`,
    feederEmpty: 'Der Fadenführer ist leer.',
    feeder: (yarn) => `Im Fadenführer: ${yarnName(yarn)}.`,
    parked: (waiting) => `Abgelegt: ${list(waiting)}.`,
  },
  notes: {
    none: ['Noch keine Notizen. Tippe note und was du dir merken willst.'],
    after: (done, text) => `Schritt ${done + 1}: ${text}`,
  },
  marks: {
    none: ['Noch keine Marken. Tippe mark und einen Namen.'],
    next: (name, step) => `${name}: Schritt ${step}`,
  },
  cautions: {
    hooks: 'Nadelhaken und Zungen sind scharf: Finger weg, solange der Schlitten läuft.',
    weights: 'Gewichte fallen: halte beim Einhängen eine Hand darunter und die Füße weg.',
    'weights-off': 'Nimm die Gewichte ab, bevor eine Masche frei wird; Füße weg.',
    steam: 'Falls du den Beutel dämpfst: Dampf verbrüht und drückt Kunstfasern platt.',
    lookTwice: 'Prüf erst: das lässt sich nicht rückgängig machen.',
    cords: (endCm, cordCm, freeCordCm, loopCm) =>
      `Halte Kordeln von kleinen Kindern fern: diese hat freie Enden von ${length(endCm)} und bildet eine Schlinge von ${length(cordCm)}. EN 71-1:2005+A8:2009 erlaubte in Spielzeug für die Kleinsten ${length(freeCordCm)} und ${length(loopCm)}; maßgeblich ist die geltende Ausgabe. Es gelten die Regeln am Ort.`,
    forSwitch: 'Beim Belegen eines Fußschalters',
    afterHalfHour: 'Nach einer halben Stunde Arbeit',
    atStep: (value) => `Bei Schritt ${value}`,
    atStepsOf: (steps, all) => `Bei den Schritten ${steps} …, insgesamt ${all}`,
    atSteps: (steps) => `Bei den Schritten ${list(steps)}`,
  },
  rest: {
    rest: 'Gönn Händen und Schultern ein paar Minuten Pause (Faustregel).',
    halfHour: 'Das war eine halbe Stunde Arbeit.',
    aloud: 'halbe Stunde, gönn den Händen Pause',
  },
  sheetEnding: (out) =>
    `${out} endet nicht auf .html, .svg oder .md, und die Art des Blatts hängt davon ab: häng eines davon an.`,
  sheetWritten: (out) => `Das Blatt ist geschrieben: ${out}`,
  yarn: yarnName,
  yarnClass,
  phases: phaseWords,
  tooSoonLookFirst: 'zu früh, schau erst hin',
  noPassIsDue: 'jetzt ist kein Schlittengang dran',
  theBagIsFinished: 'der Beutel ist fertig',
});
