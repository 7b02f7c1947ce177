/**
 * The band: the one large thing in colour, the yarn that must be in the hands now. On it stands the act in capitals, at
 * the side of the bed where the hands go; the number stands at the other side.
 */
import type { Side } from '../../../bed/bed.ts';
import type { BenchView } from '../../../chat/view.ts';
import type { Plan } from '../../../planning/plan.ts';
import { cellsOf } from '../../../shared/plain-text.ts';
import type { Line } from '../../../sheet/terminal/ansi.ts';
import { plainText } from '../../../sheet/text.ts';
import { asDyed } from '../../../sheet/yarn-signs.ts';
import type { Words } from '../../../wording/words.ts';
import { type BandBlock, type BandPaint, bigHeight, letterRows, paintOf } from './band-letters.ts';
import { type BandText, bandText } from './band-text.ts';
import { type Brush, cut, endingAt, type Placed, rowOf, widthOf } from './row.ts';

interface BandSize {
  readonly width: number;
  readonly height: number;
}

/** The incoming yarn has more of the band than the one that leaves. */
const leavingPart = 1 / 3;

export function bandRows(
  view: BenchView,
  { width, height }: BandSize,
  brush: Brush,
  words: Words,
): readonly Line[] {
  const blocks = blocksOf(view, width, brush, words).map((block) => blockRows(block, height, brush));
  return Array.from({ length: height }, (_, row) => blocks.flatMap((rows) => rows[row] ?? []));
}

function blocksOf(view: BenchView, width: number, { signs }: Brush, words: Words): readonly BandBlock[] {
  const { glance, yarn } = view;
  const text = bandText(view, words);
  if (glance.kind !== 'yarn' || !glance.leaves || glance.leaves.yarn === glance.comes) {
    return [{ yarn: yarn && colourNow(view, yarn), width, text }];
  }
  const leaving = Math.floor(width * leavingPart);
  const { yarn: old, parks } = glance.leaves;
  const name = plainText(old);
  const act = parks === null ? words.bench.cut(name) : words.bench.park(name, parks);
  const still = { name: '', count: '', big: '' };
  const leaves: BandText = { ...still, side: parks ?? 'left', act, actShort: name, arrow: parks };
  // Beside waste yarn, whose colour nobody knows, the yarn that leaves would be all that is seen.
  const leavesInColour = signs.has(glance.comes);
  return [
    { yarn: leavesInColour ? old : null, width: leaving, text: leaves },
    { yarn: colourNow(view, glance.comes), width: width - leaving, text },
  ];
}

/** Of a self-striping yarn the colour that is expected in the row that comes next; any other yarn as it is. */
function colourNow({ plan, phase, rows }: BenchView, yarn: string): string {
  if (phase !== 'stripes' && phase !== 'closing-row') return yarn;
  const dyed = asDyed(plan);
  const row = Math.min(rows.at + 1, plan.knittedRows);
  const here = (stripe: Plan['stripes'][number]): boolean => row >= stripe.firstRow && row <= stripe.lastRow;
  const isIn = plan.stripes.find(here)?.yarn === yarn;
  return (isIn && dyed.stripes.find(here)?.yarn) || yarn;
}

function blockRows(block: BandBlock, height: number, brush: Brush): readonly Line[] {
  const paint = paintOf(block, brush);
  const above = height >= 3 ? [paint.rim('top')] : [];
  const below = height >= 3 ? [paint.rim('bottom')] : [];
  const size = Math.floor((height - 3) / bigHeight);
  const letters = letterRows(block, size, paint, brush.ascii);
  const small = smallRow(block, brush, paint);
  const blank = rowOf(block.width, [], paint.fill);
  const middle = height - above.length - below.length;
  const rows = letters ? [...letters, small] : [...Array(Math.floor((middle - 1) / 2)).fill(blank), small];
  return [...above, ...rows, ...Array(Math.max(0, middle - rows.length)).fill(blank), ...below];
}

/** The act at the side of the hands, the yarn's name in the middle, the count at the other side. */
function smallRow({ width, text }: BandBlock, brush: Brush, paint: BandPaint): Line {
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
