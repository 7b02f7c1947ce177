/**
 * Drawings that teach the hands: the needle's path through the open loops of the graft, under the bars of the seam, and
 * the two passes of the cord. What is sewn is in the thread's colour; the next movement is bold.
 *
 * The graft follows the path of a knitted row: B down through i, up through i + 1, then A down through i, up through i + 1;
 * the thread lies behind the legs and over the end of each loop (common practice, no source).
 */
import { opposite, type Side } from '../../bed/bed.ts';
import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { yarnSigns } from '../yarn-signs.ts';
import type { Line, Span } from './ansi.ts';
import { type Corner, type DrawOptions, formatPicture, wrapWords } from './picture.ts';
import { firstMovements, graftRows, seamRows } from './sewing-rows.ts';

const cell = 6;
const mostLoops = 9;

/** The yarn that the last stripe is knitted with closes the bag. */
function threadInk(plan: Plan, yarn: string, { colour }: DrawOptions): string | null {
  const sign = yarnSigns(plan, colour).get(yarn);
  return sign && colour !== 'none' && !sign.edged ? sign.colour : null;
}

export function drawGraft(plan: Plan, options: DrawOptions, words: Words): readonly string[] {
  const { pictures: say } = words;
  const { names, legs, path } = graftRows(plan, options.grafting ?? firstMovements, {
    columns: options.columns - 4,
    most: mostLoops,
    ascii: options.glyphs === 'ascii',
    thread: threadInk(plan, plan.stripes.at(-1)?.yarn ?? '', options),
  });
  const notes = [say.graft(mouthOfGraft(plan)), say.graftTurns, say.graftDown, say.graftUp, say.graftPath];
  const picture = setIn([names.A, legs, path.A, [], path.B, legs, names.B]);
  return withNotes(picture, notes, options, setIn([names.A, path.A, path.B, names.B]));
}

/** Turned over for the graft, a strip that crawled left has its mouth at the left. */
const mouthOfGraft = ({ brief }: Plan): Side => brief.crawl;

/** A corner laid flat, tip up: the bottom seam down its middle on the side's fold, and the seam that is sewn across. */
export function cornerPicture(
  { fromTipCm, acrossCm }: Corner,
  isAscii: boolean,
  say: Words['pictures'],
): readonly { readonly signs: Span; readonly note: string }[] {
  const [left, seam, right, across, over] = isAscii ? '/|\\=+' : '╱│╲━┿';
  const line = (half: number, fill: string, middle: string): string =>
    ` ${left}${fill.repeat(half)}${middle}${fill.repeat(half)}${right}`.padStart(half + 10).padEnd(18);
  const rows: readonly (readonly [text: string, note: string])[] = [
    [line(0, ' ', seam ?? ''), say.cornerTip(fromTipCm)],
    [line(2, ' ', seam ?? ''), say.cornerFold],
    [line(4, across ?? '', over ?? ''), say.cornerAcross(acrossCm)],
    [line(6, ' ', seam ?? ''), say.cornerSides],
  ];
  return rows.map(([text, note], i) => ({ signs: { text, ...(i === 2 ? { bold: true } : {}) }, note }));
}

export function drawCorner(
  corner: Corner,
  options: DrawOptions,
  { pictures: say }: Words,
): readonly string[] {
  const picture = cornerPicture(corner, options.glyphs === 'ascii', say);
  return withNotes(
    picture.map(({ signs }): Line => [{ text: '  ' }, signs]),
    picture.map(({ note }) => note),
    options,
  );
}

export function drawSeam(plan: Plan, options: DrawOptions, words: Words): readonly string[] {
  if (options.corner) return drawCorner(options.corner, options, words);
  const { pictures: say } = words;
  const of = Math.ceil(plan.rows / 2);
  const { names, bars, path, across } = seamRows(options.sewing ?? { from: 1, through: 1 }, of, {
    columns: options.columns - 4,
    ascii: options.glyphs === 'ascii',
    thread: threadInk(plan, plan.stripes.at(-1)?.yarn ?? '', options),
  });
  const picture = setIn([names, bars.front, path.front, across, path.back, bars.back]);
  const core = setIn([names, path.front, path.back]);
  return withNotes(picture, [say.seamFold, say.seamBars, say.seamDraw], options, core);
}

export function drawCord(plan: Plan, options: DrawOptions, words: Words): readonly string[] {
  const { pictures: say } = words;
  const { stitches, yarn } = plan.cord;
  const slipTo = plan.brief.homeSide;
  const knitTo = opposite(slipTo);
  const [left, right, full, over, behind] =
    options.glyphs === 'ascii' ? ['<', '>', 'O', '=', '.'] : ['◄', '►', '●', '━', '╌'];
  const thread = { ink: threadInk(plan, yarn, options) };
  const width = stitches * cell - 2;
  const arrow = (to: Side, line: string): string =>
    to === 'left' ? `${left}${line.repeat(width)}` : `${line.repeat(width)}${right}`;
  const loops: Line = [
    { text: '  ' },
    { ...thread, text: Array.from({ length: stitches }, () => full.padEnd(cell)).join('') },
  ];
  if (plan.cord.flatSeamCm !== null) {
    const row = (to: Side): Line => [{ text: '  ' }, { ...thread, bold: true, text: arrow(to, over) }];
    const rows = [row(knitTo), loops, row(slipTo), loops];
    return withNotes(rows, [say.cordFlat, say.cordSewn], options);
  }
  const picture: readonly Line[] = [
    [{ text: `  ${arrow(slipTo, behind)}` }],
    loops,
    [{ text: '  ' }, { ...thread, bold: true, text: arrow(knitTo, over) }],
    loops,
  ];
  return withNotes(picture, [say.cordSlip(slipTo), say.cordKnit(knitTo), say.cordRound], options);
}

const setIn = (lines: readonly Line[]): readonly Line[] => lines.map((line) => [{ text: '  ' }, ...line]);

/**
 * Words under the picture, whole lines of them. Where rows are few the picture has but its `core`, and words are left out
 * from the last one on.
 */
export function withNotes(
  picture: readonly Line[],
  notes: readonly string[],
  options: DrawOptions,
  core: readonly Line[] = picture,
): readonly string[] {
  const room = { ...options, columns: options.columns - 2, rows: Number.POSITIVE_INFINITY };
  const lines = wrapWords(notes, room).map((text): Line => [{ text: `  ${text}` }]);
  if (options.words) return formatPicture(lines, options);
  const fits = picture.length + 1 + lines.length <= options.rows;
  return formatPicture([...(fits ? [...picture, []] : core), ...lines], options);
}

/** The hem from the side in letters: the inside of the bag to the left, the fold up. */

export function drawHem({ hem }: Plan, options: DrawOptions, { pictures: say }: Words): readonly string[] {
  if (!hem) return withNotes([], [say.noHem], options);
  const ascii = options.glyphs === 'ascii';
  const [top, two, closed, one, hole] = ascii
    ? ['.---.', '|   |', 'O---+', '    |', '    o']
    : ['╭───╮', '│   │', '●───┤', '    │', '    ○'];
  const rows: readonly (readonly [string, string])[] = [
    [top, say.hemFold],
    [two, say.hemLayers(hem.rows, hem.heightCm)],
    [two, ''],
    [closed, say.hemChain(hem.stitches)],
    [one, ''],
    [hole, say.hemCord(hem.foldToCordCm)],
    [one, ''],
  ];
  const picture = rows.map(([cloth, note]) => [{ text: `  ${cloth}   ` }, { text: note }]);
  return withNotes(picture, [say.hemSides], options);
}
