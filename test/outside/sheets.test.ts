/** The three files of the sheet, read by libraries: HTML by a validator, SVG by an XML parser, Markdown by a renderer. */

import { HtmlValidate } from 'html-validate';
import { marked } from 'marked';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { imperial } from '../../source/shared/units.ts';
import type { SheetOptions } from '../../source/sheet/page/options.ts';
import { sheetHtml } from '../../source/sheet/page/sheet-html.ts';
import { sheetMarkdown } from '../../source/sheet/page/sheet-markdown.ts';
import { sheetSvg } from '../../source/sheet/page/sheet-svg.ts';
import { allNodes, readSvg } from '../fixtures/read-svg.ts';
import { demoNames, demoPlan, hostileNames, renameYarn, twoColours } from '../fixtures/sheet-briefs.ts';
import { german, speak, spoken } from '../fixtures/spoken.ts';

const plain: SheetOptions = { date: '4 May' };
const validator = new HtmlValidate({
  extends: ['html-validate:standard', 'html-validate:document'],
  rules: { 'no-inline-style': 'error' },
});

const faultsOf = async (html: string): Promise<readonly string[]> => {
  const { results } = await validator.validateString(html);
  return results.flatMap(({ messages }) =>
    messages.map(({ ruleId, message, line }) => `${line} ${ruleId}: ${message}`),
  );
};

/** What the hostile names look like once controls are made visible and overrides are dropped. */
const visibleName: Readonly<Record<string, string>> = {
  ...hostileNames,
  control: 'a␀b␛[31mc␇d␊e',
  override: 'safegnp.exe',
};

const bare = (text: string): string => text.replaceAll(/[\u2068\u2069]/g, '');

