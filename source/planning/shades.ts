/**
 * Which yarns look alike. The limit is a rule of thumb, no source: a difference of 1 is the least a trained eye sees, and
 * stripes of a few rows seen across a room need far more. They are compared as the common types of colour vision see them,
 * each at its full strength, by matrices on linear light from G. M. Machado, M. M. Oliveira and L. A. F. Fernandes,
 * "A physiologically-based model for simulation of color vision deficiency", IEEE Transactions on Visualization and Computer
 * Graphics 15 (2009), 1291–1298, severity 1.0.
 */
import { colourDifference, labOf, linear, parseColour, type Rgb } from '../shared/colour.ts';
import type { Brief } from './brief.ts';
import type { KnittedStripe } from './stripe-sequence.ts';

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

/** Whose eyes take two colours for one: everybody's, or those of the named types. */
export type AlikeTo = 'everybody' | readonly VisionType[];

const leastDifference = 10;

/** Yarns of neighbouring stripes, the graft included, that are hard to tell apart; each pair once, in their order. */
export function alikeNeighbours(
  { yarns }: Brief,
  stripes: readonly KnittedStripe[],
): readonly { readonly first: string; readonly second: string; readonly to: AlikeTo }[] {
  const pairs: (readonly [string, string])[] = [];
  const beside = new Map<string, Set<string>>();
  for (const [i, { yarn: before }] of stripes.entries()) {
    const yarn = stripes[i + 1]?.yarn ?? stripes[0]?.yarn ?? before;
    if (before === yarn || beside.get(before)?.has(yarn)) continue;
    if (!beside.get(yarn)?.has(before)) pairs.push([before, yarn]);
    beside.set(before, (beside.get(before) ?? new Set()).add(yarn));
  }
  return pairs.flatMap(([first, second]) => {
    const to = alikeTo(yarns.get(first)?.colour ?? '', yarns.get(second)?.colour ?? '');
    return to === null ? [] : [{ first, second, to }];
  });
}

/** Whom two colours look alike to; null when everybody tells them apart. */
export function alikeTo(one: string, other: string): AlikeTo | null {
  const [a, b] = [linear(parseColour(one)), linear(parseColour(other))];
  if (colourDifference(labOf(a), labOf(b)) < leastDifference) return 'everybody';
  const types = visionTypes.filter(
    (type) => colourDifference(labOf(seenBy(type, a)), labOf(seenBy(type, b))) < leastDifference,
  );
  return types.length > 0 ? types : null;
}
