/** The plan as a page to print: every number with its unit and what it means, rules of thumb called so. */

import { formatNeedle } from '../bed/needles.ts';
import { plannedCost } from '../journal/bag-cost.ts';
import { type Pace, timeByPhase, usualPace } from '../journal/pace.ts';
import { colourRuns } from '../planning/colour-run.ts';
import { toyCordLimits } from '../planning/cord.ts';
import type { BagFromYarn } from '../planning/from-yarn.ts';
import { edgesOfRow, type Hanging, usableNeedles } from '../planning/hangings.ts';
import type { Plan } from '../planning/plan.ts';
import { closingTailCm, endTailCm, ravelEndCm } from '../planning/tails.ts';
import { planWarnings } from '../planning/warnings.ts';
import { layOutJob } from '../steps/job.ts';
import { sayBy } from './by-kind.ts';
import { labelled, pageWidth, table, wrap } from './page.ts';
import { sizeLines, stripeLines } from './page-size.ts';
import { costLines, fabricLines, yarnLines } from './page-yarn.ts';
import type { Words } from './words.ts';

const handLines = (plan: Plan, words: Words): readonly string[] => [
  ...labelled(words.page.labels.start, words.page.ravelCord(plan.ravelCordCm, ravelEndCm)),
  ...(plan.hem ? labelled(words.page.labels.hem, words.page.hem(plan.hem, plan.knittedRows)) : []),
  ...labelled(words.page.labels.graft, graftText(plan, words)),
  ...labelled(words.page.labels.seam, seamText(plan, words)),
  ...cornerLines(plan, words),
  ...labelled(
    words.page.labels.lining,
    [words.page.ifYouLineIt, ...words.page.lining(plan.lining, plan.boxed !== null)].join(' '),
  ),
  ...labelled(words.page.labels.cord, cordText(plan, words)),
  ...labelled(words.page.labels.eyelets, eyeletText(plan, words)),
  ...labelled(words.page.labels.care, careText(words)),
];

function graftText({ graft, seam, stripes }: Plan, words: Words): string {
  const needed = (cm: number): string => words.amounts.lengthNeeded(cm);
  const yarn = stripes.at(-1)?.yarn;
  const parts = graft.goesOnToSeam ? words.page.graftAndSeam(needed(graft.tailCm), needed(seam.tailCm)) : '';
  return words.page.graftAndTail(
    graft.entries,
    closingTailCm({ graft, seam }),
    yarn ?? '',
    parts,
    needed(graft.ruleCm),
    needed(graft.modelCm),
    needed(endTailCm),
  );
}

function seamText({ seam, graft, stripes }: Plan, words: Words): string {
  const tail = graft.goesOnToSeam
    ? words.page.seamWithGraft
    : words.page.seamWithOwn(seam.tailCm, stripes.at(-1)?.yarn ?? '');
  return words.page.seam(seam.lengthCm, seam.barsPerSide, tail, endTailCm);
}

function cornerLines({ boxed, stripes }: Plan, { page }: Words): readonly string[] {
  if (!boxed) return [];
  const { cornerSeamCm, fromTipCm, cornerTailCm } = boxed;
  const yarn = stripes.at(-1)?.yarn ?? '';
  return labelled(page.labels.corners, page.corners(cornerSeamCm, fromTipCm, cornerTailCm, yarn));
}

function cordText({ cord, brief }: Plan, words: Words): string {
  const { roundsPer10Cm, tieCm } = brief.cord;
  const height = roundsPer10Cm === null ? words.page.roundsByRows : words.page.roundsByCount(roundsPer10Cm);
  return words.page.cord(
    cord.draws,
    cord.stitches,
    cord.yarn,
    cord.lengthCm,
    cord.takeUpCm,
    tieCm,
    cord.rounds,
    cord.passes,
    cord.metres,
    height,
  );
}

function eyeletText({ eyelets }: Plan, words: Words): string {
  const { made, used, skipped, spacingCm, graftGapCm, widestGapCm } = eyelets;
  const apart = words.page.eyeletsApart(made, spacingCm);
  if (used.length === 0) return words.page.eyeletsTooFew(apart);
  const uses =
    skipped.length === 0 ? words.page.cordUsesAll : words.page.cordUsesSome(used.length, skipped.map(String));
  const atGraft = words.page.gapAtGraft(graftGapCm);
  const gap = skipped.length === 0 ? atGraft : words.page.widestThen(widestGapCm, atGraft);
  const second = eyelets.secondFrom === null ? '' : words.page.secondFrom(eyelets.secondFrom);
  return words.page.eyelets(apart, uses, gap) + second;
}

/** The limits in the unit in which they are published. */
const careText = (words: Words): string =>
  words.page.keepCords(toyCordLimits.freeCordCm * 10, toyCordLimits.loopCm * 10);

interface PageOptions {
  /** From the maker's own finished bags, where there are any. */
  readonly pace?: Pace;
  /** What limits a bag that was planned from its yarn, and others near it; null where a size was asked for. */
  readonly fromYarn?: Omit<BagFromYarn, 'plan'> | null;
}

