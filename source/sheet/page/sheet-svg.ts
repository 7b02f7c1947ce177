import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import type { Point } from '../geometry/shape.ts';
import { element, fontFamily, lineFrom, palette, placed, round } from '../svg/element.ts';
import { bandDrawing, type Fills, patchFills } from '../svg/fills.ts';
import { escapeXml } from '../text.ts';
import {
  columnMm,
  marginMm,
  papers,
  type Sheet,
  type SheetOptions,
  type SheetPage,
  type Station,
  types,
} from './block.ts';
import { type Laid, paragraph, sideBySide, stack } from './laid.ts';
import { layBlock } from './lay-out.ts';
import { headerMm, sheetOf, stationOf, titleMm, titleSize } from './pages.ts';

/** The sheet as one SVG: pages of the paper that was asked for, below each other, text as text, nothing fetched. */
export function sheetSvg(plan: Plan, options: SheetOptions): string {
  const paper = papers[options.paper ?? 'a4'];
  const sheet = sheetOf(plan, options, paper.heightMm);
  return svgOfPages(sheet.title, options.words.language, paper, pagesOf(plan, sheet, options.words));
}

/** What is read before the work, of one bag among several: the names of its drawings' parts begin with `prefix`. */
export function deskPages(plan: Plan, options: SheetOptions, prefix: string): readonly SvgPage[] {
  const sheet = sheetOf(plan, options, papers[options.paper ?? 'a4'].heightMm);
  const desk = { ...sheet, pages: sheet.pages.filter(({ place }) => place === 'desk') };
  return pagesOf(plan, desk, options.words).map((page) => ({
    ...page,
    markupAt: (at) => page.markupAt(at).replace(/\bid="|url\(#/g, (begins) => `${begins}${prefix}`),
  }));
}

/** A page from its upper left corner. */
export interface SvgPage {
  readonly place: Station;
  readonly markupAt: (at: Point) => string;
}

const pagesOf = (plan: Plan, sheet: Sheet, words: Words): readonly SvgPage[] => {
  const fills = patchFills(plan);
  return sheet.pages.map((page, i) => {
    const laid = drawnPage(plan, sheet, page, i, words, fills);
    return {
      place: page.place,
      markupAt: (at) => (i === 0 ? fills.defs : '') + laid.draw(at),
    };
  });
};

export function svgOfPages(
  name: string,
  language: string,
  paper: { readonly widthMm: number; readonly heightMm: number },
  pages: readonly SvgPage[],
): string {
  const left = (paper.widthMm - columnMm) / 2;
  const heightMm = round(pages.length * paper.heightMm);
  const drawn = pages.map(({ place, markupAt }, i) => {
    const top = i * paper.heightMm;
    const ground = { x: 0, y: top, width: paper.widthMm, height: paper.heightMm, fill: palette.paper };
    return element(
      'g',
      { class: `page ${place}` },
      element('rect', ground) + markupAt([left, top + marginMm.top]),
    );
  });
  const attributes = {
    xmlns: 'http://www.w3.org/2000/svg',
    viewBox: `0 0 ${paper.widthMm} ${heightMm}`,
    width: `${paper.widthMm}mm`,
    height: `${heightMm}mm`,
    lang: language === 'en' ? null : language,
    'font-family': fontFamily,
  };
  const title = element('title', {}, escapeXml(name));
  return `<?xml version="1.0" encoding="UTF-8"?>\n${element('svg', attributes, title + drawn.join(''))}\n`;
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
