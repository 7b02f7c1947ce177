/** What a real browser makes of a file: where its text lies, in what colours, on how many sheets of paper. */
import { existsSync } from 'node:fs';
import { type Browser, chromium, type Page } from 'playwright-core';

const places = [process.env.CHROMIUM ?? '', '/usr/bin/chromium', '/usr/bin/chromium-browser'];

/** Where Chromium is installed; null, and a word about it, where it is not. */
export function findChromium(): string | null {
  const found = places.find((path) => path !== '' && existsSync(path));
  if (!found) {
    process.stderr.write(
      `\nNOT LOOKED AT IN A BROWSER: no Chromium at ${places.filter((path) => path !== '').join(' or ')}. Install it (Debian: apt-get install chromium) or set CHROMIUM to its path.\n`,
    );
  }
  return found ?? null;
}

export const startChromium = (executablePath: string): Promise<Browser> =>
  chromium.launch({ executablePath, args: ['--headless', '--no-sandbox', '--disable-gpu'] });

/** The little of a browser's own interface that is used inside the page; the project is not compiled against it. */
interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly width: number;
}
interface DomNode {
  readonly textContent: string | null;
  readonly parentElement: DomElement | null;
}
interface DomElement extends DomNode {
  readonly className: string;
  closest(selector: string): DomElement | null;
  getAttribute(name: string): string | null;
  getBoundingClientRect(): { readonly height: number };
  /** SVG has it. */
  getScreenCTM?(): { readonly b: number; readonly d: number } | null;
}
declare const document: {
  readonly documentElement: DomElement & { readonly scrollWidth: number };
  createTreeWalker(root: DomElement, show: number): { nextNode(): DomNode | null };
  createRange(): {
    setStart(node: DomNode, offset: number): void;
    setEnd(node: DomNode, offset: number): void;
    getClientRects(): Iterable<Box>;
  };
  querySelector(selector: string): DomElement | null;
  querySelectorAll(selector: string): Iterable<DomElement> & { readonly length: number };
};
declare const window: object;
declare const scrollY: number;
declare const innerWidth: number;
declare const getComputedStyle: (element: DomElement) => {
  readonly fill: string;
  readonly color: string;
  readonly fontSize: string;
  readonly display: string;
};
declare const Image: new () => {
  src: string;
  decode(): Promise<void>;
  readonly width: number;
  readonly height: number;
};
declare const OffscreenCanvas: new (
  width: number,
  height: number,
) => {
  getContext(kind: '2d'): {
    drawImage(image: object, x: number, y: number): void;
    getImageData(x: number, y: number, width: number, height: number): { readonly data: Uint8ClampedArray };
  };
};

export interface TextPiece {
  readonly text: string;
  /** Which of the page's texts it belongs to. */
  readonly of: number;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  /** Red, green, blue, 0 to 255. */
  readonly colour: readonly [number, number, number];
}

/** How wide the sheet is printed, in CSS pixels. */
export const columnPx = (182 / 25.4) * 96;

/** Every visible run of text, one piece a line box. */
export const textPieces = (page: Page): Promise<readonly TextPiece[]> =>
  page.evaluate(() => {
    const pieces: TextPiece[] = [];
    let of = 0;
    const walker = document.createTreeWalker(document.documentElement, 4 /* text nodes */);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const parent = node.parentElement;
      if (!parent || (node.textContent ?? '').trim() === '' || parent.closest('head, style, title, script'))
        continue;
      const style = getComputedStyle(parent);
      const colour = parent.closest('svg') ? style.fill : style.color;
      const [r = 0, g = 0, b = 0] = (colour.match(/[\d.]+/g) ?? []).map(Number);
      const text = node.textContent ?? '';
      of++;
      // The box of a slanting line is far larger than the line: its letters are looked at one by one.
      const isSlanting = /^rotate\((?!-?90\b)/.test(parent.getAttribute('transform') ?? '');
      const spans = isSlanting ? [...text].map((_, i) => [i, i + 1] as const) : [[0, text.length] as const];
      for (const [from, to] of spans) {
        const range = document.createRange();
        range.setStart(node, from);
        range.setEnd(node, to);
        for (const box of range.getClientRects()) {
          if (box.width < 0.5) continue;
          const { left, top, right, bottom } = box;
          pieces.push({
            text: text.slice(from, to),
            of,
            left,
            top: top + scrollY,
            right,
            bottom: bottom + scrollY,
            colour: [r, g, b] as [number, number, number],
          });
        }
      }
    }
    return pieces;
  });

