/** The plan as a page to print: every number with its unit and what it means, rules of thumb called so. */
import type { BagFromYarn } from '../../planning/from-yarn.ts';
import { sharedYarn } from '../../planning/party.ts';
import type { Plan } from '../../planning/plan.ts';
import { say } from '../../shared/say.ts';
import { metric, type Units } from '../../shared/units.ts';
import { formatDuration } from './logs.ts';
import { labelled, pageWidth, wrap } from './page.ts';
import { bedLines } from './page-bed.ts';
import { fabricLines } from './page-fabric.ts';
import { handLines } from './page-hand.ts';
import { sizeLines, stripeLines } from './page-size.ts';
import { sharedYarnLines, yarnLines } from './page-yarn.ts';
import { formatWarning } from './warnings.ts';

export interface PageOptions {
  readonly units?: Units;
  /** From the maker's own finished bags; without any, no time is foretold. */
  readonly minutesPerRow?: number | null;
  /** What limits a bag that was planned from its yarn, and others near it; null where a size was asked for. */
  readonly fromYarn?: Omit<BagFromYarn, 'plan'> | null;
}

/** At most `pageWidth` columns wide; warnings come last. */
export function formatPlanPage(
  plan: Plan,
  { units = metric, minutesPerRow = null, fromYarn = null }: PageOptions = {},
): string {
  const sections: readonly (readonly [title: string, lines: readonly string[]])[] = [
    [say`SIZE`, [...sizeLines(plan, units, fromYarn), ...timeLines(plan, minutesPerRow)]],
    [say`STRIPES`, stripeLines(plan)],
    [say`YARN`, yarnLines(plan, units)],
    [say`BED`, bedLines(plan, units)],
    [say`BY HAND`, handLines(plan, units)],
    [say`FABRIC`, fabricLines(plan, units)],
    [say`BEFORE YOU START`, warningLines(plan, units)],
  ];
  const shown = sections.filter(([, lines]) => lines.length > 0);
  const blocks = [wrap(plan.brief.name, pageWidth), ...shown.map(([title, lines]) => [title, ...lines])];
  return blocks.map((lines) => lines.join('\n')).join('\n\n');
}

/** The yarn of several bags, each yarn weighed once. */
export const formatSharedYarn = (plans: readonly Plan[], units: Units): string =>
  [
    say`YARN FOR ALL ${plans.length} BAGS`,
    ...sharedYarnLines(
      sharedYarn(plans),
      plans.map(({ brief }) => brief.waste.yarn),
      units,
    ),
  ].join('\n');

/** To 5 minutes: more would be more than the pace of other bags can tell. */
function timeLines({ knittedRows }: Plan, minutesPerRow: number | null): readonly string[] {
  if (minutesPerRow === null) return [];
  const minutes = Math.max(5, Math.round((knittedRows * minutesPerRow) / 5) * 5);
  return labelled(
    say`time`,
    say`about ${formatDuration(minutes * 60)} for the rows, at the pace of your finished bags`,
  );
}

const warningLines = ({ warnings }: Plan, units: Units): readonly string[] =>
  warnings.flatMap((warning) =>
    wrap(formatWarning(warning, units), pageWidth - 4).map(
      (line, i) => `${i === 0 ? '  - ' : '    '}${line}`,
    ),
  );
