/** The questions before a first bag: each with examples that work when typed, and the answers as they are understood. */

import { type MeasuredSwatch, usualMetresPer100g } from '../../planning/usual-swatch.ts';
import type { Units } from '../../shared/units.ts';
import type { Words } from '../../wording/words.ts';
import type { Answers, QuestionId, Values, YarnAnswer } from '../first-run/answers.ts';
import { swatchOf } from '../first-run/brief-of.ts';
import type { Line } from '../line.ts';

interface Wording {
  /** By which the answer is listed and found again. */
  readonly label: (words: Words) => string;
  readonly ask: (values: Values, words: Words) => string;
  readonly asIn: (length: Units['length'], words: Words) => readonly string[];
  readonly show: (values: Values, words: Words) => string;
}

const wordings: { readonly [Id in QuestionId]: Wording } = {
  name: {
    label: (words: Words) => words.say`name`,
    ask: (_, words) => words.say`What is the bag to be called?`,
    asIn: (_, words) => [words.say`Dice bag`],
    show: ({ name }) => name,
  },
  size: {
    label: (words: Words) => words.say`size`,
    ask: (_, words) =>
      words.say`How wide and how deep is it to be, sewn and lying flat? Or how far round and how high is what goes in?`,
    asIn: (length, words: Words) => [
      length === 'cm' ? words.say`14 by 18 cm` : words.say`5.5 by 7 in`,
      words.say`26 round 12 high`,
    ],
    show: ({ size }, words) => showSize(size, words),
  },
  bed: {
    label: (words: Words) => words.say`bed`,
    ask: (_, words) => words.say`Which needle bed do you have: how many needles, and how far apart?`,
    asIn: (_, words) => [
      words.say`120 needles 6 mm`,
      words.say`fine 200`,
      words.say`mid 120`,
      words.say`bulky 90`,
    ],
    show: ({ bed }, words: Words) =>
      words.say`${words.count(bed.needles, 'needle')}, ${bed.pitchMm} mm apart`,
  },
  swatch: {
    label: (words: Words) => words.say`swatch`,
    ask: (_, words) =>
      words.say`What does your swatch measure: how many stitches over its width, how many rows over its height?`,
    asIn: (length, words: Words) => [
      length === 'cm'
        ? words.say`40 stitches 19.2 cm, 60 rows 21.6 cm`
        : words.say`40 stitches 7.5 in, 60 rows 8.5 in`,
    ],
    show: (values, words) =>
      values.swatch
        ? showSwatch(values.swatch, words)
        : words.say`a guess from your bed: ${showSwatch(swatchOf(values), words)} (rule of thumb)`,
  },
  first: {
    label: (words: Words) => words.say`first yarn`,
    ask: (_, words) =>
      words.say`What is the first yarn called? Behind its name goes what you know of it: colour, length of 100 g, grams you have.`,
    asIn: (length, words: Words) => [
      length === 'cm'
        ? words.say`plum #6b2d5c 190 m per 100 g 60 g`
        : words.say`plum #6b2d5c 210 yd per 100 g 2 oz`,
    ],
    show: (values, words) => showYarn(values.first, values, words),
  },
  second: {
    label: (words: Words) => words.say`second yarn`,
    ask: ({ first }, words: Words) =>
      words.say`And the second yarn, for the stripes between? The word none knits all in ${first.name}.`,
    asIn: (length, words: Words) => [
      length === 'cm'
        ? words.say`mint #9fd8c2 190 m per 100 g 45 g`
        : words.say`mint #9fd8c2 210 yd per 100 g 1.5 oz`,
    ],
    show: (values, words) =>
      values.second ? showYarn(values.second, values, words) : words.say`none, all in ${values.first.name}`,
  },
  stripes: {
    label: (words: Words) => words.say`stripes`,
    ask: ({ first, second }, words: Words) =>
      words.say`How many rows high are the stripes? One even number, or one for ${first.name} and one for ${second?.name ?? ''}.`,
    asIn: (_, words) => ['2', words.say`4 and 2`],
    show: (values, words: Words) => showStripes(values, words),
  },
};

export const labelOf = (id: QuestionId, words: Words): string => wordings[id].label(words);
export const askFor = (id: QuestionId, values: Values, words: Words): string =>
  wordings[id].ask(values, words);
