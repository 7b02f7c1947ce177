import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { element, fontFamily, lineFrom, palette, placed, round } from '../svg/element.ts';
import { bandDrawing, type Fills, patchFills } from '../svg/fills.ts';
import { escapeXml } from '../text.ts';
import { columnMm, marginMm, papers, type Sheet, type SheetOptions, type SheetPage, types } from './block.ts';
import { type Laid, paragraph, sideBySide, stack } from './laid.ts';
import { layBlock } from './lay-out.ts';
import { headerMm, sheetOf, stationOf, titleMm, titleSize } from './pages.ts';

/** The sheet as one SVG: pages of the paper that was asked for, below each other, text as text, nothing fetched. */
export function sheetSvg(plan: Plan, options: SheetOptions): string {
  const { words } = options;
  const paper = papers[options.paper ?? 'a4'];
  const sheet = sheetOf(plan, options, paper.heightMm);
  const fills = patchFills(plan);
  const left = (paper.widthMm - columnMm) / 2;
  const heightMm = round(sheet.pages.length * paper.heightMm);
  const pages = sheet.pages.map((page, i) => {
    const top = i * paper.heightMm;
    const ground = { x: 0, y: top, width: paper.widthMm, height: paper.heightMm, fill: palette.paper };
    return element(
      'g',
      { class: `page ${page.place}` },
      element('rect', ground) +
        drawnPage(plan, sheet, page, i, words, fills).draw([left, top + marginMm.top]),
    );
  });
  const attributes = {
    xmlns: 'http://www.w3.org/2000/svg',
    viewBox: `0 0 ${paper.widthMm} ${heightMm}`,
    width: `${paper.widthMm}mm`,
    height: `${heightMm}mm`,
    lang: words.language === 'en' ? null : words.language,
    'font-family': fontFamily,
  };
  const title = element('title', {}, escapeXml(sheet.title));
  return `<?xml version="1.0" encoding="UTF-8"?>\n${element('svg', attributes, title + fills.defs + pages.join(''))}\n`;
}

function drawnPage(
  plan: Plan,
  sheet: Sheet,
  page: SheetPage,
  index: number,
  words: Words,
  fills: Fills,
): Laid {
  const type = types[page.place];
  const head = header(plan, sheet, page, index, words);
  const body = stack(
    page.blocks.map((block) => layBlock(block, { widthMm: columnMm, type, fills })),
    type.gap,
  );
  const headMm = headerMm(sheet.title, page.place, index === 0);
  return {
    heightMm: headMm + body.heightMm,
    draw: ([x, y]) => head.draw([x, y]) + body.draw([x, y + headMm]),
  };
}

/** The title, the place of work and the page's number; on the first page also what the bag is and its stripes in order. */
function header(
  plan: Plan,
  { title, date, lead, pages }: Sheet,
  { place }: SheetPage,
  index: number,
  words: Words,
): Laid {
  const { size } = titleSize(title, place);
  const small = { size: types.desk.size, leading: types.desk.leading };
  const besideMm = columnMm - titleMm - 4;
  const { sheet } = words;
  const where = stack(
    [
      paragraph(`${stationOf(pages, index, sheet)} · ${sheet.page(index + 1, pages.length)}`, besideMm, {
        ...small,
        weight: 700,
      }),
      paragraph(sheet.leftAndRight, besideMm, { ...small, colour: palette.quiet }),
    ],
    0,
  );
  const named = sideBySide([
    [0, paragraph(title, titleMm, { size, leading: size * 1.15, serif: true })],
    [titleMm + 4, where],
  ]);
  const band = bandDrawing(plan, sheet, columnMm, 4.2, 'band');
  const more: readonly Laid[] =
    index > 0
      ? []
      : [
          paragraph(`${lead} · ${date}`, columnMm, { ...small, colour: palette.quiet }),
          { heightMm: band.heightMm, draw: (at) => placed(band, at) },
        ];
  const rule: Laid = {
    heightMm: 1,
    draw: ([x, y]) => lineFrom([x, y + 0.8], [x + columnMm, y + 0.8], { 'stroke-width': 0.3 }),
  };
  return stack([named, ...more, rule], 0.6);
}
