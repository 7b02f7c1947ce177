/**
 * The size as a maker says it: `14 by 18 cm`, `18 deep 14 wide`; what goes in: `26 round 12 high`, `17 round 9 high 2 thick`, or
 * its three sides, `6.5 by 9 by 2`; or its name: `a deck of cards`; by numbers: `46 stitches 64 rows`; or `14 wide, as deep as
 * the bed`. Behind each, how deep a boxed bottom is: `boxed 5`.
 */
import { boxContents, type UsualThing, usualContents } from '../../planning/usual.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import { isLength, numberIn, numberPattern, readAmounts, toCm, unitOf } from './amounts.ts';
import type { AnswerFault, Length, Values } from './answers.ts';

type SizeRead = Values['size'];
type LengthUnit = Parameters<typeof toCm>[1];

const wide = ['wide', 'width', 'breit', 'breite'];
const deep = ['deep', 'depth', 'high', 'height', 'tall', 'tief', 'tiefe', 'hoch', 'höhe'];
const round = ['round', 'around', 'girth', 'umfang', 'rund', 'herum', 'rundherum'];
const beside = ['by', 'x', 'and', 'for', 'mal', 'auf', 'und', 'für', 'um'];

const things: Readonly<Record<UsualThing, RegExp>> = {
  cards: /^(?:(?:deck of |playing )?cards|(?:card )?deck|(?:spiel)?karten|kartenspiel)$/u,
  dice: /^(?:(?:set of )?dice|dice set|(?:satz )?würfel|würfels(?:et|atz))$/u,
  jar: /^(?:jar(?: of jam)?|jam jar|(?:marmeladen)?glas|glas marmelade)$/u,
  socks: /^(?:(?:pair of )?socks|(?:paar )?socken)$/u,
  book: /^(?:book|paperback|(?:taschen)?buch)$/u,
};
const articles = /^(?:for\s+|für\s+)?(?:an?\s+|the\s+|my\s+|eine?n?\s+|das\s+|mein\s+)?/u;

const boxed = new RegExp(
  String.raw`[,;]?\s*(?:(?:with|mit)\s+)?(?:boxed|bottom|boden)(?:\s+(?:of|von))?\s+(${numberPattern})\s*(mm|cm|in|inch(?:es)?|zoll)?(?![\p{L}\p{N}])`,
  'iu',
);

export function readSize(line: string, length: Length): Result<SizeRead, AnswerFault> {
  const [found, number, unit] = boxed.exec(line) ?? [];
  const size = sizeIn(found === undefined ? line : line.replace(found, ' '), length);
  if (!size.ok || found === undefined) return size;
  const typed = readAmounts(line).amounts.find((one) => isLength(one.unit))?.unit ?? null;
  return succeed({ ...size.value, boxedCm: thickness(number, unit, isLength(typed) ? typed : length) });
}

function sizeIn(line: string, length: Length): Result<SizeRead, AnswerFault> {
  const thing = thingNamed(line);
  if (thing !== null) return succeed({ ...usualContents[thing], usual: thing });
  return byNumbers(line, length) ?? measuredSize(line, length);
}

const bed = ['bed', 'bett', 'nadelbett'];
const besideBed = [...wide, ...deep, ...bed, 'and', 'und', 'as', 'the', 'so', 'wie', 'das'];

/** Stitches and rows, or as deep as the bed has needles; null where neither is said. */
function byNumbers(line: string, length: Length): Result<SizeRead, AnswerFault> | null {
  const { amounts, others } = readAmounts(line);
  const [one, other] = amounts;
  const [stitches, rows] = (['stitches', 'rows'] as const).map((unit) =>
    amounts.find((own) => own.unit === unit),
  );
  if (stitches && rows && amounts.length === 2 && others.every((word) => beside.includes(word)))
    return succeed({ stitches: stitches.value, rows: rows.value });
  const isBed = others.some((word) => bed.includes(word)) && others.every((word) => besideBed.includes(word));
  if (!isBed || !one || other || (one.unit !== null && !isLength(one.unit))) return null;
  return succeed({ widthCm: toCm(one.value, isLength(one.unit) ? one.unit : length), deepAsBed: true });
}

function thingNamed(line: string): UsualThing | null {
  const name = line.trim().toLowerCase().replace(articles, '');
  const found = (Object.keys(things) as UsualThing[]).find((one) => things[one].test(name));
  return found ?? null;
}

const thick = new RegExp(
  String.raw`(?:(${numberPattern})\s*(mm|cm|in|inch(?:es)?|zoll)?\s*(?:thick|dick)|(?:dicke|thickness)\s*(${numberPattern})\s*(mm|cm|in|zoll)?)`,
  'iu',
);

function measuredSize(line: string, length: Length): Result<SizeRead, AnswerFault> {
  const [told, before, unitBefore, behind, unitBehind] = thick.exec(line) ?? [];
  const { amounts, others } = readAmounts(told === undefined ? line : line.replace(told, ' '));
  const stranger = others.find((word) => ![wide, deep, round, beside].some((known) => known.includes(word)));
  const [one, other, third, more] = amounts;
  const typed = amounts.find(({ unit }) => unit !== null)?.unit ?? length;
  const isBox = third !== undefined && told === undefined && others.every((word) => beside.includes(word));
  if (stranger !== undefined || !one || !other || more || (third && !isBox) || !isLength(typed)) {
    return fail({ code: 'first-run/not-understood', question: 'size', word: stranger ?? null });
  }
  const cm = amounts.map(({ value, unit }) => toCm(value, isLength(unit) ? unit : typed));
  if (isBox) return succeed(boxContents(cm[0] ?? 0, cm[1] ?? 0, cm[2] ?? 0));
  const [across = 0, up = 0] = isUpFirst(others) ? cm.toReversed() : cm;
  const isRound = others.some((word) => round.includes(word));
  if (!isRound) {
    return told === undefined
      ? succeed({ widthCm: across, depthCm: up })
      : succeed(boxContents(across, up, thickness(before ?? behind, unitBefore ?? unitBehind, typed)));
  }
  return succeed({
    girthCm: across,
    heightCm: up,
    ...(told === undefined
      ? {}
      : { thicknessCm: thickness(before ?? behind, unitBefore ?? unitBehind, typed) }),
  });
}

function thickness(number: string | undefined, unit: string | undefined, typed: LengthUnit): number {
  const own = unit === undefined ? null : unitOf(unit);
  return toCm(numberIn(number ?? '0'), isLength(own) ? own : typed);
}

function isUpFirst(others: readonly string[]): boolean {
  const up = others.findIndex((word) => deep.includes(word));
  const across = others.findIndex((word) => wide.includes(word) || round.includes(word));
  return up >= 0 && across >= 0 && up < across;
}
