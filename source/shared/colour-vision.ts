/**
 * How colours look to the common types of colour vision, each at its full strength. Matrices on linear light from
 * G. M. Machado, M. M. Oliveira and L. A. F. Fernandes, "A physiologically-based model for simulation of color vision
 * deficiency", IEEE Transactions on Visualization and Computer Graphics 15 (2009), 1291–1298, severity 1.0.
 */
import type { Rgb } from './colour.ts';

export const visionTypes = ['protan', 'deutan', 'tritan'] as const;
export type VisionType = (typeof visionTypes)[number];

const matrices: Readonly<Record<VisionType, readonly [Rgb, Rgb, Rgb]>> = {
  protan: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deutan: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritan: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** Linear light as the eye of `type` sees it, again as linear light; it may lie slightly out of gamut. */
export function seenBy(type: VisionType, [r, g, b]: Rgb): Rgb {
  const [red, green, blue] = matrices[type];
  const along = (row: Rgb): number => row[0] * r + row[1] * g + row[2] * b;
  return [along(red), along(green), along(blue)];
}
