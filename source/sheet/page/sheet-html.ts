import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { type Drawing, standalone } from '../svg/element.ts';
import { bandDrawing, chipDrawing, type Fills, patchDrawing, patchFills } from '../svg/fills.ts';
import { escapeXml } from '../text.ts';
import {
  type Across,
  type Blank,
  type Block,
  type Item,
  papers,
  type Sheet,
  type SheetOptions,
  type SheetPage,
  type YarnRow,
} from './block.ts';
import { piecesOf } from './lay-out.ts';
import { sheetOf, stationOf, titleSize } from './pages.ts';
import type { StripeLines } from './stripe-lines.ts';
import { style } from './style.ts';

/** What the painting of a block needs beside the block. */
interface Paint {
  readonly words: Words;
  readonly fills: Fills;
}

/**
 * The sheet as one HTML file: nothing is fetched, and all that runs keeps the ticks. Its pages are those of Letter, the shorter
 * paper, and no wider than A4, the narrower, so it prints on either.
 */
export function sheetHtml(plan: Plan, options: SheetOptions): string {
  const { words } = options;
  const sheet = sheetOf(plan, options, papers.letter.heightMm);
  const paint: Paint = { words, fills: patchFills(plan) };
  const keep = `${sheet.title}, ${plan.stitches} × ${plan.rows}, ${sheet.date}`;
  const pages = sheet.pages.map((page, i) => pageHtml(plan, sheet, page, i, paint));
  return documentHtml({
    words,
    title: sheet.title,
    keep,
    body: `${patchDefs(paint.fills)}<main>\n${pages.join('\n')}\n</main>`,
  });
}

interface HtmlDocument {
  readonly words: Words;
  readonly title: string;
  /** Under which ticks are kept. */
  readonly keep: string;
  readonly body: string;
}

/** A file by itself: nothing is fetched, and all that runs keeps the ticks. */
export const documentHtml = ({ words, title, keep, body }: HtmlDocument): string => `<!doctype html>
<html lang="${words.language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; script-src '${ticksHash}'">
<title>${escapeXml(title)}</title>
<style>
${style}
</style>
</head>
<body data-keep="${escapeXml(keep)}">
${body}
<script>${ticksScript}</script>
</body>
</html>
`;

