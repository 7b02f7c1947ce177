/** The drawings as a terminal shows them: in a terminal emulator, at several sizes, with and without colour. */

import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { pixelsOf, show, textOf } from '../../../test/fixtures/drawn-screen.ts';
import { planOf } from '../../../test/fixtures/plan-of.ts';
import { briefFile } from '../../../test/fixtures/random-brief.ts';
import {
  demoNames,
  demoPlan,
  diceBagWith,
  hostileNames,
  renameYarn,
  twoColours,
} from '../../../test/fixtures/sheets.ts';
import { german, speak, spoken } from '../../../test/fixtures/spoken.ts';
import { tries } from '../../../test/tools/tries.ts';
import { slantsOf } from '../../planning/choose-size.ts';
import type { Plan } from '../../planning/plan.ts';
import { drawBag } from './draw-bag.ts';
import { drawBed } from './draw-bed.ts';
import { drawCord, drawGraft, drawSeam } from './draw-by-hand.ts';
import { drawFold } from './draw-fold.ts';
import { drawSlants } from './draw-slants.ts';
import { drawStrip } from './draw-strip.ts';
import type { DrawOptions } from './picture.ts';

const drawings = { drawStrip, drawBag, drawFold, drawBed } as const;
const sizes = [
  [80, 24],
  [60, 20],
  [200, 60],
] as const;
const looks: readonly Pick<DrawOptions, 'colour' | 'glyphs' | 'words'>[] = [
  { colour: 'true', glyphs: 'unicode' },
  { colour: '16', glyphs: 'unicode' },
  { colour: '16', glyphs: 'ascii' },
  { colour: 'none', glyphs: 'unicode' },
  { colour: 'none', glyphs: 'ascii' },
  { colour: 'none', glyphs: 'ascii', words: true },
];
const plum = '#6b2d5c';
const mint = '#9fd8c2';
const trueColour = { colour: 'true', glyphs: 'unicode' } as const;
const letters = { colour: 'none', glyphs: 'ascii' } as const;

describe.each(sizes)('at %d by %d', (columns, rows) => {
  it.each(demoNames)('every drawing of the %s fits, whatever the terminal can do', async (name) => {
    const plan = demoPlan(name);
    for (const draw of Object.values(drawings)) {
      for (const look of looks.filter(({ colour, words }) => colour === 'true' || words)) {
        const lines = draw(plan, { columns, rows, rowsDone: 11, ...look }, spoken());
        const screen = await show(lines, columns, rows);
        expect([screen.wrappedRows, screen.lostRows]).toEqual([0, 0]);
        expect(lines.length).toBeGreaterThan(1);
      }
    }
  });
});

describe('any window and any bag', () => {
  it('holds the drawing: never wider, never higher, never a bare escape', async () => {
    await fc.assert(
      fc.asyncProperty(
        briefFile(),
        fc.integer({ min: 1, max: 110 }),
        fc.integer({ min: 1, max: 40 }),
        fc.nat(),
        fc.constantFrom(...looks),
        async (file, columns, rows, pick, look) => {
          const plan = planOf(file);
          for (const draw of Object.values(drawings)) {
            const lines = draw(plan, { columns, rows, rowsDone: pick % (plan.rows + 1), ...look }, spoken());
            expect(lines.length).toBeLessThanOrEqual(rows);
            const screen = await show(lines, columns, rows);
            expect([screen.wrappedRows, screen.lostRows]).toEqual([0, 0]);
            if (look.colour === 'none') expect(lines.join('')).not.toContain('\u001b');
            if (look.glyphs === 'ascii' && !look.words)
              expect(lines.join('').replaceAll('°', '')).toMatch(/^[\x1b\x20-\x7e]*$/);
          }
        },
      ),
      { numRuns: tries(120) },
    );
  });
});

