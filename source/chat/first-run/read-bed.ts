/**
 * The needle bed: `120 needles 6 mm`, or its gauge by name and its needles, `mid 120`. Gauge names and their pitch: common
 * practice, no source. No gauge says how many needles there are: those are counted.
 */
import { fail, type Result, succeed } from '../../shared/result.ts';
import { type Amount, isLength, readAmounts, toCm } from './amounts.ts';
import type { AnswerFault, Values } from './answers.ts';

type BedAnswer = Values['bed'];

/** What Enter takes: round figures, of no bed that is built. */
export const practiceBed: BedAnswer = { needles: 120, pitchMm: 6 };

const gauges: readonly { readonly names: readonly string[]; readonly pitchMm: number }[] = [
  { names: ['fine', 'fein'], pitchMm: 3.6 },
  { names: ['standard'], pitchMm: 4.5 },
  { names: ['mid', 'medium', 'mittel'], pitchMm: 6.5 },
  { names: ['bulky', 'chunky', 'grob'], pitchMm: 9 },
];

const beside = [
  'by',
  'x',
  'and',
  'apart',
  'with',
  'mit',
  'pitch',
  'gauge',
  'bed',
  'mal',
  'und',
  'abstand',
  'teilung',
  'bett',
  'nadelbett',
];

/** More than this many of anything are needles: no bed has them so far apart. */
const widestPitchMm = 20;

export function readBed(line: string): Result<BedAnswer, AnswerFault> {
  const { amounts, others } = readAmounts(line);
  const named = gauges.find(({ names }) => names.some((name) => others.includes(name)));
  const stranger = others.find((word) => !beside.includes(word) && !named?.names.includes(word));
  const pitchMm = amounts.filter(isPitch).map(inMm);
  const needles = amounts.filter((amount) => !isPitch(amount)).map(({ value }) => value);
  const bed = {
    needles: needles[0],
    pitchMm: pitchMm[0] ?? named?.pitchMm,
  };
  const isWhole = pitchMm.length <= 1 && needles.length <= 1 && stranger === undefined;
  return isWhole && bed.needles !== undefined && bed.pitchMm !== undefined
    ? succeed({ needles: bed.needles, pitchMm: bed.pitchMm })
    : fail({ code: 'first-run/not-understood', question: 'bed', word: stranger ?? null });
}

const isPitch = ({ value, unit }: Amount): boolean =>
  isLength(unit) || (unit === null && value <= widestPitchMm);

const inMm = ({ value, unit }: Amount): number =>
  isLength(unit) && unit !== 'mm' ? Math.round(toCm(value, unit) * 100) / 10 : value;
