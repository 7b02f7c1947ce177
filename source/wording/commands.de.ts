import { languageChoices } from '../settings/settings.ts';
import type { Amounts } from './amounts.ts';
import type { Words } from './words.ts';

export const commands = ({ choice }: Amounts): Words['commands'] => ({
  next: {
    usage: 'next [wie viele]',
    summary: 'den gezeigten Schritt bestätigen, oder mehrere auf einmal',
    gist: 'diesen Schritt bestätigen',
  },
  back: {
    usage: 'back [wie viele]',
    summary: 'das Letzte zurücknehmen: Schritt, Korrektur oder neuen Plan',
    gist: 'den letzten zurücknehmen',
  },
  redo: {
    summary: 'wiederholen, was zurückgenommen wurde',
    gist: 'Rückgängiges wiederholen',
  },
  go: {
    usage: 'go TEIL, oder go stripe / row / move / step / stitch / round / mark und Nummer oder Name',
    summary: 'zu einer Stelle der Arbeit gehen; das Gestrick bleibt, wie es ist',
    gist: 'zu einer Stelle gehen',
  },
  find: {
    usage:
      'find RÄNDER GARN, carriage left / right, feeder GARN, row / stripes / stitches ZAHL; find and MEHR',
    summary: 'sagen, was du siehst, viel oder wenig: du erfährst, wo du bist oder was schiefging',
    gist: 'sagen, was du siehst',
  },
  rip: {
    usage: 'rip row / stripe / move / step / mark und Nummer oder Name',
    summary: 'bis zu einer Stelle auftrennen, Reihe für Reihe geführt',
    gist: 'das Gestrick auftrennen',
  },
  replan: {
    usage:
      'replan shorter / longer / rows ZAHL; replan ZAHL stitches LÄNGE ZAHL rows LÄNGE; weigh GARN GRAMM; colour GARN to GARN; cord GARN',
    summary: 'den Rest des Beutels ändern: Länge, gemessene Maschendichte, Garn oder eine Farbe',
    gist: 'den Rest anders planen',
  },
  choose: {
    usage: 'choose [ZAHL]',
    summary: 'annehmen, was find, rip oder replan anbietet',
    gist: 'einen Vorschlag annehmen',
  },
  stop: {
    summary: 'das Auftrennen oder die Korrektur abbrechen',
    gist: 'eine Korrektur abbrechen',
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
    usage: 'note TEXT',
    summary: 'eine Notiz zu diesem Schritt festhalten',
    gist: 'eine Notiz festhalten',
  },
  notes: {
    summary: 'die Notizen bisher',
    gist: 'die Notizen lesen',
  },
  weigh: {
    usage: 'weigh GARN GRAMM',
    summary: 'festhalten, wie viel von einem Garn übrig ist; am Ende siehst du, was der Beutel gebraucht hat',
    gist: 'was vom Garn übrig ist',
  },
  measured: {
    usage: 'measured BREITE TIEFE',
    summary: 'die Größe des fertigen Beutels festhalten, trocken und flach',
    gist: 'Größe des Beutels festhalten',
  },
  mark: {
    usage: 'mark NAME',
    summary: 'hier eine Marke setzen, um zurückzukehren',
    gist: 'hier eine Marke setzen',
  },
  marks: {
    summary: 'die Marken bisher',
    gist: 'die Marken zeigen',
  },
  bags: {
    summary: 'deine Beutel, angefangen und fertig',
    gist: 'deine Beutel',
  },
  new: {
    summary: 'einen eigenen Beutel planen; dieser bleibt gespeichert',
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
    usage: 'save FILE',
    summary:
      'das ganze Protokoll in eine andere Datei schreiben und dort weitermachen, wenn es ein Problem mit der Platte gibt',
    gist: 'Protokoll in andere Datei',
  },
  quit: {
    summary: 'beenden; alles ist gespeichert, und du kommst zu diesem Schritt zurück',
    gist: 'beenden, später weiter',
  },
  tools: {
    summary: 'Werkzeug und Material für diesen Beutel, mit Zahlen',
    gist: 'Werkzeug und Material',
  },
  trouble: {
    usage: 'trouble, und was geschehen ist',
    summary: 'was jetzt zu tun ist, wenn etwas schiefgeht',
    gist: 'wenn etwas schiefgeht',
  },
  cord: {
    usage: 'cord LÄNGE',
    summary: 'wie lang die ersten Runden der Kordel sind: danach richtet sich ihr Rest',
    gist: 'die gemessene Kordel',
  },
  open: {
    usage: 'open NUMMER, oder open und ein Name',
    summary:
      'mit einem anderen Beutel weitermachen, nach seiner Nummer in bags oder seinem Namen; dieser wartet',
    gist: 'einen anderen Beutel öffnen',
  },
  rename: {
    usage: 'rename NAME',
    summary: 'diesen Beutel anders nennen',
    gist: 'den Beutel anders nennen',
  },
  discard: {
    usage: 'discard, oder discard und Nummer oder Name eines Beutels',
    summary: 'einen Beutel wegwerfen; fragt vorher und behält eine Kopie bis zum nächsten',
    gist: 'einen Beutel wegwerfen',
  },
  restore: {
    summary: 'den zuletzt weggeworfenen Beutel zurückholen',
    gist: 'Weggeworfenes zurückholen',
  },
  record: {
    summary: 'was dieser Beutel bis jetzt brauchte: Zeit, Größe neben dem Plan, Garn',
    gist: 'Zeit, Größe, Garn bis jetzt',
  },
  tag: {
    usage: 'tag DATEI.html, oder .svg, oder .md',
    summary: 'einen Geschenkanhänger für diesen Beutel schreiben',
    gist: 'ein Anhänger zum Drucken',
  },
  another: {
    usage: 'another; another größer / kleiner / getauscht / in GARN und GARN / BREITE mal TIEFE',
    summary: 'einen Beutel beginnen, der zu diesem passt, mit dem, was man aus ihm weiß',
    gist: 'einen passenden beginnen',
  },
  settings: {
    summary: 'wie alle Einstellungen stehen; jede allein getippt sagt ihre eigene',
    gist: 'wie die Einstellungen stehen',
  },
  keep: {
    usage: 'keep bed NAME, keep swatch NAME, keep yarn NAME mit dem, was man weiß, keep yarns',
    summary: 'Nadelbett, Maschenprobe oder ein Garn dieses Beutels unter einem Namen für andere behalten',
    gist: 'Bett, Probe, Garn behalten',
  },
  forget: {
    usage: 'forget bed / swatch / yarn NAME',
    summary: 'etwas aus dem Regal nehmen',
    gist: 'etwas aus dem Regal nehmen',
  },
  shelf: {
    summary: 'was im Regal liegt, wie viel Garn noch da ist und was daraus werden kann',
    gist: 'Betten, Proben, Garne',
  },
  party: {
    usage: 'party, party ZAHL, oder party next',
    summary: 'mehrere Beutel zusammen: wie sie stehen, so viele wie dieser, oder weiter mit dem nächsten',
    gist: 'mehrere Beutel zusammen',
  },
  practice: {
    summary: 'zum Übungsbeutel gehen; dieser ist gespeichert und wartet',
    gist: 'zum Übungsbeutel',
  },
  pedal: {
    usage: 'pedal confirm / back / again / pass, pedal off oder pedal gap MILLISEKUNDEN',
    summary:
      'einen Fußschalter belegen: erst tippen, dann drücken; gap: die kürzeste Zeit zwischen zwei Tritten',
    gist: 'einen Fußschalter belegen',
  },
  large: {
    usage: 'large on oder large off',
    summary: 'große Schrift, auch von weitem zu lesen',
    gist: 'große Schrift',
  },
  bell: {
    usage: 'bell on oder bell off',
    summary:
      'Signalton: einmal für einen Schritt, zweimal für einen Formschritt, dreimal für einen Garnwechsel',
    gist: 'Signalton bei jedem Schritt',
  },
  speech: {
    usage: 'speech on oder speech off',
    summary: 'jede Anweisung laut vorlesen',
    gist: 'jeden Schritt vorlesen',
  },
  pause: {
    usage: 'pause short / usual / long',
    summary: 'wie lange ein heikler Schritt dasteht, bevor ein Druck zählt',
    gist: 'Wartezeit heikler Schritte',
  },
  units: {
    usage: 'units cm, oder units in',
    summary: 'Zentimeter, Gramm und Meter, oder Zoll, Unzen und Yards',
    gist: 'Zentimeter oder Zoll',
  },
  language: {
    usage: `language ${choice(languageChoices)}`,
    summary: 'Deutsch oder Englisch; auto folgt dem System',
    gist: 'Deutsch oder Englisch',
  },
});
