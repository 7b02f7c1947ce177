/**
 * German. The trade's words as machine knitters say them: needle bed Nadelbett, carriage Schlitten, feeder Fadenführer,
 * stitch Masche, row Reihe, pass Schlittengang, swatch Maschenprobe, gain and loss Zunahme and Abnahme, cast-on Anschlag,
 * graft im Maschenstich verbinden, eyelet Lochmasche, cord Kordel. Ours: brief Vorgabe, log Protokoll, mark Marke, note
 * Notiz, rehang Umsetzen, foot switch Fußschalter, strip Bahn, mouth Öffnung, bottom Boden, leading and trailing edge
 * Zunahmerand and Abnahmerand, grafted edges A and B Kante, home side Ausgangsseite, to crawl wandern, bite Stich, to
 * hang einhängen, to park ablegen, to slip leer, to rip back auftrennen, mend Ausbesserung, slip of the hand Versehen,
 * lesson Lektion, stripe repeat Rapport, ease Mehrweite, gauge Maschendichte, tightness Dichtefaktor, the work Gestrick,
 * transfer tool Decker, row counter Reihenzähler, offer Vorschlag, large letters große Schrift, to speak vorlesen, a sound log
 * in Ordnung, left arrow Pfeil links. After a colon a sentence begins small. The maker is addressed as du.
 */

import { ravelCord, unnamedWaste } from '../planning/brief.ts';
import type { YarnClass } from '../planning/gauge.ts';
import type { Phase } from '../steps/step.ts';
import { type counted as english, several } from './forms.en.ts';

/** `left` and `right` as they come in values: nach links, am linken Rand. */
const sideStem = (side: string): string => (side === 'left' ? 'link' : 'recht');
export const sideWord = (side: string): string => `${sideStem(side)}s`;
const stateWords: Readonly<Record<string, string>> = {
  'dry-relaxed': 'trocken relaxiert',
  'wet-relaxed': 'nass relaxiert',
  'fully-relaxed': 'voll relaxiert',
};
/** Vor „Kordel“: welche von zweien. */
export const whichCord = { only: '', first: 'erste ', second: 'zweite ' } as const;
export const stateWord = (state: string): string => stateWords[state] ?? state;
export const placeWords: Readonly<Record<string, string>> = {
  step: 'Einen Schritt',
  stripe: 'Einen Streifen',
  row: 'Eine Reihe',
  move: 'Einen Formschritt',
  stitch: 'Eine Masche',
  bar: 'Einen Querfaden',
  round: 'Eine Runde',
  hole: 'Ein Loch',
};
const yarnClassWords: Readonly<Record<string, string>> = {
  lace: 'Lace',
  'super fine': 'sehr fein',
  fine: 'fein',
  light: 'leicht',
  medium: 'mittel',
  bulky: 'dick',
  'super bulky': 'sehr dick',
  jumbo: 'Jumbo',
};
export const yarnClass = ({ name, number }: YarnClass): string =>
  `${yarnClassWords[name] ?? name} (${number})`;
export const timesWord = (times: number): string => (times === 1 ? 'einmal' : `${times}-mal`);
/** A yarn by the name that the maker gave it; two have names of ours. */
export const yarnName = (yarn: string): string =>
  yarn === unnamedWaste ? 'Hilfsgarn' : yarn === ravelCord ? 'Trennfaden' : yarn;
/** As what something is done with: wen oder was. */
export const theYarn = (yarn: string): string =>
  yarn === unnamedWaste ? 'das Hilfsgarn' : yarn === ravelCord ? 'den Trennfaden' : yarn;
/** Behind mit, aus, unter: wem. */
export const toTheYarn = (yarn: string): string =>
  yarn === unnamedWaste || yarn === ravelCord ? `dem ${yarnName(yarn)}` : yarn;
/** What was typed comes in English quotes. */
export const quoted = (typed: string): string => typed.replace(/^"(.*)"$/, '„$1“');
/** `mouth` and `bottom` as they come in values. */
export const atEnd = (end: string): string => (end === 'mouth' ? 'an der Öffnung' : 'am Boden');

/** Things that are counted, in the nominative and accusative: `1 Reihe`, `3 Reihen`. */
export const counted = {
  row: several('Reihe', 'Reihen'),
  stitch: several('Masche', 'Maschen'),
  needle: several('Nadel', 'Nadeln'),
  loop: several('Masche', 'Maschen'),
  stripe: several('Streifen', 'Streifen'),
  step: several('Schritt', 'Schritte'),
  move: several('Formschritt', 'Formschritte'),
  wasteRow: several('Hilfsgarnreihe', 'Hilfsgarnreihen'),
  time: several('Mal', 'Mal'),
  log: several('Protokoll', 'Protokolle'),
  bag: several('Beutel', 'Beutel'),
  bar: several('Querfaden', 'Querfäden'),
  round: several('Runde', 'Runden'),
  hole: several('Loch', 'Löcher'),
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

export const phaseWords: Readonly<Record<Phase, string>> = {
  'cast-on': 'Anschlag',
  stripes: 'Streifen',
  'closing-row': 'Schlussreihe',
  hem: 'Saum',
  graft: 'Verbinden',
  seam: 'Naht',
  cord: 'Kordel',
};
