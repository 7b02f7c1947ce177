/** What a bag takes of each yarn, what it costs where prices were given, and what fabric the yarn makes. */

import type { Cost } from '../journal/bag-cost.ts';
import { firmTightness, jamTightness, labelTightness, limpTightness } from '../planning/fabric.ts';
import { classesOfGauge, classesOfPitch, modelLoopLength } from '../planning/gauge.ts';
import type { SharedYarn } from '../planning/party.ts';
import type { Plan } from '../planning/plan.ts';
import { reserveOf, type YarnNeed } from '../planning/yarn-needs.ts';
import { cellsOf } from '../shared/plain-text.ts';
import { labelled, table, wrap } from './page.ts';
import { formatFabricMass, nameClasses } from './reason.ts';
import type { Words } from './words.ts';

/** Names longer than this stand in a line of their own, above their numbers. */
const mostBeside = 20;

export function yarnLines({ yarn, brief, gauge }: Plan, words: Words): readonly string[] {
  const reserve = Math.round(100 * reserveOf(gauge)) - 100;
  return [
    ...yarnTable(yarn, [brief.waste.yarn], words.page.withPercent(reserve), words),
    `  ${words.page.reserveIs(reserve)}`,
  ];
}

export const sharedYarnLines = (
  yarn: readonly SharedYarn[],
  waste: readonly string[],
  words: Words,
): readonly string[] => yarnTable(yarn, waste, words.page.withReserve, words);

type Need = Omit<YarnNeed & SharedYarn, 'colour'>;

function yarnTable(
  yarn: readonly Need[],
  waste: readonly string[],
  withReserve: string,
  words: Words,
): readonly string[] {
  const head = ['', words.page.length, words.page.weight, withReserve, words.page.youHave, ''];
  const rows = yarn.map((need) => yarnRow(need, waste.includes(need.yarn), words));
  const lines = table([head, ...rows.map(([name = '', ...cells]) => [isShort(name) ? name : '', ...cells])]);
  return lines.flatMap((line, i) => {
    const name = rows[i - 1]?.[0] ?? '';
    const above = isShort(name) ? [] : wrap(name, 76).map((part) => `  ${part}`);
    return [...above, `  ${line}`];
  });
}

const isShort = (name: string): boolean => cellsOf(name) <= mostBeside;

function yarnRow(need: Need, waste: boolean, words: Words): readonly string[] {
  const { mass, massNeeded } = words.amounts;
  const grams = (amount: number | null, show: typeof mass): string => (amount === null ? '' : show(amount));
  return [
    waste && need.yarn !== 'waste' ? words.page.waste(need.yarn) : words.prompt.yarn(need.yarn),
    words.amounts.yarnNeeded(need.metres),
    grams(need.grams, massNeeded),
    grams(need.withReserveGrams, massNeeded),
    grams(need.haveGrams, mass),
    waste ? '' : verdict(need, words),
  ];
}

function verdict({ enough, shortGrams }: Need, words: Words): string {
  if (enough === null) return words.page.notWeighed;
  return enough ? words.page.enough : words.page.shortBy(shortGrams ?? 0);
}

export const costLines = (cost: Cost | null, { plan }: Words): readonly string[] =>
  cost ? labelled(plan.cost, plan.costs(cost)) : [];

export function fabricLines(
  { gauge, tightness, fabricGramsPerM2, aim, brief }: Plan,
  words: Words,
): readonly string[] {
  const { stitchMm, rowMm } = gauge.asKnitted;
  const per = words.units.length === 'cm' ? { name: '10 cm', mm: 100 } : { name: '4 in', mm: 101.6 };
  const { onPiece, guess } = brief.swatch;
  return [
    ...labelled(onPiece ? words.page.labels.piece : words.page.labels.swatch, swatchText(brief, words)),
    ...labelled(
      words.page.labels.gauge,
      words.page.gaugeTo(
        fixed(per.mm / stitchMm, 1, words),
        fixed(per.mm / rowMm, 1, words),
        per.name,
        stitchMm,
        rowMm,
      ),
    ),
    ...labelled(words.page.labels.loop, loopText({ gauge, brief }, words)),
    ...labelled(
      words.page.labels.tightness,
      words.page.tightnessIs(fixed(tightness, 2, words), tightnessText(tightness, words)),
    ),
    ...labelled(words.page.labels.aim, words.page.aim(aim.tenStitchesMm, aim.tenRowsMm, aim.tightness)),
    ...labelled(
      words.page.labels.weight,
      (onPiece ? words.page.massOfPiece : guess ? words.page.massOfGuess : words.page.massOfSwatch)(
        formatFabricMass(fabricGramsPerM2, words),
      ),
    ),
    ...labelled(words.page.labels.yarn, classText(stitchMm, brief.bed.pitchMm, words)),
  ];
}

function swatchText({ swatch }: Plan['brief'], words: Words): string {
  const { stitches, rows, widthMm, heightMm, state, guess, stitchSize } = swatch;
  const size = words.page.by(widthMm / 10, heightMm / 10);
  if (guess) return words.page.swatchGuessed(stitches, rows, size);
  return stitchSize === null
    ? words.page.swatchOn(stitches, rows, size, state)
    : words.page.swatchOnDial(stitches, rows, size, state, stitchSize);
}

const fixed = (value: number, decimals: number, words: Words): string => words.amounts.fixed(value, decimals);

function loopText({ gauge, brief }: Pick<Plan, 'gauge' | 'brief'>, words: Words): string {
  const { loopLengthMm, loopLengthMeasured } = gauge;
  const { stitchMm, rowMm } = gauge.asKnitted;
  const { state } = brief.swatch;
  const model = words.amounts.small(modelLoopLength(stitchMm, rowMm, state));
  const source =
    state === 'fully-relaxed' ? words.page.sourceOfModel(state) : words.page.sourceForWool(state);
  return loopLengthMeasured
    ? words.page.loopMeasured(loopLengthMm, model, source)
    : words.page.loopByModel(model, source);
}

/** Tightness factor √tex / l, and what to expect of it. */
function tightnessText(tightness: number, words: Words): string {
  const usual = words.page.usualTightness(
    labelTightness.least,
    labelTightness.most,
    firmTightness.least,
    firmTightness.most,
  );
  if (tightness < limpTightness) return words.page.limp(usual);
  if (tightness < firmTightness.least) return words.page.soft(usual);
  if (tightness > jamTightness) return words.page.jams(usual);
  return tightness > firmTightness.most ? words.page.stiff(usual) : words.page.firm(usual);
}

function classText(stitchMm: number, pitchMm: number, words: Words): string {
  const own = classesOfGauge(stitchMm);
  const [first, second] = own.map(words.prompt.yarnClass);
  const name = second ? words.page.between(first ?? '', second) : (first ?? words.page.finerThanLace);
  const usual = classesOfPitch(pitchMm);
  const bed = usual.length > 0 ? nameClasses(usual, words) : words.page.yarnFinerThanLace;
  return words.page.classByGauge(name, pitchMm, bed);
}
