/** Close-ups of the work away from the bed: loops of the graft, bars of the seam, rounds of the cord, holes at the mouth. */
import type { Glance } from '../../../chat/glance.ts';
import type { BenchView } from '../../../chat/view.ts';
import { threadingOrder } from '../../../planning/eyelets.ts';
import type { Plan } from '../../../planning/plan.ts';
import type { Line, Span } from '../../../sheet/terminal/ansi.ts';
import { cornerPicture } from '../../../sheet/terminal/draw-by-hand.ts';
import { graftRows, seamRows } from '../../../sheet/terminal/sewing-rows.ts';
import type { Act } from '../../../steps/act.ts';
import type { Words } from '../../../wording/words.ts';
import { type Brush, cut, endingAt, rowOf } from './row.ts';

type Of<K extends Glance['kind']> = Extract<Glance, { kind: K }>;
export interface CloseUpSize {
  readonly width: number;
  readonly height: number;
}

const inset = 2;
/** Bars at hand with some on either side: more would only be counted. */
const mostBarColumns = 68;
const down = ['▼', 'v'] as const;
const up = ['▲', '^'] as const;

const row = (width: number, spans: Line): Line => rowOf(width, [{ column: inset, spans }]);

/** The colour of the yarn that closes the bag; null for the terminal's own. */
function threadOf({ stripes }: Plan, { signs, depth }: Brush): string | null {
  const sign = signs.get(stripes.at(-1)?.yarn ?? '');
  return sign && depth !== 'none' && !sign.edged ? sign.colour : null;
}

/** The loops at hand of both edges, at the side where their mouth lies; what the signs mean beside them. */
export function graftCloseUp(
  { plan }: BenchView,
  { movements, count }: Of<'graft'>,
  { width }: CloseUpSize,
  brush: Brush,
  { bench: say }: Words,
): readonly Line[] {
  const thread = threadOf(plan, brush);
  const look = { columns: width - 2 * inset, most: 8, ascii: brush.ascii, thread };
  const picture = graftRows(plan, movements, { ...look, next: count.at });
  const { names, path } = picture;
  const notes = ['', ...say.graftPath];
  const room = width - 2 * inset - picture.width - 2;
  return [names.A, path.A, path.B, names.B].map((line, i) => {
    const text = notes[i] ?? '';
    const note = text.length <= room ? [{ text, dim: true }] : [];
    const isLeft = plan.brief.crawl === 'left';
    const [left, right] = isLeft ? [line, note] : [note, line];
    return rowOf(width, [
      { column: inset, spans: left },
      isLeft ? { column: inset + picture.width + 2, spans: right } : endingAt(width - inset, right),
    ]);
  });
}

/** The bars of the two sides and the thread under them; a note beside it where there is room, for the last row else. */
export function barRows(
  { plan }: BenchView,
  bars: Of<'bars'>,
  { width }: CloseUpSize,
  brush: Brush,
  { bench: say }: Words,
): readonly Line[] {
  const label = Math.max(say.front.length, say.behind.length) + 2;
  const columns = Math.min(width - 2 * inset - label, mostBarColumns);
  const look = { columns, ascii: brush.ascii, thread: threadOf(plan, brush) };
  const { names, path } = seamRows(bars, bars.of, look);
  const side = (text: string): Span => ({ text: text.padEnd(label), dim: true });
  return [
    [side(''), ...names],
    [side(say.front), ...path.front],
    [side(say.behind), ...path.back],
    [side(''), { text: cut(say.barPath, width - 2 * inset - label, brush), dim: true }],
  ].map((spans) => row(width, spans));
}

/** The corner that is laid flat, and where it is sewn across. */
export const cornerRows = (
  _: BenchView,
  glance: Of<'corner'>,
  { width }: CloseUpSize,
  brush: Brush,
  { pictures }: Words,
): readonly Line[] =>
  cornerPicture(glance, brush.ascii, pictures).map(({ signs, note }) =>
    row(width, [signs, { text: cut(note, width - 2 * inset - signs.text.length, brush), dim: true }]),
  );

/** Which way the carriage does what; how much of the cord is done, the ruler shows. */
export function roundRows(
  _: BenchView,
  { slipTo, knitTo }: Of<'rounds'>,
  { width }: CloseUpSize,
  { ascii }: Brush,
  { bench: say }: Words,
): readonly Line[] {
  const arrow = (side: 'left' | 'right'): string =>
    side === 'left' ? (ascii ? '<' : '◄') : ascii ? '>' : '►';
  const pass = (side: 'left' | 'right', text: string): Line => {
    const spans = [
      { text: side === 'left' ? `${arrow(side)} ${text}` : `${text} ${arrow(side)}`, bold: true },
    ];
    return rowOf(width, [side === 'left' ? { column: inset, spans } : endingAt(width - inset, spans)]);
  };
  return [pass(slipTo, say.slip(slipTo)), pass(knitTo, say.knit(knitTo))];
}

