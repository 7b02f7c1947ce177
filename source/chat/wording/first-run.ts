/** The questions before a first bag: each with examples that work when typed, and the answers as they are understood. */
import { type MeasuredSwatch, usualMetresPer100g } from '../../planning/usual-swatch.ts';
import { count, formatList, say } from '../../shared/say.ts';
import { formatLength, formatMass, formatYarnNeeded, type Units } from '../../shared/units.ts';
import type { Answers, QuestionId, Values, YarnAnswer } from '../first-run/answers.ts';
import { swatchOf } from '../first-run/brief-of.ts';
import type { Line } from '../line.ts';

interface Wording {
  /** By which the answer is listed and found again. */
  readonly label: () => string;
  readonly ask: (values: Values) => string;
  readonly asIn: (length: Units['length']) => readonly string[];
  readonly show: (values: Values, units: Units) => string;
}

const wordings: { readonly [Id in QuestionId]: Wording } = {
  name: {
    label: () => say`name`,
    ask: () => say`What is the bag to be called?`,
    asIn: () => [say`Dice bag`],
    show: ({ name }) => name,
  },
  size: {
    label: () => say`size`,
    ask: () =>
      say`How wide and how deep is it to be, sewn and lying flat? Or how far round and how high is what goes in?`,
    asIn: (length) => [length === 'cm' ? say`14 by 18 cm` : say`5.5 by 7 in`, say`26 round 12 high`],
    show: ({ size }, units) => showSize(size, units),
  },
  bed: {
    label: () => say`bed`,
    ask: () => say`Which needle bed do you have: how many needles, and how far apart?`,
    asIn: () => [say`120 needles 6 mm`, say`fine 200`, say`mid 120`, say`bulky 90`],
    show: ({ bed }) => say`${count(bed.needles, 'needle')}, ${bed.pitchMm} mm apart`,
  },
  swatch: {
    label: () => say`swatch`,
    ask: () =>
      say`What does your swatch measure: how many stitches over its width, how many rows over its height?`,
    asIn: (length) => [
      length === 'cm' ? say`40 stitches 19.2 cm, 60 rows 21.6 cm` : say`40 stitches 7.5 in, 60 rows 8.5 in`,
    ],
    show: (values, units) =>
      values.swatch
        ? showSwatch(values.swatch, units)
        : say`a guess from your bed: ${showSwatch(swatchOf(values), units)} (rule of thumb)`,
  },
  first: {
    label: () => say`first yarn`,
    ask: () =>
      say`What is the first yarn called? Behind its name goes what you know of it: colour, length of 100 g, grams you have.`,
    asIn: (length) => [
      length === 'cm' ? say`plum #6b2d5c 190 m per 100 g 60 g` : say`plum #6b2d5c 210 yd per 100 g 2 oz`,
    ],
    show: (values, units) => showYarn(values.first, values, units),
  },
  second: {
    label: () => say`second yarn`,
    ask: ({ first }) =>
      say`And the second yarn, for the stripes between? The word none knits all in ${first.name}.`,
    asIn: (length) => [
      length === 'cm' ? say`mint #9fd8c2 190 m per 100 g 45 g` : say`mint #9fd8c2 210 yd per 100 g 1.5 oz`,
    ],
    show: (values, units) =>
      values.second ? showYarn(values.second, values, units) : say`none, all in ${values.first.name}`,
  },
  stripes: {
    label: () => say`stripes`,
    ask: ({ first, second }) =>
      say`How many rows high are the stripes? One even number, or one for ${first.name} and one for ${second?.name ?? ''}.`,
    asIn: () => ['2', say`4 and 2`],
    show: (values) => showStripes(values),
  },
};

export const labelOf = (id: QuestionId): string => wordings[id].label();
export const askFor = (id: QuestionId, values: Values): string => wordings[id].ask(values);
export const examplesOf = (id: QuestionId, { length }: Units): readonly string[] => wordings[id].asIn(length);
export const showAnswer = (id: QuestionId, values: Values, units: Units): string =>
  wordings[id].show(values, units);

export function showSize(size: Values['size'], units: Units): string {
  const length = (cm: number): string => formatLength(cm, units);
  return 'girthCm' in size
    ? say`for what is ${length(size.girthCm)} round and ${length(size.heightCm)} high`
    : say`${length(size.widthCm)} wide and ${length(size.depthCm)} deep`;
}

const showSwatch = ({ stitches, rows, widthCm, heightCm }: MeasuredSwatch, units: Units): string =>
  say`${count(stitches, 'stitch', 'stitches')} over ${formatLength(widthCm, units)}, ${count(rows, 'row')} over ${formatLength(heightCm, units)}`;

function showYarn({ name, colour, metresPer100g, grams }: YarnAnswer, values: Values, units: Units): string {
  const length = formatYarnNeeded(metresPer100g ?? usualMetresPer100g(values.bed.pitchMm), units);
  return [
    name,
    ...(colour === null ? [] : [colour]),
    metresPer100g === null ? say`${length} to 100 g (rule of thumb)` : say`${length} to 100 g`,
    grams === null ? say`not weighed` : formatMass(grams, units),
  ].join(', ');
}

function showStripes({ stripes: [one, other], first, second }: Values): string {
  if (one === other || second === null) return say`${count(one, 'row')} each`;
  return formatList([`${first.name} ${count(one, 'row')}`, `${second.name} ${count(other, 'row')}`]);
}

export const sayGiven = (id: QuestionId, values: Values, units: Units): Line => ({
  tone: 'done',
  text: `${labelOf(id)}: ${showAnswer(id, values, units)}`,
});

/** The answers in order, with the numbers by which `change` finds them. */
export const sayAnswers = (
  asked: readonly QuestionId[],
  answers: Answers,
  values: Values,
  units: Units,
): readonly string[] =>
  asked.map(
    (id, i) => `${i + 1} ${labelOf(id)}: ${answers[id] ? showAnswer(id, values, units) : say`not asked yet`}`,
  );

export const sayOpening = (): string =>
  say`A few questions, and the bag begins. Enter takes what is offered, ? explains, practice begins the practice bag instead.`;

export const sayGoingOn = (): string =>
  say`Your answers from last time are still here; change goes to one of them.`;

export const sayInterviewHelp = (): readonly string[] => [
  say`Answer as in the example, or press Enter to take what is offered.`,
  say`back goes one question back; answers lists what you answered, and change size, or change 2, goes to one of them.`,
  say`? swatch explains a word; units in asks in inches; practice begins the practice bag.`,
  say`After the last question you see the plan. Enter begins; save my-bag.json begins too, and keeps the brief in that file.`,
  say`quit leaves. Your answers are kept: slantwise new goes on with them.`,
];

export const sayPractice = (): string => say`This is the practice bag; the word new plans a bag of your own.`;

/** On leaving a bag to plan another. */
export const sayWaits = (name: string, path: string): string => say`${name} is saved, and waits in ${path}`;

export const sayAnswersKept = (): string => say`Your answers are kept: slantwise new goes on with them.`;

export const sayAnswersNotKept = (why: string): string =>
  say`The answers cannot be kept for another day: ${why} Go on all the same.`;

export const sayBriefKept = (path: string): string => say`The brief is kept in ${path}`;

export const sayBriefNotKept = (why: string): string =>
  say`The brief has no file of its own: ${why} The log holds it too.`;

export const sayDamagedLog = (path: string): string =>
  say`${path} cannot be read. If your bag is in it, type quit, and then slantwise check with its name.`;
