/**
 * What the hands are on, under a glass: needles before and after a move under their names, loops with the needle's
 * path, bars, rounds, holes. It stands at the side of the bed where the work is.
 */
import type { Side } from '../../../bed/bed.ts';
import { formatNeedle } from '../../../bed/needles.ts';
import type { Glance, NeedleLook } from '../../../chat/glance.ts';
import type { BedStrip, BenchView } from '../../../chat/view.ts';
import type { Line, Span } from '../../../sheet/terminal/ansi.ts';
import type { Words } from '../../../wording/words.ts';
import {
  bagRows,
  barRows,
  type CloseUpSize,
  cornerRows,
  glanceAround,
  graftCloseUp,
  holeRows,
  roundRows,
} from './close-up-by-hand.ts';
import { type Brush, cut, endingAt, type Placed, rowOf, widthOf } from './row.ts';

function lookOf({ left, right, working, empty, doubled }: BedStrip, place: number): NeedleLook {
  if (left === null || right === null || place < left || place > right)
    return working && place >= working[0] && place <= working[1] ? 'empty' : 'out';
  if (empty.includes(place)) return 'empty';
  return doubled.includes(place) ? 'two' : 'loop';
}

const signs: Readonly<Record<NeedleLook, readonly [string, string]>> = {
  loop: ['●', 'O'],
  empty: ['○', '_'],
  two: ['●●', 'OO'],
  out: ['·', '.'],
};

/** Two loops are two signs. */
const signOf = (look: NeedleLook, ascii: boolean): string => signs[look][ascii ? 1 : 0];

const inset = 2;
const needlesShown = 8;

export function closeUpRows(view: BenchView, size: CloseUpSize, brush: Brush, words: Words): readonly Line[] {
  const glance = glanceAround(view);
  switch (glance.kind) {
    case 'edge':
      return moveRows(view, glance, size, brush, words).slice(0, size.height);
    case 'pass':
    case 'passes':
    case 'yarn':
      return edgeRows([view.bed], size, brush, words);
    case 'graft':
      return graftCloseUp(view, glance, size, brush, words).slice(0, size.height);
    case 'bars':
      return barRows(view, glance, size, brush, words).slice(0, size.height);
    case 'rounds':
      return roundRows(view, glance, size, brush, words).slice(0, size.height);
    case 'holes':
      return holeRows(view, glance, size, brush, words).slice(0, size.height);
    case 'corner':
      return cornerRows(view, glance, size, brush, words).slice(0, size.height);
    case 'other': {
      const bag = bagRows(view, size, brush, words).slice(0, size.height);
      return bag.length > 0 ? bag : edgeRows([view.bed, view.bedAfter], size, brush, words);
    }
  }
}

type EdgeMove = Extract<Glance, { kind: 'edge' }>;

const edgeOf = ({ left, right, working }: BedStrip, side: Side): number | null =>
  side === 'left' ? (left ?? working?.[0] ?? null) : (right ?? working?.[1] ?? null);

/** Needles from the one beyond the edge inward, left to right. */
function placesAt(side: Side, beds: readonly BedStrip[], count: number): readonly number[] {
  const needleCount = beds[0]?.needleCount ?? 0;
  const edges = beds.flatMap((bed) => edgeOf(bed, side) ?? []);
  const from = side === 'left' ? Math.min(...edges) - 1 : Math.max(...edges) + 2 - count;
  const first = Math.max(0, Math.min(from, needleCount - count));
  return Array.from({ length: Math.min(count, needleCount) }, (_, i) => first + i);
}

function moveRows(
  view: BenchView,
  { side, change }: EdgeMove,
  { width }: CloseUpSize,
  brush: Brush,
  { bench: say }: Words,
): readonly Line[] {
  const { bed, bedAfter } = view;
  const labelWidth = Math.max(say.now.length, say.make.length) + 2;
  const room = width - 2 * inset - labelWidth;
  const cell = Math.max(4, Math.min(6, Math.floor(room / needlesShown)));
  const places = placesAt(side, [bed, bedAfter], Math.min(needlesShown, Math.floor(room / cell)));
  const changed = (place: number): boolean => lookOf(bed, place) !== lookOf(bedAfter, place);
  const label = (text: string): Span => ({ text: text.padEnd(labelWidth), dim: true });
  const names = places.map((place) =>
    centred(formatNeedle(bed.needleCount, place), cell, changed(place) ? { bold: true } : {}),
  );
  const looks = (of: BedStrip, bold: boolean): Line =>
    places.map((place) =>
      centred(signOf(lookOf(of, place), brush.ascii), cell, bold && changed(place) ? { bold: true } : {}),
    );
  const rows: readonly Line[] = [
    [label(''), ...names],
    [label(say.now), ...looks(bed, false)],
    [label(say.make), ...looks(bedAfter, true)],
    notes(view, change, labelWidth, width - 2 * inset, brush, say),
  ];
  return rows.map((spans) => rowOf(width, [atSide(side, spans, width)]));
}

