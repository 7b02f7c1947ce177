/** The plan as a page to print: every number with its unit and what it means, rules of thumb called so. */
import { plannedCost } from '../../journal/bag-cost.ts';
import { type Pace, timeByPhase, usualPace } from '../../journal/pace.ts';
import type { BagFromYarn } from '../../planning/from-yarn.ts';
import { sharedYarn } from '../../planning/party.ts';
import type { Plan } from '../../planning/plan.ts';
import { layOutJob } from '../../steps/job.ts';
import type { Words } from '../../wording/words.ts';
import { labelled, pageWidth, wrap } from './page.ts';
import { bedLines } from './page-bed.ts';
import { costLines } from './page-cost.ts';
import { fabricLines } from './page-fabric.ts';
import { handLines } from './page-hand.ts';
import { sizeLines, stripeLines } from './page-size.ts';
import { sharedYarnLines, yarnLines } from './page-yarn.ts';
import { sayPhase } from './steps.ts';
import { formatWarning } from './warnings.ts';

export interface PageOptions {
  /** From the maker's own finished bags, where there are any. */
  readonly pace?: Pace;
  /** What limits a bag that was planned from its yarn, and others near it; null where a size was asked for. */
  readonly fromYarn?: Omit<BagFromYarn, 'plan'> | null;
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
    [words.page.titles.stripes, stripeLines(plan, words)],
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

/** The yarn of several bags, each yarn weighed once. */
export const formatSharedYarn = (plans: readonly Plan[], words: Words): string =>
  [
    words.page.titles.yarnForAll(plans.length),
    ...sharedYarnLines(
      sharedYarn(plans),
      plans.map(({ brief }) => brief.waste.yarn),
      words,
    ),
  ].join('\n');

function timeLines(plan: Plan, pace: Pace, words: Words): readonly string[] {
  const { time, onTheBench } = words.plan;
  const parts = [...timeByPhase(layOutJob(plan), pace)];
  const totalS = parts.reduce((sum, [, seconds]) => sum + seconds, 0);
  const named = parts.map(([phase, seconds]) => [sayPhase(phase, words), seconds] as const);
  return labelled(time, onTheBench(totalS, named, pace.bags));
}

const warningLines = ({ warnings }: Plan, words: Words): readonly string[] =>
  warnings.flatMap((warning) =>
    wrap(formatWarning(warning, words), pageWidth - 4).map(
      (line, i) => `${i === 0 ? '  - ' : '    '}${line}`,
    ),
  );
