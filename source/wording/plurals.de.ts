/** Things that are counted, in the nominative and accusative: `1 Reihe`, `3 Reihen`. */
import type { counted as english } from './plurals.en.ts';

const several =
  (one: string, many: string) =>
  (howMany: number): string =>
    `${howMany} ${howMany === 1 ? one : many}`;

export const counted = {
  row: several('Reihe', 'Reihen'),
  stitch: several('Masche', 'Maschen'),
  needle: several('Nadel', 'Nadeln'),
  loop: several('Masche', 'Maschen'),
  stripe: several('Streifen', 'Streifen'),
  step: several('Schritt', 'Schritte'),
  move: several('Formschritt', 'Formschritte'),
  edgeStitch: several('Randmasche', 'Randmaschen'),
  prong: several('Öse', 'Ösen'),
  wasteRow: several('Hilfsgarnreihe', 'Hilfsgarnreihen'),
  time: several('Mal', 'Mal'),
  log: several('Protokoll', 'Protokolle'),
  bag: several('Beutel', 'Beutel'),
  bar: several('Querfaden', 'Querfäden'),
  round: several('Runde', 'Runden'),
  eyelet: several('Lochmasche', 'Lochmaschen'),
  character: several('Zeichen', 'Zeichen'),
  event: several('Ereignis', 'Ereignisse'),
  pass: several('Schlittengang', 'Schlittengänge'),
  moreStep: several('weiterer Schritt', 'weitere Schritte'),
  repeat: several('Rapport', 'Rapporte'),
  sitting: several('Sitzung', 'Sitzungen'),
  line: several('Zeile', 'Zeilen'),
  shapingMove: several('Formschritt', 'Formschritte'),
} satisfies typeof english;

export const plurals = () => counted;
