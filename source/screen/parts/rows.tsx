import type { ColourDepth } from '../../shared/shown-colour.ts';
import { formatLine, type Line } from '../../sheet/terminal/ansi.ts';
import { standIn } from './finished-rows.ts';
import { Painted } from './text.tsx';

/** Rows of cells as they are. Ink's own styles are not used: it knows neither 256 colours as such nor bold without colours. */
export const Rows = ({ rows, depth }: { readonly rows: readonly Line[]; readonly depth: ColourDepth }) => (
  <FinishedRows rows={rows.map((line) => formatLine(line, depth))} />
);

export const FinishedRows = ({ rows }: { readonly rows: readonly string[] }) => (
  <Painted>{rows.map((row) => (row === '' ? ' ' : standIn(row))).join('\n')}</Painted>
);
