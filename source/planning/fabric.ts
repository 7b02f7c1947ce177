/**
 * Whether the fabric will be any good. Tightness factor √tex / l (l in mm): plain knitting normally lies between 1.3
 * and 1.5 (textile handbooks). Width over height of a stitch is about kc/kw = 1.3 for plain knitting (GATE Textile
 * Engineering 2009, question 40); the band allowed here is a rule of thumb.
 */
import type { Brief } from './brief.ts';
import type { Gauge } from './gauge.ts';
import type { KnittedStripe } from './stripe-sequence.ts';
import { texOf } from './yarn-needs.ts';

type StitchGauge = Pick<Gauge, 'stitchMm' | 'rowMm' | 'loopLengthMm'>;

/** The band in which plain knitting normally lies. */
export const normalTightness = { least: 1.3, most: 1.5 };
/** Beyond these the fabric is limp or the bed jams (rule of thumb). */
export const workableTightness = { least: 1.0, most: 1.8 };
/** Stitch width over row height of plain knitting (rule of thumb around 1.3). */
export const plainAspect = { least: 1.05, most: 1.65 };

export const tightnessFactor = (tex: number, loopLengthMm: number): number => Math.sqrt(tex) / loopLengthMm;

/** Mean tex of the fabric: each yarn's by the rows it knits. */
export function meanTex(brief: Brief, stripes: readonly KnittedStripe[]): number {
  const rows = stripes.reduce((sum, stripe) => sum + stripe.rows, 0);
  const texRows = stripes.reduce(
    (sum, stripe) => sum + stripe.rows * texOf(brief.yarns.get(stripe.yarn)?.metresPer100g ?? 1),
    0,
  );
  return texRows / rows;
}

/** Grams per square metre: loops in it, times their length in metres, times grams per metre. */
export const massPerSquareMetre = ({ stitchMm, rowMm, loopLengthMm }: StitchGauge, tex: number): number =>
  (1_000_000 / (stitchMm * rowMm)) * (loopLengthMm / 1000) * (tex / 1000);

export interface Fabric {
  readonly tightness: number;
  /** Grams of a square metre, as the swatch measures it. */
  readonly fabricMassGsm: number;
}

export function judgeFabric(brief: Brief, gauge: Gauge, stripes: readonly KnittedStripe[]): Fabric {
  const tex = meanTex(brief, stripes);
  return {
    tightness: tightnessFactor(tex, gauge.loopLengthMm),
    fabricMassGsm: massPerSquareMetre(gauge, tex),
  };
}
