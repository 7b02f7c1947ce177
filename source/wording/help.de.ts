import type { Amounts } from './amounts.ts';
import type { HelpWords } from './help.en.ts';

export const help = (_: Amounts): HelpWords => ({
  none: (asked) => `Zu ${asked} gibt es keine Hilfe.`,
  keys: 'Enter bestätigt, Pfeil links nimmt zurück, Tab ergänzt; oder frag: what is a bar?',
  topicsAre: (topics) => `Tippe help und ein Thema: ${topics}; oder help all.`,
  alsoCalled: (aliases) => `Auch: ${aliases}.`,
  forExample: (example) => `Zum Beispiel: ${example}.`,
  more: 'Mehr sagt help mit einem Befehl, zum Beispiel help go.',
  now: {
    trouble:
      'Das Speichern macht Ärger. Du kannst weiterstricken: solange das hier offen ist, geht nichts verloren.',
    way: 'Du wirst außerhalb des Plans geführt, einen Handgriff nach dem anderen.',
    offer: 'Es liegt ein Vorschlag vor. Nichts ändert sich, bis du ihn annimmst.',
    finished: 'Der Beutel ist fertig.',
    'cast-on': 'Du bist am Anfang: Nadeln, die ersten Maschen, Hilfsgarnreihen und der Trennfaden.',
    stripes: 'Du strickst Streifen.',
    shaping: 'Du bist bei einem Formschritt: eine nach außen am einen Rand, eine nach innen am anderen.',
    rehang:
      'Du bist beim Umsetzen: das Gestrick kommt mit Hilfsgarnreihen von den Nadeln und wird neu eingehängt.',
    'closing-row':
      'Du bist beim Abschließen: eine Reihe, das Fadenende, Hilfsgarnreihen, dann kommt das Gestrick von den Nadeln.',
    graft:
      'Du verbindest: an beiden Kanten abwechselnd geht die Nadel durch eine Masche hinab und durch die nächste herauf.',
    seam: 'Du nähst den Boden, Quersteg für Quersteg.',
    cord: 'Du machst die Kordel.',
    threading: 'Du fädelst die Kordel durch die Lochmaschen.',
  },
  topics: {
    keys: {
      names: 'Tasten, Taste',
      lines: [
        'Ist nichts getippt, bestätigt Enter oder Leertaste den Schritt, und Pfeil links nimmt den letzten zurück.',
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
    finding: {
      names: 'Stelle finden, finden, verzählt',
      lines: [
        'Sag, was du auf dem Nadelbett siehst, und sei es wenig: du hörst, wo das ist oder was schiefging.',
        'Die Ränder sind die äußersten Nadeln mit Maschen. Mehr sagst du mit find and.',
        'Mit take nimmst du einen Vorschlag an. Beim Ausbessern wirst du Schritt für Schritt geführt; stop hört damit auf.',
      ],
    },
    ripping: {
      names: 'auftrennen, zurückstricken',
      lines: [
        'Du wirst zurückgeführt: jede Reihe heraus und jede Masche aufgefangen, jede Nadel und das Zählwerk zurückgestellt.',
        'Was Hände nicht rückgängig machen können, ein Schnitt etwa, wird vorher gesagt.',
        'Um nur die Zählung zu richten und das Gestrick zu lassen, nimm go. Ein Schritt zurück ist back.',
      ],
    },
    replanning: {
      names: 'neu planen, länger, kürzer, falsche Größe',
      lines: [
        'Was gestrickt ist, bleibt. Der Rest kann länger oder kürzer werden, in ganzen Rapporten, oder eine andere Farbe haben.',
        'Misst das Stück anders als die Maschenprobe, sag, was du gemessen hast. Zuerst siehst du den neuen Plan.',
      ],
    },
    yarn: {
      names: 'Garn, Garn reicht nicht',
      lines: [
        'Der Plan zeigt, was jedes Garn braucht, mit Reserve, und ob das Gewogene reicht.',
        'Wieg, was von einem Garn übrig ist: weigh merkt es sich, und mit replan wird der Beutel so, wie das Garn es erlaubt.',
      ],
    },
    log: {
      names: 'Protokoll, speichern, gespeichert',
      lines: [
        'Jeder bestätigte Schritt ist gespeichert, bevor du ihn siehst. Du kannst bei jedem gehen und zu ihm zurückkommen.',
        'Macht die Platte Ärger, schreibt save das ganze Protokoll in eine andere Datei, und dort geht es weiter.',
        'Auch Notizen und benannte Stellen stehen im Protokoll.',
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
        'Von weitem zeigt dir große Schrift den Schritt, oder er wird vorgelesen; an der Glocke hörst du, welcher es ist.',
      ],
    },
  },
  aNote: 'hier etwas fester',
  aMark: 'vor der Pause',
  moreOfThis: 'mehr dazu',
  confirmSeveral: (howMany) => `${howMany} auf einmal bestätigen`,
});
