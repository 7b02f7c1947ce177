/** What may have happened, each kind of slip once, and the mends under their numbers. */

import { loopRuns } from '../bed/reverse-of.ts';
import { momentOf } from '../session/diagnose/slip-moment.ts';
import type { Story } from '../session/diagnose/story.ts';
import type { HandStep, Mend } from '../session/mend/mend.ts';
import type { Slip } from '../session/mend/slip.ts';
import { bedAtPlace } from '../session/rip-back/bed-at-place.ts';
import { type Job, rowAt, stepAt } from '../steps/job.ts';
import { formatHandStep } from './finding.ts';
import type { SlipTold } from './slips.en.ts';
import { sayStep } from './steps.ts';
import type { Words } from './words.ts';

/** More explanations than this help nobody. */
const kindsShown = 3;

/** One sentence for each kind that fits, the likeliest first. */
export function sayStories(job: Job, stories: readonly Story[], words: Words): readonly string[] {
  const { slips } = words;
  const byKind = new Map<string, Story[]>();
  for (const story of stories) {
    const key = story.slips.map(({ is }) => is).join();
    byKind.set(key, [...(byKind.get(key) ?? []), story]);
  }
  return [...byKind.values()].slice(0, kindsShown).map(([first, ...others], i) => {
    const told = (first?.slips ?? []).map((slip) => slips.slip(toldOf(job, slip, first as Story, others)));
    const sentence = told.length > 1 ? slips.both(told) : (told[0] ?? '');
    return i === 0 ? sentence : slips.or(sentence);
  });
}

function toldOf(job: Job, slip: Slip, story: Story, others: readonly Story[]): SlipTold {
  const { row, stripe, move } = momentOf(job, slip);
  const orBefore = others.some(({ slips }) =>
    slips.some((other) => {
      const at = momentOf(job, other);
      return other.is === slip.is && (at.stripe !== stripe || at.move !== move);
    }),
  );
  const planned = bedAtPlace(job, story.done);
  const now = job.outline.stripeOfRow[rowAt(job, story.done)] ?? 0;
  return {
    slip,
    row: slip.is === 'work-dropped' ? rowAt(job, slip.step - 1) : row,
    stripe,
    orBefore,
    isNow: stripe === now + 1,
    due: dueYarn(job, slip, planned.feeder),
    carriage: planned.carriage,
    hangs: slip.is === 'work-dropped' ? loopRuns(bedAtPlace(job, slip.step - 1)) : [],
  };
}

function dueYarn(job: Job, slip: Slip, feeder: string | null): string | null {
  if (slip.is === 'wrong-yarn-in-feeder') return feeder;
  if (!('used' in slip)) return null;
  const stripe = 'stripe' in slip ? slip.stripe : (stepAt(job, slip.step).stripe ?? 1);
  return job.plan.stripes[stripe - 1]?.yarn ?? '';
}

/** Steps of a way shown before it is taken. */
const stepsShown = 3;

/** A mend under its number: how, the first of its steps, and what will show of it. */
export function sayMend(mend: Mend, number: number, isOnly: boolean, words: Words): readonly string[] {
  const { slips } = words;
  const hands = mend.steps.map((step) => sayHands(step, words));
  const shown = hands.length <= stepsShown ? hands : hands.slice(0, 1);
  const more = hands.length - shown.length;
  return [
    `  ${number}  ${slips.heading(mend.how, mend.thenDone + 1, isOnly)}`,
    ...shown.map((text) => `     ${text}`),
    ...(more > 0 ? [`     ${words.finding.and(more)}`] : []),
    ...sayShows(mend, words).map((text) => `     ${text}`),
  ];
}

export const sayShows = ({ shows }: Mend, words: Words): readonly string[] =>
  shows.length === 0 ? [] : [words.slips.shows(shows)];

/** A mend in one line. */
export const sayWholeMend = (mend: Mend, words: Words): string =>
  [
    words.slips.heading(mend.how, mend.thenDone + 1, true),
    ...mend.steps.map((step) => sayHands(step, words)),
    ...sayShows(mend, words),
  ].join(' ');

const sayHands = (step: HandStep, words: Words): string =>
  step.planned ? sayStep(step.planned, words) : formatHandStep(step, words);
