/**
 * A glance from the side: the bench as pixels, blurred. What is left is one patch of colour, and it is the yarn that must be
 * in the hands.
 */
import { expect, it } from 'vitest';
import { colourDifference, labOf, linear, parseColour, type Rgb } from '../../source/shared/colour.ts';
import { benchOnScreen, type Cell } from '../fixtures/drawn-screen.ts';
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
  /** Red, green and blue of each pixel, one after the other. */
  readonly pixels: Float64Array;
}

const rgbs = new Map<string, Rgb>();
function rgbOf(colour: string): Rgb {
  const rgb = rgbs.get(colour) ?? parseColour(colour);
  rgbs.set(colour, rgb);
  return rgb;
}

/** Blocks are drawn as they are; of other signs a pixel of their ink. */
function pixelsOf(cells: readonly (readonly Cell[])[], scheme: Scheme): Picture {
  const [height, width] = [cells.length * cellHeight, (cells[0]?.length ?? 0) * cellWidth];
  const pixels = new Float64Array(3 * width * height);
  for (const [row, line] of cells.entries()) {
    for (const [column, cell] of line.entries()) {
      const look = lookOf(cell, scheme);
      const [ink, ground] = [rgbOf(look.ink), rgbOf(look.ground)];
      for (let inY = 0; inY < cellHeight; inY++) {
        for (let inX = 0; inX < cellWidth; inX++) {
          const full = cell.text === '█' || (cell.text === '▄' && inY >= 2) || (cell.text === '▀' && inY < 2);
          const stroke = !/[ █▄▀]/.test(cell.text) && inX === 0 && inY === 1;
          const at = (row * cellHeight + inY) * width + column * cellWidth + inX;
          pixels.set(full || stroke ? ink : ground, 3 * at);
        }
      }
    }
  }
  return { width, height, pixels };
}

/** A box blur, along the rows and then down the columns. */
function blurred({ width, height, pixels }: Picture): Picture {
  const across = blurLines(pixels, width, height, 1, width);
  return { width, height, pixels: blurLines(across, height, width, width, 1) };
}

/** Each pixel as the mean of those near it on its line. `step` leads to the next of a line, `apart` to the next line. */
function blurLines(
  pixels: Float64Array,
  length: number,
  lines: number,
  step: number,
  apart: number,
): Float64Array {
  const result = new Float64Array(pixels.length);
  for (let line = 0; line < lines; line++) {
    for (let channel = 0; channel < 3; channel++) {
      const place = (at: number): number => 3 * (line * apart + at * step) + channel;
      let [sum, count] = [0, 0];
      for (let at = -reach; at < length; at++) {
        if (at + reach < length) {
          sum += pixels[place(at + reach)] ?? 0;
          count++;
        }
        if (at - reach > 0) {
          sum -= pixels[place(at - reach - 1)] ?? 0;
          count--;
        }
        if (at >= 0) result[place(at)] = sum / count;
      }
    }
  }
  return result;
}

/** The yarn of the largest patch of neighbouring pixels that look like a yarn, and how large it is. */
function largestPatch({ width, pixels }: Picture, yarns: ReadonlyMap<string, string>) {
  const labs = [...yarns].map(([yarn, colour]) => [yarn, labOf(linear(parseColour(colour)))] as const);
  const known = new Map<number, string | null>();
  const kinds = Array.from({ length: pixels.length / 3 }, (_, i) => {
    const pixel: Rgb = [pixels[3 * i] ?? 0, pixels[3 * i + 1] ?? 0, pixels[3 * i + 2] ?? 0];
    const [red, green, blue] = pixel.map((value) => Math.round(value * 60)) as [number, number, number];
    const key = (red * 61 + green) * 61 + blue;
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
        expect(patch.size, place).toBeGreaterThan(picture.pixels.length / 3 / 20);
      } else {
        expect(patch.size, place).toBeLessThan(picture.pixels.length / 3 / 20);
      }
    }
    expect(shown).toBeGreaterThan(50);
  },
);
