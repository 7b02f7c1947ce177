/** The questions before a first bag: each with examples that work when typed, and the answers as they are understood. */

import { slantsOf } from '../../planning/choose-size.ts';
import type { SwatchStep } from '../../planning/swatch-steps.ts';
import { type MeasuredSwatch, usualMetresPer100g } from '../../planning/usual.ts';
import type { Units } from '../../shared/units.ts';
import type { Words } from '../../wording/words.ts';
import type { Said } from '../talk.ts';
import type { Answers, QuestionId, Values, YarnAnswer } from './answers.ts';
import { briefFileOf, swatchOf } from './brief-of.ts';

interface Wording {
  /** By which the answer is listed and found again. */
  readonly label: (words: Words) => string;
  readonly ask: (values: Values, words: Words) => string;
  readonly asIn: (length: Units['length'], words: Words) => readonly string[];
  readonly show: (values: Values, words: Words) => string;
}

const wordings: { readonly [Id in QuestionId]: Wording } = {
  name: {
    label: (words: Words) => words.firstRun.questions.name.label,
    ask: (_, words) => words.firstRun.questions.name.ask,
    asIn: (_, words) => words.firstRun.questions.name.asIn,
    show: ({ name }) => name,
  },
  size: {
    label: (words: Words) => words.firstRun.questions.size.label,
    ask: (_, words) => words.firstRun.questions.size.ask,
    asIn: (length, words: Words) => [
      length === 'cm' ? words.firstRun.questions.size.asIn.cm : words.firstRun.questions.size.asIn.in,
      ...words.firstRun.questions.size.asIn.contents,
      ...words.firstRun.questions.size.asIn.counts,
    ],
    show: ({ size }, words) => showSize(size, words),
  },
  bed: {
    label: (words: Words) => words.firstRun.questions.bed.label,
    ask: (_, words) => words.firstRun.questions.bed.ask,
    asIn: (_, words) => words.firstRun.questions.bed.asIn,
    show: ({ bed }, words: Words) => words.firstRun.questions.bed.show(bed.needles, bed.pitchMm),
  },
  swatch: {
    label: (words: Words) => words.firstRun.questions.swatch.label,
    ask: (_, words) => words.firstRun.questions.swatch.ask,
    asIn: (length, words: Words) => [
      length === 'cm' ? words.firstRun.questions.swatch.asIn.cm : words.firstRun.questions.swatch.asIn.in,
    ],
    show: (values, words) =>
      values.swatch
        ? showSwatch(values.swatch, words)
        : words.firstRun.questions.swatch.show(showSwatch(swatchOf(values), words)),
  },
  first: {
    label: (words: Words) => words.firstRun.questions.first.label,
    ask: (_, words) => words.firstRun.questions.first.ask,
    asIn: (length, words: Words) => [
      length === 'cm' ? words.firstRun.questions.first.asIn.cm : words.firstRun.questions.first.asIn.in,
    ],
    show: (values, words) => showYarn(values.first, values, words),
  },
  second: {
    label: (words: Words) => words.firstRun.questions.second.label,
    ask: ({ first }, words: Words) => words.firstRun.questions.second.ask(first.name),
    asIn: (length, words: Words) => [
      length === 'cm' ? words.firstRun.questions.second.asIn.cm : words.firstRun.questions.second.asIn.in,
    ],
    show: (values, words) =>
      values.second.length > 0
        ? values.second.map((yarn) => showYarn(yarn, values, words)).join('; ')
        : words.firstRun.questions.second.show(values.first.name),
  },
  stripes: {
    label: (words: Words) => words.firstRun.questions.stripes.label,
    ask: ({ first, second }, words: Words) =>
      words.firstRun.questions.stripes.ask([first, ...second].map(({ name }) => name)),
    asIn: (_, words) => ['2', ...words.firstRun.questions.stripes.asIn],
    show: (values, words: Words) => showStripes(values, words),
  },
  slant: {
    label: (words: Words) => words.firstRun.questions.slant.label,
    ask: (values, words: Words) => {
      const file = briefFileOf(values);
      return words.firstRun.questions.slant.ask(file.ok ? slantsOf(file.value.brief) : []);
    },
    asIn: () => ['60', '4'],
    show: (values, words: Words) => {
      const file = briefFileOf(values);
      const { slant } = values;
      const every = 'everyRows' in slant ? slant.everyRows : file.ok ? file.value.brief.shapeEveryRows : 2;
      const found = file.ok
        ? slantsOf(file.value.brief).find((one) => one.shapeEveryRows === every)
        : undefined;
      return words.firstRun.questions.slant.show(every, found?.angleDeg ?? null);
    },
  },
  cord: {
    label: (words: Words) => words.firstRun.questions.cord.label,
    ask: (_, words: Words) => words.firstRun.questions.cord.ask,
    asIn: (_, words: Words) => words.firstRun.questions.cord.asIn,
    show: ({ cord }, words: Words) => words.firstRun.questions.cord.show(cord),
  },
  edges: {
    label: (words: Words) => words.firstRun.questions.edges.label,
    ask: (_, words: Words) => words.firstRun.questions.edges.ask,
    asIn: (_, words: Words) => ['3', ...words.firstRun.questions.edges.asIn],
    show: ({ edges }, words: Words) => words.firstRun.questions.edges.show(edges.stitches, edges.hemRows),
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
  const { boxedCm } = size;
  const boxed = boxedCm === undefined ? '' : words.firstRun.boxed(length(boxedCm));
  if ('girthCm' in size) return words.firstRun.contents(size) + boxed;
  if ('stitches' in size) return words.firstRun.counts(size.stitches, size.rows) + boxed;
  return 'depthCm' in size
    ? words.firstRun.widthAndDepth(length(size.widthCm), length(size.depthCm)) + boxed
    : words.firstRun.deepAsBed(length(size.widthCm)) + boxed;
}

const showSwatch = ({ stitches, rows, widthCm, heightCm }: MeasuredSwatch, words: Words): string =>
  words.firstRun.swatchOver(stitches, widthCm, rows, heightCm);

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
      ? words.firstRun.metresGuessed(length)
      : words.firstRun.metres(length),
    grams === null ? words.firstRun.notWeighed : words.amounts.mass(grams),
  ].join(', ');
}

