import type { ShelfKind } from '../planning/shelf.ts';
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

const none: Readonly<Record<ShelfKind, string>> = {
  bed: 'Kein Nadelbett',
  swatch: 'Keine Maschenprobe',
  yarn: 'Kein Garn',
};
const things: Readonly<Record<ShelfKind, string>> = {
  bed: 'Nadelbett',
  swatch: 'Maschenprobe',
  yarn: 'Garn',
};

export const shelf = ({ decimal, length, list, mass, yarnNeeded }: Amounts): Words['shelf'] => ({
  outside: 'was unter Namen aufgehoben ist, wie viel Garn noch da ist und was daraus werden kann',
  empty: [
    'Noch liegt nichts im Regal. Tippe in einem Beutel keep bed werkstatt, keep swatch pflaume oder keep yarns; dann gelten diese Namen in einer Vorgabe und bei den ersten Fragen.',
  ],
  notThere: (kind, name, known) =>
    known.length === 0
      ? `${none[kind]} liegt unter dem Namen ${name} im Regal: slantwise shelf zeigt, was da ist; schreib die Zahlen hin oder behalte eins mit keep.`
      : `${none[kind]} liegt unter dem Namen ${name} im Regal. Da ist: ${list(known)}.`,
  kept: (kind, shown) => `Im Regal: ${things[kind]} ${shown}.`,
  forgotten: (kind, name) => `Nicht mehr im Regal: ${things[kind]} ${name}.`,
  guessIsNoSwatch:
    'Die Maschenprobe dieses Beutels ist geschätzt, es gibt also keine zum Behalten: strick und miss erst eine.',
  sayOfYarn:
    'Nenn ein Garn dieses Beutels, oder eins mit Farbe und Lauflänge, so wie: keep yarn pflaume #6b2d5c 190 m auf 100 g 60 g',
  damaged: (path) =>
    `${path} lässt sich nicht als Regal lesen und bleibt, wie es ist. Schieb es weg, um ein neues anzufangen.`,
  titles: { bed: 'Nadelbetten', swatch: 'Maschenproben', yarn: 'Garne' },
  bed: (name, needles, pitchMm) =>
    `${name}: ${counted.needle(needles)} im Abstand von ${decimal(pitchMm)} mm`,
  swatch: (name, stitches, widthCm, rows, heightCm, dial) =>
    `${name}: ${counted.stitch(stitches)} auf ${length(widthCm)}, ${counted.row(rows)} auf ${length(heightCm)}${dial === null ? '' : `, Maschenweite ${dial}`}`,
  yarn: (name, colour, metresPer100g, grams) =>
    `${name} ${colour}, ${yarnNeeded(metresPer100g)} auf 100 g, ${grams === null ? 'nicht gewogen' : `noch ${mass(grams)}`}`,
  couldMake: (bed, swatch) =>
    `Auf ${bed} könnten daraus werden, im Verhältnis 14 zu 18, ${swatch === null ? 'mit geschätzter Maschenprobe (Faustregel)' : `mit der Maschenprobe ${swatch}`}:`,
  upTo: (yarns, scraps, widthCm, depthCm) =>
    `${list(yarns)}${scraps ? ', ein Restebeutel' : ''}: bis ${length(widthCm)} breit und ${length(depthCm)} tief`,
  tooLittle: (yarns) => `${list(yarns)}: zu wenig für einen Beutel`,
  sayMore: 'Mit einem Nadelbett und zwei gewogenen Garnen im Regal steht hier, was daraus werden kann.',
  takes: (names) => `${list(names)} aus deinem Regal`,
});

export const party = ({ list, mass, time }: Amounts): Words['party'] => ({
  title: (bags) => `ALLE ${bags} BEUTEL`,
  order: 'Folge',
  orderIs: (names) => `${list(names)}: zuerst, was vom knappsten Garn am meisten braucht`,
  without: 'nicht',
  withoutIs: (names) => `für ${list(names)} reicht das Garn nicht`,
  left: 'übrig',
  leftIs: (left) =>
    `${list(left.map(({ yarn, grams }) => `${mass(grams)} ${yarn}`))}, nach den Plänen ohne ihre Reserve`,
  prongs: (prongs) => `Deckerkämme mit ${list(prongs.map(String))} Nadeln`,
  time: 'Zeit',
  timeIs: (seconds, ownBags) =>
    `etwa ${time(seconds)} Arbeit im Ganzen, ${ownBags === 0 ? 'nach Faustregeln' : 'im Tempo deiner fertigen Beutel'}`,
  done: (name) => `${name}: fertig`,
  begun: (name, step, of) => `${name}: als Nächstes Schritt ${step} von ${of}`,
  toDo: (name) => `${name}: noch nicht begonnen`,
  tally: (done, begun, toDo) =>
    `Eine Reihe von ${done + begun + toDo} Beuteln: ${done} fertig, ${begun} begonnen, ${toDo} noch zu stricken.`,
  none: [
    'Noch ist keine Reihe geplant. party 4 plant vier Beutel wie diesen, die Farben von Beutel zu Beutel weitergerückt; slantwise party nimmt Vorgaben.',
  ],
  next: 'party next macht mit dem weiter, der als Nächstes kommt.',
  allDone: 'Alle Beutel der Reihe sind fertig.',
  kept: (bags) =>
    `Die Reihe von ${bags} Beuteln ist gespeichert: party sagt, wie sie steht, party next beginnt den nächsten.`,
  notAParty: (most) => `Eine Reihe hat 2 bis ${most} Beutel. Zum Beispiel: party 4`,
  damaged: (path) =>
    `${path} lässt sich nicht als Reihe lesen und bleibt, wie es ist. Schieb es weg, um eine neue zu planen.`,
  cannot: (why) => `So lässt sich keine Reihe stricken: ${why}`,
  outside: 'mehrere Beutel als Reihe behalten, ihren Plan zusammen drucken, und sagen, welche fertig sind',
  turned: 'von Beutel zu Beutel bekommt jeder Streifen das Garn des nächsten',
  sheetTitle: (bags) => `${counted.bag(bags)} zusammen`,
  sheetTally: 'Fertig',
});
