/** The words of the bench: what to do now in bold, its caution, and where there is room what comes then. */
import type { BenchView } from '../../../chat/view.ts';
import type { Line } from '../../../sheet/terminal/ansi.ts';
import { sayWayStep } from '../../../wording/finding.ts';
import { wrap } from '../../../wording/page.ts';
import { cautionOf, sayNoWayBack, sayStep } from '../../../wording/steps.ts';
import type { Words } from '../../../wording/words.ts';
import { type Brush, cut } from './row.ts';

interface Instruction {
  readonly now: string;
  readonly caution: string | null;
  readonly afterwards: string | null;
}

export function instructionOf({ plan, step, next, way }: BenchView, words: Words): Instruction {
  if (way) {
    return {
      now: sayWayStep(way, words) ?? '',
      caution: null,
      afterwards: sayWayStep(way, words, 1),
    };
  }
  if (!step) return { now: words.bench.bagDone, caution: null, afterwards: null };
  return {
    now: sayStep(step, words),
    caution: cautionOf(plan, step, words) ?? sayNoWayBack(step, words),
    afterwards: next && sayStep(next, words),
  };
}

const mark = '!';

/** Narrow windows need all their columns. */
const insetIn = (width: number): string => (width < 56 ? '' : '  ');

/** Rows that instruction and caution take. */
export function rowsNeeded({ now, caution }: Instruction, width: number): number {
  const room = width - insetIn(width).length;
  const rows = wrap(now, room).length;
  return caution === null ? rows : rows + wrap(caution, room - mark.length - 1).length;
}

/** The caution stands out in every colour scheme: bold, in the terminal's own ink, a reversed mark before it. */
export function wordRows(
  { now, caution, afterwards }: Instruction,
  { width, height }: { readonly width: number; readonly height: number },
  brush: Brush,
  words: Words,
): readonly Line[] {
  const inset = insetIn(width);
  const room = width - inset.length;
  const lines: Line[] = wrap(now, room).map((text) => [{ text: inset }, { text, bold: true }]);
  const cautions = caution === null ? [] : wrap(caution, room - mark.length - 1);
  const cautionLines = cautions.map(
    (text, i): Line => [
      { text: inset },
      i === 0 ? { text: mark, bold: true, inverse: true } : { text: ' ' },
      { text: ` ${text}`, bold: true },
    ],
  );
  const label = `${words.bench.afterwards}  `;
  const thenLines =
    afterwards === null
      ? []
      : wrap(afterwards, room - label.length).map(
          (text, i): Line => [
            { text: `${inset}${i === 0 ? label : ' '.repeat(label.length)}`, dim: true },
            { text },
          ],
        );
  const spare = height - lines.length - cautionLines.length;
  return [
    ...lines,
    ...thenRows(thenLines, afterwards, spare, room - label.length, inset + label, brush),
    ...cautionLines,
  ].slice(0, height);
}

/** What comes then is shown whole where it fits, else in one row that is cut off. */
function thenRows(
  lines: readonly Line[],
  then: string | null,
  spare: number,
  room: number,
  label: string,
  brush: Brush,
): readonly Line[] {
  if (then === null || spare < 1) return [];
  if (lines.length <= spare) return lines;
  return [[{ text: label, dim: true }, { text: cut(then, room, brush) }]];
}
