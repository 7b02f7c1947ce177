/** The sheets in a real browser: nothing overflows, nothing overlaps, everything can be read, nothing is fetched. */

import { writeFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import type { Plan } from '../../source/planning/plan.ts';
import type { SheetOptions } from '../../source/sheet/page/options.ts';
import { sheetHtml } from '../../source/sheet/page/sheet-html.ts';
import { sheetSvg } from '../../source/sheet/page/sheet-svg.ts';
import type { Language } from '../../source/wording/words.ts';
import { demoNames, demoPlan, hostileNames, renameYarn, twoColours } from '../fixtures/sheet-briefs.ts';
import { german, speak, spoken } from '../fixtures/spoken.ts';
import {
  excessWidth,
  findChromium,
  inventory,
  overlaps,
  pageCount,
  papers,
  poorContrasts,
  startChromium,
  textPieces,
} from './look-in-browser.ts';

const chromiumPath = findChromium();
const plain: SheetOptions = { date: '4 May 2026' };
const forClass: SheetOptions = { ...plain, class: true };
const formats = ['A4', 'Letter'] as const;

const demoSheets = Object.fromEntries(
  demoNames.flatMap((name) => [
    [name, [demoPlan(name), plain]],
    [`${name} for a class`, [demoPlan(name), forClass]],
  ]),
) as Readonly<Record<string, readonly [Plan, SheetOptions]>>;

const oddSheets = {
  'shades that look alike': [twoColours('#6b2d5c', '#6b3560'), { ...plain, remarks: ['Mind the cat.'] }],
  ...Object.fromEntries(
    Object.entries(hostileNames).map(([kind, name]) => [
      `a name with ${kind}`,
      [renameYarn(demoPlan('dice-bag'), 'plum', name.slice(0, 60)), { ...plain, name }],
    ]),
  ),
} as Readonly<Record<string, readonly [Plan, SheetOptions]>>;

const inLanguages = <T>(cases: readonly T[]): readonly (readonly [T, string, Language | null])[] =>
  cases.flatMap((one) => [
    [one, 'English', null],
    [one, 'German', german],
  ]);

describe.skipIf(chromiumPath === null)('in Chromium, the sheet of', () => {
  let browser: Browser;
  let folder: string;

  beforeAll(async () => {
    browser = await startChromium(chromiumPath ?? '');
    folder = await mkdtemp(join(tmpdir(), 'sheet-'));
  });

  afterAll(async () => {
    await browser?.close();
    await rm(folder, { recursive: true, force: true });
  });

  afterEach(() => speak(null));

  /** Opens the text as a file; gives the page, and fills a list with what it asks for beside itself. */
  async function open(text: string, kind: 'html' | 'svg'): Promise<{ page: Page; asked: readonly string[] }> {
    const path = join(folder, `sheet.${kind}`);
    const address = pathToFileURL(path).href;
    writeFileSync(path, text);
    const page = await browser.newPage();
    const asked: string[] = [];
    page.on('request', (request) => {
      if (request.url() !== address) asked.push(request.url());
    });
    await page.goto(address);
    return { page, asked };
  }

  async function layOut(page: Page, widthPx: number): Promise<void> {
    await page.emulateMedia({ media: 'print' });
    await page.setViewportSize({ width: Math.floor(widthPx), height: 1000 });
  }

  /** Two pages of either paper, all the text within and apart. */
  async function expectTwoPages(page: Page): Promise<void> {
    for (const format of formats) {
      expect([format, pageCount(await page.pdf({ format }))]).toEqual([format, 2]);
      const { widthPx } = papers[format];
      await layOut(page, widthPx);
      const pieces = await textPieces(page);
      expect(pieces.length).toBeGreaterThan(150);
      expect(pieces.filter(({ left, right }) => left < -0.5 || right > widthPx + 0.5)).toEqual([]);
      expect(await excessWidth(page)).toBe(0);
      expect(overlaps(pieces)).toEqual([]);
    }
  }

  async function expectApartOnPage(page: Page): Promise<void> {
    const widthPx = (210 / 25.4) * 96;
    await page.setViewportSize({ width: Math.ceil(widthPx), height: 1000 });
    const pieces = await textPieces(page);
    expect(pieces.length).toBeGreaterThan(150);
    expect(pieces.filter(({ left, right }) => left < 0 || right > widthPx)).toEqual([]);
    expect(overlaps(pieces)).toEqual([]);
  }

  it.each(Object.entries({ ...demoSheets, ...oddSheets }))(
    '%s prints on two pages, all its text there and apart',
    async (_, sheet) => {
      const { page, asked } = await open(sheetHtml(sheet[0], sheet[1], spoken()), 'html');
      await expectTwoPages(page);
      const { title, ...rest } = await inventory(page);
      expect(rest).toEqual({ pictures: 0, scripts: 0, hurt: false, boxes: sheet[0].stripes.length });
      expect(title.length).toBeGreaterThan(0);
      expect(asked).toEqual([]);
      await page.close();
    },
  );

  it.each(Object.entries({ ...demoSheets, ...oddSheets }))(
    '%s as SVG keeps its text on its pages, and apart',
    async (_, sheet) => {
      const { page, asked } = await open(sheetSvg(sheet[0], sheet[1], spoken()), 'svg');
      await expectApartOnPage(page);
      expect(asked).toEqual([]);
      await page.close();
    },
  );

  it.each(Object.entries(demoSheets))(
    '%s in German prints as well, and so does its SVG',
    async (_, sheet) => {
      speak(german);
      const { page } = await open(sheetHtml(sheet[0], sheet[1], spoken()), 'html');
      await expectTwoPages(page);
      await page.close();
      const { page: drawn } = await open(sheetSvg(sheet[0], sheet[1], spoken()), 'svg');
      await expectApartOnPage(drawn);
      await drawn.close();
    },
  );

  it.each(Object.entries(demoSheets).slice(0, 4))(
    '%s has a contrast of at least 4.5 to 1 everywhere',
    async (_, sheet) => {
      const { page } = await open(sheetHtml(sheet[0], sheet[1], spoken()), 'html');
      await layOut(page, papers.A4.widthPx);
      const pieces = await textPieces(page);
      expect(await poorContrasts(page, pieces, 4.5)).toEqual([]);
      await page.close();
    },
  );

  it.each(inLanguages(formats))(
    'the dice bag fits %s in the widest of common fonts too, in %s',
    async (format, _, language) => {
      speak(language);
      const { page } = await open(sheetHtml(demoPlan('dice-bag'), plain, spoken()), 'html');
      await page.addStyleTag({ content: "* { font-family: 'DejaVu Sans' !important; }" });
      // German runs longer; in so wide a font its last lines take a third page.
      expect(pageCount(await page.pdf({ format }))).toBeLessThanOrEqual(3);
      await layOut(page, papers[format].widthPx);
      expect(overlaps(await textPieces(page))).toEqual([]);
      await page.close();
    },
  );

  it.each(inLanguages(demoNames))(
    'the SVG sheet of the %s keeps its texts apart in the widest of common fonts too, in %s',
    async (name, _, language) => {
      speak(language);
      const svg = sheetSvg(demoPlan(name), plain, spoken()).replaceAll(
        /font-family="[^"]*"/g,
        'font-family="DejaVu Sans"',
      );
      const { page } = await open(svg, 'svg');
      await page.setViewportSize({ width: 794, height: 1000 });
      expect(overlaps(await textPieces(page))).toEqual([]);
      await page.close();
    },
  );

  it.each(inLanguages(['dice-bag'] as const))(
    'the %s can be read on a narrow screen, in %s',
    async (name, _, language) => {
      speak(language);
      const { page } = await open(sheetHtml(demoPlan(name), forClass, spoken()), 'html');
      await page.setViewportSize({ width: 360, height: 800 });
      expect(await excessWidth(page)).toBe(0);
      expect(overlaps(await textPieces(page))).toEqual([]);
      await page.close();
    },
  );
});
