/**
 * Answers in the transcript: few and short lines, each with what to type next. Each kind of slip is told once, its mends under
 * their numbers.
 */
import { loopRuns } from '../bed/reverse-of.ts';
import type { OpenQuestion } from '../session/diagnose/question.ts';
import { momentOf } from '../session/diagnose/slip-moment.ts';
import type { Story } from '../session/diagnose/story.ts';
import type { Place } from '../session/locate/locate.ts';
import { type Fact, facts, type Looks } from '../session/locate/seen.ts';
import type { HandStep, Mend } from '../session/mend/mend.ts';
import type { Slip } from '../session/mend/slip.ts';
import { bedAtPlace } from '../session/rip-back/bed-at-place.ts';
import type { RipBack } from '../session/rip-back/rip-back.ts';
import { type Job, rowAt, stepAt } from '../steps/job.ts';
import { formatHandStep, formatLook, formatRipBack } from './finding.ts';
import type { SlipTold } from './slips.en.ts';
import { sayStep } from './steps.ts';
import type { Words } from './words.ts';

/** The one place. */
export const sayOnly = (place: Place, words: Words, number = 1): readonly string[] => [
  words.finding.here(formatLook(place, words)),
  words.finding.goThere(number, place.done + 1),
];

/** A place that looks so, while something may be wrong instead. */
export const sayMaybe = (place: Place, words: Words): string => words.finding.maybe(formatLook(place, words));

/** How many look alike, and the first few facts that would tell them apart. */
export function sayMany(howMany: number, tellApart: readonly Fact[], words: Words): string {
  const facts = tellApart.slice(0, 4).map((fact) => words.finding.facts[fact]);
  const many = words.finding.many(howMany);
  return facts.length === 0 ? many : `${many} ${words.finding.apartBy(facts)}`;
}

/** Places under their numbers, by the facts that are not the same in all that look alike. */
export function sayPlaces(
  listed: readonly Place[],
  alike: readonly Place[],
  words: Words,
): readonly string[] {
  const telling = facts.filter((fact) => alike.some(({ looks }) => looks[fact] !== alike[0]?.looks[fact]));
  const lines = listed.map(({ done, looks }, i) => {
    const shown = telling.map((fact) => showFact(fact, looks, words)).join(', ');
    return `  ${i + 1}  ${words.finding.stepNext(done + 1)}${shown === '' ? '' : `: ${shown}`}`;
  });
  return [words.finding.several(alike.length), ...lines];
}

function showFact(fact: Fact, looks: Looks, words: Words): string {
  if (fact === 'carriage') return words.finding.carriageAt(looks.carriage);
  const look = looks[fact];
  if (look === null) return `${words.finding.facts[fact]} ${words.finding.nothingIn}`;
  return `${words.finding.facts[fact]} ${typeof look === 'string' ? words.prompt.yarn(look) : look}`;
}

/** The most telling question, and how to answer it. */
const sayQuestion = (fact: Fact, words: Words): string =>
  words.finding.orUnsure(words.finding.asks[fact], words.finding.answers[fact]);

/** Nothing in the plan looks like that and no one slip explains it: which single thing may have been read wrong. */
export const sayNoSlip = (
  doubtful: readonly { readonly name: string; readonly place: Place }[],
  words: Words,
): readonly string[] => [
  words.finding.noSlip,
  doubtful.length === 0 ? words.finding.readAgain : words.finding.oneAmiss,
  ...doubtful.map(({ name, place }) => words.finding.without(name, place.done + 1)),
];

/** Steps of a way shown before it is taken. */
const stepsShown = 3;

/** How the mends above are taken. */
export const sayTake = (first: number, last: number, words: Words): string =>
  first === last ? words.finding.guided(first) : words.finding.guidedOne;

/** The way back before it is taken: how far, what cannot be undone, and its first steps. */
export function sayWayBack(back: RipBack, words: Words): readonly string[] {
  const texts = back.steps.map((step) => formatHandStep(step, words));
  const more = texts.length - stepsShown;
  return [
    formatRipBack(back, words),
    ...texts.slice(0, stepsShown).map((text, i) => `  ${i + 1}  ${text}`),
    ...(more > 0 ? [`  ${words.finding.more(more)}`] : []),
    words.finding.guideBack,
  ];
}