/** The part of the whole bag that the hands are on; null where it is all of it. */
const partsOfBag: Partial<Readonly<Record<Act['kind'], 'mouth' | 'bottom' | null>>> = {
  'hide-ends': 'bottom',
  'join-hem': 'mouth',
  'sew-cord': 'mouth',
  tie: 'mouth',
  wash: null,
  'measure-bag': null,
};

/** The bag as it lies flat, with its size, where it is the whole bag that the hands are on. */
export function bagRows(
  { plan, step, finished }: BenchView,
  { width }: CloseUpSize,
  { ascii }: Brush,
  { bench: say }: Words,
): readonly Line[] {
  const part = step ? partsOfBag[step.act.kind] : finished ? null : undefined;
  if (part === undefined) return [];
  const [hole, thread, side, left, right] = ascii ? 'o-|++' : '○─│└┘';
  const mouth = [hole, hole, hole, hole, hole].join(`${thread}${thread}${thread}`);
  const across = mouth.length - 2;
  const sides = `${side}${' '.repeat(across)}${side}`;
  const isWhole = part === null;
  const note = (text: string): Span => ({
    text: `   ${text}`,
    ...(isWhole ? { bold: true } : { dim: true }),
  });
  return [
    [{ text: mouth, bold: part === 'mouth' }],
    [{ text: sides }, note(say.bagDeep(plan.size.depthCm))],
    [{ text: sides }],
    [
      { text: `${left}${(thread ?? '').repeat(across)}${right}`, bold: part === 'bottom' },
      note(say.bagWide(plan.size.widthCm)),
    ],
  ].map((spans) => row(width, spans));
}

/** The holes round the mouth from the graft on: done, now, to come, and those that are passed by. */
export function holeRows(
  { plan }: BenchView,
  { draw, inThrough, outThrough }: Of<'holes'>,
  { width }: CloseUpSize,
  { ascii }: Brush,
  { bench: say }: Words,
): readonly Line[] {
  const { made, skipped } = plan.eyelets;
  const order = threadingOrder(plan.eyelets, draw);
  const room = width - 2 * inset;
  const cell = made * 2 <= room ? 2 : 1;
  const shown = Math.min(made, Math.floor(room / cell));
  const first = Math.max(1, Math.min(inThrough - Math.floor(shown / 2), made - shown + 1));
  const holes = Array.from({ length: shown }, (_, i) => first + i);
  const [full, open, by] = ascii ? ['O', 'o', '.'] : ['●', '○', '·'];
  const now = new Map([
    [inThrough, down[ascii ? 1 : 0]],
    [outThrough, up[ascii ? 1 : 0]],
  ]);
  const done = new Set(order.slice(0, order.indexOf(inThrough)));
  const signs = holes.map((hole): Span => {
    const sign = now.get(hole) ?? (skipped.includes(hole) ? by : done.has(hole) ? full : open);
    return { text: sign.padEnd(cell), ...(now.has(hole) ? { bold: true } : {}) };
  });
  const at = holes.indexOf(inThrough) * cell;
  const note = say.holes(inThrough, outThrough);
  return [
    signs,
    [{ text: ' '.repeat(Math.max(0, Math.min(at, room - note.length))) }, { text: note, bold: true }],
  ].map((spans) => row(width, spans));
}

/** Graft and seam before their first movement and after their last: as they lie then, for close-up and ruler. */
export function glanceAround({ glance, phase, plan, step }: BenchView): Glance {
  const loops = plan.stitches;
  const bars = plan.seam.barsPerSide;
  const graft = (at: number): Glance => ({ kind: 'graft', movements: [], loops, count: { at, of: loops } });
  const seam = (from: number): Glance => ({ kind: 'bars', from, through: from - 1, of: bars });
  switch (step?.act.kind) {
    case 'lay-graft':
      return graft(1);
    case 'fasten-graft':
    case 'pull-ravel-cord':
      return graft(loops + 1);
    case 'release-waste':
      return phase === 'graft' ? graft(loops + 1) : glance;
    case 'fold-seam':
      return seam(1);
    case 'fasten-seam':
      return seam(bars + 1);
    default:
      return glance;
  }
}
