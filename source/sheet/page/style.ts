import { css, palette } from '../svg/element.ts';

const serif = css`'Iowan Old Style', 'Palatino Linotype', Palatino, P052, Georgia, 'DejaVu Serif', serif`;
const sans = css`'Helvetica Neue', Arial, 'Liberation Sans', 'DejaVu Sans', sans-serif`;

/** One style for the screen and for paper, A4 and Letter alike: what is printed fits 182 by 255 mm. */
export const style = css`
@page { margin: 11mm 14mm; }
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; text-size-adjust: 100%; }
body {
  margin: 0 auto; padding: 12mm 0; width: 182mm; max-width: calc(100vw - 8mm);
  background: ${palette.paper}; color: ${palette.ink};
  font: 8.4pt/1.34 ${sans}; font-variant-numeric: tabular-nums;
  print-color-adjust: exact; -webkit-print-color-adjust: exact;
}
h1, h2 { font-family: ${serif}; font-weight: 400; margin: 0; }
h1 { line-height: 1.12; overflow-wrap: anywhere; }
h1.short { font-size: 27pt; } h1.medium { font-size: 19pt; } h1.long { font-size: 14pt; } h1.longest { font-size: 11.5pt; }
h2 { font-size: 12.5pt; line-height: 1.2; margin-bottom: 1mm; }
h2 small { font: 8.4pt/1.2 ${sans}; color: ${palette.quiet}; margin-left: 2mm; }
p, ol, ul, dl, dd, figure, table { margin: 0; }
svg.defs { position: absolute; }
svg { display: block; max-width: 100%; height: auto; }
section, figure, li, tr { break-inside: avoid; }
header { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: 1mm 8mm; align-items: end; }
header .lead { color: ${palette.quiet}; }
header .date { text-align: right; color: ${palette.quiet}; max-width: 60mm; overflow-wrap: anywhere; }
header figure { grid-column: 1 / -1; margin-top: 1.4mm; }
header svg { width: 100%; }
main > * { margin-top: 3.8mm; }
.hero { display: grid; grid-template-columns: auto minmax(0, 1fr); gap: 8mm; align-items: start; }
dl.facts { display: grid; grid-template-columns: auto minmax(0, 1fr); }
dl.facts > div { display: contents; }
dl.facts dt, dl.facts dd { padding: 0.5mm 0; border-bottom: 0.2mm solid #ddd8cf; }
dl.facts dt { color: ${palette.quiet}; padding-right: 5mm; }
dl.facts dd { font-weight: 600; }
.remarks { margin-top: 3mm; padding: 1.6mm 0 0 3mm; border-left: 0.9mm solid ${palette.ink}; list-style: none; }
.remarks li { padding-bottom: 1.2mm; }
table { width: 100%; border-collapse: collapse; }
th { text-align: left; font-weight: 400; color: ${palette.quiet}; }
th, td { padding: 0.9mm 3mm 0.9mm 0; border-bottom: 0.2mm solid #ddd8cf; vertical-align: baseline; }
td.name { overflow-wrap: anywhere; font-weight: 600; }
td.letter { width: 1%; } td.patch { width: 9mm; } td.patch svg { width: 6mm; } td.name { width: 32%; } td.use { white-space: nowrap; }
td.figure, th.figure { text-align: right; white-space: nowrap; }
.tools { margin-top: 1.4mm; color: ${palette.quiet}; }
.pair { display: grid; grid-template-columns: auto auto; justify-content: space-between; align-items: start; gap: 4mm; }
figcaption { color: ${palette.quiet}; margin-top: 1mm; }
.steps { padding-left: 4.4mm; } .steps li { padding-bottom: 0.7mm; }
.caution { margin-top: 1mm; padding-left: 2.6mm; border-left: 0.9mm solid ${palette.ink}; }
.caution b { font-weight: 700; }
.columns { display: grid; grid-template-columns: repeat(3, minmax(0, 1fr)); gap: 6mm; }
#bench { grid-template-columns: 1.08fr 1.4fr 1.1fr; }
.columns figure { margin-bottom: 1.2mm; }
.columns > div > figure { margin-top: 3mm; }
ol.stripes { list-style: none; padding: 0; columns: 3; column-gap: 7mm; margin-top: 1.6mm; }
ol.stripes.many { columns: 4; column-gap: 4mm; font-size: 7.6pt; }
ol.stripes li { border-bottom: 0.2mm solid #ddd8cf; padding: 0.35mm 0; }
ol.stripes label { display: grid; grid-template-columns: 3.4mm 4.6mm 0.8em 1.7em minmax(0, 1fr) auto; gap: 1.2mm; align-items: center; }
ol.stripes .number { font-weight: 700; text-align: right; }
ol.stripes .rows { padding-left: 1.4mm; }
ol.stripes .edges { white-space: nowrap; }
ol.stripes .again { padding-left: 5mm; font-weight: 700; }
input[type='checkbox'] {
  appearance: none; margin: 0; width: 3.4mm; height: 3.4mm; border: 0.3mm solid ${palette.ink}; background: ${palette.paper};
}
input[type='checkbox']:checked { background: ${palette.ink}; box-shadow: inset 0 0 0 0.5mm ${palette.paper}; }
input[type='checkbox']:focus-visible { outline: 0.5mm solid ${palette.ink}; outline-offset: 0.5mm; }
.notes { height: 13.9mm; background: repeating-linear-gradient(transparent 0 6.7mm, #c9c3b8 6.7mm 6.9mm); }
dl.blanks { columns: 2; column-gap: 7mm; }
dl.blanks > div { display: flex; gap: 2mm; align-items: end; height: 5.9mm; white-space: nowrap; }
dl.blanks dt { color: ${palette.quiet}; }
dl.blanks .blank { flex: 1; border-bottom: 0.25mm solid ${palette.ink}; min-width: 12mm; height: 4mm; margin-bottom: 0.6mm; }
@media screen and (max-width: 760px) {
  .hero, .pair, .columns, #bench { grid-template-columns: minmax(0, 1fr); }
  ol.stripes, ol.stripes.many, dl.blanks { columns: 1; }
  dl.blanks > div { flex-wrap: wrap; height: auto; }
  td, th, td.use, td.figure, th.figure { white-space: normal; padding-right: 1.5mm; }
}
@media print {
  body { padding: 0; width: auto; max-width: none; }
}
`.trim();
