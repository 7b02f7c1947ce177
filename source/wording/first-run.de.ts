import type { UsualThing } from '../planning/usual.ts';
import type { Amounts } from './amounts.ts';
import { counted, quoted } from './forms.de.ts';
import type { Words } from './words.ts';

const things: Readonly<Record<UsualThing, string>> = {
  cards: 'ein Kartenspiel in der Schachtel',
  dice: 'einen Satz von sieben Würfeln',
  jar: 'ein Glas Marmelade',
  socks: 'ein Paar Socken, zusammengerollt',
  book: 'ein kleines Taschenbuch',
};

export const firstRun = ({ choice, decimal, length, list, massNeeded }: Amounts): Words['firstRun'] => ({
  questions: {
    name: {
      label: 'Name',
      ask: 'Wie soll der Beutel heißen?',
      asIn: ['Würfelbeutel'],
    },
    size: {
      label: 'Größe',
      ask: 'Wie breit und wie tief soll er sein, genäht und flach gelegt? Oder: welchen Umfang und welche Höhe hat, was hineinkommt?',
      asIn: {
        cm: '14 mal 18 cm',
        in: '5,5 mal 7 Zoll',
        contents: [
          'Umfang 26 Höhe 12',
          'ein Kartenspiel',
          'Würfel',
          'ein Marmeladenglas',
          'Socken',
          'ein Buch',
        ],
        counts: ['46 Maschen 64 Reihen', '14 mal 18 Boden 5'],
      },
    },
    bed: {
      label: 'Bett',
      ask: 'Welches Nadelbett hast du: wie viele Nadeln, in welchem Abstand?',
      asIn: ['120 Nadeln 6 mm', 'fein 200', 'mittel 120', 'grob 90'],
      show: (needles, pitchMm) => `${counted.needle(needles)} im Abstand von ${decimal(pitchMm)} mm`,
    },
    swatch: {
      label: 'Probe',
      ask: 'Was misst deine Maschenprobe: wie viele Maschen auf die Breite, wie viele Reihen auf die Höhe?',
      asIn: {
        cm: '40 Maschen 19,2 cm, 60 Reihen 21,6 cm',
        in: '40 Maschen 7,5 Zoll, 60 Reihen 8,5 Zoll',
      },
      show: (swatch) => `nach deinem Nadelbett geschätzt: ${swatch} (Faustregel)`,
    },
    first: {
      label: 'erstes Garn',
      ask: 'Wie heißt das erste Garn? Dahinter kommt, was du weißt: Farbe, Lauflänge auf 100 g, wie viel du hast.',
      asIn: {
        cm: 'pflaume #6b2d5c 190 m auf 100 g 60 g',
        in: 'pflaume #6b2d5c 210 yd auf 100 g 2 oz',
      },
    },
    second: {
      label: 'weitere Garne',
      ask: (name) =>
        `Und das zweite Garn, für die Streifen dazwischen? Weitere kommen nach einem Strichpunkt. Mit keins wird alles in ${name} gestrickt.`,
      asIn: {
        cm: 'minze #9fd8c2 190 m auf 100 g 45 g',
        in: 'minze #9fd8c2 210 yd auf 100 g 1,5 oz',
      },
      show: (name) => `keins, alles in ${name}`,
    },
    stripes: {
      label: 'Streifen',
      ask: (yarns) =>
        `Wie viele Reihen hoch sind die Streifen, oder wie viele cm breit? Eine gerade Zahl, oder je eine für ${list(yarns)}: 20 und 2 macht das zweite zum Akzent. Oder zufällig, oder Verlauf.`,
      asIn: ['4 und 2', '1,5 cm', 'zufällig'],
    },
    slant: {
      label: 'Neigung',
      ask: (slants) =>
        `Wie steil sollen die Streifen stehen? ${slants.map(({ shapeEveryRows, angleDeg }) => `Formen alle ${shapeEveryRows} Reihen: ${Math.round(angleDeg)}°.`).join(' ')} Gib einen Winkel an, oder die Reihen; der nächste gilt.`,
      show: (everyRows, angleDeg) =>
        `Formen alle ${everyRows} Reihen${angleDeg === null ? '' : `, Streifen im Winkel von ${Math.round(angleDeg)}°`}`,
    },
    cord: {
      label: 'Kordel',
      ask: 'Eine Kordel mit Schleife, oder zwei, die zu beiden Seiten ziehen?',
      asIn: ['eine', 'zwei'],
      show: (cords) => (cords === 1 ? 'eine, mit Schleife' : 'zwei, die zu beiden Seiten ziehen'),
    },
    edges: {
      label: 'Ränder',
      ask: 'Was wird aus dem Öffnungsrand? Mit 2 Maschen, die an jedem Rand wandern, mit einem Decker von 2 Spitzen, rollt er sich nach innen; mit 3 rollt er sich weniger in die Lochmaschen. Ein Saum, etwa Saum 4 mit 4 glatten Reihen je Lage, wird angestrickt und umgeschlagen: er rollt sich nicht, und braucht mehr Garn und etwa eine halbe Stunde.',
      asIn: ['Saum 4', '3 und Saum'],
      show: (stitches, hemRows) =>
        `${counted.stitch(stitches)} an jedem Rand${hemRows === null ? (stitches === 3 ? ', damit sich die Öffnung weniger rollt' : '') : `, und ein Saum von ${hemRows} Reihen je Lage, damit sich die Öffnung nicht rollt`}`,
    },
  },
  contents: ({ girthCm, heightCm, thicknessCm, usual }) => {
    const measures = list([
      `${length(girthCm)} Umfang`,
      `${length(heightCm)} Höhe`,
      ...(thicknessCm === undefined ? [] : [`${length(thicknessCm)} Dicke`]),
    ]);
    return usual === undefined
      ? `für etwas mit ${measures}`
      : `für ${things[usual]}: ${measures} (übliche Maße, deine können andere sein)`;
  },
  widthAndDepth: (width, depth) => `${width} breit und ${depth} tief`,
  swatchOver: (stitches, widthCm, rows, heightCm) =>
    `${counted.stitch(stitches)} auf ${length(widthCm)}, ${counted.row(rows)} auf ${length(heightCm)}`,
  metresGuessed: (metres) => `${metres} auf 100 g (Faustregel)`,
  metres: (size) => `${size} auf 100 g`,
  notWeighed: 'nicht gewogen',
  counts: (stitches, rows) => `${counted.stitch(stitches)} und ${counted.row(rows)}`,
  deepAsBed: (width) => `${width} breit, so tief, wie das Bett erlaubt`,
  boxed: (depth) => `, Bodenecken ${depth} tief abgenäht`,
  orders: { random: 'in zufälliger Folge, die sich schließt', gradient: 'von dunkel nach hell und zurück' },
  each: (size) => `je ${size}`,
  notAsked: 'noch nicht gefragt',
  opening:
    'Ein paar Fragen, und der Beutel beginnt. Enter nimmt, was dasteht, ? erklärt, practice beginnt stattdessen den Übungsbeutel.',
  goingOn: 'Deine Antworten vom letzten Mal sind noch da; change führt zu einer davon.',
  howToAnswer: [
    'Antworte wie im Beispiel, oder nimm mit Enter, was dasteht.',
    'Eine Größe kann mit Boden 5 enden, für einen 5 tiefen Boden mit abgenähten Ecken; 14 so tief wie das Bett nimmt alle Nadeln eines Zugs.',
    'back geht eine Frage zurück; answers zeigt deine Antworten, und change größe oder change 2 führt zu einer davon.',
    '? Maschenprobe erklärt ein Wort; units in fragt in Zoll; practice beginnt den Übungsbeutel.',
    'Nach der letzten Frage siehst du den Plan. Enter beginnt; save beutel.json auch, und speichert die Vorgabe in dieser Datei.',
    'quit beendet. Deine Antworten bleiben: slantwise new macht damit weiter.',
  ],
  practice: 'Das ist der Übungsbeutel; mit new planst du deinen eigenen.',
  waits: (name, path) => `${name} ist gespeichert und wartet in ${path}`,
  answersKept: 'Deine Antworten bleiben: slantwise new macht damit weiter.',
  answersNotKept: (why) =>
    `Die Antworten lassen sich nicht für später speichern: ${why} Mach trotzdem weiter.`,
  briefKept: (path) => `Die Vorgabe ist gespeichert in ${path}`,
  briefNotKept: (why) => `Die Vorgabe hat keine eigene Datei: ${why} Im Protokoll steht sie auch.`,
  damagedLog: (path) =>
    `${path} lässt sich nicht lesen. Ist dein Beutel darin, tippe quit und dann slantwise check mit dem Namen.`,
  toKnit: (stitches, rows, shapings, needlesUsed, needles) =>
    `Zu stricken: ${counted.stitch(stitches)}, ${counted.row(rows)} rundum und ${counted.shapingMove(shapings)}. Das braucht ${needlesUsed} Nadeln, das Nadelbett hat ${needles}.`,
  haveReady: 'Leg auch bereit: etwas Hilfsgarn in anderer Farbe und einen glatten Faden als Trennfaden.',
  restIsUsual:
    'Kordel, Hilfsgarn, Ränder und Wanderrichtung sind wie üblich. Ändere sie in der Vorgabedatei; mit change cord zwei werden es zwei Kordeln, die zu beiden Seiten ziehen, mit change edges 3 rollt sich die Öffnung weniger, mit change edges Saum gar nicht.',
  wideAndDeep: (widthCm, depthCm) => `${length(widthCm)} breit und ${length(depthCm)} tief`,
  plan: (name, got, size) => `${name}: ${got}, genäht und flach gelegt, ${size}.`,
  planAndAsked: (name, got, asked) => `${name}: ${got}, genäht und flach gelegt. Gewünscht: ${asked}.`,
  yarnNeeds: (reservePercent, needs) => `Garn, mit ${reservePercent} % Reserve: ${list(needs)}.`,
  yarnEnough: (yarn, need, have) => `${yarn} ${need}, reicht (du hast ${have})`,
  yarnTooLittle: (yarn, need, have) => `${yarn} ${need}, reicht nicht (du hast ${have})`,
  swatchIsGuess: [
    'Die Maschenprobe ist geschätzt, der Beutel kann größer oder kleiner werden. Strick erst eine, dann tippe change probe.',
  ],
  doubts: {
    short: (yarn, grams) => `${massNeeded(grams)} ${yarn} zu wenig`,
    tight: 'das Gestrick wird so fest, dass der Schlitten klemmen kann',
    guess: 'die Maschenprobe ist geschätzt',
  },
  lookAgain: (doubts) => `Sieh noch einmal hin: ${list(doubts)}. Noch einmal Enter beginnt trotzdem.`,
  lengthIsGuess: (usualLength) =>
    `Für Garn ohne Lauflänge gelten ${usualLength} auf 100 g, eine Faustregel: die Banderole weiß es besser.`,
  whichIsWhich: (example) => `Sag dazu, welche Zahl was ist, so wie: ${example}.`,
  yarnWithoutName: 'Das Garn braucht einen eigenen Namen, am Anfang der Zeile.',
  anyName: 'Jeder Name ist recht. Er steht über dem Plan und dem Arbeitsblatt.',
  questionAsName: (name) =>
    `Heißt der Beutel ${name}? Dann antworte damit in Anführungszeichen. Fragen mit warum oder wie werden beantwortet, sobald der Beutel begonnen ist.`,
  oddYarnName: (name, example) =>
    `Heißt das Garn ${name}? Dann schreib den Namen in Anführungszeichen; Knäuel und Längen wie in ${example}.`,
  ballsExample: '2 Knäuel zu 50 g, je 120 m',
  sameYarn: (name) => `Beide Garne heißen ${quoted(name)}: gib einem davon einen anderen Namen.`,
  moreStripes: (yarns) => `Es sind weniger Garne als Zahlen: gib je eine für ${list(yarns)} an.`,
  bedTooShort: (width) =>
    `Das Bett hat zu wenige Nadeln für einen ${width} breiten Beutel in einem Zug: gib eine kleinere Breite an, oder die Tiefe.`,
  noSuchAnswer: (word, names) =>
    `Eine Antwort ${quoted(word)} gibt es nicht: wähle ${choice(names)} oder die Nummer.`,
  nothingBefore: 'Das ist die erste Frage.',
  notUnits: 'Tippe units cm oder units in.',
  notAChoice: (word) =>
    `${quoted(word)} bewirkt hier nichts: Enter beginnt, change und ein Wort ändert eine Antwort.`,
  tooSmall: (limit) => `Das ist zu wenig: mindestens ${limit}.`,
  tooLarge: (limit) => `Das ist zu viel: höchstens ${limit}.`,
  notWhole: 'Gib eine ganze Zahl an, ohne Komma.',
  notEven: 'Gib eine gerade Reihenzahl an, damit beide Garne auf der Ausgangsseite warten.',
  notAColour: 'Eine Farbe ist # mit sechs Zeichen aus 0-9 und a-f, zum Beispiel #6b2d5c.',
  tooShort: 'Der Name ist leer.',
  tooLong: (most) => `Der Name ist zu lang: höchstens ${counted.character(most)}.`,
  notAName: 'Das geht nicht als Name: es sind unsichtbare Zeichen darin.',
  wrongType: 'Das geht hier nicht: gib etwas anderes an.',
  notUnderstood: (word, example) =>
    `Was ${quoted(word)} hier heißt, weiß ich nicht: antworte so wie ${quoted(example)}.`,
  give: {
    size: (example) => `Gib zwei Längen an, so wie ${quoted(example)}.`,
    bed: (example) => `Gib die Zahl der Nadeln und ihren Abstand an, so wie ${quoted(example)}.`,
    swatch: (example) =>
      `Gib Maschen und Reihen an, und wie breit und hoch sie messen, so wie ${quoted(example)}.`,
    stripes: () =>
      'Gib eine Reihenzahl oder Breite an, oder eine für jedes Garn; oder zufällig, oder Verlauf.',
    slant: () => 'Gib einen Winkel zwischen 10 und 90 an, oder 2, 4, 6 oder 8 Reihen.',
    other: (example) => `Antworte so wie ${quoted(example)}.`,
  },
  place: (at, of) => `Frage ${at} von ${of}`,
  or: (one, other) => `${one}, oder ${other}`,
  keeps: (shown) => `lässt es bei: ${shown}`,
  takes: (shown) => `nimmt: ${shown}`,
  reading: (at, of) =>
    at === of ? `Seite ${at} von ${of}: Enter geht zur Frage` : `Seite ${at} von ${of}: Enter geht weiter`,
  also: '? erklärt; back, change, answers, practice, help, quit',
  atPlan: {
    place: 'der Plan',
    ask: 'Soll es dieser Beutel sein?',
    impossible: 'So lässt er sich nicht stricken: ändere eine deiner Antworten.',
    change: 'change größe',
    enter: 'speichert die Vorgabe und beginnt',
    allTheSame: 'speichert die Vorgabe und beginnt trotzdem',
    also: 'change größe oder eine andere Antwort; answers, practice, help, quit',
  },
  forExample: (asIn) => `Zum Beispiel: ${asIn}`,
  emptyLine: (enter) => `Eine leere Zeile ${enter}.`,
  names: {
    bag: 'Mein Beutel',
    plum: 'pflaume',
    mint: 'minze',
  },
  ask: 'Frage',
  asIn: 'wie',
  enter: 'Enter',
});
