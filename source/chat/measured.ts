/** The size of the finished bag, as it is typed: `measured 13.6 18`, `measured 13,6 cm x 18 cm`, `measured 5.4 by 7.1 in`. */
import type { MeasuredBag } from '../session/session.ts';
import { fail, type Result, succeed } from '../shared/result.ts';
import type { Units } from '../shared/units.ts';
import type { ChatFault, Intent } from './intent.ts';
import { inCm, lengthOf, lengthPattern } from './length.ts';
import type { Amount } from './replan-wish.ts';

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
  { width, depth }: { readonly width: Amount; readonly depth: Amount },
  units: Units,
): { readonly do: 'measured' } & Omit<MeasuredBag, 'done'> => ({
  do: 'measured',
  widthCm: inCm(width, units),
  depthCm: inCm(depth, units),
});
