/**
 * How drawings tell yarns apart: a letter each, and a pattern where colour is not enough, on paper without colour too.
 * The limit for greys is a rule of thumb, no source.
 */
import { colourRuns } from '../planning/colour-run.ts';
import type { Plan } from '../planning/plan.ts';
import { alikeTo } from '../planning/shades.ts';
import { type ColourDepth, labOf, linear, needsEdge, parseColour, shownColours } from '../shared/colour.ts';

const leastGreyDifference = 18;

export const patterns = ['plain', 'rising', 'dots', 'falling', 'grid', 'level', 'upright'] as const;
export type Pattern = (typeof patterns)[number];

/** How a yarn is shown wherever it is drawn. */
export interface YarnSign {
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
 * A sign for each yarn that is knitted, in the order of the brief. Patterns are given only where colours need them, judged
 * as they are shown: on a screen those that look alike, all where there are but 16, in print also those of much the same
 * grey.
 */
export function yarnSigns(plan: Plan, medium: 'print' | ColourDepth): ReadonlyMap<string, YarnSign> {
  const known = signsOf.get(plan) ?? new Map<typeof medium, ReadonlyMap<string, YarnSign>>();
  signsOf.set(plan, known);
  const signs = known.get(medium) ?? findSigns(plan, medium);
  known.set(medium, signs);
  return signs;
}

/** Every drawing asks for them, and how alike colours look takes long to tell. */
const signsOf = new WeakMap<Plan, Map<'print' | ColourDepth, ReadonlyMap<string, YarnSign>>>();

function findSigns(
  { brief, stripes, hem, cord }: Plan,
  medium: 'print' | ColourDepth,
): ReadonlyMap<string, YarnSign> {
  const knitted = new Set([...stripes.map((stripe) => stripe.yarn), cord.yarn, ...(hem ? [hem.yarn] : [])]);
  const yarns = [...brief.yarns].filter(([yarn]) => knitted.has(yarn));
  const depth = medium === 'print' || medium === 'none' ? 'true' : medium;
  const shown = shownColours(
    yarns.map(([, { colour }]) => colour),
    depth,
  );
  const signs = new Map<string, YarnSign>();
  for (const [yarn, { colour: own }] of yarns) {
    const colour = shown.get(own) ?? own;
    const taken = [...signs.values()];
    const letter = freeLetter(yarn, new Set(taken.map((sign) => sign.letter)));
    const rivals = taken.filter(
      (sign) =>
        medium === '16' ||
        alikeTo(sign.colour, colour) !== null ||
        (medium === 'print' && alikeInGrey(sign.colour, colour)),
    );
    signs.set(yarn, { yarn, colour, letter, pattern: freePattern(rivals), edged: needsEdge(colour) });
  }
  return signs;
}

const alikeInGrey = (one: string, other: string): boolean =>
  Math.abs(lightness(one) - lightness(other)) < leastGreyDifference;

const lightness = (colour: string): number => labOf(linear(parseColour(colour)))[0];

/** With more look-alikes than patterns the least used one is shared; the letters still differ. */
function freePattern(rivals: readonly YarnSign[]): Pattern {
  const uses = (pattern: Pattern): number => rivals.filter((rival) => rival.pattern === pattern).length;
  return patterns.reduce((best, pattern) => (uses(pattern) < uses(best) ? pattern : best));
}

const spareLetters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789abcdefghijklmnopqrstuvwxyz'];

function freeLetter(yarn: string, taken: ReadonlySet<string>): string {
  const own = [...yarn.toUpperCase()].filter((letter) => /[A-Z0-9]/.test(letter));
  return [...own, ...spareLetters].find((letter) => !taken.has(letter)) ?? '?';
}

const dyedPlans = new WeakMap<Plan, Plan>();

/** A plan for drawings alone, in which each colour of a self-striping yarn is a stripe of its own; else the plan itself. */
export function asDyed(plan: Plan): Plan {
  const dyed = dyedPlans.get(plan) ?? dye(plan);
  dyedPlans.set(plan, dyed);
  return dyed;
}

function dye(plan: Plan): Plan {
  const runs = colourRuns(plan);
  if (runs.length === 0) return plan;
  const yarns = new Map(plan.brief.yarns);
  const nameOf = (yarn: string, colour: string): string => {
    const colours = [...new Set(runs.find((run) => run.yarn === yarn)?.bands.map((band) => band.colour))];
    return `${yarn} ${colours.indexOf(colour) + 1}`;
  };
  const stripes: Plan['stripes'][number][] = [];
  for (const stripe of plan.stripes) {
    const run = runs.find(({ yarn }) => yarn === stripe.yarn);
    const bands = run?.bands.filter(
      ({ fromRow, throughRow }) => throughRow >= stripe.firstRow && fromRow <= stripe.lastRow,
    );
    for (const band of bands ?? [null]) {
      const yarn = band ? nameOf(stripe.yarn, band.colour) : stripe.yarn;
      const own = plan.brief.yarns.get(stripe.yarn);
      if (band && own) yarns.set(yarn, { ...own, colour: band.colour });
      const firstRow = Math.max(stripe.firstRow, band?.fromRow ?? 0);
      const lastRow = Math.min(stripe.lastRow, band?.throughRow ?? stripe.lastRow);
      stripes.push({ yarn, firstRow, lastRow, rows: lastRow - firstRow + 1, number: stripes.length + 1 });
    }
  }
  return { ...plan, brief: { ...plan.brief, yarns }, stripes };
}
