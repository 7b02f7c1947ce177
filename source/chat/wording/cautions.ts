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
      return words.say`Needle hooks and latches are sharp: keep fingers clear while the carriage moves.`;
    case 'weights':
      return words.say`Weights fall: hang them with a hand under them, feet clear.`;
    case 'weights-off':
      return words.say`Take the weights off before any stitch is released; feet clear.`;
    case 'steam':
      return words.say`If you steam the bag: steam scalds, and it flattens man-made fibre.`;
    case 'cord':
      return cordCaution(plan, words);
    default:
      return exhaustive(hazard);
  }
}

/** A mark on a step that the hands cannot take back as it was done; null where they can. */
export const sayNoWayBack = (step: Step, words: Words): string | null =>
  irreversibleOf(step) === null ? null : words.say`Look twice: hands cannot take this back.`;

function cordCaution({ cord, brief }: Plan, words: Words): string {
  const { freeCordCm, loopCm } = toyCordLimits;
  const endCm = Math.round(brief.cord.tieCm);
  const cordCm = Math.ceil(cord.lengthCm);
  return words.say`Keep cords from small children: free ends of ${endCm} cm, tied a loop of ${cordCm} cm. EN 71-1:2005+A8:2009 let toys for the very young have ${freeCordCm} and ${loopCm} cm; see the edition in force. Local rules decide.`;
}
