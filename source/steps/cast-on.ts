/**
 * The open start: needles, waste cast-on, two rows and the comb, the other waste rows, and one more row that frees the whole
 * start when it is pulled out: of the waste itself, found again by a loop of it, or of a smooth cord. It brings the carriage
 * home, and the row counter counts the bag from there (common practice).
 */
import { opposite, type Side } from '../bed/bed.ts';
import { ravelCord, ravelStrand } from '../planning/brief.ts';
import type { Act } from './act.ts';
import { bedAt, counterAt, hangingOf } from './bed-after.ts';
import type { Outline } from './outline.ts';
import type { BedAfter, StepBody } from './step.ts';

/** Rows before the comb has something firm to hang on (common practice). */
export const rowsBeforeComb = 2;

interface Start {
  readonly outline: Outline;
  readonly needles: readonly string[];
  readonly first: string;
  readonly last: string;
  /** Where the carriage stands. */
  readonly side: Side;
  /** The bed once so many passes are made. */
  readonly after: (passes: number, feeder: string | null) => BedAfter;
}

type Part = (start: Start) => Pick<StepBody, 'act' | 'moves' | 'after'>;

const parts: readonly Part[] = [
  setNeedles,
  castOn,
  threadWaste,
  firstRows,
  hold,
  otherRows,
  layRavelCord,
  ravelPass,
  trimRavelCord,
];
const partsOfFewRows = parts.filter((part) => part !== otherRows);

const partsOf = ({ plan }: Outline): readonly Part[] =>
  plan.brief.waste.rows > rowsBeforeComb ? parts : partsOfFewRows;

export const countCastOn = (outline: Outline): number => partsOf(outline).length;

export function castOnStep(outline: Outline, local: number): StepBody {
  const hanging = hangingOf(outline, 1);
  const needles = outline.needles.slice(hanging.hungLeft, hanging.hungRight + 1);
  const side = startSide(outline);
  const after = (passes: number, feeder: string | null): BedAfter =>
    bedAt(outline, {
      hanging,
      row: 0,
      shapings: 0,
      feeder,
      parked: new Map(),
      carriage: passes % 2 === 0 ? side : opposite(side),
      counter: counterAt(outline, passes),
    });
  const [first = '', last = ''] = [needles[0], needles.at(-1)];
  const part = partsOf(outline)[local] as Part;
  return { row: 0, stripe: null, ...part({ outline, needles, first, last, side, after }) };
}

function setNeedles({ outline: { plan }, needles, first, last, side, after }: Start): ReturnType<Part> {
  const { stitchSize } = plan.brief.swatch;
  return {
    act: { kind: 'set-needles', first, last, count: plan.stitches, carriage: side, stitchSize },
    moves: [
      { move: 'stand', side },
      { move: 'work', needles },
    ],
    after: { ...after(0, null), left: null, right: null, stitches: 0 },
  };
}

function castOn({ outline: { plan }, first, last, side, after }: Start): ReturnType<Part> {
  const { yarn } = plan.brief.waste;
  const [from, to] = side === 'left' ? [last, first] : [first, last];
  return {
    act: { kind: 'cast-on', yarn, from, to, count: plan.stitches },
    moves: [{ move: 'cast-on', yarn, from, to }],
    after: after(0, null),
  };
}

function threadWaste({ outline, after }: Start): ReturnType<Part> {
  const { yarn } = outline.plan.brief.waste;
  return {
    act: { kind: 'thread-waste', yarn, aside: null },
    moves: [{ move: 'feed', yarn }],
    after: after(0, yarn),
  };
}

const hasComb = ({ plan }: Outline): boolean => !plan.brief.bed.without.includes('comb');
const firstCount = ({ plan }: Outline): number => Math.min(plan.brief.waste.rows, rowsBeforeComb);

function firstRows({ outline, side, after }: Start): ReturnType<Part> {
  const { yarn, rows } = outline.plan.brief.waste;
  const through = firstCount(outline);
  const end = through % 2 === 0 ? side : opposite(side);
  const first = hasComb(outline) ? 'for the comb' : 'held down';
  return {
    ...wasteRows({ yarn, from: 1, through, of: rows, end, first }),
    after: after(through, yarn),
  };
}

function hold({ outline, first, last, after }: Start): ReturnType<Part> {
  return {
    act: hasComb(outline) ? { kind: 'hang-comb' } : { kind: 'hang-weights', left: first, right: last },
    moves: [],
    after: after(firstCount(outline), outline.plan.brief.waste.yarn),
  };
}

function otherRows({ outline, after }: Start): ReturnType<Part> {
  const { homeSide, waste } = outline.plan.brief;
  const { yarn, rows } = waste;
  const end = opposite(homeSide);
  return {
    ...wasteRows({ yarn, from: rowsBeforeComb + 1, through: rows, of: rows, end }),
    after: after(rows, yarn),
  };
}

function layRavelCord({ outline, after }: Start): ReturnType<Part> {
  const { brief } = outline.plan;
  const { yarn, rows, ravel } = brief.waste;
  const exchange = [
    { move: 'cut', yarn },
    { move: 'feed', yarn: ravelCord },
  ] as const;
  return {
    act: { kind: 'lay-ravel-cord', ravel, wasteYarn: yarn, clipSide: opposite(brief.homeSide) },
    moves: ravel === 'loop' ? [] : exchange,
    after: after(rows, ravelStrand(brief)),
  };
}

function ravelPass({ outline, after }: Start): ReturnType<Part> {
  const { brief } = outline.plan;
  return {
    act: { kind: 'ravel-pass', to: brief.homeSide },
    moves: [{ move: 'knit', to: brief.homeSide }],
    after: after(brief.waste.rows + 1, ravelStrand(brief)),
  };
}

function trimRavelCord({ outline, after }: Start): ReturnType<Part> {
  const { brief } = outline.plan;
  const { yarn, rows, ravel } = brief.waste;
  const setsCounter = !brief.bed.without.includes('counter');
  return {
    act: { kind: 'trim-ravel-cord', ravel, wasteYarn: yarn, setsCounter },
    moves: [
      { move: 'cut', yarn: ravelStrand(brief) },
      ...(setsCounter ? [{ move: 'counter', rows: 0 } as const] : []),
    ],
    after: { ...after(rows + 1, null), counter: counterAt(outline, 0) },
  };
}

/** Where the carriage stands at the cast-on, so that the waste rows and the ravel row end at home. */
function startSide({ plan }: Outline): Side {
  const { homeSide, waste } = plan.brief;
  return (waste.rows + 1) % 2 === 0 ? homeSide : opposite(homeSide);
}

/** Waste rows in one step: several passes to and fro, the last of them to the side `end`. */
interface WasteRows {
  readonly yarn: string;
  readonly from: number;
  readonly through: number;
  readonly of: number;
  readonly end: Side;
  readonly first?: Extract<Act, { readonly kind: 'waste-rows' }>['first'];
}

export function wasteRows({ end, first = null, ...rows }: WasteRows): Pick<StepBody, 'act' | 'moves'> {
  const count = rows.through - rows.from + 1;
  return {
    act: { kind: 'waste-rows', ...rows, to: end, first },
    moves: Array.from({ length: count }, (_, i) => ({
      move: 'knit',
      to: (count - 1 - i) % 2 === 0 ? end : opposite(end),
    })),
  };
}
