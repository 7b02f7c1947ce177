/** Everything a sheet says, in words and rows; the painters only arrange it. */

import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { formatAngle, formatEvery } from '../measure.ts';
import { plainText } from '../text.ts';
import { type Instructions, instructionsFor } from './instructions.ts';
import type { SheetOptions } from './options.ts';
import { type StripeRow, stripeRows } from './stripe-rows.ts';
import { type YarnRow, yarnRows } from './yarn-rows.ts';

export interface Fact {
  readonly label: string;
  readonly value: string;
}

export interface SheetContent {
  readonly title: string;
  readonly date: string;
  readonly lead: string;
  readonly facts: readonly Fact[];
  readonly remarks: readonly string[];
  readonly yarns: readonly YarnRow[];
  readonly tools: string;
  readonly stripes: readonly StripeRow[];
  readonly stripesNote: string;
  readonly parts: Instructions;
  /** What a pupil fills in; empty where the sheet is not for a class. */
  readonly blanks: readonly Fact[];
}

export function sheetContent(plan: Plan, options: SheetOptions, words: Words): SheetContent {
  return {
    title: plainText(options.name ?? plan.brief.name),
    date: plainText(options.date),
    lead: words.say`A drawstring bag of slanting stripes, ${words.amounts.length(plan.size.widthCm)} wide and ${words.amounts.length(plan.size.depthCm)} deep`,
    facts: factsOf(plan, words).filter(({ label }) => !options.class || !ownSwatch(words).includes(label)),
    remarks: options.remarks ?? [],
    yarns: yarnRows(plan, words),
    tools: toolsText(plan, words),
    stripes: stripeRows(plan, words),
    stripesNote: words.say`Tick each stripe when its last row is done. Shape after every ${formatEvery(plan.brief.shapeEveryRows, words)} row (•). The needles are the edges while the stripe's last row is knitted.`,
    parts: instructionsFor(plan, words),
    blanks: options.class ? blanksFor(plan, words) : [],
  };
}

/** A pupil's own swatch gives these. */
const ownSwatch = (words: Words): readonly string[] => [
  words.say`Asked for`,
  sayMeasured(false, words),
  sayMeasured(true, words),
  words.say`Yarn in a stitch`,
];

const sayMeasured = (onPiece: boolean, words: Words): string =>
  onPiece ? words.say`Piece measured` : words.say`Swatch measured`;

function factsOf(plan: Plan, words: Words): readonly Fact[] {
  const { brief, size, gauge } = plan;
  const swatchSize = [brief.swatch.widthMm, brief.swatch.heightMm]
    .map((mm) => words.amounts.length(mm / 10))
    .join(' × ');
  const asked = [size.wantedWidthCm, size.wantedDepthCm].filter((cm) => cm !== null);
  return [
    {
      label: words.say`Flat and sewn`,
      value: `${words.amounts.length(size.widthCm)} × ${words.amounts.length(size.depthCm)}`,
    },
    ...(asked.length === 2
      ? [{ label: words.say`Asked for`, value: asked.map((cm) => words.amounts.length(cm)).join(' × ') }]
      : []),
    { label: words.say`Below the cord`, value: words.amounts.length(size.depthBelowCordCm) },
    { label: words.say`Round the mouth`, value: words.amounts.length(size.mouthCm) },
    { label: words.say`Stitches`, value: words.say`${plan.stitches} across` },
    { label: words.say`Rows`, value: words.say`${plan.rows}: ${plan.knittedRows} knitted, 1 grafted` },
    {
      label: words.say`Shaping`,
      value: words.say`${words.count(plan.shapings, 'move')}, one every ${brief.shapeEveryRows} rows, ${words.count(brief.edgeStitches, 'edge stitch', 'edge stitches')}`,
    },
    { label: words.say`Crawls`, value: words.say`${brief.crawl}; home side ${brief.homeSide}` },
    {
      label: words.say`Stripes`,
      value: words.say`${plan.stripes.length}, at ${formatAngle(size.stripeAngleDeg)} to the bottom`,
    },
    {
      label: sayMeasured(brief.swatch.onPiece ?? false, words),
      value: words.say`${brief.swatch.stitches} stitches, ${brief.swatch.rows} rows: ${swatchSize}`,
    },
    {
      label: words.say`Yarn in a stitch`,
      value: `${words.amounts.small(gauge.loopLengthMm)}, ${gauge.loopLengthMeasured ? words.say`measured` : words.say`from the gauge`}`,
    },
    {
      label: words.say`Bed`,
      value: words.say`${brief.bed.needles} needles, ${words.amounts.small(brief.bed.pitchMm)} apart; ${timesHung(plan.hangings.length, words)}`,
    },
  ];
}

const timesHung = (hangings: number, words: Words): string =>
  hangings === 1 ? words.say`hung once` : words.say`hung ${hangings} times`;

const toolsText = ({ brief }: Plan, words: Words): string =>
  words.say`Besides: ravel cord, cast-on comb, two claw weights and a small one, transfer tool with ${words.count(brief.edgeStitches, 'prong')}, latch tool, blunt needle, tape measure.`;

/** The sums a pupil does with their own swatch; the counts of the plan stay. */
const blanksFor = ({ stitches, rows, shapings }: Plan, words: Words): readonly Fact[] => [
  { label: words.say`Name`, value: '' },
  { label: words.say`Stitches counted`, value: words.say`over a width of` },
  { label: words.say`Rows counted`, value: words.say`over a height of` },
  { label: words.say`Stitch width w`, value: words.say`width ÷ stitches =` },
  { label: words.say`Row height h`, value: words.say`height ÷ rows =` },
  { label: words.say`Across a`, value: `${shapings} × w =` },
  { label: words.say`Along b`, value: `${rows} × h =` },
  { label: words.say`Mouth c`, value: '√(a × a + b × b) =' },
  { label: words.say`My bag, wide`, value: 'c ÷ 2 =' },
  { label: words.say`My bag, deep`, value: `${stitches - 1} × w × b ÷ c =` },
];