describe.each(demoNames)('the sheet of the %s', (name) => {
  const plan = demoPlan(name);

  it('is valid HTML, for a class too', async () => {
    expect(await faultsOf(sheetHtml(plan, plain, spoken()))).toEqual([]);
    expect(
      await faultsOf(sheetHtml(plan, { ...plain, class: true, remarks: ['Mind the cat.'] }, spoken())),
    ).toEqual([]);
  });

  it('has a box to tick for each stripe, in all three files', () => {
    expect(sheetHtml(plan, plain, spoken()).match(/<input type="checkbox">/g)).toHaveLength(
      plan.stripes.length,
    );
    expect(sheetMarkdown(plan, plain, spoken()).match(/^- \[ \] /gm)).toHaveLength(plan.stripes.length);
    const boxes = allNodes(readSvg(sheetSvg(plan, plain, spoken()))).filter(
      ({ name: tag, attributes }) =>
        tag === 'rect' && attributes.width === '3.2' && attributes.height === '3.2',
    );
    expect(boxes).toHaveLength(plan.stripes.length);
  });

  it('fetches nothing: no address but the name of the SVG format', () => {
    for (const file of [
      sheetHtml(plan, plain, spoken()),
      sheetSvg(plan, plain, spoken()),
      sheetMarkdown(plan, plain, spoken()),
    ]) {
      const addresses = new Set(file.match(/[a-z]+:\/\/[^"'\s<)]*/g));
      addresses.delete('http://www.w3.org/2000/svg');
      expect([...addresses]).toEqual([]);
      expect(file).not.toMatch(/<(?:script|link|img|iframe|object|image|use)\b|@import|url\((?!#)/);
    }
  });

  it('gives the figures of the plan', () => {
    const { stitches, rows, knittedRows, shapings } = plan;
    for (const file of [
      sheetHtml(plan, plain, spoken()),
      sheetSvg(plan, plain, spoken()),
      sheetMarkdown(plan, plain, spoken()),
    ]) {
      expect(file).toContain(`${stitches} across`);
      expect(file).toContain(`${rows}: ${knittedRows} knitted, 1 grafted`);
      expect(file).toContain(`${shapings} moves`);
      expect(file).toContain('down through');
    }
  });
});

describe('the dice bag, counted by hand', () => {
  // 46 stitches and 31 moves cover 77 of 120 needles: 21 stay free at the left, L60 to L40, so the edges end at L39 after the last
  // move and begin 31 needles right of there, at L8–R38; each stripe of 2 rows crawls one needle left.
  it('lists rows and edge needles stripe by stripe, the last one grafted', () => {
    const lines = sheetMarkdown(demoPlan('dice-bag'), plain, spoken())
      .split('\n')
      .filter((line) => line.startsWith('- [ ]'));
    expect(lines[0]).toBe('- [ ] 1 plum: rows 1 2•, L8–R38');
    expect(lines[1]).toBe('- [ ] 2 mint: rows 3 4•, L9–R37');
    expect(lines[27]).toBe('- [ ] 28 mint: rows 55 56•, L35–R11');
    expect(lines[28]).toBe('- [ ] 29 plum: rows 57 58•, L36–R10');
    expect(lines[31]).toBe('- [ ] 32 mint: rows 63 graft, L39–R7');
  });

  it('says where to hang the work again', () => {
    const lines = sheetMarkdown(demoPlan('rulebook-bag'), plain, spoken()).split('\n');
    expect(lines.find((line) => line.includes('hang again'))).toBe(
      '- [ ] 26 mint: rows 77 78•, L54–R16; **after row 78 hang again, L32 to R38, then shape**',
    );
  });
});

describe('names', () => {
  it.each(Object.entries(hostileNames))('with %s come through whole and harmless', async (kind, name) => {
    const plan = renameYarn(demoPlan('dice-bag'), 'plum', name);
    const options = { ...plain, name };
    const wanted = visibleName[kind] ?? '';

    const html = sheetHtml(plan, options, spoken());
    expect(await faultsOf(html)).toEqual([]);
    const title = /<h1[^>]*>([\s\S]*?)<\/h1>/.exec(html)?.[1] ?? '';
    expect(decoded(title)).toBe(wanted);

    const nodes = allNodes(readSvg(sheetSvg(plan, options, spoken())));
    expect(decoded(nodes.find((node) => node.name === 'title')?.text ?? '')).toBe(wanted);
    const written = decoded(
      bare(
        nodes
          .filter((node) => node.name === 'text')
          .map((node) => node.text)
          .join(''),
      ),
    );
    expect(written.replaceAll(' ', '')).toContain(bare(wanted).replaceAll(' ', ''));

    const rendered = await marked.parse(sheetMarkdown(plan, options, spoken()), { gfm: true });
    const heading = /<h1>([\s\S]*?)<\/h1>/.exec(rendered)?.[1] ?? '';
    expect(decoded(heading)).toBe(wanted.trim());
    expect(rendered).not.toMatch(/<(?:script|img|a|i|b)\b/);
    expect(rendered.match(/<li><input/g)).toHaveLength(plan.stripes.length);
  });
});

function decoded(text: string): string {
  const named: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"' };
  return text.replaceAll(
    /&(?:#(\d+)|(lt|gt|amp|quot));/g,
    (_, code: string | undefined, entity: string | undefined) =>
      code ? String.fromCodePoint(Number(code)) : (named[entity ?? ''] ?? ''),
  );
}

describe('the sheet for a class', () => {
  it('has blanks for each pupil’s swatch, with the counts of the plan in the sums', () => {
    const plan = demoPlan('dice-bag');
    const html = sheetHtml(plan, { ...plain, class: true }, spoken());
    for (const sum of ['31 × w =', '64 × h =', '√(a × a + b × b) =', 'c ÷ 2 =', '45 × w × b ÷ c =']) {
      expect(html).toContain(sum);
    }
    expect(sheetHtml(plan, plain, spoken())).not.toContain('My own swatch');
    const measured = '| Swatch measured | 40 stitches, 60 rows: 19.2 cm × 21.6 cm |';
    expect(sheetMarkdown(plan, plain, spoken())).toContain(measured);
    expect(sheetMarkdown(plan, { ...plain, class: true }, spoken())).not.toContain('Swatch measured');
  });
});

describe('remarks', () => {
  it('print what the caller has to say', () => {
    const html = sheetHtml(
      twoColours('#b4564e', '#7d7a3a'),
      {
        ...plain,
        remarks: ['Hang it again after row 78.'],
      },
      spoken(),
    );
    expect(html).toContain('<li>Hang it again after row 78.</li>');
  });
});

describe('the sheet in German', () => {
  const plan = twoColours('#b4564e', '#7d7a3a');
  const options: SheetOptions = { date: '2026-05-04', class: true };
  beforeEach(() => speak(german));
  afterEach(() => speak(null));

  /** What is read or read out: text, and the names of pictures. */
  const readable = (html: string): string =>
    [
      html.replace(/<style>[\s\S]*?<\/style>/, '').replaceAll(/<[^>]*>/g, ' '),
      ...[...html.matchAll(/aria-label="([^"]*)"/g)].map(([, label]) => label),
    ].join(' ');
  const files = (): readonly string[] => [
    readable(sheetHtml(plan, options, spoken())),
    readable(sheetSvg(plan, options, spoken())),
    sheetMarkdown(plan, options, spoken()),
  ];

  it('is valid and says its language', async () => {
    const html = sheetHtml(plan, options, spoken());
    expect(await faultsOf(html)).toEqual([]);
    expect(html).toContain('<html lang="de">');
    expect(readSvg(sheetSvg(plan, options, spoken())).attributes.lang).toBe('de');
    const rendered = await marked.parse(sheetMarkdown(plan, options, spoken()), { gfm: true });
    expect(rendered.match(/<li><input/g)).toHaveLength(plan.stripes.length);
  });

  it('has no word of English grammar in it', () => {
    const english =
      /\b(?:the|of|and|or|to|with|from|for|is|are|its?|each|by|at|on|out|no|not|rows?|then)\b/gi;
    for (const text of files()) expect(text.match(english)).toBeNull();
  });

  it('writes decimals with a comma', () => {
    for (const text of files()) {
      expect(text).toContain('13,7 cm');
      expect(text).not.toMatch(/\d\.\d/);
    }
  });
});

describe('units', () => {
  it('are the maker’s', () => {
    const html = sheetHtml(demoPlan('dice-bag'), plain, spoken(imperial));
    // 13.71 cm and 18.14 cm are 5.4 in and 7.1 in.
    expect(html).toContain('5.4 in × 7.1 in');
    expect(html).not.toMatch(/\d (?:cm|mm)\b/);
  });
});
