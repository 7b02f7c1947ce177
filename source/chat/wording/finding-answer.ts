/** Answers in the transcript: few and short lines, each with what to type next. */
import type { Place } from '../../session/locate/locate.ts';
import { type Fact, facts, type Looks } from '../../session/locate/seen.ts';
import type { Mend } from '../../session/mend.ts';
import type { RipBack } from '../../session/rip-back/rip-back.ts';
import type { Session } from '../../session/session.ts';
import { formatLook, formatMend, formatQuestion, formatRipBack, formatRipStep } from './finding.ts';
import { count, formatList } from './numbers.ts';
import { sayPlace } from './place.ts';

export const sayHere = (session: Session): string => `That is where you are: ${sayPlace(session)}`;

export const sayHereToo = (session: Session): string =>
  `Where you are looks like that too: ${sayPlace(session)}`;

/** The one place. */
export const sayOnly = (place: Place): readonly string[] => [
  `It is here: ${formatLook(place)}.`,
  `To go there type take 1, or go step ${place.done + 1}.`,
];

/** How many look alike, and the first few facts that would tell them apart. */
export function sayMany(howMany: number, tellApart: readonly Fact[]): string {
  const facts = tellApart.slice(0, 4).map((fact) => factLabels[fact]);
  const apart = facts.length === 0 ? '' : ` Apart they are told by ${formatList(facts, 'or')}.`;
  return `${howMany} places look like that.${apart}`;
}

/** Places under their numbers, by the facts that are not the same in all that look alike. */
export function sayPlaces(listed: readonly Place[], alike: readonly Place[]): readonly string[] {
  const telling = facts.filter((fact) => alike.some(({ looks }) => looks[fact] !== alike[0]?.looks[fact]));
  const lines = listed.map(({ done, looks }, i) => {
    const shown = telling.map((fact) => showFact(fact, looks)).join(', ');
    return `  ${i + 1}  step ${done + 1} next${shown === '' ? '' : `: ${shown}`}`;
  });
  return [`${alike.length} places look like that; take and a number goes to one:`, ...lines];
}

const factLabels: Readonly<Record<Fact, string>> = {
  carriage: 'carriage',
  lastColour: 'last row',
  feeder: 'feeder',
  left: 'left edge',
  right: 'right edge',
  stitches: 'needles with loops',
  wasteRows: 'waste rows',
  stripesCounted: 'stripes',
  rowCounter: 'row counter',
};

const showFact = (fact: Fact, looks: Looks): string => `${factLabels[fact]} ${looks[fact] ?? 'empty'}`;

const answers: Readonly<Record<Fact, string>> = {
  carriage: 'carriage left',
  lastColour: 'and the yarn',
  feeder: 'feeder and the yarn',
  left: 'left and the needle',
  right: 'right and the needle',
  stitches: 'stitches and the count',
  wasteRows: 'waste and the count',
  stripesCounted: 'stripes and the count',
  rowCounter: 'row and the count',
};

/** The most telling question, and how to answer it. */
export const sayQuestion = (fact: Fact): string =>
  `${formatQuestion(fact)} Type find and ${answers[fact].replace(/^and /, '')}; or find unsure.`;

/** Nothing in the plan looks like that and no one slip explains it: which single thing may have been read wrong. */
export const sayNoSlip = (
  doubtful: readonly { readonly name: string; readonly place: Place }[],
): readonly string[] => [
  'No place in this bag looks like that, and no one slip explains it.',
  doubtful.length === 0
    ? 'Read it again, and leave out what you are least sure of.'
    : 'One thing may be read wrong; take and a number goes there:',
  ...doubtful.map(({ name, place }, i) => `  ${i + 1}  without ${name}: step ${place.done + 1} comes next`),
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
  const last = more > 0 ? [`     and ${count(more, 'more step', 'more steps')}.`] : [];
  return [
    `  ${number}  ${heading}`,
    ...shown.map((text) => `     ${text}`),
    ...[...last, ...texts.slice(hands.length).map((text) => `     ${text}`)],
  ];
}

/** How the mends above are taken. */
export const sayTake = (first: number, last: number): string =>
  first === last
    ? `To be guided through it, type take ${first}.`
    : 'To be guided through one of them, type take and its number.';

/** What tells a needle left working from a decrease that is missing. */
export const sayLoose = (needle: string): string =>
  `Does the loop on ${needle} hang on nothing below it? Type find and loose; or find and firm.`;

/** The way back before it is taken: how far, what cannot be undone, and its first steps. */
export function sayWayBack(back: RipBack): readonly string[] {
  const texts = back.steps.map(formatRipStep);
  const more = texts.length - stepsShown;
  return [
    formatRipBack(back),
    ...texts.slice(0, stepsShown).map((text, i) => `  ${i + 1}  ${text}`),
    ...(more > 0 ? [`  and ${count(more, 'more step', 'more steps')}.`] : []),
    'Type take to be guided back. Enter confirms each step, Left takes it back.',
  ];
}

export const sayBegun = 'One step at a time: Enter confirms, Left takes back, stop leaves it.';
export const sayLeft = 'Left off. Nothing more is taken back or mended; type where to see the place.';

/** The plan was changed by hand work left half done: the bed is not what a place must look like. */
export const sayHalfMended =
  'Left off. What your hands have changed stays changed: type find and what you see to go on.';

export const formatFact = (fact: Fact): string => factLabels[fact];
