/**
 * What to do, in the maker's words: one instruction a step, with the needles named in it. Aloud and across the room it is
 * said in the fewest words that still name them. Cautions stand each at the step where it matters (`steps/acts.ts`), and all of
 * them on one page (common practice).
 */

import { toyCordLimits } from '../planning/cord.ts';
import { kitOf, type Plan } from '../planning/plan.ts';
import { irreversibleOf } from '../session/mend/mend.ts';
import type { Warning } from '../settings/settings.ts';
import { harmless } from '../shared/plain-text.ts';
import { hazardAt } from '../steps/acts.ts';
import { type Job, stepAt } from '../steps/job.ts';
import type { Step } from '../steps/step.ts';
import { sayAct } from './by-kind.ts';
import type { Words } from './words.ts';

/** The instruction for a step, as plain text. */
export const sayStep = ({ act }: Step, words: Words): string => harmless(sayAct(words.steps, act));

/** What comes before the instruction when a press did nothing. */
export const speakWarning = (warning: Warning, words: Words): string =>
  warning === 'too-soon' ? words.prompt.tooSoonLookFirst : words.prompt.noPassIsDue;

/** A short spoken instruction, such as `left edge, one out, to L24, L22 stays empty`. */
export const speakStep = (step: Step | null, words: Words): string =>
  step ? harmless(sayAct(words.spoken, step.act)) : words.prompt.theBagIsFinished;

/** One or two words for the large view. */
export const shoutStep = ({ act }: Step, words: Words): string => harmless(sayAct(words.shouted, act));

export function sayTools(plan: Plan, { kit }: Words): readonly string[] {
  const needed = kitOf(plan);
  return [kit.tools(needed), kit.materials(needed)];
}

/** What could hurt at this step and how to keep clear of it; null where nothing new does. */
export function cautionOf(plan: Plan, step: Step, words: Words): string | null {
  const hazard = hazardAt(step);
  if (hazard === null) return null;
  return hazard === 'cord' ? cordCaution(plan, words) : words.prompt.cautions[hazard];
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
