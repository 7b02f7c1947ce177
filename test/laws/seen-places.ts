import { type Bed, emptyBed } from '../../source/bed/bed.ts';
import type { Looks } from '../../source/session/locate/seen.ts';
import type { Job } from '../../source/steps/job.ts';
import type { Step } from '../../source/steps/step.ts';
import { seenOn, simulate } from './simulate.ts';

/** What can be seen after each step, index = steps confirmed: read off a bed on which every move is made. */
export function seenPlaces(job: Job): readonly Looks[] {
  const eye = new Eye(job);
  const start = emptyBed(job.plan.brief.bed.needles, startSide(job));
  return [eye.look(start), ...[...simulate(job)].map(({ step, bed }) => eye.watch(step, bed))];
}

function startSide(job: Job): 'left' | 'right' {
  for (const { bed } of simulate(job)) return bed.carriage;
  return 'left';
}

/** Counts what a maker would count: rows of the bag, bands of colour, waste rows hanging. */
export class Eye {
  private rows = 0;
  private bands = 0;
  private wasteRows = 0;
  private lastYarn: string | null = null;
  private rowsOfColour = 0;
  /** Rows of a section of the hem; null while none is on the needles. */
  private hemRows: number | null = null;
  private piecesDone = 0;

  constructor(private readonly job: Job) {}

  copy(): Eye {
    const eye = new Eye(this.job);
    eye.rows = this.rows;
    eye.bands = this.bands;
    eye.wasteRows = this.wasteRows;
    eye.lastYarn = this.lastYarn;
    eye.rowsOfColour = this.rowsOfColour;
    eye.hemRows = this.hemRows;
    eye.piecesDone = this.piecesDone;
    return eye;
  }

  watch(step: Step, bed: Bed): Looks {
    if (step.phase !== 'hem' && step.phase !== 'cord') this.piecesDone = 0;
    for (const move of step.moves) {
      if (move.move === 'pick-up' && move.of === 'edge') this.hemRows = 0;
      const isOff = move.move === 'bind-off' || (step.phase === 'cord' && move.move === 'take-off');
      if (isOff) this.piecesDone++;
      if (move.move === 'bind-off') this.hemRows = null;
      if (move.move === 'knit') this.countRow(step, bed.feeder);
      if (move.move === 'release' && move.what === 'waste') this.wasteRows = 0;
    }
    return this.look(bed);
  }

  private countRow({ phase }: Step, yarn: string | null): void {
    if (phase === 'cord') return;
    if (this.hemRows !== null) {
      this.hemRows++;
      return;
    }
    if (yarn === this.job.plan.brief.waste.yarn) this.wasteRows++;
    if (yarn === null || !this.job.plan.brief.yarns.has(yarn)) return;
    this.wasteRows = 0;
    this.rows++;
    if (yarn !== this.lastYarn) {
      this.bands++;
      this.rowsOfColour = 0;
    }
    this.rowsOfColour++;
    this.lastYarn = yarn;
  }

  look(bed: Bed): Looks {
    const { left, right, stitches, carriage, feeder } = seenOn(bed);
    const held = bed.needles.find((needle) => needle.loopCount > 0)?.yarn ?? null;
    // A loop of the edge has no colour of its own; one hung again is of the last row.
    const newest = this.hemRows === 0 ? null : (held ?? this.lastYarn);
    const facts = { left, right, stitches, carriage, feeder };
    const counted = {
      stripesCounted: this.bands,
      rowCounter: this.rows,
      rowsOfColour: this.hemRows ?? this.rowsOfColour,
      piecesDone: this.piecesDone,
    };
    return left === null
      ? { ...facts, lastColour: null, wasteRows: 0, ...counted }
      : {
          ...facts,
          lastColour: newest,
          // The strip hangs by its edge, its waste at both ends of it.
          wasteRows: this.hemRows === null ? this.wasteRows : 0,
          ...counted,
        };
  }
}
