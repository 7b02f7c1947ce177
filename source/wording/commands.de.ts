import type { Amounts } from './amounts.ts';
import type { CommandsWords } from './commands.en.ts';

export const commands = ({ choice }: Amounts): CommandsWords => ({
  next: {
    usage: 'next [wie viele]',
    summary: 'den gezeigten Schritt bestätigen, oder mehrere auf einmal',
    gist: 'diesen Schritt bestätigen',
  },
  back: {
    usage: 'back [wie viele]',
    summary: 'das Letzte zurücknehmen: Schritt, Sprung, Ausbesserung oder neuen Plan',
    gist: 'den letzten zurücknehmen',
  },
  redo: {
    summary: 'wieder tun, was zurückgenommen wurde',
    gist: 'Zurückgenommenes wieder tun',
  },
  go: {
    usage: 'go PHASE, oder go stripe / row / move / step / stitch / round / mark und Nummer oder Name',
    summary: 'an eine Stelle springen: sie kommt als Nächstes',
    gist: 'an eine Stelle springen',
  },
  find: {
    usage:
      'find RÄNDER GARN, carriage left / right, feeder GARN, row / stripes / stitches ZAHL; find and MEHR',
    summary: 'sagen, was du siehst, und sei es wenig; du hörst, wo es ist oder was schiefging',
    gist: 'sagen, was du siehst',
  },
  rip: {
    usage: 'rip row / stripe / move / step / mark und Nummer oder Name',
    summary: 'der Rückweg mit den Händen, bis diese Stelle wieder als Nächstes kommt',
    gist: 'mit den Händen zurück',
  },
  replan: {
    usage:
      'replan shorter / longer / rows ZAHL; replan ZAHL stitches LÄNGE ZAHL rows LÄNGE; weighed GARN GRAMM; colour GARN to GARN',
    summary: 'von hier aus neu planen: andere Länge, gemessenes Stück, gewogenes Garn, neue Farbe',
    gist: 'ab hier neu planen',
  },
  choose: {
    usage: 'choose [ZAHL]',
    summary: 'annehmen, was find, rip oder replan anbietet',
    gist: 'einen Vorschlag annehmen',
  },
  stop: {
    summary: 'einen Rückweg oder eine Ausbesserung abbrechen',
    gist: 'einen Rückweg abbrechen',
  },
  where: {
    summary: 'wo du bist, und wie das Nadelbett aussehen soll',
    gist: 'wo du bist',
  },
  plan: {
    summary: 'der ganze Plan: Größe, Garn, Nadeln, Fadenenden',
    gist: 'der ganze Plan',
  },
  words: {
    usage: 'words, oder words und ein Wort; oder frag: was ist eine Maschenprobe?',
    summary: 'die Wörter des Handwerks und was jedes bedeutet',
    gist: 'was ein Wort bedeutet',
  },
  why: {
    usage: 'why, oder why und was du wissen willst',
    summary: 'das Handwerk und die Formeln, mit den Zahlen dieses Beutels',
    gist: 'warum es so ist',
  },
  cautions: {
    summary: 'alle Vorsichtshinweise und bei welchem Schritt sie kommen',
    gist: 'alle Vorsichtshinweise',
  },
  again: {
    summary: 'die Anweisung noch einmal sagen',
    gist: 'die Anweisung wiederholen',
  },
  help: {
    usage: 'help, help all, oder help und ein Befehl oder Thema',
    summary: 'was du tippen kannst, und die Tasten',
    gist: 'was jetzt passt, und Themen',
  },
  note: {
    summary: 'eine Notiz zu diesem Schritt behalten',
    gist: 'eine Notiz festhalten',
  },
  notes: {
    summary: 'die Notizen bisher',
    gist: 'die Notizen lesen',
  },
  weigh: {
    usage: 'weigh GARN GRAMM',
    summary: 'festhalten, was von einem Garn noch da ist; am Ende zeigt das, was der Beutel gebraucht hat',
    gist: 'was vom Garn übrig ist',
  },
  measured: {
    usage: 'measured BREITE TIEFE',
    summary: 'die Größe des fertigen Beutels festhalten, trocken und flach, neben dem Plan',
    gist: 'Größe des Beutels festhalten',
  },
  mark: {
    summary: 'diese Stelle benennen, um zu ihr zurückzukehren',
    gist: 'diese Stelle benennen',
  },
  marks: {
    summary: 'die benannten Stellen bisher',
    gist: 'die benannten Stellen',
  },
  bags: {
    summary: 'was angefangen und was fertig ist',
    gist: 'angefangene und fertige',
  },
  new: {
    summary: 'einen eigenen Beutel planen; dieser ist gespeichert und wartet',
    gist: 'einen eigenen Beutel planen',
  },
  draw: {
    usage: 'draw strip / bag / fold / bed, oder draw off',
    summary: 'eine Zeichnung statt der Zähler; sie wächst mit dem Gestrick',
    gist: 'eine Zeichnung vom Gestrick',
  },
  sheet: {
    usage: 'sheet DATEI.html, oder .svg, oder .md',
    summary: 'den Plan als Blatt zum Drucken schreiben',
    gist: 'der Plan auf einem Blatt',
  },
  save: {
    summary:
      'das ganze Protokoll in eine andere Datei schreiben und dort weitermachen, wenn die Platte Ärger macht',
    gist: 'Protokoll in andere Datei',
  },
  quit: {
    summary: 'beenden; alles ist gespeichert, und du kommst zu diesem Schritt zurück',
    gist: 'beenden, später weiter',
  },
  onOrOff: (name) => `${name} on oder ${name} off`,
  pedal: {
    usage: 'pedal confirm / back / again / pass, pedal off oder pedal gap MILLISEKUNDEN',
    summary:
      'einen Fußschalter belegen: erst tippen, dann drücken; gap: was dichter aufeinander folgt, zählt als einmal',
    gist: 'einen Fußschalter belegen',
  },
  large: {
    summary: 'große Schrift, auch von weitem zu lesen',
    gist: 'große Schrift',
  },
  bell: {
    summary: 'einmal läuten für einen Schritt, zweimal für einen Formschritt, dreimal für eine Farbe',
    gist: 'bei jedem Schritt läuten',
  },
  speech: {
    summary: 'jede Anweisung laut vorlesen',
    gist: 'jeden Schritt vorlesen',
  },
  pause: {
    usage: 'pause short / usual / long',
    summary: 'wie lange du vor neuem Garn, Umsetzen und Schlussreihe hinsehen willst',
    gist: 'wie lange genau hinsehen',
  },
  units: {
    usage: 'units cm, oder units in',
    summary: 'Zentimeter, Gramm und Meter, oder Zoll, Unzen und Yards',
    gist: 'Zentimeter oder Zoll',
  },
  language: {
    usage: (codes) => `language ${choice(codes)}`,
    summary: 'die Sprache aller Sätze; auto folgt dem System',
    gist: 'die Sprache der Sätze',
  },
});
