/**
 * Slips carried out: the planned steps as the hands make them, from the outermost loops and with what is in the feeder,
 * and the slips among them. What is then on the bed is what a maker would see (common practice).
 */
import { applyMove } from '../../bed/apply-move.ts';
import { type Bed, edgesOf, opposite } from '../../bed/bed.ts';
import { type BedMove, isHandMove } from '../../bed/move.ts';
import { formatNeedle, parseNeedle } from '../../bed/needles.ts';
import { type Job, rowAt, stepAt } from '../../steps/job.ts';
import { doneBeforeMove, doneBeforeRow } from '../../steps/landmarks.ts';
import type { Step } from '../../steps/step.ts';
import { looksAt } from '../locate/looks-of.ts';
import { placeIndex } from '../locate/place-index.ts';
import type { Looks } from '../locate/seen.ts';
import { isShapingSlip, type Slip } from '../mend/slip.ts';
import { bedAtPlace } from '../rip-back/bed-at-place.ts';
import { type FabricRow, fabricRow } from './fabric.ts';
import { setIn, setOut } from './settle.ts';

/** One move made, the bed before it, and the planned step at which it was made. */
export interface Made {
  readonly before: Bed;
  readonly move: BedMove;
  readonly step: number;
  /** Rows of fabric before it, since the story began. */
  readonly rows: number;
}

/** What the hands did from `baseDone` confirmed steps on, and what there is of it when `done` are. */
export interface Story {
  readonly slips: readonly Slip[];
  readonly baseDone: number;
  readonly done: number;
  readonly made: readonly Made[];
  readonly fabric: readonly FabricRow[];
  readonly bed: Bed;
  /** Rows of the bag that were knitted in all. */
  readonly rows: number;
  readonly looks: Looks & { readonly looseEdgeLoop: boolean };
}

interface Counts {
  rows: number;
  /** What the row counter shows: it is set to the plan's rows where the work was hung again. */
  shown: number;
  bands: number;
  colour: string | null;
  rowsOfColour: number;
  wasteRows: number;
  /** The place of a loop with nothing below it at an edge. */
  loose: number | null;
}

/** Steps confirmed before the first of the slips; those that only show now begin now. */
export function baseOf(job: Job, slips: readonly Slip[], done: number): number {
  return Math.min(done, ...slips.map((slip) => startOf(job, slip, done)));
}

function startOf(job: Job, slip: Slip, done: number): number {
  switch (slip.is) {
    case 'rows-too-many':
      return slip.step;
    case 'rows-too-few':
      return (passesUpTo(job, slip.step, slip.rows).at(-1) ?? slip.step) - 1;
    case 'row-in-other-yarn':
    case 'work-dropped':
      return slip.step - 1;
    case 'stripe-in-other-yarn':
    case 'yarns-swapped':
      return doneBeforeRow(job, job.plan.stripes[slip.stripe - 1]?.firstRow ?? 1);
    case 'rehang-missing':
    case 'rehang-shifted':
      return passOfRow(job, slip.row);
    case 'stitch-dropped':
    case 'carriage-wrong-side':
    case 'wrong-yarn-in-feeder':
      return done;
    default:
      return doneBeforeMove(job, slip.move);
  }
}

/** Numbers of the last so many pass steps up to `step`, the newest first. */
export function passesUpTo(job: Job, step: number, count: number): readonly number[] {
  const found: number[] = [];
  for (let number = step; number > 0 && found.length < count; number--)
    if (isPass(stepAt(job, number))) found.push(number);
  return found;
}

export const isPass = ({ act }: Step): boolean => act.kind === 'pass' || act.kind === 'closing-pass';

/** The step that knits `row`. */
export function passOfRow(job: Job, row: number): number {
  let number = doneBeforeRow(job, row) + 1;
  while (number < job.stepCount && !isPass(stepAt(job, number))) number++;
  return number;
}

/** The story with these slips in it; null where something of it cannot be done. */
export function storyOf(
  job: Job,
  slips: readonly Slip[],
  done: number,
  from = baseOf(job, slips, done),
): Story | null {
  const teller = new Teller(job, slips, from);
  for (let number = teller.baseDone + 1; number <= done; number++)
    if (!teller.follow(stepAt(job, number))) return null;
  return teller.endAt(done);
}

