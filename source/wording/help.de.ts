import type { Amounts } from './amounts.ts';
import type { Words } from './words.ts';

export const help = (_: Amounts): Words['help'] => ({
  none: (asked) => `Zu ${asked} gibt es keine Hilfe.`,
  keys: 'Enter bestätigt, ← nimmt ihn zurück, Tab ergänzt; oder frag: was ist ein Decker?',
  topicsAre: (topics) => `Tippe help und ein Thema: ${topics}; oder help all.`,
  alsoCalled: (aliases) => `Auch: ${aliases}.`,
  forExample: (example) => `Zum Beispiel: ${example}.`,
  more: 'Mehr sagt help mit einem Befehl, zum Beispiel help go.',
  now: {
    trouble:
      'Beim Speichern gibt es ein Problem. Du kannst weiterstricken: solange dieses Fenster offen ist, geht nichts verloren.',
    way: 'Du bist beim Korrigieren oder Auftrennen, einen Handgriff nach dem anderen.',
    offer: 'Du kannst einen dieser Vorschläge annehmen. Bis dahin ändert sich nichts.',
    finished: 'Der Beutel ist fertig.',
    'cast-on': 'Du bist am Anfang: Nadeln, die ersten Maschen, Hilfsgarnreihen und die Trennreihe.',
    stripes: 'Du strickst Streifen.',
    shaping: 'Du bist bei einem Formschritt: eine Zunahme am einen Rand, eine Abnahme am anderen.',
    rehang:
      'Du bist beim Neuaufnadeln: das Gestrick kommt mit Hilfsgarnreihen von den Nadeln und wird neu aufgenadelt.',
    'closing-row':
      'Du bist beim Abschließen: eine Reihe, das Fadenende, Hilfsgarnreihen, dann kommt das Gestrick von den Nadeln.',
    hem: 'Du strickst den Saum: der Öffnungsrand wird aufgefasst, umgeschlagen und abgekettet, damit er sich nicht rollt.',
    graft:
      'Du verbindest: an beiden Kanten abwechselnd geht die Nadel durch eine Masche hinab und durch die nächste herauf.',
    seam: 'Du nähst den Boden, Querfaden für Querfaden.',
    cord: 'Du machst die Kordel.',
    threading: 'Du fädelst die Kordel durch die Lochmaschen.',
  },
  topics: {
    keys: {
      names: 'Tasten, Taste',
      lines: [
        'Ist nichts getippt, bestätigt Enter oder Leertaste den Schritt, und ← nimmt den letzten zurück.',
        'Pfeil auf und ab holen Getipptes zurück, Tab ergänzt ein Wort, Escape leert die Zeile.',
        'F2 zeigt große Schrift. Strg-C beendet; alles ist gespeichert.',
      ],
    },
    switches: {
      names: 'Schalter, Fußschalter, Reihenauslöser',
      lines: [
        'Ein Fußschalter oder Reihenauslöser tippt eine Taste. Tippe pedal und was er tun soll, und drücke ihn dann.',
        'Prellt ein Schalter, stell pedal gap höher: was in dieser Zeit mehrmals kommt, zählt als einmal.',
        'Mit pause long steht ein heikler Schritt länger da, bevor ein Tastendruck zählt.',
      ],
    },
    find: {
      names: 'Stelle finden, finden, verzählt',
      lines: [
        'Sag, was du auf dem Nadelbett siehst, so viel oder wenig du weißt. Du erfährst, wo das ist oder was schiefging.',
        'Die Ränder sind die äußersten Nadeln mit Maschen. Was du noch siehst, fügst du mit find and … hinzu.',
        'choose nimmt einen Vorschlag an. Beim Korrigieren wirst du Schritt für Schritt geführt; stop hört damit auf.',
      ],
    },
    rip: {
      names: 'auftrennen, zurückstricken',
      lines: [
        'Du wirst zurückgeführt: jede Reihe heraus und jede Masche aufgefangen, jede Nadel und der Reihenzähler zurückgestellt.',
        'Vor allem, was sich nicht rückgängig machen lässt, etwa einem Schnitt, wirst du gewarnt.',
        'Um nur die Zählung zu berichtigen, tippe go und die Stelle: das Gestrick bleibt, wie es ist. back nimmt einen Schritt zurück.',
      ],
    },
    replan: {
      names: 'neu planen, länger, kürzer, falsche Größe',
      lines: [
        'Was gestrickt ist, bleibt. Der Rest kann länger oder kürzer werden, in ganzen Rapporten, oder eine andere Farbe haben.',
        'Misst das Stück anders als die Maschenprobe, tippe, was du gemessen hast. Zuerst siehst du den neuen Plan.',
      ],
    },
    yarn: {
      names: 'Garn, Garn reicht nicht',
      lines: [
        'Der Plan zeigt, was jedes Garn braucht, mit Reserve, und ob das Gewogene reicht.',
        'Wieg, was von einem Garn übrig ist, und tippe es mit weigh. Mit replan findest du dann einen Beutel, für den das Garn reicht.',
      ],
    },
    log: {
      names: 'Protokoll, speichern, gespeichert',
      lines: [
        'Jeder bestätigte Schritt ist gespeichert, bevor du ihn siehst. Du kannst bei jedem aufhören und dort weitermachen.',
        'Gibt es ein Problem mit der Platte, schreibt save das ganze Protokoll in eine andere Datei und macht dort weiter.',
        'Auch Notizen und Marken stehen im Protokoll.',
      ],
    },
    replay: {
      names: 'abspielen, Lektion, wiedergeben',
      lines: [
        'Ein Protokoll lässt sich abspielen, so schnell wie gearbeitet oder schneller: tippe quit, dann slantwise replay und seine Datei.',
        'Wer unterrichtet, setzt mit slantwise lesson Zeilen in die Kopie eines Protokolls. Alle Protokolle zeigt bags.',
      ],
    },
    language: {
      names: 'Sprache, Einheiten, Zoll',
      lines: [
        'Alle Sätze gibt es auf Englisch oder Deutsch. Befehle und Nadelnamen sind in beiden gleich.',
        'Längen stehen in Zentimetern oder in Zoll.',
      ],
    },
    screen: {
      names: 'Bildschirm, Zeichnung, große Schrift, Ton',
      lines: [
        'Anstelle der Zähler kann eine Zeichnung stehen: die Bahn, der Beutel, die gefaltete Naht oder das Nadelbett.',
        'Von weitem liest du ihn in großer Schrift oder hörst ihn vorgelesen. Am Signalton erkennst du, welcher Schritt es ist.',
      ],
    },
  },
  aNote: 'hier etwas fester',
  aMark: 'vor der Pause',
  moreOfThis: 'mehr dazu',
  confirmSeveral: (howMany) => `${howMany} auf einmal bestätigen`,
});
