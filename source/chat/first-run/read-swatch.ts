/** The swatch: `40 stitches over 19.2 cm, 60 rows over 21.6 cm`, or what goes to 10 cm: `30 stitches 42 rows`. */
import type { MeasuredSwatch } from '../../planning/usual.ts';
import { fail, type Result, succeed } from '../../shared/result.ts';
import { type Amount, isLength, numberIn, numberPattern, readAmounts, toCm, unitOf } from './amounts.ts';
import type { AnswerFault, Length, Values } from './answers.ts';

const beside = [
  'over',
  'by',
  'x',
  'and',
  'on',
  'to',
  'per',
  'in',
  'wide',
  'high',
  'auf',
  'über',
  'mal',
  'und',
  'je',
  'pro',
  'breit',
  'hoch',
  '=',
  '/',
  'x',
  'square',
  'gauge',
  'is',
  'ist',
  'sind',
  'are',
];
const none =
  /^(?:none|no|not)(?: swatch)?(?: yet)?$|^(?:keine|nein|noch keine)(?: (?:maschen)?probe)?$|^no gauge$/i;

/** `7.5 st/in`, `10 rows per inch`, `3 stitches to the centimetre`: over one of them. */
const perUnit = new RegExp(
  String.raw`(${numberPattern})\s*(\p{L}+)\s*(?:\/|(?:(?:per|an?|to|the|pro|je|auf|einen|den)\s+)+)\s*(in|inch|cm|centimetre|centimeter|zoll|zentimeter)(?!\p{L})`,
  'giu',
);
/** What a count to one inch or centimetre is written out to, so that it is whole more often. */
const spelledOut = { in: 4, cm: 10 };

const toWhole = (line: string): string =>
  line.replace(perUnit, (found, number: string, word: string, unit: string) => {
    const counted = unitOf(word);
    const over = unitOf(unit);
    if ((counted !== 'stitches' && counted !== 'rows') || (over !== 'in' && over !== 'cm')) return found;
    return `${numberIn(number) * spelledOut[over]} ${word} over ${spelledOut[over]} ${over} `;
  });

/** Null where there is none yet. */
export function readSwatch(line: string, length: Length): Result<Values['swatch'], AnswerFault> {
  if (none.test(line.trim())) return succeed(null);
  // Here nothing is measured in metres, and rows and stitches are often shortened so.
  const { amounts: typed, others } = readAmounts(
    toWhole(
      line
        .replace(/(\d\s*)r\b/gi, '$1 rows')
        .replace(/(\d\s*)m\b/gi, '$1 st')
        // Between two counts a stroke is no fraction: 28/40.
        .replace(/(\d{2,})\s*\/\s*(?=\d{2,})/g, '$1 '),
    ),
  );
  const stranger = others.find((word) => !beside.includes(word));
  const swatch = stranger === undefined ? measured(typed, length) : null;
  if (swatch) return succeed(swatch);
  return typed.length === 4 && typed.every(({ unit }) => unit === null || isLength(unit))
    ? fail({ code: 'first-run/which-is-which' })
    : fail({ code: 'first-run/not-understood', question: 'swatch', word: stranger ?? null });
}

/** Two counts and two lengths, one length for both, or none: 10 cm or 4 in. Lengths come in the order of their counts. */
function measured(typed: readonly Amount[], length: Length): MeasuredSwatch | null {
  const amounts = withCounts(typed);
  const stitches = amounts.findIndex(({ unit }) => unit === 'stitches');
  const rows = amounts.findIndex(({ unit }) => unit === 'rows');
  const lengths = amounts.filter(({ unit }) => isLength(unit) || unit === null);
  if (stitches < 0 || rows < 0 || lengths.length !== amounts.length - 2) return null;
  const typedUnit = lengths.map(({ unit }) => unit).find((unit) => isLength(unit)) ?? length;
  const cm = lengths.map(({ value, unit }) => toCm(value, isLength(unit) ? unit : typedUnit));
  const usualCm = length === 'cm' ? 10 : toCm(4, 'in');
  const [one = usualCm, other = one, more] = stitches < rows ? cm : cm.toReversed();
  return more === undefined
    ? {
        stitches: amounts[stitches]?.value ?? 0,
        rows: amounts[rows]?.value ?? 0,
        widthCm: one,
        heightCm: other,
      }
    : null;
}

/** Numbers without a unit are the counts where the others are lengths, or where there are two: stitches, then rows. */
function withCounts(amounts: readonly Amount[]): readonly Amount[] {
  const bare = amounts.filter(({ unit }) => unit === null);
  const areCounts = bare.length === 2 && amounts.every(({ unit }) => unit === null || isLength(unit));
  if (!areCounts) return amounts;
  return amounts.map((amount) =>
    amount.unit === null ? { ...amount, unit: amount === bare[0] ? 'stitches' : 'rows' } : amount,
  );
}
