/**
 * Slips carried out: the planned steps as the hands make them, from the outermost loops and with what is in the feeder,
 * and the slips among them. What is then on the bed is what a maker would see (common practice).
 */
import { applyMove } from '../../bed/apply-move.ts';
import { type Bed, edgesOf, opposite } from '../../bed/bed.ts';
import type { BedMove } from '../../bed/move.ts';
import { formatNeedle } from '../../bed/needles.ts';
import { type Job, rowAt, stepAt } from '../../steps/job.ts';
import type { Step } from '../../steps/step.ts';
import { looksAt } from '../locate/looks-of.ts';
import { placeIndex } from '../locate/place-index.ts';
import type { Looks } from '../locate/seen.ts';
import type { Slip } from '../mend/slip.ts';
import { bedAtPlace } from '../rip-back/bed-at-place.ts';
import { type FabricRow, fabricRow } from './fabric.ts';
import { Hands } from './hands.ts';
import { type LooseLoop, looseAfter, looseAt } from './loose-loop.ts';
import { baseOf, isUnhung } from './slip-moment.ts';

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
  readonly loose: LooseLoop | null;
  readonly looks: Looks & {
    /** Null where either may be said of it. */
    readonly looseEdgeLoop: boolean | null;
    readonly strayColumn: boolean;
    readonly rehung: boolean;
    readonly beforeMove: boolean;
  };
}

interface CountsSeen {
  rows: number;
  /** What the row counter shows: it is set to the plan's rows where the work was hung again. */
  shown: number;
  bands: number;
  colour: string | null;
  rowsOfColour: number;
  wasteRows: number;
  loose: LooseLoop | null;
  /** A loop was knitted on nothing, wherever it is now. */
  strayColumn: boolean;
}

/** The story with these slips in it; null where something of it cannot be done. */
export function storyOf(
  job: Job,
  slips: readonly Slip[],
  done: number,
  from = baseOf(job, slips, done),
): Story | null {
  const teller = new Teller(job, slips, from);
  if (!teller.after(from)) return null;
  for (let number = teller.baseDone + 1; number <= done; number++)
    if (!teller.follow(stepOf(job, number))) return null;
  return teller.endAt(done);
}

const steps = new WeakMap<Job, Map<number, Step>>();
const stepsKept = 1000;

/** A step is told once for the many stories that share it. */
export function stepOf(job: Job, number: number): Step {
  const known = steps.get(job) ?? new Map<number, Step>();
  steps.set(job, known);
  const step = known.get(number) ?? stepAt(job, number);
  if (known.size >= stepsKept) known.clear();
  known.set(number, step);
  return step;
}

class Teller {
  readonly made: Made[] = [];
  readonly fabric: FabricRow[] = [];
  bed: Bed;
  counts: CountsSeen;
  readonly hands: Hands;

  constructor(
    readonly job: Job,
    readonly slips: readonly Slip[],
    readonly baseDone: number,
  ) {
    this.bed = bedAtPlace(job, baseDone);
    this.counts = countsAt(job, baseDone);
    this.hands = new Hands(job, slips);
  }

  make(moves: readonly BedMove[] | null, step: number): boolean {
    for (const move of moves ?? []) {
      const next = applyMove(this.bed, move);
      if (!next.ok) return false;
      this.made.push({ before: this.bed, move, step, rows: this.fabric.length });
      if (move.move === 'knit') this.count(this.bed);
      this.counts.loose = looseAfter(this.counts.loose, move, this.bed, next.value);
      this.bed = next.value;
    }
    return moves !== null;
  }

  count(bed: Bed): void {
    const { counts } = this;
    const yarn = bed.feeder ?? '';
    const row = fabricRow(bed, yarn);
    this.fabric.push(row);
    if (row.strays > 0) {
      counts.loose = looseAt(bed);
      counts.strayColumn = true;
    }
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
    const moves = this.hands.movesOf(step);
    return moves.every((part) => this.make(part(this.bed), step.step)) && this.after(step.step);
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
        const out = held === null ? [] : [this.hands.aside(held, done)];
        const feed: readonly BedMove[] = slip.held === null ? [] : [{ move: 'feed', yarn: slip.held }];
        if (!this.make([...out, ...feed], done)) return null;
      }
    }
    const { slips, baseDone, made, fabric, bed, counts } = this;
    const { rows, loose } = counts;
    return { slips, baseDone, done, made, fabric, bed, rows, loose, looks: this.looks() };
  }

  looks(): Story['looks'] {
    const { bed, counts } = this;
    const { left, right, stitchCount } = edgesOf(bed);
    const name = (place: number | null) => (place === null ? null : formatNeedle(bed.needles.length, place));
    const dropped = this.slips.some(({ is }) => is === 'stitch-dropped') ? 1 : 0;
    const emptyPasses = this.slips.some(({ is }) => is === 'work-dropped') ? 1 : 0;
    const isAtEdge = counts.loose?.place === (this.job.plan.brief.crawl === 'left' ? right : left);
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
      piecesDone: 0,
      strayColumn: counts.strayColumn,
      beforeMove: this.slips.every(
        (slip) => slip.is !== 'rows-too-many' || stepOf(this.job, slip.step).act.kind !== 'decrease',
      ),
      rehung: !this.slips.some(({ is }) => is === 'rehang-missing'),
      looseEdgeLoop: isAtEdge && (counts.loose?.moved ? null : true),
    };
  }
}

function countsAt(job: Job, done: number): CountsSeen {
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
    strayColumn: false,
  };
}
