import type { ShelfKind } from '../planning/shelf.ts';
import type { Amounts } from './amounts.ts';
import { counted } from './forms.de.ts';
import type { Words } from './words.ts';

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
