/** Rows of the terminal as a picture: each cell where a terminal has it, blocks as rectangles, on a card of its own. */
import type { Line, Span } from '../../source/sheet/terminal/ansi.ts';
import { escapeXml } from '../../source/sheet/text.ts';

const cell = { width: 9, height: 18 };
const edge = 14;
const card = { ground: '#1d1e21', ink: '#d8d8d8', dim: '#9a9a9b' };

/** Signs that fill a part of their cell, from top to bottom. */
const blocks: Readonly<Record<string, readonly [from: number, to: number]>> = {
  '█': [0, 1],
  '▀': [0, 0.5],
  '▄': [0.5, 1],
  '━': [0.44, 0.56],
};

const rectangle = (x: number, y: number, width: number, height: number, fill: string): string =>
  `<rect x="${x}" y="${y}" width="${width}" height="${height}" fill="${fill}"/>`;

function spanAsSvg(span: Span, x: number, y: number): string {
  const letters = [...span.text];
  const ink = span.ink ?? (span.dim ? card.dim : card.ink);
  const [front, back] = span.inverse ? [card.ground, ink] : [ink, span.ground ?? null];
  const ground = back ? rectangle(x, y, letters.length * cell.width, cell.height, back) : '';
  const signs = letters.map((letter, i) => {
    const at = x + i * cell.width;
    const block = blocks[letter];
    if (block)
      return rectangle(
        at,
        y + block[0] * cell.height,
        cell.width,
        (block[1] - block[0]) * cell.height,
        front,
      );
    if (letter === ' ') return '';
    const weight = span.bold ? ' font-weight="bold"' : '';
    return `<text x="${at}" y="${y + 13.5}" fill="${front}"${weight}>${escapeXml(letter)}</text>`;
  });
  return ground + signs.join('');
}

export function linesAsSvg(lines: readonly Line[], columns: number, title: string): string {
  const [width, height] = [columns * cell.width + 2 * edge, lines.length * cell.height + 2 * edge];
  const rows = lines.map((line, row) => {
    let x = edge;
    return line
      .map((span) => {
        const drawn = spanAsSvg(span, x, edge + row * cell.height);
        x += [...span.text].length * cell.width;
        return drawn;
      })
      .join('');
  });
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" font-family="'DejaVu Sans Mono', Menlo, Consolas, monospace" font-size="15">`,
    `<title>${escapeXml(title)}</title>`,
    `<rect width="${width}" height="${height}" rx="8" fill="${card.ground}"/>`,
    ...rows.filter((row) => row !== ''),
    '</svg>\n',
  ].join('\n');
}
