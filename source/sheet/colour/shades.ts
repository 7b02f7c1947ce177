/**
 * Which yarns look alike, and how drawings tell them apart: a letter each, and a pattern where colour is not enough, on
 * paper without colour too. The limits are rules of thumb, no source: a difference of 1 is the least a trained eye
 * sees, and stripes of a few rows seen across a room need far more.
 */
import type { Plan } from '../../planning/plan.ts';
import { labOf, linear, parseColour } from './colour.ts';
import { colourDifference } from './colour-difference.ts';
import { seenBy, type VisionType, visionTypes } from './colour-vision.ts';
import { type ColourDepth, needsEdge, shownColours } from './shown-colour.ts';

/** Yarns of neighbouring stripes, the graft included, that are hard to tell apart. */
export interface ShadeWarning {
  readonly code: 'sheet/shades-alike';
  readonly first: string;
  readonly second: string;
  /** Whose eyes take them for one: everybody's, or those of the named types. */
  readonly to: 'everybody' | readonly VisionType[];
}

const leastDifference = 10;
const leastGreyDifference = 18;

/** One warning for each pair of yarns, in the order of the stripes. */
export function shadeWarnings({ brief, stripes }: Plan): readonly ShadeWarning[] {
  const pairs = new Map<string, readonly [string, string]>();
  for (const [i, { yarn }] of stripes.entries()) {
    const before = stripes.at(i - 1)?.yarn ?? yarn;
    if (before !== yarn) pairs.set(JSON.stringify([before, yarn].sort()), [before, yarn]);
  }
  return [...pairs.values()].flatMap(([first, second]): ShadeWarning[] => {
    const to = alikeTo(brief.yarns.get(first)?.colour ?? '', brief.yarns.get(second)?.colour ?? '');
    return to === null ? [] : [{ code: 'sheet/shades-alike', first, second, to }];
  });
}

/** Whom two colours look alike to; null when everybody tells them apart. */
export function alikeTo(one: string, other: string): ShadeWarning['to'] | null {
  const [a, b] = [linear(parseColour(one)), linear(parseColour(other))];
  if (colourDifference(labOf(a), labOf(b)) < leastDifference) return 'everybody';
  const types = visionTypes.filter(
    (type) => colourDifference(labOf(seenBy(type, a)), labOf(seenBy(type, b))) < leastDifference,
  );
  return types.length > 0 ? types : null;
}

export const patterns = ['plain', 'rising', 'dots', 'falling', 'grid', 'level', 'upright'] as const;
export type Pattern = (typeof patterns)[number];

/** How a yarn is shown wherever it is drawn. */
export interface YarnMark {
  readonly yarn: string;
  /** As it is shown there. */
  readonly colour: string;
  /** One character, unique while there are no more than 62 yarns. */
  readonly letter: string;
  readonly pattern: Pattern;
  /** It may be the terminal's own ground, and wants an edge. */
  readonly edged: boolean;
}

/**
 * A mark for each yarn that is knitted, in the order of the brief. Patterns are given only where colours need them, judged
 * as they are shown: on a screen those that look alike, all where there are but 16, in print also those of much the same
 * grey.
 */
export function markYarns(
  { brief, stripes, cord }: Plan,
  medium: 'print' | ColourDepth,
): ReadonlyMap<string, YarnMark> {
  const knitted = new Set([...stripes.map((stripe) => stripe.yarn), cord.yarn]);
  const yarns = [...brief.yarns].filter(([yarn]) => knitted.has(yarn));
  const depth = medium === 'print' || medium === 'none' ? 'true' : medium;
  const shown = shownColours(
    yarns.map(([, { colour }]) => colour),
    depth,
  );
  const marks = new Map<string, YarnMark>();
  for (const [yarn, { colour: own }] of yarns) {
    const colour = shown.get(own) ?? own;
    const taken = [...marks.values()];
    const letter = freeLetter(yarn, new Set(taken.map((mark) => mark.letter)));
    const rivals = taken.filter(
      (mark) =>
        medium === '16' ||
        alikeTo(mark.colour, colour) !== null ||
        (medium === 'print' && alikeInGrey(mark.colour, colour)),
    );
    marks.set(yarn, { yarn, colour, letter, pattern: freePattern(rivals), edged: needsEdge(colour) });
  }
  return marks;
}

const alikeInGrey = (one: string, other: string): boolean =>
  Math.abs(lightness(one) - lightness(other)) < leastGreyDifference;

const lightness = (colour: string): number => labOf(linear(parseColour(colour)))[0];

/** With more look-alikes than patterns the least used one is shared; the letters still differ. */
function freePattern(rivals: readonly YarnMark[]): Pattern {
  const uses = (pattern: Pattern): number => rivals.filter((rival) => rival.pattern === pattern).length;
  return patterns.reduce((best, pattern) => (uses(pattern) < uses(best) ? pattern : best));
}

const spareLetters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789abcdefghijklmnopqrstuvwxyz'];

function freeLetter(yarn: string, taken: ReadonlySet<string>): string {
  const own = [...yarn.toUpperCase()].filter((letter) => /[A-Z0-9]/.test(letter));
  return [...own, ...spareLetters].find((letter) => !taken.has(letter)) ?? '?';
}