describe('the strip in true colour', () => {
  const plan = demoPlan('dice-bag');
  const grey = '#808080';

  it('has all 32 stripes one pixel high at 80 by 24, the knitted ones filled and the rest outlined', async () => {
    const pixels = pixelsOf(
      await show(drawStrip(plan, { columns: 80, rows: 24, rowsDone: 20, ...trueColour }, spoken()), 80, 24),
    );
    const strip = pixels.slice(0, 32).toReversed();
    for (const [i, row] of strip.entries()) {
      const wanted = i >= 10 ? grey : i % 2 === 0 ? plum : mint;
      const filled = row.filter((pixel) => pixel !== null);
      expect(new Set(filled)).toEqual(new Set([wanted]));
      // 46 stitches of 4.8 mm at 7.2 mm a pixel: 30.7 pixels across.
      if (i < 10) expect([30, 31]).toContain(filled.length);
      // The last row closes the outline.
      else if (i < 31) expect(filled.length).toBeLessThanOrEqual(4);
    }
  });

  it('leaves no gap where a stripe is half knitted', async () => {
    const options = { columns: 80, rows: 13, rowsDone: 25, ...trueColour };
    const pixels = pixelsOf(await show(drawStrip(plan, options, spoken()), 80, 13));
    // 12 lines of 2 pixels: the twelve whole stripes lie below, the half one on them.
    for (const row of pixels.slice(11, 24))
      expect(row.filter((pixel) => pixel !== null).length).toBeGreaterThan(29);
  });

  it('leans left at the angle of the plan', async () => {
    const pixels = pixelsOf(
      await show(drawStrip(plan, { columns: 80, rows: 24, rowsDone: 64, ...trueColour }, spoken()), 80, 24),
    );
    const starts = pixels.slice(0, 32).map((row) => row.findIndex((pixel) => pixel !== null));
    const [first = 0, last = 0] = [starts[0], starts[31]];
    const degrees = (Math.atan2(31, last - first) * 180) / Math.PI;
    expect(Math.abs(degrees - plan.size.stripeAngleDeg)).toBeLessThan(2);
    expect(starts).toEqual(starts.toSorted((a, b) => a - b));
  });

  it('outlines each stripe where there is room', async () => {
    const pouch = demoPlan('token-pouch');
    const pixels = pixelsOf(
      await show(drawStrip(pouch, { columns: 120, rows: 40, rowsDone: 4, ...trueColour }, spoken()), 120, 40),
    );
    const lines = pixels.slice(0, 76).filter((row) => row.filter((pixel) => pixel !== null).length > 10);
    // 38 lines of 2 pixels for 8 stripes: 9 pixels a stripe. 2 are filled; the open 6 have an upper edge each, and a
    // lower one where they do not stand on what is knitted.
    expect(lines.length).toBe(2 * 9 + 6 + 5);
  });

  it('shows the rows around the place when the strip is too long, and says which', () => {
    const long = planOf({ ...JSON.parse(JSON.stringify(dicePlain)), bag: { stitches: 20, rows: 400 } });
    const lines = drawStrip(long, { columns: 80, rows: 24, rowsDone: 200, ...letters }, spoken());
    const shown = /rows (\d+) to (\d+) of 400 shown/.exec(lines.at(-1) ?? '');
    expect(shown).not.toBeNull();
    expect(Number(shown?.[1])).toBeLessThan(200);
    expect(Number(shown?.[2])).toBeGreaterThan(200);
    // The strip goes on above: only its two sides are drawn in the topmost line.
    expect(lines[0]?.trim()).toMatch(/^[pm]{1,2} +[pm]{1,2}$/);
  });
});

const dicePlain = {
  name: 'Dice bag',
  bed: { needles: 150, pitchMm: 6.5 },
  swatch: { stitches: 40, rows: 60, widthCm: 19.2, heightCm: 21.6 },
  yarns: { plum: { colour: plum, metresPer100g: 190 }, mint: { colour: mint, metresPer100g: 190 } },
  stripes: [
    { yarn: 'plum', rows: 2 },
    { yarn: 'mint', rows: 2 },
  ],
};

describe('the strip without colour', () => {
  it('is drawn in letters: capitals where it is knitted, small ones round the rest', () => {
    const lines = drawStrip(
      demoPlan('token-pouch'),
      { columns: 80, rows: 24, rowsDone: 4, ...letters },
      spoken(),
    );
    const whole = lines.join('\n');
    expect(whole).toMatch(/P{10}/);
    expect(whole).toMatch(/M{10}/);
    expect(whole).toMatch(/^ *m +m$/m);
  });
});

