import { jamTightness, labelTightness } from '../planning/fabric.ts';
import type { PlanWarning } from '../planning/plan.ts';
import { exhaustive } from '../shared/result.ts';
import { nameClasses } from './reason.ts';
import type { Words } from './words.ts';

/** What the maker should know before casting on, in one or two sentences. */
export function formatWarning(warning: PlanWarning, words: Words): string {
  switch (warning.code) {
    case 'plan/yarn-short':
      return words.warnings.yarnShort(warning.yarn, warning.shortGrams, warning.reservePercent);
    case 'plan/scraps-unused':
      return warning.yarns.length === 1
        ? words.warnings.scrapUnused(warning.yarns)
        : words.warnings.scrapsUnused(warning.yarns);
    case 'plan/many-yarns-at-once':
      return words.warnings.manyYarnsAtOnce(warning.yarns);
    case 'plan/width-far-off':
      return words.warnings.widthFarOff(warning.gotCm, warning.wantedCm);
    case 'plan/depth-far-off':
      return words.warnings.depthFarOff(warning.gotCm, warning.wantedCm);
    case 'plan/base-too-narrow':
      return words.warnings.baseTooNarrow(warning.thicknessCm, warning.boxedCm);
    case 'plan/eyelets-too-few':
      return words.warnings.eyeletsTooFew;
    case 'plan/rehang-needed':
      return words.warnings.rehangNeeded(afterRows(warning.afterRows, words));
    case 'plan/swatch-guessed':
      return words.warnings.swatchGuessed;
    case 'plan/swatch-to-be-washed':
      return words.warnings.swatchToBeWashed(warning.finishState);
    case 'plan/swatch-turned':
      return words.warnings.swatchTurned;
    case 'plan/stitch-shape-odd':
      return words.warnings.stitchShapeOdd(warning.aspect);
    case 'plan/loop-length-odd':
      return words.warnings.loopLengthOdd(warning.measuredMm, warning.modelMm);
    case 'plan/fabric-limp':
      return words.warnings.fabricLimp(warning.tightness, labelTightness.least, labelTightness.most);
    case 'plan/fabric-jams':
      return words.warnings.fabricJams(warning.tightness, jamTightness);
    case 'plan/stitch-wider-than-pitch':
      return words.warnings.stitchWiderThanPitch(warning.stitchMm, warning.pitchMm);
    case 'plan/yarn-unusual-for-bed':
      return warning.than === 'finer'
        ? words.warnings.yarnTooFine(warning.pitchMm, nameClasses(warning.usual, words))
        : words.warnings.yarnTooThick(warning.pitchMm, nameClasses(warning.usual, words));
    case 'plan/shades-alike':
      return shadesText(warning, words);
    case 'plan/stripes-alike':
      return words.warnings.stripesAlike(warning.first, warning.second, warning.yarn);
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
    ? words.warnings.shadesAlike(first, second)
    : words.warnings.shadesAlikeFor(first, second, to.join(` ${words.warnings.or} `));
}

/** More rows than these are counted, not listed: the steps name each. */
const mostListed = 6;

function afterRows(rows: readonly number[], words: Words): string {
  const [first = 0] = rows;
  if (rows.length === 1) return words.warnings.afterRow(first);
  return rows.length <= mostListed
    ? words.warnings.afterRows(rows.map(String))
    : words.warnings.oftenFrom(rows.length, first);
}
