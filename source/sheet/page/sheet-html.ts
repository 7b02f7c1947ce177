import type { Plan } from '../../planning/plan.ts';
import { languageCode, say } from '../../shared/say.ts';
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
export function sheetHtml(plan: Plan, options: SheetOptions): string {
  const content = sheetContent(plan, options);
  const room = roomFor(plan, content);
  return `<!doctype html>
<html lang="${languageCode()}">
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
${header(plan, content)}
<main>
${[
  hero(plan, content, options, room),
  yarnSection(plan, content),
  pictures(plan, options, room),
  bedSection(plan, room),
  content.blanks.length > 0 ? blanksSection(content.blanks) : notes(),
  benchwork(plan, content),
  stripeList(plan, content),
  handwork(content),
  threading(plan),
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

function header(plan: Plan, { title, date, lead }: SheetContent): string {
  return `<header>
<h1 class="${titleSize(title).name}" dir="auto">${escapeXml(title)}</h1>
<p class="date" dir="auto">${escapeXml(date)}</p>
<p class="lead">${escapeXml(lead)}</p>
${figure(bandDrawing(plan, 182, 4.2, 'band'))}
</header>`;
}

function hero(plan: Plan, { facts, remarks }: SheetContent, { units }: SheetOptions, room: Room): string {
  const warned =
    remarks.length > 0
      ? `<ul class="remarks">${remarks.map((remark) => `<li>${escapeXml(remark)}</li>`).join('')}</ul>`
      : '';
  return `<section class="hero">
${figure(bagDrawing(plan, { widthMm: 92, heightMm: room.bagMm }, units, 'bag'))}
<div>
<dl class="facts">${facts.map(({ label, value }) => `<div><dt>${escapeXml(label)}</dt><dd>${escapeXml(value)}</dd></div>`).join('')}</dl>
${warned}
</div>
</section>`;
}

function yarnSection(plan: Plan, { yarns, tools }: SheetContent): string {
  const fills = patchFills(plan);
  const rows = yarns.map(({ name, mark, use, length, weight, have }) => {
    const patch = mark ? standalone(patchDrawing(fills, mark.yarn)) : '';
    return `<tr><td class="patch">${patch}</td><td class="letter">${escapeXml(mark?.letter ?? '')}</td><td class="name"><bdi>${escapeXml(name)}</bdi></td><td class="use">${use}</td><td class="figure">${length}</td><td class="figure">${weight}</td><td>${have}</td></tr>`;
  });
  return `<section>
<h2>${say`Yarn`}</h2>
<table>
<thead><tr><th colspan="2" scope="col">${say`Mark`}</th><th scope="col">${say`Yarn`}</th><th scope="col">${say`For`}</th><th scope="col" class="figure">${say`Needs`}</th><th scope="col" class="figure">${say`with 10 % more`}</th><th scope="col">${say`You have`}</th></tr></thead>
<tbody>
${rows.join('\n')}
</tbody>
</table>
<p class="tools">${escapeXml(tools)}</p>
</section>`;
}

const pictures = (plan: Plan, { units }: SheetOptions, room: Room): string => `<section class="pair">
<div><h2>${say`The strip`}</h2>${figure(stripDrawing(plan, { widthMm: 76, heightMm: room.stripMm + 2, units, id: 'strip' }))}</div>
<div><h2>${say`Folded and grafted`}</h2>${figure(foldDrawing(plan, { widthMm: 102, heightMm: room.stripMm }, 'fold'))}</div>
</section>`;

const bedSection = (plan: Plan, { lanes }: Room): string => `<section>
<h2>${say`On the bed`}</h2>
${figure(bedDrawing(plan, { widthMm: 182, lanes }))}
</section>`;

function partBody({ steps, caution }: Part): string {
  const items = steps.map((step) => `<li>${escapeXml(step)}</li>`).join('');
  const mind = caution === null ? '' : `<p class="caution"><b>${say`Mind:`}</b> ${escapeXml(caution)}</p>`;
  return `<ol class="steps">${items}</ol>${mind}`;
}

const partSection = (part: Part, drawing?: Drawing): string =>
  `<section><h2>${part.title}</h2>${drawing ? figure(drawing) : ''}${partBody(part)}</section>`;

const benchwork = (plan: Plan, { parts }: SheetContent): string => `<div class="columns" id="bench">
${partSection(parts.start)}
${partSection(parts.stripes)}
<div>${partSection(parts.closing)}${figure(shapingDiagram(plan))}</div>
</div>`;

function stripeList(plan: Plan, { stripes, stripesNote }: SheetContent): string {
  const fills = patchFills(plan);
  const items = stripes.map(({ number, mark, rows, edges, rehang }) => {
    const again = rehang === null ? '' : `<p class="again">${escapeXml(rehang)}</p>`;
    return `<li><label><input type="checkbox">${standalone(patchDrawing(fills, mark.yarn))}<span>${escapeXml(mark.letter)}</span><span class="number">${number}</span><span class="rows">${rows}</span><span class="edges">${edges}</span></label>${again}</li>`;
  });
  return `<div>
<h2>${say`Stripe by stripe`}</h2>
<p>${escapeXml(stripesNote)}</p>
<ol class="stripes${stripes.length > 33 ? ' many' : ''}">
${items.join('\n')}
</ol>
</div>`;
}

const handwork = ({ parts }: SheetContent): string => `<div class="columns">
${partSection(parts.graft, graftDiagram())}
${partSection(parts.seam, seamDiagram())}
${partSection(parts.cord)}
</div>`;

const threading = (plan: Plan): string => `<section>
<h2>${say`Threading`}</h2>
${figure(threadingDiagram(plan, 182))}
</section>`;

const notes = (): string => `<section><h2>${say`Notes`}</h2><div class="notes"></div></section>`;

function blanksSection(blanks: readonly Fact[]): string {
  const rows = blanks.map(
    ({ label, value }) =>
      `<div><dt>${escapeXml(label)}</dt><dd class="blank"></dd>${value === '' ? '' : `<dd>${escapeXml(value)}</dd><dd class="blank"></dd>`}</div>`,
  );
  return `<section>
<h2>${say`My own swatch`} <small>${say`stitches and rows stay as on this sheet; another swatch gives a bag of another size`}</small></h2>
<dl class="blanks">${rows.join('')}</dl>
</section>`;
}
