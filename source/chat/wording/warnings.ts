import type { PlanWarning } from '../../planning/warnings.ts';
import { exhaustive } from '../../shared/exhaustive.ts';
import { formatCm, formatList } from './numbers.ts';

/** What the maker should know before casting on, in one or two sentences. */
export function formatWarning(warning: PlanWarning): string {
  switch (warning.code) {
    case 'plan/reseat-needed':
      return `The bed is too short to crawl all the way: hang the work again after ${rowList(warning.afterRows)}.`;
    case 'plan/width-far-off':
      return `Whole stripe repeats make it ${formatCm(warning.gotCm)} wide where ${formatCm(warning.wantedCm)} was asked; narrower stripes come nearer.`;
    case 'plan/depth-far-off':
      return `Whole stitches make it ${formatCm(warning.gotCm)} deep where ${formatCm(warning.wantedCm)} was asked.`;
    case 'plan/yarn-short':
      return `${warning.yarn} is ${Math.ceil(warning.shortGrams)} g short, with the reserve of 10 % counted in.`;
    case 'plan/fabric-limp':
      return `Tightness ${warning.tightness.toFixed(2)} is low (1.3 to 1.5 is usual): the fabric will be limp and see-through.`;
    case 'plan/fabric-jams':
      return `Tightness ${warning.tightness.toFixed(2)} is high (1.3 to 1.5 is usual): the bed may jam; take a thinner yarn or a larger stitch.`;
    case 'plan/stitch-wider-than-pitch':
      return `A stitch of ${warning.stitchMm.toFixed(1)} mm is wider than the needle pitch of ${warning.pitchMm} mm: measure the swatch again, or use a wider bed.`;
    case 'plan/swatch-turned':
      return 'Rows come out wider than stitches: the swatch may have been measured the wrong way round.';
    case 'plan/stitch-shape-odd':
      return `A stitch ${warning.aspect.toFixed(2)} times as wide as high is not usual for plain knitting (about 1.3): check the swatch.`;
    case 'plan/stripes-alike':
      return `Stripes ${warning.first} and ${warning.second} meet in the same colour, ${warning.yarn}, and read as one wide stripe.`;
    case 'plan/eyelets-too-few':
      return 'There are too few eyelets for a cord with both ends outside: choose more rows.';
    default:
      return exhaustive(warning);
  }
}

const rowList = (rows: readonly number[]): string =>
  rows.length === 1 ? `row ${rows[0]}` : `rows ${formatList(rows.map(String))}`;
