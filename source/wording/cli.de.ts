import type { Amounts } from './amounts.ts';
import type { Words } from './words.ts';

export const cli = ({ choice, decimal }: Amounts): Words['cli'] => ({
  does: {
    work: 'einen Beutel stricken; mit dem angefangenen weiter (auch ohne das Wort work)',
    log: 'das Protokoll in dieser Datei führen',
    like: 'noch ein Beutel nach diesem Protokoll, samt Änderungen und Notizen',
    fresh: 'neu anfangen, auch wenn dieser Beutel schon läuft',
    practice: 'ohne angefangenen Beutel den Übungsbeutel beginnen, ohne zu fragen',
    plain: 'Text, Zeile für Zeile, für Bildschirmleser und Pipes',
    new: 'ein paar Fragen beantworten, den Plan ansehen und den Beutel beginnen',
    plan: 'den Plan einer Vorgabe ausgeben: Größe, Garn, Nadeln, Fadenenden; bei mehreren auch ihr Garn zusammen',
    json: 'JSON ausgeben und sonst nichts',
    fromYarn: 'der größte Beutel dieser Form aus dem gewogenen Garn',
    steps: 'jeden Schritt der Arbeit ausgeben',
    sheet: 'ein Blatt zum Drucken: Plan, Zeichnungen, ein Kästchen je Streifen',
    out: 'eine neue Datei, die auf .html, .svg oder .md endet',
    paper: 'für .svg: das Papier der Seiten, a4 (wie ohne) oder letter',
    tag: 'ein Geschenkanhänger zum Ausschneiden, statt des Blatts',
    fibre: 'für den Anhänger: woraus gestrickt ist, in deinen Worten',
    care: 'für den Anhänger: wie gewaschen wird, in deinen Worten',
    class: 'mit Lücken für die eigene Maschenprobe in einem Kurs',
    schema: 'das JSON-Schema einer Vorgabe ausgeben',
    replay: 'ein Protokoll im Tempo der Arbeit abspielen; ohne Terminal ausgeben',
    speed: 'Tempo, etwa 4 oder 0.5',
    lesson: 'ein Protokoll mit eigenen Zeilen kopieren, etwa: 33 say Rand ansehen',
    copy: 'eine neue Datei für die Kopie',
    pupils: 'wie eine Gruppe steht, nach den Protokollen in einem Ordner',
    record: 'die Übersicht über einen Beutel: Zeit, Größe, Garn, Nadeln, Daten, Notizen',
    check: 'ein Protokoll auf Schäden prüfen und seine Einträge zählen',
    open: 'mit einem Beutel weitermachen, nach seiner Nummer in bags oder seinem Namen',
    rename: 'einen Beutel anders nennen',
    discard:
      'einen Beutel wegwerfen, nach seiner Nummer in bags oder seinem Namen; eine Kopie bleibt bis zum nächsten',
    yes: 'nicht erst fragen',
    restore: 'den zuletzt weggeworfenen Beutel zurückholen',
    bags: 'angefangene und fertige Beutel auflisten',
    completion: 'ein Skript für die Tab-Taste in bash, zsh oder fish ausgeben',
    manual: 'die Handbuchseite ausgeben, für man -l -',
  },
  about:
    'Slantwise plant einen schräg gestreiften Zugbeutel für eine handbetriebene Flachstrickmaschine, führt dich Schritt für Schritt und zählt mit.',
  anywhere: 'slantwise --help, slantwise --version',
  withoutBrief:
    'Ohne Vorgabe (BRIEF) geht der angefangene Beutel weiter; ohne einen solchen fragt es nach einem neuen.',
  exitStatus:
    'Rückgabewert: 0 erledigt, 1 falsche Eingabe, 2 falscher Aufruf, 70 eigener Fehler, 130 unterbrochen.',

  noOption: (option) => `Eine Option ${option} gibt es hier nicht; slantwise --help zeigt alle`,
  noOptionBut: (option, near) => `Eine Option ${option} gibt es hier nicht. Meinst du ${near}?`,
  noCommand: (word) => `Einen Befehl ${word} gibt es nicht; slantwise --help zeigt alle`,
  noCommandBut: (word, near) => `Einen Befehl ${word} gibt es nicht. Meinst du ${near}?`,
  noFileBut: (word, near) => `Es gibt weder Datei noch Befehl ${word}. Meinst du ${near}?`,
  needsValue: (option, takes) => `${option} braucht einen Wert: ${option} ${takes}`,
  takesNoValue: (option) => `${option} hat keinen Wert: lass weg, was nach dem Gleichheitszeichen steht`,
  missing: (what, usage) => `${what} fehlt. Aufruf: ${usage}`,
  oneTooMany: (what, usage) => `${what} ist zu viel. Aufruf: ${usage}`,
  notAChoice: (word, choices) => `${word} geht hier nicht: schreib ${choice(choices)}`,
  forOneBag: (option) => `--${option} gilt für einen Beutel: nenn nur eine Vorgabe oder lass es weg`,
  notAPaper: (typed, papers) => `--paper ${typed} ist kein bekanntes Papier: schreib ${choice(papers)}`,
  notASpeed: (typed, slowest, fastest) =>
    `--speed ${typed} ist keine Zahl von ${decimal(slowest)} bis ${fastest}`,

  endlessLine:
    'Was hereinkam, hat eine Zeile von über 1.000 KiB; ab da wurde nichts mehr gelesen. Schick Befehle, einen je Zeile.',
  unwritten: (code) =>
    `Die Ausgabe ließ sich nicht schreiben (${code}). Schaff Platz, oder gib sie woanders aus.`,
  ourFault: (what, where) =>
    `Slantwise hat selbst einen Fehler gemacht (${what}). Was du bestätigt hast, liegt in ${where}: starte es wieder, um weiterzumachen, und melde diesen Satz mit dem Protokoll dem, von dem du das Programm hast.`,

  manual: {
    name: 'Name',
    whatItIs: 'plant und begleitet das Stricken eines schräg gestreiften Zugbeutels',
    synopsis: 'Aufruf',
    description: 'Beschreibung',
    descriptions: [
      'Slantwise plant einen schräg gestreiften Zugbeutel für eine handbetriebene Flachstrickmaschine, führt dich Schritt für Schritt und zählt mit.',
      'Ohne Vorgabe geht es mit dem angefangenen Beutel weiter. Jeder bestätigte Schritt ist auf der Platte, bevor er gezeigt wird.',
    ],
    commands: 'Befehle',
    keys: 'Tasten',
    enterSpace: 'Enter, Leertaste',
    confirms: 'den Schritt bestätigen',
    leftArrow: '←',
    takesBack: 'den letzten Schritt zurücknehmen',
    upDownTab: 'Pfeil auf, Pfeil ab, Tabulator',
    bringsBack: 'Getipptes zurückholen, ein Wort vervollständigen',
    largeLetters: 'große Schrift zeigen',
    leaves: 'beenden; alles ist gespeichert',
    environment: 'Umgebung',
    logInstead: 'das Protokoll, in dem gearbeitet wird, wie mit --log',
    languageOfSystem: 'die Sprache, wo die Einstellung auto ist: en oder de',
    noColour: 'ohne Farbe zeichnen',
    whereKept: 'wo Protokolle und Einstellungen unter Linux liegen',
    brief: 'Felder einer Vorgabe',
    files: 'Dateien',
    filesKept:
      'Protokolle, eines je Beutel, sind JSON Lines im Ordner bags des Datenordners, den das System Programmen gibt; settings.json liegt in seinem Ordner für Einstellungen.',
    exitStatus: 'Rückgabewert',
    exitStatuses:
      '0 erledigt, 1 die Eingabe war falsch, 2 falscher Aufruf, 70 ein eigener Fehler, 130 unterbrochen.',
    examples: 'Beispiele',
    exampleNew: 'ein paar Fragen beantworten und anfangen',
    examplePlan: 'den Plan einer Vorgabe ausgeben',
    exampleSheet: 'ein Blatt zum Drucken schreiben',
    exampleReplay: 'ein Protokoll abspielen, achtmal so schnell',
  },
});
