/** Answers in the transcript: few and short lines, each with what to type next. */
import type { Place } from '../../session/locate/locate.ts';
import { type Fact, facts, type Looks } from '../../session/locate/seen.ts';
import type { Mend } from '../../session/mend.ts';
import type { RipBack } from '../../session/rip-back/rip-back.ts';
import type { Session } from '../../session/session.ts';
import { count, formatChoice, say } from '../../shared/say.ts';
import { formatLook, formatMend, formatQuestion, formatRipBack, formatRipStep } from './finding.ts';
import { sayPlace } from './place.ts';
import { sayYarn } from './yarns.ts';

export const sayHere = (session: Session): string => say`That is where you are: ${sayPlace(session)}`;

export const sayHereToo = (session: Session): string =>
  say`Where you are looks like that too: ${sayPlace(session)}`;

/** The one place. */
export const sayOnly = (place: Place): readonly string[] => [
  say`It is here: ${formatLook(place)}.`,
  say`To go there type choose 1, or go step ${place.done + 1}.`,
];

/** How many look alike, and the first few facts that would tell them apart. */
export function sayMany(howMany: number, tellApart: readonly Fact[]): string {
  const facts = tellApart.slice(0, 4).map((fact) => factLabels[fact]());
  const many = say`${howMany} places look like that.`;
  return facts.length === 0 ? many : `${many} ${say`Apart they are told by ${formatChoice(facts)}.`}`;
}

/** Places under their numbers, by the facts that are not the same in all that look alike. */
export function sayPlaces(listed: readonly Place[], alike: readonly Place[]): readonly string[] {
  const telling = facts.filter((fact) => alike.some(({ looks }) => looks[fact] !== alike[0]?.looks[fact]));
  const lines = listed.map(({ done, looks }, i) => {
    const shown = telling.map((fact) => showFact(fact, looks)).join(', ');
    return `  ${i + 1}  ${say`step ${done + 1} next`}${shown === '' ? '' : `: ${shown}`}`;
  });
  return [say`${alike.length} places look like that; choose and a number goes to one:`, ...lines];
}

const factLabels: Readonly<Record<Fact, () => string>> = {
  carriage: () => say`carriage`,
  lastColour: () => say`last row`,
  feeder: () => say`feeder`,
  left: () => say`left edge`,
  right: () => say`right edge`,
  stitches: () => say`needles with loops`,
  wasteRows: () => say`waste rows`,
  stripesCounted: () => say`stripes`,
  rowCounter: () => say`row counter`,
};

function showFact(fact: Fact, looks: Looks): string {
  if (fact === 'carriage') return say`carriage ${looks.carriage}`;
  const look = looks[fact];
  if (look === null) return `${factLabels[fact]()} ${say`empty`}`;
  return `${factLabels[fact]()} ${typeof look === 'string' ? sayYarn(look) : look}`;
}

const answers: Readonly<Record<Fact, () => string>> = {
  carriage: () => say`carriage left`,
  lastColour: () => say`the yarn`,
  feeder: () => say`feeder and the yarn`,
  left: () => say`left and the needle`,
  right: () => say`right and the needle`,
  stitches: () => say`stitches and the count`,
  wasteRows: () => say`waste and the count`,
  stripesCounted: () => say`stripes and the count`,
  rowCounter: () => say`row and the count`,
};

/** The most telling question, and how to answer it. */
export const sayQuestion = (fact: Fact): string =>
  say`${formatQuestion(fact)} Type find and ${answers[fact]()}; or find unsure.`;

/** Nothing in the plan looks like that and no one slip explains it: which single thing may have been read wrong. */
export const sayNoSlip = (
  doubtful: readonly { readonly name: string; readonly place: Place }[],
): readonly string[] => [
  say`No place in this bag looks like that, and no one slip explains it.`,
  doubtful.length === 0
    ? say`Read it again, and leave out what you are least sure of.`
    : say`One thing may be read wrong; choose and a number goes there:`,
  ...doubtful.map(
    ({ name, place }, i) => say`  ${i + 1}  without ${name}: step ${place.done + 1} comes next`,
  ),
];

/** Steps of a way shown before it is taken. */
const stepsShown = 3;

/** A mend under its number: how, the first of its steps, and what will show of it. */
export function sayMend(mend: Mend, number: number, brief: boolean): readonly string[] {
  const [heading = '', ...texts] = formatMend(mend);
  const hands = texts.slice(0, mend.steps.length);
  const fits = hands.length <= stepsShown && !brief;
  const shown = fits ? hands : hands.slice(0, 1);
  const more = hands.length - shown.length;
  const last = more > 0 ? [`     ${say`and ${count(more, 'more step', 'more steps')}.`}`] : [];
  return [
    `  ${number}  ${heading}`,
    ...shown.map((text) => `     ${text}`),
    ...[...last, ...texts.slice(hands.length).map((text) => `     ${text}`)],
  ];
}

/** How the mends above are taken. */
export const sayTake = (first: number, last: number): string =>
  first === last
    ? say`To be guided through it, type choose ${first}.`
    : say`To be guided through one of them, type choose and its number.`;

/** What tells a needle left working from a decrease that is missing. */
export const sayLoose = (needle: string): string =>
  say`Does the loop on ${needle} hang on nothing below it? Type find and loose; or find and firm.`;

/** The way back before it is taken: how far, what cannot be undone, and its first steps. */
export function sayWayBack(back: RipBack): readonly string[] {
  const texts = back.steps.map(formatRipStep);
  const more = texts.length - stepsShown;
  return [
    formatRipBack(back),
    ...texts.slice(0, stepsShown).map((text, i) => `  ${i + 1}  ${text}`),
    ...(more > 0 ? [`  ${say`and ${count(more, 'more step', 'more steps')}.`}`] : []),
    say`Type take to be guided back. Enter confirms each step, Left takes it back.`,
  ];
}

export const sayBegun = (): string =>
  say`One step at a time: Enter confirms, Left takes back, stop leaves it.`;
export const sayLeft = (): string =>
  say`Left off. Nothing more is taken back or mended; type where to see the place.`;

/** The plan was changed by hand work left half done: the bed is not what a place must look like. */
export const sayHalfMended = (): string =>
  say`Left off. What your hands have changed stays changed: type find and what you see to go on.`;

export const formatFact = (fact: Fact): string => factLabels[fact]();
