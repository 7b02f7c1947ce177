/**
 * Cautions, each at the step where it matters (common practice). Cord limits for toys for the very young: 220 mm for a
 * free cord and 380 mm round a loop (EN 71-1); this bag is no toy, and local rules decide.
 */
import type { Plan } from '../../planning/plan.ts';
import { irreversibleOf } from '../../session/rip-back/irreversible.ts';
import { say } from '../../shared/say.ts';
import type { Step } from '../../steps/step.ts';

/** Published limits for cords on toys for the very young, in cm (EN 71-1). */
export const toyCordLimits = { freeCordCm: 22, loopCm: 38 };

/** What could hurt at this step and how to keep clear of it; null where nothing new does. */
export function cautionOf(plan: Plan, step: Step): string | null {
  switch (step.act.kind) {
    case 'set-needles':
      return say`Needle hooks and latches are sharp: keep fingers clear while the carriage moves.`;
    case 'hang-comb':
      return say`Weights fall: hang them with a hand under them, feet clear.`;
    case 'weights-off':
      return say`Take the weights off before any stitch is released; feet clear.`;
    case 'hide-ends':
      return say`If you steam the bag: steam scalds, and it flattens man-made fibre.`;
    case 'tie':
      return cordCaution(plan);
    default:
      return null;
  }
}

/** A mark on a step that the hands cannot take back as it was done; null where they can. */
export const sayNoWayBack = (step: Step): string | null =>
  irreversibleOf(step) === null ? null : say`Look twice: hands cannot take this back.`;

function cordCaution({ cord, size }: Plan): string {
  const { freeCordCm, loopCm } = toyCordLimits;
  const cordCm = Math.round(cord.lengthCm);
  const mouthCm = Math.round(size.mouthCm);
  return say`Keep cords from small children. This cord is ${cordCm} cm and the mouth ${mouthCm} cm round; toys for the very young may have ${freeCordCm} and ${loopCm} cm (EN 71-1). Local rules decide.`;
}
