/** The answers as a brief file, and what is taken where nothing was answered. */
import type { Brief, BriefFile, Stripe } from '../../planning/brief.ts';
import { chooseRows, leastStitchesOf, nearestSlant } from '../../planning/choose-size.ts';
import type { PlanFault } from '../../planning/fault.ts';
import { type Gauge, gaugeOf } from '../../planning/gauge.ts';
import { shapingsIn } from '../../planning/geometry.ts';
import { usableNeedles } from '../../planning/hangings.ts';
import { readBrief } from '../../planning/parse-brief.ts';
import type { Plan } from '../../planning/plan.ts';
import { planBag } from '../../planning/plan-bag.ts';
import { withoutNull } from '../../planning/shelf.ts';
import { gradientStripes, randomStripes } from '../../planning/stripe-sequence.ts';
import {
  type Contents,
  type MeasuredSwatch,
  type UsualThing,
  usualMetresPer100g,
  usualSwatch,
} from '../../planning/usual.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import type { Words } from '../../wording/words.ts';
import { toCm } from './amounts.ts';
import type { AnswerFault, Length, QuestionId, StripesAnswer, Values, YarnAnswer } from './answers.ts';
import { practiceBed } from './read-bed.ts';
import { usualColour } from './read-yarn.ts';

/** What Enter takes, by what was answered before. */
export function usualValue<Id extends QuestionId>(
  id: Id,
  values: Partial<Values>,
  length: Length,
  words: Words,
): Values[Id] {
  const { names } = words.firstRun;
  const usual: { readonly [Name in QuestionId]: () => Values[Name] } = {
    name: () => names.bag,
    size: () =>
      length === 'cm' ? { widthCm: 14, depthCm: 18 } : { widthCm: toCm(5.5, 'in'), depthCm: toCm(7, 'in') },
    bed: () => practiceBed,
    swatch: () => null,
    first: () => yarnNamed(names.plum),
    second: () => [yarnNamed(values.first?.name === names.mint ? names.plum : names.mint)],
    stripes: () => [2, 2],
    slant: () => ({ everyRows: 2 }),
    cord: () => 1,
    edges: () => ({ stitches: 2, hemRows: null }),
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
function yarnsOf(values: Values) {
  const usual = usualMetresPer100g(values.bed.pitchMm);
  const yarns: (YarnAnswer & { readonly colour: string; readonly metresPer100g: number })[] = [];
  for (const yarn of [values.first, ...values.second])
    yarns.push({
      ...yarn,
      colour:
        yarn.colour ??
        usualColour(
          yarn.name,
          yarns.map(({ colour }) => colour),
        ),
      metresPer100g: yarn.metresPer100g ?? usual,
    });
  return yarns;
}

type AskedBrief = ReturnType<typeof askedBrief>;
type KnownYarn = ReturnType<typeof yarnsOf>[number];

/** The answers as a brief that can be read, where some of them stand for numbers that only a gauge gives. */
function askedBrief(values: Values, yarns: readonly KnownYarn[]) {
  const { name, size, bed, stripes, slant, cord, edges } = values;
  const rowsOf = (i: number): number => (isRows(stripes) ? (stripes[i] ?? stripes.at(-1) ?? 2) : 2);
  return {
    name,
    bed,
    swatch: values.swatch ?? { ...usualSwatch(bed.pitchMm), guess: true },
    bag: bagOf(size),
    edgeStitches: edges.stitches,
    ...(edges.hemRows === null ? {} : { hem: { rows: edges.hemRows } }),
    shapeEveryRows: 'everyRows' in slant ? slant.everyRows : 2,
    yarns: Object.fromEntries(
      yarns.map(({ name: yarn, isUsualLength: _, ...known }) => [yarn, withoutNull(known)]),
    ),
    stripes: yarns.map(({ name: yarn }, i): Stripe => ({ yarn, rows: rowsOf(i) })),
    ...(cord === 2 ? { cord: { draws: 2 } } : {}),
  };
}

const widthsIn = (stripes: StripesAnswer): readonly number[] =>
  typeof stripes === 'object' && 'widthsCm' in stripes ? stripes.widthsCm : [];

const isRows = (stripes: StripesAnswer): stripes is readonly number[] => Array.isArray(stripes);

function bagOf({ boxedCm, ...size }: Values['size']): Record<string, unknown> {
  const boxed = boxedCm === undefined ? {} : { boxedCm };
  if ('girthCm' in size) return { contents: withoutUsual(size), ...boxed };
  return 'deepAsBed' in size
    ? { widthCm: size.widthCm, depthCm: size.widthCm, ...boxed }
    : { ...size, ...boxed };
}

/** As it stands in the brief file: what nobody was asked is spelled out too, to be changed there. */
export function briefFileOf(values: Values): Result<BriefFile, AnswerFault> {
  const yarns = yarnsOf(values);
  const twice = yarns.find(({ name }, i) => yarns.findIndex((one) => one.name === name) < i);
  if (twice) return fail({ code: 'first-run/same-yarn', yarn: twice.name });
  const told = isRows(values.stripes) ? values.stripes.length : widthsIn(values.stripes).length;
  // One number does for all, and stands for two.
  if (told > Math.max(2, yarns.length))
    return fail({ code: 'first-run/more-stripes-than-yarns', yarns: yarns.map(({ name }) => name) });
  const asked = askedBrief(values, yarns);
  const draft = readBrief(asked);
  if (!draft.ok) return draft;
  const worked = byGauge(values, asked, draft.value, yarns);
  if (!worked.ok) return worked;
  const brief = readBrief(worked.value);
  return brief.ok ? succeed({ json: spelledOut(worked.value, brief.value), brief: brief.value }) : brief;
}

/** Angles become rows between moves, widths become rows, orders become stripes, and the bed's needles become stitches. */
function byGauge(
  values: Values,
  asked: AskedBrief,
  draft: Brief,
  yarns: readonly KnownYarn[],
): Result<AskedBrief, AnswerFault> {
  const { slant, size, stripes } = values;
  const shapeEveryRows = 'angleDeg' in slant ? nearestSlant(draft, slant.angleDeg) : asked.shapeEveryRows;
  const shaped = { ...draft, shapeEveryRows };
  const laid =
    yarns.length < 2 || isRows(stripes)
      ? asked.stripes
      : laidStripes(stripes, shaped, gaugeOf(shaped), yarns);
  const exact = { ...asked, shapeEveryRows, stripes: laid };
  if (!('deepAsBed' in size)) return succeed(exact);
  const rows = chooseRows({ ...shaped, stripes: laid }, gaugeOf(shaped));
  if (!rows.ok) return succeed(exact);
  const stitches = usableNeedles(shaped) - shapingsIn({ rows: rows.value, shapeEveryRows });
  if (stitches < leastStitchesOf(shaped))
    return fail({ code: 'first-run/bed-too-short', widthCm: size.widthCm });
  const boxed = size.boxedCm === undefined ? {} : { boxedCm: size.boxedCm };
  return succeed({ ...exact, bag: { stitches, rows: rows.value, ...boxed } });
}

function laidStripes(
  stripes: Exclude<StripesAnswer, readonly number[]>,
  brief: Brief,
  gauge: Gauge,
  yarns: readonly KnownYarn[],
): Stripe[] {
  if (typeof stripes === 'object' && 'widthsCm' in stripes) {
    const rowsOf = (cm: number): number => Math.max(2, 2 * Math.round((cm * 10) / gauge.rowMm / 2));
    const { widthsCm } = stripes;
    return yarns.map(({ name }, i) => ({ yarn: name, rows: rowsOf(widthsCm[i] ?? widthsCm.at(-1) ?? 0) }));
  }
  // The narrowest repeat, so that the size is met as nearly as can be.
  const rows = chooseRows({ ...brief, stripes: [{ yarn: yarns[0]?.name ?? '', rows: 2 }] }, gauge);
  if (!rows.ok) return yarns.map(({ name }) => ({ yarn: name, rows: 2 }));
  return stripes === 'random'
    ? [
        ...randomStripes(
          yarns.map(({ name }) => name),
          rows.value,
          rows.value,
        ),
      ]
    : [
        ...gradientStripes(
          yarns.map(({ name, colour }) => ({ yarn: name, colour })),
          rows.value,
        ),
      ];
}

const withoutUsual = ({ usual: _, ...contents }: Contents & { readonly usual?: UsualThing }): Contents =>
  contents;

function spelledOut(
  asked: { readonly bed: object; readonly swatch: object; readonly stripes: object },
  brief: Brief,
) {
  const { stitches, yarn, tieCm, draws } = brief.cord;
  return {
    ...asked,
    bed: { ...asked.bed, marginNeedles: brief.bed.marginNeedles },
    swatch: { ...asked.swatch, state: brief.swatch.state },
    crawl: brief.crawl,
    edgeStitches: brief.edgeStitches,
    shapeEveryRows: brief.shapeEveryRows,
    waste: brief.waste,
    cord: { stitches, yarn, tieCm, ...(draws === 2 ? { draws } : {}) },
  };
}

export function planOfValues(values: Values): Result<Plan, AnswerFault | PlanFault> {
  const file = briefFileOf(values);
  return file.ok ? planBag(file.value.brief) : file;
}
