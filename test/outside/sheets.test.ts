/** The three files of the sheet, read by libraries: HTML by a validator, SVG by an XML parser, Markdown by a renderer. */

import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { HtmlValidate } from 'html-validate';
import { marked } from 'marked';
import { evaluate } from 'mathjs';
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../source/planning/plan.ts';
import {
  type Block,
  columnMm,
  marginMm,
  papers,
  type SheetOptions,
  types,
} from '../../source/sheet/page/block.ts';
import { layBlock } from '../../source/sheet/page/lay-out.ts';
import { headerMm, sheetOf } from '../../source/sheet/page/pages.ts';
import { sheetHtml, ticksHash, ticksScript } from '../../source/sheet/page/sheet-html.ts';
import { sheetMarkdown } from '../../source/sheet/page/sheet-markdown.ts';
import { sheetSvg } from '../../source/sheet/page/sheet-svg.ts';
import { tagHtml, tagMarkdown, tagSvg } from '../../source/sheet/page/tag.ts';
import { patchFills } from '../../source/sheet/svg/fills.ts';
import { inEnglish } from '../../source/wording/words.ts';
import { planOf } from '../fixtures/plan-of.ts';
import { briefFile } from '../fixtures/random-brief.ts';
import { allNodes, readSvg, withClass } from '../fixtures/read-svg.ts';
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
import { tries } from '../tools/tries.ts';

