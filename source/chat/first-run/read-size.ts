/** The size as a maker says it: `14 by 18 cm`, `18 deep 14 wide`, or what goes in: `26 round 12 high`. */
import { fail, type Result, succeed } from '../../shared/result.ts';
import { isLength, readAmounts, toCm } from './amounts.ts';
import type { AnswerFault, Length, Values } from './answers.ts';

const wide = ['wide', 'width', 'breit', 'breite'];
const deep = ['deep', 'depth', 'high', 'height', 'tall', 'tief', 'tiefe', 'hoch', 'höhe'];
const round = ['round', 'around', 'girth', 'umfang', 'rund', 'herum', 'rundherum'];
const beside = ['by', 'x', 'and', 'for', 'mal', 'auf', 'und', 'für', 'um'];

export function readSize(line: string, length: Length): Result<Values['size'], AnswerFault> {
  const { amounts, others } = readAmounts(line);
  const stranger = others.find((word) => ![wide, deep, round, beside].some((known) => known.includes(word)));
  const [one, other, more] = amounts;
  const typed = amounts.find(({ unit }) => unit !== null)?.unit ?? length;
  if (stranger !== undefined || !one || !other || more || !isLength(typed)) {
    return fail({ code: 'first-run/not-understood', question: 'size', word: stranger ?? null });
  }
  const cm = [one, other].map(({ value, unit }) => toCm(value, isLength(unit) ? unit : typed));
  const [across = 0, up = 0] = isUpFirst(others) ? cm.toReversed() : cm;
  return others.some((word) => round.includes(word))
    ? succeed({ girthCm: across, heightCm: up })
    : succeed({ widthCm: across, depthCm: up });
}

function isUpFirst(others: readonly string[]): boolean {
  const up = others.findIndex((word) => deep.includes(word));
  const across = others.findIndex((word) => wide.includes(word) || round.includes(word));
  return up >= 0 && across >= 0 && up < across;
}
