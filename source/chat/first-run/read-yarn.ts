/** A yarn: its name, and what is known of it in any order behind it: `plum #6b2d5c 190 m per 100 g 60 g`. */
import { fail, type Result, succeed } from '../../shared/result.ts';
import { gramsPerOunce, metresPerYard } from '../../shared/units.ts';
import { negative, numberIn, numberPattern, unitOf } from './amounts.ts';
import type { AnswerFault, YarnAnswer } from './answers.ts';

const colour = /(?<=^|\s)#(\S*?)(?=[,;]?(?:\s|$))/;
const long = 'm|metres?|meters?|meter|yds?|yards?';
const heavy = 'g|grams?|gramm|oz|ounces?|unzen?';
/** `190 m`, `210 yd per 100 g`, `85 m/50 g`. */
const length = new RegExp(
  String.raw`(?<![\p{L}\p{N}])(${numberPattern})\s*(${long})(?:\s*(?:per|to|on|in|auf|je|pro|\/|=)\s*(${numberPattern})\s*(${heavy}))?(?![\p{L}\p{N}])`,
  'iu',
);
const weight = new RegExp(String.raw`(?<![\p{L}\p{N}])(${numberPattern})\s*(${heavy})(?![\p{L}\p{N}])`, 'iu');

const none = ['none', 'no', 'keins', 'keines', 'kein', 'keine', 'nein'];

export function readYarn(line: string): Result<YarnAnswer, AnswerFault> {
  const below = negative.exec(line)?.[0];
  if (below !== undefined) return fail({ code: 'first-run/not-understood', question: 'first', word: below });
  const withoutColour = line.replace(colour, ' ');
  const withoutLength = withoutColour.replace(length, ' ');
  const name = nameIn(withoutLength.replace(weight, ' '));
  const hex = colour.exec(line)?.[0] ?? null;
  if (name === '' || none.includes(name.toLowerCase())) return fail({ code: 'first-run/yarn-without-name' });
  const grams = massIn(weight.exec(withoutLength)?.slice(1));
  return succeed({ name, colour: hex?.toLowerCase() ?? null, metresPer100g: metresIn(withoutColour), grams });
}

/** Null for none: all is knitted in the first. */
export const readSecondYarn = (line: string): Result<YarnAnswer | null, AnswerFault> =>
  none.includes(line.trim().toLowerCase()) ? succeed(null) : readYarn(line);

/** A name without the marks around it; in quotes it may be anything. */
export const nameIn = (text: string): string =>
  text
    .replace(/\s+/g, ' ')
    .replace(/^[\s,;:]+|[\s,;:]+$/g, '')
    .replace(/^"(.*)"$/, '$1')
    .trim();

function metresIn(text: string): number | null {
  const [, number, unit = '', per, mass] = length.exec(text) ?? [];
  if (number === undefined) return null;
  const metres = numberIn(number) * (unitOf(unit) === 'yd' ? metresPerYard : 1);
  const grams = per === undefined || mass === undefined ? 100 : (massIn([per, mass]) ?? 100);
  return toTenth((metres * 100) / grams);
}

function massIn([number, unit = '']: readonly (string | undefined)[] = []): number | null {
  if (number === undefined) return null;
  return toTenth(numberIn(number) * (unitOf(unit) === 'oz' ? gramsPerOunce : 1));
}

const toTenth = (value: number): number => Math.round(value * 10) / 10;
