/** In the lap: everything by hand, from the work off the bed to the bow. */
import { threadingOrder } from '../../planning/eyelets.ts';
import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import type { Drawing } from '../svg/element.ts';
import { foldDrawing } from '../svg/fold-drawing.ts';
import { graftDiagram } from '../svg/graft-diagram.ts';
import { cornerDiagram, seamDiagram } from '../svg/seam-diagram.ts';
import { threadingDiagram } from '../svg/threading-diagram.ts';
import { drawCorner, drawGraft, drawSeam } from '../terminal/draw-by-hand.ts';
import { drawFold } from '../terminal/draw-fold.ts';
import type { DrawOptions } from '../terminal/picture.ts';
import { type Block, besideColumns, columnMm, type Item, type SheetOptions, twoColumns } from './block.ts';
import type { Digest } from './digest.ts';
/** Heights of the three views of the fold, as large as the page can have them. */
export const foldRooms: readonly number[] = [60, 50, 44, 39.5, 36];

export function lapBlocks(
  plan: Plan,
  options: SheetOptions,
  look: DrawOptions,
  digest: Digest,
  foldMm: number,
): readonly Block[] {
  const { words } = options;
  const { sheet } = words;
  const hands: DrawOptions = { ...look, columns: 84 };
  const steps = (items: readonly Item[]): Block => ({ kind: 'steps', items, mind: sheet.mind });
  const graft = graftDiagram(plan, sheet);
  const seam = [
    heading(sheet.sew),
    figure(seamDiagram(sheet), () => bare(drawSeam(plan, hands, words))),
    steps(digest.seam),
  ];
  const corners = cornerBlocks(plan, hands, words, steps(digest.corners));
  const cord: readonly Block[] = [
    heading(sheet.makeCord),
    { kind: 'run', head: null, items: digest.cord, mind: sheet.mind },
  ];
  const threading = [heading(sheet.threadIt), steps(digest.threading)];
  return [
    {
      kind: 'together',
      blocks: [
        { kind: 'heading', text: sheet.foldIt },
        {
          kind: 'figure',
          drawing: foldDrawing(plan, words, { widthMm: columnMm, heightMm: foldMm }, 'fold'),
          plain: () => drawFold(plan, { ...look, rows: 18 }, words),
        },
      ],
    },
    besideColumns(
      graft.widthMm,
      [heading(sheet.graft), figure(graft, () => bare(drawGraft(plan, hands, words)))],
      [steps(digest.graft)],
    ),
    ...(corners.length > 0
      ? [twoColumns(seam, corners), twoColumns(cord, threading)]
      : [twoColumns(seam, [...cord, ...threading])]),
    figure(threadingDiagram(plan, sheet, columnMm), () => eyeletLines(plan, words)),
  ];
}

/** The way of each cord, for files of text. */
const eyeletLines = ({ eyelets }: Plan, { sheet }: Words): readonly string[] =>
  (eyelets.secondFrom === null ? (['only'] as const) : (['first', 'second'] as const)).map((draw) =>
    sheet.wayOfCord(draw, threadingOrder(eyelets, draw)),
  );

function cornerBlocks({ boxed }: Plan, hands: DrawOptions, words: Words, steps: Block): readonly Block[] {
  if (!boxed) return [];
  const corner = { fromTipCm: boxed.fromTipCm, acrossCm: boxed.cornerSeamCm };
  return [
    heading(words.sheet.boxCorners),
    figure(cornerDiagram(boxed, words), () => bare(drawCorner(corner, hands, words))),
    steps,
  ];
}

const heading = (text: string): Block => ({ kind: 'heading', text });
const figure = (drawing: Drawing, plain: () => readonly string[]): Block => ({
  kind: 'figure',
  drawing,
  plain,
});

/** For whoever wants the bag lined. */
export function liningBlock(plan: Plan, { words }: SheetOptions): Block {
  const items = words.page.lining(plan.lining, plan.boxed !== null).map((text) => ({ text, mind: null }));
  return { kind: 'run', head: words.sheet.lineIt, items, mind: '' };
}

/** Without the marks for bold and dim, which a file of text has no use for. */
const bare = (lines: readonly string[]): readonly string[] =>
  lines.map((line) => line.replaceAll(/\u001b\[[\d;]*m/g, '').trimEnd());

/** What to do when something goes wrong, in the bench's words, wherever in the work it is. */
export function troubleBlock({ words }: SheetOptions): Block {
  const { list, ...kinds } = words.trouble;
  const terms = Object.values(kinds).map(({ title, now }) => [title, now({ edges: null, row: 0 })] as const);
  const letters = terms.map(([title, now]) => title.length + now.length);
  const all = letters.reduce((sum, count) => sum + count, 0);
  // As many in the left column as come nearest to half.
  const lead = letters.map((_, i) => letters.slice(0, i + 1).reduce((sum, count) => sum + count, 0));
  const half = 1 + lead.findIndex((sum, i) => all - 2 * sum <= (lead[i + 1] ?? all) + sum - all);
  const column = (from: number, to?: number): readonly Block[] => [
    { kind: 'terms', terms: terms.slice(from, to) },
  ];
  return {
    kind: 'together',
    blocks: [{ kind: 'heading', text: words.sheet.trouble }, twoColumns(column(0, half), column(half))],
  };
}
