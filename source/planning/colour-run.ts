/**
 * Self-striping yarn: its colours follow one another in known lengths, over and over. Where each falls in the bag follows from the
 * yarn that every row takes, the end left at the start, and the strand carried past other stripes (common practice; the
 * grafted row is taken to be as long as a knitted one).
 */
import { hair } from '../shared/numbers.ts';
import type { ColourStretch } from './brief.ts';
import { leastRowsOf, rowMultipleOf } from './choose-size.ts';
import type { Plan } from './plan.ts';
import { endTailCm } from './tails.ts';

export interface ColourBand {
  readonly colour: string;
  /** Rows of the bag, the grafted one included, of which this colour has the middle. */
  readonly fromRow: number;
  readonly throughRow: number;
}

export interface ColourRun {
  readonly yarn: string;
  /** Metres after which the colours begin again, and those that a row takes. */
  readonly runMetres: number;
  readonly rowMetres: number;
  readonly bands: readonly ColourBand[];
  /** Where the yarn knits throughout, so that its end meets its start in the graft; null elsewhere. */
  readonly graft: {
    /** How far along its run the end is beyond where it would go on without a break; negative where it falls short. */
    readonly offMetres: number;
    /** The same in rows. */
    readonly offRows: number;
    /** Of up to four repeats fewer or more, rows round the tube that meet better; null where none do. */
    readonly better: { readonly rows: number; readonly offMetres: number } | null;
  } | null;
}

/** One for each yarn that has a run, in the order of the brief. */
export const colourRuns = (plan: Plan): readonly ColourRun[] =>
  [...plan.brief.yarns].flatMap(([yarn, { run }]) => (run ? [colourRunOf(plan, yarn, run)] : []));

const sumOf = (run: readonly ColourStretch[]): number => run.reduce((sum, { metres }) => sum + metres, 0);

/** The colour so many metres from where the yarn begins. */
export function colourAt(run: readonly ColourStretch[], metres: number): string {
  let rest = metres % sumOf(run);
  for (const { colour, metres: long } of run) {
    if (rest < long) return colour;
    rest -= long;
  }
  return run[0]?.colour ?? '';
}

function colourRunOf(plan: Plan, yarn: string, run: readonly ColourStretch[]): ColourRun {
  const rowMetres = (plan.stitches * plan.gauge.loopLengthMm) / 1000;
  const bands: ColourBand[] = [];
  for (const { row, from } of rowsAlong(plan, yarn, rowMetres)) {
    const colour = colourAt(run, from + rowMetres / 2);
    const last = bands.at(-1);
    if (last?.colour === colour && last.throughRow === row - 1)
      bands.splice(-1, 1, { ...last, throughRow: row });
    else bands.push({ colour, fromRow: row, throughRow: row });
  }
  const knitsAll = plan.stripes.every((stripe) => stripe.yarn === yarn);
  return {
    yarn,
    runMetres: sumOf(run),
    rowMetres,
    bands,
    graft: knitsAll ? graftOf(plan, rowMetres, sumOf(run)) : null,
  };
}

/** Each row of the yarn, and the metres of it that lie before. */
function* rowsAlong({ stripes, gauge }: Plan, yarn: string, rowMetres: number) {
  let from = endTailCm / 100;
  let before = 0;
  for (const stripe of stripes) {
    if (stripe.yarn !== yarn) continue;
    if (before > 0) from += ((stripe.firstRow - 1 - before) * gauge.rowMm) / 1000;
    for (let row = stripe.firstRow; row <= stripe.lastRow; row++, from += rowMetres) yield { row, from };
    before = stripe.lastRow;
  }
}

function graftOf({ brief, rows }: Plan, rowMetres: number, runMetres: number): ColourRun['graft'] {
  const offAt = (count: number): number => {
    const beyond = (count * rowMetres) % runMetres;
    return beyond > runMetres / 2 ? beyond - runMetres : beyond;
  };
  const offMetres = offAt(rows);
  const rowMultiple = rowMultipleOf(brief);
  const others = [-4, -3, -2, -1, 1, 2, 3, 4]
    .map((repeats) => rows + repeats * rowMultiple)
    .filter((count) => count >= leastRowsOf(brief))
    .toSorted((a, b) => Math.abs(offAt(a)) - Math.abs(offAt(b)));
  const [best] = others;
  const isBetter = best !== undefined && Math.abs(offAt(best)) < Math.abs(offMetres) - hair;
  return {
    offMetres,
    offRows: offMetres / rowMetres,
    better: isBetter ? { rows: best, offMetres: offAt(best) } : null,
  };
}
