import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { drawBag } from '../terminal/draw-bag.ts';
import { drawBed } from '../terminal/draw-bed.ts';
import { drawFold } from '../terminal/draw-fold.ts';
import { drawStrip } from '../terminal/draw-strip.ts';
import type { DrawOptions } from '../terminal/options.ts';
import { escapeMarkdown } from '../text.ts';
import { type Fact, sheetContent } from './content.ts';
import type { Part } from './instructions.ts';
import type { SheetOptions } from './options.ts';

/** The sheet as Markdown, its drawings in letters: task-list boxes for the stripes, tables for figures. */
export function sheetMarkdown(plan: Plan, options: SheetOptions, words: Words): string {
  const { title, date, lead, facts, remarks, yarns, tools, stripes, stripesNote, parts, blanks } =
    sheetContent(plan, options, words);
  const look: DrawOptions = { columns: 72, rows: 26, colour: 'none', glyphs: 'ascii' };
  const blocks = [
    `# ${escapeMarkdown(title)}`,
    `${escapeMarkdown(lead)}. ${escapeMarkdown(date)}`,
    list(remarks),
    `## ${words.say`Plan`}`,
    table(
      ['', ''],
      facts.map(({ label, value }) => [label, value]),
    ),
    `## ${words.say`Yarn`}`,
    table(
      [
        words.say`Mark`,
        words.say`Yarn`,
        words.say`For`,
        words.say`Needs`,
        words.say`With 10 % more`,
        words.say`You have`,
      ],
      yarns.map(({ mark, name, use, length, weight, have }) => [
        mark?.letter ?? '',
        name,
        use,
        length,
        weight,
        have,
      ]),
    ),
    escapeMarkdown(tools),
    `## ${words.say`The bag`}`,
    drawing(drawBag(plan, look, words)),
    `## ${words.say`The strip`}`,
    drawing(drawStrip(plan, { ...look, rows: 70, rowsDone: plan.rows }, words)),
    `## ${words.say`Folded and grafted`}`,
    drawing(drawFold(plan, { ...look, rows: 18 }, words)),
    `## ${words.say`On the bed`}`,
    drawing(drawBed(plan, look, words)),
    ...(blanks.length > 0 ? [`## ${words.say`My own swatch`}`, blankList(blanks)] : []),
    ...part(parts.start, words),
    ...part(parts.stripes, words),
    `## ${words.say`Stripe by stripe`}`,
    escapeMarkdown(stripesNote),
    stripes
      .map(({ number, mark, rows, edges, rehang }) => {
        const again = rehang === null ? '' : `; **${escapeMarkdown(rehang)}**`;
        return `- [ ] ${number} ${escapeMarkdown(mark.yarn)}: ${words.say`rows ${rows}`}, ${edges}${again}`;
      })
      .join('\n'),
    ...part(parts.closing, words),
    ...part(parts.graft, words),
    ...part(parts.seam, words),
    ...part(parts.cord, words),
    `## ${words.say`Notes`}`,
  ];
  return `${blocks.filter((block) => block !== '').join('\n\n')}\n`;
}

const list = (items: readonly string[]): string =>
  items.map((item) => `- ${escapeMarkdown(item)}`).join('\n');

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]): string => `| ${cells.map(escapeMarkdown).join(' | ')} |`;
  return [line(head), `|${' --- |'.repeat(head.length)}`, ...rows.map(line)].join('\n');
}

const drawing = (lines: readonly string[]): string => ['```text', ...lines, '```'].join('\n');

const part = ({ title, steps, caution }: Part, words: Words): readonly string[] => [
  `## ${title}`,
  steps.map((step, i) => `${i + 1}. ${escapeMarkdown(step)}`).join('\n'),
  caution === null ? '' : `> **${words.say`Mind:`}** ${escapeMarkdown(caution)}`,
];

const blankList = (blanks: readonly Fact[]): string =>
  blanks
    .map(
      ({ label, value }) =>
        `- ${escapeMarkdown(label)}: \\_\\_\\_\\_\\_\\_ ${escapeMarkdown(value)}${value === '' ? '' : ' \\_\\_\\_\\_\\_\\_'}`,
    )
    .join('\n');
