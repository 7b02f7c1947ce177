import { opposite } from '../bed/bed.ts';
import { forShell } from '../shared/plain-text.ts';
import type { Amounts } from './amounts.ts';
import { counted, sideWord } from './forms.de.ts';
import type { Words } from './words.ts';

export const faults = ({ choice, list }: Amounts): Words['faults'] => ({
  bed: {
    'bed/yarn-not-in-feeder': ({ held, yarn }) =>
      held === null
        ? `Der Fadenführer ist leer, ${yarn} lässt sich nicht daraus ablegen: fädle erst ${yarn} ein.`
        : `Im Fadenführer ist ${held}, nicht ${yarn}: leg stattdessen ${held} ab.`,
    'bed/carriage-already-there': ({ side }) =>
      `Der Schlitten steht schon ${sideWord(side)}: fahr diesen Schlittengang nach ${sideWord(opposite(side))}.`,
    'bed/bed-not-empty': ({ stitchCount }) =>
      `Auf dem Nadelbett hängt noch etwas (${counted.stitch(stitchCount)}): nimm erst das Gestrick ab.`,
    'bed/needle-holds-loop': ({ needle }) =>
      `Auf Nadel ${needle} hängt noch eine Masche: häng sie um, bevor du die Nadel außer Arbeit schiebst.`,
    'bed/needle-empty': ({ needle }) =>
      `Auf Nadel ${needle} hängt keine Masche zum Umhängen: schau noch einmal, wo der Rand ist.`,
    'bed/needle-out-of-work': ({ needle }) =>
      `Nadel ${needle} ist außer Arbeit: bring sie in Arbeit, bevor eine Masche darauf kommt.`,
    'bed/yarn-in-feeder': ({ held }) =>
      `Im Fadenführer ist ${held}, also würde der Schlitten stricken: nimm ${held} heraus, bevor das Gestrick abgeworfen wird.`,
    'bed/no-counter': () => 'Dieses Bett hat keinen Reihenzähler: die Reihen zählt der Bildschirm.',
    'bed/loop-out-of-work': ({ needle }) =>
      `Nadel ${needle} ist außer Arbeit, trägt aber eine Masche: bring sie vor dem Schlittengang in Arbeit.`,
    'bed/cast-on-ends-far': ({ side, needle }) =>
      `Der Schlitten steht ${sideWord(side)}: wickle zu ihm hin, damit das Garn dort endet und nicht bei ${needle}.`,
    'bed/feeder-empty': ({ to }) =>
      `Der Fadenführer ist leer, ein Schlittengang nach ${sideWord(to)} würde alle Maschen abwerfen: fädle erst ein Garn ein.`,
    'bed/feeder-full': ({ held, yarn }) =>
      `Im Fadenführer ist ${held}: nimm ${held} heraus, bevor du ${yarn} einfädelst.`,
    'bed/yarn-not-here': ({ yarn }) =>
      `${yarn} ist weder im Fadenführer noch abgelegt: fädle ${yarn} ein, bevor du abschneidest.`,
    'bed/no-working-needles': () =>
      'Keine Nadel ist in Arbeit: bring erst die Nadeln, auf denen du stricken willst, in Arbeit.',
    'bed/transfer-uneven': ({ fromCount, toCount }) =>
      `Umhängen geht nicht: ${counted.needle(fromCount)} abgehoben, ${counted.needle(toCount)} als Ziel. Nenn gleich viele Nadeln.`,
    'bed/nothing-to-take-off': () =>
      'Das Nadelbett ist leer, es gibt nichts abzunehmen: geh zum nächsten Schritt.',
    'bed/loops-differ': ({ loopsOff, needleCount }) =>
      `Abgenommen: ${counted.loop(loopsOff)}, vorgesehen: ${counted.needle(needleCount)}. Nimm so viele Nadeln wie Maschen.`,
  },
  tooFewStitches: (stitches, least) =>
    `bag.stitches ist ${stitches}: zwei wandernde Ränder brauchen mindestens ${least}.`,
  boxedTooDeep: (boxedCm, below) =>
    `bag.boxedCm ist ${boxedCm}, da bleibt kein Platz für Boden und Seiten unter der Kordel: in einem Beutel dieser Größe muss es unter ${below} bleiben.`,
  scrapsCordShort: (yarn, grams) =>
    `Schon für die Kordel allein sind es ${grams} g ${yarn} zu wenig: nenn in cord.yarn ein Garn, von dem du mehr hast, oder verkürz cord.tieCm.`,
  scrapsNoCloser: (scraps) =>
    `Keines reicht für den letzten Streifen, der auch verbindet und näht (${list(scraps)}): nimm einen längeren Rest dazu.`,
  yarnNotWeighed: 'Kein Garn der Vorgabe ist gewogen: gib grams an, oder lass --from-yarn weg.',
  yarnForNoBag: (yarn, grams, smallest) =>
    `Selbst für den kleinsten Beutel dieser Form, ${smallest}, sind es ${grams} g ${yarn} zu wenig: wieg noch einmal, oder nimm ein anderes Garn.`,
  nothingToConfirm: 'Der Beutel ist fertig: es ist kein Schritt mehr zu bestätigen.',
  tooManySteps: (count) => `Nur der letzte Schritt ist übrig, ${count} auf einmal gehen nicht: bestätige 1.`,
  fewerLeft: (count, left) =>
    `${count} Schritte lassen sich nicht bestätigen: ${left} sind übrig, gib also eine ganze Zahl von 1 bis ${left} an.`,
  nothingToTakeBack: 'Es gibt nichts zurückzunehmen: hier hat die Arbeit begonnen.',
  nothingToRedo: 'Seit dem letzten Schritt gibt es nichts zu wiederholen.',
  noSuchStep: (step, stepCount) =>
    `Einen Schritt ${step} gibt es nicht: dieser Beutel hat die Schritte 1 bis ${stepCount}.`,
  alreadyThere: 'Du bist schon dort: bisher ist kein Schritt bestätigt.',
  alreadyAt: (done) => `Du bist schon dort: bisher ${counted.step(done)} bestätigt.`,
  nothingToSay: 'Die Notiz ist leer: tippe nach dem Wort note, was du dir merken willst.',
  markWithoutName: 'Die Marke hat keinen Namen: tippe nach dem Wort mark einen Namen für diese Stelle.',
  noNeedle: (needle, first, last) =>
    `Eine Nadel ${needle} gibt es nicht: das Nadelbett reicht von ${first} bis L1 und von R1 bis ${last}.`,
  choose: (rows) => `nimm ${choice(rows)}`,
  rowsTooFew: (rows, choose) => `bag.rows ist ${rows}, zu wenig für einen einzigen Formschritt: ${choose}.`,
  rowsOdd: (rows, rowMultiple, choose) =>
    `bag.rows ist ${rows}, aber ganze Streifenrapporte und Formschritte gehen nur alle ${counted.row(rowMultiple)} auf: ${choose}.`,
  tooDeep: (stitches, usable) =>
    `Der Beutel ist ${stitches} tief, aber zwischen den freien Rändern hat das Nadelbett ${counted.needle(usable)}`,
  nearestFits: (short, stitches, sizeOf) =>
    `${short}: am nächsten kommt, was noch wandern kann, mit ${stitches}, ${sizeOf}.`,
  noneFits: (short) =>
    `${short}, zu wenige für jeden Beutel: nimm ein längeres Nadelbett oder schmalere Ränder.`,
  size: (width, depth) => `${width} breit und ${depth} tief`,
  everyOther: (each) => `${each}; kein Garn kann mehr als jeden zweiten Streifen stricken`,
  largest: (sizeOf, stitches, rows) =>
    `der größte daraus ist ${sizeOf}, mit bag.stitches ${stitches} und bag.rows ${rows}; oder nimm ein Garn dazu`,
  addYarn: 'nimm ein Garn dazu, oder mach den Beutel kleiner',
  scrapsTooFew: (wanted, stripeRows, possible, why, mend) =>
    `Der Beutel hat ${wanted} Streifen zu je ${counted.row(stripeRows)}, und die Reste reichen für ${possible} davon (${why}): ${mend}.`,
});

