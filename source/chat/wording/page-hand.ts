import type { Plan } from '../../planning/plan.ts';
import { closingTailCm, endTailCm, ravelEndCm } from '../../planning/tails.ts';
import type { Words } from '../../wording/words.ts';
import { toyCordLimits } from './cautions.ts';
import { labelled } from './page.ts';

export const handLines = (plan: Plan, words: Words): readonly string[] => [
  ...labelled(
    words.say`start`,
    words.say`a ravel cord of ${words.amounts.lengthNeeded(plan.ravelCordCm)}: the yarn of a row and 10 %, and ${words.amounts.lengthNeeded(ravelEndCm)} at each end`,
  ),
  ...labelled(words.say`graft`, graftText(plan, words)),
  ...labelled(words.say`seam`, seamText(plan, words)),
  ...labelled(words.say`cord`, cordText(plan, words)),
  ...labelled(words.say`eyelets`, eyeletText(plan, words)),
  ...labelled(words.say`care`, careText(words)),
];

function graftText({ graft, seam, stripes }: Plan, words: Words): string {
  const needed = (cm: number): string => words.amounts.lengthNeeded(cm);
  const yarn = stripes.at(-1)?.yarn;
  const parts = graft.goesOnToSeam
    ? words.say`, ${needed(graft.tailCm)} to graft and ${needed(seam.tailCm)} to go on and sew the bottom`
    : '';
  return words.say`${graft.entries} entries of the needle; cut a tail of ${words.amounts.tail(closingTailCm({ graft, seam }))} of ${yarn ?? ''}${parts}. For the graft: the larger of 3 times the width on the needles, ${needed(graft.ruleCm)} (rule of thumb), and the yarn of a row and 10 %, ${needed(graft.modelCm)}; and ${needed(endTailCm)} to hold.`;
}

function seamText({ seam, graft, stripes }: Plan, words: Words): string {
  const tail = graft.goesOnToSeam
    ? words.say`with the tail of the graft`
    : words.say`with ${words.amounts.tail(seam.tailCm)} of ${stripes.at(-1)?.yarn ?? ''}`;
  return words.say`${words.amounts.length(seam.lengthCm)}, ${words.count(seam.barsPerSide, 'bar')} from each side, ${tail}: twice the seam and ${words.amounts.lengthNeeded(endTailCm)} to hold (rule of thumb)`;
}

function cordText({ cord, brief }: Plan, words: Words): string {
  const { roundsPer10Cm, tieCm } = brief.cord;
  const height =
    roundsPer10Cm === null
      ? words.say`a round taken to be as high as a row (rule of thumb)`
      : words.say`by your count of ${roundsPer10Cm} rounds to 10 cm`;
  return words.say`${words.count(cord.stitches, 'stitch', 'stitches')} of ${cord.yarn}, ${words.amounts.lengthNeeded(cord.lengthCm)} long: the mouth, ${words.amounts.lengthNeeded(cord.takeUpCm)} for its way in and out (rule of thumb), and two ties of ${words.amounts.length(tieCm)}. ${words.count(cord.rounds, 'round')}, ${words.count(cord.passes, 'pass', 'passes')}, ${words.amounts.yarnNeeded(cord.metres)} of yarn, ${height}.`;
}

function eyeletText({ eyelets }: Plan, words: Words): string {
  const { made, used, skipped, spacingCm, graftGapCm, widestGapCm } = eyelets;
  const apart = words.say`${made}, ${words.amounts.length(spacingCm)} apart`;
  if (used.length === 0) return words.say`${apart}; too few for a cord with both ends outside`;
  const uses =
    skipped.length === 0
      ? words.say`the cord uses all`
      : words.say`the cord uses ${used.length} and passes by number ${words.amounts.list(skipped.map(String))}, counted from the graft`;
  const atGraft = words.say`${words.amounts.length(graftGapCm)} at the graft`;
  const gap =
    skipped.length === 0 ? atGraft : words.say`${words.amounts.length(widestGapCm)} there, then ${atGraft}`;
  return words.say`${apart}; ${uses}. The widest gap is ${gap}.`;
}

/** The limits in the unit in which they are published. */
const careText = (words: Words): string =>
  words.say`keep cords from small children: EN 71-1:2005+A8:2009 let toys for the very young have a free cord of ${toyCordLimits.freeCordCm * 10} mm and a noose ${toyCordLimits.loopCm * 10} mm round, pulled with 25 N; see the edition in force. This bag is no toy; local rules decide.`;
