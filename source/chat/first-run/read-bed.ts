/** The needle bed: `150 needles 6.5 mm`, or the name of its gauge. Beds as they are commonly built (common practice, no source). */
import { fail, type Result, succeed } from '../../shared/result.ts';
import { type Amount, isLength, readAmounts, toCm } from './amounts.ts';
import type { AnswerFault, Values } from './answers.ts';

type Bed = Values['bed'];

export const standardBed: Bed = { needles: 200, pitchMm: 4.5 };

const usualBeds: readonly (Bed & { readonly names: readonly string[] })[] = [
  { names: ['fine', 'fein'], needles: 250, pitchMm: 3.6 },
  { names: ['standard'], ...standardBed },
  { names: ['mid', 'medium', 'mittel'], needles: 150, pitchMm: 6.5 },
  { names: [], needles: 140, pitchMm: 7 },
  { names: [], needles: 100, pitchMm: 8 },
  { names: ['bulky', 'chunky', 'grob'], needles: 112, pitchMm: 9 },
];

const beside = [
  'by',
  'x',
  'and',
  'apart',
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

export function readBed(line: string): Result<Bed, AnswerFault> {
  const { amounts, words } = readAmounts(line);
  const named = usualBeds.find(({ names }) => names.some((name) => words.includes(name)));
  const stranger = words.find((word) => !beside.includes(word) && !named?.names.includes(word));
  const pitchMm = amounts.filter(isPitch).map(inMm);
  const needles = amounts.filter((amount) => !isPitch(amount)).map(({ value }) => value);
  const bed = {
    needles: needles[0] ?? named?.needles ?? usualBeds.find((usual) => usual.pitchMm === pitchMm[0])?.needles,
    pitchMm: pitchMm[0] ?? named?.pitchMm ?? usualBeds.find((usual) => usual.needles === needles[0])?.pitchMm,
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
