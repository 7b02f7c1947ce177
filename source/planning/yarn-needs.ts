/**
 * Yarn by colour: stitches knitted times loop length, the strand carried up past the other stripes, 15 cm at each
 * start and end, the graft, seam and corner tails for the last stripe's yarn, the hem and the cord for their own. The grafted row is not
 * counted among the knitted ones: its yarn is in the graft tail. Mass = km × tex, tex = 100 000 / (m per 100 g).
 */
import { type BoxedBottom, cornerThreadCm } from './boxed.ts';
import type { Brief, Yarn } from './brief.ts';
import { type CordPlan, cordYarnCm } from './cord.ts';
import type { Gauge } from './gauge.ts';
import type { Hanging } from './hangings.ts';
import type { Hem } from './hem.ts';
import type { KnittedStripe } from './stripe-sequence.ts';
import { endTailCm, type GraftTail, type SeamTail } from './tails.ts';

export interface YarnNeed {
  readonly yarn: string;
  readonly metres: number;
  /** Null for waste yarn, whose thickness nobody asked for. */
  readonly grams: number | null;
  /** Grams and what is kept in hand: 10 % with a measured loop, 15 % by the model. */
  readonly withReserveGrams: number | null;
  readonly haveGrams: number | null;
  /** Whether what was weighed covers the need with its reserve; null where either is unknown. */
  readonly enough: boolean | null;
  /** What has to be found, reserve included; 0 where there is enough, null where either is unknown. */
  readonly shortGrams: number | null;
}

/** Kept in hand: what a loop length by the model may be off, or a measured one (rule of thumb). */
export const reserveOf = ({ loopLengthMeasured }: Gauge): number => (loopLengthMeasured ? 1.1 : 1.15);

/** Waste rows before the closing rows come off: 6 at the least (common practice). */
export const closingWasteRows = (brief: Brief): number => Math.max(6, brief.waste.rows);

/** Waste rows at a rehang: an even number, so that the carriage is home again. */
export const rehangWasteRows = (brief: Brief): number =>
  closingWasteRows(brief) + (closingWasteRows(brief) % 2);

/** Linear density in tex (grams per kilometre). */
export const texOf = (metresPer100g: number): number => 100_000 / metresPer100g;

/** What is made of yarn beside the stripes, and how wide the strip is. */
export interface HandWork {
  readonly stitches: number;
  readonly graft: GraftTail;
  readonly seam: SeamTail;
  readonly boxed: BoxedBottom | null;
  readonly hem: Hem | null;
  readonly cord: CordPlan;
}

interface YarnWork extends HandWork {
  readonly stripes: readonly KnittedStripe[];
  readonly hangings: readonly Hanging[];
}

/** One yarn's part in the stripes. */
interface YarnShare {
  /** Its rows, the grafted one included; 0 where it knits no stripe. */
  readonly rows: number;
  /** Rows of other stripes that its strand climbs past between its own. */
  readonly carriedRows: number;
  /** It knits the last stripe, and so grafts and sews. */
  readonly closes: boolean;
}

/** One need for each yarn of the brief, used or not, and one for the waste yarn, last. */
export function planYarn(brief: Brief, gauge: Gauge, work: YarnWork): readonly YarnNeed[] {
  const needs = [...brief.yarns].map(([name, yarn]) => {
    const metres = metresFor(name, shareOf(name, work.stripes), gauge, work);
    const { grams, withReserveGrams, haveGrams, enough, shortGrams } = weigh(metres, yarn, gauge);
    return { yarn: name, metres, grams, withReserveGrams, haveGrams, enough, shortGrams };
  });
  const waste = { yarn: brief.waste.yarn, metres: wasteMetres(brief, gauge, work) };
  const unknown = { grams: null, withReserveGrams: null, haveGrams: null, enough: null, shortGrams: null };
  return [...needs, { ...waste, ...unknown }];
}

/** Metres as grams, beside what the maker has. */
export function weigh(metres: number, { metresPer100g, grams: haveGrams }: Yarn, gauge: Gauge) {
  const grams = (metres / 1000) * texOf(metresPer100g);
  const withReserveGrams = grams * reserveOf(gauge);
  const shortGrams = haveGrams === null ? null : Math.max(0, withReserveGrams - haveGrams);
  const enough = shortGrams === null ? null : shortGrams === 0;
  return { grams, withReserveGrams, haveGrams, enough, shortGrams };
}

/** What `yarn` is for, in metres: its share of the stripes and, where they fall to it, graft and seam, and the cord. */
export interface YarnParts {
  readonly stripes: number;
  readonly tails: number;
  readonly hem: number;
  readonly cord: number;
}

export function yarnParts(yarn: string, share: YarnShare, gauge: Gauge, work: HandWork): YarnParts {
  const knittedRows = share.rows - (share.closes ? 1 : 0);
  const stitchesCm = (knittedRows * work.stitches * gauge.loopLengthMm) / 10;
  const carriedCm = (share.carriedRows * gauge.rowMm) / 10;
  const startsCm = share.rows > 0 ? endTailCm : 0;
  const sewnCm = work.graft.tailCm + work.seam.tailCm + cornerThreadCm(work.boxed);
  const tailsCm = share.closes ? sewnCm : 0;
  const endsCm = share.closes ? startsCm : 2 * startsCm;
  const cordCm = work.cord.yarn === yarn ? cordYarnCm(work.cord) : 0;
  return {
    stripes: (stitchesCm + carriedCm + endsCm) / 100,
    tails: tailsCm / 100,
    hem: work.hem?.yarn === yarn ? work.hem.metres : 0,
    cord: cordCm / 100,
  };
}

export function metresFor(yarn: string, share: YarnShare, gauge: Gauge, work: HandWork): number {
  const { stripes, tails, hem, cord } = yarnParts(yarn, share, gauge, work);
  return stripes + tails + hem + cord;
}

/** The share of `yarn` in what comes after so many rows. */
export function shareOf(yarn: string, stripes: readonly KnittedStripe[], afterRow = 0): YarnShare {
  const own = stripes.filter((stripe) => stripe.yarn === yarn && stripe.lastRow > afterRow);
  return {
    rows: own.reduce((sum, { firstRow, lastRow }) => sum + lastRow - Math.max(firstRow - 1, afterRow), 0),
    carriedRows: carriedRows(own),
    closes: own.length > 0 && own.at(-1) === stripes.at(-1),
  };
}

/** Rows of other stripes that the strand climbs past between its own. */
const carriedRows = (own: readonly KnittedStripe[]): number =>
  own.reduce((sum, stripe, i) => sum + (i === 0 ? 0 : stripe.firstRow - 1 - (own[i - 1]?.lastRow ?? 0)), 0);

function wasteMetres(brief: Brief, gauge: Gauge, { stitches, hangings }: YarnWork): number {
  const rehangs = hangings.length - 1;
  const castOnRows = 1;
  const rows = castOnRows + brief.waste.rows + closingWasteRows(brief) + rehangs * rehangWasteRows(brief);
  const endsCm = (2 + rehangs) * 2 * endTailCm;
  return (rows * stitches * gauge.loopLengthMm) / 1000 + endsCm / 100;
}
