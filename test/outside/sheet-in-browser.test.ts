/**
 * The sheets in a real browser: pages break where they are ruled to, nothing overflows, nothing overlaps, everything can be
 * read, nothing is fetched. `SLANTWISE_SHEETS=40` prints every case and 40 random bags, on both papers, instead of a few.
 */
import { writeFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import fc from 'fast-check';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Plan } from '../../source/planning/plan.ts';
import { marginMm, papers } from '../../source/sheet/page/block.ts';
import { sheetOf } from '../../source/sheet/page/pages.ts';
import { sheetHtml } from '../../source/sheet/page/sheet-html.ts';
import { sheetSvg } from '../../source/sheet/page/sheet-svg.ts';
import { inEnglish, type Language } from '../../source/wording/words.ts';
import { planOf } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import {
  demoNames,
  demoPlan,
  diceBagWith,
  hostileNames,
  optionsFor,
  renameYarn,
  twoColours,
} from '../fixtures/sheets.ts';
import { german } from '../fixtures/spoken.ts';
import {
  columnPx,
  excessWidth,
  findChromium,
  heightsOfPages,
  inventory,
  overlaps,
  pageCount,
  poorContrasts,
  smallestText,
  startChromium,
  textPieces,
} from './look-in-browser.ts';

const chromiumPath = findChromium();
const formats = ['A4', 'Letter'] as const;
/** As the page asks for, and the widest of the common faces in place of all of them. */
const fontSets = ['its own fonts', 'DejaVu Sans'] as const;
/** A quarter of an inch, which usual printers leave blank (common practice, no source). */
const leastMarginMm = 6.35;
/** For one case, on a busy machine. */
const patienceMs = 60_000;
const isFull = process.env.SLANTWISE_SHEETS !== undefined;
const randomBags = Number(process.env.SLANTWISE_SHEETS ?? 1);

interface Case {
  readonly name: string;
  readonly plan: Plan;
  readonly more?: Parameters<typeof optionsFor>[1];
  readonly language?: Language;
}

const manyYarns = (count: number): Plan => {
  const names = Array.from({ length: count }, (_, i) => `yarn ${i + 1}`);
  return diceBagWith({
    yarns: Object.fromEntries(
      names.map((name, i) => [
        name,
        {
          colour: `#${(i * 2222222 + 1118481).toString(16).padStart(6, '0')}`,
          metresPer100g: 190,
          grams: 20,
        },
      ]),
    ),
    stripes: names.map((yarn) => ({ yarn, rows: 2 })),
    cord: { stitches: 3, yarn: names[0], tieCm: 25 },
  });
};

const hostile: readonly Case[] = Object.entries(hostileNames).map(([kind, name]) => ({
  name: `a name with ${kind}`,
  plan: renameYarn(demoPlan('dice-bag'), 'plum', name.slice(0, 60)),
  more: { name },
}));

const allCases: readonly Case[] = [
  ...demoNames.map((name) => ({ name, plan: demoPlan(name) })),
  ...demoNames.map((name) => ({ name: `${name} in German`, plan: demoPlan(name), language: german })),
  { name: 'a class', plan: demoPlan('dice-bag'), more: { class: true } },
  {
    name: 'shades that look alike',
    plan: twoColours('#6b2d5c', '#6b3560'),
    more: { remarks: ['Mind the cat.'] },
  },
  { name: 'one yarn', plan: manyYarns(1) },
  { name: 'seven yarns', plan: manyYarns(7), language: german },
  {
    name: '400 rows',
    plan: diceBagWith({ bed: { needles: 400, pitchMm: 6.5 }, bag: { stitches: 46, rows: 400 } }),
  },
  ...hostile,
  ...fc.sample(briefFile(), { numRuns: randomBags, seed: 17 }).map((file, i) => ({
    name: `random bag ${i + 1}`,
    plan: planOf(file),
    ...(i % 2 === 0 ? {} : { language: german }),
  })),
];

/** Those of which each has something that the others have not. */
const few: ReadonlySet<string> = new Set([
  'dice-bag',
  'rulebook-bag',
  'card-box-bag in German',
  'a class',
  'seven yarns',
  '400 rows',
  'a name with markup',
  'a name with one long word',
  'random bag 1',
]);
const cases = allCases.filter(({ name }) => isFull || few.has(name));

