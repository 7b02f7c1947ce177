/** The cord of a plan once its first rounds have been measured: how high a round is, is no guess any more. */
import { planCord } from './cord.ts';
import type { Plan } from './plan.ts';
import { planYarn } from './yarn-needs.ts';

/** The rounds that are knitted stay, though fewer would do. */
export function planCordAnew(
  plan: Plan,
  measured: { readonly rounds: number; readonly lengthCm: number },
): Plan {
  const roundsPer10Cm = (10 * measured.rounds) / measured.lengthCm;
  const brief = { ...plan.brief, cord: { ...plan.brief.cord, roundsPer10Cm } };
  const cord = planCord(brief, plan.gauge, plan.size.mouthCm, plan.eyelets, measured.rounds);
  return { ...plan, brief, cord, yarn: planYarn(brief, plan.gauge, { ...plan, cord }) };
}
