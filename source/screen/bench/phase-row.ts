import type { BenchView } from '../../chat/view.ts';
import type { Line } from '../../sheet/terminal/ansi.ts';
import { plainText } from '../../sheet/text.ts';
import { phases } from '../../steps/step.ts';
import { sayPhase } from '../../wording/steps.ts';
import type { Words } from '../../wording/words.ts';
import { type Brush, cut, endingAt, rowOf, widthOf } from './row.ts';

const inset = 2;
const leastTitle = 6;

/**
 * The bag's name, the step's number, and the six phases: the present one in bold capitals, the rest dim. The number is
 * there to be asked for by; how far the bag has come, the ruler shows.
 */
export function phaseRow(
  view: BenchView,
  width: number,
  brush: Brush,
  { bench: say }: Words,
  words: Words,
): Line {
  const { name, phase, finished, steps } = view;
  const dot = '  ';
  const names = phases.flatMap((one, i): Line => {
    const isNow = one === phase && !finished;
    const text = isNow ? sayPhase(one, words).toUpperCase() : sayPhase(one, words);
    const shown = isNow && brush.depth === 'none' ? `[${text}]` : text;
    return [
      { text: i === 0 ? '' : dot, dim: true },
      isNow ? { text: shown, bold: true } : { text, dim: true },
    ];
  });
  const now = [{ text: finished ? '' : sayPhase(phase, words).toUpperCase(), bold: true }];
  const number = [{ text: say.step(steps.at, steps.of), dim: true }];
  const free = width - 2 * inset - widthOf(number) - 2;
  const spans = widthOf(names) + leastTitle <= free ? names : now;
  const room = free - widthOf(spans) - 2;
  const title = room < leastTitle - 2 ? [] : [{ text: cut(plainText(name), room, brush), bold: true }];
  const left = [...title, { text: title.length > 0 ? '  ' : '' }, ...number];
  return rowOf(width, [{ column: inset, spans: left }, endingAt(width - inset, spans)]);
}
