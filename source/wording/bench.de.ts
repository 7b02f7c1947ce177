import type { Side } from '../bed/bed.ts';
import type { Amounts } from './amounts.ts';
import type { BenchWords } from './bench.en.ts';

const towards = (side: Side): string => (side === 'left' ? 'links' : 'rechts');
const edgeOf = (side: Side): string => (side === 'left' ? 'linker Rand' : 'rechter Rand');

export const bench = ({ time }: Amounts): BenchWords => ({
  knit: (to) => `nach ${towards(to)} stricken`,
  out: (edge, needle) => `${edgeOf(edge)}, eine nach außen: ${needle}`,
  in: (edge, needle) => `${edgeOf(edge)}, eine nach innen: ${needle}`,
  park: (yarn, side) => `${yarn} ${towards(side)} parken`,
  cut: (yarn) => `${yarn} abschneiden`,
  thread: (yarn) => `${yarn} einfädeln`,
  graft: (edge, down, up) =>
    [
      ...(down === null ? [] : [`hinein ${edge}${down}`]),
      ...(up === null ? [] : [`heraus ${edge}${up}`]),
    ].join(' '),
  bars: (from, through) => (from === through ? `Querfaden ${from}` : `Querfäden ${from} bis ${through}`),
  rowsOf: (of, from, through) => {
    const rows = `${{ waste: 'Hilfsgarn', hem: 'Saum', cord: 'Kordel' }[of]}reihe`;
    return from === through ? `${rows} ${from}` : `${rows}n ${from} bis ${through}`;
  },
  rounds: (from, through) => (from === through ? `Runde ${from}` : `Runden ${from} bis ${through}`),
  holes: (inThrough, outThrough) => `hinein ${inThrough}, heraus ${outThrough}`,
  back: 'auftrennen',
  mend: 'Korrektur',
  finished: 'fertig',

  pass: (at, of) => `Gang ${at} von ${of}`,
  row: (at, of) => `Reihe ${at} von ${of}`,
  move: (at, of) => `Formung ${at} von ${of}`,
  of: (at, of) => `${at} von ${of}`,
  step: (at, of) => `Schritt ${at} von ${of}`,
  wayStep: (at, of) => `${at} von ${of}`,

  rowComes: (row, of) => `Reihe ${row} von ${of} kommt`,
  rowsDone: (done, of) => `${done} von ${of} Reihen gestrickt`,
  stripe: (at, of) => `Streifen ${at} von ${of}`,

  done: (at, of) => `${at} von ${of} geschafft`,

  timeLeft: (phaseS, bagS) => `Teil ${time(phaseS)}, Beutel ${time(bagS)}`,
  bagTimeLeft: (bagS) => `Beutel ${time(bagS)}`,
  now: 'jetzt',
  make: 'wird',
  eyelet: (needle) => `${needle} bleibt leer in Arbeit: das Loch`,
  two: (needle) => `${needle} hält zwei Maschen`,
  outOfWork: (needle) => `${needle} außer Arbeit`,
  graftPath: ['hinein: nach hinten', 'heraus: zu dir', 'über die Maschenköpfe'],
  barPath: 'unter jedem Querfaden durch, eine Seite und dann die andere',
  slip: (to) => `nach ${towards(to)} gleiten`,
  front: 'vorn',
  behind: 'hinten',

  afterwards: 'dann',
  bagDone: 'Der Beutel ist fertig.',
  tooSmall: (columns, rows) => `zu klein: mindestens ${columns} × ${rows}`,
  reading: (at, of) =>
    at === of
      ? `Seite ${at} von ${of}: Enter geht zur Maschine zurück`
      : `Seite ${at} von ${of}: Enter geht weiter, Escape zurück zur Maschine`,
  typeToLeave: 'Der Beutel ist fertig: quit beendet',
  keysShort: 'Enter bestätigt; help zeigt mehr',
  keys: 'Enter bestätigt, ← nimmt zurück; oder tippe einen Befehl, etwa help',
  keysAscii: 'Enter bestätigt, <- nimmt zurück; oder tippe einen Befehl, etwa help',
  feeder: 'Fadenführer',
  emptyFeeder: 'Fadenführer leer',
  drawOff: 'draw off: zurück',
});
