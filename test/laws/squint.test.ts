/**
 * A glance from the side: the bench as pixels, blurred. What is left is one patch of colour, and it is the yarn that must be
 * in the hands.
 */
import { expect, it } from 'vitest';
import {
  colourDifference,
  labOf,
  linear,
  mixColours,
  parseColour,
  type Rgb,
} from '../../source/shared/colour.ts';
import { benchOnScreen, type Cell } from '../fixtures/drawn-screen.ts';
import { lookOf, type Scheme, schemes } from '../fixtures/palettes.ts';
import { demoJob, demoViews, differentBags } from '../fixtures/steps-of-all-kinds.ts';

/** The upper and the lower half of a cell: each about as high as it is wide. */
const halves = [0, 1];
/** How far the blur reaches along a row and down, in halves: over five cells, and over more than a row. */
const reach = { along: 2, down: 1 } as const;
const alike = 12;
/** Of the cell that a letter takes up: as much as its stroke is of the cell (a rule of thumb). */
const stroke = 1 / 4;

interface Picture {
  readonly width: number;
  /** Red, green and blue of each pixel, one after the other. */
  readonly pixels: Float64Array;
}

/** Parts of a cell that blocks and shades cover (their names in Unicode, Block Elements). */
const blocks: ReadonlyMap<string, number> = new Map(
  Object.entries({ ' ': 0, '█': 1, '▓': 3 / 4, '▒': 1 / 2, '░': 1 / 4, '▚': 1 / 2, '▞': 1 / 2, '▌': 1 / 2 }),
);

/** How much of a half of its cell a sign covers. */
function covered(sign: string, half: number): number {
  if (sign === '▄') return half;
  return sign === '▀' ? 1 - half : (blocks.get(sign) ?? stroke);
}

/** Each value as the mean of those near it on its line, of which it is the `at`th; `step` leads to the next of a line. */
function blur(values: Float64Array, reach: number, step: number): Float64Array {
  const result = new Float64Array(values.length);
  const lines = values.length / step;
  for (let at = 0; at < lines; at++) {
    const [from, end] = [Math.max(0, at - reach), Math.min(lines, at + reach + 1)];
    for (let i = 0; i < step; i++) {
      let sum = 0;
      for (let near = from; near < end; near++) sum += values[near * step + i] ?? 0;
      result[at * step + i] = sum / (end - from);
    }
  }
  return result;
}

/** Of each half of a cell its colour as a whole. Few cells differ in more than their letter. */
function cellColours(scheme: Scheme): (cell: Cell) => readonly Rgb[] {
  const seen = new Map<string, readonly Rgb[]>();
  return (cell) => {
    const key = `${cell.text} ${cell.ink} ${cell.ground} ${cell.dim} ${cell.inverse}`;
    const known = seen.get(key);
    if (known) return known;
    const parts = halves.map((half) => covered(cell.text, half));
    const look = lookOf(cell, scheme);
    const [ink, ground] = [parseColour(look.ink), parseColour(look.ground)];
    const mixed = parts.map(
      (part) => ink.map((value, i) => part * value + (1 - part) * (ground[i] ?? 0)) as unknown as Rgb,
    );
    seen.set(key, mixed);
    return mixed;
  };
}

/** The upper and the lower half of a row of the screen, blurred along it. */
function rowPixels(row: readonly Cell[], coloursOf: (cell: Cell) => readonly Rgb[]): Float64Array {
  const pixels = new Float64Array(halves.length * row.length * 3);
  const lines = halves.map((half) => pixels.subarray(half * row.length * 3, (half + 1) * row.length * 3));
  for (const [column, cell] of row.entries())
    for (const [half, colour] of coloursOf(cell).entries()) lines[half]?.set(colour, 3 * column);
  for (const line of lines) line.set(blur(line, reach.along, 3));
  return pixels;
}

/** A blurred picture of a screen. Most rows of one were in the one before. */
function eyeFor(scheme: Scheme): (cells: readonly (readonly Cell[])[]) => Picture {
  const seen = new Map<readonly Cell[], Float64Array>();
  const coloursOf = cellColours(scheme);
  const look = (row: readonly Cell[]): Float64Array => {
    const pixels = seen.get(row) ?? rowPixels(row, coloursOf);
    seen.set(row, pixels);
    return pixels;
  };
  return (cells) => {
    const width = cells[0]?.length ?? 0;
    const pixels = new Float64Array(cells.length * halves.length * width * 3);
    for (const [i, row] of cells.entries()) pixels.set(look(row), i * halves.length * width * 3);
    return { width, pixels: blur(pixels, reach.down, width * 3) };
  };
}