/** Pairs of texts whose boxes lie over each other by more than a hair both ways. */
export function overlaps(pieces: readonly TextPiece[]): readonly string[] {
  const found: string[] = [];
  const sorted = pieces.toSorted((a, b) => a.top - b.top);
  for (const [i, one] of sorted.entries()) {
    for (const other of sorted.slice(i + 1)) {
      if (other.top >= one.bottom) break;
      if (other.of === one.of) continue;
      const across = Math.min(one.right, other.right) - Math.max(one.left, other.left);
      const down = Math.min(one.bottom, other.bottom) - other.top;
      // Line boxes are a little higher than their letters.
      const slack = 0.3 * Math.min(one.bottom - one.top, other.bottom - other.top);
      if (across > 0.7 && down > slack) found.push(`"${one.text}" over "${other.text}"`);
    }
  }
  return found;
}

/** The least contrast between each text and what is really painted behind it (WCAG 2.2 contrast ratio). */
export async function poorContrasts(
  page: Page,
  pieces: readonly TextPiece[],
  least: number,
): Promise<readonly string[]> {
  await page.addStyleTag({
    content: '* { color: transparent !important; } text { fill: transparent !important; }',
  });
  const picture = await page.screenshot({ fullPage: true });
  const reader = await (page.context().browser() as Browser).newPage();
  const ratios = await reader.evaluate(
    async ({ data, boxes }) => {
      const image = new Image();
      image.src = `data:image/png;base64,${data}`;
      await image.decode();
      const canvas = new OffscreenCanvas(image.width, image.height);
      const brush = canvas.getContext('2d');
      brush.drawImage(image, 0, 0);
      const light = (value: number): number =>
        value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
      const luminance = (r: number, g: number, b: number): number =>
        0.2126 * light(r / 255) + 0.7152 * light(g / 255) + 0.0722 * light(b / 255);
      return boxes.map(({ left, top, right, bottom, colour }) => {
        const own = luminance(colour[0], colour[1], colour[2]);
        const inset = (bottom - top) * 0.2;
        const [x, y] = [Math.max(0, Math.floor(left)), Math.max(0, Math.floor(top + inset))];
        const [wide, high] = [Math.max(1, Math.ceil(right) - x), Math.max(1, Math.floor(bottom - inset) - y)];
        const { data: pixels } = brush.getImageData(x, y, wide, high);
        const seen: number[] = [];
        for (let i = 0; i < pixels.length; i += 4) {
          const behind = luminance(pixels[i] ?? 0, pixels[i + 1] ?? 0, pixels[i + 2] ?? 0);
          seen.push((Math.max(own, behind) + 0.05) / (Math.min(own, behind) + 0.05));
        }
        // A thin line may cross a letter's box; a twentieth of it may be darker.
        return seen.toSorted((a, b) => a - b)[Math.floor(seen.length / 20)] ?? 21;
      });
    },
    { data: picture.toString('base64'), boxes: [...pieces] },
  );
  await reader.close();
  return ratios.flatMap((ratio, i) => (ratio < least ? [`${pieces[i]?.text}: ${ratio.toFixed(2)}`] : []));
}

/** Pages of a PDF, counted in the file itself (ISO 32000-1, 7.7.3.3: one page object each). */
export const pageCount = (pdf: Buffer): number =>
  (pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length;

/** How far the content reaches past the right edge of the window, in CSS pixels. */
export const excessWidth = (page: Page): Promise<number> =>
  page.evaluate(() => Math.max(0, document.documentElement.scrollWidth - innerWidth));

/** What could run, load or hide as a picture; and the heading as it reads. */
export const inventory = (page: Page) =>
  page.evaluate(() => ({
    pictures: document.querySelectorAll('img, canvas, image, object, iframe, video').length,
    scripts: document.querySelectorAll('script').length,
    hurt: 'hurt' in window,
    title: document.querySelector('h1')?.textContent ?? '',
    boxes: document.querySelectorAll('input[type=checkbox]').length,
  }));

/** The places and heights of the pages as the sheet has them. */
export const heightsOfPages = (
  page: Page,
): Promise<readonly { readonly place: string; readonly heightMm: number }[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll('section.page')].map((element) => ({
      place: element.className.replace('page ', ''),
      heightMm: (element.getBoundingClientRect().height / 96) * 25.4,
    })),
  );

/** The smallest letters in what is named, as they come out: SVG text in the scale of its drawing. */
export const smallestText = (
  page: Page,
  inside = ':root',
): Promise<{ readonly px: number; readonly points: number; readonly text: string }> =>
  page.evaluate((selector) => {
    let [px, text] = [Infinity, ''];
    const walker = document.createTreeWalker(document.documentElement, 4 /* text nodes */);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const parent = node.parentElement;
      if (!parent || (node.textContent ?? '').trim() === '' || parent.closest('head, style, title, script'))
        continue;
      if (!parent.closest(selector) || getComputedStyle(parent).display === 'none') continue;
      const { b, d } = parent.getScreenCTM?.() ?? { b: 0, d: 1 };
      const size = Number.parseFloat(getComputedStyle(parent).fontSize) * Math.hypot(b, d);
      if (size < px) [px, text] = [size, node.textContent ?? ''];
    }
    return { px, points: (px * 72) / 96, text };
  }, inside);