/** A question that tells explanations apart, and how it is answered. */
export function sayAsked(asked: OpenQuestion, words: Words): string {
  const { slips } = words;
  switch (asked.about) {
    case 'fact':
      return sayQuestion(asked.fact, words);
    case 'yarn-where':
      return slips.yarnWhere(asked.yarn);
    case 'row-of-what':
      return slips.rowOfWhat(asked.row);
    case 'leave-way':
      return slips.leaveWay(asked.back, asked.at, asked.of, asked.staysOnIt);
    case 'many-steps':
      return slips.standsForMany(asked.from, asked.through, asked.part, asked.draw, asked.round);
    default:
      return slips.question(asked.about, asked.which);
  }
}

/** More explanations than this help nobody. */
const kindsShown = 3;

/** One sentence for each kind that fits, the likeliest first; where something was said before them, each as an `or`. */
export function sayStories(
  job: Job,
  stories: readonly Story[],
  isFirst: boolean,
  words: Words,
): readonly string[] {
  const { slips } = words;
  const byKind = new Map<string, Story[]>();
  for (const story of stories) {
    const key = story.slips
      .map(({ is }) => is)
      .toSorted()
      .join();
    byKind.set(key, [...(byKind.get(key) ?? []), story]);
  }
  return [...byKind.values()].slice(0, kindsShown).map(([first, ...others], i) => {
    const told = (first?.slips ?? []).map((slip) => slips.slip(toldOf(job, slip, first as Story, others)));
    const sentence = told.length > 1 ? slips.both(told) : (told[0] ?? '');
    return i === 0 && isFirst ? sentence : slips.or(sentence);
  });
}

function toldOf(job: Job, slip: Slip, story: Story, others: readonly Story[]): SlipTold {
  const { row, stripe, move } = momentOf(job, slip);
  const orBefore = others.some(
    ({ slips }) =>
      !slips.some((other) => {
        const at = momentOf(job, other);
        return other.is === slip.is && at.stripe === stripe && at.move === move;
      }),
  );
  const planned = bedAtPlace(job, story.done);
  const now = job.outline.stripeOfRow[rowAt(job, story.done)] ?? 0;
  return {
    slip,
    row: rowTold(job, slip, story) ?? row,
    stripe,
    orBefore,
    isNow: stripe === now + 1,
    due: dueYarn(job, slip, planned.feeder),
    carriage: planned.carriage,
    hangs: slip.is === 'work-dropped' ? loopRuns(bedAtPlace(job, slip.step - 1)) : [],
  };
}

/** Of what is no slip of a row, the row that was knitted last. */
function rowTold(job: Job, slip: Slip, story: Story): number | null {
  if (slip.is === 'work-dropped') return rowAt(job, slip.step - 1);
  return slip.is === 'carriage-wrong-side' ? rowAt(job, story.done) : null;
}

function dueYarn(job: Job, slip: Slip, feeder: string | null): string | null {
  if (slip.is === 'wrong-yarn-in-feeder') return feeder;
  if (!('used' in slip)) return null;
  const stripe = 'stripe' in slip ? slip.stripe : (stepAt(job, slip.step).stripe ?? 1);
  return job.plan.stripes[stripe - 1]?.yarn ?? '';
}

/** Weights come off before every ripping back. */
const isTelling = ({ care }: HandStep): boolean => care?.is !== 'weights-off';

/** A mend under its number: how, the first of its steps, and what will show of it. */
export function sayMend(mend: Mend, number: number, isOnly: boolean, words: Words): readonly string[] {
  const { slips } = words;
  const few = mend.steps.length <= stepsShown;
  const shown = (few ? mend.steps : mend.steps.filter(isTelling).slice(0, 1)).map((step) =>
    sayHands(step, words),
  );
  const more = mend.steps.length - shown.length;
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
