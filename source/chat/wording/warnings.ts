import { jamTightness, labelTightness } from '../../planning/fabric.ts';
import type { PlanWarning } from '../../planning/warning.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import type { Words } from '../../wording/words.ts';
import { nameClasses } from './classes.ts';

/** What the maker should know before casting on, in one or two sentences. */
export function formatWarning(warning: PlanWarning, words: Words): string {
  switch (warning.code) {
    case 'plan/yarn-short':
      return words.say`${warning.yarn} is ${words.amounts.massNeeded(warning.shortGrams)} short, with a reserve of ${warning.reservePercent} % counted in: find more, or make a smaller bag.`;
    case 'plan/scraps-unused':
      return warning.yarns.length === 1
        ? words.say`${words.amounts.list(warning.yarns)} is left over: too little for a stripe, or no stripe is left for it.`
        : words.say`${words.amounts.list(warning.yarns)} are left over: too little for a stripe, or no stripe is left for it.`;
    case 'plan/many-yarns-at-once':
      return words.say`${warning.yarns} yarns are in use at once, and a mast has four arms at the most: cut a yarn that has to wait long, and tie it on again.`;
    case 'plan/width-far-off':
      return words.say`Whole stripe repeats make it ${words.amounts.length(warning.gotCm)} wide where ${words.amounts.length(warning.wantedCm)} was asked: a shorter repeat comes nearer.`;
    case 'plan/depth-far-off':
      return words.say`Whole stitches make it ${words.amounts.length(warning.gotCm)} deep where ${words.amounts.length(warning.wantedCm)} was asked.`;
    case 'plan/eyelets-too-few':
      return words.say`There are too few eyelets for a cord with both ends outside: choose more rows.`;
    case 'plan/rehang-needed':
      return words.say`The bed is too short to crawl all the way: hang the work again ${afterRows(warning.afterRows, words)}.`;
    case 'plan/swatch-to-be-washed':
      return words.say`The swatch was measured dry, and the bag will be used ${warning.finishState}: its size in that state is worked out, but a swatch that was washed like the bag tells more.`;
    case 'plan/swatch-turned':
      return words.say`Rows come out higher than stitches are wide: the swatch may have been measured the wrong way round.`;
    case 'plan/stitch-shape-odd':
      return words.say`A stitch ${words.decimalText(warning.aspect.toFixed(2))} times as wide as high is not usual for plain knitting (about 1.3): measure the swatch again.`;
    case 'plan/loop-length-odd':
      return words.say`The measured loop of ${words.amounts.small(warning.measuredMm)} is far from the ${words.amounts.small(warning.modelMm)} that the gauge suggests: measure it again, all yarn figures hang on it.`;
    case 'plan/fabric-limp':
      return words.say`Tightness ${words.decimalText(warning.tightness.toFixed(2))} is low (hand yarns have ${labelTightness.least} to ${labelTightness.most} by their labels): the fabric will be limp and see-through.`;
    case 'plan/fabric-jams':
      return words.say`Tightness ${words.decimalText(warning.tightness.toFixed(2))} is high (loops of wool jam near ${words.decimalText(jamTightness.toFixed(2))}): the carriage may jam; take a thinner yarn or a larger stitch size.`;
    case 'plan/stitch-wider-than-pitch':
      return words.say`A stitch of ${words.decimalText(warning.stitchMm.toFixed(1))} mm is wider than the needle pitch of ${warning.pitchMm} mm: measure the swatch again, or use a bed of a coarser gauge.`;
    case 'plan/yarn-unusual-for-bed':
      return warning.than === 'finer'
        ? words.say`The yarn is finer than a pitch of ${warning.pitchMm} mm usually knits (${nameClasses(warning.usual, words)}; rule of thumb): check the swatch, or use a finer bed.`
        : words.say`The yarn is thicker than a pitch of ${warning.pitchMm} mm usually knits (${nameClasses(warning.usual, words)}; rule of thumb): check the swatch, or use a coarser bed.`;
    case 'plan/shades-alike':
      return shadesText(warning, words);
    case 'plan/stripes-alike':
      return words.say`Stripes ${warning.first} and ${warning.second} meet in the same colour, ${warning.yarn}, and read as one wide stripe.`;
    default:
      return exhaustive(warning);
  }
}

/** In one sentence: which neighbours look alike, and to whom. */
function shadesText(
  { first, second, to }: Extract<PlanWarning, { code: 'plan/shades-alike' }>,
  words: Words,
): string {
  return to === 'everybody'
    ? words.say`Stripes of ${first} and ${second} lie side by side and look much alike: choose one lighter or darker to tell them apart.`
    : words.say`Stripes of ${first} and ${second} lie side by side and look much alike to people with ${to.join(` ${words.say`or`} `)} colour vision: choose one lighter or darker to tell them apart.`;
}

/** More rows than these are counted, not listed: the steps name each. */
const mostListed = 6;

function afterRows(rows: readonly number[], words: Words): string {
  const [first = 0] = rows;
  if (rows.length === 1) return words.say`after row ${first}`;
  return rows.length <= mostListed
    ? words.say`after rows ${words.amounts.list(rows.map(String))}`
    : words.say`${words.count(rows.length, 'time')}, the first time after row ${first}`;
}