function showStripes({ stripes, first, second }: Values, words: Words): string {
  if (stripes === 'random' || stripes === 'gradient') return words.firstRun.orders[stripes];
  const yarns = [first, ...second];
  const [sizes, shown] =
    'widthsCm' in stripes
      ? [stripes.widthsCm, (cm: number) => words.amounts.length(cm)]
      : [stripes, (rows: number) => words.plurals.row(rows)];
  const of = (i: number): number => sizes[i] ?? sizes.at(-1) ?? 0;
  return yarns.every((_, i) => of(i) === of(0))
    ? words.firstRun.each(shown(of(0)))
    : words.amounts.list(yarns.map(({ name }, i) => `${name} ${shown(of(i))}`));
}

/** A step of a swatch that is guided, as an instruction. */
export function sayGuided(step: SwatchStep, { swatchGuide: say }: Words): string {
  switch (step.is) {
    case 'cast-on':
      return say.castOn(step.stitches, step.first, step.last, step.comb);
    case 'rows':
      return say.rows(step.from, step.through, step.of);
    case 'width':
    case 'row-yarn':
      return say[step.is](step.stitches);
    case 'height':
      return say.height(step.rows);
    default:
      return say[step.is];
  }
}

export const sayGiven = (id: QuestionId, values: Values, words: Words): Said => ({
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
      `${i + 1} ${labelOf(id, words)}: ${answers[id] ? showAnswer(id, values, words) : words.firstRun.notAsked}`,
  );

export const sayOpening = (words: Words): string => words.firstRun.opening;

export const sayGoingOn = (words: Words): string => words.firstRun.goingOn;

export const sayInterviewHelp = (words: Words): readonly string[] => words.firstRun.howToAnswer;

export const sayPractice = (words: Words): string => words.firstRun.practice;

/** On leaving a bag to plan another. */
export const sayWaits = (name: string, path: string, words: Words): string =>
  words.firstRun.waits(name, path);

export const sayAnswersKept = (words: Words): string => words.firstRun.answersKept;

export const sayAnswersNotKept = (why: string, words: Words): string => words.firstRun.answersNotKept(why);

export const sayBriefKept = (path: string, words: Words): string => words.firstRun.briefKept(path);

export const sayBriefNotKept = (why: string, words: Words): string => words.firstRun.briefNotKept(why);

export const sayDamagedLog = (path: string, words: Words): string => words.firstRun.damagedLog(path);
