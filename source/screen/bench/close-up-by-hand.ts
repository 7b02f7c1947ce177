/** Close-ups of the work away from the bed: loops of the graft, bars of the seam, rounds of the cord, holes at the mouth. */
import type { Glance, GraftMovement } from '../../chat/glance.ts';
import type { BenchView } from '../../chat/view.ts';
import type { Line, Span } from '../../sheet/terminal/ansi.ts';
import type { Words } from '../../wording/words.ts';
import { type Brush, cut, rowOf } from './row.ts';

type Of<K extends Glance['kind']> = Extract<Glance, { kind: K }>;
interface Size {
  readonly width: number;
  readonly height: number;
}

const inset = 2;
const loopCell = 6;
const down = ['▼', 'v'] as const;
const up = ['▲', '^'] as const;

const row = (width: number, spans: Line): Line => rowOf(width, [{ column: inset, spans }]);

/** The loops at hand of both edges: sewn ones full, those to come empty, where the needle goes down and up between. */
export function graftRows(
  view: BenchView,
  { movements, loops }: Of<'graft'>,
  { width }: Size,
  brush: Brush,
  { bench: say }: Words,
): readonly Line[] {
  const at = Math.max(1, ...movements.flatMap((one) => [one.down ?? 0, one.up ?? 0]));
  const count = Math.min(loops, 8, Math.floor((width - 2 * inset) / loopCell));
  const first = Math.max(1, Math.min(at - Math.floor(count / 2), loops - count + 1));
  const numbers = Array.from({ length: count }, (_, i) => first + i);
  const names = (edge: 'A' | 'B'): Line =>
    numbers.map((loop) => {
      const isHere = movements.some((one) => one.edge === edge && (one.down === loop || one.up === loop));
      return { text: `${edge}${loop}`.padEnd(loopCell), ...(isHere ? { bold: true } : { dim: true }) };
    });
  const path = (edge: 'A' | 'B'): Line => {
    const here = movements.filter((one) => one.edge === edge);
    return numbers.flatMap((loop) => loopSpans(loop, here, at, view, brush));
  };
  return [names('A'), path('A'), path('B'), [...names('B')]]
    .map((spans) => row(width, spans))
    .map((line, i) => (i === 3 ? withNote(line, say.graftPath, count * loopCell, width, brush) : line));
}

/** The needle runs behind the work from where it goes down to where it comes up. */
function loopSpans(
  loop: number,
  movements: readonly GraftMovement[],
  at: number,
  { plan }: BenchView,
  { ascii, marks, depth }: Brush,
): Line {
  const which = ascii ? 1 : 0;
  const goesDown = movements.some((one) => one.down === loop);
  const comesUp = movements.some((one) => one.up === loop);
  if (goesDown || comesUp) {
    const runs = movements.some((one) => one.down === loop && one.up === loop + 1);
    const sign = `${goesDown ? down[which] : ''}${comesUp ? up[which] : ''}`;
    const behind = runs ? (ascii ? '- ' : '╌').repeat(loopCell).slice(0, loopCell - sign.length - 1) : '';
    return [{ text: ` ${sign}${behind}`.padEnd(loopCell), bold: true }];
  }
  const sewn = loop < at;
  const thread = marks.get(plan.stripes.at(-1)?.yarn ?? '');
  const ink = sewn && depth !== 'none' && thread && !thread.edged ? { ink: thread.colour } : {};
  const [full, open] = ascii ? ['O', 'o'] : ['●', '○'];
  return [{ text: ' ' }, { text: sewn ? full : open, ...ink }, { text: ' '.repeat(loopCell - 2) }];
}

function withNote(line: Line, note: string, from: number, width: number, brush: Brush): Line {
  const room = width - inset - from - inset;
  if (room < 20) return line;
  const spans = line.slice(1, -1);
  return rowOf(width, [{ column: inset, spans: [...spans, { text: cut(note, room, brush), dim: true }] }]);
}

const barCell = 4;

/** Bars of the two sides, those at hand in bold. */
export function barRows(
  _: BenchView,
  { from, through, of }: Of<'bars'>,
  { width }: Size,
  brush: Brush,
  { bench: say }: Words,
): readonly Line[] {
  const label = Math.max(say.front.length, say.behind.length) + 2;
  const count = Math.min(of, Math.floor((width - 2 * inset - label) / barCell), through - from + 9);
  const first = Math.max(1, Math.min(from - 4, of - count + 1));
  const bars = Array.from({ length: count }, (_, i) => first + i);
  const isHere = (bar: number): boolean => bar >= from && bar <= through;
  const [done, here, open] = brush.ascii ? ['=', '+', '-'] : ['═', '╪', '─'];
  const signs = bars.map((bar): Span => {
    const sign = bar < from ? done : isHere(bar) ? here : open;
    return { text: ` ${sign}${sign} `.slice(0, barCell), ...(isHere(bar) ? { bold: true } : {}) };
  });
  const names = bars.map(
    (bar): Span => ({
      text: ` ${bar}`.padEnd(barCell),
      ...(isHere(bar) ? { bold: true } : { dim: true }),
    }),
  );
  const side = (text: string): Span => ({ text: text.padEnd(label), dim: true });
  return [
    [side(''), ...names],
    [side(say.front), ...signs],
    [side(say.behind), ...signs],
    [side(''), { text: cut(say.barPath, width - 2 * inset - label, brush), dim: true }],
  ].map((spans) => row(width, spans));
}

/** How much of the cord is done, and which way the carriage does what. */
export function roundRows(
  view: BenchView,
  { from, through, of, slipTo, knitTo }: Of<'rounds'>,
  { width }: Size,
  { ascii, marks, depth }: Brush,
  { bench: say }: Words,
): readonly Line[] {
  const room = width - 2 * inset;
  const [done, now] = [Math.round(((from - 1) / of) * room), Math.max(1, Math.round((through / of) * room))];
  const [full, open] = ascii ? ['=', '.'] : ['━', '╌'];
  const mark = marks.get(view.plan.cord.yarn);
  const ink = mark && depth !== 'none' && !mark.edged ? { ink: mark.colour } : {};
  const arrow = (side: 'left' | 'right'): string =>
    side === 'left' ? (ascii ? '<' : '◄') : ascii ? '>' : '►';
  return [
    [
      { text: full.repeat(done), ...ink },
      { text: full.repeat(Math.max(1, now - done)), bold: true },
      { text: open.repeat(Math.max(0, room - Math.max(done + 1, now))), dim: true },
    ],
    [{ text: `${arrow(slipTo)} ${say.slip(slipTo)}    ${arrow(knitTo)} ${say.knit(knitTo)}`, bold: true }],
  ].map((spans) => row(width, spans));
}

/** The holes round the mouth from the graft on: done, now, to come, and those that are passed by. */
export function holeRows(
  { plan }: BenchView,
  { inThrough, outThrough }: Of<'holes'>,
  { width }: Size,
  { ascii }: Brush,
  { bench: say }: Words,
): readonly Line[] {
  const { made, skipped, used } = plan.eyelets;
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
  const done = new Set(used.slice(0, used.indexOf(inThrough)));
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