const plain = (plan: Plan): SheetOptions => optionsFor(plan);
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
  const html = sheetHtml(plan, plain(plan));
  const markdown = sheetMarkdown(plan, plain(plan));
  const svg = sheetSvg(plan, plain(plan));

  it('is valid HTML, for a class too', async () => {
    expect(await faultsOf(html)).toEqual([]);
    expect(
      await faultsOf(sheetHtml(plan, { ...plain(plan), class: true, remarks: ['Mind the cat.'] })),
    ).toEqual([]);
  });

  it('has a box to tick for each stripe, in all three files', () => {
    expect(html.match(/<input type="checkbox"/g)).toHaveLength(plan.stripes.length);
    expect(markdown.match(/^- \[ \] /gm)).toHaveLength(plan.stripes.length);
    const boxes = withClass(readSvg(svg), 'box');
    expect(boxes).toHaveLength(plan.stripes.length);
    // To be ticked with a pencil, from an arm's length away.
    for (const { attributes } of boxes) expect([attributes.width, attributes.height]).toEqual(['6', '6']);
  });

  it('fetches nothing: no address but the name of the SVG format, and runs nothing but what keeps the ticks', () => {
    for (const file of [html.replace(`<script>${ticksScript}</script>`, ''), svg, markdown]) {
      const addresses = new Set(file.match(/[a-z]+:\/\/[^"'\s<)]*/g));
      addresses.delete('http://www.w3.org/2000/svg');
      expect([...addresses]).toEqual([]);
      expect(file).not.toMatch(/<(?:script|link|img|iframe|object|image|use)\b|@import|url\((?!#)/);
    }
  });

  it('gives the figures of the plan', () => {
    const { stitches, rows, knittedRows, shapings } = plan;
    for (const file of [
      html,
      // Lines of one paragraph stand one after the other.
      svg.replaceAll(/<\/text><text[^>]*>/g, ' '),
      markdown,
    ]) {
      expect(file).toContain(`${stitches} across`);
      expect(file).toContain(`${rows}: ${knittedRows} knitted, 1 grafted`);
      expect(file).toContain(`${shapings} moves`);
      expect(file).toContain('down through');
    }
  });
});

describe('the dice bag, counted by hand', () => {
  it.each([
    ['a4', 'English', inEnglish],
    ['a4', 'German', german],
    ['letter', 'English', inEnglish],
    ['letter', 'German', german],
  ] as const)(
    'has a page at the desk, one at the machine and two in the lap, on %s in %s',
    (paper, _, language) => {
      const plan = demoPlan('dice-bag');
      const { pages } = sheetOf(plan, optionsFor(plan, {}, language), papers[paper].heightMm);
      expect(pages.map(({ place }) => place)).toEqual(['desk', 'machine', 'lap', 'lap']);
    },
  );

  // 46 stitches and 31 moves cover 77 of 150 needles: 36 stay free at the left, L75 to L40, so the edges end at L39 after the last
  // move and begin 31 needles right of there, at L8–R38; after each stripe of 2 rows they stand one needle further left.
  it('lists rows and the edges after them stripe by stripe, the last row grafted', () => {
    const lines = stripesIn('dice-bag');
    expect(lines[0]).toBe('- [ ] 1 plum: 1 2• → L9–R37');
    expect(lines[1]).toBe('- [ ] 2 mint: 3 4• → L10–R36');
    expect(lines[27]).toBe('- [ ] 28 mint: 55 56• → L36–R10');
    expect(lines[30]).toBe('- [ ] 31 plum: 61 62• → L39–R7');
    expect(lines[31]).toBe('- [ ] 32 mint: 63 → 64: graft');
  });

  it('keeps the marks of shaping however many stripes there are', () => {
    // 400 rows with a move after every second one but the last: 199 moves.
    const lines = stripesOf(
      diceBagWith({ bed: { needles: 400, pitchMm: 6.5 }, bag: { stitches: 46, rows: 400 } }),
    );
    expect(lines).toHaveLength(200);
    expect(lines.join('').match(/•/g)).toHaveLength(199);
  });

  it('says where to hang the work again', () => {
    expect(stripesIn('rulebook-bag').find((line) => line.includes('hang again'))).toBe(
      '- [ ] 26 mint: 77 78• → L33–R37; **After row 78 scrap off, hang again on L32 to R38, counter to 78, then shape.**',
    );
  });
});

describe('the sheet of a class', () => {
  it('has lines for the pupils, with room for what each measures, in all three files', () => {
    const plan = demoPlan('dice-bag');
    const options = { ...plain(plan), class: true };
    const titles = ['Name', 'Swatch: w, h', 'Bag: wide, deep', 'Done'];
    expect(sheetMarkdown(plan, options)).toContain(
      `| ${titles.join(' | ')} |\n|${' --- |'.repeat(4)}\n${'|  |  |  |  |\n'.repeat(24)}`,
    );
    const html = sheetHtml(plan, options);
    const register = html.slice(html.indexOf('<table class="register">'));
    expect(register.slice(0, register.indexOf('</table>')).match(/<tr>/g)).toHaveLength(25);
    for (const title of titles) expect(sheetSvg(plan, options)).toContain(`>${title}</text>`);
  });
});

describe('every page', () => {
  it('is no higher than its paper, in the widest of common fonts', () => {
    fc.assert(
      fc.property(briefFile(), fc.constantFrom('a4', 'letter'), fc.boolean(), (file, paper, inGerman) => {
        const plan = planOf(file);
        const { title, pages } = sheetOf(
          plan,
          optionsFor(plan, {}, inGerman ? german : inEnglish),
          papers[paper].heightMm,
        );
        for (const [i, { place, blocks }] of pages.entries()) {
          const room = { widthMm: columnMm, type: types[place], fills: patchFills(plan) };
          const highMm = blocks.map((block) => layBlock(block, room).heightMm + types[place].gap);
          const inAll = highMm.reduce(
            (sum, mm) => sum + mm,
            headerMm(title, place, i === 0) - types[place].gap,
          );
          expect(inAll, `${place}, page ${i + 1}`).toBeLessThanOrEqual(
            papers[paper].heightMm - 2 * marginMm.top + 0.01,
          );
        }
      }),
      { numRuns: tries(40, 6) },
    );
  });
});

describe('what belongs to a place', () => {
  const headings: Readonly<Record<string, readonly string[]>> = {
    desk: ['The strip', 'The bag', 'Yarn', 'Words', 'Notes', 'My own swatch', 'The class'],
    machine: ['Cast on', 'Each stripe', 'Hang again', 'Close', 'Hem', 'Stripes', 'Stripes, on'],
    lap: [
      'Turn it over and fold it',

      'Graft',
      'Sew the bottom and finish',
      'Sew the corners across',
      'Line it, if you like',
      'Make the cord',
      'Thread the cord and tie',
      'When something goes wrong',
    ],
  };
  const headsOf = (block: Block): readonly string[] => {
    if (block.kind === 'heading') return [block.text];
    if (block.kind === 'run') return [block.head ?? ''];
    if (block.kind === 'together') return block.blocks.flatMap(headsOf);
    return block.kind === 'beside' ? block.parts.flatMap(({ blocks }) => blocks.flatMap(headsOf)) : [];
  };

  it('stands there whatever the bag and the paper, and nowhere else', () => {
    fc.assert(
      fc.property(briefFile(), fc.constantFrom('a4', 'letter'), fc.boolean(), (file, paper, forClass) => {
        const plan = planOf(file);
        for (const { place, blocks } of sheetOf(
          plan,
          optionsFor(plan, { class: forClass }),
          papers[paper].heightMm,
        ).pages) {
          const heads = blocks.flatMap(headsOf);
          expect(heads.filter((head) => !headings[place]?.includes(head))).toEqual([]);
        }
      }),
      { numRuns: tries(30, 6) },
    );
  });
});

const stripesOf = (plan: Plan): readonly string[] =>
  sheetMarkdown(plan, plain(plan))
    .split('\n')
    .filter((line) => line.startsWith('- [ ]'));
const stripesIn = (name: (typeof demoNames)[number]): readonly string[] => stripesOf(demoPlan(name));

describe('the script that keeps the ticks', () => {
  it('is the one that the page lets run, by its sum', () => {
    const plan = demoPlan('token-pouch');
    expect(ticksHash).toBe(`sha256-${createHash('sha256').update(ticksScript).digest('base64')}`);
    expect(sheetHtml(plan, plain(plan))).toContain(`script-src '${ticksHash}'"`);
  });
});

describe('names', () => {
  it.each(Object.entries(hostileNames))('with %s come through whole and harmless', async (kind, name) => {
    const plan = renameYarn(demoPlan('dice-bag'), 'plum', name);
    const options = { ...plain(plan), name };
    const wanted = visibleName[kind] ?? '';

    const html = sheetHtml(plan, options);
    expect(await faultsOf(html)).toEqual([]);
    const title = /<h1[^>]*>([\s\S]*?)<\/h1>/.exec(html)?.[1] ?? '';
    expect(decoded(title)).toBe(wanted);

    const nodes = allNodes(readSvg(sheetSvg(plan, options)));
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

    const rendered = await marked.parse(sheetMarkdown(plan, options), { gfm: true });
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
    const html = sheetHtml(plan, { ...plain(plan), class: true });
    for (const sum of ['31 × w =', '64 × h =', '√(a × a + b × b) =', 'c ÷ 2 =', '45 × w × b ÷ c =']) {
      expect(html).toContain(sum);
    }
    const hemmed = demoPlan('card-box-bag');
    expect(sheetHtml(hemmed, { ...plain(hemmed), class: true })).toContain('40 × w × b ÷ c + 4.5 × h =');
    expect(sheetHtml(plan, plain(plan))).not.toContain('My own swatch');
    const measured = '| Swatch measured | 40 stitches, 60 rows: 19.2 cm × 21.6 cm, wet-relaxed |';
    expect(sheetMarkdown(plan, plain(plan))).toContain(measured);
    expect(sheetMarkdown(plan, { ...plain(plan), class: true })).not.toContain('Swatch measured');
  });

  it('leads a pupil with the plan’s own swatch to the plan’s own bag', () => {
    const plan = demoPlan('dice-bag');
    const html = sheetHtml(plan, { ...plain(plan), class: true });
    // What the pupil writes down of the swatch of 40 stitches and 60 rows, in cm; each sum then as it is printed, by mathjs.
    const known: Record<string, number> = { stitches: 40, width: 19.2, rows: 60, height: 21.6 };
    const sums = html.matchAll(/<dt>[^<]*\b(\w+)<\/dt>(?:<dd class="blank"><\/dd>)?<dd>([^<]*) =<\/dd>/g);
    for (const [, name = '', sum = ''] of sums)
      known[name] = evaluate(sum.replaceAll('×', '*').replaceAll('÷', '/').replace('√', 'sqrt'), known);
    expect(known.wide).toBeCloseTo(plan.size.widthCm, 9);
    expect(known.deep).toBeCloseTo(plan.size.depthCm, 9);
  });
});

describe('the gift tag', () => {
  const plan = demoPlan('dice-bag');
  const given = { ...plain(plan), fibre: '60 % wool & 40 % <alpaca>', care: null };

  it('has the name, the words that the maker gave, a line where none were given, and the note on the cord', () => {
    const nodes = allNodes(readSvg(tagSvg(plan, given)));
    const written = decoded(
      nodes
        .filter(({ name }) => name === 'text')
        .map(({ text }) => text)
        .join(' '),
    );
    for (const text of [
      'Dice bag',
      '60 % wool & 40 % <alpaca>',
      'Care:',
      '4 May 2026',
      'This bag is no toy.',
      'EN 71-1',
    ])
      expect(written).toContain(text);
    expect(withClass(readSvg(tagSvg(plan, given)), 'stripe').length).toBeGreaterThan(plan.stripes.length / 2);
    expect(withClass(readSvg(tagSvg(plan, given)), 'cut')).toHaveLength(1);
  });

  it('keeps what is to be cut out apart from the note', () => {
    const svg = readSvg(tagSvg(plan, given));
    const { x, width } = withClass(svg, 'cut')[0]?.attributes ?? {};
    const note = allNodes(svg).find(({ name, text }) => name === 'text' && text.startsWith('This bag'));
    expect(Number(note?.attributes.x)).toBeGreaterThan(Number(x) + Number(width));
  });

  it('is valid HTML, and Markdown without markup of the maker’s', async () => {
    expect(await faultsOf(tagHtml(plan, given))).toEqual([]);
    const rendered = await marked.parse(tagMarkdown(plan, given), { gfm: true });
    expect(rendered).toContain('&lt;alpaca&gt;');
  });
});

describe('remarks', () => {
  it('print what the caller has to say', () => {
    const plan = twoColours('#b4564e', '#7d7a3a');
    const html = sheetHtml(plan, { ...plain(plan), remarks: ['Hang it again after row 78.'] });
    expect(html).toContain('<p class="ruled">Hang it again after row 78.</p>');
  });
});

describe('the sheet in German', () => {
  const plan = twoColours('#b4564e', '#7d7a3a');
  const options = (): SheetOptions => optionsFor(plan, { date: '2026-05-04', class: true }, german);

  /** What is read or read out: text, and the names of pictures. */
  const readable = (html: string): string =>
    [
      html.replace(/<style>[\s\S]*?<\/style>|<script>[\s\S]*?<\/script>/g, '').replaceAll(/<[^>]*>/g, ' '),
      ...[...html.matchAll(/aria-label="([^"]*)"/g)].map(([, label]) => label),
    ].join(' ');
  const files = (): readonly string[] => [
    readable(sheetHtml(plan, options())),
    readable(sheetSvg(plan, options())),
    sheetMarkdown(plan, options()),
  ];

  it('is valid and says its language', async () => {
    const html = sheetHtml(plan, options());
    expect(await faultsOf(html)).toEqual([]);
    expect(html).toContain('<html lang="de">');
    expect(readSvg(sheetSvg(plan, options())).attributes.lang).toBe('de');
    const rendered = await marked.parse(sheetMarkdown(plan, options()), { gfm: true });
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
    const plan = demoPlan('dice-bag');
    const html = sheetHtml(plan, optionsFor(plan, {}, inEnglish, { length: 'in', mass: 'oz', yarn: 'yd' }));
    // 13.71 ± 0.6 cm and 18.14 ± 0.8 cm are 5.4 ± 0.2 in and 7.1 ± 0.3 in.
    expect(html).toContain('5.4 in ± 0.2 in × 7.1 in ± 0.3 in');
    // The style is not read, and the published limits for cords stand in the unit in which they are published.
    const read = html.replace(/<style>[\s\S]*?<\/style>|Keep cords from[^<]*/g, '');
    expect(read).not.toMatch(/\d (?:cm|mm)\b/);
  });
});
