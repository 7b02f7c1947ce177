import type { Plan } from '../../planning/plan.ts';
import type { Words } from '../../wording/words.ts';
import { bagDrawing } from '../svg/bag-drawing.ts';
import { bandDrawing, patchDrawing, patchFills } from '../svg/band-drawing.ts';
import { bedDrawing } from '../svg/bed-drawing.ts';
import { type Drawing, standalone } from '../svg/element.ts';
import { foldDrawing } from '../svg/fold-drawing.ts';
import { graftDiagram } from '../svg/graft-diagram.ts';
import { seamDiagram } from '../svg/seam-diagram.ts';
import { shapingDiagram } from '../svg/shaping-diagram.ts';
import { stripDrawing } from '../svg/strip-drawing.ts';
import { threadingDiagram } from '../svg/threading-diagram.ts';
import { escapeXml } from '../text.ts';
import { type Fact, type SheetContent, sheetContent } from './content.ts';
import type { Part } from './instructions.ts';
import type { SheetOptions } from './options.ts';
import { type Room, roomFor, titleSize } from './room.ts';
import { style } from './style.ts';

/** The sheet as one HTML file: nothing is fetched, nothing runs; it prints on A4 and on Letter. */
export function sheetHtml(plan: Plan, options: SheetOptions, words: Words): string {
  const content = sheetContent(plan, options, words);
  const room = roomFor(plan, content);
  return `<!doctype html>
<html lang="${words.language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${escapeXml(content.title)}</title>
<style>
${style}
</style>
</head>
<body>
${patchDefs(plan)}
${header(plan, content, words)}
<main>
${[
  hero(plan, content, room, words),
  yarnSection(plan, content, words),
  pictures(plan, room, words),
  bedSection(plan, room, words),
  content.blanks.length > 0 ? blanksSection(content.blanks, words) : notes(words),
  benchwork(plan, content, words),
  stripeList(plan, content, words),
  handwork(content, words),
  threading(plan, words),
]
  .filter((part) => part !== '')
  .join('\n')}
</main>
</body>
</html>
`;
}

/** The patterns of the small patches, once for the whole page. */
const patchDefs = (plan: Plan): string => {
  const { defs } = patchFills(plan);
  return defs === '' ? '' : `<svg class="defs" aria-hidden="true" width="0" height="0">${defs}</svg>`;
};

const figure = (drawing: Drawing, caption = ''): string =>
  `<figure>${standalone(drawing)}${caption === '' ? '' : `<figcaption>${escapeXml(caption)}</figcaption>`}</figure>`;

function header(plan: Plan, { title, date, lead }: SheetContent, words: Words): string {
  return `<header>
<h1 class="${titleSize(title).name}" dir="auto">${escapeXml(title)}</h1>
<p class="date" dir="auto">${escapeXml(date)}</p>
<p class="lead">${escapeXml(lead)}</p>
${figure(bandDrawing(plan, 182, 4.2, 'band', words))}
</header>`;
}

function hero(plan: Plan, { facts, remarks }: SheetContent, room: Room, words: Words): string {
  const warned =
    remarks.length > 0
      ? `<ul class="remarks">${remarks.map((remark) => `<li>${escapeXml(remark)}</li>`).join('')}</ul>`
      : '';
  return `<section class="hero">
${figure(bagDrawing(plan, { widthMm: 92, heightMm: room.bagMm }, words, 'bag'))}
<div>
<dl class="facts">${facts.map(({ label, value }) => `<div><dt>${escapeXml(label)}</dt><dd>${escapeXml(value)}</dd></div>`).join('')}</dl>
${warned}
</div>
</section>`;
}

