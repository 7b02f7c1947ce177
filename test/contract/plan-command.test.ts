/** `slantwise plan` of the built program: JSON alone on standard output, settings and finished bags of the maker's own. */
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { slantwise as run } from '../tools/slantwise.ts';

const folder = mkdtempSync(join(tmpdir(), 'slantwise-plan-'));
const bare = join(folder, 'bare');
const settled = join(folder, 'settled');

beforeAll(() => {
  mkdirSync(join(settled, 'config/slantwise'), { recursive: true });
  mkdirSync(join(settled, 'data/slantwise/bags'), { recursive: true });
  writeFileSync(join(settled, 'config/slantwise/settings.json'), '{"units": "in"}');
  cpSync('demo/token-pouch.jsonl', join(settled, 'data/slantwise/bags/token-pouch.jsonl'));
});

afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Runs the program for a maker whose folders lie in `home`. */
const slantwise = (home: string, ...args: readonly string[]) => run(args, { home });

function write(name: string, file: unknown): string {
  const path = join(folder, name);
  writeFileSync(path, JSON.stringify(file));
  return path;
}

const brief = {
  name: 'Small bag',
  bed: { needles: 100, pitchMm: 8 },
  swatch: { stitches: 20, rows: 28, widthCm: 13, heightCm: 14 },
  bag: { stitches: 10, rows: 16 },
  yarns: { plum: { colour: '#6b2d5c', metresPer100g: 120, grams: 20 } },
  stripes: [{ yarn: 'plum', rows: 2 }],
};

describe('slantwise plan', () => {
  it('prints JSON and nothing else', () => {
    const { status, stdout, stderr } = slantwise(bare, 'plan', write('small.json', brief), '--json');
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(JSON.parse(stdout)).toMatchObject({ stitches: 10, rows: 16, knittedRows: 15, shapings: 7 });
  });

  it('prints a page in centimetres, and the time by a rule of thumb, for a maker with no settings and no bags', () => {
    const { status, stdout } = slantwise(bare, 'plan', write('small.json', brief));
    expect(status).toBe(0);
    expect(stdout).toContain('  bag       4.6 cm ± 0.2 cm wide and 5.1 cm ± 0.2 cm deep, flat and sewn,\n');
    expect(stdout.replace(/\s+/g, ' ')).toMatch(/ time about .* a rule of thumb for each act/);
  });

  it('prints a page in the units that were set, with the time at the pace of finished bags', () => {
    const { stdout } = slantwise(settled, 'plan', write('small.json', brief));
    expect(stdout).toContain('  bag       1.8 in ± 0.1 in wide and 2 in ± 0.1 in deep, flat and sewn,\n');
    expect(stdout.replace(/\s+/g, ' ')).toMatch(/ time about .*; at the pace of your finished bag /);
  });

  it('keeps JSON metric whatever the units, but for the pace of the maker', () => {
    const file = write('small.json', brief);
    const printed = (home: typeof bare) => JSON.parse(slantwise(home, 'plan', file, '--json').stdout);
    const [own, usual] = [printed(settled), printed(bare)];
    expect([own.time.ownBags, usual.time.ownBags]).toEqual([1, 0]);
    expect(own).toEqual({ ...usual, time: own.time });
  });
});

describe('slantwise plan --from-yarn', () => {
  it('plans the largest bag, which the same command without it then accepts', () => {
    const { status, stdout } = slantwise(bare, 'plan', write('small.json', brief), '--from-yarn', '--json');
    const { stitches, rows, yarn, limit } = JSON.parse(stdout);
    expect(status).toBe(0);
    expect(rows).toBeGreaterThan(16);
    expect(yarn[0]).toMatchObject({ yarn: 'plum', haveGrams: 20, enough: true });
    expect(limit).toEqual({ by: 'yarn', yarn: 'plum' });
    const asked = write('larger.json', { ...brief, bag: { stitches, rows } });
    const { limit: _, nearShapes: __, ...plan } = JSON.parse(stdout);
    expect(JSON.parse(slantwise(bare, 'plan', asked, '--json').stdout)).toEqual(plan);
  });

  it('prints it as a page that says what it is limited by', () => {
    const { stdout } = slantwise(bare, 'plan', write('small.json', brief), '--from-yarn');
    expect(stdout.replace(/\s+/g, ' ')).toContain('one repeat more would take more plum than there is');
  });

  it('refuses yarn that nobody weighed in one sentence, and prints nothing', () => {
    const { grams: _, ...plum } = brief.yarns.plum;
    const file = write('unweighed.json', { ...brief, yarns: { plum } });
    expect(slantwise(bare, 'plan', file, '--from-yarn', '--json')).toEqual({
      status: 1,
      stdout: '',
      stderr: `slantwise: ${file}: No yarn of the brief has been weighed: give its grams, or leave out --from-yarn.\n`,
    });
  });
});
