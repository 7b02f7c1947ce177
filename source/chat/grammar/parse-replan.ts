/** Reads what has changed: the piece as it measures, a yarn as it weighs, another colour, fewer rows or more. */
import { fail, type Result, succeed } from '../../shared/result.ts';
import type { Words } from '../../wording/words.ts';
import type { ChatFault, Intent, MeasuredAmount, ReplanWish } from './intent.ts';

/** Words that may follow `replan`. */
export const replanWords: readonly string[] = ['shorter', 'longer', 'rows', 'weigh', 'colour', 'cord'];

const ownWords: ReadonlySet<string> = new Set([...replanWords, 'stitches', 'row', 'to']);
const usage = 'replan 20 stitches 9.8 cm 30 rows 10.5 cm';
const number = '(\\d+(?:[.,]\\d+)?)';
const length = `${number}\\s*(mm|cm|in)?(?=\\s|$)`;

export function parseReplan(rest: string, words: Words): Result<Intent, ChatFault> {
  let left = ` ${rest
    .split(/\s+/)
    .map((word) => words.understand(word, ownWords))
    .join(' ')} `;
  /** Takes the first match out of what is left to read. */
  const take = (pattern: string): RegExpExecArray | null => {
    const match = new RegExp(`\\s${pattern}(?=\\s|$)`, 'i').exec(left);
    if (match) left = left.replace(match[0], '');
    return match;
  };
  const cord = take(`cord\\s+(?:in\\s+)?(.+?)(?:\\s+(#[0-9a-f]{6})\\s+${number}(?:\\s*m)?)?${beforeNext}`);
  const recolour = take(`colou?r\\s+(.+?)\\s+to\\s+(.+?)(?:\\s+(#[0-9a-f]{6})\\s+${number}(?:\\s*m)?)?\\s*$`);
  const weighed = [];
  for (let match = take(weighing); match; match = take(weighing)) {
    weighed.push({ yarn: match[1] ?? '', amount: amountOf(match, 2) });
  }
  const stitches = measured(take(`(\\d+)\\s*(?:stitches|stitch)\\s+${length}`));
  const rows = measured(take(`(\\d+)\\s*rows?\\s+${length}`));
  const nothing = [stitches, rows].find((one) => one && !(one.count > 0 && one.length.value > 0));
  if (nothing) return fail({ code: 'chat/not-a-measurement', word: rest, usage });
  const rowsRound = take('rows\\s+(\\d+)') ?? take('(\\d+)\\s*rows');
  const towards = take('(shorter|longer|(?:stop\\s+)?early)')?.[1]?.toLowerCase();
  const word = left.trim();
  if (word !== '') return fail({ code: 'chat/not-a-measurement', word, usage });
  const want = rowsRound ? Number(rowsRound[1]) : towards === undefined ? 'any' : wanted(towards);
  return succeed({
    kind: 'replan',
    wish: {
      stitches,
      rows,
      weighed,
      recolour: recolour ? recolouring(recolour) : null,
      cord: cord && recolouredCord(cord),
      want,
    },
  });
}

const weighing = `weigh(?:s|ed)?\\s+(.+?)\\s+${number}\\s*(g|oz)?`;

const wanted = (towards: string): 'shorter' | 'longer' => (towards === 'longer' ? 'longer' : 'shorter');

const decimal = (text: string | undefined): number => Number((text ?? '').replace(',', '.'));

const amountOf = (match: RegExpExecArray, at: number): MeasuredAmount => ({
  value: decimal(match[at]),
  unit: (match[at + 1]?.toLowerCase() ?? null) as MeasuredAmount['unit'],
});

function measured(match: RegExpExecArray | null): ReplanWish['rows'] {
  return match && { count: Number(match[1]), length: amountOf(match, 2) };
}

/** What may follow the cord's yarn. */
const beforeNext = '(?=\\s+(?:weigh(?:s|ed)?|colou?r|rows|shorter|longer|\\d+\\s*(?:stitch|row))|\\s*$)';

const recolouredCord = ([, to = '', colour, metres]: RegExpExecArray): ReplanWish['cord'] => ({
  to: to.trim(),
  colour: colour?.toLowerCase() ?? null,
  metresPer100g: metres === undefined ? null : decimal(metres),
});

function recolouring(match: RegExpExecArray): ReplanWish['recolour'] {
  const [, from = '', to = '', colour, metres] = match;
  return {
    from: from.trim(),
    to: to.trim(),
    colour: colour?.toLowerCase() ?? null,
    metresPer100g: metres === undefined ? null : decimal(metres),
  };
}
