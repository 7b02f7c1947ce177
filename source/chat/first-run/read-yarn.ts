/**
 * A yarn: its name, and what is known of it in any order behind it: `plum #6b2d5c 190 m per 100 g 60 g`, `cream DK, 2 balls of
 * 50 g, 120 m each`.
 */
import { toTenth } from '../../planning/usual.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import { gramsPerOunce, metresPerYard } from '../../shared/units.ts';
import { negative, numberIn, numberPattern, unitOf } from './amounts.ts';
import type { AnswerFault, YarnAnswer } from './answers.ts';

/** A colour for a yarn by the word in its name, in English or German; otherwise one that none beside it has. */
const colourWords: readonly (readonly [hex: string, names: readonly string[]])[] = [
  ['#6b2d5c', ['plum', 'pflaume']],
  ['#9fd8c2', ['mint', 'minze']],
  ['#b3262e', ['red', 'rot']],
  ['#d9722b', ['orange']],
  ['#a8502f', ['rust', 'rost']],
  ['#e3c23b', ['yellow', 'gelb']],
  ['#3f8f4f', ['green', 'grün']],
  ['#2f5fa8', ['blue', 'blau']],
  ['#27325c', ['navy', 'marine']],
  ['#2f7d7d', ['teal', 'petrol']],
  ['#7a4fa0', ['purple', 'violet', 'lila', 'violett']],
  ['#dd8fae', ['pink', 'rosa']],
  ['#7a5236', ['brown', 'braun']],
  ['#efe3c4', ['cream', 'creme', 'ecru']],
  ['#d9b36c', ['sand', 'beige']],
  ['#9a9a9a', ['grey', 'gray', 'grau']],
  ['#262626', ['black', 'schwarz']],
  ['#f2efe6', ['white', 'weiß', 'weiss', 'natur']],
];

const byName: ReadonlyMap<string, string> = new Map(
  colourWords.flatMap(([hex, names]) => names.map((name) => [name, hex] as const)),
);

/** `beside` are the colours of the yarns before it. The first two of the table are told apart easily. */
export function usualColour(name: string, beside: readonly string[]): string {
  const free = colourWords.find(([hex]) => !beside.includes(hex))?.[0] ?? '#6b2d5c';
  const word = name
    .toLowerCase()
    .split(/[\s-]+/)
    .find((one) => byName.has(one));
  return (word && byName.get(word)) ?? free;
}

/**
 * How far 100 g go by the name of a yarn's weight: usual labels, a rule of thumb. Names as the trade uses them, British ply
 * and American weight beside each other; German ones where they differ. A blank may stand for each dash.
 */
const metresPer100g: readonly (readonly [metres: number, names: readonly string[]])[] = [
  [800, ['lace', '2-ply', '2-fädig', 'lacegarn']],
  [600, ['light-fingering', '3-ply', '3-fädig']],
  [420, ['fingering', 'sock-yarn', 'sock', '4-ply', '4-fädig', '4-fach', 'sockengarn', 'sockenwolle']],
  [330, ['sport', '5-ply', '6-fädig']],
  [230, ['dk', 'double-knit', 'double-knitting', 'light-worsted', '8-ply', '8-fädig']],
  [190, ['worsted']],
  [170, ['aran', '10-ply']],
  [120, ['chunky', 'bulky', '12-ply']],
  [70, ['super-bulky', 'super-chunky']],
];

const metresByName: ReadonlyMap<string, number> = new Map(
  metresPer100g.flatMap(([metres, names]) => names.map((name) => [name, metres] as const)),
);

/** The longest name first, so that `super-bulky` is not taken for `bulky`. */
const weightName = new RegExp(
  String.raw`(?<![\p{L}\p{N}])(${[...metresByName.keys()]
    .toSorted((one, other) => other.length - one.length)
    .map((name) => name.replaceAll('-', String.raw`[\s-]+`))
    .join('|')})(?:\s+(?:weight|yarn|garn))?(?![\p{L}\p{N}])`,
  'iu',
);

