/** The answers as a brief file, and what is taken where nothing was answered. */
import type { Brief, BriefFile } from '../../planning/brief.ts';
import type { PlanFault } from '../../planning/fault.ts';
import { readBrief } from '../../planning/parse-brief.ts';
import type { Plan } from '../../planning/plan.ts';
import { planBag } from '../../planning/plan-bag.ts';
import type { Contents, UsualThing } from '../../planning/usual-contents.ts';
import { type MeasuredSwatch, usualMetresPer100g, usualSwatch } from '../../planning/usual-swatch.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import type { Words } from '../../wording/words.ts';
import { toCm } from './amounts.ts';
import type { AnswerFault, Length, QuestionId, Values, YarnAnswer } from './answers.ts';
import { practiceBed } from './read-bed.ts';
import { usualColour } from './yarn-colours.ts';

/** What Enter takes, by what was answered before. */
export function usualValue<Id extends QuestionId>(
  id: Id,
  values: Partial<Values>,
  length: Length,
  words: Words,
): Values[Id] {
  const usual: { readonly [Name in QuestionId]: () => Values[Name] } = {
    name: () => words.firstRun.names.bag,
    size: () =>
      length === 'cm' ? { widthCm: 14, depthCm: 18 } : { widthCm: toCm(5.5, 'in'), depthCm: toCm(7, 'in') },
    bed: () => practiceBed,
    swatch: () => null,
    first: () => yarnNamed(words.firstRun.names.plum),
    second: () =>
      yarnNamed(
        values.first?.name === words.firstRun.names.mint
          ? words.firstRun.names.plum
          : words.firstRun.names.mint,
      ),
    stripes: () => [2, 2],
  };
  return usual[id]();
}

const yarnNamed = (name: string): YarnAnswer => ({
  name,
  colour: null,
  metresPer100g: null,
  isUsualLength: false,
  grams: null,
});

/** The swatch, or the guess that stands for it. */
export const swatchOf = ({ swatch, bed }: Values): MeasuredSwatch => swatch ?? usualSwatch(bed.pitchMm);

/** Yarns in the order of their stripes, with nothing left open but what nobody weighed. */
function yarnsOf(
  values: Values,
): readonly (YarnAnswer & { readonly colour: string; readonly metresPer100g: number })[] {
  const { first, second } = values;
  const usual = usualMetresPer100g(values.bed.pitchMm);
  const filled = (yarn: YarnAnswer, beside: string | null) => ({
    ...yarn,
    colour: yarn.colour ?? usualColour(yarn.name, beside),
    metresPer100g: yarn.metresPer100g ?? usual,
  });
  const one = filled(first, null);
  return second === null ? [one] : [one, filled(second, one.colour)];
}

/** As it stands in the brief file: what nobody was asked is spelled out too, to be changed there. */
export function briefFileOf(values: Values): Result<BriefFile, AnswerFault> {
  const { name, size, bed, stripes, first, second } = values;
  if (first.name === second?.name) return fail({ code: 'first-run/same-yarn', yarn: first.name });
  const yarns = yarnsOf(values);
  const asked = {
    name,
    bed,
    swatch: values.swatch ?? { ...usualSwatch(bed.pitchMm), guess: true },
    bag: 'girthCm' in size ? { contents: withoutUsual(size) } : size,
    yarns: Object.fromEntries(
      yarns.map(({ name: yarn, isUsualLength: _, ...known }) => [yarn, withoutNull(known)]),
    ),
    stripes: yarns.map(({ name: yarn }, i) => ({ yarn, rows: stripes[i] })),
  };
  const brief = readBrief(asked);
  return brief.ok ? succeed({ json: spelledOut(asked, brief.value), brief: brief.value }) : brief;
}

const withoutUsual = ({ usual: _, ...contents }: Contents & { readonly usual?: UsualThing }): Contents =>
  contents;

const withoutNull = ({ grams, ...known }: Omit<YarnAnswer, 'name' | 'isUsualLength'>) =>
  grams === null ? known : { ...known, grams };

function spelledOut(
  asked: { readonly bed: object; readonly swatch: object; readonly stripes: object },
  brief: Brief,
) {
  const { stitches, yarn, tieCm } = brief.cord;
  return {
    ...asked,
    bed: { ...asked.bed, marginNeedles: brief.bed.marginNeedles },
    swatch: { ...asked.swatch, state: brief.swatch.state },
    crawl: brief.crawl,
    edgeStitches: brief.edgeStitches,
    shapeEveryRows: brief.shapeEveryRows,
    waste: brief.waste,
    cord: { stitches, yarn, tieCm },
  };
}

export function planOfValues(values: Values): Result<Plan, AnswerFault | PlanFault> {
  const file = briefFileOf(values);
  return file.ok ? planBag(file.value.brief) : file;
}