export const files = (_: Amounts): Words['files'] => ({
  line: {
    'not-text': 'enthält Bytes, die kein Text sind',
    'not-json': 'ist kein JSON',
    'no-checksum': 'hat ihre Prüfsumme verloren',
    checksum: 'passt nicht zu ihrer Prüfsumme: sie wurde geändert, oder davor fehlt eine Zeile',
    'wrong-fields': 'hat nicht die Felder, die sie haben soll',
    'out-of-place': 'nennt den Beutel fertig, obwohl er es nicht ist',
  },
  notALog: 'Diese Datei ist kein Protokoll von Slantwise. Nenn eine, die Slantwise geschrieben hat.',
  noHeader:
    'Dieses Protokoll brach ab, bevor etwas darin stand. Beginn den Beutel aus seiner Vorgabe, in einem neuen Protokoll.',
  newerVersion: (version, known) =>
    `Dieses Protokoll hat Format ${version}, dieses Programm liest bis ${known}: öffne es mit einem neueren Slantwise.`,
  damagedLine: (line, reason) => `Zeile ${line} ${reason}.`,
  stepDiffers: (line, recorded, reached, soundPart) =>
    `Zeile ${line} führt ${counted.step(recorded)} als gemacht, es ergeben sich aber ${reached}. ${soundPart}`,
  commandRefused: (line, code, soundPart) =>
    `Zeile ${line} hält etwas fest, das dort nicht geht (${code}). ${soundPart}`,
  unknownEvent: (line, name) =>
    `Zeile ${line} enthält „${name}“, was dieses Programm nicht kennt: öffne das Protokoll mit einem neueren Slantwise.`,
  brief: (code, program) =>
    `Dieses Programm kann die Vorgabe in diesem Protokoll nicht planen (${code}): öffne es mit Slantwise ${program}, das es begonnen hat.`,
  planDiffers: (figure, planned, recorded, program) =>
    `Dieses Programm plant den Beutel anders (${figure}: ${planned}, im Protokoll ${recorded}): öffne es mit Slantwise ${program}, das es begonnen hat.`,
  nothingAfter: 'Nichts danach ist zu gebrauchen.',
  lineOneSound: 'Zeile 1 ist in Ordnung.',
  linesSound: (through) => `Die Zeilen 1 bis ${through} sind in Ordnung.`,
  laterLines: (step) => `Spätere Zeilen führen ${counted.step(step)} als gemacht.`,
  tornTail: (keptAs) =>
    `Die letzte Zeile des Protokolls brach ab, vielleicht durch einen Absturz. Sie liegt in ${keptAs}; alles davor ist in Ordnung.`,
  cutOff: (line) =>
    `Zeile ${line}, die letzte, ist abgeschnitten und gehört zu keinem bestätigten Schritt. Alles davor ist heil: Öffne das Protokoll, um dort weiterzumachen.`,
  noSuchEvent: (after, events) =>
    `Ein Ereignis ${after} gibt es nicht: das Protokoll hat ${counted.event(events)}.`,
  disk: {
    'disk-full': 'die Platte ist voll',
    'read-only': 'die Platte lässt sich nur lesen',
    'no-permission': 'die Berechtigung fehlt',
    gone: 'die Datei oder ihr Ordner ist weg',
    'in-use': 'ein anderes Slantwise hat das Protokoll offen',
    changed: 'etwas anderes hat die Datei geändert',
    'no-answer': 'die Platte antwortet nicht',
    'disk-error': 'die Platte meldet einen Fehler',
  },
  missing: (path) => `${path} gibt es nicht. Prüf den Namen.`,
  noFolder: (path) => `Den Ordner von ${path} gibt es nicht. Leg ihn an, oder wähle einen anderen.`,
  isFolder: (path) => `${path} ist ein Ordner. Nenn eine Datei darin.`,
  exists: (path) => `${path} gibt es schon und bleibt, wie es ist. Wähle einen anderen Namen.`,
  tooLarge: (path, mostBytes) =>
    `${path} ist größer als ${mostBytes} KiB, so groß ist weder eine Vorgabe noch ein Protokoll. Prüf den Namen.`,
  notText: (path) => `${path} ist kein Text in UTF-8. Speichere es als UTF-8.`,
  inUseElsewhere: (path, pid, host) =>
    `${path} ist in einem anderen Slantwise offen (Prozess ${pid} auf ${host}): beende das andere, oder schau nur zu. Gibt es keines, kopier das Protokoll und mach in der Kopie weiter: slantwise --log COPY`,
  inUse: (path, pid) =>
    `${path} ist in einem anderen Slantwise offen (Prozess ${pid}): beende das andere, oder schau nur zu. Gibt es keines, kopier das Protokoll und mach in der Kopie weiter: slantwise --log COPY`,
  notSaved: (trouble, waiting) =>
    `Nicht gespeichert: ${trouble}. Die Arbeit geht im Speicher weiter, ${waiting} noch; alle paar Sekunden wird es wieder versucht.`,
  lineWaits: '1 Zeile wartet',
  linesWait: (lines) => `${lines} Zeilen warten`,
  saveElsewhere:
    'Tippe save und eine Datei anderswo, etwa save ../bag.jsonl, oder beende noch einmal, ohne zu speichern.',
  leftWithout: (missing) => `Ohne Speichern beendet. ${missing}`,
  logNotOnDisk: (trouble) => `Das Protokoll ist nicht auf der Platte: ${trouble}.`,
  lineNotOnDisk: (trouble) => `1 Zeile des Protokolls ist nicht auf der Platte: ${trouble}.`,
  linesNotOnDisk: (waiting, trouble) =>
    `${waiting} Zeilen des Protokolls sind nicht auf der Platte: ${trouble}.`,
  savedElsewhere: (path) =>
    `Das ganze Protokoll ist in ${path}, und dort geht es weiter. Nächstes Mal: slantwise --log ${forShell(path)}`,
  slow: (ms) =>
    `Die Platte ist langsam: ein Tastendruck brauchte ${Math.round(ms)} ms zum Speichern. Jeder wartet darauf, aber höchstens eine Sekunde.`,
  holds:
    'Die Platte hält dieses Terminal vielleicht fest, bis sie antwortet. Das Fenster darf geschlossen werden; dadurch geht nichts weiter verloren.',
});
