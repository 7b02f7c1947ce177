/** Black or white, whichever stands out more on a colour: contrast by relative luminance (WCAG 2.2, W3C 2023). */
export function readableOn(colour: string): '#000000' | '#ffffff' {
  const luminance = luminanceOf(colour);
  return (luminance + 0.05) / 0.05 >= 1.05 / (luminance + 0.05) ? '#000000' : '#ffffff';
}

/** Relative luminance of `#rrggbb`, 0 to 1. */
export function luminanceOf(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) =>
    linear(Number.parseInt(colour.slice(at, at + 2), 16) / 255),
  );
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

const linear = (channel: number): number =>
  channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