function notes(
  { bedAfter, glance }: BenchView,
  change: EdgeMove['change'],
  indent: number,
  room: number,
  brush: Brush,
  say: Words['bench'],
): Line {
  const name = ([place]: readonly number[]): string =>
    place === undefined ? '' : formatNeedle(bedAfter.needleCount, place);
  const needle = glance.kind === 'edge' ? glance.needle : '';
  const { ascii } = brush;
  const text =
    change === 'increase'
      ? `${signOf('empty', ascii)} ${say.eyelet(name(bedAfter.empty))}`
      : `${signOf('two', ascii)} ${say.two(name(bedAfter.doubled))}   ${signOf('out', ascii)} ${say.outOfWork(needle)}`;
  const indented = indent + text.length <= room ? ' '.repeat(indent) : '';
  return [{ text: indented + cut(text, room, brush) }];
}

const atSide = (side: Side, spans: Line, width: number): Placed =>
  side === 'left' ? { column: inset, spans } : endingAt(width - inset, spans);

function centred(text: string, width: number, style: Omit<Span, 'text'>): Span {
  const before = Math.floor((width - text.length) / 2);
  return { ...style, text: text.padStart(text.length + before).padEnd(width) };
}

/** The needles at both edges as they are, to hold the bed against; and as they are to be, where the step changes them. */
function edgeRows(
  beds: readonly BedStrip[],
  { width, height }: CloseUpSize,
  { ascii }: Brush,
  { bench: say }: Words,
): readonly Line[] {
  const [bed, bedAfter = bed] = beds;
  if (!bed || !bedAfter || beds.every(({ working }) => working === null)) return [];
  const labelWidth = Math.max(say.now.length, say.make.length) + 2;
  const needsLabels = edgesDiffer(bed, bedAfter);
  const from = inset + (needsLabels ? labelWidth : 0);
  const room = Math.floor((width - from - inset - 4) / 2);
  const cell = Math.min(5, Math.max(4, Math.floor(room / needlesShown)));
  const sides = sidesOf(beds, Math.min(needlesShown, Math.floor(room / cell)));
  const row = (name: string, textOf: (place: number) => string, style: Omit<Span, 'text'>): Line => {
    const label: Line = needsLabels ? [{ text: name.padEnd(labelWidth), dim: true }] : [];
    const [left = [], right] = sides.map((places) =>
      places.map((place) => centred(textOf(place), cell, style)),
    );
    const middle = Math.floor((width - widthOf(left)) / 2) - widthOf(label);
    return right
      ? rowOf(width, [{ column: inset, spans: [...label, ...left] }, endingAt(width - inset, right)])
      : rowOf(width, [{ column: middle, spans: [...label, ...left] }]);
  };
  const looks = (of: BedStrip) => (place: number) => signOf(lookOf(of, place), ascii);
  const rows = [
    row('', (place) => formatNeedle(bed.needleCount, place), { dim: true }),
    row(say.now, looks(bed), {}),
    ...(needsLabels ? [row(say.make, looks(bedAfter), { bold: true })] : []),
  ];
  return rows.slice(0, height);
}

const edgesDiffer = (bed: BedStrip, after: BedStrip): boolean =>
  bed.left !== after.left ||
  bed.right !== after.right ||
  bed.working?.[0] !== after.working?.[0] ||
  bed.working?.[1] !== after.working?.[1];

/** Needles at the left and at the right; all together where there are no more than fit at one side. */
function sidesOf(beds: readonly BedStrip[], count: number): readonly (readonly number[])[] {
  const [left = [], right = []] = (['left', 'right'] as const).map((side) => placesAt(side, beds, count));
  const [first = 0, last = 0] = [left[0], right.at(-1)];
  return last - first < count ? [left.filter((place) => place <= last)] : [left, right];
}
