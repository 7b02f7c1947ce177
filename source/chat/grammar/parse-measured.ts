/**
 * What was measured or weighed, as it is typed: `weigh plum 22`, `cord 7.4 cm`, and the finished bag as `measured 13.6 18`,
 * `measured 13,6 cm x 18 cm` or `measured 5.4 by 7.1 in`.
 */
import type { MeasuredBag, Session } from '../../session/session.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import { gramsPerOunce, mmPerInch, type Units } from '../../shared/units.ts';
import type { ChatFault, Intent, MeasuredAmount, Weighed } from './intent.ts';

/** Two groups: the number and its unit. */
const lengthPattern = '(\\d+(?:[.,]\\d+)?)\\s*(mm|cm|in)?';

const lengthOf = (value: string | undefined, unit: string | undefined): MeasuredAmount => ({
  value: Number((value ?? '').replace(',', '.')),
  unit: (unit?.toLowerCase() ?? null) as MeasuredAmount['unit'],
});

/** Without a unit it is in the maker's own. */
export function inCm({ value, unit }: MeasuredAmount, units: Units): number {
  const written = unit ?? units.length;
  return written === 'in' ? (value * mmPerInch) / 10 : written === 'mm' ? value / 10 : value;
}

const usage = 'weigh plum 22 g';

/** The amount may have its unit behind it, with a blank between or without. */
export function parseWeigh(rest: string): Result<Intent, ChatFault> {
  if (rest === '') return fail({ code: 'chat/needs-more', usage });
  const found = /^(.+?)\s+(\d+(?:[.,]\d+)?)\s*(g|oz)?$/i.exec(rest);
  if (!found) return fail({ code: 'chat/not-a-weighing', text: rest, usage });
  const [, yarn = '', value = '', unit] = found;
  const amount = { value: Number(value.replace(',', '.')), unit: unitOf(unit) };
  return succeed({ kind: 'weigh', weighed: { yarn, amount } });
}

const unitOf = (typed: string | undefined): MeasuredAmount['unit'] =>
  typed === undefined ? null : typed.toLowerCase() === 'oz' ? 'oz' : 'g';

/** The name of a yarn as the brief spells it. */
export const spellYarn = ({ job }: Session, typed: string): string =>
  [...job.plan.brief.yarns.keys()].find((name) => name.toLowerCase() === typed.toLowerCase()) ?? typed;

const gramsOf = ({ value, unit }: MeasuredAmount, units: Units): number =>
  (unit ?? units.mass) === 'oz' ? value * gramsPerOunce : value;

/** The command that keeps a weighing in the log. */
export const weighCommand = (session: Session, { yarn, amount }: Weighed, units: Units) =>
  ({ do: 'weigh', yarn: spellYarn(session, yarn), grams: gramsOf(amount, units) }) as const;

export const measuredUsage = 'measured 13.6 18';

const twoSizes = new RegExp(`^${lengthPattern}(?:\\s*(?:by|x|×|mal|auf)\\s*|\\s+)${lengthPattern}$`, 'i');

/** Width, then depth. A unit behind the second one alone is that of both. */
export function parseMeasured(rest: string): Result<Intent, ChatFault> {
  if (rest === '') return fail({ code: 'chat/needs-more', usage: measuredUsage });
  const found = twoSizes.exec(rest);
  if (!found) return fail({ code: 'chat/not-two-sizes', text: rest, usage: measuredUsage });
  const [, width, widthUnit, depth, depthUnit] = found;
  return succeed({
    kind: 'measured',
    width: lengthOf(width, widthUnit ?? depthUnit),
    depth: lengthOf(depth, depthUnit),
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

const oneLength = new RegExp(`^${lengthPattern}$`, 'i');

export function parseCordLength(rest: string): Result<Intent, ChatFault> {
  if (rest === '') return fail({ code: 'chat/needs-more', usage: cordUsage });
  const found = oneLength.exec(rest);
  if (!found) return fail({ code: 'chat/not-a-length', text: rest, usage: cordUsage });
  return succeed({ kind: 'cord-length', length: lengthOf(found[1], found[2]) });
}
