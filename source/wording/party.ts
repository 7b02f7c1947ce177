/** What several bags have in common, as part of a page: yarn for all, order, tools once, time in all. */
import { type Pace, timeByPhase } from '../journal/pace.ts';
import { orderParty, partyKit, sharedYarn } from '../planning/party.ts';
import type { Plan } from '../planning/plan.ts';
import { layOutJob } from '../steps/job.ts';
import { labelled, pageWidth, wrap } from './page.ts';
import { sharedYarnLines } from './page-yarn.ts';
import type { Words } from './words.ts';

export function formatParty(plans: readonly Plan[], pace: Pace, words: Words): string {
  const { party: say } = words;
  const yarn = sharedYarnLines(
    sharedYarn(plans),
    plans.map(({ brief }) => brief.waste.yarn),
    words,
  );
  return [
    words.page.titles.yarnForAll(plans.length),
    ...yarn,
    '',
    say.title(plans.length),
    ...orderLines(plans, words),
    ...wrap(toolsText(plans, words), pageWidth - 2).map((line) => `  ${line}`),
    ...labelled(say.time, say.timeIs(partySeconds(plans, pace), pace.bags)),
  ].join('\n');
}

export const partySeconds = (plans: readonly Plan[], pace: Pace): number =>
  plans.reduce(
    (sum, plan) => [...timeByPhase(layOutJob(plan), pace).values()].reduce((all, one) => all + one, sum),
    0,
  );

function orderLines(plans: readonly Plan[], { party: say }: Words): readonly string[] {
  const { order, without, leftOver } = orderParty(plans);
  const names = (bags: readonly number[]): readonly string[] => bags.map((i) => plans[i]?.brief.name ?? '');
  return [
    ...(order.length === 0 ? [] : labelled(say.order, say.orderIs(names(order)))),
    ...(without.length === 0 ? [] : labelled(say.without, say.withoutIs(names(without)))),
    ...(leftOver.length === 0 ? [] : labelled(say.left, say.leftIs(leftOver))),
  ];
}

/** Counted once, since one bag is knitted after the other. */
export function toolsText(plans: readonly Plan[], { kit, party }: Words): string {
  const all = partyKit(plans);
  return [
    kit.tools(all),
    ...(all.allProngs.length > 1 ? [party.prongs(all.allProngs)] : []),
    kit.ravelCord(all),
  ]
    .filter((text) => text !== '')
    .join(' ');
}
