import { Text } from 'ink';
import type { ColourDepth } from '../../shared/shown-colour.ts';
import { formatLine, type Line } from '../../sheet/terminal/ansi.ts';

/** Rows of cells as they are. Ink's own styles are not used: it knows neither 256 colours as such nor bold without colours. */
export const Rows = ({ rows, depth }: { readonly rows: readonly Line[]; readonly depth: ColourDepth }) => (
  <Text>{rows.map((line) => formatLine(line, depth) || ' ').join('\n')}</Text>
);
