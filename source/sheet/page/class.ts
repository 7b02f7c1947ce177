/** For a class: what each pupil fills in. */
import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import type { Detail } from './block.ts';

/** The sums a pupil does with their own swatch; the counts of the plan stay. */
export function blanksFor(
  { stitches, rows, shapings }: Plan,
  { sheet: { blanks } }: Words,
): readonly Detail[] {
  return [
    { label: blanks.name, value: '' },
    { label: blanks.stitches, value: blanks.over },
    { label: blanks.rows, value: blanks.overHeight },
    { label: blanks.stitchWidth, value: blanks.widthByStitches },
    { label: blanks.rowHeight, value: blanks.heightByRows },
    { label: blanks.acrossA, value: `${shapings} × w =` },
    { label: blanks.alongB, value: `${rows} × h =` },
    { label: blanks.mouthC, value: '√(a × a + b × b) =' },
    { label: blanks.wide, value: 'c ÷ 2 =' },
    { label: blanks.deep, value: `${stitches - 1} × w × b ÷ c =` },
  ];
}