export const examplesOf = (id: QuestionId, { length }: Units, words: Words): readonly string[] =>
  wordings[id].asIn(length, words);
export const showAnswer = (id: QuestionId, values: Values, words: Words): string =>
  wordings[id].show(values, words);

export function showSize(size: Values['size'], words: Words): string {
  const length = (cm: number): string => words.amounts.length(cm);
  return 'girthCm' in size
    ? words.say`for what is ${length(size.girthCm)} round and ${length(size.heightCm)} high`
    : words.say`${length(size.widthCm)} wide and ${length(size.depthCm)} deep`;
}

const showSwatch = ({ stitches, rows, widthCm, heightCm }: MeasuredSwatch, words: Words): string =>
  words.say`${words.count(stitches, 'stitch', 'stitches')} over ${words.amounts.length(widthCm)}, ${words.count(rows, 'row')} over ${words.amounts.length(heightCm)}`;

function showYarn(
  { name, colour, metresPer100g, isUsualLength, grams }: YarnAnswer,
  values: Values,
  words: Words,
): string {
  const length = words.amounts.yarnNeeded(metresPer100g ?? usualMetresPer100g(values.bed.pitchMm));
  return [
    name,
    ...(colour === null ? [] : [colour]),
    metresPer100g === null || isUsualLength
      ? words.say`${length} to 100 g (rule of thumb)`
      : words.say`${length} to 100 g`,
    grams === null ? words.say`not weighed` : words.amounts.mass(grams),
  ].join(', ');
}

function showStripes({ stripes: [one, other], first, second }: Values, words: Words): string {
  if (one === other || second === null) return words.say`${words.count(one, 'row')} each`;
  return words.amounts.list([
    `${first.name} ${words.count(one, 'row')}`,
    `${second.name} ${words.count(other, 'row')}`,
  ]);
}

export const sayGiven = (id: QuestionId, values: Values, words: Words): Line => ({
  tone: 'done',
  text: `${labelOf(id, words)}: ${showAnswer(id, values, words)}`,
});

/** The answers in order, with the numbers by which `change` finds them. */
export const sayAnswers = (
  asked: readonly QuestionId[],
  answers: Answers,
  values: Values,
  words: Words,
): readonly string[] =>
  asked.map(
    (id, i) =>
      `${i + 1} ${labelOf(id, words)}: ${answers[id] ? showAnswer(id, values, words) : words.say`not asked yet`}`,
  );

export const sayOpening = (words: Words): string =>
  words.say`A few questions, and the bag begins. Enter takes what is offered, ? explains, practice begins the practice bag instead.`;

export const sayGoingOn = (words: Words): string =>
  words.say`Your answers from last time are still here; change goes to one of them.`;

export const sayInterviewHelp = (words: Words): readonly string[] => [
  words.say`Answer as in the example, or press Enter to take what is offered.`,
  words.say`back goes one question back; answers lists what you answered, and change size, or change 2, goes to one of them.`,
  words.say`? swatch explains a word; units in asks in inches; practice begins the practice bag.`,
  words.say`After the last question you see the plan. Enter begins; save my-bag.json begins too, and keeps the brief in that file.`,
  words.say`quit leaves. Your answers are kept: slantwise new goes on with them.`,
];

export const sayPractice = (words: Words): string =>
  words.say`This is the practice bag; the word new plans a bag of your own.`;

/** On leaving a bag to plan another. */
export const sayWaits = (name: string, path: string, words: Words): string =>
  words.say`${name} is saved, and waits in ${path}`;

export const sayAnswersKept = (words: Words): string =>
  words.say`Your answers are kept: slantwise new goes on with them.`;

export const sayAnswersNotKept = (why: string, words: Words): string =>
  words.say`The answers cannot be kept for another day: ${why} Go on all the same.`;

export const sayBriefKept = (path: string, words: Words): string => words.say`The brief is kept in ${path}`;

export const sayBriefNotKept = (why: string, words: Words): string =>
  words.say`The brief has no file of its own: ${why} The log holds it too.`;

export const sayDamagedLog = (path: string, words: Words): string =>
  words.say`${path} cannot be read. If your bag is in it, type quit, and then slantwise check with its name.`;
