import { jamTightness, labelTightness } from '../planning/fabric.ts';
import type { PlanWarning } from '../planning/warnings.ts';
import { type SayingsBy, sayBy } from './by-kind.ts';
import { nameClasses } from './reason.ts';
import type { Words } from './words.ts';

/** What the maker should know before casting on, in one or two sentences. */
export function formatWarning(warning: PlanWarning, words: Words): string {
  return sayBy('code', warningsByCode, warning, words);
}

const warningsByCode: SayingsBy<'code', PlanWarning, [words: Words]> = {
  'plan/yarn-short': ({ yarn, shortGrams, reservePercent }, words) =>
    words.warnings.yarnShort(yarn, shortGrams, reservePercent),
  'plan/scraps-unused': ({ yarns }, words) =>
    yarns.length === 1 ? words.warnings.scrapUnused(yarns) : words.warnings.scrapsUnused(yarns),
  'plan/many-yarns-at-once': ({ yarns }, words) => words.warnings.manyYarnsAtOnce(yarns),
  'plan/width-far-off': ({ gotCm, wantedCm }, words) => words.warnings.widthFarOff(gotCm, wantedCm),
  'plan/depth-far-off': ({ gotCm, wantedCm }, words) => words.warnings.depthFarOff(gotCm, wantedCm),
  'plan/base-too-narrow': ({ thicknessCm, boxedCm }, words) =>
    words.warnings.baseTooNarrow(thicknessCm, boxedCm),
  'plan/eyelets-too-few': (_, words) => words.warnings.eyeletsTooFew,
  'plan/rehang-needed': ({ afterRows }, words) => words.warnings.rehangNeeded(sayAfterRows(afterRows, words)),
  'plan/swatch-guessed': (_, words) => words.warnings.swatchGuessed,
  'plan/swatch-to-be-washed': ({ finishState }, words) => words.warnings.swatchToBeWashed(finishState),
  'plan/swatch-turned': (_, words) => words.warnings.swatchTurned,
  'plan/stitch-shape-odd': ({ aspect }, words) => words.warnings.stitchShapeOdd(aspect),
  'plan/loop-length-odd': ({ measuredMm, modelMm }, words) =>
    words.warnings.loopLengthOdd(measuredMm, modelMm),
  'plan/fabric-limp': ({ tightness }, words) =>
    words.warnings.fabricLimp(tightness, labelTightness.least, labelTightness.most),
  'plan/fabric-jams': ({ tightness }, words) => words.warnings.fabricJams(tightness, jamTightness),
  'plan/stitch-wider-than-pitch': ({ stitchMm, pitchMm }, words) =>
    words.warnings.stitchWiderThanPitch(stitchMm, pitchMm),
  'plan/yarn-unusual-for-bed': ({ than, pitchMm, usual }, words) =>
    than === 'finer'
      ? words.warnings.yarnTooFine(pitchMm, nameClasses(usual, words))
      : words.warnings.yarnTooThick(pitchMm, nameClasses(usual, words)),
  'plan/shades-alike': (warning, words) => shadesText(warning, words),
  'plan/stripes-alike': ({ first, second, yarn }, words) => words.warnings.stripesAlike(first, second, yarn),
};

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

function sayAfterRows(rows: readonly number[], words: Words): string {
  const [first = 0] = rows;
  if (rows.length === 1) return words.warnings.afterRow(first);
  return rows.length <= mostListed
    ? words.warnings.afterRows(rows.map(String))
    : words.warnings.oftenFrom(rows.length, first);
}
