/** What is kept under names, through the built program: taken by name, gone down by what bags take, and what could be made of it. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { jobOf, plumAndMint } from '../fixtures/plan-of.ts';
import { emptyFolder, slantwise } from '../tools/slantwise.ts';

const brief = {
  name: 'First bag',
  bed: { needles: 150, pitchMm: 6.5, without: ['comb'] },
  swatch: { stitches: 40, rows: 60, widthCm: 19.2, heightCm: 21.6, loopLengthMm: 17.1, stitchSize: '6' },
  bag: { stitches: 12, rows: 16 },
  ...plumAndMint,
};
const { stepCount, plan } = jobOf(brief);
const planned = new Map(plan.yarn.map(({ yarn, grams }) => [yarn, grams ?? 0]));

function maker() {
  const home = emptyFolder();
  const at = (args: readonly string[], ...lines: readonly string[]) =>
    slantwise(args, { home, input: `${lines.join('\n')}\nquit\n` });
  const file = (name: string, json: object): string => {
    const path = join(home, `${name}.json`);
    writeFileSync(path, JSON.stringify({ ...json, name }));
    return path;
  };
  return { at, file, shelf: () => JSON.parse(at(['shelf', '--json']).stdout) };
}

const fromShelf = { ...brief, bed: 'Workroom', swatch: 'plum on 6', yarns: ['plum', 'mint'] };

describe('the shelf', () => {
  it('is taken from by name, and after three bags has what the logs say is left', () => {
    const { at, file, shelf } = maker();
    const keeping = ['keep bed workroom', 'keep swatch plum on 6', 'keep yarns'];
    at([file('First', brief)], ...keeping, `next ${stepCount}`, 'weigh plum 41', 'weigh mint 30');
    expect(shelf()).toMatchObject({
      beds: { workroom: { needles: 150, pitchMm: 6.5, without: ['comb'] } },
      swatches: { 'plum on 6': { stitches: 40, widthCm: 19.2, loopLengthMm: 17.1, stitchSize: '6' } },
      yarns: { plum: { grams: 41 }, mint: { grams: 30 } },
    });
    const second = file('Second', fromShelf);
    expect(JSON.parse(at(['plan', second, '--json']).stdout).yarn).toMatchObject([
      { yarn: 'plum', haveGrams: 41 },
      { yarn: 'mint', haveGrams: 30 },
      { yarn: 'waste' },
    ]);
    // Finished and not weighed: its plan counts. Then one on the go, weighed in the middle.
    at([second], `next ${stepCount}`);
    const left = (yarn: string, grams: number): number => grams - (planned.get(yarn) ?? 0);
    expect(shelf().yarns.plum.grams).toBeCloseTo(left('plum', 41), 9);
    at([file('Third', fromShelf)], 'next 40', 'weigh mint 20');
    expect(shelf().yarns.plum.grams).toBeCloseTo(left('plum', 41), 9);
    expect(shelf().yarns.mint.grams).toBeCloseTo(20, 9);
    // A finished bag that is thrown away has taken its yarn all the same; one on the go gives it back.
    at(['discard', 'First', '--yes']);
    at(['discard', 'Third', '--yes']);
    expect(shelf().yarns.plum.grams).toBeCloseTo(left('plum', 41), 9);
    expect(shelf().yarns.mint.grams).toBeCloseTo(left('mint', 30), 9);
  });

  it('says what could be made of two yarns and of all, and needs a bed for that', () => {
    const { at, file, shelf } = maker();
    const path = file('First', brief);
    at(
      [path],
      'keep yarns',
      'keep yarn sand #d9b36c 200 m per 100 g 50 g',
      'keep yarn lace #ffffff 800 m 100 g',
    );
    expect(shelf().couldMake).toBe(null);
    at([path], 'keep bed workroom');
    const { bags, swatch } = shelf().couldMake;
    expect(swatch).toBe(null);
    expect(
      bags.map(({ yarns, scraps }: { yarns: string[]; scraps: boolean }) => [yarns.join(), scraps]),
    ).toEqual([
      ['plum,sand', false],
      ['plum,mint', false],
      ['sand,mint', false],
      ['plum,sand,mint', true],
    ]);
    expect(at(['shelf']).stdout).toMatch(
      /Yarns:\n[\s\S]*lace #ffffff[\s\S]*by a guessed swatch \(rule of thumb\):\n {2}plum and sand: up to \S+ cm wide/,
    );
  });

  it.each([
    [{ bed: 'attic' }, 'No bed is kept under the name "attic"'],
    [{ yarns: ['gold'] }, 'No yarn is kept under the name "gold"'],
    [{ swatch: 'soft' }, 'No swatch is kept under the name "soft"'],
  ])('has nothing called so: %j', (change, told) => {
    const { at, file } = maker();
    const { status, stderr } = at(['plan', file('Bag', { ...brief, ...change })]);
    expect([status, stderr]).toEqual([1, expect.stringContaining(told)]);
  });

  it('does not keep a guess, forgets what it is told to, and leaves a file alone that it cannot read', () => {
    const { at, file } = maker();
    const guess = { ...brief, swatch: { ...brief.swatch, guess: true } };
    const { stdout } = at(
      [file('Bag', guess)],
      'keep swatch x',
      'keep bed a',
      'forget bed A',
      'forget bed a',
    );
    expect(stdout).toMatch(
      /is a guess, so there is nothing to keep[\s\S]*Kept: bed a: 150 needles[\s\S]*Off the shelf: bed a\.[\s\S]*No bed is kept under the name a/,
    );
  });
});
