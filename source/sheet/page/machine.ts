/** At the machine: what is read from in front of the bed with both hands full. */
import type { Plan } from '../../planning/plan.ts';
import type { SheetWords } from '../../wording/sheet.en.ts';
import { bedMapOf } from '../geometry/bed-map.ts';
import { bedDrawing } from '../svg/bed-drawing.ts';
import { shapingDiagram } from '../svg/shaping-diagram.ts';
import { drawBed } from '../terminal/draw-bed.ts';
import type { DrawOptions } from '../terminal/options.ts';
import { type Block, columnMm, type Item, types } from './block.ts';
import type { Digest } from './digest.ts';
import type { SheetOptions } from './options.ts';
import { type StripeLines, stripeLines } from './stripe-lines.ts';

/** Hangings that the picture of the bed has room for. */
const mostLanes = 2;

export interface MachineBlocks {
  /** Before the stripes, between their hangings and after them. */
  readonly setUp: readonly Block[];
  /** Beside the list of stripes. */
  readonly perStripe: readonly Block[];
  readonly stripes: readonly StripeLines[];
}

export function machineBlocks(
  plan: Plan,
  options: SheetOptions,
  look: DrawOptions,
  digest: Digest,
): MachineBlocks {
  const { words } = options;
  const { sheet } = words;
  const part = (text: string, items: readonly Item[]): readonly Block[] =>
    items.length === 0
      ? []
      : [
          {
            kind: 'together',
            blocks: [
              { kind: 'heading', text },
              { kind: 'steps', items, mind: sheet.mind },
            ],
          },
        ];
  const bed = bedDrawing(plan, sheet, { widthMm: columnMm - 2, size: types.machine.size, lanes: mostLanes });
  return {
    setUp: [
      { kind: 'figure', drawing: bed, plain: drawBed(plan, look, words) },
      ...part(sheet.castOn, digest['cast-on']),
      ...part(sheet.close, digest['closing-row']),
      ...part(sheet.hangAgain, digest['hang-again']),
    ],
    perStripe: [
      { kind: 'numbers', numbers: numbersOf(plan, sheet) },
      {
        kind: 'together',
        blocks: [
          ...(plan.shapings === 0
            ? []
            : [{ kind: 'figure', drawing: shapingDiagram(plan, words), plain: [] } as const]),
          { kind: 'steps', items: digest.stripes, mind: sheet.mind },
        ],
      },
    ],
    stripes: stripeLines(plan, words),
  };
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
    { value: String(plan.knittedRows), of: numbers.rows(plan.rows) },
    { value: numbers.every(plan.brief.shapeEveryRows), of: numbers.shape(plan.shapings) },
  ];
}
