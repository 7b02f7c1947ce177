/**
 * Colours as numbers. sRGB to linear light and the luminance weights: IEC 61966-2-1. CIELAB under D65: CIE 15.
 * Contrast ratio: W3C, WCAG 2.2, "contrast ratio".
 */

/** Red, green, blue, each 0 to 1. */
export type Rgb = readonly [number, number, number];
/** L*, a*, b*. */
export type Lab = readonly [number, number, number];

/** `#rrggbb`, as a brief has it. */
export const parseColour = (hex: string): Rgb => [
  Number.parseInt(hex.slice(1, 3), 16) / 255,
  Number.parseInt(hex.slice(3, 5), 16) / 255,
  Number.parseInt(hex.slice(5, 7), 16) / 255,
];

/** `#rrggbb` of channels from 0 to 255. */
export const colourOf = (channels: readonly number[]): string =>
  `#${channels.map((value) => Math.round(value).toString(16).padStart(2, '0')).join('')}`;

const toLight = (value: number): number =>
  value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;

/** Linear light of a gamma-coded colour. */
export const linear = ([r, g, b]: Rgb): Rgb => [toLight(r), toLight(g), toLight(b)];

const luminance = ([r, g, b]: Rgb): number => 0.2126 * r + 0.7152 * g + 0.0722 * b;

/** 1 (the same) to 21 (black on white). */
export function contrastRatio(one: string, other: string): number {
  const [a, b] = [luminance(linear(parseColour(one))), luminance(linear(parseColour(other)))];
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}

/** Black or white, whichever is easier to read on `colour`. */
export const inkOn = (colour: string): '#000000' | '#ffffff' =>
  contrastRatio(colour, '#000000') >= contrastRatio(colour, '#ffffff') ? '#000000' : '#ffffff';

/** `part` of the way from one colour to the other, in gamma-coded values. */
export function mixColours(from: string, to: string, part: number): string {
  const end = parseColour(to);
  return colourOf(parseColour(from).map((value, i) => 255 * (value + ((end[i] ?? 0) - value) * part)));
}

const whitePoint = [0.95047, 1, 1.08883] as const;

const labCurve = (t: number): number => (t > (6 / 29) ** 3 ? Math.cbrt(t) : t / (3 * (6 / 29) ** 2) + 4 / 29);

