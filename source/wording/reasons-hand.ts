/** Why the hand work is done so, how long its tails are, and why a caution is given. */

import { toyCordLimits } from '../planning/cord.ts';
import { endTailCm } from '../planning/tails.ts';
import { commonPractice, formatFine, planeGeometry, type Reason, ruleOfThumb } from './reason.ts';
import type { Words } from './words.ts';

export const handReasons: readonly Reason[] = [
  {
    id: 'tail',
    names: (words: Words) => words.reasons.tail.names,
    rule: (words: Words) => words.reasons.tail.rule,
    formula: (words: Words) => words.reasons.tail.formula(endTailCm),
    here: ({ stitches, brief, gauge, graft }, words) => {
      const hold = words.amounts.length(endTailCm);
      const larger = words.amounts.length(Math.max(graft.ruleCm, graft.modelCm));
      return [
        `3 × ${stitches} × ${formatFine(brief.bed.pitchMm, words)} = ${words.amounts.length(graft.ruleCm)}`,
        `${words.amounts.decimal(1.1)} × ${stitches} × ${formatFine(gauge.loopLengthMm, words)} = ${words.amounts.length(graft.modelCm)}`,
        `${larger} + ${hold} = ${words.amounts.length(graft.tailCm)}`,
      ].join('; ');
    },
    source: ruleOfThumb,
  },
  {
    id: 'graft',
    names: (words: Words) => words.reasons.graft.names,
    rule: (words: Words) => words.reasons.graft.rule,
    formula: (words: Words) => words.reasons.graft.formula,
    here: ({ stitches, graft }) => `2 × ${stitches} − 1 = ${graft.entries}`,
    source: commonPractice,
  },
  {
    id: 'seam',
    names: (words: Words) => words.reasons.seam.names,
    rule: (words: Words) => words.reasons.seam.rule,
    formula: (words: Words) => words.reasons.seam.formula(endTailCm),
    here: ({ rows, seam }, words) =>
      `${rows} / 2 = ${seam.barsPerSide}; 2 × ${words.amounts.length(seam.lengthCm)} + ${words.amounts.length(endTailCm)} = ${words.amounts.length(seam.tailCm)}`,
    source: commonPractice,
  },
  {
    id: 'boxed',
    names: (words: Words) => words.reasons.boxed.names,
    rule: (words: Words) => words.reasons.boxed.rule,
    formula: (words: Words) => words.reasons.boxed.formula,
    here: ({ size, boxed }, words) =>
      boxed
        ? words.reasons.boxed.here(
            size.widthCm,
            size.depthCm,
            boxed.baseDepthCm,
            boxed.baseWidthCm,
            boxed.sideCm,
          )
        : words.reasons.boxed.flat,
    source: planeGeometry,
  },
  {
    id: 'hem',
    names: (words: Words) => words.reasons.hem.names,
    rule: (words: Words) => words.reasons.hem.rule,
    formula: (words: Words) => words.reasons.hem.formula,
    here: ({ hem, size, gauge, knittedRows }, words) => {
      if (!hem) return words.reasons.hem.none;
      const rows = words.amounts.decimal(hem.rows + 0.5);
      const row = formatFine(gauge.rowMm, words);
      return hem.stitches === knittedRows
        ? words.reasons.hem.asManyAsRows(hem.stitches, rows, row, hem.heightCm)
        : words.reasons.hem.here(
            size.mouthCm,
            formatFine(gauge.stitchMm, words),
            hem.stitches,
            rows,
            row,
            hem.heightCm,
          );
    },
    source: commonPractice,
  },
  {
    id: 'two-cords',
    names: (words: Words) => words.reasons['two-cords'].names,
    rule: (words: Words) => words.reasons['two-cords'].rule,
    here: ({ cord, eyelets }, words) => words.reasons['two-cords'].here(cord.draws, eyelets.secondFrom),
    source: commonPractice,
  },
  {
    id: 'eyelets',
    names: (words: Words) => words.reasons.eyelets.names,
    rule: (words: Words) => words.reasons.eyelets.rule,
    formula: (words: Words) => words.reasons.eyelets.formula,
    here: ({ eyelets }, words: Words) => {
      const made = words.plurals.eyelet(eyelets.made);
      return eyelets.skipped.length === 0
        ? words.reasons.eyelets.here(made, eyelets.used.length)
        : words.reasons.eyelets.onePassedBy(made, eyelets.used.length, eyelets.skipped.map(String));
    },
    source: commonPractice,
  },
  {
    id: 'spacing',
    names: (words: Words) => words.reasons.spacing.names,
    rule: (words: Words) => words.reasons.spacing.rule,
    formula: (words: Words) => words.reasons.spacing.formula,
    here: ({ eyelets }, words) => words.reasons.spacing.here(eyelets.spacingCm, eyelets.graftGapCm),
    source: planeGeometry,
  },
  {
    id: 'cord',
    names: (words: Words) => words.reasons.cord.names,
    rule: (words: Words) => words.reasons.cord.rule,
    formula: (words: Words) => words.reasons.cord.formula,
    here: ({ size, brief, cord }, words) =>
      words.reasons.cord.here(size.mouthCm, cord.takeUpCm, brief.cord.tieCm, cord.lengthCm, cord.rounds),
    source: ruleOfThumb,
  },
];

export const careReasons: readonly Reason[] = [
  {
    id: 'steam',
    names: (words: Words) => words.reasons.steam.names,
    rule: (words: Words) => words.reasons.steam.rule,
    source: commonPractice,
  },
  {
    id: 'children',
    names: (words: Words) => words.reasons.children.names,
    rule: (words: Words) => words.reasons.children.rule,
    formula: (words: Words) =>
      words.reasons.children.formula(toyCordLimits.freeCordCm * 10, toyCordLimits.loopCm * 10),
    here: ({ cord, brief }, words) => words.reasons.children.here(brief.cord.tieCm, cord.lengthCm),
    source: (words: Words) => words.reasons.children.source,
  },
  {
    id: 'pause',
    names: (words: Words) => words.reasons.pause.names,
    rule: (words: Words) => words.reasons.pause.rule,
    source: ruleOfThumb,
  },
];