/** What is read before the work, of one bag among several: the names of its drawings' parts begin with `prefix`. */
export function deskHtml(plan: Plan, options: SheetOptions, prefix: string): string {
  const sheet = sheetOf(plan, options, papers.letter.heightMm);
  const paint: Paint = { words: options.words, fills: patchFills(plan) };
  const desk = sheet.pages.filter(({ place }) => place === 'desk');
  const own = { ...sheet, pages: desk };
  const html = `${patchDefs(paint.fills)}${desk.map((page, i) => pageHtml(plan, own, page, i, paint)).join('\n')}`;
  return html.replace(/\bid="|url\(#|href="#/g, (begins) => `${begins}${prefix}`);
}

/** The patterns of the small patches, once for the whole page. */
const patchDefs = ({ defs }: Fills): string =>
  defs === '' ? '' : `<svg class="defs" aria-hidden="true" width="0" height="0">${defs}</svg>\n`;

function pageHtml(plan: Plan, sheet: Sheet, page: SheetPage, index: number, paint: Paint): string {
  const { words } = paint;
  const { size } = titleSize(sheet.title, page.place);
  const named = `class="title ${sizeName(size)}" dir="auto">${escapeXml(sheet.title)}`;
  const title = index === 0 ? `<h1 ${named}</h1>` : `<p ${named}</p>`;
  const lead =
    index === 0
      ? `<p class="lead">${escapeXml(sheet.lead)} · <span dir="auto">${escapeXml(sheet.date)}</span></p>\n${figure(bandDrawing(plan, words.sheet, 182, 4.2, 'band'))}`
      : '';
  return `<section class="page ${page.place}">
<header>
${title}
<p class="place"><b>${escapeXml(stationOf(sheet.pages, index, words.sheet))}</b> · ${escapeXml(words.sheet.page(index + 1, sheet.pages.length))}<br>${escapeXml(words.sheet.leftAndRight)}</p>
${lead}</header>
${page.blocks.map((block) => blockHtml(block, paint)).join('\n')}
</section>`;
}

/** A class for each size a title may have, in tenths of a millimetre. */
const sizeName = (size: number): string => `t${Math.round(size * 10)}`;

function blockHtml(block: Block, paint: Paint): string {
  switch (block.kind) {
    case 'heading':
      return `<h2>${escapeXml(block.text)}${block.note ? ` <small>${escapeXml(block.note)}</small>` : ''}</h2>`;
    case 'text':
      return `<p${block.quiet ? ' class="quiet"' : ''}>${escapeXml(block.text)}</p>`;
    case 'ruled':
      return `<p class="ruled">${escapeXml(block.text)}</p>`;
    case 'steps':
      return `<ol class="steps">${block.items.map((item) => itemHtml(item, block.mind)).join('')}</ol>`;
    case 'run':
      return `<p class="run">${piecesOf(block)
        .map(({ text, bold }) => (bold ? `<b>${escapeXml(text)}</b>` : escapeXml(text)))
        .join(' ')}</p>`;
    case 'terms':
      return `<dl class="terms">${block.terms.map(([word, means]) => pairHtml(`${word}:`, means)).join('')}</dl>`;
    case 'figure':
      return figure(block.drawing);
    case 'numbers':
      return `<dl class="numbers">${block.numbers.map(({ value, of }) => `<div><dt>${escapeXml(value)}</dt><dd>${escapeXml(of)}</dd></div>`).join('')}</dl>`;
    case 'facts':
      return `<dl class="facts">${block.facts.map(({ label, value }) => pairHtml(label, value)).join('')}</dl>`;
    case 'yarns':
      return yarnTable(block.titles, block.rows, paint);
    case 'stripes':
      return stripeLists(block.columns, block.across, paint);
    case 'blanks':
      return blanksHtml(block.blanks);
    case 'register':
      return registerHtml(block.titles, block.count);
    case 'lines':
      return `<div class="lines">${'<hr>'.repeat(block.count)}</div>`;
    case 'beside':
      return besideHtml(block, paint);
    case 'together':
      return `<section class="together">${block.blocks.map((one) => blockHtml(one, paint)).join('\n')}</section>`;
  }
}

const pairHtml = (term: string, means: string): string =>
  `<div><dt>${escapeXml(term)}</dt> <dd>${escapeXml(means)}</dd></div>`;

const itemHtml = ({ text, mind }: Item, word: string): string =>
  `<li>${escapeXml(text)}${mind === null ? '' : `<span class="ruled mind"><b>${escapeXml(word)}</b> ${escapeXml(mind)}</span>`}</li>`;

const figure = (drawing: Drawing): string => `<figure>${standalone(drawing)}</figure>`;

const besideHtml = ({ parts, even }: Block & { kind: 'beside' }, paint: Paint): string =>
  `<div class="beside${even ? ' even' : ''}">${parts
    .map(({ blocks }) => `<div>${blocks.map((one) => blockHtml(one, paint)).join('\n')}</div>`)
    .join('\n')}</div>`;

function yarnTable(
  [sign = '', ...titles]: readonly string[],
  rows: readonly YarnRow[],
  { fills }: Paint,
): string {
  const isFigure = (column: number): boolean => column === 2 || column === 3;
  const body = rows.map((row) => {
    const patch = row.sign ? standalone(patchDrawing(fills, row.sign.yarn)) : '';
    const cells = [row.use, row.length, row.weight, row.have];
    return `<tr><td class="patch">${patch}</td><td class="letter">${escapeXml(row.sign?.letter ?? '')}</td><td class="name"><bdi>${escapeXml(row.name)}</bdi></td>${cells.map((cell) => `<td>${escapeXml(cell)}</td>`).join('')}</tr>`;
  });
  return `<table>
<thead><tr><th colspan="2" scope="col">${escapeXml(sign)}</th>${titles.map((title, i) => `<th scope="col"${isFigure(i) ? ' class="short"' : ''}>${escapeXml(title)}</th>`).join('')}</tr></thead>
<tbody>
${body.join('\n')}
</tbody>
</table>`;
}

function stripeLists(columns: readonly (readonly StripeLines[])[], across: Across, { words }: Paint): string {
  const lists = columns.map(
    (stripes) =>
      `<ol class="stripes" start="${stripes[0]?.number ?? 1}">\n${stripes.map((stripe) => stripeHtml(stripe)).join('\n')}\n</ol>`,
  );
  const { ticksKept, ticksNotKept } = words.sheet;
  return `<p class="ticks" data-kept="${escapeXml(ticksKept)}">${escapeXml(ticksNotKept)}</p>
<div class="stripe-columns a${across}">${lists.join('\n')}</div>`;
}

function stripeHtml({ number, sign, lines, notes }: StripeLines): string {
  const written = lines
    .map(
      ({ rows, edges }) =>
        `<span class="rows">${escapeXml(rows)}</span><span class="edges">${escapeXml(edges)}</span>`,
    )
    .join('');
  const noted = notes.map((note) => `<p class="note">${escapeXml(note)}</p>`).join('');
  return `<li><label><input type="checkbox" id="stripe-${number}">${standalone(chipDrawing(sign))}<span class="number">${number}</span>${written}</label>${noted}</li>`;
}

const registerHtml = (titles: readonly string[], count: number): string =>
  `<table class="register"><thead><tr>${titles.map((title) => `<th scope="col">${escapeXml(title)}</th>`).join('')}</tr></thead>
<tbody>${`<tr>${'<td></td>'.repeat(titles.length)}</tr>`.repeat(count)}</tbody></table>`;

const blanksHtml = (blanks: readonly Blank[]): string =>
  `<dl class="blanks">${blanks
    .map(({ label, value, isSum }) => {
      const line = '<dd class="blank"></dd>';
      const then = value === '' ? '' : `<dd>${escapeXml(value)}</dd>`;
      return `<div><dt>${escapeXml(label)}</dt>${isSum ? '' : line}${then}${value === '' ? '' : line}</div>`;
    })
    .join('')}</dl>`;

/**
 * Keeps the ticks of the stripes in the page's own storage, where the browser has one to give, and says so; else the page says
 * that they are not kept. The page lets nothing run but this text, which it names by its sum (W3C Content Security Policy).
 */

/** Marks what a browser runs, which is not for the maker to read. */
const script = String.raw;

export const ticksScript = script`(() => {
  const boxes = [...document.querySelectorAll('ol.stripes input')];
  const key = 'ticks of ' + document.body.dataset.keep;
  try {
    const ticked = new Set(JSON.parse(localStorage.getItem(key) || '[]'));
    for (const box of boxes) {
      box.checked = ticked.has(box.id);
      box.addEventListener('change', () => {
        localStorage.setItem(key, JSON.stringify(boxes.filter((one) => one.checked).map((one) => one.id)));
      });
    }
    localStorage.setItem(key, JSON.stringify([...ticked]));
    for (const note of document.querySelectorAll('.ticks')) note.textContent = note.dataset.kept;
  } catch {
    // No storage here: the page says so already.
  }
})();`;

/** SHA-256 of the script, in base64; a test works it out again. */
export const ticksHash = 'sha256-xtMFe0sMcs4rBRKwbAIzYdRcDD8jAdADVcifzGXci0g=';
