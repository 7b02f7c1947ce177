import type { BenchView } from '../../source/chat/view.ts';
import { benchRows } from '../../source/screen/bench/bench-rows.ts';
import { brushFor } from '../../source/screen/bench/row.ts';
import type { ColourDepth } from '../../source/shared/shown-colour.ts';
import { formatLine } from '../../source/sheet/terminal/ansi.ts';
import { englishWords } from '../../source/wording/words.ts';
import { type Cell, show } from '../sheet/screen.ts';

export const benchSize = { columns: 80, room: 18 };

/** The cells of the bench as an emulator has them. */
export async function benchOnScreen(
  view: BenchView,
  depth: ColourDepth,
  large = false,
): Promise<readonly (readonly Cell[])[]> {
  const { columns, room } = benchSize;
  const { above, below } = benchRows(
    view,
    { columns, room, large },
    brushFor(view.plan, depth, false),
    englishWords,
  );
  const lines = [...above, ...below].map((line) => formatLine(line, depth));
  return (await show(lines, columns, room)).cells;
}
