/**
 * Whether the fabric will be any good. Tightness factor √tex / l (l in mm). Hand yarns at the gauge of their own labels lie
 * at 0.95 to 1.2, and a bag that keeps its shape wants 1.1 to 1.4 (rules of thumb, worked out from usual labels). Loops jam
 * near l/d = 16.7 (Chamberlain; Hepworth and Leaf; from memory), with d = 4.44·10⁻³·√(tex/density) cm (Texcoms Textile Technical
 * Handbook 2023, p. 147). Width over height of a stitch is about kc/kw = 1.3 (GATE Textile Engineering 2009, question 40, for
 * fully relaxed cotton; the answer from memory); the band is a rule of thumb.
 */
import type { Brief, RelaxedState } from './brief.ts';
import { type Gauge, loopConstants, type StitchSize } from './gauge.ts';
import type { KnittedStripe } from './stripe-sequence.ts';
import { texOf } from './yarn-needs.ts';

/** Hand yarns at the gauge of their labels. */
export const labelTightness = { least: 0.95, most: 1.2 };
/** A bag that keeps its shape. */
export const firmTightness = { least: 1.1, most: 1.4 };
/** Below this the fabric is limp (rule of thumb). */
export const limpTightness = 0.8;
/** In g/cm³ (Texcoms, as above). */
const woolDensity = 1.31;
const jamLoopsInDiameters = 16.7;
const diameterCmPerRootTex = 4.44e-3;

/** A yarn's diameter in cm; density in g/cm³. */
export const yarnDiameterCm = (tex: number, density: number): number =>
  diameterCmPerRootTex * Math.sqrt(tex / density);

/** Tightness at which loops of wool jam: √tex / l where l = 16.7 d. */
export const jamTightness = 1 / (10 * jamLoopsInDiameters * yarnDiameterCm(1, woolDensity));

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
export const massPerSquareMetre = (
  { stitchMm, rowMm }: StitchSize,
  loopLengthMm: number,
  tex: number,
): number => (1_000_000 / (stitchMm * rowMm)) * (loopLengthMm / 1000) * (tex / 1000);

/** What ten stitches and ten rows should measure, so that the dial can be turned before the swatch. */
export interface GaugeAim {
  readonly tightness: number;
  readonly tenStitchesMm: number;
  readonly tenRowsMm: number;
}

/** Where the hand yarns' band and that of a bag that keeps its shape meet (rule of thumb). */
const aimedTightness = 1.2;

/** l = √tex / tightness, a stitch l/kw wide and l/kc high. */
export function gaugeToAimAt(tex: number, state: RelaxedState): GaugeAim {
  const loopMm = Math.sqrt(tex) / aimedTightness;
  const { kw, kc } = loopConstants[state];
  return { tightness: aimedTightness, tenStitchesMm: (10 * loopMm) / kw, tenRowsMm: (10 * loopMm) / kc };
}

export interface Fabric {
  readonly tightness: number;
  /** Grams of a square metre, as the swatch measures it. */
  readonly fabricGramsPerM2: number;
  readonly aim: GaugeAim;
}

export function judgeFabric(brief: Brief, gauge: Gauge, stripes: readonly KnittedStripe[]): Fabric {
  const tex = meanTex(brief, stripes);
  return {
    tightness: tightnessFactor(tex, gauge.loopLengthMm),
    fabricGramsPerM2: massPerSquareMetre(gauge.asKnitted, gauge.loopLengthMm, tex),
    aim: gaugeToAimAt(tex, brief.swatch.state),
  };
}
