import type { Amounts } from './amounts.ts';
import { counted } from './counted.de.ts';
import type { PartyWords } from './party.en.ts';

export const party = ({ list, mass, time }: Amounts): PartyWords => ({
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
  outKind: (out) => `${out} fasst nicht mehrere Beutel: nenn eine Datei, die auf .html oder .md endet`,
  sheetTally: 'Fertig',
});
