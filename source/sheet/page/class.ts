/** For a class: what each pupil fills in, and a list of the pupils for whoever teaches them. */
import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { type Blank, type Block, together } from './block.ts';

/** Lines for pupils on the list. */
const listed = 24;

/** On the sheet that each pupil gets. */
export const swatchBlock = (plan: Plan, words: Words): Block =>
  together(
    words.sheet.mySwatch,
    [{ kind: 'blanks', blanks: blanksFor(plan, words) }],
    words.sheet.mySwatchNote,
  );

/** For whoever teaches. */
export const classList = ({ sheet }: Words): Block =>
  together(sheet.classList, [{ kind: 'register', titles: sheet.classListTitles, count: listed }]);

/** The sums a pupil does with their own swatch; the counts of the plan stay. */
function blanksFor(
  { stitches, rows, shapings, hem }: Plan,
  { sheet: { blanks }, amounts }: Words,
): readonly Blank[] {
  const andHem = hem ? ` + ${amounts.decimal(hem.rows + 0.5)} × h` : '';
  return [
    { label: blanks.name, value: '' },
    { label: blanks.stitches, value: blanks.over },
    { label: blanks.rows, value: blanks.overHeight },
    { label: blanks.stitchWidth, value: blanks.widthByStitches, isSum: true },
    { label: blanks.rowHeight, value: blanks.heightByRows, isSum: true },
    { label: blanks.acrossA, value: `${shapings} × w =`, isSum: true },
    { label: blanks.alongB, value: `${rows} × h =`, isSum: true },
    { label: blanks.mouthC, value: '√(a × a + b × b) =', isSum: true },
    { label: blanks.wide, value: 'c ÷ 2 =', isSum: true },
    { label: blanks.deep, value: `${stitches - 1} × w × b ÷ c${andHem} =`, isSum: true },
  ];
}
