import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { bagDrawing } from '../svg/bag-drawing.ts';
import { bandDrawing, patchFills } from '../svg/band-drawing.ts';
import { bedDrawing } from '../svg/bed-drawing.ts';
import { type Drawing, element, fontFamily, lineFrom, palette } from '../svg/element.ts';
import { foldDrawing } from '../svg/fold-drawing.ts';
import { graftDiagram } from '../svg/graft-diagram.ts';
import { seamDiagram } from '../svg/seam-diagram.ts';
import { shapingDiagram } from '../svg/shaping-diagram.ts';
import { stripDrawing } from '../svg/strip-drawing.ts';
import { textWidth } from '../svg/text-width.ts';
import { threadingDiagram } from '../svg/threading-diagram.ts';
import { escapeXml } from '../text.ts';
import { type SheetContent, sheetContent } from './content.ts';
import type { Part } from './instructions.ts';
import type { SheetOptions } from './options.ts';
import { roomFor } from './room.ts';
import {
  type Block,
  heading,
  numbered,
  paginate,
  paragraph,
  picture,
  ruled,
  sideBySide,
  stack,
} from './svg-blocks.ts';
import { blankTable, factTable, stripeTables, yarnTable } from './svg-tables.ts';

const page = { widthMm: 210, heightMm: 297, sideMm: 14, topMm: 11 } as const;
const widthMm = page.widthMm - 2 * page.sideMm;
const gapMm = 4.5;
const mostStripeLines = 48;

/** The sheet as one SVG: A4 pages below each other, text as text, nothing fetched from outside. */
export function sheetSvg(plan: Plan, options: SheetOptions, words: Words): string {
  const content = sheetContent(plan, options, words);
  const pages = paginate(blocksOf(plan, content, words), page.heightMm - 2 * page.topMm, gapMm);
  const heightMm = pages.length * page.heightMm;
  const sheets = pages.map((blocks, i) => {
    const top = i * page.heightMm;
    return element(
      'g',
      { class: 'page' },
      element('rect', { x: 0, y: top, width: page.widthMm, height: page.heightMm, fill: palette.paper }) +
        stack(blocks, gapMm).draw([page.sideMm, top + page.topMm]),
    );
  });
  const title = element('title', {}, escapeXml(content.title));
  const attributes = {
    xmlns: 'http://www.w3.org/2000/svg',
    viewBox: `0 0 ${page.widthMm} ${heightMm}`,
    width: `${page.widthMm}mm`,
    height: `${heightMm}mm`,
    lang: words.language === 'en' ? null : words.language,
    'font-family': fontFamily,
  };
  return `<?xml version="1.0" encoding="UTF-8"?>\n${element('svg', attributes, title + patchFills(plan).defs + sheets.join(''))}\n`;
}

function blocksOf(plan: Plan, content: SheetContent, words: Words): readonly Block[] {
  const { parts, blanks, stripes } = content;
  const room = roomFor(plan, content);
  const fills = patchFills(plan);
  const [firstStripes, ...moreStripes] = stripeTables(fills, stripes, widthMm, mostStripeLines);
  return [
    header(plan, content, words),
    hero(content, bagDrawing(plan, { widthMm: 88, heightMm: room.bagMm }, words, 'bag')),
    stack(
      [
        heading(words.say`Yarn`, widthMm),
        yarnTable(fills, content.yarns, widthMm, words),
        paragraph(content.tools, widthMm, { colour: palette.quiet }),
      ],
      1,
    ),
    sideBySide([
      [
        0,
        stack(
          [
            heading(words.say`The strip`, 70),
            picture(stripDrawing(plan, { widthMm: 74, heightMm: room.stripMm + 2, id: 'strip' }, words)),
          ],
          1,
        ),
      ],
      [
        80,
        stack(
          [
            heading(words.say`Folded and grafted`, 100),
            picture(foldDrawing(plan, { widthMm: 102, heightMm: room.stripMm }, 'fold', words)),
          ],
          1,
        ),
      ],
    ]),
    stack(
      [
        heading(words.say`On the bed`, widthMm),
        picture(bedDrawing(plan, { widthMm, lanes: room.lanes }, words)),
      ],
      1,
    ),
    blanks.length > 0
      ? stack([heading(words.say`My own swatch`, widthMm), blankTable(blanks, widthMm)], 1)
      : notes(words),
    sideBySide([
      [0, part(parts.start, 48, words)],
      [53, part(parts.stripes, 71, words)],
      [129, stack([part(parts.closing, 53, words), picture(shapingDiagram(plan, words))], 2)],
    ]),
    stack(
      [
        heading(words.say`Stripe by stripe`, widthMm),
        paragraph(content.stripesNote, widthMm),
        ...(firstStripes ? [firstStripes] : []),
      ],
      1,
    ),
    ...moreStripes,
    sideBySide([
      [0, part(parts.graft, 58, words, graftDiagram(words))],
      [62, part(parts.seam, 58, words, seamDiagram(words))],
      [124, part(parts.cord, 58, words)],
    ]),
    stack([heading(words.say`Threading`, widthMm), picture(threadingDiagram(plan, widthMm, words))], 0.5),
  ];
}

function header(plan: Plan, { title, date, lead }: SheetContent, words: Words): Block {
  const length = textWidth(title, 1);
  const size = [9.5, 6.6, 4.9].find((choice) => length * choice <= widthMm * 1.6) ?? 4;
  const dateMm = Math.min(60, textWidth(date, 2.85));
  return stack(
    [
      paragraph(title, widthMm, { size, serif: true }),
      sideBySide([
        [0, paragraph(lead, widthMm - dateMm - 6, { colour: palette.quiet })],
        [widthMm - dateMm, paragraph(date, dateMm, { colour: palette.quiet })],
      ]),
      picture(bandDrawing(plan, widthMm, 4.2, 'band', words)),
    ],
    1.2,
  );
}

function hero({ facts, remarks }: SheetContent, bag: Drawing): Block {
  const left = bag.widthMm + 6;
  const besideMm = widthMm - left;
  const warned = remarks.map((remark) => ruled(remark, besideMm));
  return sideBySide([
    [0, picture(bag)],
    [left, stack([factTable(facts, besideMm), ...warned], 1.6)],
  ]);
}

function part({ title, steps, caution }: Part, wide: number, words: Words, drawing?: Drawing): Block {
  return stack(
    [
      heading(title, wide),
      ...(drawing ? [picture(drawing)] : []),
      ...steps.map((step, i) => numbered(i + 1, step, wide)),
      ...(caution === null ? [] : [ruled(`${words.say`Mind:`} ${caution}`, wide)]),
    ],
    0.9,
  );
}

const notes = (words: Words): Block => ({
  heightMm: 20,
  draw: ([x, y]) =>
    heading(words.say`Notes`, widthMm).draw([x, y]) +
    [6, 13, 20]
      .map((down) => lineFrom([x, y + down + 0.5], [x + widthMm, y + down + 0.5], { stroke: '#b5aea2' }))
      .join(''),
});
