/** Several bags on one sheet: what they have in common and a box for each, then a page a bag. */
import type { Plan } from '../../planning/plan.ts';
import { escapeMarkdown, escapeXml, plainText } from '../text.ts';
import type { SheetOptions } from './block.ts';
import { deskHtml, documentHtml } from './sheet-html.ts';
import { deskMarkdown } from './sheet-markdown.ts';

export interface PartySheet {
  /** Printed as it is given. */
  readonly date: string;
  readonly words: SheetOptions['words'];
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
