/** Tools and materials that lie ready before the first needle comes into work, each with its number (common practice). */
import type { Plan } from './plan.ts';

export interface Kit {
  /** Of the transfer tool. */
  readonly prongs: number;
  readonly hasComb: boolean;
  /** One for each yarn that can wait, and one for the loop or the end of the ravel row. */
  readonly clips: number;
  /** Null where a loop of the waste yarn marks the ravel row. */
  readonly ravelCordCm: number | null;
  readonly yarns: readonly Portion[];
}

interface Portion {
  readonly yarn: string;
  readonly metres: number;
  /** With what is kept in hand; null for a yarn that nobody weighs. */
  readonly grams: number | null;
}

export function kitOf({ brief, ravelCordCm, yarn }: Plan): Kit {
  const used = yarn.filter(({ metres }) => metres > 0);
  return {
    prongs: brief.edgeStitches,
    hasComb: !brief.bed.without.includes('comb'),
    clips: Math.max(1, new Set(brief.stripes.map((stripe) => stripe.yarn)).size - 1) + 1,
    ravelCordCm: brief.waste.ravel === 'cord' ? ravelCordCm : null,
    yarns: used.map(({ yarn: name, metres, withReserveGrams }) => ({
      yarn: name,
      metres,
      grams: withReserveGrams,
    })),
  };
}
