import type { Plan } from '../../planning/plan.ts';
import { escapeMarkdown } from '../text.ts';
import type { Blank, Block, Item, Sheet, SheetOptions, Station, YarnRow } from './block.ts';
import { sheetOf } from './pages.ts';
import type { StripeLines } from './stripe-lines.ts';

/** The sheet as Markdown, its drawings in letters: task-list boxes for the stripes, tables for figures. All its pages are one. */
export const sheetMarkdown = (plan: Plan, options: SheetOptions): string =>
  markdownOf(sheetOf(plan, options, Number.POSITIVE_INFINITY), options);

/** What is read before the work, of one bag among several. */
export function deskMarkdown(plan: Plan, options: SheetOptions): string {
  const sheet = sheetOf(plan, options, Number.POSITIVE_INFINITY);
  return markdownOf({ ...sheet, pages: sheet.pages.filter(({ place }) => place === 'desk') }, options);
}

function markdownOf(sheet: Sheet, options: SheetOptions): string {
  const { words } = options;
  const placeOf = (place: Station): string => `## ${escapeMarkdown(words.sheet.places[place])}`;
  const pages = sheet.pages.flatMap(({ place, blocks }, i) => [
    ...(sheet.pages[i - 1]?.place === place ? [] : [placeOf(place)]),
    ...blocks.flatMap((block) => blockText(block)),
  ]);
  return `${[...head(sheet), escapeMarkdown(words.sheet.leftAndRight), ...pages].filter((text) => text !== '').join('\n\n')}\n`;
}

const head = ({ title, lead, date }: Sheet): readonly string[] => [
  `# ${escapeMarkdown(title)}`,
  `${escapeMarkdown(lead)}. ${escapeMarkdown(date)}`,
];

function blockText(block: Block): readonly string[] {
  switch (block.kind) {
    case 'heading':
      return [`### ${escapeMarkdown(block.text)}`, ...(block.note ? [escapeMarkdown(block.note)] : [])];
    case 'text':
      return [escapeMarkdown(block.text)];
    case 'ruled':
      return [`> ${escapeMarkdown(block.text)}`];
    case 'steps':
      return [numbered(block.items, block.mind)];
    case 'run':
      return [
        ...(block.head === null ? [] : [`### ${escapeMarkdown(block.head)}`]),
        block.items.length > 1
          ? numbered(block.items, block.mind)
          : escapeMarkdown(block.items[0]?.text ?? ''),
      ];
    case 'terms':
      return [
        block.terms
          .map(([word, means]) => `- **${escapeMarkdown(word)}**: ${escapeMarkdown(means)}`)
          .join('\n'),
      ];
    case 'figure':
      return [figureText(block)];
    case 'numbers':
      return [
        block.numbers
          .map(({ value, of }) => `- **${escapeMarkdown(value)}** ${escapeMarkdown(of)}`)
          .join('\n'),
      ];
    case 'facts':
      return [
        table(
          ['', ''],
          block.facts.map(({ label, value }) => [label, value]),
        ),
      ];
    case 'yarns':
      return [table(block.titles, block.rows.map(yarnCells))];
    case 'stripes':
      return [block.columns.flat().map(stripeText).join('\n')];
    case 'blanks':
      return [block.blanks.map(blankText).join('\n')];
    case 'register':
      return [
        table(
          block.titles,
          Array.from({ length: block.count }, () => block.titles.map(() => '')),
        ),
      ];
    case 'lines':
      return [];
    case 'beside':
      return block.parts.flatMap(({ blocks }) => blocks.flatMap((one) => blockText(one)));
    case 'together':
      return block.blocks.flatMap((one) => blockText(one));
  }
}

function figureText({ drawing, plain }: Block & { kind: 'figure' }): string {
  const lines = plain();
  return lines.length > 0 ? ['```text', ...lines, '```'].join('\n') : `*${escapeMarkdown(drawing.title)}*`;
}

const numbered = (items: readonly Item[], word: string): string =>
  items
    .map(({ text, mind }, i) => {
      const caution = mind === null ? '' : ` **${escapeMarkdown(`${word} ${mind}`)}**`;
      return `${i + 1}. ${escapeMarkdown(text)}${caution}`;
    })
    .join('\n');

const yarnCells = ({ sign, name, use, length, weight, have }: YarnRow): readonly string[] => [
  sign?.letter ?? '',
  name,
  use,
  length,
  weight,
  have,
];

/** Lines of one stripe are joined by semicolons. */
function stripeText({ number, sign, lines, notes }: StripeLines): string {
  const rows = lines.map(({ rows: text, edges }) => `${text} → ${edges}`).join('; ');
  const noted = notes.map((note) => `; **${escapeMarkdown(note)}**`).join('');
  return `- [ ] ${number} ${escapeMarkdown(sign.yarn)}: ${escapeMarkdown(rows)}${noted}`;
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string => `| ${cells.map(escapeMarkdown).join(' | ')} |`;
  return [line(head), `|${' --- |'.repeat(head.length)}`, ...rows.map(line)].join('\n');
}

const line = '\\_\\_\\_\\_\\_\\_';
const blankText = ({ label, value, isSum }: Blank): string =>
  `- ${[`${escapeMarkdown(label)}:`, ...(isSum ? [] : [line]), ...(value === '' ? [] : [escapeMarkdown(value), line])].join(' ')}`;
