import { formatNeedle } from '../../bed/needles.ts';
import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { type BedMap, bedMapOf, edgesAtRow, type HangingOnBed } from '../geometry/bed-map.ts';
import { yarnSigns } from '../yarn-signs.ts';
import { Cells, type Line } from './ansi.ts';
import { type DrawOptions, formatPicture, wrapWords } from './picture.ts';

/**
 * The bed from above: the scale of needles, and for each hanging a bar where the work is first hung and a dotted trail
 * over the needles it crawls to. In the hanging being knitted the bar stands where the work is now.
 */
export function drawBed(plan: Plan, options: DrawOptions, words: Words): readonly string[] {
  if (options.words || options.columns < 30 || options.rows < 4)
    return wrapWords(describeBed(plan, options, words), options);
  const map = bedMapOf(plan);
  const shown = hangingsToShow(map, options);
  const lines: Line[] = [
    [{ text: scaleNames(map, options) }],
    [{ text: scaleTicks(map, options) }],
    ...shown.flatMap((hanging) => [
      barOf(plan, map, hanging, options),
      [{ text: nameOf(plan, hanging, options, words) }],
    ]),
  ];
  const left = map.hangings.length - shown.length;
  if (left > 0) lines.push([{ text: words.pictures.hangingsLeftOut(left).slice(0, options.columns) }]);
  return formatPicture(lines, options);
}

/** As many as fit, the one being knitted first of all. */
function hangingsToShow({ hangings }: BedMap, { rows, rowsDone = 0 }: DrawOptions): readonly HangingOnBed[] {
  const room = Math.floor((rows - 2) / 2);
  if (hangings.length <= room) return hangings;
  const now = hangings.findIndex((hanging) => hanging.throughRow > rowsDone);
  const from = Math.max(0, Math.min(now, hangings.length - Math.floor((rows - 3) / 2)));
  return hangings.slice(from, from + Math.max(1, Math.floor((rows - 3) / 2)));
}

const columnOf = ({ needles }: BedMap, { columns }: DrawOptions, place: number): number =>
  Math.min(columns - 1, Math.floor(((place + 0.5) / needles) * columns));

/** The ends, the middle, and round numbers between as room allows. */
function namedPlaces({ needles, leftNeedles }: BedMap, { columns }: DrawOptions): readonly number[] {
  const step = [10, 20, 25, 50, 100].find((size) => (size / needles) * columns >= 7) ?? 100;
  const round = Array.from({ length: Math.floor(needles / step / 2) }, (_, i) => (i + 1) * step);
  const left = round.map((number) => leftNeedles - number).filter((place) => place > 0);
  const right = round.map((number) => leftNeedles + number - 1).filter((place) => place < needles - 1);
  return [0, needles - 1, leftNeedles - 1, ...left, ...right];
}

/** Names that would touch one already written are left out. */
function scaleNames(map: BedMap, options: DrawOptions): string {
  const cells = Array.from({ length: options.columns }, () => ' ');
  for (const place of namedPlaces(map, options)) {
    const name = formatNeedle(map.needles, place);
    const column = columnOf(map, options, place);
    const from = Math.min(Math.max(0, column - Math.floor(name.length / 2)), options.columns - name.length);
    const around = cells.slice(Math.max(0, from - 1), from + name.length + 1);
    if (around.some((cell) => cell !== ' ')) continue;
    for (const [i, letter] of [...name].entries()) cells[from + i] = letter;
  }
  return cells.join('');
}

function scaleTicks(map: BedMap, options: DrawOptions): string {
  const { needles, marginNeedles } = map;
  const [bar, tick, margin] = options.glyphs === 'ascii' ? ['-', '+', 'x'] : ['─', '┴', '×'];
  const cells = Array.from({ length: options.columns }, () => bar);
  for (const place of namedPlaces(map, options)) cells[columnOf(map, options, place)] = tick;
  for (let place = 0; place < marginNeedles; place++) {
    cells[columnOf(map, options, place)] = margin;
    cells[columnOf(map, options, needles - 1 - place)] = margin;
  }
  return cells.join('');
}

/** The way it crawls, and from where to where. */
function nameOf(
  { brief }: Plan,
  { fromRow, throughRow, hung, last }: HangingOnBed,
  { columns, glyphs }: DrawOptions,
  words: Words,
): string {
  const arrow = arrows[glyphs][brief.crawl];
  const text = words.pictures.hangingLabel(fromRow, throughRow, hung, last);
  return (text.length + 2 < columns ? `${arrow} ${text}` : text).slice(0, columns);
}

const arrows = { unicode: { left: '◄', right: '►' }, ascii: { left: '<', right: '>' } } as const;
const carriageSign = '[=]';

/** The loops between their named edges on the needles that they crawl over, and where they are now the carriage. */
function barOf(plan: Plan, map: BedMap, hanging: HangingOnBed, options: DrawOptions): Line {
  const rowsDone = options.rowsDone ?? 0;
  const hangs = options.carriage !== null;
  const isNow = hangs && rowsDone >= hanging.fromRow && rowsDone <= hanging.throughRow;
  const row = isNow ? rowsDone : hanging.fromRow;
  const at = isNow ? edgesAtRow(plan, row) : hanging.hung;
  const [now, planned, trail] = options.glyphs === 'ascii' ? ['#', '=', '.'] : ['█', '▒', '░'];
  const yarn = plan.stripes.find((stripe) => stripe.lastRow >= row)?.yarn ?? '';
  const sign = isNow ? yarnSigns(plan, options.colour).get(yarn) : null;
  const ink = sign && !sign.edged ? sign.colour : null;
  const column = (place: number): number => columnOf(map, options, place);
  const from = column(Math.min(hanging.hung.left, hanging.last.left));
  const through = column(Math.max(hanging.hung.right, hanging.last.right));
  const [left, right] = [column(at.left), column(at.right)];
  const cells = new Cells(options.columns, { text: ' ' });
  // Without colour it is for files as well, which know no styles.
  const isStyled = options.colour !== 'none';
  cells.put(from, trail.repeat(through - from + 1), { dim: isStyled });
  cells.put(left, (isNow ? now : planned).repeat(right - left + 1), { ink });
  const { leftName, rightName } = at;
  const style = { bold: isNow && isStyled };
  cells.put(left >= leftName.length ? left - leftName.length : left + 1, leftName, style);
  const hasRight = right + rightName.length < options.columns;
  cells.put(hasRight ? right + 1 : right - rightName.length, rightName, style);
  if (isNow && options.carriage === 'left' && Math.min(from, left - leftName.length) > carriageSign.length)
    cells.put(0, carriageSign, style);
  const end = options.columns - carriageSign.length;
  if (isNow && options.carriage === 'right' && Math.max(through, right + rightName.length) < end - 1)
    cells.put(end, carriageSign, style);
  return cells.line();
}

/** In sentences, for screen readers and for windows too small for a picture. */
function describeBed(plan: Plan, { rowsDone = 0 }: DrawOptions, words: Words): readonly string[] {
  const { hangings, needles } = bedMapOf(plan);
  const now = edgesAtRow(plan, rowsDone);
  const place =
    rowsDone > 0 && rowsDone < plan.rows
      ? [words.pictures.workNow(rowsDone, now.leftName, now.rightName)]
      : [];
  return [
    words.pictures.bedAndCrawl(needles, plan.brief.crawl),
    ...place,
    ...hangings.map(({ fromRow, throughRow, hung, last }) =>
      words.pictures.hangingCaption(fromRow, throughRow, hung, last),
    ),
  ];
}
