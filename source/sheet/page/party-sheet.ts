/** Several bags on one sheet: what they have in common and a box for each, then a page a bag. */
import type { Plan } from '../../planning/plan.ts';
import { css, element, palette, textAt } from '../svg/element.ts';
import { escapeMarkdown, escapeXml, plainText } from '../text.ts';
import { columnMm, marginMm, type Paper, papers, type SheetOptions, types } from './block.ts';
import { asManyAsFit, type Laid, paragraph, stack } from './laid.ts';
import { deskHtml, documentHtml } from './sheet-html.ts';
import { deskMarkdown } from './sheet-markdown.ts';
import { deskPages, type SvgPage, svgOfPages } from './sheet-svg.ts';

export interface PartySheet {
  /** Printed as it is given. */
  readonly date: string;
  readonly words: SheetOptions['words'];
  /** For SVG. */
  readonly paper: Paper;
  /** What the bags have in common, in lines. */
  readonly common: readonly string[];
  readonly bags: readonly { readonly plan: Plan; readonly options: SheetOptions }[];
}

export function partyHtml({ date, words, common, bags }: PartySheet): string {
  const { party } = words;
  const title = party.sheetTitle(bags.length);
  const boxes = bags.map(
    ({ plan }, i) =>
      `<label class="tick"><input type="checkbox" id="bag-${i + 1}"> <span dir="auto">${escapeXml(plainText(plan.brief.name))}</span></label>`,
  );
  const first = `<section class="page desk">
<header><h1>${escapeXml(title)}</h1>
<p class="lead"><span dir="auto">${escapeXml(plainText(date))}</span></p></header>
<pre>${escapeXml(common.join('\n'))}</pre>
<h2>${escapeXml(party.sheetTally)}</h2>
<p>${boxes.join('<br>\n')}</p>
</section>`;
  const pages = bags.map(({ plan, options }, i) => deskHtml(plan, options, `b${i + 1}-`));
  return documentHtml({
    words,
    title,
    keep: [title, date, ...bags.map(({ plan }) => plan.brief.name)].join(', '),
    body: `<main>\n${[first, ...pages].join('\n')}\n</main>`,
  });
}

export function partySvg({ date, words, common, bags, paper }: PartySheet): string {
  const { party, language } = words;
  const title = party.sheetTitle(bags.length);
  const { size, leading } = types.desk;
  const plain = { size, leading };
  const parts: readonly Laid[] = [
    paragraph(title, columnMm, { size: types.desk.title, leading: types.desk.title * 1.2, serif: true }),
    paragraph(plainText(date), columnMm, { ...plain, colour: palette.quiet }),
    ...common.map((line) => inColumns(line, leading)),
    paragraph(party.sheetTally, columnMm, { size: types.desk.heading, leading: 9, serif: true }),
    ...bags.map(({ plan }) => boxed(plainText(plan.brief.name), size)),
  ];
  const on = papers[paper];
  const first = asManyAsFit(parts, on.heightMm - 2 * marginMm.top, ({ heightMm }) => heightMm).map(
    (own): SvgPage => ({
      place: 'desk',
      markupAt: stack(own, 0).draw,
    }),
  );
  const own = bags.flatMap(({ plan, options }, i) => deskPages(plan, options, `b${i + 1}-`));
  return svgOfPages(title, language, on, [...first, ...own]);
}

/** A line whose words stand under those of other lines. */
const inColumns = (line: string, heightMm: number): Laid => ({
  heightMm,
  draw: ([x, y]) =>
    element(
      'g',
      { 'font-family': css`monospace` },
      textAt([x, y + heightMm * 0.8], line.replaceAll(' ', '\u00a0'), {
        size: Math.min(3, columnMm / (0.62 * Math.max(1, line.length))),
      }),
    ),
});

/** A box to tick when the bag is done, and its name. */
const boxed = (name: string, size: number): Laid => ({
  heightMm: 7.4,
  draw: ([x, y]) =>
    element('rect', {
      x: x + 0.2,
      y: y + 0.6,
      width: 6,
      height: 6,
      fill: 'none',
      stroke: palette.ink,
      'stroke-width': 0.35,
      class: 'box',
    }) + paragraph(name, columnMm - 10, { size, leading: 7.4 }).draw([x + 9, y]),
});

export function partyMarkdown({ date, words, common, bags }: PartySheet): string {
  const { party } = words;
  const boxes = bags.map(({ plan }) => `- [ ] ${escapeMarkdown(plainText(plan.brief.name))}`).join('\n');
  const head = [
    `# ${escapeMarkdown(party.sheetTitle(bags.length))}`,
    escapeMarkdown(plainText(date)),
    ['```', ...common, '```'].join('\n'),
    `## ${escapeMarkdown(party.sheetTally)}`,
    boxes,
  ];
  return [...head, ...bags.map(({ plan, options }) => deskMarkdown(plan, options))].join('\n\n');
}
