/**
 * The band: the one large thing in colour, the yarn that must be in the hands now. On it stands the act in capitals, at
 * the side of the bed where the hands go; the number stands at the other side.
 */
import type { Side } from '../../bed/side.ts';
import type { BenchView } from '../../chat/view.ts';
import { inkOn } from '../../shared/colour.ts';
import type { Line, Span } from '../../sheet/terminal/ansi.ts';
import { edgeInk, filled, onYarn } from '../../sheet/terminal/on-yarn.ts';
import { cellsOf, plainText } from '../../sheet/text.ts';
import type { Words } from '../../wording/words.ts';
import { type BandText, bandText } from './band-text.ts';
import { bigHeight, bigSquares, squareOf } from './big-letters.ts';
import { type Brush, cut, endingAt, type Placed, rowOf, widthOf } from './row.ts';

/** One yarn's part of the band. */
interface Block {
  readonly yarn: string | null;
  readonly width: number;
  readonly text: BandText;
}

interface Size {
  readonly width: number;
  readonly height: number;
}

/** The incoming yarn has more of the band than the one that leaves. */
const leavingPart = 1 / 3;

export function bandRows(
  view: BenchView,
  { width, height }: Size,
  brush: Brush,
  words: Words,
): readonly Line[] {
  const blocks = blocksOf(view, width, words).map((block) => blockRows(block, height, brush));
  return Array.from({ length: height }, (_, row) => blocks.flatMap((rows) => rows[row] ?? []));
}

function blocksOf(view: BenchView, width: number, words: Words): readonly Block[] {
  const { glance, yarn } = view;
  const text = bandText(view, words, words);
  if (glance.kind !== 'yarn' || !glance.leaves || glance.leaves.yarn === glance.comes) {
    return [{ yarn, width, text }];
  }
  const leaving = Math.floor(width * leavingPart);
  const { yarn: old, parks } = glance.leaves;
  const name = plainText(old);
  const act = parks === null ? words.bench.cut(name) : words.bench.park(name, parks);
  const still = { name: '', count: '', big: '' };
  const leaves: BandText = { ...still, side: parks ?? 'left', act, actShort: name, arrow: parks };
  return [
    { yarn: old, width: leaving, text: leaves },
    { yarn: glance.comes, width: width - leaving, text },
  ];
}

function blockRows(block: Block, height: number, brush: Brush): readonly Line[] {
  const paint = paintOf(block, brush);
  const above = height >= 3 ? [paint.rim('top')] : [];
  const below = height >= 3 ? [paint.rim('bottom')] : [];
  const size = Math.floor((height - 3) / bigHeight);
  const letters = size >= 1 ? bigRows(block, size, paint) : null;
  const small = smallRow(block, brush, paint);
  const blank = rowOf(block.width, [], paint.fill);
  const middle = height - above.length - below.length;
  const rows = letters ? [...letters, small] : [...Array(Math.floor((middle - 1) / 2)).fill(blank), small];
  return [...above, ...rows, ...Array(Math.max(0, middle - rows.length)).fill(blank), ...below];
}

interface BandPaint {
  readonly fill: (cells: number) => Span;
  readonly text: (text: string) => Span;
  /** A full square of a big letter. */
  readonly square: (cells: number) => Span;
  readonly rim: (where: 'top' | 'bottom') => Line;
  /** Cells between the band's end and its text. */
  readonly inset: number;
}

/** Without a yarn of the bag in the hands there is no colour: two lines hold the text between them. */
function paintOf({ yarn, width }: Block, { marks, depth, ascii }: Brush): BandPaint {
  const mark = yarn === null ? undefined : marks.get(yarn);
  if (!mark) {
    const line = [{ text: (ascii ? '=' : '━').repeat(width) }];
    return {
      fill: (cells) => ({ text: ' '.repeat(cells) }),
      text: (text) => ({ text, bold: true }),
      square: (cells) => ({ text: (ascii ? '#' : '█').repeat(cells) }),
      rim: () => line,
      inset: 2,
    };
  }
  const fill = (cells: number): Span =>
    depth === 'none' ? { text: ' '.repeat(cells), inverse: true } : filled(mark, cells, depth, ascii);
  const text = (wanted: string): Span => ({
    ...onYarn(mark, depth === '16' ? ` ${wanted} ` : wanted, depth),
    bold: true,
  });
  const [top, bottom] = ascii ? ['-', '_'] : ['▔', '▁'];
  return {
    fill,
    text,
    square: (cells) => {
      const text = ' '.repeat(cells);
      return depth === 'none' ? { text } : { text, ground: inkOn(mark.colour) };
    },
    rim: (where) =>
      mark.edged && depth !== 'none'
        ? [{ text: (where === 'top' ? top : bottom).repeat(width), ink: edgeInk(depth), ground: mark.colour }]
        : [fill(width)],
    inset: 2,
  };
}