class Teller {
  readonly made: Made[] = [];
  readonly fabric: FabricRow[] = [];
  bed: Bed;
  counts: Counts;
  omitted: ReadonlySet<number>;

  constructor(
    readonly job: Job,
    readonly slips: readonly Slip[],
    readonly baseDone: number,
  ) {
    this.bed = bedAtPlace(job, baseDone);
    this.counts = countsAt(job, baseDone);
    this.omitted = new Set(
      slips.flatMap((slip) => (slip.is === 'rows-too-few' ? passesUpTo(job, slip.step, slip.rows) : [])),
    );
    this.after(baseDone);
  }

  make(moves: readonly BedMove[] | null, step: number): boolean {
    for (const move of moves ?? []) {
      const next = applyMove(this.bed, move);
      if (!next.ok) return false;
      this.made.push({ before: this.bed, move, step, rows: this.fabric.length });
      if (move.move === 'knit') this.count(this.bed);
      this.bed = next.value;
    }
    return moves !== null;
  }

  count(bed: Bed): void {
    const { counts } = this;
    const yarn = bed.feeder ?? '';
    const row = fabricRow(bed, yarn);
    this.fabric.push(row);
    if (row.strays > 0) counts.loose = strayAt(bed);
    if (!this.job.plan.brief.yarns.has(yarn)) {
      counts.wasteRows++;
      return;
    }
    counts.wasteRows = 0;
    counts.rows++;
    counts.shown++;
    if (yarn !== counts.colour) {
      counts.bands++;
      counts.rowsOfColour = 0;
    }
    counts.rowsOfColour++;
    counts.colour = yarn;
  }

  /** A step as the hands make it; false where they cannot. */
  follow(step: Step): boolean {
    if (this.slips.some((slip) => slip.is === 'work-dropped' && slip.step < step.step)) return false;
    if (step.act.kind === 'release-waste') {
      this.counts.wasteRows = 0;
      if (!isUnhung(this.slips, step)) this.counts.shown = step.act.row ?? this.counts.shown;
    }
    const moves = this.movesOf(step);
    return moves.every((part) => this.make(part(this.bed), step.step)) && this.after(step.step);
  }

  movesOf(step: Step): readonly ((bed: Bed) => readonly BedMove[] | null)[] {
    const { act } = step;
    switch (act.kind) {
      case 'increase':
      case 'decrease':
        return this.shape(act.kind, act.number);
      case 'pass':
      case 'closing-pass':
        return this.omitted.has(step.step) ? [] : [(bed) => this.pass(bed, step)];
      case 'thread':
        return [(bed) => this.thread(bed, step, this.yarnFor(step, act.yarn))];
      case 'thread-waste':
        return isUnhung(this.slips, step) ? [] : [(bed) => this.thread(bed, step, act.yarn)];
      case 'waste-rows':
        return isUnhung(this.slips, step) ? [] : step.moves.map(() => (bed) => this.across(bed, 'knit'));
      case 'take-off':
        return isUnhung(this.slips, step) ? [] : [(bed) => this.across(bed, 'take-off')];
      case 'set-needles-again':
        return isUnhung(this.slips, step) ? [] : [() => this.needlesAgain(step)];
      case 'rehang':
        return isUnhung(this.slips, step) ? [] : [() => this.rehang(step)];
      case 'cut-graft-tail':
        return [(bed) => (bed.feeder === null ? [] : [{ move: 'cut', yarn: bed.feeder }])];
      default:
        return isUnhung(this.slips, step) ? [] : [() => plannedMoves(step)];
    }
  }

