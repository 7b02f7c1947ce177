/**
 * Which yarns look alike. The limit is a rule of thumb, no source: a difference of 1 is the least a trained eye sees, and
 * stripes of a few rows seen across a room need far more.
 */
import { labOf, linear, parseColour } from '../shared/colour.ts';
import { colourDifference } from '../shared/colour-difference.ts';
import { seenBy, type VisionType, visionTypes } from '../shared/colour-vision.ts';
import type { Brief } from './brief.ts';
import type { KnittedStripe } from './stripe-sequence.ts';

/** Whose eyes take two colours for one: everybody's, or those of the named types. */
export type AlikeTo = 'everybody' | readonly VisionType[];

const leastDifference = 10;

/** Yarns of neighbouring stripes, the graft included, that are hard to tell apart; each pair once, in their order. */
export function alikeNeighbours(
  { yarns }: Brief,
  stripes: readonly KnittedStripe[],
): readonly { readonly first: string; readonly second: string; readonly to: AlikeTo }[] {
  const pairs = new Map<string, readonly [string, string]>();
  for (const [i, { yarn }] of stripes.entries()) {
    const before = stripes.at(i - 1)?.yarn ?? yarn;
    if (before !== yarn) pairs.set(JSON.stringify([before, yarn].sort()), [before, yarn]);
  }
  return [...pairs.values()].flatMap(([first, second]) => {
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