/** The usual metres to 100 g of the weight that is named in a text, and the text without it; null where none is. */
function weightNamed(text: string): { readonly metres: number; readonly rest: string } | null {
  const name = weightName.exec(text)?.[1];
  const metres = name && metresByName.get(name.toLowerCase().replace(/[\s-]+/g, '-'));
  return metres ? { metres, rest: text.replace(weightName, ' ') } : null;
}

const colour = /(?<=^|\s)#(\S*?)(?=[,;]?(?:\s|$))/;
const long = 'm|metres?|meters?|meter|yds?|yards?';
const heavy = 'g|grams?|gramm|oz|ounces?|unzen?|lbs?|pounds?|pfund';
const ball = 'balls?|skeins?|hanks?|cones?|knäuel|strang|stränge|konen?';
const each = String.raw`each|(?:a|per|je|pro)\s+(?:${ball})|je|pro`;
const half = String.raw`half\s+an?|ein(?:en)?\s+halbe[sn]?`;
const few = ['an?', 'one', 'two', 'three', 'four', half, 'eine?n?', 'zwei', 'drei', 'vier'].join('|');
const number = (written: string): RegExp =>
  new RegExp(String.raw`(?<![\p{L}\p{N}])${written}(?![\p{L}\p{N}])`, 'iu');
/** `190 m`, `210 yd per 100 g`, `85 m/50 g`, `1120 yards per pound`. */
const length = number(
  String.raw`(${numberPattern})\s*(${long})(?:\s*(?:per|to|on|in|a|an|auf|je|pro|\/|=)\s*(${numberPattern})?\s*(${heavy}))?`,
);
const weight = number(String.raw`(${numberPattern})\s*(${heavy})(?:\s*(?:${each}))?`);
/** `2 balls of 50 g, 120 m each`, `half a ball of 50 g`, `3 x 50 g`; the length of one ball may stand on either side. */
const balls = number(
  String.raw`(${numberPattern}|${few})\s*(?:(?:${ball})\s*(?:of|von|à|a|zu|je|mit|,|\()?|x|×|mal)\s*(?:(${numberPattern})\s*(${long})\s*[,\/=]?\s*)?(${numberPattern})\s*(${heavy})\s*\)?(?:\s*(?:${each}))?(?:\s*[,;\/=(]?\s*(?:je\s*)?(${numberPattern})\s*(${long})(?:\s*(?:${each}))?\s*\)?)?`,
);
/** `half a ball`, with nothing said of what a ball weighs. */
const bareBalls = number(String.raw`(?:${numberPattern}|${few})\s*(?:${ball})`);
const countWords: ReadonlyMap<string, number> = new Map([
  ['two', 2],
  ['zwei', 2],
  ['three', 3],
  ['drei', 3],
  ['four', 4],
  ['vier', 4],
]);

const none = ['none', 'no', 'keins', 'keines', 'kein', 'keine', 'nein'];

export function readYarn(line: string): Result<YarnAnswer, AnswerFault> {
  const below = negative.exec(line)?.[0];
  if (below !== undefined) return fail({ code: 'first-run/not-understood', question: 'first', word: below });
  const hex = colour.exec(line)?.[0] ?? null;
  const { rest, metresPer100g, grams } = amountsIn(line.replace(colour, ' '));
  const byWeight = isQuoted(rest) ? null : weightNamed(rest);
  const name = nameIn(byWeight && nameIn(byWeight.rest) !== '' ? byWeight.rest : rest).replace(
    /^(?:of|von)\s+/iu,
    '',
  );
  if (name === '' || none.includes(name.toLowerCase())) return fail({ code: 'first-run/yarn-without-name' });
  if (!isQuoted(rest) && (/[\d,;]/.test(name) || bareBalls.test(name)))
    return fail({ code: 'first-run/odd-yarn-name', name });
  return succeed({
    name,
    colour: hex?.toLowerCase() ?? null,
    metresPer100g: metresPer100g ?? byWeight?.metres ?? null,
    isUsualLength: metresPer100g === null && byWeight !== null,
    grams,
  });
}

