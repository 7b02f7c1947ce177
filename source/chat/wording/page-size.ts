import type { Stripe } from '../../planning/brief.ts';
import type { BagFromYarn, BagLimit } from '../../planning/from-yarn.ts';
import type { Neighbour, Plan } from '../../planning/plan.ts';
import { count, say } from '../../shared/say.ts';
import { formatLength, type Units } from '../../shared/units.ts';
import { currentWords } from '../../wording/current.ts';
import { labelled } from './page.ts';

/** Longer repeats are listed in a section of their own. */
const mostInLine = 8;

export function sizeLines(
  plan: Plan,
  units: Units,
  fromYarn: Omit<BagFromYarn, 'plan'> | null,
): readonly string[] {
  const { size, brief } = plan;
  const length = (cm: number): string => formatLength(cm, units);
  return [
    ...labelled(
      say`bag`,
      say`${length(size.widthCm)} ± ${length(size.widthUncertaintyCm)} wide and ${length(size.depthCm)} ± ${length(size.depthUncertaintyCm)} deep, flat and sewn, ${brief.finishState} (19 of 20 bags lie within)`,
    ),
    ...doubtLines(plan, units),
    ...learnedLines(plan, units),
    ...asKnittedLines(plan, units),
    ...labelled(say`asked`, fromYarn ? limitText(fromYarn.limit, units) : askedText(plan, units)),
    ...labelled(
      say`inside`,
      say`${length(size.depthBelowCordCm)} deep below the cord; the mouth is ${length(size.mouthCm)} round`,
    ),
    ...labelled(
      say`knit`,
      say`${count(plan.stitches, 'stitch', 'stitches')}, ${count(plan.rows, 'row')} round: ${plan.knittedRows} are knitted, the graft is the last`,
    ),
    ...labelled(
      say`shaping`,
      say`${count(plan.shapings, 'move')}, one after every ${count(brief.shapeEveryRows, 'row')}, ${count(brief.edgeStitches, 'stitch', 'stitches')} at each edge`,
    ),
    ...labelled(
      say`stripes`,
      say`${stripeText(plan)}; stripes slant ${Math.round(size.stripeAngleDeg)} degrees from the bottom`,
    ),
    ...(fromYarn ? [...toKnitLines(plan), ...nearShapeLines(fromYarn, units)] : neighbourLines(plan, units)),
  ];
}

/** What would make the doubt smaller. */
function doubtLines({ size: { smallerDoubt: less } }: Plan, units: Units): readonly string[] {
  if (!less) return [];
  const left = say`${formatLength(less.widthCm, units)} and ± ${formatLength(less.depthCm, units)}`;
  return labelled(
    say`surer`,
    less.by === 'larger-swatch'
      ? say`a swatch of ${less.stitches} stitches and ${less.rows} rows: ± ${left}`
      : say`look how far the swatch's top edge stands aside, and write it as asideCm (0.1 where it is straight): ± ${left}`,
  );
}

/** What finished bags of the same swatch told. */
function learnedLines({ brief: { learned } }: Plan, units: Units): readonly string[] {
  const words = currentWords(units).plan;
  return learned ? labelled(words.learned, words.toldByBags(learned)) : [];
}

function asKnittedLines({ asKnitted, brief }: Plan, units: Units): readonly string[] {
  if (!asKnitted) return [];
  return labelled(
    say`as knit`,
    say`${formatLength(asKnitted.widthCm, units)} wide and ${formatLength(asKnitted.depthCm, units)} deep, ${brief.swatch.state} as the swatch was`,
  );
}

/** A bag planned from its yarn is in no brief yet. */
const toKnitLines = ({ stitches, rows }: Plan): readonly string[] =>
  labelled(say`write`, say`"bag": {"stitches": ${stitches}, "rows": ${rows}} into the brief to knit it`);

function nearShapeLines({ nearShapes }: Omit<BagFromYarn, 'plan'>, units: Units): readonly string[] {
  const { orElse, nearShape } = currentWords(units).plan;
  return nearShapes.flatMap((one, i) => labelled(i === 0 ? orElse : '', nearShape(one)));
}

const neighbourLines = (plan: Plan, units: Units): readonly string[] =>
  plan.neighbours.flatMap((neighbour) =>
    labelled(neighbour.rows < plan.rows ? say`smaller` : say`larger`, neighbourText(plan, neighbour, units)),
  );

