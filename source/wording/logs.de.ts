import { forShell } from '../shared/plain-text.ts';
import type { Amounts } from './amounts.ts';
import { counted, quoted } from './forms.de.ts';
import type { Words } from './words.ts';

export const logs = (_: Amounts): Words['logs'] => ({
  renamed: (before, now) => `${before} heißt jetzt ${now}.`,
  notAName: (most) => `Sag, wie der Beutel heißen soll, in höchstens ${counted.character(most)}.`,
  askDiscard: (bag, named) =>
    `Wegwerfen: ${bag}? Wenn ja, tippe: ${['discard', named, 'ja'].filter((word) => word !== '').join(' ')}`,
  askDiscardOutside: (bag, named) =>
    `Wegwerfen: ${bag}? Wenn ja, tippe: slantwise discard ${forShell(named)} --yes`,
  discarded: (bag) =>
    `Weggeworfen: ${bag}. Eine Kopie bleibt bis zum nächsten weggeworfenen Beutel; restore holt ihn zurück.`,
  restored: (bag) => `Wieder da: ${bag}.`,
  nothingToRestore: 'Es wurde kein Beutel weggeworfen.',
  nothingToCancel: 'Es gibt keinen Beutel, zu dem es zurückginge: quit beendet und behält deine Antworten.',
  openHint: 'Mit einem anderen weiter geht es mit open und seiner Nummer oder seinem Namen.',
  noSuchBag: (bag, known) =>
    known === 0
      ? 'Es gibt noch keine anderen Beutel: mit new planst du einen.'
      : `Kein Beutel hier ist ${bag}: tippe bags und öffne einen nach seiner Nummer, 1 bis ${known}, oder seinem Namen.`,
  severalBags: (bag, names) =>
    `${bag} kann ${names.join('; ')} sein: tippe bags und öffne einen nach seiner Nummer.`,
  openAlready: (name) => `${name} ist der Beutel, der hier offen ist.`,
  cannotOpen: (path) => `Das Protokoll ${path} ist beschädigt: slantwise check und die Datei sagt, wo.`,
  needsBrief:
    'Zusammen mit seiner Vorgabe, also slantwise BRIEF --log LOG, ist zu gebrauchen, was danach aufgezeichnet wurde.',
  foreign: {
    'byte-order-mark':
      'Vor das Protokoll kam unterwegs eine Bytereihenfolge-Marke, durch Mail oder einen Editor: das schadet nicht.',
    'windows-line-ends':
      'Die Zeilenenden des Protokolls wurden unterwegs die von Windows, durch Mail oder einen Editor: das schadet nicht.',
  },
  notAFolder: (path) =>
    `Wo der Ordner von ${path} sein sollte, liegt eine Datei. Schieb sie weg, oder wähle einen anderen Ordner.`,
  goesOnIn: (path) => `Du machst mit dem brauchbaren Teil weiter, in ${path}.`,
  takenOver: (from, path) =>
    `Etwas anderes hat in ${from} geschrieben; das bleibt, wie es ist. Deine ganze Arbeit steht in ${path} und geht dort weiter. Nächstes Mal: slantwise --log ${forShell(path)}`,
  soundPart: (path) => `Der brauchbare Teil ist gespeichert als ${path}.`,

  sound: (name) => `${name}: das Protokoll ist in Ordnung.`,
  recorded: (events, sittings, duration) =>
    `${counted.event(events)} in ${counted.sitting(sittings)}, ${duration} aufgezeichnet, Pausen mitgezählt.`,
  bagFinished: 'Der Beutel ist fertig.',
  stepsConfirmed: (step, stepCount) => `${step} von ${stepCount} Schritten bestätigt.`,
  classIsEmpty: (folder) => `In ${folder} liegen keine Protokolle: nenn den Ordner mit denen der Gruppe.`,
  classOf: (pupils, finished) =>
    `${counted.log(pupils)}, ${finished} fertig; am weitesten ist, wer oben steht.`,
  hardStep: (step, row, pupils) =>
    `Schritt ${step} (Reihe ${row}) dauerte bei ${pupils} von ihnen viel länger als üblich.`,
  takenBack: (times) => `${counted.time(times)} zurückgenommen`,
  cannotBeRead: 'nicht lesbar',
  finished: 'fertig',
  nextStep: (step, stepCount) => `als Nächstes Schritt ${step} von ${stepCount}`,
  noBags: ['Im Ordner der Protokolle liegt noch kein Beutel.'],
  moreBags: (more) => `und noch ${more}: slantwise bags zeigt alle.`,
  another: 'Für einen, der zu einem davon passt: öffne ihn und tippe another.',
  likeAlone: 'Nimm --like oder eine Vorgabe, nicht beides: die Vorgabe kommt aus dem Protokoll.',
  otherBag: (path, name) =>
    `In ${path} steht schon das Protokoll von ${name} nach einer anderen Vorgabe: nenn eine andere Datei, oder lass die Vorgabe weg, um damit weiterzumachen.`,
  lesson: {
    notUnderstood: (line, text) =>
      `Zeile ${line} ist nicht zu verstehen: ${quoted(text)}. Zum Beispiel: 33 say Achte auf den linken Rand. Nach dem Schritt kommt say, note, mark oder pause.`,
    stepNotReached: (line, step, most) =>
      `Zeile ${line} nennt Schritt ${step}, zu dem das Protokoll nie kommt: es geht von Schritt 1 bis ${most}.`,
    nothingAdded: 'Es ist keine Zeile zum Hinzufügen da. Zum Beispiel: 33 say Achte auf den linken Rand.',
    added: (added, path) =>
      `${counted.line(added)} hinzugefügt; die Lektion ist in ${path}. Abspielen: slantwise replay ${path}`,
  },
  goOn: (step, path) => `Weiter geht es ab Schritt ${step} mit: slantwise --log ${path}`,
});
