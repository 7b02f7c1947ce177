/**
 * Cautions, each at the step where it matters (common practice). Cord limits for toys for the very young: 220 mm for a free
 * cord that can form a noose and 380 mm round a noose, stretched by 25 N (EN 71-1:2005+A8:2009, 5.4 b and c; later editions
 * changed the clause). What compares is the cord's free end and the loop that it makes drawn or tied, not the mouth. This bag
 * is no toy, and local rules decide.
 */

import type { Plan } from '../../planning/plan.ts';
import { irreversibleOf } from '../../session/rip-back/irreversible.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import { acts } from '../../steps/acts.ts';
import type { Step } from '../../steps/step.ts';
import type { Words } from '../../wording/words.ts';

/** Published limits for cords on toys for the very young, in cm (EN 71-1:2005+A8:2009, 5.4). */
export const toyCordLimits = { freeCordCm: 22, loopCm: 38 };

/** What could hurt at this step and how to keep clear of it; null where nothing new does. */
export function cautionOf(plan: Plan, step: Step, words: Words): string | null {
  const { hazard } = acts[step.act.kind];
  switch (hazard) {
    case null:
      return null;
    case 'hooks':
      return words.prompt.cautions.hooks;
    case 'weights':
      return words.prompt.cautions.weights;
    case 'weights-off':
      return words.prompt.cautions.weightsOff;
    case 'steam':
      return words.prompt.cautions.steam;
    case 'cord':
      return cordCaution(plan, words);
    default:
      return exhaustive(hazard);
  }
}

/** A mark on a step that the hands cannot take back as it was done; null where they can. */
export const sayNoWayBack = (step: Step, words: Words): string | null =>
  irreversibleOf(step) === null ? null : words.prompt.cautions.lookTwice;

function cordCaution({ cord, brief }: Plan, words: Words): string {
  const { freeCordCm, loopCm } = toyCordLimits;
  const endCm = Math.round(brief.cord.tieCm);
  const cordCm = Math.ceil(cord.lengthCm);
  return words.prompt.cautions.cords(endCm, cordCm, freeCordCm, loopCm);
}
