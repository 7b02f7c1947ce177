/** At the machine: what is read from in front of the bed with both hands full. */
import type { Plan } from '../../planning/plan.ts';
import type { SheetWords } from '../../wording/sheet.en.ts';
import type { Words } from '../../wording/words.ts';
import { bedMapOf } from '../geometry/bed-map.ts';
import { bedDrawing } from '../svg/bed-drawing.ts';
import type { Drawing } from '../svg/element.ts';
import { hemDiagram } from '../svg/hem-diagram.ts';
import { shapingDiagram } from '../svg/shaping-diagram.ts';
import { drawBed } from '../terminal/draw-bed.ts';
import { drawHem } from '../terminal/draw-hem.ts';
import type { DrawOptions } from '../terminal/picture.ts';
import {
  type Across,
  type Block,
  besideColumns,
  besideGapMm,
  columnMm,
  type Item,
  type SheetOptions,
  types,
} from './block.ts';
import type { Digest } from './digest.ts';
import { stripeListFor } from './lay-tables.ts';
import type { StripeLines } from './stripe-lines.ts';

/** Hangings that the picture of the bed has room for. */
const mostLanes = 2;

export interface MachineBlocks {
  /** What is done once, and what is done at each stripe. */
  readonly first: readonly Block[];
  /** The list of stripes, which goes on over as many pages as it needs. */
  readonly stripes: readonly StripeLines[];
  readonly across: Across;
}
/** A bed drawn narrower is none that needles could be found on. */
const leastBedMm = 70;

export function machineBlocks(
  plan: Plan,
  options: SheetOptions,
  look: DrawOptions,
  digest: Digest,
): MachineBlocks {
  const { words } = options;
  const { sheet } = words;
  const part = (head: string, items: readonly Item[]): readonly Block[] =>
    items.length === 0 ? [] : [{ kind: 'run', head, items, mind: sheet.mind }];
  return {
    first: [
      { kind: 'numbers', numbers: numbersOf(plan, sheet) },
      ...bedPictures(plan, words, look),
      ...part(sheet.castOn, digest['cast-on']),
      ...part(sheet.perStripe, digest.stripes),
      ...part(sheet.hangAgain, digest['hang-again']),
      ...part(sheet.close, digest['closing-row']),
      ...hemBlocks(plan, words, look, part(sheet.hem, digest.hem)),
    ],
    ...stripeListFor(plan, words, types.machine),
  };
}

/** The hem's steps beside a picture of it, which is made at the machine too before the strip is grafted. */
function hemBlocks(plan: Plan, words: Words, look: DrawOptions, steps: readonly Block[]): readonly Block[] {
  if (!plan.hem) return [];
  const drawing = hemDiagram(plan.hem, words);
  const figure: Block = { kind: 'figure', drawing, plain: () => drawHem(plan, look, words) };
  return [besideColumns(drawing.widthMm, [figure], steps)];
}

/** The bed and a shaping move on it, side by side where both have room. */
function bedPictures(plan: Plan, words: Words, look: DrawOptions): readonly Block[] {
  const figure = (drawing: Drawing, plain: () => readonly string[]): Block => ({
    kind: 'figure',
    drawing,
    plain,
  });
  const bedIn = (widthMm: number): Drawing =>
    bedDrawing(plan, words.sheet, { widthMm, size: types.machine.size, lanes: mostLanes });
  const bedFigure = (bed: Drawing): Block => figure(bed, () => drawBed(plan, look, words));
  if (plan.shapings === 0) return [bedFigure(bedIn(columnMm - 2))];
  const shaping = shapingDiagram(plan, words);
  const shapingFigure = figure(shaping, () => [shaping.title]);
  const besideMm = columnMm - besideGapMm - shaping.widthMm;
  // Names that stand beside a bar may make the drawing wider than its bed.
  const bed = [2, 6, 10, 14, 18]
    .filter((less) => besideMm - less >= leastBedMm)
    .map((less) => bedIn(besideMm - less))
    .find(({ widthMm }) => widthMm <= besideMm);
  return bed
    ? [besideColumns(bed.widthMm, [bedFigure(bed)], [shapingFigure])]
    : [bedFigure(bedIn(columnMm - 2)), shapingFigure];
}

/** The four numbers without which nothing is begun. */
function numbersOf(plan: Plan, { numbers }: SheetWords): (Block & { kind: 'numbers' })['numbers'] {
  const { hangings } = bedMapOf(plan);
  const [first] = hangings;
  const span = (edges: { leftName: string; rightName: string } | undefined): string =>
    `${edges?.leftName ?? ''}–${edges?.rightName ?? ''}`;
  return [
    { value: String(plan.stitches), of: numbers.stitches },
    {
      value: span(first?.hung),
      of: hangings.length === 1 ? numbers.hang(span(first?.last)) : numbers.hangAgain(hangings.length),
    },
    { value: String(plan.knittedRows), of: numbers.rows },
    { value: numbers.every(plan.brief.shapeEveryRows), of: numbers.shape(plan.shapings) },
  ];
}
