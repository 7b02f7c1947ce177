/** Why a caution is given. */
import type { Words } from '../../wording/words.ts';
import type { Reason } from '../reason.ts';
import { toyCordLimits } from './cautions.ts';
import { commonPractice, ruleOfThumb } from './sources.ts';

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
