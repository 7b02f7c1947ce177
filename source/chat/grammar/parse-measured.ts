/**
 * What was measured or weighed, as it is typed: `weigh plum 22`, `cord 7.4 cm`, and the finished bag as `measured 13.6 18`,
 * `measured 13,6 cm x 18 cm` or `measured 5.4 by 7.1 in`; and behind `replan` what has changed: the piece as it measures, a yarn
 * as it weighs, another colour, fewer rows or more.
 */
import type { MeasuredBag, Session } from '../../session/session.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import { gramsPerOunce, mmPerInch, type Units } from '../../shared/units.ts';
import type { Words } from '../../wording/words.ts';
import type { ChatFault, Intent, MeasuredAmount, ReplanWish, Weighed } from './intent.ts';

const number = '(\\d+(?:[.,]\\d+)?)';
/** Two groups: the number and its unit. */
const length = `${number}\\s*(mm|cm|in)?`;
const weight = `${number}\\s*(g|oz)?`;

const decimal = (text: string | undefined): number => Number((text ?? '').replace(',', '.'));

const amountOf = (value: string | undefined, unit: string | undefined): MeasuredAmount => ({
  value: decimal(value),
  unit: (unit?.toLowerCase() ?? null) as MeasuredAmount['unit'],
});

/** Without a unit it is in the maker's own. */
export function inCm({ value, unit }: MeasuredAmount, units: Units): number {
  const written = unit ?? units.length;
  return written === 'in' ? (value * mmPerInch) / 10 : written === 'mm' ? value / 10 : value;
}

const weighUsage = 'weigh plum 22 g';
const weighed = new RegExp(`^(.+?)\\s+${weight}$`, 'i');

/** The amount may have its unit behind it, with a blank between or without. */
export function parseWeigh(rest: string): Result<Intent, ChatFault> {
  if (rest === '') return fail({ code: 'chat/needs-more', usage: weighUsage });
  const found = weighed.exec(rest);
  if (!found) return fail({ code: 'chat/not-a-weighing', text: rest, usage: weighUsage });
  const [, yarn = '', value, unit] = found;
  return succeed({ kind: 'weigh', weighed: { yarn, amount: amountOf(value, unit) } });
}

/** The name of a yarn as the brief spells it. */
export const spellYarn = ({ job }: Session, typed: string): string =>
  [...job.plan.brief.yarns.keys()].find((name) => name.toLowerCase() === typed.toLowerCase()) ?? typed;

const gramsOf = ({ value, unit }: MeasuredAmount, units: Units): number =>
  (unit ?? units.mass) === 'oz' ? value * gramsPerOunce : value;

/** The command that keeps a weighing in the log. */
export const weighCommand = (session: Session, { yarn, amount }: Weighed, units: Units) =>
  ({ do: 'weigh', yarn: spellYarn(session, yarn), grams: gramsOf(amount, units) }) as const;

export const measuredUsage = 'measured 13.6 18';

const twoSizes = new RegExp(`^${length}(?:\\s*(?:by|x|×|mal|auf)\\s*|\\s+)${length}$`, 'i');

/** Width, then depth. A unit behind the second one alone is that of both. */
export function parseMeasured(rest: string): Result<Intent, ChatFault> {
  if (rest === '') return fail({ code: 'chat/needs-more', usage: measuredUsage });
  const found = twoSizes.exec(rest);
  if (!found) return fail({ code: 'chat/not-two-sizes', text: rest, usage: measuredUsage });
  const [, width, widthUnit, depth, depthUnit] = found;
  return succeed({
    kind: 'measured',
    width: amountOf(width, widthUnit ?? depthUnit),
    depth: amountOf(depth, depthUnit),
  });
}

/** The command that keeps a bag's size in the log. */
export const measuredCommand = (
  { width, depth }: { readonly width: MeasuredAmount; readonly depth: MeasuredAmount },
  units: Units,
): { readonly do: 'measured' } & Omit<MeasuredBag, 'done'> => ({
  do: 'measured',
  widthCm: inCm(width, units),
  depthCm: inCm(depth, units),
});

