/** The plan as a page to print: every number with its unit and what it means, rules of thumb called so. */
import { formatNeedle } from '../../bed/needles.ts';
import { normalTightness } from '../../planning/fabric.ts';
import type { Plan } from '../../planning/plan.ts';
import { edgesAt, type Seating, shapingsBefore, usableNeedles } from '../../planning/seatings.ts';
import { classesOfGauge, classesOfPitch, stitchesPer4In, type YarnClass } from '../../planning/yarn-class.ts';
import type { YarnNeed } from '../../planning/yarn-needs.ts';
import {
  formatLength,
  formatMass,
  formatMassNeeded,
  formatSmall,
  formatTail,
  formatYarnNeeded,
  metric,
  type Units,
} from '../../shared/units.ts';
import { formatDuration } from './logs.ts';
import { count, formatList } from './numbers.ts';
import { labelled, table, wrap } from './page.ts';
import { formatWarning } from './warnings.ts';

export interface PageOptions {
  readonly units?: Units;
  /** From the maker's own finished bags; without any, no time is foretold. */
  readonly minutesPerRow?: number | null;
}

export function formatPlanPage(
  plan: Plan,
  { units = metric, minutesPerRow = null }: PageOptions = {},
): string {
  const sections: readonly (readonly string[])[] = [
    wrap(plan.brief.name, 78),
    ['SIZE', ...sizeLines(plan, units), ...timeLines(plan, minutesPerRow)],
    ['FABRIC', ...fabricLines(plan, units)],
    ['BED', ...bedLines(plan, units)],
    ['YARN', ...yarnLines(plan, units)],
    ['BY HAND', ...handLines(plan, units)],
    ...(plan.warnings.length > 0 ? [['LOOK AT THIS FIRST', ...warningLines(plan)]] : []),
  ];
  return sections.map((lines) => lines.join('\n')).join('\n\n');
}

function sizeLines({ size, brief, ...plan }: Plan, units: Units): readonly string[] {
  const cm = (length: number): string => formatLength(length, units);
  const wanted = (length: number | null): string => (length === null ? '' : ` (${cm(length)} wanted)`);
  const below = brief.bag.by === 'contents' ? wanted(size.wantedDepthBelowCordCm) : '';
  const nearby = plan.neighbours.map(
    ({ rows, stitches, widthCm, depthCm }) =>
      `${rows} rows of ${stitches} stitches make ${cm(widthCm)} by ${cm(depthCm)}`,
  );
  return [
    ...labelled(
      'bag',
      `${cm(size.widthCm)} wide${wanted(size.wantedWidthCm)}, ${cm(size.depthCm)} deep${wanted(size.wantedDepthCm)}, flat and sewn.`,
    ),
    ...labelled(
      'cord',
      `${cm(size.depthBelowCordCm)} deep below the cord${below}; the mouth is ${cm(size.mouthCm)} round.`,
    ),
    ...labelled(
      'counts',
      `${count(plan.stitches, 'stitch', 'stitches')}; ${plan.rows} rows round, of which ${plan.knittedRows} are knitted and the last is the graft.`,
    ),
    ...labelled(
      'shaping',
      `${count(plan.shapings, 'move')}, one after every ${brief.shapeEveryRows} rows, ${count(brief.edgeStitches, 'stitch', 'stitches')} at each edge. Stripes slant ${Math.round(size.stripeAngleDeg)} degrees from the bottom.`,
    ),
    ...labelled('stripes', `${plan.stripes.length}: ${stripeText(brief)}.`),
    ...labelled('nearby', `${formatList(nearby)}.`),
  ];
}

function stripeText(brief: Plan['brief']): string {
  const rows = brief.stripes.map((stripe) => `${stripe.yarn} ${stripe.rows}`);
  const shown = rows.length > 12 ? [...rows.slice(0, 12), '…'] : rows;
  return `${shown.join(', ')} rows${brief.scraps ? ', laid out from the scraps' : ', over and over'}`;
}

const timeLines = ({ knittedRows }: Plan, minutesPerRow: number | null): readonly string[] =>
  minutesPerRow === null
    ? []
    : labelled(
        'time',
        `about ${formatDuration(knittedRows * minutesPerRow * 60)} for the rows, at the pace of your finished bags.`,
      );

function fabricLines({ gauge, tightness, brief }: Plan, units: Units): readonly string[] {
  const { stitchMm, rowMm, loopLengthMm, loopLengthMeasured } = gauge;
  const per = units.length === 'cm' ? { name: '10 cm', mm: 100 } : { name: '4 in', mm: 101.6 };
  const source = loopLengthMeasured
    ? 'measured'
    : `by the model for ${brief.swatch.state} plain knitting (Munden 1959)`;
  const { least, most } = normalTightness;
  const sense =
    tightness < least ? 'looser than usual' : tightness > most ? 'tighter than usual' : 'as usual';
  return [
    ...labelled(
      'gauge',
      `${(per.mm / stitchMm).toFixed(1)} stitches and ${(per.mm / rowMm).toFixed(1)} rows to ${per.name}; a stitch is ${formatSmall(stitchMm, units)} wide, a row ${formatSmall(rowMm, units)} high.`,
    ),
    ...labelled('loop', `${loopLengthMm.toFixed(1)} mm of yarn in a stitch, ${source}.`),
    ...labelled(
      'tightness',
      `${tightness.toFixed(2)}, ${sense}: plain knitting is normally ${least} to ${most} (textile handbooks).`,
    ),
    ...labelled('class', classText(stitchMm, brief.bed.pitchMm, units)),
  ];
}

