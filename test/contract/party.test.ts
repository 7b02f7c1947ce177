/** Several bags together, through the built program: planned, kept, knitted one after the other, and printed on one sheet. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { jobOf, plumAndMint } from '../fixtures/plan-of.ts';
import { emptyFolder, slantwise } from '../tools/slantwise.ts';

const brief = {
  name: 'Small bag',
  bed: { needles: 150, pitchMm: 6.5 },
  swatch: { stitches: 40, rows: 60, widthCm: 19.2, heightCm: 21.6, loopLengthMm: 17.1 },
  bag: { stitches: 12, rows: 16 },
  ...plumAndMint,
};

function maker() {
  const home = emptyFolder();
  const path = join(home, 'small.json');
  writeFileSync(path, JSON.stringify(brief));
  const at = (args: readonly string[], ...lines: readonly string[]) =>
    slantwise(args, { home, input: `${lines.join('\n')}\nquit\n` });
  return { home, path, at };
}

it('counts what is done and to do, and begins the next with its colours turned', () => {
  const { path, at } = maker();
  const { stepCount } = jobOf(brief);
  const first = at([path], 'party 3', `next ${stepCount}`, 'party next', 'next 3', 'party');
  expect(first.stdout).toMatch(
    /YARN FOR ALL 3 BAGS[\s\S]*The party of 3 bags is kept[\s\S]*Small bag 2: to do[\s\S]*A party of 3 bags: 1 done, 1 begun, 1 to do\.\nSmall bag: done\nSmall bag 2: step 4 of \d+ next\nSmall bag 3: to do\n/,
  );
  expect(at(['party']).stdout).toContain('1 done, 1 begun, 1 to do');
  // Outside, what is begun is gone on with; from it the last is begun, and when all are done it says so.
  const rest = at([], `next ${stepCount - 3}`, 'party next', `next ${stepCount}`, 'party', 'party next');
  expect(rest.stdout).toMatch(
    /Back to Small bag 2[\s\S]*3 done, 0 begun, 0 to do[\s\S]*All bags of the party are done/,
  );
});

it('plans several briefs with their colours turned, and keeps them', () => {
  const { path, at } = maker();
  const { bags, yarn, order, tools, workS } = JSON.parse(
    at(['plan', path, path, '--colours-turned', '--json']).stdout,
  );
  expect(bags.map((bag: { stripes: { yarn: string }[] }) => bag.stripes[0]?.yarn)).toEqual(['plum', 'mint']);
  expect(workS).toBeCloseTo(bags[0].time.workS + bags[1].time.workS, 6);
  expect([order, tools.prongs, yarn.length]).toEqual([[1, 0], 2, 3]);
  expect(at(['party', path, path, '--colours-turned']).stdout).toContain('The party of 2 bags is kept');
  expect(at(['party']).stdout).toMatch(/0 done, 0 begun, 2 to do\.\nSmall bag: to do\nSmall bag 2: to do/);
  expect(at(['party', path])).toMatchObject({ status: 1, stderr: expect.stringContaining('2 to 30 bags') });
});

it.each(['class', 'tag'])('says that --%s is for one bag, and writes nothing', (option) => {
  const { home, path, at } = maker();
  const out = join(home, 'party.html');
  expect(at(['sheet', path, path, `--${option}`, '--out', out])).toMatchObject({
    status: 2,
    stderr: `slantwise: --${option} is for one bag: name one brief, or leave it out\n`,
  });
  expect(existsSync(out)).toBe(false);
});

it('prints one sheet: what they have in common, then a page a bag', () => {
  const { home, path, at } = maker();
  for (const [ending, box] of [
    ['html', /type="checkbox"/g],
    ['md', /^- \[ \] Small bag$/gm],
    ['svg', /class="box"/g],
  ] as const) {
    const out = join(home, `party.${ending}`);
    expect(at(['sheet', path, path, path, '--out', out])).toMatchObject({ status: 0, stderr: '' });
    // In a drawing the words of a table are kept under each other by spaces that do not break.
    const text = readFileSync(out, 'utf8').replaceAll('\u00a0', ' ');
    expect(text.match(box)?.length).toBeGreaterThanOrEqual(3);
    expect(text).toContain('YARN FOR ALL 3 BAGS');
    if (ending === 'md') continue;
    expect(text.match(/class="page desk"/g)).toHaveLength(4);
    const ids = [...text.matchAll(/\bid="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const [, id] of text.matchAll(/url\(#([^)]+)\)/g)) expect(ids).toContain(id);
  }
});
