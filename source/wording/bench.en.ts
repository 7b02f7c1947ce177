import type { Side } from '../bed/bed.ts';
import type { Amounts } from './amounts.ts';

export const bench = ({ time }: Amounts) => ({
  knit: (to: Side) => `knit ${to}`,
  out: (edge: Side, needle: string) => `${edge} edge, one out: ${needle}`,
  in: (edge: Side, needle: string) => `${edge} edge, one in: ${needle}`,
  park: (yarn: string, side: Side) => `park ${yarn} ${side}`,
  cut: (yarn: string) => `cut ${yarn}`,
  thread: (yarn: string) => `thread ${yarn}`,
  graft: (edge: 'A' | 'B', down: number | null, up: number | null) =>
    [...(down === null ? [] : [`down ${edge}${down}`]), ...(up === null ? [] : [`up ${edge}${up}`])].join(
      ' ',
    ),
  bars: (from: number, through: number) => (from === through ? `bar ${from}` : `bars ${from} to ${through}`),
  rowsOf: (of: 'waste' | 'hem' | 'cord', from: number, through: number) =>
    from === through ? `${of} row ${from}` : `${of} rows ${from} to ${through}`,
  rounds: (from: number, through: number) =>
    from === through ? `round ${from}` : `rounds ${from} to ${through}`,
  holes: (inThrough: number, outThrough: number) => `in ${inThrough}, out ${outThrough}`,
  back: 'rip back',
  mend: 'repair',
  finished: 'finished',

  pass: (at: number, of: number) => `pass ${at} of ${of}`,
  row: (at: number, of: number) => `row ${at} of ${of}`,
  move: (at: number, of: number) => `move ${at} of ${of}`,
  of: (at: number, of: number) => `${at} of ${of}`,
  step: (at: number, of: number) => `step ${at} of ${of}`,
  wayStep: (at: number, of: number) => `${at} of ${of}`,

  rowComes: (row: number, of: number) => `row ${row} of ${of} comes`,
  rowsDone: (done: number, of: number) => `${done} of ${of} rows done`,
  stripe: (at: number, of: number) => `stripe ${at} of ${of}`,

  done: (at: number, of: number) => `${at} of ${of} done`,

  timeLeft: (phaseS: number, bagS: number) => `part ${time(phaseS)}, bag ${time(bagS)}`,
  bagTimeLeft: (bagS: number) => `bag ${time(bagS)}`,
  now: 'now',
  make: 'make',
  eyelet: (needle: string) => `${needle} stays in work and empty: the eyelet`,
  two: (needle: string) => `${needle} holds two loops`,
  outOfWork: (needle: string) => `${needle} out of work`,
  graftPath: ['down: to the back', 'up: to you', 'over the ends of the loops'],
  barPath: 'under each bar, one side and then the other',
  slip: (to: Side) => `slip ${to}`,
  front: 'front',
  behind: 'back',

  afterwards: 'then',
  bagDone: 'The bag is finished.',
  tooSmall: (columns: number, rows: number) => `too small: ${columns} × ${rows} at least`,
  reading: (at: number, of: number): string =>
    at === of
      ? `page ${at} of ${of}: Enter goes back to the bench`
      : `page ${at} of ${of}: Enter goes on, Escape back to the bench`,
  typeToLeave: 'The bag is finished: type quit to leave',
  keysShort: 'Enter confirms; help shows more',
  keys: 'Enter confirms, ← takes back; or type a command, such as help',
  keysAscii: 'Enter confirms, <- takes back; or type a command, such as help',
  feeder: 'feeder',
  emptyFeeder: 'feeder empty',
  drawOff: 'draw off: back',
});

export type BenchWords = ReturnType<typeof bench>;