describe('the bag', () => {
  it('keeps its proportions where the window shows it whole', async () => {
    const [columns, rows] = [200, 100];
    for (const name of demoNames) {
      const plan = demoPlan(name);
      const pixels = pixelsOf(
        await show(drawBag(plan, { columns, rows, ...trueColour }, spoken()), columns, rows),
      );
      const colours = new Set([...plan.brief.yarns.values()].map(({ colour }) => colour));
      const bag = pixels
        .slice(0, 2 * (rows - 3))
        .filter((row) => row.some((pixel) => pixel !== null && colours.has(pixel)));
      const width = Math.max(...bag.map((row) => row.filter((pixel) => pixel !== null).length));
      const wanted = plan.size.widthCm / plan.size.depthCm;
      // A pixel more or less either way.
      expect((width + 1) / (bag.length - 1)).toBeGreaterThan(wanted);
      expect((width - 1) / (bag.length + 1)).toBeLessThan(wanted);
    }
  });

  it.each(sizes)('has stripes at %d by %d, not a chequerboard', async (columns, rows) => {
    for (const name of demoNames) {
      const pixels = pixelsOf(
        await show(drawBag(demoPlan(name), { columns, rows, ...trueColour }, spoken()), columns, rows),
      );
      for (const row of pixels.slice(6, rows)) {
        const bag = row.filter((pixel) => pixel !== null);
        const changes = bag.filter((pixel, x) => x > 0 && pixel !== bag[x - 1]).length;
        expect(bag.length / (changes + 1)).toBeGreaterThanOrEqual(2);
      }
    }
  });

  it('pales the stripes that are not knitted yet', async () => {
    const colours = async (rowsDone: number) =>
      new Set(
        pixelsOf(
          await show(
            drawBag(demoPlan('dice-bag'), { columns: 80, rows: 24, ...trueColour, rowsDone }, spoken()),
            80,
            24,
          ),
        )
          .slice(10, 20)
          .flat()
          .filter((pixel) => pixel !== null),
      );
    expect(await colours(64)).toEqual(new Set([plum, mint]));
    expect((await colours(26)).size).toBe(4);
    expect([...(await colours(0))].filter((one) => one === plum || one === mint)).toEqual([]);
  });

  it('leaves out every second pixel of what is not knitted yet, where there are but 16 colours', async () => {
    const options = { columns: 80, rows: 24, colour: '16', glyphs: 'unicode' } as const;
    const blanks = async (rowsDone: number): Promise<number> => {
      const lines = drawBag(demoPlan('dice-bag'), { ...options, rowsDone }, spoken());
      // Below the cord and its holes.
      const rows = pixelsOf(await show(lines, 80, 24)).slice(8, 28);
      const inBag = rows.flatMap((row) => row.slice(2, 42));
      return inBag.filter((pixel) => pixel === null).length / inBag.length;
    };
    expect(await blanks(64)).toBe(0);
    expect(await blanks(0)).toBe(0.5);
    expect(await blanks(32)).toBeGreaterThan(0.1);
    expect(await blanks(32)).toBeLessThan(0.4);
  });

  it('climbs to the left where the work crawled left, to the right where it crawled right', async () => {
    const leaning = async (plan: Plan): Promise<number> => {
      const pixels = pixelsOf(
        await show(drawBag(plan, { columns: 120, rows: 50, ...trueColour }, spoken()), 120, 50),
      );
      const [lower = [], upper = []] = [pixels[80], pixels[79]];
      const same = (shift: number): number =>
        lower.filter((pixel, x) => pixel !== null && pixel === upper[x + shift]).length;
      return same(1) - same(-1);
    };
    expect(await leaning(demoPlan('dice-bag'))).toBeLessThan(0);
    expect(await leaning(diceBagWith({ crawl: 'right', homeSide: 'left' }))).toBeGreaterThan(0);
  });

  it('says its width, depth, depth below the cord and angle', () => {
    const lines = drawBag(demoPlan('dice-bag'), { columns: 80, rows: 24, ...letters }, spoken()).join('\n');
    for (const figure of ['13.7 cm', '18.1 cm', '17.1 cm', '57°']) expect(lines).toContain(figure);
  });
});

