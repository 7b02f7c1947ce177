import type { Stripe } from '../planning/brief.ts';
import type { Neighbour } from '../planning/fault.ts';
import type { BagFromYarn, BagLimit } from '../planning/from-yarn.ts';
import type { Plan } from '../planning/plan.ts';
import { smallerDoubt } from '../planning/uncertainty.ts';
import { labelled } from './page.ts';
import type { Words } from './words.ts';

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
      words.page.labels.bag,
      words.page.sizeIs(
        length(size.widthCm),
        length(size.widthUncertaintyCm),
        length(size.depthCm),
        length(size.depthUncertaintyCm),
        brief.finishState,
      ),
    ),
    ...doubtLines(plan, words),
    ...learnedLines(plan, words),
    ...asKnittedLines(plan, words),
    ...labelled(
      words.page.labels.asked,
      fromYarn ? limitText(fromYarn.limit, words) : askedText(plan, words),
    ),
    ...labelled(
      words.page.labels.inside,
      words.page.inside(length(size.depthBelowCordCm), length(size.mouthCm)),
    ),
    ...baseLines(plan, words),
    ...labelled(words.page.labels.knit, words.page.knit(plan.stitches, plan.rows, plan.knittedRows)),
    ...labelled(
      words.page.labels.shaping,
      words.page.shaping(plan.shapings, brief.shapeEveryRows, brief.edgeStitches),
    ),
    ...labelled(
      words.page.labels.stripes,
      words.page.stripesSlant(stripeText(plan, words), Math.round(size.stripeAngleDeg)),
    ),
    ...(fromYarn
      ? [...toKnitLines(plan, words), ...nearShapeLines(fromYarn, words)]
      : neighbourLines(plan, words)),
  ];
}

function baseLines({ boxed }: Plan, { page }: Words): readonly string[] {
  if (!boxed) return [];
  const { baseWidthCm, baseDepthCm, sideCm, sideBelowCordCm } = boxed;
  return labelled(page.labels.base, page.base(baseWidthCm, baseDepthCm, sideCm, sideBelowCordCm));
}

/** What would make the doubt smaller. */
function doubtLines(plan: Plan, words: Words): readonly string[] {
  const less = smallerDoubt(plan);
  if (!less) return [];
  const left = words.page.plusMinus(less.widthCm, less.depthCm);
  return labelled(
    words.page.labels.surer,
    less.by === 'larger-swatch'
      ? words.page.largerSwatch(less.stitches, less.rows, left)
      : words.page.lookAside(left),
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
    words.page.labels.asKnit,
    words.page.asKnit(asKnitted.widthCm, asKnitted.depthCm, brief.swatch.state),
  );
}

/** A bag planned from its yarn is in no brief yet. */
const toKnitLines = ({ stitches, rows, brief }: Plan, words: Words): readonly string[] =>
  labelled(words.page.labels.write, words.page.writeSize(stitches, rows, brief.boxedCm));

function nearShapeLines({ nearShapes }: Omit<BagFromYarn, 'plan'>, words: Words): readonly string[] {
  const { orElse, nearShape } = words.plan;
  return nearShapes.flatMap((one, i) => labelled(i === 0 ? orElse : '', nearShape(one)));
}

const neighbourLines = (plan: Plan, words: Words): readonly string[] => [
  ...plan.neighbours.flatMap((neighbour) =>
    labelled(
      neighbour.rows < plan.rows ? words.page.smaller : words.page.larger,
      neighbourText(plan, neighbour, words),
    ),
  ),
  ...stepLines(plan, words),
];

/** How far a repeat steps, where the doubt is as large as half of it and the next size may come out instead. */
function stepLines({ neighbours, size }: Plan, { plan: words }: Words): readonly string[] {
  const next = neighbours.at(-1);
  const repeatCm = next ? next.widthCm - size.widthCm : 0;
  return next && size.widthUncertaintyCm >= repeatCm / 2
    ? labelled(words.repeat, words.repeatBesideDoubt(repeatCm, size.widthUncertaintyCm))
    : [];
}

function askedText(plan: Plan, words: Words): string {
  const { size, brief } = plan;
  const length = (cm: number | null): string => words.amounts.length(cm ?? 0);
  switch (brief.bag.by) {
    case 'size':
      return words.page.wideAndDeep(length(size.wantedWidthCm), length(size.wantedDepthCm));
    case 'counts':
      return words.page.counts(brief.bag.stitches, brief.bag.rows);
    case 'contents': {
      const { girthCm, heightCm, thicknessCm, easePercent } = brief.bag;
      return words.page.contentsNeed(
        length(size.wantedWidthCm),
        length(size.wantedDepthBelowCordCm),
        length(girthCm),
        length(heightCm),
        length(thicknessCm),
        easePercent,
        plan.boxed !== null,
      );
    }
  }
}

function limitText(limit: BagLimit, words: Words): string {
  const largest = words.page.largest;
  switch (limit.by) {
    case 'yarn':
      return words.page.limitedByYarn(largest, limit.yarn);
    case 'scraps':
      return words.page.limitedByScraps(largest);
    case 'bed':
      return words.page.limitedByBed(largest, limit.usable);
    case 'width':
      return words.page.limitedByWidth(largest, limit.mostCm);
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
    return words.page.oneYarn(stripes[0]?.yarn ?? '');
  }
  if (brief.scraps) return words.page.listedStripes(stripes.length, brief.scraps.rows);
  if (!followsRepeat(plan)) return words.page.unevenStripes(stripes.length);
  const repeatRows = brief.stripes.reduce((sum, stripe) => sum + stripe.rows, 0);
  const times = words.plurals.time(rows / repeatRows);
  return listsStripes(plan)
    ? words.page.repeatOf(times, brief.stripes.length)
    : words.page.repeat(times, brief.stripes.map(({ yarn, rows: own }) => `${yarn} ${own}`).join(', '));
}

/** One repeat, or the whole sequence of scraps, with the number of the first stripe in each line. */
export function stripeLines(plan: Plan, words: Words): readonly string[] {
  if (!listsStripes(plan) || isOneYarn(plan)) return [];
  const names = listedStripes(plan).map(({ yarn, rows }) => (plan.brief.scraps ? yarn : `${yarn} ${rows}`));
  const lines: string[] = [];
  for (let first = 0; first < names.length; first += mostInLine) {
    const shown = names.slice(first, first + mostInLine);
    lines.push(...labelled(words.page.to(first + 1, first + shown.length), shown.join(', ')));
  }
  return lines;
}

function neighbourText(
  plan: Plan,
  { rows, stitches, widthCm, depthCm, fitsBed }: Neighbour,
  words: Words,
): string {
  const size = words.page.by(widthCm, depthCm);
  const counts = stitches === plan.stitches ? words.plurals.row(rows) : words.page.stripesOf(rows, stitches);
  return fitsBed ? words.page.shapeWith(size, counts) : words.page.shapeTooLong(size, counts);
}