/** The act at the side of the hands, the yarn's name in the middle, the count at the other side. */
function smallRow({ width, text }: Block, brush: Brush, paint: BandPaint): Line {
  const most = width - 2 * paint.inset;
  const act = [paint.text(actIn(text, most, brush))];
  const count = text.count === '' ? [] : [paint.text(text.count)];
  const name = text.name === '' ? [] : [paint.text(nameOf(text.name, brush))];
  const [left, right] = text.side === 'left' ? [act, count] : [count, act];
  const fits = widthOf(left) + widthOf(right) + 2 <= most;
  const sides = fits ? [left, right] : text.side === 'left' ? [act, []] : [[], act];
  const [first = [], last = []] = sides;
  const middle = Math.floor((width - widthOf(name)) / 2);
  const free =
    middle > paint.inset + widthOf(first) + 1 &&
    middle + widthOf(name) < width - paint.inset - widthOf(last) - 1;
  const parts: readonly Placed[] = [
    { column: paint.inset, spans: first },
    ...(free ? [{ column: middle, spans: name }] : []),
    endingAt(width - paint.inset, last),
  ];
  return rowOf(
    width,
    parts.filter(({ spans }) => spans.length > 0),
    paint.fill,
  );
}

/** The act as long as there is room for it; the arrow stays longer than the words. */
function actIn(text: BandText, room: number, brush: Brush): string {
  const { act, actShort = act } = text;
  const forms = [act, actShort].map((one) => withArrow({ ...text, act: one }, brush));
  const fitting = forms.find((one) => cellsOf(one) <= room);
  if (fitting !== undefined || text.arrow === null) return fitting ?? cut(act.toUpperCase(), room, brush);
  const sign = arrowOf(text.arrow, brush);
  const short = cut(actShort.toUpperCase(), room - sign.length - 1, brush);
  return text.side === 'left' ? `${sign} ${short}` : `${short} ${sign}`;
}

/** Where there is no colour the name is spread, so that it is what stands out. */
const nameOf = (name: string, { depth }: Brush): string =>
  depth === 'none' ? [...name.toUpperCase()].join(' ') : name;

const arrows: Readonly<Record<Side, readonly [string, string]>> = { left: ['◄', '<'], right: ['►', '>'] };

const arrowOf = (to: Side, { ascii }: Brush): string => arrows[to][ascii ? 1 : 0];

function withArrow({ side, act, arrow, long }: BandText, brush: Brush): string {
  const words = act.toUpperCase();
  if (arrow === null) return words;
  const sign = arrowOf(arrow, brush).repeat(long ? 3 : 1);
  return side === 'left' ? `${sign}  ${words}` : `${words}  ${sign}`;
}

/** Big letters at the side of the hands and, where they fit, an arrow or the count at the other side. */
function bigRows({ width, text }: Block, size: number, paint: BandPaint): readonly Line[] | null {
  const { columns, rows } = squareOf(size);
  const room = Math.floor((width - 2 * paint.inset) / columns);
  const [first, last] = [text.big, text.bigBeside ?? ''];
  const wanted = bigSquares(first);
  const beside = bigSquares(last);
  if (first === '' || !wanted || (wanted[0]?.length ?? 0) > room) return null;
  const both = (wanted[0]?.length ?? 0) + (beside?.[0]?.length ?? 0) + 3 <= room && beside;
  return wanted.flatMap((squares, i) => {
    const other = both && last !== '' ? (beside[i] ?? '') : '';
    const [left, right] = text.side === 'left' ? [squares, other] : [other, squares];
    const line = rowOf(
      width,
      [
        ...at(left, paint.inset, columns, paint),
        ...at(right, width - paint.inset - right.length * columns, columns, paint),
      ],
      paint.fill,
    );
    return Array.from({ length: rows }, () => line);
  });
}

/** Runs of full squares at their columns. */
function at(squares: string, column: number, columns: number, paint: BandPaint): readonly Placed[] {
  return [...squares.matchAll(/#+/g)].map(({ 0: run, index }) => ({
    column: column + index * columns,
    spans: [paint.square(run.length * columns)],
  }));
}
