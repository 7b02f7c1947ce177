/**
 * Scrap off and rehang: the yarn is set aside, parked while it is needed again, else cut; a few waste rows hold the stitches;
 * the carriage drops the work by a pass with nothing in the feeder and comes home over the empty bed; then the loops go
 * back on at the trailing end. An even number of waste rows ends at home (common practice).
 */

import { opposite, type Side } from '../bed/bed.ts';
import type { BedMove } from '../bed/move.ts';
import { shapingsBefore } from '../planning/hangings.ts';
import type { Aside } from './act.ts';
import { bareBed, bedAt, counterAt, hangingOf, parkedDuring } from './bed-after.ts';
import { wasteRows } from './cast-on.ts';
import { combHangs, type Outline, type rehangSteps, stripeNumberOf, yarnOfRow } from './outline.ts';
import type { BedAfter, StepBody } from './step.ts';

/** What happens to the yarn that leaves the feeder once `row` is knitted, with the carriage at home. */
export function asideAfter(outline: Outline, row: number): Aside | null {
  const { yarnSpans, plan } = outline;
  const yarn = yarnOfRow(outline, row);
  const span = yarnSpans.find((one) => one.yarn === yarn);
  if (!span || row === 0) return null;
  if (span.lastRow <= row) return { how: 'cut', yarn };
  return { how: 'park', yarn, end: span.end, across: span.end !== plan.brief.homeSide };
}

export const asideMoves = (aside: Aside | null): readonly BedMove[] => {
  if (!aside) return [];
  return aside.how === 'park'
    ? [{ move: 'park', yarn: aside.yarn, end: aside.end }]
    : [{ move: 'cut', yarn: aside.yarn }];
};

/** The scrapping off after `row` and the loops going back on. */
interface Rehang {
  readonly outline: Outline;
  readonly row: number;
  /** Outermost needles that the loops go back on, and all between. */
  readonly first: string;
  readonly last: string;
  readonly needles: readonly string[];
  /** The bed with the loops where they hung, or hang again; so many passes are made since `row`. */
  readonly hung: (feeder: string | null, passes: number) => BedAfter;
  readonly hungAgain: (passes: number) => BedAfter;
  readonly bare: (carriage: Side) => BedAfter;
}

type Part = (rehang: Rehang) => Pick<StepBody, 'act' | 'moves' | 'after'>;

/** As many as the outline counts. */
const parts = [
  setAside,
  knitWaste,
  takeWeightsOff,
  takeOff,
  setNeedlesAgain,
  hangLoops,
  hangWeights,
  releaseWaste,
] as const satisfies readonly Part[] & { readonly length: typeof rehangSteps };

export function rehangStep(outline: Outline, row: number, at: number): StepBody {
  const { homeSide, shapeEveryRows } = outline.plan.brief;
  const again = hangingOf(outline, row + 1);
  const needles = outline.needles.slice(again.hungLeft, again.hungRight + 1);
  const parked = parkedDuring(outline, row, null);
  const shapings = shapingsBefore(row, shapeEveryRows);
  const hungOn = (hanging: typeof again, feeder: string | null, passes: number): BedAfter => {
    const counter = counterAt(outline, row + passes);
    return bedAt(outline, { hanging, row, shapings, feeder, parked, carriage: homeSide, counter });
  };
  const bare = bareBed(outline, homeSide, counterAt(outline, row + outline.rehangWasteRows + 1));
  const [first = '', last = ''] = [needles[0], needles.at(-1)];
  const part = parts[at] as Part;
  return {
    row,
    stripe: stripeNumberOf(outline, row),
    ...part({
      outline,
      row,
      first,
      last,
      needles,
      hung: (feeder, passes) => hungOn(hangingOf(outline, row), feeder, passes),
      hungAgain: (passes) => hungOn(again, null, passes),
      bare: (carriage) => ({ ...bare, carriage, parked, shapings }),
    }),
  };
}

function setAside({ outline, row, hung }: Rehang): ReturnType<Part> {
  const { yarn } = outline.plan.brief.waste;
  const aside = asideAfter(outline, row);
  return {
    act: { kind: 'thread-waste', yarn, aside },
    moves: [...asideMoves(aside), { move: 'feed', yarn }],
    after: hung(yarn, 0),
  };
}

function knitWaste({ outline: { plan, rehangWasteRows: rows }, hung }: Rehang): ReturnType<Part> {
  const { waste, homeSide } = plan.brief;
  return {
    ...wasteRows({ yarn: waste.yarn, from: 1, through: rows, of: rows, end: homeSide }),
    after: hung(waste.yarn, rows),
  };
}

function takeWeightsOff({ outline, row, hung }: Rehang): ReturnType<Part> {
  const { yarn } = outline.plan.brief.waste;
  return {
    act: { kind: 'weights-off', wasteYarn: yarn, comb: combHangs(outline, row), rehangs: true },
    moves: [{ move: 'cut', yarn }],
    after: hung(null, outline.rehangWasteRows),
  };
}

function takeOff({ outline, bare }: Rehang): ReturnType<Part> {
  const to = opposite(outline.plan.brief.homeSide);
  return {
    act: { kind: 'take-off', to, rehangs: true },
    moves: [{ move: 'take-off', to }],
    after: bare(to),
  };
}

function setNeedlesAgain({ outline: { plan }, first, last, needles, bare }: Rehang): ReturnType<Part> {
  const side = plan.brief.homeSide;
  return {
    act: { kind: 'set-needles-again', first, last, count: plan.stitches, carriage: side },
    moves: [
      { move: 'stand', side },
      { move: 'work', needles },
    ],
    after: bare(side),
  };
}

function hangLoops({ outline, row, first, last, hungAgain }: Rehang): ReturnType<Part> {
  return {
    act: { kind: 'rehang', first, last, count: outline.plan.stitches, yarn: yarnOfRow(outline, row) },
    moves: [{ move: 'rehang', left: first, right: last }],
    after: hungAgain(outline.rehangWasteRows + 1),
  };
}

function hangWeights({ outline, first, last, hungAgain }: Rehang): ReturnType<Part> {
  return {
    act: { kind: 'hang-weights', left: first, right: last },
    moves: [],
    after: hungAgain(outline.rehangWasteRows + 1),
  };
}

function releaseWaste({ outline, row, hungAgain }: Rehang): ReturnType<Part> {
  const counts = !outline.plan.brief.bed.without.includes('counter');
  return {
    act: { kind: 'release-waste', rehangs: true, row: counts ? row : null },
    moves: [{ move: 'release', what: 'waste' }, ...(counts ? [{ move: 'counter', rows: row } as const] : [])],
    after: hungAgain(0),
  };
}
