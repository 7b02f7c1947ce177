/** Several facts in one line go where they belong: `14 by 18 cm, 120 needles 6 mm, 40 stitches 60 rows 19.2 by 21.6`. */
import { isLength, readAmounts, type Unit } from './amounts.ts';
import type { Length, QuestionId } from './answers.ts';
import { readAnswer } from './questions.ts';

export interface AnswerPart {
  readonly id: QuestionId;
  readonly line: string;
}

/** Never so many that trying all ways to join them takes time. */
const mostParts = 12;

/**
 * The parts of a line that was typed at question `id`, the first of which answers it or belongs elsewhere; null where some part
 * belongs nowhere.
 */
export function partsOf(line: string, id: QuestionId, length: Length): readonly AnswerPart[] | null {
  const pieces = line.split(/\s*[,;]\s+/).filter((piece) => piece !== '');
  if (pieces.length > mostParts) return null;
  // A name ends where something begins that is no name; other answers are as long as can be.
  const counts = pieces.map((_, i) => i + 1);
  for (const count of id === 'name' ? counts : counts.toReversed()) {
    const head = pieces.slice(0, count).join(', ');
    const rest = places(pieces.slice(count), length, id);
    const own = readAnswer(id, head, length).ok ? id : placeOf(head, length, id);
    if (rest && own) return [{ id: own, line: head }, ...rest];
  }
  return null;
}

function places(pieces: readonly string[], length: Length, before: QuestionId): readonly AnswerPart[] | null {
  if (pieces.length === 0) return [];
  for (let count = pieces.length; count > 0; count--) {
    const line = pieces.slice(0, count).join(', ');
    const id = placeOf(line, length, before);
    const rest = id && places(pieces.slice(count), length, id);
    if (id && rest) return [{ id, line }, ...rest];
  }
  return null;
}

/** The question that a text answers by what is in it alone; a yarn is told by its colour, length or weight. */
function placeOf(line: string, length: Length, before: QuestionId): QuestionId | null {
  const { amounts } = readAmounts(line);
  const has = (...units: readonly Unit[]): boolean =>
    units.every((unit) => amounts.some((one) => one.unit === unit));
  const yarn: QuestionId = before === 'first' ? 'second' : 'first';
  const told: readonly (readonly [QuestionId, boolean])[] = [
    ['bed', has('needles')],
    ['swatch', has('stitches', 'rows')],
    ['size', amounts.some(({ unit }) => isLength(unit)) && !has('stitches') && !has('rows')],
    ['stripes', has('rows')],
    [yarn, /#|\d\s*(?:g|oz)(?!\p{L})/iu.test(line)],
  ];
  return told.find(([id, isTold]) => isTold && readAnswer(id, line, length).ok)?.[0] ?? null;
}
