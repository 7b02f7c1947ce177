/** Why a caution is given. */
import type { Words } from '../../wording/words.ts';
import type { Reason } from '../reason.ts';
import { toyCordLimits } from './cautions.ts';
import { commonPractice, ruleOfThumb } from './sources.ts';

export const careReasons: readonly Reason[] = [
  {
    id: 'steam',
    names: (words: Words) => words.say`steam, iron, press`,
    rule: (words: Words) => words.say`Steam scalds, and it flattens man-made fibre.`,
    source: commonPractice,
  },
  {
    id: 'children',
    names: (words: Words) => words.say`children, child, toys, EN 71, small children, cautions, danger`,
    rule: (words: Words) =>
      words.say`A cord can catch round a neck. This bag is no toy; where it is sold or given to a child, local rules decide.`,
    formula: (words: Words) =>
      words.say`toys for the very young: no free cord over ${toyCordLimits.freeCordCm * 10} mm, no noose over ${toyCordLimits.loopCm * 10} mm round, stretched by 25 N`,
    here: ({ cord, brief }, words) =>
      words.say`free end ${words.amounts.length(brief.cord.tieCm)}, tied loop ${words.amounts.length(cord.lengthCm)} round`,
    source: (words: Words) => words.say`EN 71-1:2005+A8:2009, 5.4 b and c; the edition in force decides`,
  },
  {
    id: 'pause',
    names: (words: Words) =>
      words.say`a rest for the hands, rest my hands, rest your hands, hands, pause, half hour`,
    rule: (words: Words) =>
      words.say`The same few moves for an hour tire hands and shoulders. A rest every half hour or so keeps them well.`,
    source: ruleOfThumb,
  },
];
