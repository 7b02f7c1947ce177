/** Everything a sheet says, in words and rows; the painters only arrange it. */
import type { Plan } from '../../planning/plan.ts';
import { count, say } from '../../shared/say.ts';
import { formatLength, formatSmall, type Units } from '../../shared/units.ts';
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

export function sheetContent(plan: Plan, options: SheetOptions): SheetContent {
  const { units } = options;
  return {
    title: plainText(options.name ?? plan.brief.name),
    date: plainText(options.date),
    lead: say`A drawstring bag of slanting stripes, ${formatLength(plan.size.widthCm, units)} wide and ${formatLength(plan.size.depthCm, units)} deep`,
    facts: factsOf(plan, units).filter(({ label }) => !options.class || !ownSwatch().includes(label)),
    remarks: options.remarks ?? [],
    yarns: yarnRows(plan, units),
    tools: toolsText(plan),
    stripes: stripeRows(plan),
    stripesNote: say`Tick each stripe when its last row is done. Shape after every ${formatEvery(plan.brief.shapeEveryRows)} row (•). The needles are the edges while the stripe's last row is knitted.`,
    parts: instructionsFor(plan, units),
    blanks: options.class ? blanksFor(plan) : [],
  };
}

/** A pupil's own swatch gives these. */
const ownSwatch = (): readonly string[] => [
  say`Asked for`,
  sayMeasured(false),
  sayMeasured(true),
  say`Yarn in a stitch`,
];

const sayMeasured = (onPiece: boolean): string => (onPiece ? say`Piece measured` : say`Swatch measured`);

function factsOf(plan: Plan, units: Units): readonly Fact[] {
  const { brief, size, gauge } = plan;
  const swatchSize = [brief.swatch.widthMm, brief.swatch.heightMm]
    .map((mm) => formatLength(mm / 10, units))
    .join(' × ');
  const asked = [size.wantedWidthCm, size.wantedDepthCm].filter((cm) => cm !== null);
  return [
    {
      label: say`Flat and sewn`,
      value: `${formatLength(size.widthCm, units)} × ${formatLength(size.depthCm, units)}`,
    },
    ...(asked.length === 2
      ? [{ label: say`Asked for`, value: asked.map((cm) => formatLength(cm, units)).join(' × ') }]
      : []),
    { label: say`Below the cord`, value: formatLength(size.depthBelowCordCm, units) },
    { label: say`Round the mouth`, value: formatLength(size.mouthCm, units) },
    { label: say`Stitches`, value: say`${plan.stitches} across` },
    { label: say`Rows`, value: say`${plan.rows}: ${plan.knittedRows} knitted, 1 grafted` },
    {
      label: say`Shaping`,
      value: say`${count(plan.shapings, 'move')}, one every ${brief.shapeEveryRows} rows, ${count(brief.edgeStitches, 'edge stitch', 'edge stitches')}`,
    },
    { label: say`Crawls`, value: say`${brief.crawl}; home side ${brief.homeSide}` },
    {
      label: say`Stripes`,
      value: say`${plan.stripes.length}, at ${formatAngle(size.stripeAngleDeg)} to the bottom`,
    },
    {
      label: sayMeasured(brief.swatch.onPiece ?? false),
      value: say`${brief.swatch.stitches} stitches, ${brief.swatch.rows} rows: ${swatchSize}`,
    },
    {
      label: say`Yarn in a stitch`,
      value: `${formatSmall(gauge.loopLengthMm, units)}, ${gauge.loopLengthMeasured ? say`measured` : say`from the gauge`}`,
    },
    {
      label: say`Bed`,
      value: say`${brief.bed.needles} needles, ${formatSmall(brief.bed.pitchMm, units)} apart; ${timesHung(plan.hangings.length)}`,
    },
  ];
}

const timesHung = (hangings: number): string =>
  hangings === 1 ? say`hung once` : say`hung ${hangings} times`;

const toolsText = ({ brief }: Plan): string =>
  say`Besides: ravel cord, cast-on comb, two claw weights and a small one, transfer tool with ${count(brief.edgeStitches, 'prong')}, latch tool, blunt needle, tape measure.`;

/** The sums a pupil does with their own swatch; the counts of the plan stay. */
const blanksFor = ({ stitches, rows, shapings }: Plan): readonly Fact[] => [
  { label: say`Name`, value: '' },
  { label: say`Stitches counted`, value: say`over a width of` },
  { label: say`Rows counted`, value: say`over a height of` },
  { label: say`Stitch width w`, value: say`width ÷ stitches =` },
  { label: say`Row height h`, value: say`height ÷ rows =` },
  { label: say`Across a`, value: `${shapings} × w =` },
  { label: say`Along b`, value: `${rows} × h =` },
  { label: say`Mouth c`, value: '√(a × a + b × b) =' },
  { label: say`My bag, wide`, value: 'c ÷ 2 =' },
  { label: say`My bag, deep`, value: `${stitches - 1} × w × b ÷ c =` },
];
