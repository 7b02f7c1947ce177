import type { Plan } from '../../planning/plan.ts';
import { say } from '../../shared/say.ts';
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
export function sheetMarkdown(plan: Plan, options: SheetOptions): string {
  const { title, date, lead, facts, remarks, yarns, tools, stripes, stripesNote, parts, blanks } =
    sheetContent(plan, options);
  const look: DrawOptions = { columns: 72, rows: 26, colour: 'none', glyphs: 'ascii', units: options.units };
  const blocks = [
    `# ${escapeMarkdown(title)}`,
    `${escapeMarkdown(lead)}. ${escapeMarkdown(date)}`,
    list(remarks),
    `## ${say`Plan`}`,
    table(
      ['', ''],
      facts.map(({ label, value }) => [label, value]),
    ),
    `## ${say`Yarn`}`,
    table(
      [say`Mark`, say`Yarn`, say`For`, say`Needs`, say`With 10 % more`, say`You have`],
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
    `## ${say`The bag`}`,
    drawing(drawBag(plan, look)),
    `## ${say`The strip`}`,
    drawing(drawStrip(plan, { ...look, rows: 70, rowsDone: plan.rows })),
    `## ${say`Folded and grafted`}`,
    drawing(drawFold(plan, { ...look, rows: 18 })),
    `## ${say`On the bed`}`,
    drawing(drawBed(plan, look)),
    ...(blanks.length > 0 ? [`## ${say`My own swatch`}`, blankList(blanks)] : []),
    ...part(parts.start),
    ...part(parts.stripes),
    `## ${say`Stripe by stripe`}`,
    escapeMarkdown(stripesNote),
    stripes
      .map(({ number, mark, rows, edges, rehang }) => {
        const again = rehang === null ? '' : `; **${escapeMarkdown(rehang)}**`;
        return `- [ ] ${number} ${escapeMarkdown(mark.yarn)}: ${say`rows ${rows}`}, ${edges}${again}`;
      })
      .join('\n'),
    ...part(parts.closing),
    ...part(parts.graft),
    ...part(parts.seam),
    ...part(parts.cord),
    `## ${say`Notes`}`,
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

const part = ({ title, steps, caution }: Part): readonly string[] => [
  `## ${title}`,
  steps.map((step, i) => `${i + 1}. ${escapeMarkdown(step)}`).join('\n'),
  caution === null ? '' : `> **${say`Mind:`}** ${escapeMarkdown(caution)}`,
];

const blankList = (blanks: readonly Fact[]): string =>
  blanks
    .map(
      ({ label, value }) =>
        `- ${escapeMarkdown(label)}: \\_\\_\\_\\_\\_\\_ ${escapeMarkdown(value)}${value === '' ? '' : ' \\_\\_\\_\\_\\_\\_'}`,
    )
    .join('\n');
