/** Why the hand work is done so, and how long its tails are. */

import { endTailCm } from '../../planning/tails.ts';
import type { Words } from '../../wording/words.ts';
import type { Reason } from '../reason.ts';
import { formatFine } from './figures.ts';
import { commonPractice, planeGeometry, ruleOfThumb } from './sources.ts';

export const handReasons: readonly Reason[] = [
  {
    id: 'tail',
    names: (words: Words) =>
      words.say`graft tail, tail, 3 times the width, three times the width, 3 times, three times, long tail`,
    rule: (words: Words) =>
      words.say`The graft's thread runs through a whole row of loops. Three times the width as it lies on the needles is the rule; the yarn of one row and 10 % is the model. The larger counts, and some to hold.`,
    formula: (words: Words) =>
      words.say`tail = the larger of 3 × stitches × pitch and 1.1 × stitches × loop length, + ${endTailCm} cm`,
    here: ({ stitches, brief, gauge, graft }, words) => {
      const hold = words.amounts.length(endTailCm);
      const larger = words.amounts.length(Math.max(graft.ruleCm, graft.modelCm));
      return [
        `3 × ${stitches} × ${formatFine(brief.bed.pitchMm, words)} = ${words.amounts.length(graft.ruleCm)}`,
        `${words.decimalText('1.1')} × ${stitches} × ${formatFine(gauge.loopLengthMm, words)} = ${words.amounts.length(graft.modelCm)}`,
        `${larger} + ${hold} = ${words.amounts.length(graft.tailCm)}`,
      ].join('; ');
    },
    source: ruleOfThumb,
  },
  {
    id: 'graft',
    names: (words: Words) => words.say`graft, entries, movements, number of movements`,
    rule: (words: Words) =>
      words.say`A graft follows the path of a knitted row, so no seam shows. The needle enters each loop twice; only the first loop of edge B and the last of edge A are entered once.`,
    formula: (words: Words) => words.say`pairs of entries = 2 × stitches − 1`,
    here: ({ stitches, graft }) => `2 × ${stitches} − 1 = ${graft.entries}`,
    source: commonPractice,
  },
  {
    id: 'seam',
    names: (words: Words) => words.say`seam, seam tail, mattress seam, bars, bottom, draw up`,
    rule: (words: Words) =>
      words.say`Half of the rows face the other half, one bar to a row. The thread goes there and back between the edges: twice the seam, and some to hold. Drawn up every 6 to 8 bars it lies even.`,
    formula: (words: Words) => words.say`bars = rows round / 2; tail = 2 × width + ${endTailCm} cm`,
    here: ({ rows, seam }, words) =>
      `${rows} / 2 = ${seam.barsPerSide}; 2 × ${words.amounts.length(seam.lengthCm)} + ${words.amounts.length(endTailCm)} = ${words.amounts.length(seam.tailCm)}`,
    source: commonPractice,
  },
  {
    id: 'eyelets',
    names: (words: Words) =>
      words.say`eyelets, holes, even number of holes, leave empty, in work and empty, one out, increase, gain`,
    rule: (words: Words) =>
      words.say`Each increase leaves a working needle empty, and the next pass lays a loop on it: a hole for the cord. In and out through an even number of holes, both cord ends come out on the outside.`,
    formula: (words: Words) => words.say`eyelets = moves; the cord uses an even number of them`,
    here: ({ eyelets }, words: Words) => {
      const made = words.count(eyelets.made, 'eyelet');
      return eyelets.skipped.length === 0
        ? words.say`${made}, and the cord uses ${eyelets.used.length}`
        : words.say`${made}, the cord uses ${eyelets.used.length} and passes by number ${words.amounts.list(eyelets.skipped.map(String))}, across from the graft`;
    },
    source: commonPractice,
  },
  {
    id: 'spacing',
    names: (words: Words) => words.say`wider gap, widest gap, spacing, gap`,
    rule: (words: Words) =>
      words.say`From eyelet to eyelet it is one stitch across and the rows of one move up. At the graft no move was made, so the gap there is wider.`,
    formula: (words: Words) => words.say`spacing = √(stitch width² + (rows between moves × row height)²)`,
    here: ({ eyelets }, words) =>
      words.say`${words.amounts.length(eyelets.spacingCm)}, and ${words.amounts.length(eyelets.graftGapCm)} at the graft`,
    source: planeGeometry,
  },
  {
    id: 'cord',
    names: (words: Words) => words.say`cord, cord length, rounds, ties`,
    rule: (words: Words) =>
      words.say`The cord goes once round the mouth, in and out of the holes, and hangs out at both ends, to tie. Each round makes it longer by one row; measure it, and knit more if it is short.`,
    formula: (words: Words) =>
      words.say`length = mouth + way in and out + 2 × tie; rounds = length / height of a round, rounded up`,
    here: ({ size, brief, cord }, words) =>
      words.say`${words.amounts.length(size.mouthCm)} + ${words.amounts.length(cord.takeUpCm)} + 2 × ${words.amounts.length(brief.cord.tieCm)} = ${words.amounts.length(cord.lengthCm)}; ${words.count(cord.rounds, 'round')}`,
    source: ruleOfThumb,
  },
];
