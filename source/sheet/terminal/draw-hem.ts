/** The hem from the side in letters: the inside of the bag to the left, the fold up. */
import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { withNotes } from './draw-by-hand.ts';
import type { DrawOptions } from './picture.ts';

export function drawHem({ hem }: Plan, options: DrawOptions, { pictures: say }: Words): readonly string[] {
  if (!hem) return withNotes([], [say.noHem], options);
  const ascii = options.glyphs === 'ascii';
  const [top, two, closed, one, hole] = ascii
    ? ['.---.', '|   |', 'O---+', '    |', '    o']
    : ['╭───╮', '│   │', '●───┤', '    │', '    ○'];
  const rows: readonly (readonly [string, string])[] = [
    [top, say.hemFold],
    [two, say.hemLayers(hem.rows, hem.heightCm)],
    [two, ''],
    [closed, say.hemChain(hem.stitches)],
    [one, ''],
    [hole, say.hemCord(hem.foldToCordCm)],
    [one, ''],
  ];
  const picture = rows.map(([cloth, note]) => [{ text: `  ${cloth}   ` }, { text: note }]);
  return withNotes(picture, [say.hemSides], options);
}
