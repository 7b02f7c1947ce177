/** Why the hand work is done so, and how long its tails are. */
import { endTailCm } from '../../planning/tails.ts';
import { count, formatDecimal, formatList, say } from '../../shared/say.ts';
import { formatLength } from '../../shared/units.ts';
import type { Reason } from '../reason.ts';
import { formatFine } from './figures.ts';
import { commonPractice, planeGeometry, ruleOfThumb } from './sources.ts';

export const handReasons: readonly Reason[] = [
  {
    id: 'tail',
    names: () =>
      say`graft tail, tail, 3 times the width, three times the width, 3 times, three times, long tail`,
    rule: () =>
      say`The graft's thread runs through a whole row of loops. Three times the width as it lies on the needles is the rule; the yarn of one row and 10 % is the model. The larger counts, and some to hold.`,
    formula: () =>
      say`tail = the larger of 3 × stitches × pitch and 1.1 × stitches × loop length, + ${endTailCm} cm`,
    here: ({ stitches, brief, gauge, graft }, units) => {
      const hold = formatLength(endTailCm, units);
      const larger = formatLength(Math.max(graft.ruleCm, graft.modelCm), units);
      return [
        `3 × ${stitches} × ${formatFine(brief.bed.pitchMm, units)} = ${formatLength(graft.ruleCm, units)}`,
        `${formatDecimal('1.1')} × ${stitches} × ${formatFine(gauge.loopLengthMm, units)} = ${formatLength(graft.modelCm, units)}`,
        `${larger} + ${hold} = ${formatLength(graft.tailCm, units)}`,
      ].join('; ');
    },
    source: ruleOfThumb,
  },
  {
    id: 'graft',
    names: () => say`graft, entries, movements, number of movements`,
    rule: () =>
      say`A graft follows the path of a knitted row, so no seam shows. The needle enters each loop twice; only the first loop of edge B and the last of edge A are entered once.`,
    formula: () => say`pairs of entries = 2 × stitches − 1`,
    here: ({ stitches, graft }) => `2 × ${stitches} − 1 = ${graft.entries}`,
    source: commonPractice,
  },
  {
    id: 'seam',
    names: () => say`seam, seam tail, mattress seam, bars, bottom, draw up`,
    rule: () =>
      say`Half of the rows face the other half, one bar to a row. The thread goes there and back between the edges: twice the seam, and some to hold. Drawn up every 6 to 8 bars it lies even.`,
    formula: () => say`bars = rows round / 2; tail = 2 × width + ${endTailCm} cm`,
    here: ({ rows, seam }, units) =>
      `${rows} / 2 = ${seam.barsPerSide}; 2 × ${formatLength(seam.lengthCm, units)} + ${formatLength(endTailCm, units)} = ${formatLength(seam.tailCm, units)}`,
    source: commonPractice,
  },
  {
    id: 'eyelets',
    names: () =>
      say`eyelets, holes, even number of holes, leave empty, in work and empty, one out, increase, gain`,
    rule: () =>
      say`Each one out leaves a working needle empty, and the next pass lays a loop on it: a hole for the cord. In and out through an even number of holes, both cord ends come out on the outside.`,
    formula: () => say`eyelets = moves; the cord uses an even number of them`,
    here: ({ eyelets }) => {
      const made = count(eyelets.made, 'eyelet');
      return eyelets.skipped.length === 0
        ? say`${made}, and the cord uses ${eyelets.used.length}`
        : say`${made}, the cord uses ${eyelets.used.length} and passes by number ${formatList(eyelets.skipped.map(String))}, across from the graft`;
    },
    source: commonPractice,
  },
  {
    id: 'spacing',
    names: () => say`wider gap, widest gap, spacing, gap`,
    rule: () =>
      say`From eyelet to eyelet it is one stitch across and the rows of one move up. At the graft no move was made, so the gap there is wider.`,
    formula: () => say`spacing = √(stitch width² + (rows between moves × row height)²)`,
    here: ({ eyelets }, units) =>
      say`${formatLength(eyelets.spacingCm, units)}, and ${formatLength(eyelets.graftGapCm, units)} at the graft`,
    source: planeGeometry,
  },
  {
    id: 'cord',
    names: () => say`cord, cord length, rounds, ties`,
    rule: () =>
      say`The cord goes once round the mouth, in and out of the holes, and hangs out at both ends, to tie. Each round makes it longer by one row; measure it, and knit more if it is short.`,
    formula: () =>
      say`length = mouth + way in and out + 2 × tie; rounds = length / height of a round, rounded up`,
    here: ({ size, brief, cord }, units) =>
      say`${formatLength(size.mouthCm, units)} + ${formatLength(cord.takeUpCm, units)} + 2 × ${formatLength(brief.cord.tieCm, units)} = ${formatLength(cord.lengthCm, units)}; ${count(cord.rounds, 'round')}`,
    source: ruleOfThumb,
  },
];
