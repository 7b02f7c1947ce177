/** In the lap: everything by hand, from the work off the bed to the bow. */
import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { cornerDiagram } from '../svg/corner-diagram.ts';
import type { Drawing } from '../svg/element.ts';
import { foldDrawing } from '../svg/fold-drawing.ts';
import { graftDiagram } from '../svg/graft-diagram.ts';
import { seamDiagram } from '../svg/seam-diagram.ts';
import { threadingDiagram } from '../svg/threading-diagram.ts';
import { drawCorner, drawGraft, drawSeam } from '../terminal/draw-by-hand.ts';
import { drawFold } from '../terminal/draw-fold.ts';
import type { DrawOptions } from '../terminal/options.ts';
import { type Block, besideColumns, columnMm, type Item } from './block.ts';
import type { Digest } from './digest.ts';
import type { SheetOptions } from './options.ts';

export function lapBlocks(
  plan: Plan,
  options: SheetOptions,
  look: DrawOptions,
  digest: Digest,
): readonly Block[] {
  const { words } = options;
  const { sheet } = words;
  const hands: DrawOptions = { ...look, columns: 84 };
  const steps = (items: readonly Item[]): Block => ({ kind: 'steps', items, mind: sheet.mind });
  return [
    {
      kind: 'together',
      blocks: [
        { kind: 'heading', text: sheet.foldIt },
        {
          kind: 'figure',
          drawing: foldDrawing(plan, words, { widthMm: columnMm, heightMm: 50 }, 'fold'),
          plain: drawFold(plan, { ...look, rows: 18 }, words),
        },
      ],
    },
    {
      kind: 'together',
      blocks: [
        { kind: 'heading', text: sheet.graft },
        besides(graftDiagram(plan, sheet), bare(drawGraft(plan, hands, words)), steps(digest.graft)),
      ],
    },
    {
      kind: 'together',
      blocks: [
        { kind: 'heading', text: sheet.sew },
        besides(seamDiagram(sheet), bare(drawSeam(plan, hands, words)), steps(digest.seam)),
      ],
    },
    ...cornerBlocks(plan, hands, words, steps(digest.corners)),
    { kind: 'together', blocks: [{ kind: 'heading', text: sheet.makeCord }, steps(digest.cord)] },
    {
      kind: 'together',
      blocks: [
        { kind: 'heading', text: sheet.threadIt },
        { kind: 'figure', drawing: threadingDiagram(plan, sheet, columnMm), plain: [] },
        steps(digest.threading),
      ],
    },
    {
      kind: 'together',
      blocks: [
        { kind: 'heading', text: sheet.lineIt },
        steps(words.page.lining(plan.lining, plan.boxed !== null).map((text) => ({ text, mind: null }))),
      ],
    },
  ];
}

function cornerBlocks({ boxed }: Plan, hands: DrawOptions, words: Words, steps: Block): readonly Block[] {
  if (!boxed) return [];
  const corner = { fromTipCm: boxed.fromTipCm, acrossCm: boxed.cornerSeamCm };
  const plain = bare(drawCorner(corner, hands, words));
  return [
    {
      kind: 'together',
      blocks: [
        { kind: 'heading', text: words.sheet.boxCorners },
        besides(cornerDiagram(boxed, words), plain, steps),
      ],
    },
  ];
}

/** A picture, and what is done beside it. */
const besides = (drawing: Drawing, plain: readonly string[], steps: Block): Block =>
  besideColumns(drawing.widthMm, [{ kind: 'figure', drawing, plain }], [steps]);

/** Without the marks for bold and dim, which a file of text has no use for. */
const bare = (lines: readonly string[]): readonly string[] =>
  lines.map((line) => line.replaceAll(/\u001b\[[\d;]*m/g, '').trimEnd());

/** What to do when something goes wrong, in the bench's words, wherever in the work it is. */
export function troubleBlock({ words }: SheetOptions): Block {
  const { list, ...kinds } = words.trouble;
  const terms = Object.values(kinds).map(({ title, now }) => [title, now({ edges: null, row: 0 })] as const);
  return {
    kind: 'together',
    blocks: [
      { kind: 'heading', text: words.sheet.trouble },
      { kind: 'terms', terms },
    ],
  };
}
