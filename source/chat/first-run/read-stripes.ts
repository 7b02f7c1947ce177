import { fail, type Result, succeed } from '../../shared/result.ts';
import { readAmounts } from './amounts.ts';
import type { AnswerFault, Values } from './answers.ts';

const beside = ['and', 'then', 'each', 'und', 'dann', 'je'];

/** Rows of a stripe, `2`, or of each yarn's: `4 and 2`. */
export function readStripes(line: string): Result<Values['stripes'], AnswerFault> {
  const { amounts, others } = readAmounts(line);
  const stranger = others.find((word) => !beside.includes(word));
  const [first, second = first, more] = amounts;
  const areRows = amounts.every(({ unit }) => unit === null || unit === 'rows');
  return stranger === undefined && first && second && !more && areRows
    ? succeed([first.value, second.value])
    : fail({ code: 'first-run/not-understood', question: 'stripes', word: stranger ?? null });
}
