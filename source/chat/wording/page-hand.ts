import type { Plan } from '../../planning/plan.ts';
import { closingTailCm, endTailCm, ravelEndCm } from '../../planning/tails.ts';
import { count, formatList, say } from '../../shared/say.ts';
import {
  formatLength,
  formatLengthNeeded,
  formatTail,
  formatYarnNeeded,
  type Units,
} from '../../shared/units.ts';
import { toyCordLimits } from './cautions.ts';
import { labelled } from './page.ts';

export const handLines = (plan: Plan, units: Units): readonly string[] => [
  ...labelled(
    say`start`,
    say`a ravel cord of ${formatLengthNeeded(plan.ravelCordCm, units)}: the yarn of a row and 10 %, and ${formatLengthNeeded(ravelEndCm, units)} at each end`,
  ),
  ...labelled(say`graft`, graftText(plan, units)),
  ...labelled(say`seam`, seamText(plan, units)),
  ...labelled(say`cord`, cordText(plan, units)),
  ...labelled(say`eyelets`, eyeletText(plan, units)),
  ...labelled(say`care`, careText()),
];

function graftText({ graft, seam, stripes }: Plan, units: Units): string {
  const needed = (cm: number): string => formatLengthNeeded(cm, units);
  const yarn = stripes.at(-1)?.yarn;
  const parts = graft.goesOnToSeam
    ? say`, ${needed(graft.tailCm)} to graft and ${needed(seam.tailCm)} to go on and sew the bottom`
    : '';
  return say`${graft.entries} entries of the needle; cut a tail of ${formatTail(closingTailCm({ graft, seam }), units)} of ${yarn ?? ''}${parts}. For the graft: the larger of 3 times the width on the needles, ${needed(graft.ruleCm)} (rule of thumb), and the yarn of a row and 10 %, ${needed(graft.modelCm)}; and ${needed(endTailCm)} to hold.`;
}

function seamText({ seam, graft, stripes }: Plan, units: Units): string {
  const tail = graft.goesOnToSeam
    ? say`with the tail of the graft`
    : say`with ${formatTail(seam.tailCm, units)} of ${stripes.at(-1)?.yarn ?? ''}`;
  return say`${formatLength(seam.lengthCm, units)}, ${count(seam.barsPerSide, 'bar')} from each side, ${tail}: twice the seam and ${formatLengthNeeded(endTailCm, units)} to hold (rule of thumb)`;
}

function cordText({ cord, brief }: Plan, units: Units): string {
  const { roundsPer10Cm, tieCm } = brief.cord;
  const height =
    roundsPer10Cm === null
      ? say`a round taken to be as high as a row (rule of thumb)`
      : say`by your count of ${roundsPer10Cm} rounds to 10 cm`;
  return say`${count(cord.stitches, 'stitch', 'stitches')} of ${cord.yarn}, ${formatLengthNeeded(cord.lengthCm, units)} long: the mouth, ${formatLengthNeeded(cord.takeUpCm, units)} for its way in and out (rule of thumb), and two ties of ${formatLength(tieCm, units)}. ${count(cord.rounds, 'round')}, ${count(cord.passes, 'pass', 'passes')}, ${formatYarnNeeded(cord.metres, units)} of yarn, ${height}.`;
}

function eyeletText({ eyelets }: Plan, units: Units): string {
  const { made, used, skipped, spacingCm, graftGapCm, widestGapCm } = eyelets;
  const apart = say`${made}, ${formatLength(spacingCm, units)} apart`;
  if (used.length === 0) return say`${apart}; too few for a cord with both ends outside`;
  const uses =
    skipped.length === 0
      ? say`the cord uses all`
      : say`the cord uses ${used.length} and passes by number ${formatList(skipped.map(String))}, counted from the graft`;
  const atGraft = say`${formatLength(graftGapCm, units)} at the graft`;
  const gap =
    skipped.length === 0 ? atGraft : say`${formatLength(widestGapCm, units)} there, then ${atGraft}`;
  return say`${apart}; ${uses}. The widest gap is ${gap}.`;
}

/** The limits in the unit in which they are published. */
const careText = (): string =>
  say`keep cords from small children: EN 71-1:2005+A8:2009 let toys for the very young have a free cord of ${toyCordLimits.freeCordCm * 10} mm and a noose ${toyCordLimits.loopCm * 10} mm round, pulled with 25 N; see the edition in force. This bag is no toy; local rules decide.`;
