/** The shelf as lines: what is kept, what is left, and what could be made of it; and several bags as a party. */

import { type Pace, timeByPhase } from '../journal/pace.ts';
import type { Possibilities } from '../planning/from-yarn.ts';
import { orderParty, partyKit, sharedYarn } from '../planning/party.ts';
import type { Plan } from '../planning/plan.ts';
import { namesOn, type Shelf, type ShelfKind, shelfKinds } from '../planning/shelf.ts';
import { mmPerInch } from '../shared/units.ts';
import { layOutJob } from '../steps/job.ts';
import { labelled, pageWidth, wrap } from './page.ts';
import { sharedYarnLines } from './page-yarn.ts';
import type { Words } from './words.ts';

export function sayShelf(shelf: Shelf, could: Possibilities | null, words: Words): readonly string[] {
  const { shelf: say } = words;
  const kinds = shelfKinds.filter((kind) => namesOn(shelf, kind).length > 0);
  if (kinds.length === 0) return say.empty;
  return [
    ...kinds.flatMap((kind) => [
      `${say.titles[kind]}:`,
      ...namesOn(shelf, kind).map((name) => `  ${sayKept(shelf, kind, name, words)}`),
    ]),
    ...sayPossible(could, words),
  ];
}

function sayPossible(could: Possibilities | null, { shelf: say }: Words): readonly string[] {
  if (!could || could.bags.length === 0) return [say.sayMore];
  return [
    say.couldMake(could.bed, could.swatch),
    ...could.bags.map(
      ({ yarns, scraps, size }) =>
        `  ${size ? say.upTo(yarns, scraps, size.widthCm, size.depthCm) : say.tooLittle(yarns)}`,
    ),
  ];
}

/** One thing that is kept, its name first. */
export function sayKept(shelf: Shelf, kind: ShelfKind, name: string, { shelf: say }: Words): string {
  const [bed, swatch, yarn] = [shelf.beds[name], shelf.swatches[name], shelf.yarns[name]];
  if (kind === 'bed' && bed) return say.bed(name, bed.needles, bed.pitchMm);
  if (kind === 'swatch' && swatch) {
    const { stitches, rows, widthCm, heightCm, widthIn = 0, heightIn = 0, stitchSize } = swatch;
    const inCm = (cm: number | undefined, inches: number): number => cm ?? (inches * mmPerInch) / 10;
    return say.swatch(
      name,
      stitches,
      inCm(widthCm, widthIn),
      rows,
      inCm(heightCm, heightIn),
      stitchSize ?? null,
    );
  }
  return yarn ? say.yarn(name, yarn.colour, yarn.metresPer100g, yarn.grams) : name;
}

/** What several bags have in common, as part of a page: yarn for all, order, tools once, time in all. */

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