export const cordUsage = 'cord 7.4';

const oneLength = new RegExp(`^${length}$`, 'i');

export function parseCordLength(rest: string): Result<Intent, ChatFault> {
  if (rest === '') return fail({ code: 'chat/needs-more', usage: cordUsage });
  const found = oneLength.exec(rest);
  if (!found) return fail({ code: 'chat/not-a-length', text: rest, usage: cordUsage });
  return succeed({ kind: 'cord-length', length: amountOf(found[1], found[2]) });
}

/** Words that may follow `replan`. */
export const replanWords: readonly string[] = ['shorter', 'longer', 'rows', 'weigh', 'colour', 'cord'];

const ownWords: ReadonlySet<string> = new Set([...replanWords, 'stitches', 'row', 'to']);
const replanUsage = 'replan 20 stitches 9.8 cm 30 rows 10.5 cm';
/** A yarn that the bag has none of comes with its colour and thickness. */
const newYarn = `(?:\\s+(#[0-9a-f]{6})\\s+${number}(?:\\s*m)?)?`;

export function parseReplan(rest: string, words: Words): Result<Intent, ChatFault> {
  let left = ` ${rest
    .split(/\s+/)
    .map((word) => words.understand(word, ownWords))
    .join(' ')} `;
  /** Takes the first match out of what is left to read. */
  const take = (pattern: string): RegExpExecArray | null => {
    const match = new RegExp(`\\s${pattern}(?=\\s|$)`, 'i').exec(left);
    if (match) left = left.replace(match[0], '');
    return match;
  };
  const cord = take(`cord\\s+(?:in\\s+)?(.+?)${newYarn}${beforeNext}`);
  const recolour = take(`colou?r\\s+(.+?)\\s+to\\s+(.+?)${newYarn}\\s*$`);
  const scales: Weighed[] = [];
  for (let match = take(weighing); match; match = take(weighing)) {
    scales.push({ yarn: match[1] ?? '', amount: amountOf(match[2], match[3]) });
  }
  const stitches = measured(take(`(\\d+)\\s*(?:stitches|stitch)\\s+${length}(?=\\s|$)`));
  const rows = measured(take(`(\\d+)\\s*rows?\\s+${length}(?=\\s|$)`));
  const nothing = [stitches, rows].find((one) => one && !(one.count > 0 && one.length.value > 0));
  if (nothing) return fail({ code: 'chat/not-a-measurement', word: rest, usage: replanUsage });
  const rowsRound = take('rows\\s+(\\d+)') ?? take('(\\d+)\\s*rows');
  const towards = take('(shorter|longer|(?:stop\\s+)?early)')?.[1]?.toLowerCase();
  const word = left.trim();
  if (word !== '') return fail({ code: 'chat/not-a-measurement', word, usage: replanUsage });
  const wanted = towards === undefined ? 'any' : towards === 'longer' ? 'longer' : 'shorter';
  return succeed({
    kind: 'replan',
    wish: {
      stitches,
      rows,
      weighed: scales,
      recolour: recolour && { from: recolour[1]?.trim() ?? '', ...otherYarn(recolour.slice(2)) },
      cord: cord && otherYarn(cord.slice(1)),
      want: rowsRound ? Number(rowsRound[1]) : wanted,
    },
  });
}

const weighing = `weigh(?:s|ed)?\\s+(.+?)\\s+${weight}`;

function measured(match: RegExpExecArray | null): ReplanWish['rows'] {
  return match && { count: Number(match[1]), length: amountOf(match[2], match[3]) };
}

/** What may follow the cord's yarn. */
const beforeNext = '(?=\\s+(?:weigh(?:s|ed)?|colou?r|rows|shorter|longer|\\d+\\s*(?:stitch|row))|\\s*$)';

const otherYarn = ([to = '', colour, metres]: readonly (string | undefined)[]) => ({
  to: to.trim(),
  colour: colour?.toLowerCase() ?? null,
  metresPer100g: metres === undefined ? null : decimal(metres),
});