  shape(part: 'increase' | 'decrease', number: number): readonly ((bed: Bed) => readonly BedMove[] | null)[] {
    const { crawl, edgeStitches } = this.job.plan.brief;
    const trailing = opposite(crawl);
    const increase = (bed: Bed) => setOut(bed, crawl, edgeStitches);
    const decrease = (bed: Bed) => setIn(bed, trailing, edgeStitches);
    const usual = part === 'increase' ? increase : decrease;
    const slip = this.slips.find((one) => isShapingSlip(one) && one.move === number);
    switch (slip?.is) {
      case undefined:
        return [usual];
      case 'move-missing':
        return [];
      case 'increase-missing':
      case 'decrease-missing':
        return slip.is.startsWith(part) ? [] : [usual];
      case 'increase-doubled':
      case 'decrease-doubled':
        return slip.is.startsWith(part) ? [usual, usual] : [usual];
      case 'move-doubled':
        return part === 'increase' ? [increase] : [decrease, increase, decrease];
      case 'move-mirrored':
        return part === 'increase'
          ? [(bed) => setOut(bed, trailing, edgeStitches)]
          : [(bed) => setIn(bed, crawl, edgeStitches)];
      case 'needle-left-working':
        return part === 'increase' ? [usual] : [(bed) => decrease(bed)?.slice(0, 1) ?? null];
      case 'needle-left-out-of-work':
        return part === 'increase' ? [usual, (bed) => this.restUncovered(bed)] : [usual];
      default:
        return [usual];
    }
  }

  restUncovered(bed: Bed): readonly BedMove[] | null {
    const { crawl, edgeStitches } = this.job.plan.brief;
    const edge = edgesOf(bed)[crawl];
    if (edge === null) return null;
    const place = edge + (crawl === 'left' ? edgeStitches : -edgeStitches);
    return [{ move: 'rest', needles: [formatNeedle(bed.needles.length, place)] }];
  }

  pass(bed: Bed, { step }: Step): readonly BedMove[] {
    const across = { move: 'knit', to: opposite(bed.carriage) } as const;
    const other = this.slips.find((slip) => slip.is === 'row-in-other-yarn' && slip.step === step);
    if (other?.is === 'row-in-other-yarn') return [...this.change(bed, step, other.used), across];
    if (!this.slips.some((slip) => slip.is === 'work-dropped' && slip.step === step)) return [across];
    const empty: readonly BedMove[] = bed.feeder === null ? [] : [{ move: 'cut', yarn: bed.feeder }];
    return [...empty, { move: 'take-off', to: across.to }];
  }

  yarnFor({ stripe }: Step, due: string): string {
    for (const slip of this.slips) {
      if (slip.is === 'stripe-in-other-yarn' && slip.stripe === stripe) return slip.used;
      if (slip.is !== 'yarns-swapped' || (stripe ?? 0) < slip.stripe) continue;
      const first = this.job.plan.stripes[slip.stripe - 1]?.yarn;
      if (due === first) return slip.used;
      if (due === slip.used) return first ?? due;
    }
    return due;
  }

  thread(bed: Bed, step: Step, yarn: string): readonly BedMove[] {
    return this.change(bed, step.step, yarn);
  }

  /** What is in the feeder goes to its parking place, or is cut where it is not needed again; then `yarn` comes in. */
  change(bed: Bed, step: number, yarn: string): readonly BedMove[] {
    const held = bed.feeder;
    if (held === yarn) return [];
    const feed = { move: 'feed', yarn } as const;
    return held === null ? [feed] : [this.aside(held, step), feed];
  }

  aside(held: string, step: number): BedMove {
    const span = this.job.outline.yarnSpans.find((one) => one.yarn === held);
    return span && span.lastRow > rowAt(this.job, step)
      ? { move: 'park', yarn: held, end: span.end }
      : { move: 'cut', yarn: held };
  }

  across({ carriage }: Bed, move: 'knit' | 'take-off'): readonly BedMove[] {
    return [{ move, to: opposite(carriage) }];
  }

  /** The needles for hanging the work again, where it will be hung. */
  needlesAgain({ act, row, moves }: Step): readonly BedMove[] | null {
    const slip = this.slips.find((one) => one.is === 'rehang-shifted' && one.row === row);
    if (slip?.is !== 'rehang-shifted' || act.kind !== 'set-needles-again') return plannedMoves({ moves });
    const names: string[] = [];
    for (const move of moves)
      for (const name of move.move === 'work' ? move.needles : []) {
        const shifted = this.shifted(name, slip.by);
        if (shifted === null) return null;
        names.push(shifted);
      }
    return [
      { move: 'stand', side: act.carriage },
      { move: 'work', needles: names },
    ];
  }

  rehang({ act, row, moves }: Step): readonly BedMove[] | null {
    const slip = this.slips.find((one) => one.is === 'rehang-shifted' && one.row === row);
    if (slip?.is !== 'rehang-shifted' || act.kind !== 'rehang') return plannedMoves({ moves });
    const left = this.shifted(act.first, slip.by);
    const right = this.shifted(act.last, slip.by);
    return left === null || right === null ? null : [{ move: 'rehang', left, right }];
  }

