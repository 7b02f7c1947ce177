/** Answers in the transcript: few and short lines, each with what to type next. */

import type { Question } from '../../session/diagnose/diagnose.ts';
import { isShapingSlip } from '../../session/diagnose/slip.ts';
import type { Story } from '../../session/diagnose/story.ts';
import type { Place } from '../../session/locate/locate.ts';
import { type Fact, facts, type Looks } from '../../session/locate/seen.ts';
import type { RipBack } from '../../session/rip-back/rip-back.ts';
import type { Session } from '../../session/session.ts';
import type { Words } from '../../wording/words.ts';
import { formatHandStep, formatLook, formatQuestion, formatRipBack } from './finding.ts';
import { sayPlace } from './place.ts';
import { sayYarn } from './yarns.ts';

export const sayHere = (session: Session, words: Words): string =>
  words.say`That is where you are: ${sayPlace(session, words)}`;

export const sayHereToo = (session: Session, words: Words): string =>
  words.say`Where you are looks like that too: ${sayPlace(session, words)}`;

/** The one place. */
export const sayOnly = (place: Place, words: Words, number = 1): readonly string[] => [
  words.say`It is here: ${formatLook(place, words)}.`,
  words.say`To go there type choose ${number}, or go step ${place.done + 1}.`,
];

/** How many look alike, and the first few facts that would tell them apart. */
export function sayMany(howMany: number, tellApart: readonly Fact[], words: Words): string {
  const facts = tellApart.slice(0, 4).map((fact) => factLabels[fact](words));
  const many = words.say`${howMany} places look like that.`;
  return facts.length === 0
    ? many
    : `${many} ${words.say`Apart they are told by ${words.amounts.choice(facts)}.`}`;
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
    return `  ${i + 1}  ${words.say`step ${done + 1} next`}${shown === '' ? '' : `: ${shown}`}`;
  });
  return [words.say`${alike.length} places look like that; choose and a number goes to one:`, ...lines];
}

const factLabels: Readonly<Record<Fact, (words: Words) => string>> = {
  carriage: (words: Words) => words.say`carriage`,
  lastColour: (words: Words) => words.say`last row`,
  feeder: (words: Words) => words.say`feeder`,
  left: (words: Words) => words.say`left edge`,
  right: (words: Words) => words.say`right edge`,
  stitches: (words: Words) => words.say`needles with loops`,
  wasteRows: (words: Words) => words.say`waste rows`,
  stripesCounted: (words: Words) => words.say`stripes`,
  rowCounter: (words: Words) => words.say`row counter`,
  rowsOfColour: (words: Words) => words.say`rows of that colour`,
};

function showFact(fact: Fact, looks: Looks, words: Words): string {
  if (fact === 'carriage') return words.say`carriage ${looks.carriage}`;
  const look = looks[fact];
  if (look === null) return `${factLabels[fact](words)} ${words.say`empty`}`;
  return `${factLabels[fact](words)} ${typeof look === 'string' ? sayYarn(look, words) : look}`;
}

const answers: Readonly<Record<Fact, (words: Words) => string>> = {
  carriage: (words: Words) => words.say`carriage left`,
  lastColour: (words: Words) => words.say`the yarn`,
  feeder: (words: Words) => words.say`feeder and the yarn`,
  left: (words: Words) => words.say`left and the needle`,
  right: (words: Words) => words.say`right and the needle`,
  stitches: (words: Words) => words.say`stitches and the count`,
  wasteRows: (words: Words) => words.say`waste and the count`,
  stripesCounted: (words: Words) => words.say`stripes and the count`,
  rowCounter: (words: Words) => words.say`counter and the count`,
  rowsOfColour: (words: Words) => words.say`the count in this stripe`,
};

/** The most telling question, and how to answer it. */
export const sayQuestion = (fact: Fact, words: Words): string =>
  words.say`${formatQuestion(fact, words)} Type find and ${answers[fact](words)}; or find unsure.`;

/** Nothing in the plan looks like that and no one slip explains it: which single thing may have been read wrong. */
export const sayNoSlip = (
  doubtful: readonly { readonly name: string; readonly place: Place }[],
  words: Words,
): readonly string[] => [
  words.say`No place in this bag looks like that, and no one slip explains it.`,
  doubtful.length === 0
    ? words.say`Read it again, and leave out what you are least sure of.`
    : words.say`One thing may be read wrong. It would fit:`,
  ...doubtful.map(({ name, place }) => words.say`  without ${name}: step ${place.done + 1} comes next`),
];

/** Steps of a way shown before it is taken. */
const stepsShown = 3;

/** How the mends above are taken. */
export const sayTake = (first: number, last: number, words: Words): string =>
  first === last
    ? words.say`To be guided through it, type choose ${first}.`
    : words.say`To be guided through one of them, type choose and its number.`;

/** The way back before it is taken: how far, what cannot be undone, and its first steps. */
export function sayWayBack(back: RipBack, words: Words): readonly string[] {
  const texts = back.steps.map((step) => formatHandStep(step, words));
  const more = texts.length - stepsShown;
  return [
    formatRipBack(back, words),
    ...texts.slice(0, stepsShown).map((text, i) => `  ${i + 1}  ${text}`),
    ...(more > 0 ? [`  ${words.say`and ${words.count(more, 'more step', 'more steps')}.`}`] : []),
    words.say`Type choose to be guided back. Enter confirms each step, Left takes it back.`,
  ];
}

export const formatFact = (fact: Fact, words: Words): string => factLabels[fact](words);

/** A question that tells explanations apart, and how it is answered. */
export function sayAsked(question: Question, stories: readonly Story[], words: Words): string {
  const { slips } = words;
  if (question === 'loose') return slips.question('loose');
  if (question === 'row') return slips.question('row');
  if (question !== 'moment') return sayQuestion(question, words);
  const [slip] = stories[0]?.slips ?? [];
  const kinds = stories.flatMap((story) => story.slips);
  if (kinds.some(isShapingSlip) && kinds.some(({ is }) => is.startsWith('rehang')))
    return slips.question('move-or-rehang');
  if (slip && isShapingSlip(slip)) return slips.question('move');
  return slips.question(slip && ('stripe' in slip || slip.is.startsWith('rows')) ? 'stripe' : 'row');
}

/** What was read off the bed fits once left and right change places. */
export const saySides = (place: Place, words: Words): string =>
  words.say`It fits when left and right change places: ${formatLook(place, words)}. Read the needle names again.`;
