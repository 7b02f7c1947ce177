import { css, palette } from '../svg/element.ts';
import { marginMm, types } from './block.ts';
import { stripeAt, stripeMm } from './lay-stripes.ts';
import { numberShares, numberSize, registerShares, yarnColumns } from './lay-tables.ts';

const serif = css`serif`;
const sans = css`sans-serif`;

const mm = (value: number): string => `${Math.round(value * 1000) / 1000}mm`;

const placeRules = Object.entries(types)
  .map(
    ([place, { size, leading, heading, gap }]) => css`
.${place} { font-size: ${mm(size)}; line-height: ${mm(leading)}; }
.${place} h2 { font-size: ${mm(heading)}; line-height: 1.2; }
.${place} > * + * { margin-top: ${mm(gap - 0.1)}; }
.${place} .steps { padding-left: ${mm(size * 2)}; }`,
  )
  .join('');

/** Titles come in four sizes a place, the longer the smaller. */
const titleRules = [
  ...new Set(
    Object.values(types).flatMap(({ title }) => [1, 0.75, 0.58, 0.46].map((share) => title * share)),
  ),
]
  .map((size) => css`.t${Math.round(size * 10)} { font-size: ${mm(size)}; }`)
  .join('\n');

const stripeRules = ([2, 3] as const)
  .map((across) => {
    const { chip, number, rows } = stripeAt[across];
    return css`.a${across} label { grid-template-columns: ${mm(chip)} 6mm ${mm(number - chip - 6)} ${mm(rows - number)} minmax(0, 1fr) auto; }`;
  })
  .join('\n');

const registerRules = registerShares
  .map(
    (from, i) =>
      css`.register th:nth-child(${i + 1}) { width: ${Math.round(100 * ((registerShares[i + 1] ?? 1) - from))}%; }`,
  )
  .join(' ');

/** The letter stands in the column of its patch; the last takes the rest. */
const yarnRules = yarnColumns
  .slice(1)
  .map((end, i) => css`th:nth-child(${i + 1}) { width: ${mm(i === 0 ? end : end - (yarnColumns[i] ?? 0))}; }`)
  .join(' ');

/**
 * One style for the screen and for paper. What is printed is 182 mm wide and as high as a page of Letter; sizes are those that
 * the pages are filled by, so every page ends where it is meant to. Drawings keep the size of their letters: where the window is
 * narrower they are moved sideways, not made smaller.
 */