function classText(stitchMm: number, pitchMm: number, units: Units): string {
  const classes = classesOfGauge(stitchesPer4In(stitchMm));
  const names = classes.map(nameClass);
  const own =
    names.length === 0 ? 'finer than lace' : names.length === 1 ? names[0] : `between ${names.join(' and ')}`;
  const suited = classesOfPitch(pitchMm).map(nameClass);
  return `${own} (Craft Yarn Council). A pitch of ${formatSmall(pitchMm, units)} suits ${suited.length > 0 ? formatList(suited, 'or') : 'none of the classes'} best (rule of thumb).`;
}

const nameClass = ({ number, name }: YarnClass): string => `${number} ${name}`;

function bedLines(plan: Plan, units: Units): readonly string[] {
  const { bed, crawl, homeSide } = plan.brief;
  return [
    ...labelled(
      'needles',
      `${plan.needlesUsed} in all, of ${bed.needles} on the bed (pitch ${formatSmall(bed.pitchMm, units)}, ${usableNeedles(plan.brief)} within the margins).`,
    ),
    ...labelled(
      'carriage',
      `the work crawls to the ${crawl}; the carriage waits on the ${homeSide} between stripes.`,
    ),
    ...plan.seatings.flatMap((seating, i) =>
      labelled(plan.seatings.length > 1 ? `seating ${i + 1}` : 'seating', seatingText(plan, seating)),
    ),
  ];
}

function seatingText({ brief }: Plan, seating: Seating): string {
  const { fromRow, throughRow } = seating;
  const { crawl, shapeEveryRows, bed } = brief;
  const span = (row: number): string => {
    const { left, right } = edgesAt(seating, shapingsBefore(row, shapeEveryRows), crawl);
    return `${formatNeedle(bed.needles, left)} to ${formatNeedle(bed.needles, right)}`;
  };
  return `rows ${fromRow} to ${throughRow}: from ${span(fromRow)}, ending on ${span(throughRow)}.`;
}

function yarnLines({ yarn, brief }: Plan, units: Units): readonly string[] {
  const rows = yarn.map((need) => yarnRow(need, need.yarn === brief.waste.yarn, units));
  const head = ['', 'length', 'weight', 'and 10 %', 'you have', ''];
  return table([head, ...rows]).map((line) => `  ${line}`);
}

function yarnRow(need: YarnNeed, waste: boolean, units: Units): readonly string[] {
  const grams = (amount: number | null, format: typeof formatMass): string =>
    amount === null ? '-' : format(amount, units);
  return [
    waste && need.yarn !== 'waste' ? `${need.yarn} (waste)` : need.yarn,
    formatYarnNeeded(need.metres, units),
    grams(need.grams, formatMassNeeded),
    grams(need.withReserveGrams, formatMassNeeded),
    grams(need.haveGrams, formatMass),
    verdict(need, waste, units),
  ];
}

function verdict({ enough, shortGrams }: YarnNeed, waste: boolean, units: Units): string {
  if (waste) return '';
  if (enough === null) return 'not weighed';
  return enough ? 'enough' : `short by ${formatMassNeeded(shortGrams ?? 0, units)}`;
}

function handLines(plan: Plan, units: Units): readonly string[] {
  const { graft, seam, cord, eyelets, brief } = plan;
  const tail = (cm: number): string => formatTail(cm, units);
  const cm = (length: number): string => formatLength(length, units);
  const through = graft.goesOnToSeam
    ? ` It goes on to sew the bottom: leave ${tail(graft.tailCm + seam.tailCm)} in all.`
    : '';
  const skipped = eyelets.skipped.length > 0 ? `; pass by number ${eyelets.skipped.join(', ')}` : '';
  return [
    ...labelled(
      'graft',
      `${count(graft.bites, 'bite')}. Tail ${tail(graft.tailCm)}: the larger of three times the width on the needles, ${cm(graft.ruleCm)} (rule of thumb), and the yarn of a row and 10 %, ${cm(graft.modelCm)}; and 15 cm to hold.${through}`,
    ),
    ...labelled(
      'seam',
      `${cm(seam.lengthCm)}, ${count(seam.barsPerSide, 'bar')} from each side. Tail ${tail(seam.tailCm)}: twice the seam and 15 cm (rule of thumb).`,
    ),
    ...labelled(
      'cord',
      `${cord.yarn}, ${count(cord.stitches, 'stitch', 'stitches')}, ${cm(cord.lengthCm)} long: the mouth and two ties of ${cm(brief.cord.tieCm)}. ${count(cord.rounds, 'round')}, ${count(cord.passes, 'pass', 'passes')}.`,
    ),
    ...labelled(
      'eyelets',
      `${eyelets.made}, ${cm(eyelets.spacingCm)} apart; the cord uses ${eyelets.used.length}${skipped}. The widest gap is ${cm(eyelets.widestGapCm)}.`,
    ),
  ];
}

const warningLines = ({ warnings }: Plan): readonly string[] =>
  warnings.flatMap((warning) =>
    wrap(formatWarning(warning), 74).map((line, i) => `${i === 0 ? '  - ' : '    '}${line}`),
  );
