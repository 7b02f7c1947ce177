import type { Amounts } from './amounts.ts';
import { counted } from './counted.de.ts';
import type { FindingWords } from './finding.en.ts';
import { sideStem, sideWord, theYarn, toTheYarn, yarnName } from './forms.de.ts';

export const finding = ({ choice, decimal, length, list, massNeeded, tail }: Amounts): FindingWords => ({
  stepComesNext: (done) => `als Nächstes kommt Schritt ${done}`,
  knitted: (rowCounter) => `${counted.row(rowCounter)} gestrickt`,
  below: (wasteRows) => `${counted.wasteRow(wasteRows)} darunter`,
  noLoops: 'keine Maschen auf dem Nadelbett',
  edgesSeen: (left, right) => `Ränder ${left} und ${right}`,
  carriageSeen: (carriage) => `Schlitten ${sideWord(carriage)}`,
  feederEmpty: 'nichts im Fadenführer',
  feederHolds: (yarn) => `${yarnName(yarn)} im Fadenführer`,
  askCarriage: 'Auf welcher Seite steht der Schlitten?',
  askYarn: 'Aus welchem Garn sind die Maschen auf den Nadeln?',
  askFeeder: 'Welches Garn ist im Fadenführer, falls eines darin ist?',
  askLeftEdge: 'Welche Nadel ist links die äußerste mit einer Masche?',
  askRightEdge: 'Welche Nadel ist rechts die äußerste mit einer Masche?',
  askStitches: 'Wie viele Nadeln tragen eine Masche?',
  askWasteRows: 'Wie viele Hilfsgarnreihen hängen unter den Nadeln?',
  askStripes: 'Wie viele Streifen zählst du am Gestrick, den auf den Nadeln mitgezählt?',
  askCounter: 'Was zeigt das Zählwerk?',
  askRowsOfColour: 'Wie viele Reihen der neuesten Farbe hängen da, die auf den Nadeln mitgezählt?',
  needleOffBed: (needle, needleCount) =>
    `Auf einem Nadelbett mit ${needleCount} Nadeln gibt es ${needle} nicht: lies den Namen noch einmal ab.`,
  unknownYarn: (yarn, known) => `${yarn} ist kein Garn dieses Beutels: er hat ${list(known.map(yarnName))}.`,
  notACount: (value) => `${value} lässt sich nicht zählen: nenn eine ganze Zahl ab 0.`,
  rowsBack: (size, row) => `${counted.step(size)} zurück, bis das Zählwerk ${counted.row(row)} zeigt.`,
  notAsDone: (marked) =>
    marked === 1
      ? '1 davon lässt sich nicht einfach rückgängig machen.'
      : `${marked} davon lassen sich nicht einfach rückgängig machen.`,
  cut: (yarn) =>
    `Geschnitten bleibt geschnitten: knüpf ${theYarn(yarn)} am Rand an und vernäh später beide Enden.`,
  offTheNeedles:
    'Das Gestrick ist von den Nadeln: häng jede Masche aus den Hilfsgarnreihen wieder ein, ohne Gewichte, bis alle hängen.',
  released: (what) =>
    `${what === 'waste' ? 'Das Hilfsgarn' : 'Der Trennfaden'} ist heraus: fang zuallererst jede offene Masche auf einem losen Faden auf.`,
  drawnThrough: (yarn) =>
    `Die Kordel ist geschlossen und kann nicht zurück auf die Nadeln: ist sie zu kurz, strick sie neu aus ${toTheYarn(yarn)}.`,
  noSuchPlace: (done, stepCount) =>
    `Nach ${done} Schritten gibt es keine Stelle: der Beutel hat ${stepCount}.`,
  notBehind: (fromDone) => `Auftrennen geht rückwärts: wähle eine Stelle vor Schritt ${fromDone}.`,
  hereNow: (place) => `Genau dort bist du: ${place}`,
  hereToo: (place) => `So sieht es auch aus, wo du bist: ${place}`,
  here: (look) => `Deine Arbeit ist hier: ${look}.`,
  goThere: (number, done) => `Um dorthin zu gehen, tippe choose ${number} oder go step ${done}.`,
  many: (howMany) => `${howMany} Stellen sehen so aus.`,
  apartBy: (facts) => `Zu unterscheiden sind sie an: ${choice(facts)}.`,
  stepNext: (step) => `als Nächstes Schritt ${step}`,
  several: (size) => `${size} Stellen sehen so aus; mit choose und einer Nummer geht es zu einer:`,
  carriage: 'Schlitten',
  lastRow: 'letzte Reihe',
  feeder: 'Fadenführer',
  leftEdge: 'linker Rand',
  rightEdge: 'rechter Rand',
  needlesWithLoops: 'Nadeln mit Maschen',
  wasteRows: 'Hilfsgarnreihen',
  stripes: 'Streifen',
  rowCounter: 'Zählwerk',
  rowsOfThatColour: 'Reihen dieser Farbe',
  carriageAt: (carriage) => `Schlitten ${sideWord(carriage)}`,
  nothingIn: 'leer',
  answers: {
    carriage: 'Schlitten links',
    yarn: 'das Garn',
    feeder: 'Fadenführer und das Garn',
    left: 'links und die Nadel',
    right: 'rechts und die Nadel',
    stitches: 'Maschen und die Zahl',
    waste: 'Hilfsgarn und die Zahl',
    stripes: 'Streifen und die Zahl',
    counter: 'counter und die Zahl',
    rowsOfColour: 'die Zahl in diesem Streifen',
  },
  orUnsure: (question, value) => `${question} Tippe find und ${value}; oder find unsicher.`,
  noSlip: 'Keine Stelle dieses Beutels sieht so aus, und kein einzelnes Versehen erklärt es.',
  readAgain: 'Lies noch einmal ab und lass weg, was am unsichersten ist.',
  oneAmiss: 'Eines kann falsch gelesen sein. Es würde passen:',
  without: (name, done) => `  ohne ${name}: als Nächstes Schritt ${done}`,
  guided: (number) => `Schritt für Schritt führt dich choose ${number}.`,
  guidedOne: 'Schritt für Schritt führt dich take mit einer der Nummern.',
  more: (more) => `und ${counted.moreStep(more)}.`,
  guideBack:
    'Tippe choose, um zurückgeführt zu werden. Enter bestätigt jeden Schritt, Pfeil links nimmt ihn zurück.',
  swapped: (look) =>
    `Es passt, wenn links und rechts tauschen: ${look}. Lies die Namen der Nadeln noch einmal ab.`,
  unravelRows: (rows, yarn, caughtOn, back) =>
    `Zieh ${rows} Reihen ${yarnName(yarn)} einzeln heraus und fang jede Masche: am Ende ${caughtOn}. Bring den Schlitten zurück nach ${sideWord(back)}, ohne zu stricken.`,
  unsewBarsOfBoth: (bars) => `Zieh den Faden auf jeder Seite unter den letzten ${bars} Querfäden heraus.`,
  work: (needleList) => `Bring ${needleList} in Arbeitsstellung.`,
  rest: (needleList) => `Schieb ${needleList} in Ruhestellung.`,
  stand: (side) => `Stell den Schlitten nach ${sideWord(side)}.`,
  counter: (rows) => `Reihenzähler auf ${rows}.`,
  castOn: (yarn) => `Schlag mit ${toTheYarn(yarn)} an.`,
  feed: (yarn) => `Fädle ${theYarn(yarn)} in den Fadenführer ein.`,
  park: (yarn, end) => `Nimm ${theYarn(yarn)} aus dem Fadenführer und leg es am ${sideStem(end)}en Ende ab.`,
  cutLeaving: (yarn, endTailCm) => `Schneide ${theYarn(yarn)} ab und lass ${tail(endTailCm)} hängen.`,
  knit: (to) => `Strick eine Reihe nach ${sideWord(to)}.`,
  slip: (to) => `Stell den Schlitten auf leer und führ ihn nach ${sideWord(to)}: nichts wird gestrickt.`,
  transfer: (needleList, target) => `Häng die Maschen von ${needleList} mit dem Decker auf ${target} um.`,
  takeOff: 'Nimm das Gestrick von den Nadeln.',
  dropWork: (to) =>
    `Halt das Gestrick und fahr den Schlitten mit leerem Fadenführer einmal nach ${sideWord(to)}: es fällt ab.`,
  rehang: (left, right) => `Häng die Maschen von ${left} bis ${right} ein.`,
  outOfWorkAgain: (needleList) => `Schieb ${needleList} zurück in Ruhestellung.`,
  intoWorkAgain: (needleList) => `Bring ${needleList} zurück in Arbeitsstellung.`,
  carriageStood: (back) => `Der Schlitten stand ${sideWord(back)}.`,
  carriageBack: (back) => `Führ den Schlitten leer nach ${sideWord(back)} zurück.`,
  counterBack: (rows) => `Stell das Zählwerk zurück auf ${rows}.`,
  undoCastOn: 'Nimm die Anschlagmaschen von den Nadeln.',
  undoFeed: (yarn) => `Nimm ${theYarn(yarn)} aus dem Fadenführer.`,
  parkAgain: (yarn, parkedAt) =>
    `Nimm ${theYarn(yarn)} aus dem Fadenführer, zurück an seinen Platz am ${sideStem(parkedAt)}en Ende.`,
  feedAgain: (yarn) => `Fädle ${theYarn(yarn)} wieder in den Fadenführer ein.`,
  joinAgain: (yarn, endTailCm, joinedPlace) =>
    `Knüpf ${theYarn(yarn)} wieder an, mit ${tail(endTailCm)} zum Vernähen; ${joinedPlace}.`,
  hangFromWaste: (hungOn) => `Häng die Maschen aus den Hilfsgarnreihen wieder ein: ${hungOn}.`,
  undoRehang: (left, right) =>
    `Zieh einen Faden durch die Maschen von ${left} bis ${right} und nimm sie wieder ab.`,
  stray: (needle) => `Wirf die lose Masche von ${needle} ab und schieb die Nadel in Ruhestellung.`,
  strandGoesToFeeder: 'der Faden kommt wieder in den Fadenführer',
  strandWaitsAt: (place) => `der Faden wartet am ${sideStem(place)}en Ende`,
  to: (value, at) => `${value} bis ${at}`,
  oneOnEach: (first, last) => `eine auf jede Nadel von ${first} bis ${last}`,
  unravelRow: (yarn, caughtOn, back) =>
    `Zieh die Reihe aus ${toTheYarn(yarn)} sachte heraus und fang jede Masche auf: ${caughtOn}. Führ den Schlitten leer nach ${sideWord(back)} zurück.`,
  eachOf: (first, last) => `${first} bis ${last}`,
  noneOn: (where) => `keine auf ${where} (leer in Arbeitsstellung)`,
  togetherOn: (loops, where) => `${where.includes(' bis ') ? 'je ' : ''}${loops} zusammen auf ${where}`,
  oneLoopEach: (left, right) => `eine auf jeder Nadel von ${left} bis ${right}`,
  partLoops: (first, to, at) =>
    `Häng die Maschen von ${first} wieder nach außen auf ${to} und trenn dabei die Maschen, die zusammen auf ${at} hängen.`,
  loopsBack: (first, to) => `Häng die Maschen von ${first} zurück auf ${to}.`,
  loopsBackAndNeedlesOut: (first, to, needleList) =>
    `Häng die Maschen von ${first} zurück auf ${to}. Schieb ${needleList} in Ruhestellung.`,
  graft: (edge, drawnFrom, drawnUp) => `${edge}: zieh den Faden wieder heraus${drawnFrom}${drawnUp}.`,
  upThrough: 'herauf durch',
  downThrough: 'hinab durch',
  wash: 'Was gewaschen ist, bleibt es.',
  bars: (side) => `Zieh den Faden ${side === 'front' ? 'vorn' : 'hinten'} unter dem letzten Quersteg heraus.`,
  unsewBars: (count, side) =>
    `Zieh den Faden ${side === 'front' ? 'vorn' : 'hinten'} unter den letzten ${count} Querstegen heraus.`,
  drawUp: 'Lockere den angezogenen Faden.',
  fasten: 'Lös den vernähten Faden.',
  unpickCorner: (corner) => `Trenn die Naht quer über Ecke ${corner} auf.`,
  thread: (eyelet) => `Zieh die Kordel wieder aus Lochmasche ${eyelet}.`,
  release: 'Die Hilfsgarnreihen sind heraus und bleiben es: halte die offenen Maschen auf einem losen Faden.',
  ravelCordStaysOut:
    'Der Trennfaden ist heraus und bleibt es: halte die offenen Maschen auf einem losen Faden.',
  measure: (lengthCm) => `Miss ${length(lengthCm)} noch einmal ab.`,
  planImpossible: 'Wie geplant lässt er sich nicht fertigstricken.',
  planChoice: (replanChoice) => `Wie geplant ${replanChoice}.`,
  noOtherLength: 'Eine andere Länge steht nicht zur Wahl.',
  chooseIt: 'Um so weiterzustricken, tippe choose.',
  chooseOne: 'Um so weiterzustricken, tippe choose und die Nummer.',
  yarnLastsForNone:
    'Das gewogene Garn reicht für keine davon: nimm mit replan colour ein anderes dazu, oder trenn auf.',
  replanRows: (rows) => `replan rows ${rows}`,
  rowsNumber: (rows, number) => `${rows} Reihen, Nummer ${number}`,
  nearestWidth: (aimCm, named) =>
    `Mit dem Garn, das da ist, am nächsten an ${length(aimCm)} Breite: ${named}.`,
  yarnShort: (name, withReserveGrams) => `${massNeeded(withReserveGrams)} ${name} zu wenig`,
  rows: (rows) => `${rows} Reihen`,
  sizeAndRowsLeft: (widthCm, depthCm, rowsLeft) =>
    `${length(widthCm)} breit, ${length(depthCm)} tief, noch ${counted.row(rowsLeft)}`,
  but: (short) => `, aber ${list(short)}`,
  moreRepeats: (howMany) => `${howMany} mehr`,
  fewerRepeats: (howMany) => `${howMany} weniger`,
  rowsNotWholeRepeats: (rows, stepRows, least) =>
    `${rows} Reihen sind keine ganzen Streifenrapporte: wähle ein Vielfaches von ${stepRows}, mindestens ${least}.`,
  boxedTooDeep: (boxedCm, belowCm) =>
    `Ein ${length(boxedCm)} tiefer Boden braucht einen größeren Beutel, bei so vielen Reihen muss er unter ${length(belowCm)} bleiben: wähle mehr Reihen.`,
  rowsTooFew: (rows, least) =>
    `${rows} Reihen sind weniger, als das Gestrick von hier an braucht: wähle mindestens ${least}.`,
  rowsTooMany: (rows, most) =>
    `${rows} Reihen sind mehr, als ein Beutel haben darf: wähle höchstens ${most}.`,
  unknownNewYarn: (yarn, known) =>
    `${yarn} ist kein Garn dieses Beutels (${list(known)}): nenn auch seine Farbe und die Meter je 100 g.`,
  yarnNotToCome: (yarn) =>
    `${yarn} strickt von hier an keinen Streifen mehr: nenn ein Garn, das noch drankommt.`,
  coloursMeet: (first, second, yarn) =>
    `Die Streifen ${first} und ${second} lägen beide in ${yarn} aneinander und sähen aus wie einer: wähle ein anderes Garn.`,
  measureImpossible: (sizeMm) =>
    `Eine Masche oder Reihe von ${decimal(sizeMm)} mm kann nicht sein: miss das Stück noch einmal.`,
  tooLate:
    'Die Schlussreihe ist begonnen, damit steht die Größe fest: trenn bis davor auf, um den Plan zu ändern.',
  and: (more) => `und ${counted.moreStep(more)}.`,
  planSize: (rows, widthCm, depthCm) =>
    `${rows} Reihen rundum, ${length(widthCm)} breit und ${length(depthCm)} tief`,
  oneDoneAgain: (first) => `Schritt ${first} zählt wieder als gemacht.`,
  oneUndoneAgain: (first) => `Schritt ${first} zählt wieder als nicht gemacht.`,
  manyDoneAgain: (first, last) => `Die Schritte ${first} bis ${last} zählen wieder als gemacht.`,
  manyUndoneAgain: (first, last) => `Die Schritte ${first} bis ${last} zählen wieder als nicht gemacht.`,
  planNow: (planned) => `Der Plan ist jetzt: ${planned}.`,
  mendTakenBack: 'Die Ausbesserung steht nicht mehr im Protokoll.',
  mendRedone: 'Die Ausbesserung steht wieder im Protokoll.',
  irreversibleStep: (number, irreversible) => `Falls Schritt ${number} schon gemacht war: ${irreversible}`,
  irreversibleBefore: (more) => `Ebenso ${counted.step(more)} davor.`,
});
