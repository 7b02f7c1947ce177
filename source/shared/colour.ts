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
