import type { Plan } from '../../planning/plan.ts';
import { closingTailCm, endTailCm, ravelEndCm } from '../../planning/tails.ts';
import type { Words } from '../../wording/words.ts';
import { toyCordLimits } from './cautions.ts';
import { labelled } from './page.ts';

export const handLines = (plan: Plan, words: Words): readonly string[] => [
  ...labelled(words.page.labels.start, words.page.ravelCord(plan.ravelCordCm, ravelEndCm)),
  ...labelled(words.page.labels.graft, graftText(plan, words)),
  ...labelled(words.page.labels.seam, seamText(plan, words)),
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

function cordText({ cord, brief }: Plan, words: Words): string {
  const { roundsPer10Cm, tieCm } = brief.cord;
  const height = roundsPer10Cm === null ? words.page.roundsByRows : words.page.roundsByCount(roundsPer10Cm);
  return words.page.cord(
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
  return words.page.eyelets(apart, uses, gap);
}

/** The limits in the unit in which they are published. */
const careText = (words: Words): string =>
  words.page.keepCords(toyCordLimits.freeCordCm * 10, toyCordLimits.loopCm * 10);
