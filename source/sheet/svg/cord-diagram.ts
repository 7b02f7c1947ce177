/**
 * How the cord grows on its needles, the first rounds of it: each round is a row knitted one way; the carriage goes back without
 * knitting, and so the strand from the end of a round to the start of the next lies across the purl side and pulls the tube
 * shut. A bed that cannot slip knits to and fro, and every strand turns at the edge (both common practice, as the steps have it).
 */
import { opposite, type Side } from '../../bed/bed.ts';
import type { Plan } from '../../planning/plan.ts';
import { cordNeedles } from '../../steps/cord.ts';
import { outlineSteps } from '../../steps/outline.ts';
import type { Words } from '../../wording/words.ts';
import type { Point } from '../geometry/shape.ts';
import { arrow, type Drawn, disc, drawingOf, reaching, within, written } from './drawn.ts';
import { type Drawing, lineFrom, pair, palette, strokePath, usualTextMm, wrapText } from './element.ts';

/** Above the row after the cast-on. */
const shownRounds = 3;
const [pitch, roundMm] = [11, 8.6];
const [bedY, topY] = [2, 12];
/** Room for the number at the start of a row, and how wide the words below may be. */
const [besideMm, notesMm] = [9.4, 82];

/** A row as it is knitted; 0 is the plain one after the cast-on. */
interface Row {
  readonly number: number;
  readonly to: Side;
  readonly y: number;
}

export function cordDiagram(plan: Plan, words: Words): Drawing {
  const { shows } = words.sheet;
  const { stitches, flatSeamCm } = plan.cord;
  const isFlat = flatSeamCm !== null;
  const names = cordNeedles(outlineSteps(plan));
  const knitTo = opposite(plan.brief.homeSide);
  const rows = Array.from({ length: shownRounds + 1 }, (_, number): Row => {
    const to = isFlat && number % 2 === 1 ? plan.brief.homeSide : knitTo;
    return { number, to, y: topY + (shownRounds - number) * roundMm };
  });
  const wide = stitches * pitch;
  const bottom = topY + shownRounds * roundMm;
  return drawingOf(
    isFlat ? shows.flatCord(stitches) : shows.cord(stitches),
    [
      ...onNeedles(names),
      ...rows.map(({ y }) => within(bumps(stitches, y))),
      ...rows.slice(1).map((row, i) => within(strand(rows[i] as Row, row, wide))),
      ...rows.slice(1).flatMap((row) => numbered(row, wide)),
      reaching('', [
        [-besideMm, 0],
        [wide + besideMm, bottom + 2],
      ]),
      ...notes(plan, words, knitTo, bottom + 6),
    ],
    { cloth: 'purl', text: words.sheet.purlSide },
  );
}

/** Its number where it starts, and the way it is knitted. */
function numbered(row: Row, wide: number): readonly Drawn[] {
  const out = row.to === 'left' ? 1 : -1;
  const [x, y] = startOf(row, wide);
  return [
    disc([x + out * 7, y - 2], String(row.number), 2.3),
    arrow([x + out * 4.4, y - 2], [x + out * 1.2, y - 2], 0.4),
  ];
}

/** The bed, the name of each needle above it, and its loop on its hook. */
function onNeedles(names: readonly string[]): readonly Drawn[] {
  const wide = names.length * pitch;
  return [
    within(lineFrom([-3, bedY], [wide + 3, bedY], { 'stroke-width': 1 })),
    ...names.flatMap((name, i): readonly Drawn[] => {
      const x = (i + 0.5) * pitch;
      return [
        written([x, 0], name, { anchor: 'middle', weight: 700 }),
        within(lineFrom([x, bedY], [x, bedY + 3.4], { 'stroke-width': 0.7 })),
        within(
          strokePath(
            `M${pair([x - 1.3, topY - 4.4])}C${pair([x - 1.3, bedY + 1.8])} ${pair([x + 1.3, bedY + 1.8])} ${pair([x + 1.3, topY - 4.4])}`,
            {
              stroke: palette.rule,
              'stroke-width': 1.2,
            },
          ),
        ),
      ];
    }),
  ];
}

/** A row as its purl side shows it: a bump for each stitch. */
function bumps(stitches: number, y: number): string {
  const parts = Array.from({ length: stitches }, (_, i) => {
    const [from, to] = [i * pitch, (i + 1) * pitch];
    return `C${pair([from + 1.6, y - 5.4])} ${pair([to - 1.6, y - 5.4])} ${pair([to, y])}`;
  });
  return strokePath(`M${pair([0, y])}${parts.join('')}`, {
    stroke: palette.rule,
    'stroke-width': 2,
    'stroke-linejoin': 'round',
    'stroke-linecap': 'round',
    class: 'round',
    'data-stitches': stitches,
  });
}

const endOf = ({ to, y }: Row, wide: number): Point => [to === 'left' ? 0 : wide, y];
const startOf = ({ to, y }: Row, wide: number): Point => [to === 'left' ? wide : 0, y];

/** From the end of a row to the start of the next: back across, between the two, or round the edge. */
function strand(from: Row, to: Row, wide: number): string {
  const [[x1, y1], [x2, y2]] = [endOf(from, wide), startOf(to, wide)];
  const out = x1 === 0 ? -4 : 4;
  const isTurn = x1 === x2;
  const across = y1 - roundMm * 0.72;
  const d = isTurn
    ? `M${pair([x1, y1])}C${pair([x1 + out, y1])} ${pair([x1 + out, y2])} ${pair([x2, y2])}`
    : `M${pair([x1, y1])}C${pair([x1 + out, y1])} ${pair([x1 + out, across])} ${pair([x1 - out / 2, across])}L${pair([x2 + out / 2, across])}C${pair([x2 - out, across])} ${pair([x2 - out, y2])} ${pair([x2, y2])}`;
  return strokePath(d, {
    stroke: palette.thread,
    'stroke-width': 1,
    'stroke-linecap': 'round',
    class: 'strand',
    'data-way': isTurn ? 'edge' : 'across',
  });
}

/** The bench's own words under it, a line for each way of the carriage. */
function notes({ brief, cord }: Plan, { pictures: say }: Words, knitTo: Side, top: number): readonly Drawn[] {
  const lines =
    cord.flatSeamCm === null
      ? [say.cordSlip(brief.homeSide), say.cordKnit(knitTo), say.cordRound]
      : [say.cordFlat, say.cordSewn];
  return lines
    .flatMap((line) => wrapText(line, usualTextMm, notesMm))
    .map((line, i) => written([-besideMm, top + i * 3.5], line, { colour: palette.quiet }));
}
