/** The swatch guided like a bag: one step at a time, and what is typed at some of them makes the answer. */
import { type SwatchSoFar, type SwatchStep, swatchFrom, swatchSteps } from '../../planning/swatch-steps.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import { isLength, numberIn, numberPattern, toCm, unitOf } from './amounts.ts';
import type { AnswerFault, Length, Values } from './answers.ts';
import { isUnsure } from './read-line.ts';

const words = /^(?:knit(?: (?:it|one|a swatch))?|guide(?: me)?|stricken|anleiten)$/iu;

/** Whether a line at the question asks to be guided. */
export const asksForGuide = (line: string): boolean => words.test(line.trim());

export const swatchStepOf = (bed: Values['bed'], { at }: SwatchSoFar): SwatchStep | null =>
  swatchSteps(bed)[at] ?? null;

const done = /^(?:next|done|ok|weiter|fertig|erledigt)$/iu;

export const beginGuide: SwatchSoFar = { at: 0 };

/** An empty line confirms; at a measure that is wanted it is no answer. */
export function goOn(
  bed: Values['bed'],
  soFar: SwatchSoFar,
  line: string,
  length: Length,
): Result<SwatchSoFar, AnswerFault> {
  const step = swatchStepOf(bed, soFar);
  const next = { ...soFar, at: soFar.at + 1 };
  const isEmpty = line === '' || isUnsure(line);
  switch (step?.is) {
    case 'dial':
      return succeed(isEmpty ? next : { ...next, stitchSize: line.slice(0, 20) });
    case 'width':
    case 'height': {
      const cm = lengthIn(line, length);
      if (cm === null || cm <= 0) return fail({ code: 'first-run/not-a-measure', step: step.is });
      return succeed({ ...next, [step.is === 'width' ? 'widthCm' : 'heightCm']: cm });
    }
    case 'aside':
    case 'row-yarn': {
      if (isEmpty) return succeed(next);
      const cm = lengthIn(line, length);
      if (cm === null || (cm <= 0 && step.is === 'row-yarn'))
        return fail({ code: 'first-run/not-a-measure', step: step.is });
      return succeed({ ...next, [step.is === 'aside' ? 'asideCm' : 'rowYarnCm']: cm });
    }
    default:
      return isEmpty || done.test(line) ? succeed(next) : fail({ code: 'first-run/enter-when-done' });
  }
}

const oneLength = new RegExp(String.raw`^([-−]?)\s*(${numberPattern})\s*(\p{L}+|["″])?$`, 'u');

function lengthIn(line: string, length: Length): number | null {
  const [, sign, number, word] = oneLength.exec(line.trim()) ?? [];
  if (number === undefined) return null;
  const unit = word === undefined ? length : unitOf(word);
  if (!isLength(unit)) return null;
  return (sign === '' ? 1 : -1) * toCm(numberIn(number), unit);
}

/** The answer as it is kept, once all is measured; null before. */
export const answerOf = (bed: Values['bed'], soFar: SwatchSoFar): string | null => {
  const swatch = swatchStepOf(bed, soFar) === null ? swatchFrom(bed, soFar) : null;
  return swatch && JSON.stringify(swatch);
};

/** As it is kept from one start to the next; null where there is none. */
export function readGuide(stored: unknown): SwatchSoFar | null {
  const { at, ...told } = (stored ?? {}) as Record<string, unknown>;
  if (typeof at !== 'number' || !Number.isInteger(at) || at < 0) return null;
  const sizes = ['widthCm', 'heightCm', 'asideCm', 'rowYarnCm'].filter(
    (key) => typeof told[key] === 'number',
  );
  return {
    at,
    ...Object.fromEntries(sizes.map((key) => [key, told[key]])),
    ...(typeof told.stitchSize === 'string' ? { stitchSize: told.stitchSize } : {}),
  };
}
