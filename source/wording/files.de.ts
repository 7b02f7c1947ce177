import type { Amounts } from './amounts.ts';
import { counted } from './counted.de.ts';
import type { FilesWords } from './files.en.ts';

export const files = (_: Amounts): FilesWords => ({
  line: {
    notText: 'enthält Bytes, die kein Text sind',
    notJson: 'ist kein JSON',
    noChecksum: 'hat ihre Prüfsumme verloren',
    checksum: 'passt nicht zu ihrer Prüfsumme: sie wurde geändert, oder davor fehlt eine Zeile',
    wrongFields: 'hat nicht die Felder, die sie haben soll',
    outOfPlace: 'nennt den Beutel fertig, obwohl er es nicht ist',
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
    full: 'die Platte ist voll',
    readOnly: 'die Platte lässt sich nur lesen',
    noPermission: 'die Berechtigung fehlt',
    gone: 'die Datei oder ihr Ordner ist weg',
    inUse: 'ein anderes Slantwise hat das Protokoll offen',
    changed: 'etwas anderes hat die Datei geändert',
    noAnswer: 'die Platte antwortet nicht',
    error: 'die Platte meldet einen Fehler',
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
  savedElsewhere: (path, forShell) =>
    `Das ganze Protokoll ist in ${path}, und dort geht es weiter. Nächstes Mal: slantwise --log ${forShell}`,
  slow: (ms) =>
    `Die Platte ist langsam: ein Tastendruck brauchte ${ms} ms zum Speichern. Jeder wartet darauf, aber höchstens eine Sekunde.`,
  holds:
    'Die Platte hält dieses Terminal vielleicht fest, bis sie antwortet. Das Fenster darf geschlossen werden; dadurch geht nichts weiter verloren.',
});
