/**
 * A gift tag to cut out: the bag's picture, its name, fibre and care in the maker's own words, the date; where the maker gave
 * none there are lines to write on. Beside it stands a note for the giver on cord and small children, not to be cut out.
 */
import type { Plan } from '../../planning/plan.ts';
import { layOutJob, stepAt } from '../../steps/job.ts';
import type { Point } from '../geometry/shape.ts';
import { bagDrawing } from '../svg/bag-drawing.ts';
import { css, type Drawing, element, lineFrom, palette, placed, standalone, textAt } from '../svg/element.ts';
import { escapeMarkdown, escapeXml, plainText } from '../text.ts';
import type { SheetOptions } from './block.ts';
import { type Laid, paragraph, sizeFor, stack } from './laid.ts';

export interface TagOptions extends SheetOptions {
  /** As the maker gave them; null leaves a line. */
  readonly fibre: string | null;
  readonly care: string | null;
}

const card = { widthMm: 56, heightMm: 96, inset: 5, hole: 2.2 } as const;
const small = { size: 2.9, leading: 3.8 } as const;
const pageMm = { width: 150, height: card.heightMm + 12 } as const;

/** The card and the note beside it. */
function tagDrawing(plan: Plan, options: TagOptions): Drawing {
  const { words } = options;
  const { tag } = words.sheet;
  const beside = card.widthMm + 14;
  const width = pageMm.width - beside - 4;
  const note = stack(
    [
      paragraph(tag.giver, width, { size: 4.4, leading: 5.6, serif: true }),
      paragraph(noteOf(plan, options), width, { ...small, size: 3.2, leading: 4.3 }),
      paragraph(tag.cut, width, { ...small, colour: palette.quiet }),
    ],
    2,
  );
  return {
    widthMm: pageMm.width,
    heightMm: Math.max(pageMm.height, note.heightMm + 12),
    title: `${tag.title}: ${plainText(options.name ?? plan.brief.name)}`,
    body: front(plan, options, [6, 6]) + note.draw([beside, 8]),
  };
}

/** For whoever gives the bag away: that it is no toy, and the bench's caution at the bow. */
function noteOf(plan: Plan, { words, cautionOf }: TagOptions): string {
  const job = layOutJob(plan);
  return [words.sheet.tag.noToy, cautionOf(stepAt(job, job.stepCount)) ?? ''].join(' ').trim();
}

function front(plan: Plan, options: TagOptions, [x, y]: Point): string {
  const { words } = options;
  const width = card.widthMm - 2 * card.inset;
  const name = plainText(options.name ?? plan.brief.name);
  const size = sizeFor(name, width, 2, [5.4, 4.2, 3.4, 2.9]);
  const bag = bagDrawing(plan, words, { widthMm: 40, heightMm: 38, id: 'tag', bare: true });
  const rows = stack(
    [
      paragraph(name, width, { size, leading: size * 1.2, serif: true }),
      paragraph(words.sheet.tag.size(plan.size.widthCm, plan.size.depthCm), width, small),
      ...fieldsOf(options).map(([label, value]) => field(label, value, width)),
    ],
    1.2,
  );
  const outline = element('rect', {
    x,
    y,
    width: card.widthMm,
    height: Math.max(card.heightMm, rows.heightMm + 56),
    rx: 2,
    fill: palette.paper,
    stroke: palette.ink,
    'stroke-width': 0.3,
    'stroke-dasharray': '2 1.4',
    class: 'cut',
  });
  const hole = element('circle', {
    cx: x + card.widthMm / 2,
    cy: y + 6,
    r: card.hole,
    fill: 'none',
    stroke: palette.ink,
    'stroke-width': 0.3,
  });
  const picture = placed(bag, [x + (card.widthMm - bag.widthMm) / 2, y + 11]);
  return outline + hole + picture + rows.draw([x + card.inset, y + 53]);
}

const fieldsOf = ({
  words,
  fibre,
  care,
  date,
}: TagOptions): readonly (readonly [string, string | null])[] => [
  [words.sheet.tag.fibre, fibre],
  [words.sheet.tag.care, care],
  [words.sheet.tag.made, date],
];

/** What it is, and the maker's words or a line for them. */
function field(label: string, value: string | null, widthMm: number): Laid {
  if (value !== null) return paragraph(`${label}: ${plainText(value)}`, widthMm, small);
  return {
    heightMm: 6,
    draw: ([x, y]) =>
      textAt([x, y + 4.6], `${label}:`, { size: small.size }) +
      lineFrom([x + 15, y + 5], [x + widthMm, y + 5], { 'stroke-width': 0.25 }),
  };
}

export const tagSvg = (plan: Plan, options: TagOptions): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n${standalone(tagDrawing(plan, options))}\n`;

export function tagHtml(plan: Plan, options: TagOptions): string {
  const drawing = tagDrawing(plan, options);
  return `<!doctype html>
<html lang="${options.words.language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${escapeXml(drawing.title)}</title>
<style>
${tagStyle}
</style>
</head>
<body>
<main>${standalone(drawing)}</main>
</body>
</html>
`;
}

const tagStyle = css`
@page { margin: 11mm 14mm; }
:root { color-scheme: light dark; }
body { margin: 4mm; background: ${palette.paper}; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
main { overflow-x: auto; } svg { display: block; max-width: none; }
@media screen and (prefers-color-scheme: dark) { body { background: #1b1a18; } main { background: #f7f4ee; border-radius: 2mm; width: fit-content; max-width: 100%; } }
`.trim();

/** In Markdown the words alone. */
export function tagMarkdown(plan: Plan, options: TagOptions): string {
  const { words } = options;
  const lines = fieldsOf(options).map(
    ([label, value]) =>
      `- ${escapeMarkdown(label)}: ${value === null ? '\\_\\_\\_\\_\\_\\_' : escapeMarkdown(value)}`,
  );
  return [
    `# ${escapeMarkdown(plainText(options.name ?? plan.brief.name))}`,
    escapeMarkdown(words.sheet.tag.size(plan.size.widthCm, plan.size.depthCm)),
    lines.join('\n'),
    `> **${escapeMarkdown(words.sheet.tag.giver)}** ${escapeMarkdown(noteOf(plan, options))}`,
    '',
  ].join('\n\n');
}
