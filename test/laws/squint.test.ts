/**
 * A glance from the side: the bench as pixels, blurred. What is left is one patch of colour, and it is the yarn that must be
 * in the hands.
 */
import { expect, it } from 'vitest';
import { colourDifference, labOf, linear, parseColour, type Rgb } from '../../source/shared/colour.ts';
import { benchOnScreen } from '../fixtures/bench-on-screen.ts';
import type { Cell } from '../fixtures/drawn-screen.ts';
import { lookOf, type Scheme, schemes } from '../fixtures/palettes.ts';
import { allViews, demoJob } from '../fixtures/steps-of-all-kinds.ts';

/** Pixels a cell, and how far the blur reaches: more than a row, as an unfocused eye has it. */
const cellWidth = 2;
const cellHeight = 4;
const reach = 3;
const alike = 12;

interface Picture {
  readonly width: number;
  readonly height: number;
  readonly pixels: readonly Rgb[];
}

/** Blocks are drawn as they are; of other signs a pixel of their ink. */
function pixelsOf(cells: readonly (readonly Cell[])[], scheme: Scheme): Picture {
  const [height, width] = [cells.length * cellHeight, (cells[0]?.length ?? 0) * cellWidth];
  const pixels = Array.from({ length: width * height }, (_, at): Rgb => {
    const [x, y] = [at % width, Math.floor(at / width)];
    const cell = cells[Math.floor(y / cellHeight)]?.[Math.floor(x / cellWidth)];
    if (!cell) throw new Error('outside');
    const { ink, ground } = lookOf(cell, scheme);
    const [inX, inY] = [x % cellWidth, y % cellHeight];
    const full = cell.text === '█' || (cell.text === '▄' && inY >= 2) || (cell.text === '▀' && inY < 2);
    const stroke = !/[ █▄▀]/.test(cell.text) && inX === 0 && inY === 1;
    return parseColour(full || stroke ? ink : ground);
  });
  return { width, height, pixels };
}

/** A box blur, along the rows and then down the columns. */
function blurred({ width, height, pixels }: Picture): Picture {
  const across = blurLines(pixels, width, height, (line, at) => line * width + at);
  return { width, height, pixels: blurLines(across, height, width, (line, at) => at * width + line) };
}

function blurLines(
  pixels: readonly Rgb[],
  length: number,
  lines: number,
  placeOf: (line: number, at: number) => number,
): readonly Rgb[] {
  const result = [...pixels];
  for (let line = 0; line < lines; line++) {
    for (let at = 0; at < length; at++) {
      let [red, green, blue, count] = [0, 0, 0, 0];
      for (let near = Math.max(0, at - reach); near <= Math.min(length - 1, at + reach); near++) {
        const [r, g, b] = pixels[placeOf(line, near)] ?? [0, 0, 0];
        red += r;
        green += g;
        blue += b;
        count++;
      }
      result[placeOf(line, at)] = [red / count, green / count, blue / count];
    }
  }
  return result;
}

/** The yarn of the largest patch of neighbouring pixels that look like a yarn, and how large it is. */
function largestPatch({ width, pixels }: Picture, yarns: ReadonlyMap<string, string>) {
  const labs = [...yarns].map(([yarn, colour]) => [yarn, labOf(linear(parseColour(colour)))] as const);
  const known = new Map<string, string | null>();
  const kinds = pixels.map((pixel) => {
    const key = pixel.map((value) => Math.round(value * 60)).join();
    if (!known.has(key)) {
      const lab = labOf(linear(pixel));
      known.set(key, labs.find(([, yarn]) => colourDifference(lab, yarn) < alike)?.[0] ?? null);
    }
    return known.get(key) ?? null;
  });
  const seen = new Uint8Array(kinds.length);
  let largest: { yarn: string | null; size: number } = { yarn: null, size: 0 };
  for (const [start, yarn] of kinds.entries()) {
    if (yarn === null || seen[start]) continue;
    const open = [start];
    seen[start] = 1;
    let size = 0;
    for (let at = open.pop(); at !== undefined; at = open.pop()) {
      size++;
      const beside = [
        at - width,
        at + width,
        ...(at % width ? [at - 1] : []),
        ...((at + 1) % width ? [at + 1] : []),
      ];
      for (const next of beside) {
        if (kinds[next] !== yarn || seen[next]) continue;
        seen[next] = 1;
        open.push(next);
      }
    }
    if (size > largest.size) largest = { yarn, size };
  }
  return largest;
}

it.each([
  ['dark', false],
  ['dark', true],
  ['light', false],
  ['light', true],
] as const)(
  'leaves the yarn in the hands at every step of the demo bag on a %s ground, large view %j',
  async (ground, large) => {
    const scheme = schemes[ground];
    if (!scheme) throw new Error('no scheme');
    const job = demoJob('token-pouch');
    const colours = new Map([...job.plan.brief.yarns].map(([yarn, { colour }]) => [yarn, colour]));
    let shown = 0;
    for (const view of allViews(job)) {
      const picture = blurred(pixelsOf(await benchOnScreen(view, 'true', large), scheme));
      const patch = largestPatch(picture, colours);
      const place = `step ${view.steps.at}, ${view.step?.act.kind}`;
      if (view.yarn !== null && colours.has(view.yarn)) {
        shown++;
        expect(patch.yarn, place).toBe(view.yarn);
        expect(patch.size, place).toBeGreaterThan(picture.pixels.length / 20);
      } else {
        expect(patch.size, place).toBeLessThan(picture.pixels.length / 20);
      }
    }
    expect(shown).toBeGreaterThan(50);
  },
);
