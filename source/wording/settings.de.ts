import type { PedalAct } from '../settings/settings.ts';
import type { Amounts } from './amounts.ts';
import type { Words } from './words.ts';

const acts: Readonly<Record<PedalAct, string>> = {
  confirm: 'bestätigt den Schritt',
  back: 'nimmt den letzten Schritt zurück',
  again: 'sagt die Anweisung noch einmal',
  pass: 'bestätigt einen Schlittengang',
};

export const settings = ({ decimal, list, choice }: Amounts): Words['settings'] => ({
  languageIs: (setting) => (setting === 'auto' ? 'wie das System, zurzeit Deutsch.' : 'Deutsch.'),
  pressNow: (act) =>
    `Drück jetzt den Schalter, dann gilt: er ${acts[act]}. Geschieht nichts, behält das Terminal seine Taste für sich. Escape bricht ab.`,
  assigned: (key, act) => `Der Schalter tippt ${key}. Ist sonst nichts getippt, gilt: er ${acts[act]}.`,
  pastSwitches: (letters) =>
    `Einen Befehl, der mit ${choice(letters)} beginnt, tippst du mit einem Schrägstrich davor: ${list(letters.map((letter) => `/${letter}…`))}`,
  cable: 'Leg Schalter und Kabel so, dass niemand darüber stolpert. Halte beide von den Gewichten frei.',
  tooManyPedals: (most) => `Es gibt schon ${most} Schalter: pedal off vergisst sie.`,
  pedalsForgotten: 'Alle Schalter sind vergessen.',
  cannotAssign: (key) => `${key} braucht die Eingabezeile selbst: drück eine andere Taste.`,
  noPedalHere:
    'Hier wird Zeile für Zeile gelesen: ein Schalter, der Enter tippt, bestätigt schon so, andere brauchen den Bildschirm.',
  pedalLeft: 'Es wurde kein Schalter belegt.',
  noPedals: 'Kein Schalter ist belegt. Tippe pedal confirm und drück dann den Schalter.',
  pedals: (pedals) =>
    `Schalter: ${list(Object.entries(pedals).map(([key, act]) => `${key} ${acts[act]}`))}. Für noch einen tippe pedal und confirm, back, again oder pass; pedal off vergisst sie.`,

  large: (on) => (on ? 'Große Schrift an, wenn das Fenster mindestens 20 Zeilen hat.' : 'Große Schrift aus.'),
  bell: (on) =>
    on
      ? 'Der Signalton ist an: einmal für einen Schritt, zweimal für einen Formschritt, dreimal für einen Garnwechsel, viermal, wenn ein Tastendruck nichts bewirkt hat.'
      : 'Der Signalton ist aus.',
  speech: (on) => (on ? 'Anweisungen werden vorgelesen.' : 'Anweisungen werden nicht vorgelesen.'),
  pause: (pause, waitMs) =>
    waitMs === 0
      ? `pause ${pause}: kein Schritt wartet länger als ein anderer.`
      : `pause ${pause}: bei heiklen Schritten zählt ein Tastendruck erst nach ${decimal(waitMs / 1000)} s.`,
  pedalGap: (ms) => `Was ein Schalter innerhalb von ${ms} ms mehrmals meldet, zählt als einmal.`,
  units: (units) => (units === 'cm' ? 'Zentimeter, Gramm und Meter.' : 'Zoll, Unzen und Yards.'),
  language: (followsSystem) =>
    followsSystem ? 'Die Sprache folgt dem System: Deutsch.' : 'Ab hier auf Deutsch.',
  set: (name) => `${name} ist eingestellt.`,

  tooSoon: 'Das war zu früh. Sieh dir erst diesen Schritt an, dann drück noch einmal.',
  noPassDue: 'Hier war kein Schlittengang dran. Als Nächstes kommt:',
  nothingIsNext: 'nichts, der Beutel ist fertig.',

  noSpeechProgram: (lookedFor) =>
    `Vorlesen geht hier nicht: richte eines der Vorleseprogramme ein (${lookedFor.join(', ')}).`,
  speechFailed: (program) => `Das Vorleseprogramm ${program} läuft nicht, darum ist das Vorlesen aus.`,

  setAside: (keptAs) =>
    `Die Einstellungen ließen sich nicht lesen. Sie liegen jetzt in ${keptAs}, und es gelten die üblichen.`,
  refused: (names) =>
    `Diese Einstellungen haben Werte, die es nicht gibt, und werden übergangen: ${list(names)}.`,
  noSuchLanguage: (code, choices) =>
    `Die Einstellungen verlangen die Sprache ${code}, die es hier nicht gibt, darum ist dies Englisch: stell language auf ${choice(choices)}.`,
});
