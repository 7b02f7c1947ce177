/** Rows of styled cells, put together without knowing of a terminal: what is drawn is known, cell by cell, before it is. */

import type { Plan } from '../../../planning/plan.ts';
import type { ColourDepth } from '../../../shared/colour.ts';
import { cellsOf } from '../../../shared/plain-text.ts';
import type { Line, Span } from '../../../sheet/terminal/ansi.ts';
import { cutToCells } from '../../../sheet/text.ts';
import { asDyed, type YarnSign, yarnSigns } from '../../../sheet/yarn-signs.ts';

/** What there is to draw with. */
export interface Brush {
  readonly signs: ReadonlyMap<string, YarnSign>;
  readonly depth: ColourDepth;
  readonly ascii: boolean;
}

/** The colours of a self-striping yarn have signs of their own. */
export const brushFor = (plan: Plan, depth: ColourDepth, ascii: boolean): Brush => ({
  signs: new Map([...yarnSigns(asDyed(plan), depth), ...yarnSigns(plan, depth)]),
  depth,
  ascii,
});

export const widthOf = (line: Line): number => line.reduce((sum, { text }) => sum + cellsOf(text), 0);

export interface Placed {
  readonly column: number;
  readonly spans: Line;
}

const noFill = (cells: number): Span => ({ text: ' '.repeat(cells) });

/** Spans at their columns, from left to right; what would lie on the one before or over the end is left out. */
export function rowOf(width: number, parts: readonly Placed[], fill: (cells: number) => Span = noFill): Line {
  const line: Span[] = [];
  let at = 0;
  for (const { column, spans } of parts) {
    const end = column + widthOf(spans);
    if (column < at || end > width) continue;
    if (column > at) line.push(fill(column - at));
    line.push(...spans);
    at = end;
  }
  if (at < width) line.push(fill(width - at));
  return line;
}

/** The last column at which spans of that width end at `end`. */
export const endingAt = (end: number, spans: Line): Placed => ({ column: end - widthOf(spans), spans });

/** Where spans stand free of those that are placed, two columns apart and as far right as can be; nothing where they cannot. */
export function placedFree(width: number, placed: readonly Placed[], spans: Line): readonly Placed[] {
  const apart = 2;
  const sorted = placed.toSorted((a, b) => b.column - a.column);
  let end = width;
  for (const { column, spans: own } of sorted) {
    if (end - widthOf(spans) >= column + widthOf(own) + apart) break;
    end = column - apart;
  }
  return end - widthOf(spans) < apart ? [] : [endingAt(end, spans)];
}

export const cut = (text: string, width: number, { ascii }: Brush): string =>
  cutToCells(text, Math.max(0, width), ascii ? '..' : '…');
