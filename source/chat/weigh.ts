/** What the scales show of a yarn, as it is typed: `weigh plum 22`. */
import type { Session } from '../session/session.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import { gramsPerOunce, type Units } from '../shared/units.ts';
import type { ChatFault, Intent } from './intent.ts';
import type { Amount, Weighed } from './replan-wish.ts';

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

const unitOf = (typed: string | undefined): Amount['unit'] =>
  typed === undefined ? null : typed.toLowerCase() === 'oz' ? 'oz' : 'g';

/** The name of a yarn as the brief spells it. */
export const spellYarn = ({ job }: Session, typed: string): string =>
  [...job.plan.brief.yarns.keys()].find((name) => name.toLowerCase() === typed.toLowerCase()) ?? typed;

const gramsOf = ({ value, unit }: Amount, units: Units): number =>
  (unit ?? units.mass) === 'oz' ? value * gramsPerOunce : value;

/** The command that keeps a weighing in the log. */
export const weighCommand = (session: Session, { yarn, amount }: Weighed, units: Units) =>
  ({ do: 'weigh', yarn: spellYarn(session, yarn), grams: gramsOf(amount, units) }) as const;
