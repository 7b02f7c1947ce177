import type { Stripe } from '../../planning/brief.ts';
import type { BagFromYarn, BagLimit } from '../../planning/from-yarn.ts';
import type { Neighbour, Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { labelled } from './page.ts';

/** Longer repeats are listed in a section of their own. */
const mostInLine = 8;

export function sizeLines(
  plan: Plan,
  words: Words,
  fromYarn: Omit<BagFromYarn, 'plan'> | null,
): readonly string[] {
  const { size, brief } = plan;
  const length = (cm: number): string => words.amounts.length(cm);
  return [
    ...labelled(
      words.say`bag`,
      words.say`${length(size.widthCm)} ± ${length(size.widthUncertaintyCm)} wide and ${length(size.depthCm)} ± ${length(size.depthUncertaintyCm)} deep, flat and sewn, ${brief.finishState} (19 of 20 bags lie within)`,
    ),
    ...doubtLines(plan, words),
    ...learnedLines(plan, words),
    ...asKnittedLines(plan, words),
    ...labelled(words.say`asked`, fromYarn ? limitText(fromYarn.limit, words) : askedText(plan, words)),
    ...labelled(
      words.say`inside`,
      words.say`${length(size.depthBelowCordCm)} deep below the cord; the mouth is ${length(size.mouthCm)} round`,
    ),
    ...labelled(
      words.say`knit`,
      words.say`${words.count(plan.stitches, 'stitch', 'stitches')}, ${words.count(plan.rows, 'row')} round: ${plan.knittedRows} are knitted, the graft is the last`,
    ),
    ...labelled(
      words.say`shaping`,
      words.say`${words.count(plan.shapings, 'move')}, one after every ${words.count(brief.shapeEveryRows, 'row')}, ${words.count(brief.edgeStitches, 'stitch', 'stitches')} at each edge`,
    ),
    ...labelled(
      words.say`stripes`,
      words.say`${stripeText(plan, words)}; stripes slant ${Math.round(size.stripeAngleDeg)} degrees from the bottom`,
    ),
    ...(fromYarn
      ? [...toKnitLines(plan, words), ...nearShapeLines(fromYarn, words)]
      : neighbourLines(plan, words)),
  ];
}

/** What would make the doubt smaller. */
function doubtLines({ size: { smallerDoubt: less } }: Plan, words: Words): readonly string[] {
  if (!less) return [];
  const left = words.say`${words.amounts.length(less.widthCm)} and ± ${words.amounts.length(less.depthCm)}`;
  return labelled(
    words.say`surer`,
    less.by === 'larger-swatch'
      ? words.say`a swatch of ${less.stitches} stitches and ${less.rows} rows: ± ${left}`
      : words.say`look how far the swatch's top edge stands aside, and write it as asideCm (0.1 where it is straight): ± ${left}`,
  );
}

/** What finished bags of the same swatch told. */
function learnedLines({ brief: { learned } }: Plan, words: Words): readonly string[] {
  const { plan: say } = words;
  return learned ? labelled(say.learned, say.toldByBags(learned)) : [];
}

function asKnittedLines({ asKnitted, brief }: Plan, words: Words): readonly string[] {
  if (!asKnitted) return [];
  return labelled(
    words.say`as knit`,
    words.say`${words.amounts.length(asKnitted.widthCm)} wide and ${words.amounts.length(asKnitted.depthCm)} deep, ${brief.swatch.state} as the swatch was`,
  );
}

/** A bag planned from its yarn is in no brief yet. */
const toKnitLines = ({ stitches, rows }: Plan, words: Words): readonly string[] =>
  labelled(
    words.say`write`,
    words.say`"bag": {"stitches": ${stitches}, "rows": ${rows}} into the brief to knit it`,
  );

function nearShapeLines({ nearShapes }: Omit<BagFromYarn, 'plan'>, words: Words): readonly string[] {
  const { orElse, nearShape } = words.plan;
  return nearShapes.flatMap((one, i) => labelled(i === 0 ? orElse : '', nearShape(one)));
}

const neighbourLines = (plan: Plan, words: Words): readonly string[] => [
  ...plan.neighbours.flatMap((neighbour) =>
    labelled(
      neighbour.rows < plan.rows ? words.say`smaller` : words.say`larger`,
      neighbourText(plan, neighbour, words),
    ),
  ),
  ...stepLines(plan, words),
];

/** How far a repeat steps, where the doubt is as large as half of it and the next size may come out instead. */
function stepLines({ neighbours, size }: Plan, { plan: words }: Words): readonly string[] {
  const next = neighbours.at(-1);
  const stepCm = next ? next.widthCm - size.widthCm : 0;
  return next && size.widthUncertaintyCm >= stepCm / 2
    ? labelled(words.step, words.stepBesideDoubt(stepCm, size.widthUncertaintyCm))
    : [];
}

function askedText({ size, brief }: Plan, words: Words): string {
  const length = (cm: number | null): string => words.amounts.length(cm ?? 0);
  switch (brief.bag.by) {
    case 'size':
      return words.say`${length(size.wantedWidthCm)} wide and ${length(size.wantedDepthCm)} deep`;
    case 'counts':
      return words.say`${words.count(brief.bag.stitches, 'stitch', 'stitches')} and ${words.count(brief.bag.rows, 'row')}`;
    case 'contents': {
      const { girthCm, heightCm, thicknessCm, easePercent } = brief.bag;
      return words.say`at least ${length(size.wantedWidthCm)} wide and ${length(size.wantedDepthBelowCordCm)} deep below the cord, for what is ${length(girthCm)} round, ${length(heightCm)} high and ${length(thicknessCm)} thick, with ${easePercent} % ease both ways (rule of thumb); it stands on the bottom seam, and the bag closes over it`;
    }
  }
}

function limitText(limit: BagLimit, words: Words): string {
  const largest = words.say`the largest of its shape that the weighed yarn allows`;
  switch (limit.by) {
    case 'yarn':
      return words.say`${largest}; one repeat more would take more ${limit.yarn} than there is`;
    case 'scraps':
      return words.say`${largest}; the scraps give no sequence for more`;
    case 'bed':
      return words.say`${largest}; one repeat more would not fit the ${words.count(limit.usable, 'needle')} within the margins`;
    case 'width':
      return words.say`${largest}, and no wider than ${words.amounts.length(limit.mostCm)}`;
  }
}

/** Scraps follow no repeat, nor does a bag whose colours changed on the way. */
const followsRepeat = ({ brief, stripes }: Plan): boolean =>
  !brief.scraps && stripes.every(({ yarn }, i) => yarn === brief.stripes[i % brief.stripes.length]?.yarn);

const listedStripes = (plan: Plan): readonly Stripe[] =>
  followsRepeat(plan) ? plan.brief.stripes : plan.stripes;

const listsStripes = (plan: Plan): boolean => !followsRepeat(plan) || plan.brief.stripes.length > mostInLine;

const isOneYarn = ({ stripes }: Plan): boolean => stripes.every(({ yarn }) => yarn === stripes[0]?.yarn);

function stripeText(plan: Plan, words: Words): string {
  const { brief, stripes, rows } = plan;
  if (isOneYarn(plan)) {
    return words.say`${stripes[0]?.yarn ?? ''} throughout, no colour changes; the closing row, graft and seam take it too`;
  }
  if (brief.scraps)
    return words.say`${stripes.length} of ${words.count(brief.scraps.rows, 'row')}, listed below`;
  if (!followsRepeat(plan)) return words.say`${stripes.length} stripes, listed below`;
  const repeatRows = brief.stripes.reduce((sum, stripe) => sum + stripe.rows, 0);
  const times = words.count(rows / repeatRows, 'time');
  return listsStripes(plan)
    ? words.say`${times} a repeat of ${brief.stripes.length} stripes, listed below`
    : words.say`${times} ${brief.stripes.map(({ yarn, rows: own }) => `${yarn} ${own}`).join(', ')} rows`;
}

/** One repeat, or the whole sequence of scraps, with the number of the first stripe in each line. */
export function stripeLines(plan: Plan, words: Words): readonly string[] {
  if (!listsStripes(plan) || isOneYarn(plan)) return [];
  const names = listedStripes(plan).map(({ yarn, rows }) => (plan.brief.scraps ? yarn : `${yarn} ${rows}`));
  const lines: string[] = [];
  for (let first = 0; first < names.length; first += mostInLine) {
    const shown = names.slice(first, first + mostInLine);
    lines.push(...labelled(words.say`${first + 1} to ${first + shown.length}`, shown.join(', ')));
  }
  return lines;
}

function neighbourText(
  plan: Plan,
  { rows, stitches, widthCm, depthCm, fitsBed }: Neighbour,
  words: Words,
): string {
  const size = words.say`${words.amounts.length(widthCm)} by ${words.amounts.length(depthCm)}`;
  const counts =
    stitches === plan.stitches
      ? words.count(rows, 'row')
      : words.say`${words.count(rows, 'row')} of ${stitches} stitches`;
  return fitsBed
    ? words.say`${size}, with ${counts}`
    : words.say`${size}, with ${counts}, which this bed is too short for`;
}