/** CIELAB of linear light; values out of gamut are first brought inside. */
export function labOf(light: Rgb): Lab {
  const [r, g, b] = light.map((value) => Math.min(1, Math.max(0, value))) as unknown as Rgb;
  const x = labCurve((0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / whitePoint[0]);
  const y = labCurve(luminance([r, g, b]) / whitePoint[1]);
  const z = labCurve((0.0193339 * r + 0.119192 * g + 0.9503041 * b) / whitePoint[2]);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

const degrees = (radians: number): number => (radians * 180) / Math.PI;
const radians = (angle: number): number => (angle * Math.PI) / 180;

/**
 * CIEDE2000 with all weights 1: how far apart two colours look. Formula and names after G. Sharma, W. Wu and E. N. Dalal,
 * "The CIEDE2000 color-difference formula", Color Research and Application 30 (2005), 21–30.
 */
export function colourDifference([l1, a1, b1]: Lab, [l2, a2, b2]: Lab): number {
  const meanC = (Math.hypot(a1, b1) + Math.hypot(a2, b2)) / 2;
  const g = 0.5 * (1 - chromaRoot(meanC));
  const [red1, red2] = [(1 + g) * a1, (1 + g) * a2];
  const [c1, c2] = [Math.hypot(red1, b1), Math.hypot(red2, b2)];
  const [h1, h2] = [hue(red1, b1), hue(red2, b2)];

  const deltaL = l2 - l1;
  const deltaC = c2 - c1;
  const deltaH = 2 * Math.sqrt(c1 * c2) * Math.sin(radians(c1 * c2 === 0 ? 0 : hueStep(h1, h2)) / 2);

  const l = (l1 + l2) / 2;
  const c = (c1 + c2) / 2;
  const h = c1 * c2 === 0 ? h1 + h2 : meanHue(h1, h2);
  const t =
    1 -
    0.17 * Math.cos(radians(h - 30)) +
    0.24 * Math.cos(radians(2 * h)) +
    0.32 * Math.cos(radians(3 * h + 6)) -
    0.2 * Math.cos(radians(4 * h - 63));
  const lWeight = 1 + (0.015 * (l - 50) ** 2) / Math.sqrt(20 + (l - 50) ** 2);
  const cWeight = 1 + 0.045 * c;
  const hWeight = 1 + 0.015 * c * t;
  const turn = -Math.sin(radians(60 * Math.exp(-(((h - 275) / 25) ** 2)))) * 2 * chromaRoot(c);

  const [dl, dc, dh] = [deltaL / lWeight, deltaC / cWeight, deltaH / hWeight];
  return Math.sqrt(dl ** 2 + dc ** 2 + dh ** 2 + turn * dc * dh);
}

const chromaRoot = (c: number): number => Math.sqrt(c ** 7 / (c ** 7 + 25 ** 7));

const hue = (a: number, b: number): number =>
  a === 0 && b === 0 ? 0 : (degrees(Math.atan2(b, a)) + 360) % 360;

function hueStep(h1: number, h2: number): number {
  const step = h2 - h1;
  if (Math.abs(step) <= 180) return step;
  return step > 180 ? step - 360 : step + 360;
}

function meanHue(h1: number, h2: number): number {
  if (Math.abs(h1 - h2) <= 180) return (h1 + h2) / 2;
  return h1 + h2 < 360 ? (h1 + h2 + 360) / 2 : (h1 + h2 - 360) / 2;
}

// What a terminal makes of a colour. With 256 colours those from 16 on are fixed: a cube of six levels a channel, then 24 greys
// (xterm's own table, as terminals share it; from memory). The first 16 are whatever the terminal's scheme says, so only their
// order from dark to light can be counted on, and that not for all of them.

/** How many colours there are. */
export type ColourDepth = 'true' | '256' | '16' | 'none';

/** The basic colour keywords of CSS Color (W3C), in the order of ECMA-48: names in the program, since what is shown is the scheme's affair. */
export const sixteen: readonly string[] = [
  ...['#000000', '#800000', '#008000', '#808000', '#000080', '#800080', '#008080', '#c0c0c0'],
  ...['#808080', '#ff0000', '#00ff00', '#ffff00', '#0000ff', '#ff00ff', '#00ffff', '#ffffff'],
];

const levels = [0, 95, 135, 175, 215, 255];
const firstFixed = 16;
const cubeSize = 6 ** 3;
const greyCount = 24;

/** The colour with `index`, 16 to 255. */
export const fixedColour = (index: number): string => colourOf(fixedChannels(index));

/** Its red, green and blue, 0 to 255. */
function fixedChannels(index: number): readonly [number, number, number] {
  const place = index - firstFixed;
  const grey = 8 + 10 * (place - cubeSize);
  if (place >= cubeSize) return [grey, grey, grey];
  const level = (at: number): number => levels[at % 6] ?? 0;
  return [level(Math.floor(place / 36)), level(Math.floor(place / 6)), level(place)];
}

const indexes = new Map<string, number>();

/** The index of the fixed colour that looks most like `colour`. */
export function fixedIndex(colour: string): number {
  const known = indexes.get(colour);
  if (known !== undefined) return known;
  const all = Array.from({ length: cubeSize + greyCount }, (_, i) => firstFixed + i);
  const index = nearest(colour, all, (at) => {
    const [red, green, blue] = fixedChannels(at);
    return [red / 255, green / 255, blue / 255];
  });
  indexes.set(colour, index);
  return index;
}

export function sixteenIndex(colour: string): number {
  const exact = sixteen.indexOf(colour);
  return exact >= 0 ? exact : nearest(colour, [...sixteen.keys()], ofSixteen);
}

/** Dark yarns take blue, then magenta, red and black; light ones white, then cyan, yellow and green. */
const darkOnes = [4, 5, 1, 0];
const lightOnes = [7, 6, 3, 2];
const middleLightness = 50;

/**
 * Colours as they are shown. Of 16 each yarn gets one of its own while there are some: first by lightness, which
 * every scheme keeps and every eye sees, then by hue.
 */
export function shownColours(
  colours: readonly string[],
  depth: Exclude<ColourDepth, 'none'>,
): ReadonlyMap<string, string> {
  if (depth === 'true') return new Map(colours.map((colour) => [colour, colour]));
  if (depth === '256') return new Map(colours.map((colour) => [colour, fixedColour(fixedIndex(colour))]));
  const shown = new Map<string, string>();
  for (const colour of colours) {
    const taken = new Set(shown.values());
    const own = lightness(colour) < middleLightness ? darkOnes : lightOnes;
    const free = [own, [...darkOnes, ...lightOnes]]
      .map((ones) => ones.filter((index) => !taken.has(sixteen[index] ?? '')))
      .find((ones) => ones.length > 0);
    const index = taken.size === 0 || !free ? (own[0] ?? 0) : nearest(colour, free, ofSixteen);
    shown.set(colour, sixteen[index] ?? '');
  }
  return shown;
}

const lightness = (colour: string): number => labOf(linear(parseColour(colour)))[0];

const ofSixteen = (index: number): Rgb => parseColour(sixteen[index] ?? '');

/** By how much CIEDE2000 divides a difference in lightness at most: what is further off in it alone is not looked at. */
const mostLightnessWeight = 1.75;

function nearest(colour: string, indexes: readonly number[], colourAt: (index: number) => Rgb): number {
  const wanted = labOf(linear(parseColour(colour)));
  let [found, least] = [indexes[0] ?? 0, Number.POSITIVE_INFINITY];
  for (const index of indexes) {
    const lab = labOf(linear(colourAt(index)));
    if (Math.abs(lab[0] - wanted[0]) / mostLightnessWeight >= least) continue;
    const away = colourDifference(wanted, lab);
    if (away < least) [found, least] = [index, away];
  }
  return found;
}

/** So near to black or white that it may be the terminal's own ground (rule of thumb). */
const leastAgainstGround = 1.5;

/** Whether a colour needs an edge to be seen at all where the ground is black or white. */
export const needsEdge = (colour: string): boolean =>
  contrastRatio(colour, '#000000') < leastAgainstGround ||
  contrastRatio(colour, '#ffffff') < leastAgainstGround;
