/** In the lap: everything by hand, from the work off the bed to the bow. The bag is closed on one page, its cord has the next. */
import { threadingOrder } from '../../planning/eyelets.ts';
import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { cordDiagram } from '../svg/cord-diagram.ts';
import type { Drawing } from '../svg/element.ts';
import { foldDrawing } from '../svg/fold-drawing.ts';
import { graftDiagram } from '../svg/graft-diagram.ts';
import { cornerDiagram, seamDiagram } from '../svg/seam-diagram.ts';
import { threadingDiagram } from '../svg/threading-diagram.ts';
import { drawCord, drawCorner, drawGraft, drawSeam } from '../terminal/draw-by-hand.ts';
import { drawFold } from '../terminal/draw-fold.ts';
import type { DrawOptions } from '../terminal/picture.ts';
import {
  type Block,
  columnMm,
  figure,
  type Item,
  type SheetOptions,
  termsInColumns,
  together,
  twoColumns,
} from './block.ts';
import type { Digest } from './digest.ts';

/** Heights of the three views of the fold, as large as the page can have them. */
export const foldRooms: readonly number[] = [60, 50, 44, 39.5, 36];

/** The work off the bed, turned over and folded. */
export function foldBlock(plan: Plan, { words }: SheetOptions, look: DrawOptions, foldMm: number): Block {
  const fold = foldDrawing(plan, words, { widthMm: columnMm, heightMm: foldMm }, 'fold');
  return together(words.sheet.foldIt, [figure(fold, () => drawFold(plan, { ...look, rows: 18 }, words))]);
}

/** From the folded strip to the bag measured, and lined. */
export function closingBlocks(
  plan: Plan,
  { words }: SheetOptions,
  look: DrawOptions,
  digest: Digest,
): readonly Block[] {
  const { sheet } = words;
  const hands: DrawOptions = { ...look, columns: 84 };
  return [
    taught(sheet.graft, graftDiagram(plan, sheet), () => drawGraft(plan, hands, words), digest.graft, words),
    taught(sheet.sew, seamDiagram(sheet), () => drawSeam(plan, hands, words), digest.seam, words),
    ...cornerBlocks(plan, hands, words, digest),
    liningBlock(plan, words),
  ];
}

/** From the cord's first needle to the bow; then what a maker may want or need besides. */
export function cordBlocks(
  plan: Plan,
  { words }: SheetOptions,
  look: DrawOptions,
  digest: Digest,
): readonly Block[] {
  const { sheet } = words;
  const hands: DrawOptions = { ...look, columns: 84 };
  return [
    taught(sheet.makeCord, cordDiagram(plan, words), () => drawCord(plan, hands, words), digest.cord, words),
    together(sheet.threadIt, [
      figure(threadingDiagram(plan, sheet, columnMm), () => eyeletLines(plan, words)),
      { kind: 'steps', items: digest.threading, mind: sheet.mind },
    ]),
    troubleBlock(words),
  ];
}

/** A picture at the left, and beside it the steps that it shows. */
const taught = (
  head: string,
  drawing: Drawing,
  plain: () => readonly string[],
  items: readonly Item[],
  { sheet }: Words,
): Block =>
  together(head, [
    twoColumns([figure(drawing, () => bare(plain()))], [{ kind: 'steps', items, mind: sheet.mind }]),
  ]);

/** The way of each cord, for files of text. */
const eyeletLines = ({ eyelets }: Plan, { sheet }: Words): readonly string[] =>
  (eyelets.secondFrom === null ? (['only'] as const) : (['first', 'second'] as const)).map((draw) =>
    sheet.wayOfCord(draw, threadingOrder(eyelets, draw)),
  );

function cornerBlocks(plan: Plan, hands: DrawOptions, words: Words, { corners }: Digest): readonly Block[] {
  const { boxed } = plan;
  if (!boxed) return [];
  const corner = { fromTipCm: boxed.fromTipCm, acrossCm: boxed.cornerSeamCm };
  return [
    taught(
      words.sheet.boxCorners,
      cornerDiagram(boxed, words),
      () => drawCorner(corner, hands, words),
      corners,
      words,
    ),
  ];
}

/** For whoever wants the bag lined. */
function liningBlock(plan: Plan, { page, sheet }: Words): Block {
  const items = page.lining(plan.lining, plan.boxed !== null).map((text) => ({ text, mind: null }));
  return { kind: 'run', head: sheet.lineIt, items, mind: sheet.mind };
}

/** Without the marks for bold and dim, which a file of text has no use for. */
const bare = (lines: readonly string[]): readonly string[] =>
  lines.map((line) => line.replaceAll(/\u001b\[[\d;]*m/g, '').trimEnd());

/** What to do when something goes wrong, in the bench's words, wherever in the work it is. */
function troubleBlock({ sheet, trouble }: Words): Block {
  const { list, ...kinds } = trouble;
  const terms = Object.values(kinds).map(({ title, now }) => [title, now({ edges: null, row: 0 })] as const);
  return together(sheet.trouble, [termsInColumns(terms)]);
}