describe('the folded strip', () => {
  it('letters both grafted edges, and in the bag they stand side by side', async () => {
    const screen = await show(
      drawFold(demoPlan('dice-bag'), { columns: 80, rows: 24, ...letters }, spoken()),
      80,
      24,
    );
    const rows = textOf(screen).slice(0, 12);
    expect(rows.filter((row) => /A.*B.*BA/.test(row)).length).toBeGreaterThanOrEqual(11);
  });
});

describe('the work of the hands', () => {
  const grafting = (['B', 'A'] as const).map((edge) => ({ edge, down: 12, up: 13 }));
  const options = {
    columns: 80,
    rows: 16,
    colour: 'none',
    glyphs: 'unicode',
    grafting,
    sewing: { from: 12, through: 14 },
  } as const;
  const plain = (lines: readonly string[]) => lines.map((line) => line.replace(/\x1b\[[\d;]*m/g, ''));

  it('goes down one loop of the graft and up the next, on both edges', () => {
    const lines = plain(drawGraft(demoPlan('dice-bag'), options, spoken()));
    const names = lines[0] ?? '';
    for (const path of lines.filter((line) => line.includes('▼'))) {
      expect(Math.abs(path.indexOf('▼') - names.indexOf('A12'))).toBeLessThan(3);
      expect(Math.abs(path.indexOf('▲') - names.indexOf('A13'))).toBeLessThan(3);
    }
    expect(lines.filter((line) => line.includes('▼'))).toHaveLength(2);
    expect(lines.join('\n')).toContain('the mouth at the left');
  });

  it('counts the loops of the graft from the mouth, wherever that lies', () => {
    // The card box bag crawls right: turned over, its mouth lies at the right (the work is turned over to graft it).
    const lines = plain(drawGraft(demoPlan('card-box-bag'), options, spoken()));
    expect(lines.join('\n')).toContain('the mouth at the right');
    for (const path of lines.filter((line) => line.includes('▼')))
      expect(path.indexOf('▲')).toBeLessThan(path.indexOf('▼'));
    expect(
      lines[0]
        ?.trim()
        .split(/\s+/)
        .map((name) => Number(name.slice(1))),
    ).toEqual(
      lines[0]
        ?.trim()
        .split(/\s+/)
        .map((name) => Number(name.slice(1)))
        .toSorted((a, b) => b - a),
    );
  });

  it('goes under a bar of the front, then under one of the back, and rests where the step ends', () => {
    const lines = plain(drawSeam(demoPlan('dice-bag'), options, spoken()));
    const [names = '', , front = '', across = '', back = ''] = lines;
    const places = [...names.matchAll(/\d+/g)].map(({ index, 0: name }) => [Number(name), index] as const);
    expect(places.map(([bar]) => bar)).toEqual([10, 11, 12, 13, 14, 15, 16, 17, 18]);
    for (const [bar, at] of places) {
      const isSewn = bar <= 14;
      // A bar lies over the thread, which comes out at both sides of it.
      expect(front.padEnd(at + 3).slice(at, at + 3)).toBe(isSewn ? '━│━' : ' │ ');
      expect(back.padEnd(at + 7).slice(at + 4, at + 7)).toBe(isSewn ? '━│━' : ' │ ');
      expect(across[at + 3] === '┃').toBe(isSewn);
    }
    expect(back.trimEnd()).toMatch(/━│━►/);
  });

  it('slips towards the side on which the carriage waits, and knits away from it', () => {
    const text = drawCord(demoPlan('dice-bag'), options, spoken()).join('\n');
    expect(text).toContain('right: the carriage slips');
    expect(text).toContain('left: it knits');
  });

  it('knits the cord to and fro on a bed that cannot slip', () => {
    const flat = diceBagWith({ bed: { needles: 120, pitchMm: 6, without: ['slip'] } });
    const lines = plain(drawCord(flat, options, spoken()));
    const ways = lines.flatMap((line) =>
      line.includes('◄') ? ['left'] : line.includes('►') ? ['right'] : [],
    );
    expect(ways).toEqual(['left', 'right']);
    expect(lines.join('\n')).not.toContain('slips');
    expect(lines.join('\n')).toContain('to and fro: every pass knits a row');
  });

  it('keeps the path of the needle where rows are few, and words whole', () => {
    const few = { ...options, columns: 40, rows: 9 };
    const graft = plain(drawGraft(demoPlan('dice-bag'), few, spoken()));
    expect(graft.filter((line) => line.includes('▼'))).toHaveLength(2);
    expect(graft.join(' ').replace(/\s+/g, ' ')).toContain('the mouth at the left');
    expect(plain(drawSeam(demoPlan('dice-bag'), few, spoken())).join('')).toMatch(/━│━/);
  });

  it('never is wider or higher than it may be', () => {
    for (const draw of [drawGraft, drawSeam, drawCord]) {
      for (const [columns, rows] of [
        [24, 5],
        [40, 9],
        [79, 15],
      ] as const) {
        const lines = plain(draw(demoPlan('rulebook-bag'), { ...options, columns, rows }, spoken()));
        expect(lines.length).toBeLessThanOrEqual(rows);
        for (const line of lines) expect(line.length).toBeLessThanOrEqual(columns);
      }
    }
  });
});

describe('the bed', () => {
  it('has a bar for each hanging, as wide as its stitches', () => {
    const plan = demoPlan('rulebook-bag');
    const lines = drawBed(
      plan,
      { columns: 112, rows: 20, colour: 'none', glyphs: 'ascii', rowsDone: 30 },
      spoken(),
    );
    const bars = lines.filter((line) => /#{9}|={9}/.test(line));
    expect(bars.map((bar) => bar.replaceAll(/[^#=]/g, '').length)).toEqual([70, 70]);
    expect(bars[0]).toContain('#');
    // 14 shaping moves left before row 30: from L16 to L30, place 56 − 30 = 26.
    expect(bars[0]?.indexOf('#')).toBe(26);
  });
});

describe('colours', () => {
  const coloursIn = async (
    plan: Plan,
    look: Pick<DrawOptions, 'colour' | 'glyphs'>,
  ): Promise<ReadonlySet<string>> => {
    const { cells } = await show(drawBag(plan, { columns: 80, rows: 24, ...look }, spoken()), 80, 24);
    const inPicture = cells
      .slice(2, 18)
      .flat()
      .flatMap(({ text, ink, ground }) => (text === '▀' ? [ink, ground] : [ground ?? ink]));
    return new Set(inPicture.filter((colour) => colour !== null));
  };

  it('are the yarns’ own in true colour', async () => {
    expect(await coloursIn(demoPlan('dice-bag'), trueColour)).toEqual(new Set([plum, mint]));
  });

  it('are two of the sixteen even for two purples, and one of them has a pattern too', async () => {
    const colours = await coloursIn(twoColours('#6b2d5c', '#7a3369'), { colour: '16', glyphs: 'unicode' });
    expect(colours.size).toBe(3);
  });

  it('that look alike are told apart by a pattern', async () => {
    expect((await coloursIn(twoColours('#6b2d5c', '#6b3560'), trueColour)).size).toBe(3);
  });
});

describe('words', () => {
  it('say all that the pictures show', () => {
    const options: DrawOptions = {
      columns: 200,
      rows: 60,
      colour: 'none',
      glyphs: 'ascii',
      words: true,
      rowsDone: 30,
    };
    const plan = demoPlan('rulebook-bag');
    expect(drawStrip(plan, options, spoken())).toEqual([
      'The strip leans to the left as it grows: 30 stripes, 90 rows, the last one grafted.',
      '30 of 90 rows are knitted, 10 of 30 stripes whole.',
      'Next: stripe 11, plum, rows 31 to 34.',
    ]);
    expect(drawBed(plan, options, spoken())).toEqual([
      'The bed has 112 needles; the work crawls to the left.',
      'At row 30 the work hangs from L30 to R40.',
      'Rows 1 to 78: hung from L16 to R54, crawling to L54 to R16.',
      'Rows 79 to 89: hung from L32 to R38, crawling to L38 to R32.',
    ]);
    expect(drawFold(plan, options, spoken()).join(' ')).toContain(
      'Loop 1 of both is at the mouth, loop 70 at the bottom',
    );
    expect(drawBag(plan, options, spoken()).join(' ')).toContain('climb to the left at 57°');
  });
});

describe('in German', () => {
  beforeEach(() => speak(german));
  afterEach(() => speak(null));

  it.each(sizes)('every caption is whole at %d by %d', (columns, rows) => {
    for (const name of demoNames) {
      for (const draw of Object.values(drawings)) {
        for (const rowsDone of [0, 11, 16]) {
          const lines = draw(demoPlan(name), { columns, rows, rowsDone, ...letters }, spoken());
          // Names in the lines of a picture are no captions.
          const captions = lines.filter(
            (line) => /[a-zäöü]{4} |\] [a-zäöü]/.test(line) && !line.includes('---'),
          );
          expect(captions.length).toBeGreaterThan(0);
          // Captions are cut at the edge of the window.
          expect(captions.filter((line) => line.length >= columns)).toEqual([]);
        }
      }
    }
  });

  it.each(demoNames)('the words of the %s fit', async (name) => {
    for (const draw of Object.values(drawings)) {
      const lines = draw(
        demoPlan(name),
        { columns: 80, rows: 24, rowsDone: 11, ...letters, words: true },
        spoken(),
      );
      const screen = await show(lines, 80, 24);
      expect([screen.wrappedRows, screen.lostRows]).toEqual([0, 0]);
      expect(lines.join(' ')).not.toMatch(/\b(?:the|of|to|is|are|rows?)\b/);
    }
  });
});

describe('yarn names', () => {
  it.each(Object.entries(hostileNames))(
    'with %s stay in their place and carry no commands',
    async (_, name) => {
      const plan = renameYarn(demoPlan('dice-bag'), 'plum', name);
      for (const words of [false, true]) {
        for (const draw of Object.values(drawings)) {
          const lines = draw(
            plan,
            {
              columns: 60,
              rows: 20,
              colour: 'none',
              glyphs: 'unicode',
              words,
              rowsDone: 2,
            },
            spoken(),
          );
          expect(lines.join('')).not.toMatch(/[\u0000-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/);
          const screen = await show(lines, 60, 20);
          expect([screen.wrappedRows, screen.lostRows]).toEqual([0, 0]);
        }
      }
    },
  );
});

describe('the slants to choose from', () => {
  it('lean at the angle that is written below each, towards the crawl', () => {
    const plan = demoPlan('dice-bag');
    const slants = slantsOf(plan.brief);
    const lines = drawSlants(plan, slants, { columns: 79, rows: 13, ...letters }, spoken());
    const names = lines.at(-1) ?? '';
    for (const [i, { angleDeg, shapeEveryRows }] of slants.entries()) {
      expect(names).toContain(`${Math.round(angleDeg)}°, ${shapeEveryRows} rows`);
      // A row stands two widths of a letter above the next: stripes shift by that over the tangent. Beyond 4 they repeat.
      const patch = lines.slice(0, -1).map((line) => [...line.slice(2 + i * 19, 2 + i * 19 + 16)]);
      const shifts = patch.slice(1).map((row, y) => {
        const above = patch[y] ?? [];
        return Array.from({ length: 4 }, (_, shift) => ({
          shift,
          same: row.filter((letter, x) => x >= shift && letter === above[x - shift]).length / (16 - shift),
        })).toSorted((a, b) => b.same - a.same)[0]?.shift;
      });
      const shift = shifts.reduce<number>((sum, one) => sum + (one ?? 0), 0) / shifts.length;
      expect(Math.abs(shift - 2 / Math.tan((angleDeg * Math.PI) / 180))).toBeLessThan(0.5);
    }
  });
});
