/** Why the work on the bed goes as it does. */
import { usableNeedles } from '../planning/hangings.ts';
import { closingWasteRows } from '../planning/yarn-needs.ts';
import { commonPractice, formatFine, type Reason } from './reason.ts';
import type { Words } from './words.ts';

export const benchReasons: readonly Reason[] = [
  {
    id: 'swatch',
    names: (words: Words) => words.reasons.swatch.names,
    rule: (words: Words) => words.reasons.swatch.rule,
    formula: (words: Words) => words.reasons.swatch.formula,
    here: ({ brief: { swatch }, gauge }, words) =>
      `${swatch.guess ? words.reasons.swatch.guessed : ''}${words.amounts.length(swatch.widthMm / 10)} / ${swatch.stitches} = ${formatFine(gauge.stitchMm, words)}; ${words.amounts.length(swatch.heightMm / 10)} / ${swatch.rows} = ${formatFine(gauge.rowMm, words)}`,
    source: commonPractice,
  },
  {
    id: 'rehang',
    names: (words: Words) => words.reasons.rehang.names,
    rule: (words: Words) => words.reasons.rehang.rule,
    formula: (words: Words) => words.reasons.rehang.formula,
    here: ({ brief, stitches, shapings, needlesUsed, hangings }, words: Words) => {
      const sum = `${stitches} + ${shapings} = ${needlesUsed}`;
      const usable = usableNeedles(brief);
      return hangings.length === 1
        ? words.reasons.rehang.notHere(sum, usable)
        : words.reasons.rehang.here(sum, usable, hangings.length);
    },
    source: commonPractice,
  },
  {
    id: 'two-rows',
    names: (words: Words) => words.reasons['two-rows'].names,
    rule: (words: Words) => words.reasons['two-rows'].rule,
    here: ({ brief }, words: Words) => words.reasons['two-rows'].here(brief.shapeEveryRows),
    source: commonPractice,
  },
  {
    id: 'home-side',
    names: (words: Words) => words.reasons['home-side'].names,
    rule: (words: Words) => words.reasons['home-side'].rule,
    here: ({ brief }, words: Words) =>
      brief.crawl === 'left'
        ? brief.homeSide === 'right'
          ? words.reasons['home-side'].leftToRight
          : words.reasons['home-side'].leftToLeft
        : brief.homeSide === 'left'
          ? words.reasons['home-side'].rightToLeft
          : words.reasons['home-side'].rightToRight,
    source: commonPractice,
  },
  {
    id: 'park',
    names: (words: Words) => words.reasons.park.names,
    rule: (words: Words) => words.reasons.park.rule,
    source: commonPractice,
  },
  {
    id: 'out-of-work',
    names: (words: Words) => words.reasons['out-of-work'].names,
    rule: (words: Words) => words.reasons['out-of-work'].rule,
    source: commonPractice,
  },
  {
    id: 'edge-stitches',
    names: (words: Words) => words.reasons['edge-stitches'].names,
    rule: (words: Words) => words.reasons['edge-stitches'].rule,
    formula: (words: Words) => words.reasons['edge-stitches'].formula,
    here: ({ brief }) => `${brief.edgeStitches} + 1 = ${brief.edgeStitches + 1}`,
    source: commonPractice,
  },
  {
    id: 'feeder',
    names: (words: Words) => words.reasons.feeder.names,
    rule: (words: Words) => words.reasons.feeder.rule,
    source: commonPractice,
  },
  {
    id: 'weights',
    names: (words: Words) => words.reasons.weights.names,
    rule: (words: Words) => words.reasons.weights.rule,
    source: commonPractice,
  },
  {
    id: 'waste',
    names: (words: Words) => words.reasons.waste.names,
    rule: (words: Words) => words.reasons.waste.rule,
    here: ({ brief }, words: Words) => words.reasons.waste.here(brief.waste.rows, closingWasteRows(brief)),
    source: commonPractice,
  },
  {
    id: 'closing-row',
    names: (words: Words) => words.reasons['closing-row'].names,
    rule: (words: Words) => words.reasons['closing-row'].rule,
    formula: (words: Words) => words.reasons['closing-row'].formula,
    here: ({ rows, knittedRows }) => `${rows} − 1 = ${knittedRows}`,
    source: commonPractice,
  },
  {
    id: 'stripes',
    names: (words: Words) => words.reasons.stripes.names,
    rule: (words: Words) => words.reasons.stripes.rule,
    here: ({ stripes }, words: Words) => {
      const [first, last] = [stripes[0], stripes.at(-1)];
      return first && last ? words.reasons.stripes.here(first.yarn, last.yarn) : null;
    },
    source: commonPractice,
  },
];
