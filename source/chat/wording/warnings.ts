import { jamTightness, labelTightness } from '../../planning/fabric.ts';
import type { PlanWarning } from '../../planning/warning.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import { count, formatDecimal, formatList, say } from '../../shared/say.ts';
import { formatLength, formatMassNeeded, formatSmall, metric, type Units } from '../../shared/units.ts';
import { nameClasses } from './classes.ts';

/** What the maker should know before casting on, in one or two sentences. */
export function formatWarning(warning: PlanWarning, units: Units = metric): string {
  switch (warning.code) {
    case 'plan/yarn-short':
      return say`${warning.yarn} is ${formatMassNeeded(warning.shortGrams, units)} short, with a reserve of ${warning.reservePercent} % counted in: find more, or make a smaller bag.`;
    case 'plan/scraps-unused':
      return warning.yarns.length === 1
        ? say`${formatList(warning.yarns)} is left over: too little for a stripe, or no stripe is left for it.`
        : say`${formatList(warning.yarns)} are left over: too little for a stripe, or no stripe is left for it.`;
    case 'plan/many-yarns-at-once':
      return say`${warning.yarns} yarns are in use at once, and a mast has four arms at the most: cut a yarn that has to wait long, and tie it on again.`;
    case 'plan/width-far-off':
      return say`Whole stripe repeats make it ${formatLength(warning.gotCm, units)} wide where ${formatLength(warning.wantedCm, units)} was asked: a shorter repeat comes nearer.`;
    case 'plan/depth-far-off':
      return say`Whole stitches make it ${formatLength(warning.gotCm, units)} deep where ${formatLength(warning.wantedCm, units)} was asked.`;
    case 'plan/eyelets-too-few':
      return say`There are too few eyelets for a cord with both ends outside: choose more rows.`;
    case 'plan/rehang-needed':
      return say`The bed is too short to crawl all the way: hang the work again ${afterRows(warning.afterRows)}.`;
    case 'plan/swatch-to-be-washed':
      return say`The swatch was measured dry, and the bag will be used ${warning.finishState}: its size in that state is worked out, but a swatch that was washed like the bag tells more.`;
    case 'plan/swatch-turned':
      return say`Rows come out higher than stitches are wide: the swatch may have been measured the wrong way round.`;
    case 'plan/stitch-shape-odd':
      return say`A stitch ${formatDecimal(warning.aspect.toFixed(2))} times as wide as high is not usual for plain knitting (about 1.3): measure the swatch again.`;
    case 'plan/loop-length-odd':
      return say`The measured loop of ${formatSmall(warning.measuredMm, units)} is far from the ${formatSmall(warning.modelMm, units)} that the gauge suggests: measure it again, all yarn figures hang on it.`;
    case 'plan/fabric-limp':
      return say`Tightness ${formatDecimal(warning.tightness.toFixed(2))} is low (hand yarns have ${labelTightness.least} to ${labelTightness.most} by their labels): the fabric will be limp and see-through.`;
    case 'plan/fabric-jams':
      return say`Tightness ${formatDecimal(warning.tightness.toFixed(2))} is high (loops of wool jam near ${formatDecimal(jamTightness.toFixed(2))}): the carriage may jam; take a thinner yarn or a larger stitch size.`;
    case 'plan/stitch-wider-than-pitch':
      return say`A stitch of ${formatDecimal(warning.stitchMm.toFixed(1))} mm is wider than the needle pitch of ${warning.pitchMm} mm: measure the swatch again, or use a bed of a coarser gauge.`;
    case 'plan/yarn-unusual-for-bed':
      return warning.than === 'finer'
        ? say`The yarn is finer than a pitch of ${warning.pitchMm} mm usually knits (${nameClasses(warning.usual)}; rule of thumb): check the swatch, or use a finer bed.`
        : say`The yarn is thicker than a pitch of ${warning.pitchMm} mm usually knits (${nameClasses(warning.usual)}; rule of thumb): check the swatch, or use a coarser bed.`;
    case 'plan/shades-alike':
      return shadesText(warning);
    case 'plan/stripes-alike':
      return say`Stripes ${warning.first} and ${warning.second} meet in the same colour, ${warning.yarn}, and read as one wide stripe.`;
    default:
      return exhaustive(warning);
  }
}

/** In one sentence: which neighbours look alike, and to whom. */
function shadesText({ first, second, to }: Extract<PlanWarning, { code: 'plan/shades-alike' }>): string {
  return to === 'everybody'
    ? say`Stripes of ${first} and ${second} lie side by side and look much alike: choose one lighter or darker to tell them apart.`
    : say`Stripes of ${first} and ${second} lie side by side and look much alike to people with ${to.join(` ${say`or`} `)} colour vision: choose one lighter or darker to tell them apart.`;
}

/** More rows than these are counted, not listed: the steps name each. */
const mostListed = 6;

function afterRows(rows: readonly number[]): string {
  const [first = 0] = rows;
  if (rows.length === 1) return say`after row ${first}`;
  return rows.length <= mostListed
    ? say`after rows ${formatList(rows.map(String))}`
    : say`${count(rows.length, 'time')}, the first time after row ${first}`;
}
