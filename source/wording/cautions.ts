/**
 * Cautions, each at the step where it matters, and all of them on one page (common practice). Cord limits for toys for the
 * very young: 220 mm for a free cord that can form a noose and 380 mm round a noose, stretched by 25 N
 * (EN 71-1:2005+A8:2009, 5.4 b and c; later editions changed the clause). What compares is the cord's free end and the loop
 * that it makes drawn or tied, not the mouth. This bag is no toy, and local rules decide.
 */
import type { Plan } from '../planning/plan.ts';
import { irreversibleOf } from '../session/mend/mend.ts';
import { exhaustive } from '../shared/result.ts';
import { acts } from '../steps/acts.ts';
import { type Job, stepAt } from '../steps/job.ts';
import type { Step } from '../steps/step.ts';
import type { Words } from './words.ts';

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
      // Of two cords the last one tied says it for both.
      return step.act.kind === 'tie' && step.act.draw === 'first' ? null : cordCaution(plan, words);
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

const sayRestYourHands = (words: Words): string => words.prompt.rest.rest;

/** Said once, at the first press after half an hour. */
export const sayRest = (words: Words): string => `${words.prompt.rest.halfHour} ${sayRestYourHands(words)}`;

export const speakRest = (words: Words): string => words.prompt.rest.aloud;

/** More steps than these are counted, not listed. */
const mostListed = 4;

export function cautionLines(job: Job, words: Words): readonly string[] {
  return [
    ...[...cautionsOf(job, words)].map(([caution, steps]) => `${whenOf(steps, words)}: ${caution}`),
    `${words.prompt.cautions.forSwitch}: ${words.settings.cable}`,
    `${words.prompt.cautions.afterHalfHour}: ${sayRestYourHands(words)}`,
  ];
}

/** The steps of each caution, by what it says. */
function cautionsOf(job: Job, words: Words): ReadonlyMap<string, readonly number[]> {
  const found = new Map<string, number[]>();
  for (let number = 1; number <= job.stepCount; number++) {
    const caution = cautionOf(job.plan, stepAt(job, number), words);
    if (caution !== null) found.set(caution, [...(found.get(caution) ?? []), number]);
  }
  return found;
}

function whenOf(steps: readonly number[], words: Words): string {
  if (steps.length === 1) return words.prompt.cautions.atStep(steps[0] ?? 0);
  const shown = steps.slice(0, mostListed).map(String);
  return steps.length > mostListed
    ? words.prompt.cautions.atStepsOf(shown.join(', '), steps.length)
    : words.prompt.cautions.atSteps(shown);
}