export const style = css`
@page { margin: ${mm(marginMm.top)} ${mm(marginMm.side)}; }
:root { color-scheme: light dark; --ink: ${palette.ink}; --quiet: ${palette.quiet}; --paper: ${palette.paper}; --rule: #cfc9bf; }
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; text-size-adjust: 100%; }
body {
  margin: 0 auto; padding: 12mm 0; width: 182mm; max-width: calc(100vw - 8mm);
  background: var(--paper); color: var(--ink); font-family: ${sans}; font-variant-numeric: tabular-nums; overflow-wrap: anywhere;
}
h1, h2, p, ol, ul, dl, dd, figure, table, hr { margin: 0; }
h2, .title { font-family: ${serif}; font-weight: 400; }
.page { break-after: page; margin-bottom: 16mm; }
.page:last-child { break-after: auto; margin-bottom: 0; }
.together, figure, li, tr, .beside { break-inside: avoid; }
.together > * + *, .beside > div > * + * { margin-top: 1.15mm; }
${placeRules}
.title { line-height: 1.12; overflow-wrap: anywhere; }
${titleRules}
header { display: grid; grid-template-columns: minmax(0, 106mm) minmax(0, 1fr); gap: 0 4mm; align-items: end; border-bottom: 0.3mm solid var(--ink); padding-bottom: 1mm; }
header .place { font-size: 3.175mm; line-height: 4mm; text-align: right; color: var(--quiet); }
header .place b { color: var(--ink); }
header .lead { grid-column: 1 / -1; color: var(--quiet); overflow-wrap: anywhere; }
header figure { grid-column: 1 / -1; margin-top: 0.7mm; }
header svg { width: 100%; }
h2 small { display: block; font: ${mm(types.desk.size)}/${mm(types.desk.leading)} ${sans}; color: var(--quiet); }
.quiet, .facts dt, .numbers dd, th { color: var(--quiet); }
svg { display: block; max-width: none; }
svg.defs { position: absolute; }
.ruled { border-left: 0.9mm solid var(--ink); padding-left: 2.5mm; }
.mind { display: block; }
.steps li { padding-left: 0; } .steps li + li { margin-top: 0.55mm; }
.steps li::marker { font-weight: 700; }
/* The means of a word go on in its line. */
.terms dt, .terms dd { display: inline; } .terms dt { font-weight: 700; } .terms > div + div { margin-top: 0.55mm; }
.facts > div { display: grid; grid-template-columns: 33mm minmax(0, 1fr); border-bottom: 0.2mm solid var(--rule); padding: 0.4mm 0; }
.facts dd { overflow-wrap: anywhere; }
.beside { display: grid; grid-template-columns: max-content minmax(0, 1fr); gap: 6mm; align-items: start; }
.beside.even { grid-template-columns: repeat(2, minmax(0, 1fr)); }
.numbers { display: grid; grid-template-columns: ${numberShares.map((share) => `${share}fr`).join(' ')}; padding: 0.5mm 0; }
.numbers dt { font-size: ${mm(numberSize)}; line-height: 1.12; font-weight: 700; white-space: nowrap; } .numbers dd { padding-right: 3mm; }
table { width: 100%; border-collapse: collapse; table-layout: fixed; }
th { text-align: left; font-weight: 400; }
th, td { padding: 0.4mm 2mm 0.4mm 0; border-bottom: 0.2mm solid var(--rule); vertical-align: top; overflow-wrap: anywhere; }
td.patch svg { margin-top: 0.2mm; } td.name { font-weight: 600; }
${yarnRules}
.register th, .register td { width: auto; } .register td { height: 7mm; padding: 0; }
${registerRules}
.ticks { display: none; }
.stripe-columns { display: grid; gap: ${stripeMm.gap}mm; align-items: start; }
.stripe-columns.a2 { grid-template-columns: repeat(2, minmax(0, 1fr)); } .stripe-columns.a3 { grid-template-columns: repeat(3, minmax(0, 1fr)); }
.stripes { list-style: none; padding: 0; }
.stripes li { background: linear-gradient(var(--rule), var(--rule)) bottom / 100% 0.2mm no-repeat; }
.stripes label { display: grid; grid-auto-rows: ${stripeMm.next}mm; grid-template-rows: ${stripeMm.first}mm; line-height: ${stripeMm.next}mm; align-items: center; white-space: nowrap; }
${stripeRules}
.stripes .number { font-weight: 700; text-align: right; }
.stripes .rows { grid-column: 5; } .stripes .edges { grid-column: 6; text-align: right; }
.stripes .note { padding-left: ${stripeAt[2].chip}mm; font-weight: 700; line-height: ${stripeMm.note}mm; margin-top: -0.6mm; padding-bottom: 0.6mm; }
input[type='checkbox'] {
  appearance: none; margin: 0; width: 6mm; height: 6mm; border: 0.35mm solid var(--ink); background: var(--paper);
}
input[type='checkbox']:checked { background: var(--ink); box-shadow: inset 0 0 0 0.9mm var(--paper); }
input[type='checkbox']:focus-visible { outline: 0.6mm solid var(--ink); outline-offset: 0.6mm; }
.lines hr { border: 0; border-bottom: 0.25mm solid var(--rule); height: 7mm; }
.blanks { columns: 2; column-gap: 6mm; }
.blanks > div { display: flex; gap: 2mm; align-items: end; height: 6.3mm; white-space: nowrap; break-inside: avoid; }
.blanks dt { color: var(--quiet); }
.blanks .blank { flex: 1; border-bottom: 0.25mm solid var(--ink); min-width: 9mm; height: 4mm; margin-bottom: 0.6mm; }
@media screen {
  .ticks { display: block; color: var(--quiet); font-size: 3.175mm; }
  figure { overflow-x: auto; }
}
@media screen and (prefers-color-scheme: dark) {
  :root { --ink: #ece7de; --quiet: #b9b2a6; --paper: #1b1a18; --rule: #4a463f; }
  /* Two pictures side by side fill the width, so what their cards add comes off between them. */
  figure { background: #f7f4ee; border-radius: 2mm; padding: 2mm 1mm; }
  .beside { column-gap: 2mm; }
  header figure { padding: 0; }
}
@media screen and (max-width: 720px) {
  body { padding: 4mm 0; }
  header, .beside, .beside.even, .stripe-columns.a2, .stripe-columns.a3 { grid-template-columns: minmax(0, 1fr); }
  header .place { text-align: left; }
  .numbers { grid-template-columns: minmax(0, 1fr) minmax(0, 1fr); } .numbers dt { font-size: 7mm; }
  .blanks { columns: 1; } .blanks > div { flex-wrap: wrap; height: auto; }
  table, thead, tbody, tr { display: block; } thead { display: none; }
  tr { display: flex; flex-wrap: wrap; gap: 0 3mm; border-bottom: 0.2mm solid var(--rule); padding: 1mm 0; }
  td { border: 0; padding: 0; } td.name { flex-basis: 60%; }
}
@media print {
  :root { color-scheme: light; }
  body { padding: 0; width: 182mm; max-width: none; }
  .page { margin-bottom: 0; }
  * { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
}
`.trim();
