/** The plan as a page. */
import type { Side } from '../bed/bed.ts';
import type { RelaxedState } from '../planning/brief.ts';
import type { ColourBand, ColourRun } from '../planning/colour-run.ts';
import type { Hem } from '../planning/hem.ts';
import type { Lining } from '../planning/tails.ts';
import type { Amounts } from './amounts.ts';
import { counted } from './forms.en.ts';

export const page = ({
  decimal,
  length,
  lengthNeeded,
  list,
  massNeeded,
  small,
  tail,
  yarnNeeded,
}: Amounts) => ({
  titles: {
    size: 'SIZE',
    stripes: 'STRIPES',
    yarn: 'YARN',
    bed: 'BED',
    byHand: 'BY HAND',
    fabric: 'FABRIC',
    beforeYouStart: 'BEFORE YOU START',
    yarnForAll: (bags: number) => `YARN FOR ALL ${bags} BAGS`,
  },
  needles: 'needles',
  bed: (needles: number, pitchMm: number, usableNeedles: number, needlesUsed: number) =>
    `${needles} with a pitch of ${decimal(pitchMm)} mm, ${usableNeedles} of them within the margins; the work travels over ${needlesUsed}`,
  crawl: 'travels',
  crawlTo: (crawl: Side, homeSide: Side) =>
    `to the ${crawl}; the carriage waits on the ${homeSide} between stripes`,
  hang: 'hang',
  hungOnce: (hung: string, ends: string) => `start on ${hung}, end on ${ends}`,
  rows: (first: number, last: number) => `rows ${first} to ${last}`,
  hungOn: (hung: string) => `on ${hung}`,
  endingOn: (ends: string) => `ending on ${ends}`,
  moreHangings: (more: number) => `and ${counted.time(more)} more, each from the same needles`,
  fromTo: (first: string, last: string) => `${first} to ${last}`,
  by: (widthMm: number, heightMm: number) => `${length(widthMm)} by ${length(heightMm)}`,
  labels: {
    piece: 'piece',
    swatch: 'swatch',
    gauge: 'gauge',
    loop: 'loop',
    tightness: 'tightness',
    aim: 'aim',
    weight: 'weight',
    yarn: 'yarn',
    start: 'start',
    graft: 'graft',
    seam: 'seam',
    cord: 'cord',
    eyelets: 'eyelets',
    care: 'care',
    bag: 'bag',
    asked: 'asked',
    inside: 'inside',
    base: 'base',
    corners: 'corners',
    hem: 'hem',
    lining: 'lining',
    run: 'colours',
    knit: 'knit',
    shaping: 'shaping',
    stripes: 'stripes',
    surer: 'surer',
    asKnit: 'as knit',
    write: 'write',
  },
  swatchOn: (stitches: number, rows: number, size: string, state: RelaxedState) =>
    `${stitches} stitches and ${rows} rows on ${size}, ${state}`,
  swatchGuessed: (stitches: number, rows: number, size: string) =>
    `a guess from the bed (rule of thumb): ${stitches} stitches and ${rows} rows on ${size}`,
  swatchOnDial: (stitches: number, rows: number, size: string, state: RelaxedState, stitchSize: string) =>
    `${stitches} stitches and ${rows} rows on ${size}, ${state}, stitch size ${stitchSize}`,
  gaugeTo: (stitches: string, rows: string, over: string, stitchMm: number, rowMm: number) =>
    `${stitches} stitches and ${rows} rows to ${over}; a stitch is ${small(stitchMm)} wide and ${small(rowMm)} high`,
  tightnessIs: (tightness: string, verdict: string) => `${tightness} (root of tex / loop in mm), ${verdict}`,
  aim: (tenStitchesMm: number, tenRowsMm: number, tightness: number) =>
    `before a swatch: ten stitches of this yarn should measure ${small(tenStitchesMm)} and ten rows ${small(tenRowsMm)} at rest, for a tightness of ${decimal(tightness)} (rule of thumb)`,
  massOfPiece: (mass: string) => `${mass}, as the piece measures`,
  massOfGuess: (mass: string) => `${mass}, by the guessed swatch`,
  massOfSwatch: (mass: string) => `${mass}, as the swatch measures it`,
  sourceOfModel: (state: string) =>
    `by the gauge of ${state} plain knitting (published loop constants; why loop says whose)`,
  sourceForWool: (state: 'dry-relaxed' | 'wet-relaxed') =>
    `by the gauge of ${state} plain knitting (published loop constants, for wool; why loop says whose)`,
  loopMeasured: (loopLengthMm: number, model: string, source: string) =>
    `${small(loopLengthMm)} of yarn in a stitch, measured; ${model} ${source}`,
  loopByModel: (model: string, source: string) => `${model} of yarn in a stitch, ${source}`,
  usualTightness: (least: number, most: number, keepsLeast: number, keepsMost: number) =>
    `hand yarns at the gauge of their labels have ${least} to ${most}, a bag that keeps its shape ${keepsLeast} to ${keepsMost} (rule of thumb)`,
  limp: (usual: string) => `limp and see-through: ${usual}`,
  soft: (usual: string) => `soft: ${usual}`,
  jams: (usual: string) => `so tight that loops jam: ${usual}`,
  stiff: (usual: string) => `stiff: ${usual}`,
  firm: (usual: string) => `firm: ${usual}`,
  between: (first: string, second: string) => `between ${first} and ${second}`,
  finerThanLace: 'finer than lace (0)',
  yarnFinerThanLace: 'yarn finer than lace (0)',
  classByGauge: (name: string, pitchMm: number, bed: string) =>
    `${name} by its gauge (standard classes 0 to 7); a pitch of ${decimal(pitchMm)} mm usually knits ${bed} (rule of thumb)`,
  ravelCord: (ravelCordCm: number, ravelEndCm: number) =>
    `a ravel cord of ${lengthNeeded(ravelCordCm)}: the yarn of a row and 10 %, and ${lengthNeeded(ravelEndCm)} at each end`,
  graftAndSeam: (graft: string, seam: string) =>
    `, ${graft} to graft and ${seam} to go on and sew the bottom`,
  graftAndTail: (
    entries: number,
    closingTailCm: number,
    yarn: string,
    parts: string,
    byWidth: string,
    byRow: string,
    toHold: string,
  ) =>
    `${entries} entries of the needle; cut a tail of ${tail(closingTailCm)} of ${yarn}${parts}. For the graft: the larger of 3 times the width on the needles, ${byWidth} (rule of thumb), and the yarn of a row and 10 %, ${byRow}; and ${toHold} to hold.`,
  seamWithGraft: 'with the tail of the graft',
  seamWithOwn: (tailCm: number, yarn: string) => `with ${tail(tailCm)} of ${yarn}`,
  seam: (lengthCm: number, barsPerSide: number, tailText: string, endTailCm: number) =>
    `${length(lengthCm)}, ${counted.bar(barsPerSide)} from each side, ${tailText}: twice the seam and ${lengthNeeded(endTailCm)} to hold (rule of thumb)`,
  roundsByRows: 'a round taken to be as high as a row (rule of thumb)',
  roundsByCount: (roundsPer10Cm: number) => `by your count of ${decimal(roundsPer10Cm)} rounds to 10 cm`,
  cord: (
    draws: 1 | 2,
    stitches: number,
    yarn: string,
    lengthCm: number,
    takeUpCm: number,
    tieCm: number,
    rounds: number,
    passes: number,
    metres: number,
    height: string,
  ) =>
    `${draws === 2 ? 'two that pull from both sides, each of ' : ''}${counted.stitch(stitches)} of ${yarn}, ${lengthNeeded(lengthCm)} long: the mouth, ${lengthNeeded(takeUpCm)} for its way in and out (rule of thumb), and two ties of ${length(tieCm)}. ${counted.round(rounds)}, ${counted.pass(passes)}, ${yarnNeeded(metres)} of yarn, ${height}.`,
  eyeletsApart: (made: number, spacingCm: number) => `${made}, ${length(spacingCm)} apart`,
  eyeletsTooFew: (apart: string) => `${apart}; too few for a cord with both ends outside`,
  cordUsesAll: 'the cord uses all',
  cordUsesSome: (used: number, passedBy: string[]) =>
    `the cord uses ${used} and passes by number ${list(passedBy)}, counted from the graft`,
  gapAtGraft: (graftGapCm: number) => `${length(graftGapCm)} at the graft`,
  widestThen: (widestGapCm: number, atGraft: string) => `${length(widestGapCm)} there, then ${atGraft}`,
  eyelets: (apart: string, uses: string, gap: string) => `${apart}; ${uses}. The widest gap is ${gap}.`,
  secondFrom: (eyelet: number) =>
    ` The second cord goes in first through eyelet ${eyelet}, across from the graft, where the first comes out.`,
  keepCords: (freeCordCm: number, loopCm: number) =>
    `keep cords from small children: EN 71-1:2005+A8:2009 let toys for the very young have a free cord of ${freeCordCm} mm and a noose ${loopCm} mm round, pulled with 25 N; see the edition in force. This bag is no toy; local rules decide.`,
  sizeIs: (width: string, widthMore: string, depth: string, depthMore: string, finishState: RelaxedState) =>
    `${width} ± ${widthMore} wide and ${depth} ± ${depthMore} deep, flat and sewn, ${finishState} (19 of 20 bags lie within)`,
  base: (baseWidthCm: number, baseDepthCm: number, sideCm: number, sideBelowCordCm: number) =>
    `boxed: a bottom of ${length(baseWidthCm)} by ${length(baseDepthCm)} and sides ${length(sideCm)} high, ${length(sideBelowCordCm)} of that below the cord; the size above is the bag's before its corners are sewn`,
  corners: (acrossCm: number, fromTipCm: number, tailCm: number, yarn: string) =>
    `2 corners, each sewn across with ${tail(tailCm)} of ${yarn}: ${length(acrossCm)}, at right angles to the bottom seam, ${length(fromTipCm)} from the tip`,
  hem: (
    { yarn, rows, stitches, sections, passes, heightCm, foldToCordCm, metres }: Hem,
    knittedRows: number,
  ) =>
    `before the graft pick up ${stitches} loops of the mouth edge from its ${knittedRows} rows${sections.length === 1 ? '' : `, in sections of ${list(sections.map(String))} since the bed takes no more`}, and knit ${passes} rows of ${yarn}: ${rows}, a loose one to fold on, ${rows}, and a loose one that closes it. ${length(heightCm)} of the depth are hem; from its fold to the cord it is ${length(foldToCordCm)}. ${yarnNeeded(metres)} of yarn.`,
  run: (yarn: string, runMetres: number, rowMetres: number) =>
    `${yarn} stripes by itself: its colours begin again after ${yarnNeeded(runMetres)}, and a row takes ${length(rowMetres * 100)}, so they fall about here`,
  bands: (bands: readonly ColourBand[], more: number) =>
    `${bands.map(({ colour, fromRow, throughRow }) => `${colour} ${fromRow === throughRow ? `row ${fromRow}` : `rows ${fromRow} to ${throughRow}`}`).join(', ')}${more > 0 ? `, and ${more} more` : ''}`,
  runAtGraft: ({ offMetres, offRows, better }: NonNullable<ColourRun['graft']>, rows: number) => {
    const off = `at the graft it is ${length(Math.abs(offMetres) * 100)}, or ${decimal(Math.abs(offRows))} rows, ${offMetres < 0 ? 'short of' : 'beyond'} where its colours would go on without a break`;
    return better
      ? `${off}; with ${better.rows} rows in place of ${rows} it would be ${length(Math.abs(better.offMetres) * 100)}`
      : off;
  },
  ifYouLineIt: 'if you want one:',
  lining: ({ widthCm, depthCm, seamCm }: Lining, isBoxed: boolean): readonly string[] => [
    `Cut two pieces ${lengthNeeded(widthCm)} wide and ${lengthNeeded(depthCm)} deep: ${length(seamCm)} of seam on every side (common practice).`,
    `Sew them together along the bottom and both sides, right sides facing${isBoxed ? ', and box the corners as deep as those of the bag' : ''}; fold the top ${length(seamCm)} outwards.`,
    'Put it in, its seams towards the purl side, and sew its fold on just below the eyelets, loosely, so that the mouth still draws shut.',
  ],
  inside: (depth: string, mouth: string) => `${depth} deep below the cord; the mouth is ${mouth} round`,
  knit: (stitches: number, rows: number, knittedRows: number) =>
    `${counted.stitch(stitches)}, ${counted.row(rows)} round: ${knittedRows} are knitted, the graft is the last`,
  shaping: (shapings: number, shapeEveryRows: number, edgeStitches: number) =>
    `${counted.move(shapings)}, one after every ${counted.row(shapeEveryRows)}, ${counted.stitch(edgeStitches)} at each edge`,
  stripesSlant: (stripes: string, degrees: number) =>
    `${stripes}; stripes slant ${degrees} degrees from the bottom`,
  plusMinus: (widthCm: number, depthCm: number) => `${length(widthCm)} and ± ${length(depthCm)}`,
  largerSwatch: (stitches: number, rows: number, left: string) =>
    `a swatch of ${stitches} stitches and ${rows} rows: ± ${left}`,
  lookAside: (left: string) =>
    `look how far the swatch's top edge stands aside, and write it as asideCm (0.1 where it is straight): ± ${left}`,
  asKnit: (widthCm: number, depthCm: number, state: RelaxedState) =>
    `${length(widthCm)} wide and ${length(depthCm)} deep, ${state} as the swatch was`,
  writeSize: (stitches: number, rows: number, boxedCm: number) =>
    `"bag": {"stitches": ${stitches}, "rows": ${rows}${boxedCm === 0 ? '' : `, "boxedCm": ${boxedCm.toFixed(1)}`}} into the brief to knit it`,
  smaller: 'smaller',
  larger: 'larger',
  wideAndDeep: (width: string, depth: string) => `${width} wide and ${depth} deep`,
  counts: (stitches: number, rows: number) => `${counted.stitch(stitches)} and ${counted.row(rows)}`,
  contentsNeed: (
    width: string,
    depth: string,
    girth: string,
    height: string,
    thick: string,
    easePercent: number,
    isBoxed: boolean,
  ) =>
    `at least ${width} wide and ${depth} deep below the cord, for what is ${girth} round, ${height} high and ${thick} thick, with ${decimal(easePercent)} % ease both ways (rule of thumb); it stands on the ${isBoxed ? 'base' : 'bottom seam'}, and the bag closes over it`,
  largest: 'the largest of its shape that the weighed yarn allows',
  limitedByYarn: (largest: string, yarn: string) =>
    `${largest}; one repeat more would take more ${yarn} than there is`,
  limitedByScraps: (largest: string) => `${largest}; the scraps give no sequence for more`,
  limitedByBed: (largest: string, usable: number) =>
    `${largest}; one repeat more would not fit the ${counted.needle(usable)} within the margins`,
  limitedByWidth: (largest: string, mostCm: number) => `${largest}, and no wider than ${length(mostCm)}`,
  oneYarn: (yarn: string) =>
    `${yarn} throughout, no colour changes; the closing row, graft and seam take it too`,
  listedStripes: (stripes: number, rows: number) => `${stripes} of ${counted.row(rows)}, listed below`,
  unevenStripes: (stripes: number) => `${stripes} stripes, listed below`,
  repeatOf: (times: string, stripes: number) => `${times} a repeat of ${stripes} stripes, listed below`,
  repeat: (times: string, rows: string) => `${times} ${rows} rows`,
  to: (first: number, last: number) => `${first} to ${last}`,
  stripesOf: (rows: number, stitches: number) => `${counted.row(rows)} of ${stitches} stitches`,
  shapeWith: (size: string, counts: string) => `${size}, with ${counts}`,
  shapeTooLong: (size: string, counts: string) => `${size}, with ${counts}, which this bed is too short for`,
  withPercent: (reserve: number) => `with ${reserve} %`,
  reserveIs: (reserve: number) => `The ${reserve} % is a reserve (rule of thumb); waste yarn is not weighed.`,
  withReserve: 'with reserve',
  length: 'length',
  weight: 'weight',
  youHave: 'you have',
  waste: (yarn: string) => `${yarn} (waste)`,
  notWeighed: 'not weighed',
  enough: 'enough',
  shortBy: (shortGrams: number) => `short by ${massNeeded(shortGrams)}`,
});
