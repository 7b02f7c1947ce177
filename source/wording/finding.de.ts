import type { Side } from '../bed/bed.ts';
import { endTailCm } from '../planning/tails.ts';
import type { Amounts } from './amounts.ts';
import { counted, sideWord, theYarn, toTheYarn, yarnName } from './forms.de.ts';
import type { Words } from './words.ts';

const acrossTo = (side: Side): string =>
  `Nimm das Garn aus dem Fadenführer, führ den Schlitten im Freilauf zurück nach ${sideWord(side)}, stell ihn auf Stricken und leg das Garn wieder ein.`;

/** `L25, L24 und L23`; a longer row of neighbours is told by its ends. */
const spanOf = (names: readonly string[], list: Amounts['list']): string =>
  names.length > 4 ? `${names[0]} bis ${names.at(-1)}` : list(names);

export const finding = ({ choice, length, list, tail }: Amounts): Words['finding'] => ({
  stepComesNext: (done) => `als Nächstes kommt Schritt ${done}`,
  knitted: (rowCounter) => `${counted.row(rowCounter)} gestrickt`,
  below: (wasteRows) => `${counted.wasteRow(wasteRows)} darunter`,
  noLoops: 'keine Maschen auf dem Nadelbett',
  edgesSeen: (left, right) => `Ränder ${left} und ${right}`,
  carriageSeen: (carriage) => `Schlitten ${sideWord(carriage)}`,
  feederEmpty: 'nichts im Fadenführer',
  feederHolds: (yarn) => `${yarnName(yarn)} im Fadenführer`,
  asks: {
    carriage: 'Auf welcher Seite steht der Schlitten?',
    lastColour: 'Aus welchem Garn sind die Maschen auf den Nadeln?',
    feeder: 'Welches Garn ist im Fadenführer, falls eines darin ist?',
    left: 'Welche Nadel ist links die äußerste mit einer Masche?',
    right: 'Welche Nadel ist rechts die äußerste mit einer Masche?',
    stitches: 'Wie viele Nadeln tragen eine Masche?',
    piecesDone:
      'Wie viele Kordeln sind schon fertig von den Nadeln; oder beim Saum, wie viele seiner Abschnitte?',
    wasteRows: 'Wie viele Hilfsgarnreihen hängen unter den Nadeln?',
    stripesCounted: 'Wie viele Streifen zählst du am Gestrick, den auf den Nadeln mitgezählt?',
    rowCounter: 'Was zeigt der Reihenzähler?',
    rowsOfColour: 'Wie viele Reihen der neuesten Farbe hängen da, die auf den Nadeln mitgezählt?',
  },
  needleOffBed: (needle, needleCount) =>
    `Auf einem Nadelbett mit ${needleCount} Nadeln gibt es ${needle} nicht: lies den Namen noch einmal ab.`,
  unknownYarn: (yarn, known) => `${yarn} ist kein Garn dieses Beutels: er hat ${list(known.map(yarnName))}.`,
  notACount: (value) => `${value} lässt sich nicht zählen: nenn eine ganze Zahl ab 0.`,
  rowsBack: (size, row) => `${counted.step(size)} zurück, bis der Reihenzähler ${counted.row(row)} zeigt.`,
  notAsDone: (marked) =>
    marked === 1
      ? '1 davon lässt sich nicht einfach rückgängig machen.'
      : `${marked} davon lassen sich nicht einfach rückgängig machen.`,
  cut: (yarn) =>
    `Dieses Garn ist abgeschnitten: knüpf ${theYarn(yarn)} am Rand an und vernäh später beide Enden.`,
  offTheNeedles:
    'Das Gestrick ist von den Nadeln: nadle jede Masche aus den Hilfsgarnreihen neu auf, ohne Gewichte, bis alle hängen.',
  released: (what) =>
    `${what === 'waste' ? 'Das Hilfsgarn' : 'Die Trennreihe'} ist heraus: fang zuallererst jede offene Masche auf einem losen Faden auf.`,
  drawnThrough: (yarn) =>
    `Die Kordel ist geschlossen: sind ihre Maschen nicht mehr zu fassen, strick sie neu aus ${toTheYarn(yarn)}.`,
  noSuchPlace: (done, stepCount) =>
    `Nach ${done} Schritten gibt es keine Stelle: der Beutel hat ${stepCount}.`,
  notBehind: (fromDone) => `Auftrennen geht rückwärts: wähle eine Stelle vor Schritt ${fromDone}.`,
  hereNow: (place) => `Genau dort bist du: ${place}`,
  hereToo: (place) => `So sieht es auch aus, wo du bist: ${place}`,
  here: (look) => `Deine Arbeit ist hier: ${look}.`,
  maybe: (look) => `Vielleicht ist die Arbeit hier, und alles stimmt: ${look}.`,
  goThere: (number, done) => `Um dorthin zu gehen, tippe choose ${number} oder go step ${done}.`,
  many: (howMany) => `${howMany} Stellen sehen so aus.`,
  apartBy: (facts) => `Sie unterscheiden sich in: ${choice(facts)}.`,
  stepNext: (step) => `als Nächstes Schritt ${step}`,
  several: (size) => `${size} Stellen sehen so aus; um zu einer zu gehen, tippe choose und ihre Nummer:`,
  facts: {
    carriage: 'Schlitten',
    lastColour: 'letzte Reihe',
    feeder: 'Fadenführer',
    left: 'linker Rand',
    right: 'rechter Rand',
    stitches: 'Nadeln mit Maschen',
    wasteRows: 'Hilfsgarnreihen',
    stripesCounted: 'Streifen',
    rowCounter: 'Reihenzähler',
    piecesDone: 'fertige Stücke',
    rowsOfColour: 'Reihen dieser Farbe',
  },
  carriageAt: (carriage) => `Schlitten ${sideWord(carriage)}`,
  nothingIn: 'leer',
  answers: {
    carriage: 'Schlitten links',
    lastColour: 'das Garn',
    feeder: 'Fadenführer und das Garn',
    left: 'links und die Nadel',
    right: 'rechts und die Nadel',
    stitches: 'Maschen und die Zahl',
    wasteRows: 'Hilfsgarn und die Zahl',
    stripesCounted: 'Streifen und die Zahl',
    rowCounter: 'Reihenzähler und die Zahl',
    piecesDone: 'fertig und die Zahl',
    rowsOfColour: 'die Zahl in diesem Streifen',
  },
  orUnsure: (question, value) => `${question} Tippe find und ${value}; oder find unsicher.`,
  noSlip: 'Keine Stelle dieses Beutels sieht so aus, selbst mit einem oder zwei Fehlern.',
  readAgain: 'Sieh noch einmal hin und lass weg, was am unsichersten ist.',
  oneAmiss: 'Eines kann falsch gelesen sein. Es würde passen:',
  without: (name, done) => `  ohne ${name}: als Nächstes Schritt ${done}`,
  guided: (number) => `Schritt für Schritt führt dich choose ${number}.`,
  guidedOne: 'Schritt für Schritt führt dich choose mit einer der Nummern.',
  more: (more) => `und ${counted.moreStep(more)}.`,
  guideBack: 'Tippe choose, um zurückgeführt zu werden. Enter bestätigt jeden Schritt, ← nimmt ihn zurück.',
  swapped: (look) =>
    `Es passt, wenn links und rechts tauschen: ${look}. Lies die Namen der Nadeln noch einmal ab.`,
  unravelRows: (rows, yarn, caughtOn, back) =>
    `Zieh ${rows} Reihen ${yarnName(yarn)} einzeln heraus und fang jede Masche: am Ende ${caughtOn}. ${acrossTo(back)}`,
  unsewBarsOfBoth: (bars) => `Zieh den Faden auf jeder Seite unter den letzten ${bars} Querfäden heraus.`,
  moves: {
    work: ({ needles }) => `Bring ${spanOf(needles, list)} in Arbeit.`,
    rest: ({ needles }) => `Schieb ${spanOf(needles, list)} außer Arbeit.`,
    stand: ({ side }) => `Stell den Schlitten nach ${sideWord(side)}.`,
    counter: ({ rows }) => `Reihenzähler auf ${rows}.`,
    'cast-on': ({ yarn }) => `Schlag mit ${toTheYarn(yarn)} an.`,
    feed: ({ yarn }) => `Fädle ${theYarn(yarn)} in den Fadenführer ein.`,
    park: ({ yarn, end }) =>
      `Nimm ${theYarn(yarn)} aus dem Fadenführer und klammere es ${sideWord(end)} fest.`,
    cut: ({ yarn }) => `Schneide ${theYarn(yarn)} ab und lass ${tail(endTailCm)} hängen.`,
    knit: ({ to }) => `Strick eine Reihe nach ${sideWord(to)}.`,
    slip: ({ to }) =>
      `Stell den Schlitten auf Freilauf und führ ihn nach ${sideWord(to)}: nichts wird gestrickt.`,
    transfer: ({ from, to }) =>
      `Häng die Maschen von ${spanOf(from, list)} mit dem Decker auf ${spanOf(to, list)} um.`,
    'take-off': ({ to }) =>
      to === undefined
        ? 'Nimm das Gestrick von den Nadeln.'
        : `Halt das Gestrick und fahr den Schlitten mit leerem Fadenführer einmal nach ${sideWord(to)}: es fällt ab.`,
    rehang: ({ left, right }) => `Nadle die Maschen neu auf, von ${left} bis ${right}.`,
    'pick-up': ({ of, left, right }) =>
      of === 'edge'
        ? `Fass den Öffnungsrand auf, eine Masche auf jede Nadel von ${left} bis ${right}.`
        : `Schlag den Saum hoch und häng die Maschen seiner ersten Reihe ein, von ${left} bis ${right}.`,
    'bind-off': ({ from, to }) => `Kette die Maschen ab, von ${from} bis ${to}.`,
  },
  handsBack: {
    graft: ({ edge, up, down }) =>
      `${edge}: zieh den Faden wieder heraus${up === null ? '' : `, herauf durch ${up}`}${down === null ? '' : `, hinab durch ${down}`}.`,
    wash: () => 'Waschen lässt sich nicht rückgängig machen.',
    bars: ({ count, side }) =>
      count === 1
        ? `Zieh den Faden ${side === 'front' ? 'vorn' : 'hinten'} unter dem letzten Querfaden heraus.`
        : `Zieh den Faden ${side === 'front' ? 'vorn' : 'hinten'} unter den letzten ${count} Querfäden heraus.`,
    'draw-up': () => 'Lockere den angezogenen Faden.',
    fasten: ({ corner }) =>
      corner ? `Trenn die Naht quer über Ecke ${corner} auf.` : 'Lös den vernähten Faden.',
    thread: ({ eyelet }) => `Zieh die Kordel wieder aus Lochmasche ${eyelet}.`,
    release: ({ what }) =>
      what === 'waste'
        ? 'Die Hilfsgarnreihen bleiben heraus: fang zuallererst jede Masche, die frei wird, auf einem losen Faden auf.'
        : 'Die Trennreihe bleibt heraus: fang zuallererst jede Masche, die frei wird, auf einem losen Faden auf.',
    measure: ({ lengthCm }) => `Miss ${length(lengthCm)} noch einmal ab.`,
  },
  undoPickUp: (of, left, right) =>
    of === 'edge'
      ? `Nimm den Öffnungsrand wieder von den Nadeln, von ${left} bis ${right}.`
      : `Nimm die Maschen der ersten Saumreihe wieder ab, eine von jeder Nadel von ${left} bis ${right}, und lass den Umschlag herunter.`,
  undoBindOff: (hungOn) =>
    `Zieh das Ende aus der letzten Masche, lös die Abkettkante auf und häng ihre Maschen wieder ein: ${hungOn}.`,
  outOfWorkAgain: (needleList) => `Schieb ${needleList} außer Arbeit.`,
  intoWorkAgain: (needleList) => `Bring ${needleList} zurück in Arbeit.`,
  carriageStood: (back) => `Der Schlitten stand ${sideWord(back)}.`,
  carriageBack: acrossTo,
  counterBack: (rows) => `Stell den Reihenzähler zurück auf ${rows}.`,
  undoCastOn: 'Nimm die Anschlagmaschen von den Nadeln.',
  undoFeed: (yarn) => `Nimm ${theYarn(yarn)} aus dem Fadenführer.`,
  parkAgain: (yarn, parkedAt) =>
    `Nimm ${theYarn(yarn)} aus dem Fadenführer, zurück in seine Klammer ${sideWord(parkedAt)}.`,
  feedAgain: (yarn) => `Fädle ${theYarn(yarn)} wieder in den Fadenführer ein.`,
  joinAgain: (yarn, endTailCm, joinedPlace) =>
    `Knüpf ${theYarn(yarn)} wieder an, mit ${tail(endTailCm)} zum Vernähen; ${joinedPlace}.`,
  hangOpenLoops: (hungOn, back) =>
    `${back === null ? '' : `Führ den Schlitten über die leeren Nadeln zurück nach ${sideWord(back)}. `}Häng die offenen Maschen wieder auf, linke Seite zu dir: ${hungOn}, jede Nadel in Arbeit.`,
  undoRehang: (left, right) =>
    `Zieh einen Faden durch die Maschen von ${left} bis ${right} und nimm sie wieder ab.`,
  stray: (needle) => `Wirf die lose Masche von ${needle} ab und schieb die Nadel außer Arbeit.`,
  strandGoesToFeeder: 'der Faden kommt wieder in den Fadenführer',
  strandWaitsAt: (place) => `der Faden wartet in seiner Klammer ${sideWord(place)}`,
  needles: (names) => spanOf(names, list),
  oneOnEach: (first, last) => `eine auf jede Nadel von ${first} bis ${last}`,
  unravelRow: (yarn, caughtOn, back) =>
    `Zieh die Reihe aus ${toTheYarn(yarn)} sachte heraus und fang jede Masche auf: ${caughtOn}. ${acrossTo(back)}`,
  eachOf: (first, last) => `${first} bis ${last}`,
  noneOn: (where) => `keine auf ${where} (leer in Arbeit)`,
  togetherOn: (loops, where) => `${where.includes(' bis ') ? 'je ' : ''}${loops} zusammen auf ${where}`,
  oneLoopEach: (left, right) => `eine auf jeder Nadel von ${left} bis ${right}`,
  partLoops: (first, to, at) =>
    `Häng die Maschen von ${first} wieder nach außen auf ${to} und trenn dabei die Maschen, die zusammen auf ${at} hängen.`,
  loopsBack: (first, to) => `Häng die Maschen von ${first} zurück auf ${to}.`,
  loopsBackAndNeedlesOut: (first, to, needleList) =>
    `Häng die Maschen von ${first} zurück auf ${to}. Schieb ${needleList} außer Arbeit.`,
  and: (more) => `und ${counted.moreStep(more)}.`,
  planSize: (rows, widthCm, depthCm) =>
    `${rows} Reihen rundum, ${length(widthCm)} breit und ${length(depthCm)} tief`,
  oneDoneAgain: (first) => `Schritt ${first} zählt wieder als gemacht.`,
  oneUndoneAgain: (first) => `Schritt ${first} ist wieder zu machen.`,
  manyDoneAgain: (first, last) => `Die Schritte ${first} bis ${last} zählen wieder als gemacht.`,
  manyUndoneAgain: (first, last) => `Die Schritte ${first} bis ${last} sind wieder zu machen.`,
  planNow: (planned) => `Der Plan ist jetzt: ${planned}.`,
  mendTakenBack: 'Die Korrektur ist zurückgenommen.',
  mendRedone: 'Die Korrektur gilt wieder.',
  irreversibleStep: (number, irreversible) => `Falls Schritt ${number} schon gemacht war: ${irreversible}`,
  irreversibleBefore: (more) => `Dasselbe gilt für ${counted.step(more)} davor.`,
});
