/**
 * What a terminal makes of a colour. With 256 colours those from 16 on are fixed: a cube of six levels a channel, then 24
 * greys (xterm's own table, as terminals share it; from memory). The first 16 are whatever the terminal's scheme says, so
 * only their order from dark to light can be counted on, and that not for all of them.
 */
import { colourDifference, colourOf, contrastRatio, labOf, linear, parseColour, type Rgb } from './colour.ts';

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
