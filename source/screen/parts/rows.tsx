import { Text } from 'ink';
import type { ColourDepth } from '../../shared/shown-colour.ts';
import { formatLine, type Line } from '../../sheet/terminal/ansi.ts';
import { standIn } from './finished-rows.ts';

/** Rows of cells as they are. Ink's own styles are not used: it knows neither 256 colours as such nor bold without colours. */
export const Rows = ({ rows, depth }: { readonly rows: readonly Line[]; readonly depth: ColourDepth }) => (
  <FinishedRows rows={rows.map((line) => formatLine(line, depth))} />
);

export const FinishedRows = ({ rows }: { readonly rows: readonly string[] }) => (
  <Text>{rows.map((row) => (row === '' ? ' ' : standIn(row))).join('\n')}</Text>
);
