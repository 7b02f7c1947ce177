/** Why the work on the bed and by hand goes as it does, how long its tails are, and why a caution is given. */

import { usableNeedles } from '../planning/hangings.ts';
import { endTailCm } from '../planning/tails.ts';
import { closingWasteRows } from '../planning/yarn-needs.ts';
import { formatFine, type Reason } from './reason.ts';

export const benchReasons: readonly Reason[] = [
  {
    id: 'swatch',
    here: ({ brief: { swatch }, gauge }, words) =>
      `${swatch.guess ? words.reasons.swatch.guessed : ''}${words.amounts.length(swatch.widthMm / 10)} / ${swatch.stitches} = ${formatFine(gauge.stitchMm, words)}; ${words.amounts.length(swatch.heightMm / 10)} / ${swatch.rows} = ${formatFine(gauge.rowMm, words)}`,
  },
  {
    id: 'rehang',
    here: ({ brief, stitches, shapings, needlesUsed, hangings }, words) => {
      const sum = `${stitches} + ${shapings} = ${needlesUsed}`;
      const usable = usableNeedles(brief);
      return hangings.length === 1
        ? words.reasons.rehang.notHere(sum, usable)
        : words.reasons.rehang.here(sum, usable, hangings.length);
    },
  },
  {
    id: 'two-rows',
    here: ({ brief }, words) => words.reasons['two-rows'].here(brief.shapeEveryRows),
  },
  {
    id: 'home-side',
    here: ({ brief }, words) =>
      brief.crawl === 'left'
        ? brief.homeSide === 'right'
          ? words.reasons['home-side'].leftToRight
          : words.reasons['home-side'].leftToLeft
        : brief.homeSide === 'left'
          ? words.reasons['home-side'].rightToLeft
          : words.reasons['home-side'].rightToRight,
  },
  { id: 'park' },
  { id: 'out-of-work' },
  {
    id: 'edge-stitches',
    here: ({ brief }) => `${brief.edgeStitches} + 1 = ${brief.edgeStitches + 1}`,
  },
  { id: 'feeder' },
  { id: 'weights' },
  {
    id: 'waste',
    here: ({ brief }, words) => words.reasons.waste.here(brief.waste.rows, closingWasteRows(brief)),
  },
  {
    id: 'closing-row',
    here: ({ rows, knittedRows }) => `${rows} − 1 = ${knittedRows}`,
  },
  {
    id: 'stripes',
    here: ({ stripes }, words) => {
      const [first, last] = [stripes[0], stripes.at(-1)];
      return first && last ? words.reasons.stripes.here(first.yarn, last.yarn) : null;
    },
  },
];

export const handReasons: readonly Reason[] = [
  {
    id: 'tail',
    here: ({ stitches, brief, gauge, graft }, words) => {
      const hold = words.amounts.length(endTailCm);
      const larger = words.amounts.length(Math.max(graft.ruleCm, graft.modelCm));
      return [
        `3 × ${stitches} × ${formatFine(brief.bed.pitchMm, words)} = ${words.amounts.length(graft.ruleCm)}`,
        `${words.amounts.decimal(1.1)} × ${stitches} × ${formatFine(gauge.loopLengthMm, words)} = ${words.amounts.length(graft.modelCm)}`,
        `${larger} + ${hold} = ${words.amounts.length(graft.tailCm)}`,
      ].join('; ');
    },
    source: 'ruleOfThumb',
  },
  {
    id: 'graft',
    here: ({ stitches, graft }) => `2 × ${stitches} − 1 = ${graft.entries}`,
  },
  {
    id: 'seam',
    here: ({ rows, seam }, words) =>
      `${rows} / 2 = ${seam.barsPerSide}; 2 × ${words.amounts.length(seam.lengthCm)} + ${words.amounts.length(endTailCm)} = ${words.amounts.length(seam.tailCm)}`,
  },
  {
    id: 'boxed',
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
    source: 'planeGeometry',
  },
  {
    id: 'hem',
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
  },
  {
    id: 'two-cords',
    here: ({ cord, eyelets }, words) => words.reasons['two-cords'].here(cord.draws, eyelets.secondFrom),
  },
  {
    id: 'eyelets',
    here: ({ eyelets }, words) => {
      const made = words.plurals.eyelet(eyelets.made);
      return eyelets.skipped.length === 0
        ? words.reasons.eyelets.here(made, eyelets.used.length)
        : words.reasons.eyelets.onePassedBy(made, eyelets.used.length, eyelets.skipped.map(String));
    },
  },
  {
    id: 'spacing',
    here: ({ eyelets }, words) => words.reasons.spacing.here(eyelets.spacingCm, eyelets.graftGapCm),
    source: 'planeGeometry',
  },
  {
    id: 'cord',
    here: ({ size, brief, cord }, words) =>
      words.reasons.cord.here(size.mouthCm, cord.takeUpCm, brief.cord.tieCm, cord.lengthCm, cord.rounds),
    source: 'ruleOfThumb',
  },
];

export const careReasons: readonly Reason[] = [
  { id: 'steam' },
  {
    id: 'children',
    here: ({ cord, brief }, words) => words.reasons.children.here(brief.cord.tieCm, cord.lengthCm),
  },
  { id: 'pause', source: 'ruleOfThumb' },
];
