/** Everything a sheet says, in words and rows; the painters only arrange it. */
import type { Plan } from '../../planning/plan.ts';
import { formatLength, formatSmall, type Units } from '../../shared/units.ts';
import { type ShadeWarning, shadeWarnings } from '../colour/shades.ts';
import { counted, formatAngle } from '../measure.ts';
import { inSentence, plainText } from '../text.ts';
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
    lead: `A drawstring bag of slanting stripes, ${formatLength(plan.size.widthCm, units)} wide and ${formatLength(plan.size.depthCm, units)} deep`,
    facts: factsOf(plan, units).filter(({ label }) => !options.class || !ownSwatch.includes(label)),
    remarks: [...(options.remarks ?? []), ...shadeWarnings(plan).map(formatShadeWarning)],
    yarns: yarnRows(plan, units),
    tools: toolsText(plan),
    stripes: stripeRows(plan),
    stripesNote: `Tick each stripe when its last row is done. Shape after every ${plan.brief.shapeEveryRows === 2 ? 'second' : `${plan.brief.shapeEveryRows}th`} row (•). The needles are the edges while the stripe's last row is knitted.`,
    parts: instructionsFor(plan, units),
    blanks: options.class ? blanksFor(plan) : [],
  };
}

/** A pupil's own swatch gives these. */
const ownSwatch: readonly string[] = ['Asked for', 'One stitch', 'Yarn in a stitch'];

function factsOf(plan: Plan, units: Units): readonly Fact[] {
  const { brief, size, gauge } = plan;
  const asked = [size.wantedWidthCm, size.wantedDepthCm].filter((cm) => cm !== null);
  return [
    {
      label: 'Flat and sewn',
      value: `${formatLength(size.widthCm, units)} × ${formatLength(size.depthCm, units)}`,
    },
    ...(asked.length === 2
      ? [{ label: 'Asked for', value: asked.map((cm) => formatLength(cm, units)).join(' × ') }]
      : []),
    { label: 'Below the cord', value: formatLength(size.depthBelowCordCm, units) },
    { label: 'Round the mouth', value: formatLength(size.mouthCm, units) },
    { label: 'Stitches', value: `${plan.stitches} across` },
    { label: 'Rows', value: `${plan.rows}: ${plan.knittedRows} knitted, 1 grafted` },
    {
      label: 'Shaping',
      value: `${counted(plan.shapings, 'move')}, one every ${brief.shapeEveryRows} rows, ${counted(brief.edgeStitches, 'edge stitch', 'edge stitches')}`,
    },
    { label: 'Crawls', value: `${brief.crawl}; home side ${brief.homeSide}` },
    {
      label: 'Stripes',
      value: `${plan.stripes.length}, at ${formatAngle(size.stripeAngleDeg)} to the bottom`,
    },
    {
      label: 'One stitch',
      value: `${formatSmall(gauge.stitchMm, units)} wide, ${formatSmall(gauge.rowMm, units)} high`,
    },
    {
      label: 'Yarn in a stitch',
      value: `${formatSmall(gauge.loopLengthMm, units)}, ${gauge.loopLengthMeasured ? 'measured' : 'from the gauge'}`,
    },
    {
      label: 'Bed',
      value: `${brief.bed.needles} needles, ${formatSmall(brief.bed.pitchMm, units)} apart; ${timesHung(plan.seatings.length)}`,
    },
  ];
}

const timesHung = (seatings: number): string => (seatings === 1 ? 'hung once' : `hung ${seatings} times`);

const toolsText = ({ brief }: Plan): string =>
  `Besides: ravel cord, cast-on comb, two claw weights and a small one, transfer tool with ${counted(brief.edgeStitches, 'prong')}, latch tool, blunt needle, tape measure.`;

/** In one sentence: which neighbours look alike, and to whom. */
export function formatShadeWarning({ first, second, to }: ShadeWarning): string {
  const whom = to === 'everybody' ? '' : ` to people with ${to.join(' or ')} colour vision`;
  return `Stripes of ${inSentence(first)} and ${inSentence(second)} lie side by side and look much alike${whom}: choose one lighter or darker to tell them apart.`;
}

/** The sums a pupil does with their own swatch; the counts of the plan stay. */
const blanksFor = ({ stitches, rows, shapings }: Plan): readonly Fact[] => [
  { label: 'Name', value: '' },
  { label: 'Stitches counted', value: 'over a width of' },
  { label: 'Rows counted', value: 'over a height of' },
  { label: 'Stitch width w', value: 'width ÷ stitches =' },
  { label: 'Row height h', value: 'height ÷ rows =' },
  { label: 'Across a', value: `${shapings} × w =` },
  { label: 'Along b', value: `${rows} × h =` },
  { label: 'Mouth c', value: '√(a × a + b × b) =' },
  { label: 'My bag, wide', value: 'c ÷ 2 =' },
  { label: 'My bag, deep', value: `${stitches - 1} × w × b ÷ c =` },
];
