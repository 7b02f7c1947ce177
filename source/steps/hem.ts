/**
 * The hem, while the strip still lies open between its waste rows: for each section the needles, the mouth edge hung on them with
 * the purl side to the front, plain rows, a loose one to fold on, plain rows, the picked-up loops hung on the same needles, a loose
 * row through both, and a chain that closes it (common practice, from memory). Hung so, the chain comes to lie on the inside.
 * An even number of passes ends at home.
 */
import { opposite, type Side } from '../bed/bed.ts';
import type { Move } from '../bed/move.ts';
import { evenParts, type Hem } from '../planning/hem.ts';
import type { Act } from './act.ts';
import { bareBed, counterAt } from './bed-after.ts';
import { closedBed } from './closing-row.ts';
import { middleNeedles, type Outline } from './outline.ts';
import type { BedAfter, StepBody } from './step.ts';

interface Section {
  readonly outline: Outline;
  readonly hem: Hem;
  /** Counted from 1, from the start of the strip. */
  readonly number: number;
  readonly needles: readonly string[];
  readonly first: string;
  readonly last: string;
}

type Part = readonly [act: Act, moves: readonly Move[], after: BedAfter];

/** What is done for each section, in order. */
const parts: readonly ((section: Section) => Part)[] = [
  setNeedles,
  pickUp,
  thread,
  (section) => rows(section, 'outer', 1),
  (section) => looseRow(section, 'fold-row', section.hem.rows + 1),
  (section) => rows(section, 'inner', section.hem.rows + 2),
  hangFold,
  (section) => looseRow(section, 'hem-close', section.hem.passes),
  bindOff,
];

export const countHem = ({ plan: { hem } }: Outline): number =>
  hem ? hem.sections.length * parts.length : 0;

/** Sections that are chained off once so many steps of the hem are done. */
export const hemsDone = (steps: number): number => Math.floor(steps / parts.length);

/** The bed while the work is in the lap, the hem closed where there is one. */
export const lapBed = (outline: Outline): BedAfter => {
  const { hem, brief } = outline.plan;
  return hem ? bareBed(outline, brief.homeSide, counterAt(outline, hem.passes)) : closedBed(outline);
};

export function hemStep(outline: Outline, local: number): StepBody {
  const hem = outline.plan.hem as Hem;
  const at = Math.floor(local / parts.length);
  const needles = middleNeedles(outline, hem.sections[at] ?? 0);
  const [first = '', last = ''] = [needles[0], needles.at(-1)];
  const part = parts[local % parts.length] as (typeof parts)[number];
  const [act, moves, after] = part({ outline, hem, number: at + 1, needles, first, last });
  return { row: outline.plan.knittedRows, stripe: null, act, moves, after };
}

/** Where the carriage stands after so many passes of a section. */
function sideAfter({ outline }: Section, passes: number): Side {
  const home = outline.plan.brief.homeSide;
  return passes % 2 === 0 ? home : opposite(home);
}

const onBed = (section: Section, feeder: string | null, passes: number): BedAfter => ({
  ...bareBed(section.outline, sideAfter(section, passes), counterAt(section.outline, passes)),
  left: section.first,
  right: section.last,
  stitches: section.needles.length,
  feeder,
});

const placeOf = ({ number, hem, first, last, needles }: Section) => ({
  section: number,
  of: hem.sections.length,
  first,
  last,
  count: needles.length,
});

function setNeedles(section: Section): Part {
  const { outline, needles } = section;
  const { homeSide: carriage, bed } = outline.plan.brief;
  const setsCounter = !bed.without.includes('counter');
  return [
    { kind: 'set-hem-needles', ...placeOf(section), carriage, setsCounter },
    [
      { move: 'stand', side: carriage },
      { move: 'work', needles },
      ...(setsCounter ? [{ move: 'counter', rows: 0 } as const] : []),
    ],
    bareBed(outline, carriage, counterAt(outline, 0)),
  ];
}

/** Turned so that its mouth is up, purl side to the front, the strip has its start on the side that the work crawled to. */
function pickUp(section: Section): Part {
  const { outline, hem, number, first, last } = section;
  const edgeRows = evenParts(outline.plan.knittedRows, hem.sections.length)[number - 1] ?? 0;
  return [
    { kind: 'pick-up', ...placeOf(section), rows: edgeRows, startAt: outline.plan.brief.crawl },
    [{ move: 'pick-up', of: 'edge', left: first, right: last }],
    onBed(section, null, 0),
  ];
}

function thread(section: Section): Part {
  const { yarn } = section.hem;
  return [{ kind: 'thread-hem', yarn }, [{ move: 'feed', yarn }], onBed(section, yarn, 0)];
}

/** A layer of plain rows, the first of them number `from`. */
function rows(section: Section, layer: 'outer' | 'inner', from: number): Part {
  const { hem } = section;
  const through = from + hem.rows - 1;
  return [
    { kind: 'hem-rows', layer, from, through, of: hem.passes, to: sideAfter(section, through) },
    Array.from({ length: hem.rows }, (_, i) => ({ move: 'knit', to: sideAfter(section, from + i) })),
    onBed(section, hem.yarn, through),
  ];
}

function looseRow(section: Section, kind: 'fold-row' | 'hem-close', number: number): Part {
  const { yarn, passes } = section.hem;
  const to = sideAfter(section, number);
  return [{ kind, number, of: passes, to }, [{ move: 'knit', to }], onBed(section, yarn, number)];
}

function hangFold(section: Section): Part {
  const { hem, first, last, needles } = section;
  return [
    { kind: 'hang-fold', first, last, count: needles.length },
    [{ move: 'pick-up', of: 'first-row', left: first, right: last }],
    onBed(section, hem.yarn, hem.passes - 1),
  ];
}

/** From the far edge to the one where the yarn ends. */
function bindOff({ outline, hem: { yarn }, first, last, needles }: Section): Part {
  const [from, to] = outline.plan.brief.homeSide === 'left' ? [last, first] : [first, last];
  return [
    { kind: 'bind-off', yarn, from, to, count: needles.length },
    [{ move: 'cut', yarn }, { move: 'bind-off', from, to }, { move: 'fasten' }],
    lapBed(outline),
  ];
}