const isQuoted = (text: string): boolean => /^[\s,;:]*"[^"]*"[\s,;:]*$/.test(text);

/** Empty for none: all is knitted in the first. Several are set apart by semicolons; bare names by commas too. */
export function readOtherYarns(line: string): Result<readonly YarnAnswer[], AnswerFault> {
  if (none.includes(line.trim().toLowerCase())) return succeed([]);
  const yarns: YarnAnswer[] = [];
  for (const part of yarnParts(line)) {
    const yarn = readYarn(part);
    if (!yarn.ok) return yarn;
    yarns.push(yarn.value);
  }
  const twice = yarns.find(({ name }, i) => yarns.findIndex((one) => one.name === name) < i);
  return twice ? fail({ code: 'first-run/same-yarn', yarn: twice.name }) : succeed(yarns);
}

function yarnParts(line: string): readonly string[] {
  const isBare = !/["\d#]/.test(line);
  const parts = line
    .split(isBare ? /\s*[;,]\s*(?:and\s+|und\s+)?/u : /\s*;\s*/u)
    .filter((part) => part !== '');
  const last = isBare && parts.length > 1 ? (parts.at(-1)?.split(/\s+(?:and|und)\s+/u) ?? []) : null;
  return last ? [...parts.slice(0, -1), ...last] : parts.length > 0 ? parts : [line];
}

/** A name without the marks around it; in quotes it may be anything. */
export const nameIn = (text: string): string =>
  text
    .replace(/\s+/g, ' ')
    .replace(/^[\s,;:]+|[\s,;:]+$/g, '')
    .replace(/^"(.*)"$/, '$1')
    .trim();

interface ToldOfYarn {
  /** What is left of the line. */
  readonly rest: string;
  readonly metresPer100g: number | null;
  readonly grams: number | null;
}

function amountsIn(line: string): ToldOfYarn {
  const inBalls = balls.exec(line);
  if (!inBalls) return looseAmounts(line);
  const [found, count = '', long1, unit1, mass = '', massUnit, long2, unit2] = inBalls;
  const one = massIn(mass, massUnit);
  const of = long1 ?? long2;
  const metres = of === undefined ? null : (metresIn(of, unit1 ?? unit2) * 100) / one;
  const rest = looseAmounts(line.replace(found, ' , '));
  return {
    rest: rest.rest,
    metresPer100g: metres === null ? rest.metresPer100g : toTenth(metres),
    grams: toTenth(countOf(count.toLowerCase()) * one),
  };
}

function looseAmounts(line: string): ToldOfYarn {
  const [found, amount, unit, per, massUnit] = length.exec(line) ?? [];
  const withoutLength = found === undefined ? line : line.replace(found, ' ');
  const [heavyFound, mass, unitOfMass] = weight.exec(withoutLength) ?? [];
  const over = massUnit === undefined ? 100 : massIn(per ?? '1', massUnit);
  return {
    rest: heavyFound === undefined ? withoutLength : withoutLength.replace(heavyFound, ' '),
    metresPer100g: amount === undefined ? null : toTenth((metresIn(amount, unit) * 100) / over),
    grams: mass === undefined ? null : toTenth(massIn(mass, unitOfMass)),
  };
}

const countOf = (word: string): number => {
  if (/^\d/.test(word)) return numberIn(word);
  return /hal[bf]/.test(word) ? 0.5 : (countWords.get(word) ?? 1);
};

const metresIn = (amount: string, unit = ''): number =>
  numberIn(amount) * (unitOf(unit) === 'yd' ? metresPerYard : 1);

function massIn(amount: string, unit = ''): number {
  if (/^(?:lb|pound)/i.test(unit)) return numberIn(amount) * gramsPerOunce * 16;
  // A German pound is half a kilogram.
  if (/^pfund/i.test(unit)) return numberIn(amount) * 500;
  return numberIn(amount) * (unitOf(unit) === 'oz' ? gramsPerOunce : 1);
}