function askedText({ size, brief }: Plan, units: Units): string {
  const length = (cm: number | null): string => formatLength(cm ?? 0, units);
  switch (brief.bag.by) {
    case 'size':
      return say`${length(size.wantedWidthCm)} wide and ${length(size.wantedDepthCm)} deep`;
    case 'counts':
      return say`${count(brief.bag.stitches, 'stitch', 'stitches')} and ${count(brief.bag.rows, 'row')}`;
    case 'contents': {
      const { girthCm, heightCm, thicknessCm, easePercent } = brief.bag;
      return say`at least ${length(size.wantedWidthCm)} wide and ${length(size.wantedDepthBelowCordCm)} deep below the cord, for what is ${length(girthCm)} round, ${length(heightCm)} high and ${length(thicknessCm)} thick, with ${easePercent} % ease both ways (rule of thumb); it stands on the bottom seam, and the bag closes over it`;
    }
  }
}

function limitText(limit: BagLimit, units: Units): string {
  const largest = say`the largest of its shape that the weighed yarn allows`;
  switch (limit.by) {
    case 'yarn':
      return say`${largest}; one repeat more would take more ${limit.yarn} than there is`;
    case 'scraps':
      return say`${largest}; the scraps give no sequence for more`;
    case 'bed':
      return say`${largest}; one repeat more would not fit the ${count(limit.usable, 'needle')} within the margins`;
    case 'width':
      return say`${largest}, and no wider than ${formatLength(limit.mostCm, units)}`;
  }
}

/** Scraps follow no repeat, nor does a bag whose colours changed on the way. */
const followsRepeat = ({ brief, stripes }: Plan): boolean =>
  !brief.scraps && stripes.every(({ yarn }, i) => yarn === brief.stripes[i % brief.stripes.length]?.yarn);

const listedStripes = (plan: Plan): readonly Stripe[] =>
  followsRepeat(plan) ? plan.brief.stripes : plan.stripes;

const listsStripes = (plan: Plan): boolean => !followsRepeat(plan) || plan.brief.stripes.length > mostInLine;

const isOneYarn = ({ stripes }: Plan): boolean => stripes.every(({ yarn }) => yarn === stripes[0]?.yarn);

function stripeText(plan: Plan): string {
  const { brief, stripes, rows } = plan;
  if (isOneYarn(plan)) {
    return say`${stripes[0]?.yarn ?? ''} throughout, no colour changes; the closing row, graft and seam take it too`;
  }
  if (brief.scraps) return say`${stripes.length} of ${count(brief.scraps.rows, 'row')}, listed below`;
  if (!followsRepeat(plan)) return say`${stripes.length} stripes, listed below`;
  const repeatRows = brief.stripes.reduce((sum, stripe) => sum + stripe.rows, 0);
  const times = count(rows / repeatRows, 'time');
  return listsStripes(plan)
    ? say`${times} a repeat of ${brief.stripes.length} stripes, listed below`
    : say`${times} ${brief.stripes.map(({ yarn, rows: own }) => `${yarn} ${own}`).join(', ')} rows`;
}

/** One repeat, or the whole sequence of scraps, with the number of the first stripe in each line. */
export function stripeLines(plan: Plan): readonly string[] {
  if (!listsStripes(plan) || isOneYarn(plan)) return [];
  const names = listedStripes(plan).map(({ yarn, rows }) => (plan.brief.scraps ? yarn : `${yarn} ${rows}`));
  const lines: string[] = [];
  for (let first = 0; first < names.length; first += mostInLine) {
    const shown = names.slice(first, first + mostInLine);
    lines.push(...labelled(say`${first + 1} to ${first + shown.length}`, shown.join(', ')));
  }
  return lines;
}

function neighbourText(
  plan: Plan,
  { rows, stitches, widthCm, depthCm, fitsBed }: Neighbour,
  units: Units,
): string {
  const size = say`${formatLength(widthCm, units)} by ${formatLength(depthCm, units)}`;
  const counts =
    stitches === plan.stitches ? count(rows, 'row') : say`${count(rows, 'row')} of ${stitches} stitches`;
  return fitsBed
    ? say`${size}, with ${counts}`
    : say`${size}, with ${counts}, which this bed is too short for`;
}