describe.skipIf(chromiumPath === null)('in Chromium, the sheet of', { timeout: patienceMs }, () => {
  let browser: Browser;
  let page: Page;
  let folder: string;

  beforeAll(async () => {
    browser = await startChromium(chromiumPath ?? '');
    folder = await mkdtemp(join(tmpdir(), 'sheet-'));
    page = await browser.newPage();
  });

  afterAll(async () => {
    await browser?.close();
    await rm(folder, { recursive: true, force: true });
  });

  /** Opens the text as a file; gives a list of what it asks for beside itself. */
  async function open(text: string, kind: 'html' | 'svg'): Promise<readonly string[]> {
    const path = join(folder, `sheet.${kind}`);
    const address = pathToFileURL(path).href;
    writeFileSync(path, text);
    const asked: string[] = [];
    page.on('request', (request) => {
      if (request.url() !== address) asked.push(request.url());
    });
    await page.goto(address);
    return asked;
  }

  const htmlOf = ({ plan, more, language = inEnglish }: Case): string => {
    return sheetHtml(plan, optionsFor(plan, more, language));
  };

  const inFont = (font: (typeof fontSets)[number]): Promise<unknown> =>
    font === 'its own fonts'
      ? Promise.resolve()
      : page.addStyleTag({ content: `* { font-family: '${font}' !important; }` });

  it.each(cases)('$name prints on its pages as ruled, all its text there and apart', async (one) => {
    const ruled = sheetOf(
      one.plan,
      optionsFor(one.plan, one.more, one.language),
      papers.letter.heightMm,
    ).pages;
    const asked = await open(htmlOf(one), 'html');
    await page.setViewportSize({ width: Math.ceil(columnPx), height: 1000 });
    for (const font of fontSets) {
      await inFont(font);
      await page.emulateMedia({ media: 'print' });
      // Each page by itself is no higher than the shorter paper, so a printer breaks where the sheet does and nowhere else.
      const heights = await heightsOfPages(page);
      expect(heights.map(({ place }) => place)).toEqual(ruled.map(({ place }) => place));
      for (const { heightMm } of heights)
        expect(heightMm).toBeLessThanOrEqual(papers.letter.heightMm - 2 * marginMm.top);
      for (const format of isFull || font === 'DejaVu Sans' ? formats : []) {
        expect([font, format, pageCount(await page.pdf({ format }))]).toEqual([font, format, ruled.length]);
      }
      const pieces = await textPieces(page);
      expect(pieces.length).toBeGreaterThan(150);
      expect(pieces.filter(({ left, right }) => left < -0.5 || right > columnPx + 1)).toEqual([]);
      expect(overlaps(pieces)).toEqual([]);
      expect((await smallestText(page)).points).toBeGreaterThanOrEqual(6.99);
      // To be read from in front of the bed, all but the page's number.
      expect((await smallestText(page, '.machine > :not(header)')).points).toBeGreaterThanOrEqual(12.99);
    }
    const { title, ...rest } = await inventory(page);
    expect(rest).toEqual({ pictures: 0, scripts: 1, hurt: false, boxes: one.plan.stripes.length });
    expect(title.length).toBeGreaterThan(0);
    expect(asked).toEqual([]);
  });

  it.each(cases)(
    '$name as SVG keeps its text on its pages, and apart',
    async ({ plan, more, language = inEnglish }) => {
      for (const paper of isFull ? (['a4', 'letter'] as const) : (['letter'] as const)) {
        const { widthMm, heightMm } = papers[paper];
        const options = optionsFor(plan, { ...more, paper }, language);
        const svg = sheetSvg(plan, options);
        for (const font of fontSets) {
          const drawn =
            font === 'its own fonts' ? svg : svg.replaceAll(/font-family="[^"]*"/g, `font-family="${font}"`);
          const asked = await open(drawn, 'svg');
          await page.setViewportSize({ width: Math.ceil((widthMm / 25.4) * 96), height: 1000 });
          const pieces = await textPieces(page);
          expect(pieces.length).toBeGreaterThan(150);
          const inMm = (px: number): number => (px / 96) * 25.4;
          expect(pieces.filter(({ left, right }) => inMm(left) < 10 || inMm(right) > widthMm - 10)).toEqual(
            [],
          );
          // Between the margins of one of its pages, whichever it is.
          const cut = pieces.filter(({ top, bottom }) => {
            const onPage = inMm(top) % heightMm;
            return onPage < leastMarginMm || onPage + inMm(bottom - top) > heightMm - leastMarginMm;
          });
          expect(cut).toEqual([]);
          expect(overlaps(pieces)).toEqual([]);
          expect(asked).toEqual([]);
        }
      }
    },
  );

  it.each([
    ['screen', 'light'],
    ['screen', 'dark'],
    ['print', 'light'],
    ['print', 'dark'],
  ] as const)(
    'the dice bag has a contrast of at least 4.5 to 1 everywhere, %s, %s',
    async (media, colorScheme) => {
      await open(htmlOf({ name: '', plan: demoPlan('dice-bag') }), 'html');
      await page.emulateMedia({ media, colorScheme });
      await page.setViewportSize({ width: 760, height: 1000 });
      expect(await poorContrasts(page, await textPieces(page), 4.5)).toEqual([]);
    },
  );

  it.each([
    ['English', inEnglish],
    ['German', german],
  ])(
    'the dice bag can be read on a telephone, its wide drawings moved and not made smaller, in %s',
    async (_, language) => {
      await open(htmlOf({ name: '', plan: demoPlan('dice-bag'), more: { class: true }, language }), 'html');
      await page.emulateMedia({ media: 'screen' });
      await page.setViewportSize({ width: 360, height: 800 });
      expect(await excessWidth(page)).toBe(0);
      expect(overlaps(await textPieces(page))).toEqual([]);
      expect((await smallestText(page)).px).toBeGreaterThanOrEqual(9);
    },
  );

  it('keeps its ticks when it is opened again, and says so', async () => {
    const html = htmlOf({ name: '', plan: demoPlan('token-pouch') });
    await open(html, 'html');
    await page.emulateMedia({ media: 'screen' });
    await page.locator('#stripe-2').check();
    await page.reload();
    expect(await page.locator('#stripe-1').isChecked()).toBe(false);
    expect(await page.locator('#stripe-2').isChecked()).toBe(true);
    expect(await page.locator('.ticks').textContent()).toBe('Ticks are kept in this browser.');
  });
});
