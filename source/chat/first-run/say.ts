/** The questions before a first bag: each with examples that work when typed, and the answers as they are understood. */

import { slantsOf } from '../../planning/choose-size.ts';
import type { SwatchStep } from '../../planning/swatch-steps.ts';
import { type MeasuredSwatch, usualMetresPer100g } from '../../planning/usual.ts';
import type { Units } from '../../shared/units.ts';
import type { Words } from '../../wording/words.ts';
import type { Said } from '../talk.ts';
import type { Answers, QuestionId, Values, YarnAnswer } from './answers.ts';
import { briefFileOf, swatchOf } from './brief-of.ts';

/** By which an answer is listed and found again. */
export const labelOf = (id: QuestionId, words: Words): string => words.firstRun.questions[id].label;

export function askFor(id: QuestionId, values: Values, { firstRun: { questions } }: Words): string {
  switch (id) {
    case 'second':
      return questions.second.ask(values.first.name);
    case 'stripes':
      return questions.stripes.ask([values.first, ...values.second].map(({ name }) => name));
    case 'slant': {
      const file = briefFileOf(values);
      return questions.slant.ask(file.ok ? slantsOf(file.value.brief) : []);
    }
    default:
      return questions[id].ask;
  }
}

export function examplesOf(
  id: QuestionId,
  { length }: Units,
  { firstRun: { questions } }: Words,
): readonly string[] {
  switch (id) {
    case 'size':
      return [questions.size.asIn[length], ...questions.size.asIn.contents, ...questions.size.asIn.counts];
    case 'swatch':
    case 'first':
    case 'second':
      return [questions[id].asIn[length]];
    case 'stripes':
      return ['2', ...questions.stripes.asIn];
    case 'slant':
      return ['60', '4'];
    case 'edges':
      return ['3', ...questions.edges.asIn];
    default:
      return questions[id].asIn;
  }
}

export function showAnswer(id: QuestionId, values: Values, words: Words): string {
  const { questions } = words.firstRun;
  switch (id) {
    case 'name':
      return values.name;
    case 'size':
      return showSize(values.size, words);
    case 'bed':
      return questions.bed.show(values.bed.needles, values.bed.pitchMm);
    case 'swatch':
      return values.swatch
        ? showSwatch(values.swatch, words)
        : questions.swatch.show(showSwatch(swatchOf(values), words));
    case 'first':
      return showYarn(values.first, values, words);
    case 'second':
      return values.second.length > 0
        ? values.second.map((yarn) => showYarn(yarn, values, words)).join('; ')
        : questions.second.show(values.first.name);
    case 'stripes':
      return showStripes(values, words);
    case 'slant':
      return showSlant(values, words);
    case 'cord':
      return questions.cord.show(values.cord);
    case 'edges':
      return questions.edges.show(values.edges.stitches, values.edges.hemRows);
  }
}

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

function showSlant(values: Values, words: Words): string {
  const file = briefFileOf(values);
  const { slant } = values;
  const every = 'everyRows' in slant ? slant.everyRows : file.ok ? file.value.brief.shapeEveryRows : 2;
  const slants = file.ok ? slantsOf(file.value.brief) : [];
  const found = slants.find((one) => one.shapeEveryRows === every);
  return words.firstRun.questions.slant.show(every, found?.angleDeg ?? null);
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