  shifted(name: string, by: number): string | null {
    const needleCount = this.bed.needles.length;
    const place = (parseNeedle(needleCount, name) ?? -1) + by;
    return place < 0 || place >= needleCount ? null : formatNeedle(needleCount, place);
  }

  /** Rows that were knitted too many once a step was done. */
  after(step: number): boolean {
    for (const slip of this.slips) {
      if (slip.is !== 'rows-too-many' || slip.step !== step) continue;
      for (let i = 0; i < slip.rows; i++)
        if (!this.make([{ move: 'knit', to: opposite(this.bed.carriage) }], step)) return false;
    }
    return true;
  }

  /** What only shows now, and then what there is to see. */
  endAt(done: number): Story | null {
    for (const slip of this.slips) {
      if (slip.is === 'carriage-wrong-side') {
        if (!this.make([{ move: 'slip', to: opposite(this.bed.carriage) }], done)) return null;
      } else if (slip.is === 'wrong-yarn-in-feeder') {
        const held = this.bed.feeder;
        const out = held === null ? [] : [this.aside(held, done)];
        const feed: readonly BedMove[] = slip.held === null ? [] : [{ move: 'feed', yarn: slip.held }];
        if (!this.make([...out, ...feed], done)) return null;
      }
    }
    const { slips, baseDone, made, fabric, bed, counts } = this;
    return { slips, baseDone, done, made, fabric, bed, rows: counts.rows, looks: this.looks() };
  }

  looks(): Story['looks'] {
    const { bed, counts } = this;
    const { left, right, stitchCount } = edgesOf(bed);
    const name = (place: number | null) => (place === null ? null : formatNeedle(bed.needles.length, place));
    const dropped = this.slips.some(({ is }) => is === 'stitch-dropped') ? 1 : 0;
    const emptyPasses = this.slips.some(({ is }) => is === 'work-dropped') ? 1 : 0;
    const newest = left === null ? null : (bed.needles[left]?.yarn ?? counts.colour);
    return {
      left: name(left),
      right: name(right),
      carriage: bed.carriage,
      lastColour: newest,
      feeder: bed.feeder,
      stitches: stitchCount - dropped,
      wasteRows: left === null ? 0 : counts.wasteRows,
      stripesCounted: counts.bands,
      rowCounter: counts.shown + emptyPasses,
      rowsOfColour: counts.rowsOfColour,
      looseEdgeLoop: counts.loose !== null && (counts.loose === left || counts.loose === right),
    };
  }
}

/** The steps of hanging again that follow a row, where they were forgotten. */
export const isUnhung = (slips: readonly Slip[], { act, phase, row }: Step): boolean =>
  rehangActs.has(act.kind) &&
  phase === 'stripes' &&
  slips.some((slip) => slip.is === 'rehang-missing' && slip.row === row);

/** What hanging the work again takes, from the waste yarn to the counter. */
const rehangActs: ReadonlySet<Step['act']['kind']> = new Set([
  'thread-waste',
  'waste-rows',
  'weights-off',
  'take-off',
  'set-needles-again',
  'rehang',
  'hang-weights',
  'release-waste',
]);

export const plannedMoves = ({ moves }: Pick<Step, 'moves'>): readonly BedMove[] =>
  moves.filter((move): move is BedMove => !isHandMove(move));

/** A working needle without a loop beyond the edges. */
function strayAt(bed: Bed): number | null {
  const { left, right } = edgesOf(bed);
  const place = bed.needles.findIndex(
    ({ working, loopCount }, i) => working && loopCount === 0 && (i < (left ?? 0) || i > (right ?? 0)),
  );
  return place < 0 ? null : place;
}

function countsAt(job: Job, done: number): Counts {
  const looks = looksAt(job, done, placeIndex(job).bands);
  const row = rowAt(job, done);
  return {
    rows: row,
    shown: row,
    bands: looks.stripesCounted,
    colour: row === 0 ? null : (job.plan.stripes[job.outline.stripeOfRow[row] ?? 0]?.yarn ?? null),
    rowsOfColour: looks.rowsOfColour,
    wasteRows: looks.wasteRows,
    loose: null,
  };
}