/** A smudge of words is a grey between the terminal's two colours, and no yarn, though a yarn may be nearly grey. */
const smudges = ({ ink, ground }: Scheme): readonly string[] =>
  Array.from({ length: 21 }, (_, i) => mixColours(ground, ink, i / 20));
const isSmudge = 4;

/** Colours are told apart by so many levels of each light; what was looked at once is not looked at again. */
const levels = 60;
const side = levels + 1;
const unknown = -2;

/** Tells for each pixel which yarn it is at a glance, by its place among the yarns; -1 for none. */
function glancer(yarns: readonly string[], scheme: Scheme): (picture: Picture) => Int8Array {
  const labs = yarns.map((colour) => labOf(linear(parseColour(colour))));
  const greys = smudges(scheme).map((colour) => labOf(linear(parseColour(colour))));
  const known = new Int8Array(side ** 3).fill(unknown);
  const kindOf = (pixel: Rgb): number => {
    const lab = labOf(linear(pixel));
    if (greys.some((grey) => colourDifference(lab, grey) < isSmudge)) return -1;
    const far = labs.map((own) => colourDifference(lab, own));
    const nearest = Math.min(...far);
    return nearest < alike ? far.indexOf(nearest) : -1;
  };
  return ({ pixels }) => {
    const kinds = new Int8Array(pixels.length / 3);
    for (let i = 0; i < kinds.length; i++) {
      const [red = 0, green = 0, blue = 0] = [pixels[3 * i], pixels[3 * i + 1], pixels[3 * i + 2]];
      const key =
        (Math.round(red * levels) * side + Math.round(green * levels)) * side + Math.round(blue * levels);
      if (known[key] === unknown) known[key] = kindOf([red, green, blue]);
      kinds[i] = known[key] ?? -1;
    }
    return kinds;
  };
}

/** The kind of the largest patch of neighbouring pixels that are of one, and how large it is. */
function largestPatch(kinds: Int8Array, width: number): { readonly kind: number; readonly size: number } {
  const seen = new Uint8Array(kinds.length);
  let largest = { kind: -1, size: 0 };
  for (const [start, kind] of kinds.entries()) {
    if (kind < 0 || seen[start]) continue;
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
        if (kinds[next] !== kind || seen[next]) continue;
        seen[next] = 1;
        open.push(next);
      }
    }
    if (size > largest.size) largest = { kind, size };
  }
  return largest;
}

/** The large view has no more yarns than the other: the bag of most. */
const largeOnes = ['leftovers-bag'];
const looks = [
  ...['dice-bag', ...differentBags].map((bag) => ({ bag, large: false })),
  ...largeOnes.map((bag) => ({ bag, large: true })),
];

it.each(looks)(
  'leaves the yarn in the hands at every step of the $bag on a dark and a light ground, large view $large',
  async ({ bag, large }) => {
    const job = demoJob(bag);
    const yarns = [...job.plan.brief.yarns.keys()];
    const colours = [...job.plan.brief.yarns.values()].map(({ colour }) => colour);
    const eyes = (['dark', 'light'] as const).map((ground) => {
      const scheme = schemes[ground] as Scheme;
      return { ground, eye: eyeFor(scheme), glance: glancer(colours, scheme) };
    });
    let shown = 0;
    for (const view of demoViews(bag)) {
      const cells = await benchOnScreen(view, 'true', large);
      const hasYarn = view.yarn !== null && yarns.includes(view.yarn);
      if (hasYarn) shown++;
      for (const { ground, eye, glance } of eyes) {
        const picture = eye(cells);
        const { kind, size } = largestPatch(glance(picture), picture.width);
        const place = `${ground}, step ${view.steps.at}, ${view.step?.act.kind}`;
        const isLarge = size > picture.pixels.length / 3 / 20;
        expect([isLarge, isLarge ? yarns[kind] : null], place).toEqual([hasYarn, hasYarn ? view.yarn : null]);
      }
    }
    expect(shown).toBeGreaterThan(50);
  },
);
