/** How many steps the cord has, and where in it a step or a round stands; `cord.ts` makes the steps. */
import type { Draw } from '../planning/eyelets.ts';
import type { Outline } from './outline.ts';

/** Set needles, cast on, thread, plain row, set the carriage to slip. */
export const before = 5;
/** Rounds that one step holds. */
const roundsAtOnce = 10;
/** After so many the cord is measured: how high a round is, is a guess until then. */
export const roundsToMeasure = 20;

export const isFlat = ({ plan }: Outline): boolean => plan.cord.flatSeamCm !== null;

/** Measure, draw through; a flat cord is sewn too. */
const behind = (outline: Outline): number => (isFlat(outline) ? 3 : 2);

export const roundSteps = ({ plan }: Outline): number => Math.ceil(plan.cord.rounds / roundsAtOnce);
/** Steps of rounds before the measure in between; none where the cord is over by then. */
export const stepsToMeasure = ({ plan }: Outline): number =>
  plan.cord.rounds > roundsToMeasure ? roundsToMeasure / roundsAtOnce : 0;
const measuresOnTheWay = (outline: Outline): number => (stepsToMeasure(outline) > 0 ? 1 : 0);

/** From empty needles to a cord drawn off; only the first is measured on the way, the second is made like it. */
const knittingSteps = (outline: Outline, draw: Draw): number =>
  before + roundSteps(outline) + (draw === 'second' ? 0 : measuresOnTheWay(outline)) + behind(outline);

/** Two holes a step, and the ends tied. */
const threadingSteps = ({ plan }: Outline): number => plan.eyelets.used.length / 2 + 1;

const drawsOf = ({ plan }: Outline): readonly Draw[] =>
  plan.cord.draws === 2 ? ['first', 'second'] : ['only'];

/** Each cord knitted, then each threaded: whose turn it is, and how far it has come. */
function* partsOf(outline: Outline) {
  for (const draw of drawsOf(outline)) yield { draw, knits: true, count: knittingSteps(outline, draw) };
  for (const draw of drawsOf(outline)) yield { draw, knits: false, count: threadingSteps(outline) };
}

export function partAt(outline: Outline, local: number) {
  let from = 0;
  for (const { draw, knits, count } of partsOf(outline)) {
    if (local < from + count) return { draw, knits, local: local - from };
    from += count;
  }
  throw new Error(`the cord has ${from} steps, not ${local + 1}`);
}

export const countCord = (outline: Outline): number =>
  [...partsOf(outline)].reduce((sum, { count }) => sum + count, 0);

/** Cords that are drawn off once so many steps of the phase are done; a flat one is still to be sewn. */
export function cordsDone(outline: Outline, steps: number): number {
  const toSew = isFlat(outline) ? 1 : 0;
  let end = 0;
  return drawsOf(outline).filter((draw) => {
    end += knittingSteps(outline, draw);
    return steps >= end - toSew;
  }).length;
}

/** Which cord a step of the cord belongs to. */
export const drawAt = (outline: Outline, local: number): Draw => partAt(outline, local).draw;

/** Rounds of all cords; those of the second are counted on from the first. */
export const roundsInAll = ({ plan }: Outline): number => plan.cord.draws * plan.cord.rounds;

/** Steps of the cord before the one that knits round `number`, or that row of a flat cord. */
export function stepsBeforeRound(outline: Outline, number: number): number {
  const { rounds } = outline.plan.cord;
  if (number > rounds)
    return knittingSteps(outline, 'first') + before + Math.floor((number - rounds - 1) / roundsAtOnce);
  const part = Math.floor((number - 1) / roundsAtOnce);
  return before + part + (part >= stepsToMeasure(outline) ? measuresOnTheWay(outline) : 0);
}

/** Rounds knitted by the end of the steps of rounds before `number`. */
export const roundsBefore = ({ plan }: Outline, number: number): number =>
  Math.min(plan.cord.rounds, number * roundsAtOnce);

export const passesARound = (outline: Outline): number => (isFlat(outline) ? 1 : 2);
