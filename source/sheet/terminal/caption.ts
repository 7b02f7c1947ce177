/** The lines beneath a picture: which yarn is which, and what is shown. */

import type { Plan } from '../../planning/plan.ts';
import { cellsOf, cutToCells, plainText } from '../text.ts';
import { markYarns } from '../yarn-marks.ts';
import { formatLine, type Line, type Span } from './ansi.ts';
import { swatchOf } from './on-yarn.ts';
import type { DrawOptions } from './options.ts';

/** `P plum  M mint`, the letter on the yarn's colour; as many as fit. */
export function legend(plan: Plan, { columns, glyphs, colour: depth }: DrawOptions): Line {
  const knitted = new Set(plan.stripes.map((stripe) => stripe.yarn));
  const spans: Span[] = [];
  let left = columns;
  for (const mark of markYarns(plan, depth).values()) {
    const { yarn } = mark;
    if (!knitted.has(yarn)) continue;
    const gap = spans.length > 0 ? '  ' : '';
    const room = left - gap.length - 4;
    const name = cutToCells(plainText(yarn), Math.min(20, room), glyphs === 'ascii' ? '..' : '…');
    if (room < 3 || name === '') break;
    spans.push({ text: gap }, ...swatchOf(mark, depth, glyphs === 'ascii'), { text: ` ${name}` });
    left -= gap.length + 4 + cellsOf(name);
  }
  return spans;
}

/** Sentences broken at spaces into lines of at most `columns` cells, and no more than `rows` of them. */
export function wrapWords(sentences: readonly string[], { columns, rows }: DrawOptions): readonly string[] {
  const lines: string[] = [];
  for (const sentence of sentences) {
    let line = '';
    for (const word of sentence.split(' ')) {
      const longer = line === '' ? word : `${line} ${word}`;
      if (cellsOf(longer) <= columns) {
        line = longer;
        continue;
      }
      if (line !== '') lines.push(line);
      line = cutToCells(word, columns, '');
    }
    lines.push(line);
  }
  return lines.slice(0, rows);
}

/** The whole picture as strings, cut to the room there is. */
export function formatPicture(lines: readonly Line[], options: DrawOptions): readonly string[] {
  return lines.slice(0, options.rows).map((line) => formatLine(line, options.colour));
}