function yarnSection(plan: Plan, { yarns, tools }: SheetContent, words: Words): string {
  const fills = patchFills(plan);
  const rows = yarns.map(({ name, mark, use, length, weight, have }) => {
    const patch = mark ? standalone(patchDrawing(fills, mark.yarn)) : '';
    return `<tr><td class="patch">${patch}</td><td class="letter">${escapeXml(mark?.letter ?? '')}</td><td class="name"><bdi>${escapeXml(name)}</bdi></td><td class="use">${use}</td><td class="figure">${length}</td><td class="figure">${weight}</td><td>${have}</td></tr>`;
  });
  return `<section>
<h2>${words.say`Yarn`}</h2>
<table>
<thead><tr><th colspan="2" scope="col">${words.say`Mark`}</th><th scope="col">${words.say`Yarn`}</th><th scope="col">${words.say`For`}</th><th scope="col" class="figure">${words.say`Needs`}</th><th scope="col" class="figure">${words.say`with 10 % more`}</th><th scope="col">${words.say`You have`}</th></tr></thead>
<tbody>
${rows.join('\n')}
</tbody>
</table>
<p class="tools">${escapeXml(tools)}</p>
</section>`;
}

const pictures = (plan: Plan, room: Room, words: Words): string => `<section class="pair">
<div><h2>${words.say`The strip`}</h2>${figure(stripDrawing(plan, { widthMm: 76, heightMm: room.stripMm + 2, id: 'strip' }, words))}</div>
<div><h2>${words.say`Folded and grafted`}</h2>${figure(foldDrawing(plan, { widthMm: 102, heightMm: room.stripMm }, 'fold', words))}</div>
</section>`;

const bedSection = (plan: Plan, { lanes }: Room, words: Words): string => `<section>
<h2>${words.say`On the bed`}</h2>
${figure(bedDrawing(plan, { widthMm: 182, lanes }, words))}
</section>`;

function partBody({ steps, caution }: Part, words: Words): string {
  const items = steps.map((step) => `<li>${escapeXml(step)}</li>`).join('');
  const mind =
    caution === null ? '' : `<p class="caution"><b>${words.say`Mind:`}</b> ${escapeXml(caution)}</p>`;
  return `<ol class="steps">${items}</ol>${mind}`;
}

const partSection = (part: Part, words: Words, drawing?: Drawing): string =>
  `<section><h2>${part.title}</h2>${drawing ? figure(drawing) : ''}${partBody(part, words)}</section>`;

const benchwork = (
  plan: Plan,
  { parts }: SheetContent,
  words: Words,
): string => `<div class="columns" id="bench">
${partSection(parts.start, words)}
${partSection(parts.stripes, words)}
<div>${partSection(parts.closing, words)}${figure(shapingDiagram(plan, words))}</div>
</div>`;

function stripeList(plan: Plan, { stripes, stripesNote }: SheetContent, words: Words): string {
  const fills = patchFills(plan);
  const items = stripes.map(({ number, mark, rows, edges, rehang }) => {
    const again = rehang === null ? '' : `<p class="again">${escapeXml(rehang)}</p>`;
    return `<li><label><input type="checkbox">${standalone(patchDrawing(fills, mark.yarn))}<span>${escapeXml(mark.letter)}</span><span class="number">${number}</span><span class="rows">${rows}</span><span class="edges">${edges}</span></label>${again}</li>`;
  });
  return `<div>
<h2>${words.say`Stripe by stripe`}</h2>
<p>${escapeXml(stripesNote)}</p>
<ol class="stripes${stripes.length > 33 ? ' many' : ''}">
${items.join('\n')}
</ol>
</div>`;
}

const handwork = ({ parts }: SheetContent, words: Words): string => `<div class="columns">
${partSection(parts.graft, words, graftDiagram(words))}
${partSection(parts.seam, words, seamDiagram(words))}
${partSection(parts.cord, words)}
</div>`;

const threading = (plan: Plan, words: Words): string => `<section>
<h2>${words.say`Threading`}</h2>
${figure(threadingDiagram(plan, 182, words))}
</section>`;

const notes = (words: Words): string =>
  `<section><h2>${words.say`Notes`}</h2><div class="notes"></div></section>`;

function blanksSection(blanks: readonly Fact[], words: Words): string {
  const rows = blanks.map(
    ({ label, value }) =>
      `<div><dt>${escapeXml(label)}</dt><dd class="blank"></dd>${value === '' ? '' : `<dd>${escapeXml(value)}</dd><dd class="blank"></dd>`}</div>`,
  );
  return `<section>
<h2>${words.say`My own swatch`} <small>${words.say`stitches and rows stay as on this sheet; another swatch gives a bag of another size`}</small></h2>
<dl class="blanks">${rows.join('')}</dl>
</section>`;
}
