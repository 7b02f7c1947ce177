/** At the machine: what is read from in front of the bed with both hands full. */
import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { bedMapOf } from '../geometry/bed-map.ts';
import { bedDrawing } from '../svg/bed-drawing.ts';
import { type Drawing, enlarged } from '../svg/element.ts';
import { hemDiagram, shapingDiagram } from '../svg/shaping-and-hem.ts';
import { drawBed } from '../terminal/draw-bed.ts';
import { drawHem } from '../terminal/draw-by-hand.ts';
import type { DrawOptions } from '../terminal/picture.ts';
import { inSentence } from '../text.ts';
import { yarnSigns } from '../yarn-signs.ts';
import {
  type Block,
  besideColumns,
  besideGapMm,
  columnMm,
  figure,
  type Item,
  type SheetOptions,
  type SheetPage,
  types,
} from './block.ts';
import type { Digest } from './digest.ts';
import { heightOf, type Measure, paged } from './lay-out.ts';
import { heightOfStripe, stripeListFor } from './lay-stripes.ts';
import { type StripeLines, stripeTables } from './stripe-lines.ts';

/** Hangings that the picture of the bed has room for. */
const mostLanes = 2;

/** A bed drawn narrower is none that needles could be found on. */
const leastBedMm = 70;

/** What is done once and at each stripe; the list of stripes, over as many pages as it needs; then the hem. */
export function machinePages(
  plan: Plan,
  { words }: SheetOptions,
  look: DrawOptions,
  digest: Digest,
  roomMm: number,
  measure: Measure,
): readonly SheetPage[] {
  const { sheet } = words;
  const part = (head: string, items: readonly Item[]): readonly Block[] =>
    items.length === 0 ? [] : [{ kind: 'run', head, items, mind: sheet.mind }];
  const first: readonly Block[] = [
    { kind: 'numbers', numbers: numbersOf(plan, sheet) },
    ...bedPictures(plan, words, look),
    ...part(sheet.castOn, digest['cast-on']),
    ...part(sheet.perStripe, digest.stripes),
    ...part(sheet.hangAgain, digest['hang-again']),
    ...part(sheet.close, digest['closing-row']),
  ];
  const begun = paged('machine', first, roomMm, measure).at(-1)?.blocks ?? [];
  const leftMm = roomMm - heightOf(begun, 'machine', measure) - types.machine.gap;
  const lists = stripeTablesIn(plan, words, leftMm, roomMm, measure);
  const hem = hemBlocks(plan, words, look, part(sheet.hem, digest.hem));
  return paged('machine', [...first, ...lists, ...hem], roomMm, measure);
}

/** Stripes that the first page of their list must have room for; else the list begins on the next. */
const leastLinesMm = 60;

/** The list of stripes in tables: the first as high as what is left of a page, if that will do, the others as a page. */
function stripeTablesIn(
  plan: Plan,
  words: Words,
  leftMm: number,
  roomMm: number,
  measure: Measure,
): readonly Block[] {
  const { stripes, across } = stripeListFor(plan, words, types.machine);
  const signs = [...yarnSigns(plan, 'print').values()];
  const named = signs.map(({ letter, yarn }) => `${letter} ${inSentence(yarn)}`);
  const headOf = (table: number): Block => ({
    kind: 'run',
    head: table === 0 ? words.sheet.stripeByStripe : words.sheet.goesOn,
    items: [{ text: words.sheet.stripesNote(named), mind: null }],
    mind: '',
  });
  const headMm = (table: number): number => measure(headOf(table), 'machine') + 1.2;
  const stripeMm = (stripe: StripeLines): number => heightOfStripe(stripe, across, types.machine);
  const isBegunHere = leftMm - headMm(0) >= Math.max(leastLinesMm, stripes[0] ? stripeMm(stripes[0]) : 0);
  return stripeTables(
    stripes,
    across,
    stripeMm,
    (table) => (table === 0 && isBegunHere ? leftMm : roomMm) - headMm(table),
  ).map((columns, table) => ({
    kind: 'together',
    blocks: [headOf(table), { kind: 'stripes', columns, across }],
  }));
}

/** Its words are to be read from in front of the bed, as all others there. */
const hemScale = 1.84;

/** The hem's steps beside a picture of it, which is made at the machine too before the strip is grafted. */
function hemBlocks(plan: Plan, words: Words, look: DrawOptions, steps: readonly Block[]): readonly Block[] {
  if (!plan.hem) return [];
  const drawing = enlarged(hemDiagram(plan.hem, words), hemScale);
  const picture = figure(drawing, () => drawHem(plan, look, words));
  return [besideColumns(drawing.widthMm, [picture], steps)];
}

/** The bed and a shaping move on it, side by side where both have room. */
function bedPictures(plan: Plan, words: Words, look: DrawOptions): readonly Block[] {
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
function numbersOf(plan: Plan, { numbers }: Words['sheet']): (Block & { kind: 'numbers' })['numbers'] {
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