/** Colours of a yarn that stripes by itself; more bands than these are counted, not listed. */
const mostBands = 16;

function runLines(plan: Plan, words: Words): readonly string[] {
  const { page } = words;
  return colourRuns(plan).flatMap(({ yarn, runMetres, rowMetres, bands, graft }) => [
    ...labelled(page.labels.run, page.run(yarn, runMetres, rowMetres)),
    ...labelled('', page.bands(bands.slice(0, mostBands), bands.length - mostBands)),
    ...(graft ? labelled('', page.runAtGraft(graft, plan.rows)) : []),
  ]);
}

/** At most `pageWidth` columns wide; warnings come last. */
export function formatPlanPage(
  plan: Plan,
  words: Words,
  { pace = usualPace, fromYarn = null }: PageOptions = {},
): string {
  const sections: readonly (readonly [title: string, lines: readonly string[]])[] = [
    [
      words.page.titles.size,
      [
        ...sizeLines(plan, words, fromYarn),
        ...timeLines(plan, pace, words),
        ...costLines(plannedCost(plan, pace), words),
      ],
    ],
    [words.page.titles.stripes, [...stripeLines(plan, words), ...runLines(plan, words)]],
    [words.page.titles.yarn, yarnLines(plan, words)],
    [words.page.titles.bed, bedLines(plan, words)],
    [words.page.titles.byHand, handLines(plan, words)],
    [words.page.titles.fabric, fabricLines(plan, words)],
    [words.page.titles.beforeYouStart, warningLines(plan, words)],
  ];
  const shown = sections.filter(([, lines]) => lines.length > 0);
  const blocks = [wrap(plan.brief.name, pageWidth), ...shown.map(([title, lines]) => [title, ...lines])];
  return blocks.map((lines) => lines.join('\n')).join('\n\n');
}

function timeLines(plan: Plan, pace: Pace, words: Words): readonly string[] {
  const { time, onTheBench } = words.plan;
  const parts = [...timeByPhase(layOutJob(plan), pace)];
  const totalS = parts.reduce((sum, [, seconds]) => sum + seconds, 0);
  const named = parts
    .filter(([, seconds]) => seconds > 0)
    .map(([phase, seconds]) => [words.prompt.phases[phase], seconds] as const);
  return labelled(time, onTheBench(totalS, named, pace.bags));
}

const warningLines = (plan: Plan, words: Words): readonly string[] =>
  planWarnings(plan).flatMap((warning) =>
    wrap(sayBy('code', words.warnings, warning), pageWidth - 4).map(
      (line, i) => `${i === 0 ? '  - ' : '    '}${line}`,
    ),
  );

/** More hangings than these are counted, not listed: the steps name each. */
const mostListed = 8;

export function bedLines(plan: Plan, words: Words): readonly string[] {
  const { bed, crawl, homeSide } = plan.brief;
  return [
    ...labelled(
      words.page.needles,
      words.page.bed(bed.needles, bed.pitchMm, usableNeedles(plan.brief), plan.needlesUsed),
    ),
    ...labelled(words.page.crawl, words.page.crawlTo(crawl, homeSide)),
    ...hangingLines(plan, words),
    ...savingLines(plan, words),
  ];
}

function hangingLines(plan: Plan, words: Words): readonly string[] {
  const { hangings } = plan;
  const [only] = hangings;
  if (only && hangings.length === 1) {
    const { hung, ends } = spansOf(plan, only, words);
    return labelled(words.page.hang, words.page.hungOnce(hung, ends));
  }
  const rows = hangings.slice(0, mostListed).map((hanging) => {
    const { hung, ends } = spansOf(plan, hanging, words);
    return [
      words.page.rows(hanging.fromRow, hanging.throughRow),
      words.page.hungOn(hung),
      words.page.endingOn(ends),
    ];
  });
  const more = hangings.length - rows.length;
  return [
    ...table(rows).map((line, i) => `  ${(i === 0 ? words.page.hang : '').padEnd(10)}${line}`),
    ...(more > 0 ? labelled('', words.page.moreHangings(more)) : []),
  ];
}

function savingLines({ savings }: Plan, words: Words): readonly string[] {
  const { saves, saving } = words.plan;
  return savings.flatMap((one, i) => labelled(i === 0 ? saves : '', saving(one)));
}

/** Where the work is hung, and the needles of its last row there. */
function spansOf(
  plan: Plan,
  hanging: Hanging,
  words: Words,
): { readonly hung: string; readonly ends: string } {
  const { bed } = plan.brief;
  const span = (left: number, right: number): string =>
    words.page.fromTo(formatNeedle(bed.needles, left), formatNeedle(bed.needles, right));
  const last = edgesOfRow(plan, hanging.throughRow);
  return { hung: span(hanging.hungLeft, hanging.hungRight), ends: span(last.left, last.right) };
}
